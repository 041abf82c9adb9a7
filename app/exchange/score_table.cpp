#include "exchange/score_table.h"

#include "domain/names.h"

#include <algorithm>

namespace oddglass::exchange {
namespace {

using Row = std::vector<std::string>;

std::string codeAt(const Plan& plan, const RevealedFlight& flight, Position position) {
  const auto cup = std::ranges::find_if(plan.cups, [&](const Cup& each) {
    return each.place == flight.place && each.round == flight.round && each.position == position && each.spare == 0;
  });
  return cup == plan.cups.end() ? std::string() : std::to_string(cup->code.value);
}

void addScore(std::vector<Row>& rows, const RevealedSession& session, const RevealedFlight& flight, const char* who) {
  const auto person = std::ranges::find(session.people, flight.place, &ShownPerson::place);
  const Row head{session.id.text, std::to_string(flight.place.value), person == session.people.end() ? "" : person->shown, who, std::to_string(flight.round.value),
                 flight.voided ? std::string(nameOf(*flight.voided)) : ""};
  for (const SheetReply& reply : flight.replies) {
    const auto item = std::ranges::find(session.plan.items, reply.item, &SheetItem::item);
    if (item == session.plan.items.end()) continue;
    Row row = head;
    if (reply.cup) {
      const auto slot = flight.poured.at(static_cast<std::size_t>(reply.cup->value - 1));
      const auto lot = slot ? std::ranges::find(session.plan.lots, *slot, &PlannedLot::slot) : session.plan.lots.end();
      row.insert(row.end(), {std::to_string(reply.cup->value), codeAt(session.plan, flight, *reply.cup), slot ? std::to_string(slot->value) : "",
                             lot == session.plan.lots.end() ? "" : lot->beverageName + ", " + lot->lotName});
    } else {
      row.insert(row.end(), 4, "");
    }
    row.insert(row.end(), {std::to_string(item->item.value), std::string(nameOf(item->kind)), std::string(nameOf(item->part)), item->word,
                           reply.value ? std::to_string(*reply.value) : "", reply.words});
    rows.push_back(std::move(row));
  }
}

}  // namespace

std::vector<Row> scoreRows(const RevealedSession& session) {
  std::vector<Row> rows{{"session", "place", "person", "who", "round", "set_aside", "position", "code", "lot", "drink", "item", "kind", "part", "word", "value", "words"}};
  for (const PanelFlight& flight : session.panel) addScore(rows, session, flight, "panel");
  for (const MakerFlight& flight : session.makers) addScore(rows, session, flight, "maker");
  return rows;
}

const std::vector<Row>& scoreCodebook() {
  static const std::vector<Row> rows{
      {"scores", "session, place, person, who, round, set_aside", "as in answers"},
      {"scores", "position, code", "where the cup stood in its flight and what stood on it (the code first set there, when it was spilled and replaced); empty for a question about the flight"},
      {"scores", "lot, drink", "what was really in the cup: the lot's number in the plan, and its name; empty where the pourer was not sure"},
      {"scores", "item", "the number of the question"},
      {"scores", "kind", "liking 1 to 9; line 0 to 100; magnitude 0 to 1000 (thousandths of the labelled line); just_right 1 much too little to 5 much too much; check 1 it applies, 0 not; rank 1 the least; split points of five; behaviour 1 pour it away, 2 finish it, 3 ask for more; worst 0 looked and found none, or words; change_one, words; distance 0 no different from the marked cup to 10"},
      {"scores", "part", "when it was asked: look, smell, main, late (again some time after swallowing), last (about all cups together)"},
      {"scores", "word", "what was asked about"},
      {"scores", "value", "the answer as a number"},
      {"scores", "words", "the answer in words"},
  };
  return rows;
}

}  // namespace oddglass::exchange
