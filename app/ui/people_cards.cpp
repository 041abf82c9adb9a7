// Who asked for a card, and what people notice: what the page of the people may show of it.
#include "insight/noticing.h"
#include "session/card.h"
#include "session/known_differences.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "ui/people_read.h"
#include "ui/voice.h"
#include "words/card.h"
#include "words/noticing.h"

#include <algorithm>

namespace oddglass::ui {

namespace {

std::vector<std::string> betterLines(store::Store& store, const std::vector<insight::Noticed>& noticing, const TasterId& brewer) {
  std::vector<std::string> lines;
  for (const insight::Noticed& each : noticing) {
    if (each.who != brewer) continue;
    for (std::string& line : words::noticedLines(voice(), each)) lines.push_back(std::move(line));
    lines.push_back(words::changeLine(voice(), each));
  }
  for (std::string& line : words::repeatLines(voice(), insight::repeatsOf(session::cardTastings(store, brewer).sheets))) lines.push_back(std::move(line));
  if (lines.empty()) lines.push_back(words::nothingNoticed(voice()));
  return lines;
}

}  // namespace

PeopleModel::Read PeopleModel::look(Cellar& cellar, bool archived) {
  store::Store& store = cellar.store();
  Read read{shelf::people(store, archived), session::cards(store), {}, {}};
  const auto noticing = insight::noticingOf(session::knownDifferences(store), shelf::meaningNow(store));
  for (const insight::WordNoticed& word : insight::wordsNoticed(noticing)) read.noticed.push_back(words::wordNoticedLine(voice(), word));
  const auto brewer = std::ranges::find(read.people, true, &Taster::isBrewer);
  if (brewer != read.people.end()) read.better = betterLines(store, noticing, brewer->id);
  return read;
}

// What is shown of a person beside the form: never more of a card than they let be seen.
void PeopleModel::showPerson() {
  m_cardLines.clear();
  m_better = m_known && m_isBrewer ? m_brewersBetter : QStringList();
  const auto wish = std::ranges::find(m_cards, m_id, &CardWish::who);
  m_hasCard = m_known && wish != m_cards.end();
  m_cardLet = m_hasCard && wish->shownAt.has_value();
  m_cardLine = shown(m_hasCard ? words::cardExists(voice(), plain(m_name), m_cardLet) : words::noCard(voice(), plain(m_name)));
  m_cardLink = m_hasCard ? tr("Hand over, and show it to them") : tr("They ask for a card");
}

void PeopleModel::askForCard() {
  ask([id = m_id, all = m_archivedShown](Cellar& cellar) {
    session::askForCard(cellar.store(), cellar.clock, id);
    return look(cellar, all);
  }, [this](Read read) { show(std::move(read)); });
}

void PeopleModel::takeCardBack() {
  ask([id = m_id, all = m_archivedShown](Cellar& cellar) {
    session::takeCardBack(cellar.store(), id);
    return look(cellar, all);
  }, [this](Read read) { show(std::move(read)); });
}

void PeopleModel::readCard() {
  ask([id = m_id, name = plain(m_name)](Cellar& cellar) {
    store::Store& store = cellar.store();
    const auto wish = session::cardOf(store, id);
    if (!wish || !wish->shownAt) return std::vector<std::string>{};
    return words::cardPage(voice(), name, insight::cardOf(session::cardTastings(store, id, wish->shownAt), shelf::meaningNow(store))).all();
  }, [this](const std::vector<std::string>& lines) {
    m_cardLines = shownAll(lines);
    emit changed();
  });
}

}  // namespace oddglass::ui
