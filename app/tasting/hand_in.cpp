#include "tasting/hand_in.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/replies.h"
#include "domain/text.h"
#include "store/blob.h"
#include "tasting/table.h"

#include <algorithm>

namespace oddglass::tasting {

namespace {

using store::bound;

std::string text(int value) { return std::to_string(value); }

[[noreturn]] void refuse(const FaultyReply& fault, const std::vector<SheetItem>& items, const std::vector<Code>& cups, Place place) {
  const std::string item = text(fault.item.value);
  switch (fault.fault) {
    case ReplyFault::unknown: throw Problem(Trouble::unknown, "item", {{"what", "question"}, {"text", item}});
    case ReplyFault::twice: {
      const bool isPick = fault.value != 0 && std::ranges::find(items, fault.item, &SheetItem::item)->kind == ItemKind::choose;
      throw Problem(Trouble::alreadyThere, isPick ? "value" : "item", {{"text", isPick ? text(fault.value) : item}});
    }
    case ReplyFault::missing:
      throw Problem(Trouble::answerMissing, "item", {{"item", item}, {"kind", std::string(nameOf(std::ranges::find(items, fault.item, &SheetItem::item)->kind))}});
    case ReplyFault::outOfRange: throw Problem(Trouble::answerOutOfRange, "value", {{"value", text(fault.value)}, {"item", item}});
    case ReplyFault::notARanking: throw Problem(Trouble::notARanking, "value", {{"item", item}});
    case ReplyFault::notFivePoints: throw Problem(Trouble::notFivePoints, "value", {{"item", item}, {"sum", text(fault.value)}});
    case ReplyFault::notHere: break;
  }
  std::string all;
  for (const Code& each : cups) all += (all.empty() ? "" : ", ") + text(each.value);
  const int code = fault.code.value != 0 ? fault.code.value : fault.value;
  throw Problem(Trouble::codeNotHere, fault.code.value != 0 ? "code" : "value", {{"code", text(code)}, {"place", text(place.value)}, {"codes", all}});
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

  // The replies in the order of the sheet, then of the cups; words cleaned, empty words left out.
  std::vector<Reply> checked(const HandIn& in) {
    const auto stand = currentCodes(db_, session_, in.place, in.round);
    // The marked cup is there to compare with; nobody chooses or scores it.
    const bool hasMarked = askedIn(db_, session_).hasMarked;
    std::vector<Code> cups;
    for (const auto& [position, code] : stand)
      if (!hasMarked || position != Position{1}) cups.push_back(code);
    const auto items = itemsIn(db_, session_);
    std::vector<Reply> replies;
    std::vector<GivenReply> given;
    for (Reply reply : in.replies) {
      if (reply.text) reply.text = cleaned(*reply.text);
      if (reply.text && lettersIn(*reply.text) > 4000) throw Problem(Trouble::tooLong, "value", {{"limit", "4000"}});
      const auto item = std::ranges::find(items, reply.item, &SheetItem::item);
      if (reply.text && reply.text->empty() && item != items.end() && answerForm(item->kind).isText) continue;
      given.push_back({reply.item, reply.code, reply.text ? std::nullopt : std::optional(reply.value), reply.text.has_value()});
      replies.push_back(std::move(reply));
    }
    if (const auto fault = firstFault(items, cups, given)) refuse(*fault, items, cups, in.place);
    const auto standing = [&](Code code) { return std::ranges::find(cups, code) - cups.begin(); };
    std::ranges::stable_sort(replies, {}, [&](const Reply& reply) { return std::pair(reply.item, reply.code.value == 0 ? 0 : standing(reply.code)); });
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
      cells.push_back({reply.item.value, reply.code.value, reply.text ? canon::Json(digestOf(wordSalts.back(), *reply.text)) : canon::Json(reply.value)});
    }
    const std::string digest = digestOf(salt, canon::canonical(cells));
    canon::Json body{{"digest", digest}, {"place", in.place.value}, {"round", in.round.value}};
    if (in.typedBy) body["typed_by"] = in.typedBy->value;
    const Logged entry = store::Log::append(db_, session_, at, Event::answered, body);
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
      store::run(db_, "INSERT INTO answer (hand_in_id, item, code, value) VALUES (?, ?, ?, ?)", handIn, reply.item.value, reply.code.value, reply.value);
      return;
    }
    auto answer = bound(db_, "INSERT INTO answer (hand_in_id, item, code, text_digest) VALUES (?, ?, ?, ?)", handIn, reply.item.value, reply.code.value);
    store::bindBlob(answer, 4, canon::sha256({salt, canon::bytesOf(*reply.text)}));
    answer.exec();
    auto words = bound(db_, "INSERT INTO answer_words (hand_in_id, item, code, text, salt) VALUES (?, ?, ?, ?, ?)", handIn, reply.item.value, reply.code.value, *reply.text);
    store::bindBlob(words, 5, salt);
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
