#include "ui/board_model.h"

#include "domain/evenings.h"
#include "session/ending.h"
#include "session/look_after.h"
#include "ui/beverage_model.h"
#include "ui/voice.h"
#include "words/numbers.h"
#include "words/sources.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

QString stepWord(tasting::PlaceStep step) {
  switch (step) {
    case tasting::PlaceStep::empty: return BoardModel::tr("empty");
    case tasting::PlaceStep::waiting: return BoardModel::tr("waiting");
    case tasting::PlaceStep::tasting: return BoardModel::tr("tasting");
    case tasting::PlaceStep::locked: return BoardModel::tr("locked");
    case tasting::PlaceStep::left: return BoardModel::tr("has stopped");
  }
  return {};
}

QString placeShapeOf(tasting::PlaceStep step) {
  switch (step) {
    case tasting::PlaceStep::locked: return QStringLiteral("disc");
    case tasting::PlaceStep::left: return QStringLiteral("dash");
    case tasting::PlaceStep::empty: return {};
    default: return QStringLiteral("ring");
  }
}

int nextRound(const tasting::Board& board) {
  int next = board.rounds;
  for (const tasting::BoardPlace& place : board.places)
    if (place.round) next = std::min(next, place.round->value);
  return next;
}

bool isOpen(const tasting::BoardPlace& place) {
  return place.step == tasting::PlaceStep::waiting || place.step == tasting::PlaceStep::tasting;
}

}  // namespace

// A cup is spilled where somebody tastes; everything else may come to light after the last lock too.
bool BoardModel::isOffered(const tasting::BoardPlace& place) const {
  return isOpen(place) || (place.step == tasting::PlaceStep::locked && m_happening != QLatin1String("spilled"));
}

BoardModel::BoardModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent), m_places(PlaceRow::staticMetaObject, this), m_heardBy(TickRow::staticMetaObject, this) {}

void BoardModel::load() {
  endHappening();
  ask([id = m_stage.current.id()](Cellar& cellar) { return tasting::board(cellar.store(), id); },
      [this](const tasting::Board& board) { show(board); });
}

QStringList BoardModel::how() const { return m_canLook || m_board.saidStop ? QStringList{shown(words::stoppingSource(voice()))} : QStringList(); }

void BoardModel::goOnAfter(const SessionId& session, qint64 lastAt) {
  m_interrupted = session;
  m_interruptedAt = lastAt;
}

// Round by round, and in a round place by place, as waves are served.
const tasting::BoardPlace* BoardModel::nextPlace() const {
  for (const tasting::PlaceStep step : {tasting::PlaceStep::tasting, tasting::PlaceStep::empty, tasting::PlaceStep::waiting}) {
    const tasting::BoardPlace* next = nullptr;
    for (const tasting::BoardPlace& place : m_board.places) {
      if (place.step != step || (place.isSpare && step == tasting::PlaceStep::empty)) continue;
      if (!next || place.round.value_or(Round{1}).value < next->round.value_or(Round{1}).value) next = &place;
    }
    if (next) return next;
  }
  return nullptr;
}

void BoardModel::sayInterrupted() {
  m_headline = tr("Interrupted at %1.").arg(shown(words::timeOfDay(voice(), m_interruptedAt)));
  m_lead = tr("%1 of %2 answers are safe, and what was typed on a sheet is kept. Nobody has seen the key.").arg(m_board.locked).arg(m_board.expected);
  if (const tasting::BoardPlace* next = nextPlace()) m_lead += QLatin1Char(' ') + tr("Go on with place %1.").arg(next->place.value);
}

