// What may happen at a table, one tap each: chosen, told what comes of it, and put on record.
#include "ui/board_model.h"

#include "session/erase.h"
#include "tasting/mishaps.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/history.h"
#include "words/mishaps.h"

#include <algorithm>
#include <array>

namespace oddglass::ui {
namespace {

/// The reasons offered at the table.
constexpr std::array offered{VoidReason::mixedUp, VoidReason::wrongPerson, VoidReason::cupLost, VoidReason::misread, VoidReason::other};

}  // namespace

QStringList BoardModel::asideReasons() {
  QStringList all;
  for (const VoidReason reason : offered) all << shown(words::voidReason(voice(), reason));
  return all;
}

void BoardModel::startHappening(const QString& what) {
  const bool isTheSame = m_happening == what;
  endHappening();
  if (!isTheSame) m_happening = what;
  show(tasting::Board(m_board));
}

// What is chosen stands by its row in a list of places that changes as soon as somebody sits down or stops.
void BoardModel::endHappening() {
  m_happening.clear();
  m_happenedAt = m_otherAt = m_happenedRound = -1;
  m_codesThere.clear();
  m_roundsThere.clear();
  m_roundValues.clear();
  m_comesOfIt.clear();
  m_saidWords.clear();
  m_heard.clear();
  m_flight.reset();
}

void BoardModel::showAfter(const tasting::Board& board) {
  endHappening();
  show(board);
}

void BoardModel::tickHeard(int row) {
  const int place = m_listening.at(static_cast<std::size_t>(row)).value;
  if (!m_heard.erase(place)) m_heard.insert(place);
  show(tasting::Board(m_board));
}

void BoardModel::change(std::function<void(Cellar&, const SessionId&)> work) {
  ask([id = m_stage.current.id(), work = std::move(work)](Cellar& cellar) {
    work(cellar, id);
    return tasting::board(cellar.store(), id);
  }, [this](const tasting::Board& board) { showAfter(board); });
}

void BoardModel::noteSaid() {
  std::set<Place> heardBy;
  for (const int place : m_heard) heardBy.insert(Place{place});
  change([heardBy, words = plain(m_saidWords)](Cellar& cellar, const SessionId& id) {
    tasting::said(cellar.store(), cellar.clock, cellar.chance, id, heardBy, words);
  });
}

const tasting::BoardPlace& BoardModel::at(int index) const {
  return *std::ranges::find(m_board.places, m_seated.at(static_cast<std::size_t>(index)), &tasting::BoardPlace::place);
}

QString BoardModel::whoAt(const tasting::BoardPlace& place) const { return place.who.empty() ? tr("place %1").arg(place.place.value) : shown(place.who); }

void BoardModel::pickPlace(int index) {
  m_happenedAt = index;
  if (m_otherAt == index) m_otherAt = -1;
  m_codesThere.clear();
  if (m_happening != QLatin1String("spilled")) {
    showRounds();
    return;
  }
  const Place place = m_seated.at(static_cast<std::size_t>(index));
  ask([id = m_stage.current.id(), place](Cellar& cellar) { return tasting::nextFlight(cellar.store(), id, place); },
      [this](const std::optional<tasting::Flight>& flight) {
        m_flight = flight;
        m_codesThere.clear();
        if (flight)
          for (const tasting::FlightCup& cup : flight->cups)
            m_codesThere << tr("%1, %2").arg(codeText(cup.code), positionWord(cup.position, static_cast<int>(flight->cups.size())));
        emit changed();
      });
}

void BoardModel::pickOther(int index) {
  m_otherAt = index == m_happenedAt ? -1 : index;
  showRounds();
}

void BoardModel::pickRound(int index) {
  m_happenedRound = index;
  showWhatComes();
}

// The rounds that a place, or one of two places, has come to; a single one is meant without being asked.
void BoardModel::showRounds() {
  std::set<Round> rounds;
  const auto add = [&](int index) {
    if (index < 0) return;
    const tasting::BoardPlace& place = at(index);
    rounds.insert(place.counting.begin(), place.counting.end());
    if (place.round) rounds.insert(*place.round);
  };
  const bool isSwap = m_happening == QLatin1String("swapped");
  if (!isSwap || m_otherAt >= 0) add(m_happenedAt);
  if (isSwap && m_happenedAt >= 0) add(m_otherAt);
  m_roundValues.assign(rounds.begin(), rounds.end());
  m_roundsThere.clear();
  for (const Round round : m_roundValues) m_roundsThere << tr("Round %1").arg(round.value);
  m_happenedRound = m_roundValues.size() == 1 ? 0 : -1;
  showWhatComes();
}

void BoardModel::showWhatComes() {
  m_comesOfIt.clear();
  if (m_happenedAt < 0) return void(emit changed());
  const tasting::BoardPlace& place = at(m_happenedAt);
  if (m_happening == QLatin1String("back")) {
    m_comesOfIt = shown(words::takeBackQuestion(voice(), plain(whoAt(place))));
  } else if (m_happening == QLatin1String("wrong")) {
    m_comesOfIt = place.lockedRounds == 0 ? tr("Nothing is locked there: the place becomes free, and whoever sat there may sit elsewhere.")
                                          : tr("What is locked there will not count, and the place stays as it is.");
  } else if (m_happening == QLatin1String("swapped") && m_otherAt >= 0 && m_happenedRound >= 0) {
    const Round round = m_roundValues.at(static_cast<std::size_t>(m_happenedRound));
    const auto counts = [&](int index) { return std::ranges::count(at(index).counting, round) > 0; };
    const int locked = counts(m_happenedAt) + counts(m_otherAt);
    m_comesOfIt = locked == 0   ? tr("Neither has locked: they put the mats back and begin these cups again.")
                  : locked == 1 ? tr("One of them has locked: that will not count. The other puts the mat back and begins again.")
                                : tr("Both have locked: neither will count.");
  }
  emit changed();
}

void BoardModel::noteSpilled(int code) {
  if (!m_flight) return;
  const Code spilled = m_flight->cups.at(static_cast<std::size_t>(code)).code;
  ask([id = m_stage.current.id(), spilled](Cellar& cellar) {
    const auto spare = tasting::lostCup(cellar.store(), cellar.clock, cellar.chance, id, spilled);
    return std::pair(spare, tasting::board(cellar.store(), id));
  }, [this](const std::pair<std::optional<Code>, tasting::Board>& done) {
    showAfter(done.second);
    if (!done.first) {
      m_stage.notice.say(tr("That round is set aside and counted so: what hands hid cannot be poured again unseen."));
      return;
    }
    m_stage.notice.say(tr("Cup %1 stands in now. The pourer finds it among the spare codes; the taster starts these cups again.").arg(codeText(*done.first)));
  });
}

void BoardModel::setAside(int reason) {
  if (m_happenedAt < 0 || m_happenedRound < 0) return;
  change([place = at(m_happenedAt).place, round = m_roundValues.at(static_cast<std::size_t>(m_happenedRound)), why = offered.at(static_cast<std::size_t>(reason))](Cellar& cellar, const SessionId& id) {
    tasting::setAside(cellar.store(), cellar.clock, cellar.chance, id, place, round, why);
  });
}

void BoardModel::confirmHappening() {
  if (m_comesOfIt.isEmpty()) return;
  if (m_happening == QLatin1String("swapped")) swapMats();
  else if (m_happening == QLatin1String("wrong")) freeWrong();
  else takeBack();
}

void BoardModel::swapMats() {
  // Before the first cup nothing is on record yet that would have to be begun again.
  if (m_board.state == State::sealed) {
    m_stage.notice.say(tr("Nobody has begun yet: put the mats back, and nothing more is needed."));
    showAfter(tasting::Board(m_board));
    return;
  }
  ask([id = m_stage.current.id(), one = at(m_happenedAt).place, other = at(m_otherAt).place, round = m_roundValues.at(static_cast<std::size_t>(m_happenedRound))](Cellar& cellar) {
    const auto done = tasting::matsSwapped(cellar.store(), cellar.clock, cellar.chance, id, one, other, round);
    return std::pair(done, tasting::board(cellar.store(), id));
  }, [this](const std::pair<tasting::MatsSwapped, tasting::Board>& done) {
    showAfter(done.second);
    m_stage.notice.say(shown(words::matsSwappedLine(voice(), done.first.begunAgain, done.first.setAside)));
  });
}

void BoardModel::freeWrong() {
  ask([id = m_stage.current.id(), place = at(m_happenedAt).place](Cellar& cellar) {
    const auto done = tasting::wrongPerson(cellar.store(), cellar.clock, cellar.chance, id, place);
    return std::tuple(place, done, tasting::board(cellar.store(), id));
  }, [this](const std::tuple<Place, tasting::WrongPerson, tasting::Board>& done) {
    showAfter(std::get<2>(done));
    m_stage.notice.say(shown(words::wrongPersonLine(voice(), std::get<0>(done), std::get<1>(done).freed, std::get<1>(done).setAside)));
  });
}

void BoardModel::takeBack() {
  ask([id = m_stage.current.id(), place = at(m_happenedAt).place](Cellar& cellar) {
    const bool isGone = session::takeBack(cellar.store(), cellar.clock, id, place, true);
    return std::tuple(place, isGone, tasting::board(cellar.store(), id));
  }, [this](const std::tuple<Place, bool, tasting::Board>& done) {
    showAfter(std::get<2>(done));
    const QString told = tr("All answers of place %1 are gone, and the place is left.").arg(std::get<0>(done).value);
    m_stage.notice.say(std::get<1>(done) ? told : told + QLatin1Char(' ') + tr("Another program reads the file just now: its last bytes go when the program is started next."));
  });
}

}  // namespace oddglass::ui
