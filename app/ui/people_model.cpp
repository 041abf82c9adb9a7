#include "ui/people_model.h"

#include "insight/noticing.h"
#include "session/card.h"
#include "session/erase.h"
#include "session/known_differences.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "ui/voice.h"
#include "words/card.h"
#include "words/noticing.h"
#include "words/seal.h"

#include <algorithm>

namespace oddglass::ui {

struct PeopleModel::Read {
  std::vector<Taster> people;
  std::vector<CardWish> cards;
  std::vector<std::string> noticed;   ///< word by word, without any person
  std::vector<std::string> better;    ///< of the brewer
};

namespace {

insight::Meaning meaningIn(store::Store& store) {
  return [words = shelf::vocabulary(store)](const std::string& word) { return shelf::nameMeant(words, word); };
}

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

PeopleModel::PeopleModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_people(PersonRow::staticMetaObject, this) {
  nameFields({"name", "nickname", "is_brewer"});
  m_noticingRule = shown(words::noticingRule(voice()));
}

PeopleModel::Read PeopleModel::look(Cellar& cellar, bool archived) {
  store::Store& store = cellar.store();
  Read read{shelf::people(store, archived), session::cards(store), {}, {}};
  const auto noticing = insight::noticingOf(session::knownDifferences(store), meaningIn(store));
  for (const insight::WordNoticed& word : insight::wordsNoticed(noticing)) read.noticed.push_back(words::wordNoticedLine(voice(), word));
  const auto brewer = std::ranges::find(read.people, true, &Taster::isBrewer);
  if (brewer != read.people.end()) read.better = betterLines(store, noticing, brewer->id);
  return read;
}

void PeopleModel::setArchivedShown(bool shown) {
  m_archivedShown = shown;
  load();
}

void PeopleModel::load() {
  ask([archived = m_archivedShown](Cellar& cellar) { return look(cellar, archived); }, [this](Read read) { show(std::move(read)); });
}

void PeopleModel::show(Read read) {
  m_values = std::move(read.people);
  m_cards = std::move(read.cards);
  m_noticed = shownAll(read.noticed);
  m_brewersBetter = shownAll(read.better);
  std::vector<PersonRow> rows;
  for (const Taster& person : m_values) {
    QStringList parts;
    if (person.isBrewer) parts << tr("the brewer");
    if (!person.nickname.empty()) parts << tr("shown as \u201c%1\u201d where they ask for a nickname").arg(shown(person.nickname));
    if (std::ranges::find(m_cards, person.id, &CardWish::who) != m_cards.end()) parts << tr("has a card");
    PersonRow row;
    row.name = shown(person.name);
    row.line = parts.join(tr(", "));
    row.archived = person.archived;
    rows.push_back(row);
  }
  m_people.set(rows);
  m_loaded = true;
  if (m_open) showPerson();
  emit changed();
}

// What is shown of a person beside the form: never more of a card than they let be seen.
void PeopleModel::showPerson() {
  m_cardLines.clear();
  m_better = m_known && m_isBrewer ? m_brewersBetter : QStringList();
  const auto wish = std::ranges::find(m_cards, m_id, &CardWish::who);
  m_hasCard = m_known && wish != m_cards.end();
  m_cardLet = m_hasCard && wish->shownAt.has_value();
  m_cardLine = shown(m_hasCard ? words::cardExists(voice(), plain(m_name), m_cardLet) : words::noCard(voice(), plain(m_name)));
  m_cardLink = m_hasCard ? tr("Hand over: show it to %1").arg(m_name) : tr("%1 asks for a card").arg(m_name);
}

void PeopleModel::openNew() {
  m_id = {};
  m_name = m_nickname = m_erasedLine = QString();
  m_isBrewer = m_known = m_archived = false;
  m_open = true;
  showPerson();
  settle();
  emit changed();
}

void PeopleModel::openPerson(int row) {
  const Taster& person = m_values.at(static_cast<std::size_t>(row));
  m_id = person.id;
  m_name = shown(person.name);
  m_nickname = shown(person.nickname);
  m_isBrewer = person.isBrewer;
  m_archived = person.archived;
  m_known = m_open = true;
  m_erasedLine.clear();
  const words::AskTwice words = words::eraseTaster(voice(), person.name, ErasureKind::words);
  const words::AskTwice all = words::eraseTaster(voice(), person.name, ErasureKind::everything);
  m_eraseWordsFirst = shown(words.first);
  m_eraseWordsSecond = shown(words.second);
  m_eraseAllFirst = shown(all.first);
  m_eraseAllSecond = shown(all.second);
  showPerson();
  emit changed();
}

void PeopleModel::leave() {
  m_open = false;
  settle();
  emit changed();
}

void PeopleModel::save() {
  Taster person;
  person.id = m_id;
  person.name = plain(m_name);
  person.nickname = plain(m_nickname);
  person.isBrewer = m_isBrewer;
  person.archived = m_archived;
  ask([person, archived = m_archivedShown](Cellar& cellar) {
    shelf::save(cellar.store(), cellar.chance, person);
    return look(cellar, archived);
  }, [this](Read read) {
    m_open = false;
    show(std::move(read));
  });
}

void PeopleModel::archive(bool archived) {
  ask([id = m_id, archived, all = m_archivedShown](Cellar& cellar) {
    if (archived) shelf::archivePerson(cellar.store(), cellar.clock, id);
    else shelf::bringBackPerson(cellar.store(), id);
    return look(cellar, all);
  }, [this](Read read) {
    m_open = false;
    show(std::move(read));
  });
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
    return words::cardPage(voice(), name, insight::cardOf(session::cardTastings(store, id, wish->shownAt), meaningIn(store))).all();
  }, [this](const std::vector<std::string>& lines) {
    m_cardLines = shownAll(lines);
    emit changed();
  });
}

void PeopleModel::erase(ErasureKind kind) {
  struct Done {
    session::Erased erased;
    Read read;
  };
  ask([id = m_id, kind, all = m_archivedShown](Cellar& cellar) {
    session::Erased erased = session::erase(cellar.store(), cellar.clock, cellar.chance, id, kind, true);
    return Done{std::move(erased), look(cellar, all)};
  }, [this](const Done& done) {
    m_open = false;
    m_erasedLine = done.erased.bytesGone ? tr("Forgotten: it is gone from this file.")
                                         : tr("Forgotten. Another program reads the file just now, so its last traces go when Oddglass is started next.");
    if (!done.erased.copies.empty()) {
      QStringList copies;
      for (const auto& copy : done.erased.copies) copies << QString::fromStdString(copy.string());
      m_erasedLine += QStringLiteral(" ") + tr("These backups still hold the person; delete them by hand: %1").arg(copies.join(tr(", ")));
    }
    show(done.read);
  });
}

}  // namespace oddglass::ui
