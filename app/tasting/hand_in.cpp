#include "tasting/hand_in.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "store/blob.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::tasting {

namespace {

using store::bound;

struct Question {
  Item item;
  ItemKind kind;
  bool required;
  std::optional<int> low, high;
};

std::vector<Question> asked(SQLite::Database& db, std::int64_t session) {
  std::vector<Question> all;
  auto rows = bound(db, "SELECT item, kind, required, low, high FROM item WHERE session_id = ? ORDER BY item", session);
  while (rows.executeStep()) {
    const auto maybe = [&](int column) { return rows.getColumn(column).isNull() ? std::nullopt : std::optional(rows.getColumn(column).getInt()); };
    all.push_back({{rows.getColumn(0).getInt()}, named<ItemKind>(rows.getColumn(1).getString()).value_or(ItemKind::words),
                   rows.getColumn(2).getInt() != 0, maybe(3), maybe(4)});
  }
  return all;
}

std::string text(int value) { return std::to_string(value); }

ItemKind kindOf(const std::vector<Question>& sheet, Item item) { return std::ranges::find(sheet, item, &Question::item)->kind; }

void checkReply(const Question& item, const Reply& reply, const std::vector<std::pair<Position, Code>>& codes, Place place) {
  const auto refuse = [&] { throw Problem(Trouble::answerOutOfRange, "value", {{"value", text(reply.value)}, {"item", text(item.item.value)}}); };
  if (item.kind == ItemKind::words) {
    if (!reply.text) refuse();
    if (lettersIn(*reply.text) > 4000) throw Problem(Trouble::tooLong, "value", {{"limit", "4000"}});
    return;
  }
  if (reply.text) refuse();
  if (item.kind == ItemKind::choose || item.kind == ItemKind::prefer) {
    if (item.kind == ItemKind::prefer && reply.value == 0 && item.low == 0) return;
    if (std::ranges::any_of(codes, [&](const auto& each) { return each.second.value == reply.value; })) return;
    std::string all;
    for (const auto& each : codes) all += (all.empty() ? "" : ", ") + text(each.second.value);
    throw Problem(Trouble::codeNotHere, "value", {{"code", text(reply.value)}, {"place", text(place.value)}, {"codes", all}});
  }
  if ((item.low && reply.value < *item.low) || (item.high && reply.value > *item.high)) refuse();
}

const char* word(Via via) {
  switch (via) {
    case Via::device: return "device";
    case Via::paper: return "paper";
    case Via::file: return "file";
  }
  return "device";
}

}  // namespace

// Writes a hand-in inside a transaction that somebody else commits.
class Desk {
 public:
  Desk(SQLite::Database& db, std::int64_t session, Clock& clock, Chance& chance) : db_(db), session_(session), clock_(clock), chance_(chance) {}

  Receipt take(const HandIn& in) {
    requireOpenTable(db_, session_);
    if (auto before = acknowledged(in)) return *before;
    requireSeated(db_, session_, in.place);
    requireRound(db_, session_, in.round);
    refuseLocked(in);
    if (nextRound(db_, session_, in.place) != in.round.value)
      throw Problem(Trouble::notThisRound, "round", {{"round", text(in.round.value)}, {"place", text(in.place.value)}});
    return write(in, checked(in));
  }

 private:
  std::optional<Receipt> acknowledged(const HandIn& in) {
    auto row = bound(db_, "SELECT seq, at FROM hand_in WHERE session_id = ? AND place = ? AND client_id = ?", session_, in.place.value);
    store::bindBlob(row, 3, in.clientId);
    if (!row.executeStep()) return std::nullopt;
    return Receipt({row.getColumn(0).getInt()}, row.getColumn(1).getInt64(), true);
  }

  void refuseLocked(const HandIn& in) {
    auto locked = bound(db_, "SELECT at FROM hand_in WHERE session_id = ? AND place = ? AND round = ?", session_, in.place.value, in.round.value);
    if (locked.executeStep())
      throw Problem(Trouble::flightLocked, "round", {{"at", std::to_string(locked.getColumn(0).getInt64())}, {"place", text(in.place.value)}, {"round", text(in.round.value)}});
    auto aside = bound(db_, "SELECT 1 FROM voided WHERE session_id = ? AND place = ? AND round = ?", session_, in.place.value, in.round.value);
    if (aside.executeStep()) throw Problem(Trouble::flightVoid, "round", {{"place", text(in.place.value)}, {"round", text(in.round.value)}});
  }

