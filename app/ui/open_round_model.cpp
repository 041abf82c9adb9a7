#include "ui/open_round_model.h"

#include "ui/voice.h"
#include "words/came_out.h"
#include "words/open_round.h"
#include "words/sheet_asked.h"

#include <algorithm>

namespace oddglass::ui {

OpenRoundModel::OpenRoundModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent), m_places(OpenPlaceRow::staticMetaObject, this), m_lots(OpenLotRow::staticMetaObject, this) {
}

void OpenRoundModel::load() {
  m_told.clear();
  ask([id = m_stage.current.id()](Cellar& cellar) { return session::openRound(cellar.store(), id); },
      [this](const std::optional<session::OpenRound>& round) { take(round); });
}

void OpenRoundModel::take(const std::optional<session::OpenRound>& round) {
  m_round = round.value_or(session::OpenRound{});
  m_at.reset();
  m_chosen.clear();
  const words::OpenWords words = words::openWords(voice());
  m_headline = shown(words.headline);
  m_lead = m_told.isEmpty() ? shown(words.lead) : m_told;
  m_note = shown(words.voluntary);
  showPlaces();
  showLots();
  emit changed();
}

void OpenRoundModel::showPlaces() {
  std::vector<OpenPlaceRow> rows;
  for (const session::OpenPlace& place : m_round.places) {
    OpenPlaceRow row;
    row.name = place.isLetter ? tr("Place %1").arg(place.place.value) : tr("%1, at place %2").arg(shown(place.shown)).arg(place.place.value);
    row.note = place.isDone ? tr("has answered") : tr("may answer");
    row.done = place.isDone;
    rows.push_back(row);
  }
  m_places.set(rows);
}

void OpenRoundModel::showLots() {
  std::vector<OpenLotRow> rows;
  if (m_at)
    for (const PlannedLot& lot : m_round.lots) {
      OpenLotRow row;
      row.name = shown(words::lotTitle(voice(), lot));
      const auto chosen = m_chosen.find(lot.slot);
      if (chosen != m_chosen.end()) row.picked = chosen->second - 1;
      rows.push_back(row);
    }
  m_lots.set(rows);
}

QString OpenRoundModel::reason() const { return m_at && m_chosen.size() < m_round.lots.size() ? tr("Each of the drinks needs an answer first.") : QString(); }

void OpenRoundModel::handTo(int row) {
  const session::OpenPlace& place = m_round.places.at(static_cast<std::size_t>(row));
  if (place.isDone) return;
  m_at = static_cast<std::size_t>(row);
  m_chosen.clear();
  m_headline = shown(words::openFor(voice(), place.shown, place.isLetter, place.place.value));
  m_lead = shown(words::openAsked(voice()));
  showLots();
  emit changed();
}

void OpenRoundModel::choose(int lot, int answer) {
  m_chosen[m_round.lots.at(static_cast<std::size_t>(lot)).slot] = answer + 1;
  showLots();
  emit changed();
}

void OpenRoundModel::lock() {
  const session::OpenAnswers answers{m_round.places.at(m_at.value()).place, m_chosen};
  ask([id = m_stage.current.id(), answers](Cellar& cellar) {
    session::answerOpenly(cellar.store(), cellar.clock, id, {answers});
    return session::openRound(cellar.store(), id);
  }, [this](const std::optional<session::OpenRound>& round) {
    m_told = tr("Kept. Hand it on, or stop here.");
    take(round);
  });
}

void OpenRoundModel::rather() {
  m_told.clear();
  take(m_round);
}

QStringList OpenRoundModel::answers() { return shownAll(words::answerWords(voice(), ItemKind::liking)); }

}  // namespace oddglass::ui
