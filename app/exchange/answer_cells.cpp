#include "exchange/answer_cells.h"

#include "canon/canonical.h"
#include "canon/digest.h"
#include "domain/names.h"

#include <algorithm>

namespace oddglass::exchange {
namespace {

template <class E>
int wordOrNumber(const AnswerCells& cells, int low, int high) {
  if (const auto value = named<E>(cells.value.text)) return static_cast<int>(*value);
  return cells.whole(cells.value, low, high);
}

int chosenCode(const AnswerCells& cells) {
  const std::string &code = cells.code.text, &value = cells.value.text;
  if (isFlightWide(code)) return cells.whole(cells.value, 100, 9999);
  const int named = cells.whole(cells.code, 100, 9999);
  if (isMissing(value) || value == "1" || value == code) return named;
  cells.refuse(cells.value, "two different cups are named: " + code + " and " + value);
}

int sameOrNot(const AnswerCells& cells) {
  if (cells.value.text == "same") return 1;
  if (cells.value.text == "different") return 2;
  return cells.whole(cells.value, 1, 2);
}

canon::Salt clientIdOf(const SessionId& session, const tasting::HandIn& in) {
  canon::Json all{session.text, in.place.value, in.round.value};
  for (const auto& reply : in.replies) {
    all.push_back({reply.item.value, reply.value, reply.text.value_or("")});
    if (reply.code.value != 0) all.back().push_back(reply.code.value);
  }
  const auto digest = canon::sha256({canon::bytesOf(canon::canonical(all))});
  canon::Salt id{};
  std::copy_n(digest.begin(), id.size(), id.begin());
  return id;
}

}  // namespace

void AnswerCells::refuse(const NamedCell& cell, const std::string& text) const { table.refuse(row, cell.column, text); }

int AnswerCells::whole(const NamedCell& cell, int low, int high) const { return table.wholeOf(row, cell.column, cell.text, low, high); }

bool isFlightWide(const std::string& code) { return isMissing(code) || code == "0"; }

tasting::Reply replyOf(const SheetItem& item, const AnswerCells& cells) {
  tasting::Reply reply;
  reply.item = item.item;
  const std::string& value = cells.value.text;
  if (item.kind == ItemKind::prefer && isFlightWide(cells.code.text) && (value == "none" || value == "0")) return reply;
  if (item.kind == ItemKind::choose || item.kind == ItemKind::prefer) {
    reply.value = chosenCode(cells);
    return reply;
  }
  if (item.perCup) {
    reply.code = {cells.whole(cells.code, 100, 9999)};
    const bool saysNone = item.kind == ItemKind::worst && (value == "0" || value == "none");
    if (answerForm(item.kind).isText && !saysNone) reply.text = value;
    else if (!saysNone) reply.value = cells.whole(cells.value, item.low.value_or(0), item.high.value_or(9999));
    return reply;
  }
  if (!isFlightWide(cells.code.text)) cells.refuse(cells.code, "this question is about the whole flight; leave the code empty");
  switch (item.kind) {
    case ItemKind::sureness: reply.value = wordOrNumber<Sureness>(cells, item.low.value_or(1), item.high.value_or(3)); break;
    case ItemKind::clue: reply.value = wordOrNumber<Clue>(cells, item.low.value_or(1), item.high.value_or(6)); break;
    case ItemKind::words: reply.text = value; break;
    case ItemKind::same: reply.value = sameOrNot(cells); break;
    default: break;
  }
  return reply;
}

bool answersAlready(const tasting::HandIn& in, const tasting::Reply& reply) {
  return std::ranges::any_of(in.replies, [&](const tasting::Reply& before) { return before.item == reply.item && before.code == reply.code; });
}

std::vector<tasting::HandIn> handInsOf(const SessionId& session, Flights flights) {
  std::vector<tasting::HandIn> all;
  for (auto& [flight, in] : flights) {
    std::ranges::sort(in.replies, {}, [](const tasting::Reply& reply) { return std::pair(reply.item, reply.code); });
    in.clientId = clientIdOf(session, in);
    all.push_back(std::move(in));
  }
  return all;
}

}  // namespace oddglass::exchange