  // The replies in the order of the sheet, words cleaned, empty words left out.
  std::vector<Reply> checked(const HandIn& in) {
    auto codes = currentCodes(db_, session_, in.place, in.round);
    // The marked cup is there to compare with; nobody chooses it.
    if (askedIn(db_, session_).hasMarked()) std::erase_if(codes, [](const auto& each) { return each.first == Position{1}; });
    const auto sheet = asked(db_, session_);
    std::vector<Reply> replies;
    for (const Question& item : sheet) {
      const auto matches = [&](const Reply& reply) { return reply.item == item.item; };
      if (std::ranges::count_if(in.replies, matches) > 1) throw Problem(Trouble::alreadyThere, "item", {{"text", text(item.item.value)}});
      const auto found = std::ranges::find_if(in.replies, matches);
      if (found == in.replies.end()) {
        if (item.required) throw Problem(Trouble::answerMissing, "item", {{"item", text(item.item.value)}, {"kind", std::string(nameOf(item.kind))}});
        continue;
      }
      Reply reply = *found;
      if (reply.text) reply.text = cleaned(*reply.text);
      checkReply(item, reply, codes, in.place);
      if (item.kind == ItemKind::words && reply.text->empty()) continue;
      const auto isPicked = [&](const Reply& before) { return before.value == reply.value && kindOf(sheet, before.item) == ItemKind::choose; };
      if (item.kind == ItemKind::choose && std::ranges::any_of(replies, isPicked))
        throw Problem(Trouble::alreadyThere, "value", {{"text", text(reply.value)}});
      replies.push_back(std::move(reply));
    }
    for (const Reply& reply : in.replies) {
      if (std::ranges::count(in.replies, reply.item, &Reply::item) > 1) throw Problem(Trouble::alreadyThere, "item", {{"text", text(reply.item.value)}});
      if (std::ranges::none_of(sheet, [&](const Question& item) { return item.item == reply.item; }))
        throw Problem(Trouble::unknown, "item", {{"what", "question"}, {"text", text(reply.item.value)}});
    }
    return replies;
  }

  Receipt write(const HandIn& in, const std::vector<Reply>& replies) {
    const Millis at = clock_.now();
    openTable(db_, session_, at);
    const canon::Salt salt = chance_.bytes<16>();
    std::vector<canon::Salt> wordSalts;
    canon::Json cells = canon::Json::array();
    for (const Reply& reply : replies) {
      wordSalts.push_back(reply.text ? chance_.bytes<16>() : canon::Salt{});
      cells.push_back({reply.item.value, 0, reply.text ? canon::Json(digestOf(wordSalts.back(), *reply.text)) : canon::Json(reply.value)});
    }
    const std::string digest = digestOf(salt, canon::canonical(cells));
    const Logged entry = store::Log::append(db_, session_, at, Event::answered, {{"digest", digest}, {"place", in.place.value}, {"round", in.round.value}});
    auto insert = bound(db_, "INSERT INTO hand_in (session_id, place, round, via, at, seq, client_id, salt) VALUES (?, ?, ?, ?, ?, ?, ?, ?)", session_,
                        in.place.value, in.round.value, word(in.via), at, entry.seq().value);
    store::bindBlob(insert, 7, in.clientId);
    store::bindBlob(insert, 8, salt);
    insert.exec();
    const auto handIn = db_.getLastInsertRowid();
    for (std::size_t i = 0; i < replies.size(); ++i) writeReply(handIn, replies[i], wordSalts[i]);
    return Receipt(entry.seq(), at, false);
  }

  void writeReply(std::int64_t handIn, const Reply& reply, const canon::Salt& salt) {
    if (!reply.text) {
      store::run(db_, "INSERT INTO answer (hand_in_id, item, value) VALUES (?, ?, ?)", handIn, reply.item.value, reply.value);
      return;
    }
    auto answer = bound(db_, "INSERT INTO answer (hand_in_id, item, text_digest) VALUES (?, ?, ?)", handIn, reply.item.value);
    store::bindBlob(answer, 3, canon::sha256({salt, canon::bytesOf(*reply.text)}));
    answer.exec();
    auto words = bound(db_, "INSERT INTO answer_words (hand_in_id, item, code, text, salt) VALUES (?, ?, 0, ?, ?)", handIn, reply.item.value, *reply.text);
    store::bindBlob(words, 4, salt);
    words.exec();
  }

  SQLite::Database& db_;
  std::int64_t session_;
  Clock& clock_;
  Chance& chance_;
};

std::vector<Receipt> handInAll(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const std::vector<HandIn>& all) {
  return store::write(store, [&](SQLite::Database& db) {
    Desk desk(db, store::sessionRow(db, session), clock, chance);
    std::vector<Receipt> receipts;
    for (const HandIn& each : all) receipts.push_back(desk.take(each));
    return receipts;
  });
}

Receipt handIn(store::Store& store, Clock& clock, Chance& chance, const SessionId& session, const HandIn& in) {
  return handInAll(store, clock, chance, session, {in}).front();
}

}  // namespace oddglass::tasting
