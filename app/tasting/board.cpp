#include "tasting/board.h"

#include "domain/evenings.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::tasting {
namespace {

using store::bound;

std::vector<Invited> invited(SQLite::Database& db, std::int64_t session) {
  std::vector<Invited> all;
  auto rows = bound(db, R"sql(
    SELECT t.uid, t.name, t.nickname, EXISTS (SELECT 1 FROM place_person p WHERE p.session_id = i.session_id AND p.taster_id = i.taster_id)
      FROM invited i JOIN taster t ON t.id = i.taster_id
     WHERE i.session_id = ? AND i.pours = 0 ORDER BY t.name COLLATE NOCASE, t.uid)sql", session);
  while (rows.executeStep())
    all.push_back({{rows.getColumn(0).getString()}, rows.getColumn(1).getString(), rows.getColumn(2).getString(), rows.getColumn(3).getInt() != 0});
  return all;
}

int unreadIn(SQLite::Database& db, std::int64_t session) {
  auto row = bound(db, R"sql(
    SELECT count(*) FROM hand_in h WHERE h.session_id = ?1
       AND NOT EXISTS (SELECT 1 FROM voided v WHERE v.session_id = ?1 AND v.place = h.place AND v.round = h.round)
       AND NOT EXISTS (SELECT 1 FROM log g WHERE g.session_id = ?1 AND g.kind = 'found' AND json_extract(g.body, '$.place') = h.place
                          AND json_extract(g.body, '$.round') = h.round))sql", session);
  row.executeStep();
  return row.getColumn(0).getInt();
}

std::vector<Round> countingAt(SQLite::Database& db, std::int64_t session, Place place) {
  std::vector<Round> rounds;
  auto rows = bound(db, R"sql(
    SELECT round FROM hand_in WHERE session_id = ?1 AND place = ?2
       AND round NOT IN (SELECT round FROM voided WHERE session_id = ?1 AND place = ?2) ORDER BY round)sql", session, place.value);
  while (rows.executeStep()) rounds.push_back({rows.getColumn(0).getInt()});
  return rounds;
}

BoardPlace placeNow(SQLite::Database& db, std::int64_t session, Place place, bool isSpare) {
  BoardPlace now{place, isSpare, PlaceStep::empty, {}, std::nullopt, 0, 0, {}};
  auto taken = bound(db, R"sql(
    SELECT k.shown_as, coalesce(CASE WHEN k.shown_as = 'nickname' AND t.nickname <> '' THEN t.nickname ELSE t.name END, ''),
           EXISTS (SELECT 1 FROM place_left l WHERE l.session_id = k.session_id AND l.place = k.place),
           (SELECT count(*) FROM hand_in h WHERE h.session_id = k.session_id AND h.place = k.place)
      FROM place_taken k
      LEFT JOIN place_person p ON p.session_id = k.session_id AND p.place = k.place
      LEFT JOIN taster t ON t.id = p.taster_id
     WHERE k.session_id = ? AND k.place = ?)sql", session, place.value);
  auto aside = bound(db, "SELECT count(*) FROM voided WHERE session_id = ? AND place = ?", session, place.value);
  aside.executeStep();
  now.voidRounds = aside.getColumn(0).getInt();
  if (!taken.executeStep()) return now;
  if (taken.getColumn(0).getString() != "loose") now.who = taken.getColumn(1).getString();
  now.lockedRounds = taken.getColumn(3).getInt();
  if (now.lockedRounds > 0) now.counting = countingAt(db, session, place);
  if (taken.getColumn(2).getInt() != 0) {
    now.step = PlaceStep::left;
    return now;
  }
  const int round = nextRound(db, session, place);
  if (round == 0) {
    now.step = PlaceStep::locked;
    return now;
  }
  now.round = Round{round};
  now.step = hasBegun(db, session, place, {round}) ? PlaceStep::tasting : PlaceStep::waiting;
  return now;
}

// The evening of the round that comes next where fewest rounds are done.
void tellEvening(Board& board) {
  std::optional<Round> next;
  for (const BoardPlace& place : board.places)
    if (place.round && (!next || place.round->value < next->value)) next = place.round;
  board.evening = next ? eveningOf(*next, board.rounds, board.evenings) : board.evenings;
  if (!next || board.evening == 1) return;
  int before = 0;
  for (int evening = 1; evening < board.evening; ++evening) before += roundsOn(evening, board.rounds, board.evenings);
  board.isBetweenEvenings = next->value == before + 1 && std::ranges::none_of(board.places, [&](const BoardPlace& place) {
    return place.step == PlaceStep::tasting || (place.round && place.round->value > before + 1) || place.step == PlaceStep::locked;
  });
}

}  // namespace

Board board(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    const auto id = store::sessionRow(db, session);
    Board board;
    board.id = session;
    board.state = store::stateOf(db, id);
    if (board.state == State::draft) throw Problem(Trouble::notSealed, "session");
    auto head = bound(db, R"sql(
      SELECT s.guest_title, p.seal_mark, (SELECT max(round) FROM cup WHERE session_id = s.id),
             EXISTS (SELECT 1 FROM log WHERE session_id = s.id AND kind = 'poured'),
             (SELECT count(*) FROM log WHERE session_id = s.id AND kind = 'said'), (SELECT max(at) FROM log WHERE session_id = s.id),
             coalesce(json_extract(p.body, '$.routine'), 'pourer'),
             coalesce(json_extract(p.body, '$.evenings'), 1), coalesce(json_extract(p.body, '$.wave'), 0)
        FROM session s JOIN session_plan p ON p.session_id = s.id WHERE s.id = ?)sql", id);
    head.executeStep();
    board.guestTitle = head.getColumn(0).getString();
    board.sealMark = head.getColumn(1).getString();
    board.rounds = head.getColumn(2).getInt();
    board.pourReported = head.getColumn(3).getInt() != 0;
    board.timesSaid = head.getColumn(4).getInt();
    board.lastAt = head.getColumn(5).getInt64();
    board.routine = named<Routine>(head.getColumn(6).getString()).value_or(Routine::pourer);
    if (board.routine != Routine::pourer) board.unread = unreadIn(db, id);
    board.evenings = head.getColumn(7).getInt();
    board.wave = head.getColumn(8).getInt();
    board.invited = invited(db, id);
    board.isSequential = askedIn(db, id).isSequential;
    const int lastOpen = lastOpenRound(db, id);
    board.saidStop = lastOpen == 0;
    board.openRounds = lastOpen > 0 ? lastOpen : looksIn(db, id);
    auto places = bound(db, "SELECT place, is_spare FROM place WHERE session_id = ? ORDER BY place", id);
    bool anyOpen = false, anySeated = false;
    while (places.executeStep()) {
      const BoardPlace now = placeNow(db, id, {places.getColumn(0).getInt()}, places.getColumn(1).getInt() != 0);
      board.locked += now.lockedRounds;
      if (now.step == PlaceStep::waiting || now.step == PlaceStep::tasting || now.step == PlaceStep::locked) {
        anySeated = true;
        anyOpen = anyOpen || now.step != PlaceStep::locked;
        board.expected += std::max(now.lockedRounds, board.openRounds - now.voidRounds);
      } else if (now.step == PlaceStep::left) {
        board.expected += now.lockedRounds;
      }
      board.places.push_back(now);
    }
    tellEvening(board);
    board.everyoneHasLocked = anySeated && !anyOpen && (!board.isSequential || board.saidStop || board.openRounds == board.rounds);
    board.lookIsDue = anySeated && !anyOpen && !board.everyoneHasLocked && board.state == State::tasting;
    return board;
  });
}

}  // namespace oddglass::tasting
