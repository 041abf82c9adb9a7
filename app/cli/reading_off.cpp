#include "cli/families.h"
#include "cli/last_entry.h"
#include "domain/by_hand.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/found_files.h"
#include "session/found.h"
#include "session/record.h"
#include "words/history.h"
#include "words/routine.h"

namespace oddglass::cli {
namespace {

ReadBy readerOf(const Given& given, Routine routine, bool twoSheets) {
  if (twoSheets) return ReadBy::twoSheets;
  if (given.isGiven()) return named<ReadBy>(given.oneOf({"taster", "pourer", "another"})).value();
  return routine == Routine::couple ? ReadBy::taster : usualReader(routine);
}

}  // namespace

void describeReadingOff(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "key", "Reads off what hands hid, once the answers are locked: what stood under which cup");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto first = command.argument("FILE", "A CSV table: place, round, code (aside for the cup set aside), lot; of whole bottles: bottle, lot; a couple's first sheet: place, round, mark, lot");
  const auto second = command.argument("SECOND", "A couple's second sheet: place, round, mark, code");
  const auto by = command.option("--by", "WHO", "taster, pourer or another: who read it off (the one whom the routine names)");
  command.does([=](Desk& desk) -> Answer {
    first->text();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const Routine routine = session::record(*store, id).plan.routine;
    const ReadBy reader = readerOf(*by, routine, second->isGiven());
    std::vector<session::FoundFlight> flights;
    std::vector<std::optional<VoidReason>> reasons;
    std::vector<session::ToRead> read;
    if (routine == Routine::bottles) {
      read = session::toRead(*store, id);
      reasons = session::peel(*store, desk.clock(), desk.chance(), id, exchange::readPeeled(*store, id, first->text()), reader);
    } else {
      flights = second->isGiven() ? exchange::readTwoSheets(*store, id, first->text(), second->text()) : exchange::readFound(*store, id, first->text());
      if (flights.empty()) throw Problem(Trouble::empty, "FILE");
      reasons = session::readOffAll(*store, desk.clock(), desk.chance(), id, flights, reader);
    }
    Json list = Json::array();
    std::vector<std::string> lines{entryLine(desk.voice(), lastEntry(*store, id, Event::found))};
    for (std::size_t i = 0; i < reasons.size(); ++i) {
      const Place place = flights.empty() ? read[i].place : flights[i].place;
      const Round round = flights.empty() ? read[i].round : flights[i].round;
      list.push_back({{"place", place.value}, {"round", round.value}, {"set_aside", reasons[i] ? Json(nameOf(*reasons[i])) : Json()}});
      if (reasons[i]) lines.push_back(words::asideLine(desk.voice(), place, round, *reasons[i]));
    }
    return {Json{{"id", id.text}, {"by", nameOf(reader)}, {"read", std::move(list)}}, std::move(lines)};
  });
}

}  // namespace oddglass::cli