void BoardModel::show(const tasting::Board& board) {
  m_board = board;
  m_over = shown(board.guestTitle);
  m_canPour = board.state == State::sealed || board.state == State::tasting;
  m_byHand = board.routine != Routine::pourer;
  m_readWaits = board.unread > 0 && (board.state == State::closed || board.routine == Routine::alone);
  m_pourWaits = !board.pourReported && board.state == State::sealed;
  m_anybody = std::any_of(board.places.begin(), board.places.end(), [](const auto& place) { return place.step != tasting::PlaceStep::empty; });
  // Somebody who was counted at the plan and has not sat down yet is waited for.
  const bool nobodyIsMissing = std::none_of(board.places.begin(), board.places.end(), [](const auto& place) {
    return !place.isSpare && place.step == tasting::PlaceStep::empty;
  });
  m_allLocked = board.everyoneHasLocked && (nobodyIsMissing || board.saidStop);
  m_canLook = board.lookIsDue;
  m_lookIsDue = board.lookIsDue && nobodyIsMissing;
  m_seated.clear();
  m_listening.clear();
  m_seatedPlaces.clear();
  const bool isInWaves = board.wave > 0 && board.wave < static_cast<int>(board.places.size());
  std::vector<PlaceRow> rows;
  std::vector<TickRow> heard;
  for (const tasting::BoardPlace& place : board.places) {
    PlaceRow row;
    row.number = place.place.value;
    row.place = tr("Place %1").arg(place.place.value);
    if (isInWaves && (place.place.value - 1) % board.wave == 0)
      row.section = tr("Wave %1: places %2 to %3").arg(waveOf(place.place, board.wave)).arg(place.place.value).arg(std::min(place.place.value + board.wave - 1, static_cast<int>(board.places.size())));
    row.who = !place.who.empty() ? shown(place.who)
              : place.step == tasting::PlaceStep::empty ? (place.isSpare ? tr("spare") : QString())
                                                        : tr("not named");
    row.step = stepWord(place.step);
    row.shape = placeShapeOf(place.step);
    row.seated = place.step != tasting::PlaceStep::empty;
    if (row.seated) row.rounds = tr("%1 of %2 rounds").arg(place.counting.size()).arg(board.rounds - place.voidRounds);
    if (place.step == tasting::PlaceStep::empty) row.hand = tr("Sit down");
    else if (isOpen(place)) row.hand = tr("Hand over");
    if (isOffered(place)) {
      m_seated.push_back(place.place);
      m_seatedPlaces << row.place;
    }
    if (isOpen(place)) {
      m_listening.push_back(place.place);
      TickRow tick;
      tick.name = row.place;
      tick.note = place.who.empty() ? QString() : shown(place.who);
      tick.ticked = m_heard.contains(place.place.value);
      heard.push_back(tick);
    }
    rows.push_back(row);
  }
  m_places.set(rows);
  m_heardBy.set(heard);
  if (m_readWaits) {
    m_headline = tr("Locked. What stood under the cups?");
    m_lead = tr("Turn them over one by one, before anything is cleared away.");
  } else if (!m_anybody && m_byHand && m_pourWaits) {
    m_headline = tr("First the cups are hidden.");
    m_lead = tr("The steps come one by one. Nothing is poured before them.");
  } else if (!m_anybody) {
    m_headline = m_pourWaits ? tr("First the cups are poured.") : tr("Nobody has sat down.");
    m_lead = m_pourWaits ? tr("Whoever pours takes this screen out of the room. Everybody else waits for the mats.")
                         : tr("Carry the mats to the places, then hand this screen to one place after the other.");
  } else if (m_lookIsDue) {
    m_headline = tr("Round %1 is locked everywhere.").arg(board.openRounds);
    m_lead = tr("The program looks at the answers for itself and says only whether to go on or to stop. Nobody sees a count.");
  } else if (board.saidStop) {
    m_headline = tr("It said: stop.");
    m_lead = tr("The answers so far are enough for the rule that was sealed. No more cups are needed; the table can be closed.");
  } else if (m_allLocked) {
    m_headline = tr("All locked.");
    m_lead = tr("Is somebody still to come? If not, the table can be closed.");
  } else if (board.isBetweenEvenings) {
    m_headline = tr("Evening %1 of %2 is done.").arg(board.evening - 1).arg(board.evenings);
    m_lead = tr("What is locked is safe. Leave the table as it is: the next evening begins with round %1.").arg(nextRound(board));
  } else {
    m_headline = tr("%1 of %2 answers are locked.").arg(board.locked).arg(board.expected);
    m_lead = m_canLook             ? tr("Hand this screen to the next place. If nobody else comes, ask whether to go on without them.")
             : board.timesSaid > 0 ? tr("Hand this screen to the next place. Something was said aloud; that is on record.")
                                   : tr("Hand this screen to the next place.");
  }
  const bool waitsForPlaces = board.state == State::tasting && !m_readWaits && !m_lookIsDue && !board.saidStop && !m_allLocked;
  if (!m_interrupted.empty() && board.id == m_interrupted && waitsForPlaces) sayInterrupted();
  emit changed();
}

void BoardModel::handOver(int row) {
  m_interrupted = {};
  if (row >= 0) {
    emit seatRequested(m_board.places.at(static_cast<std::size_t>(row)).place.value);
    return;
  }
  if (const tasting::BoardPlace* next = nextPlace()) emit seatRequested(next->place.value);
}

void BoardModel::lateGuest() {
  const auto spare = std::find_if(m_board.places.begin(), m_board.places.end(),
                                  [](const auto& place) { return place.isSpare && place.step == tasting::PlaceStep::empty; });
  if (spare == m_board.places.end()) m_stage.notice.say(tr("No spare place is left. The guest can keep you company, but there are no cups for them in this tasting."));
  else emit seatRequested(spare->place.value);
}

void BoardModel::lookAfterRound() {
  ask([id = m_stage.current.id()](Cellar& cellar) {
    const auto looked = session::lookAfterRound(cellar.store(), cellar.clock, id);
    return std::pair{looked, tasting::board(cellar.store(), id)};
  }, [this](const std::pair<session::LookedAfter, tasting::Board>& done) {
    m_stage.notice.say(done.first.goOn ? tr("After round %1 it says: go on. The next round is open.").arg(done.first.round.value)
                                       : tr("After round %1 it says: stop.").arg(done.first.round.value));
    show(done.second);
  });
}

void BoardModel::closeTable() {
  QStringList open;
  for (const tasting::BoardPlace& place : m_board.places)
    if (isOpen(place)) open << (place.who.empty() ? tr("place %1").arg(place.place.value) : shown(place.who));
  if (open.isEmpty()) {
    closeAnyway();
    return;
  }
  std::vector<std::string> names;
  for (const QString& name : open) names.push_back(plain(name));
  m_closeQuestion = tr("Not everything is locked: %1. What is not locked stays missing and is counted as missing. Close the table all the same?")
                        .arg(shown(words::listed(voice(), names)));
  emit changed();
}

void BoardModel::keepOpen() {
  m_closeQuestion.clear();
  emit changed();
}

void BoardModel::closeAnyway() {
  m_closeQuestion.clear();
  ask([id = m_stage.current.id()](Cellar& cellar) { return session::close(cellar.store(), cellar.clock, id); },
      [this](const session::Closed&) { go(Router::Page::OpenKey); });
}

}  // namespace oddglass::ui
