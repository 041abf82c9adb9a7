#include "cli/families.h"
#include "cli/last_entry.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "exchange/sheets.h"
#include "session/erase.h"
#include "session/pour.h"
#include "session/record.h"
#include "store/together.h"
#include "tasting/board.h"
#include "tasting/flight.h"
#include "tasting/mishaps.h"
#include "tasting/seats.h"
#include "words/care.h"
#include "words/mishaps.h"

#include <sstream>

namespace oddglass::cli {

void describeAnswer(CLI::App& app, Command::Work& chosen);

namespace {

constexpr int mostPlaces = 1000, mostRounds = 20;

std::string stepName(tasting::PlaceStep step) {
  switch (step) {
    case tasting::PlaceStep::empty: return "empty";
    case tasting::PlaceStep::waiting: return "waiting";
    case tasting::PlaceStep::tasting: return "tasting";
    case tasting::PlaceStep::locked: return "locked";
    case tasting::PlaceStep::left: return "left";
  }
  return {};
}

/// The codes before a place that tastes next; empty for any other.
Json cupsOf(store::Store& store, const tasting::Board& board, const tasting::BoardPlace& place) {
  Json cups = Json::array();
  const bool isOpen = board.state == State::sealed || board.state == State::tasting;
  if (!isOpen || (place.step != tasting::PlaceStep::waiting && place.step != tasting::PlaceStep::tasting)) return cups;
  if (const auto flight = tasting::nextFlight(store, board.id, place.place))
    for (const auto& cup : flight->cups) cups.push_back(cup.code.value);
  return cups;
}

void describeBoard(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "table", "The table as everybody may see it: places, who sits there, and the codes that come next");
  const auto which = command.argument("SESSION", "The beginning of its id");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const tasting::Board board = tasting::board(*store, sessionOf(*store, *which));
    Json places = Json::array(), invited = Json::array();
    for (const auto& each : board.places)
      places.push_back({{"place", each.place.value}, {"spare", each.isSpare}, {"step", stepName(each.step)}, {"who", each.who}, {"round", each.round ? Json(each.round->value) : Json()},
                        {"locked", each.lockedRounds}, {"void", each.voidRounds}, {"cups", cupsOf(*store, board, each)}});
    for (const auto& each : board.invited) invited.push_back({{"taster", each.taster.text}, {"name", each.name}, {"seated", each.isSeated}});
    return {Json{{"id", board.id.text}, {"state", nameOf(board.state)}, {"guest_title", board.guestTitle}, {"seal_mark", board.sealMark}, {"rounds", board.rounds}, {"evenings", board.evenings}, {"evening", board.evening}, {"between_evenings", board.isBetweenEvenings}, {"wave", board.wave},
                 {"locked", board.locked}, {"expected", board.expected}, {"places", std::move(places)}, {"invited", std::move(invited)}}, {}};
  });
}

void describeSit(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "sit", "A taster takes a place; with it you say that they are of age, heard the cautions and consent");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto place = command.argument("PLACE", "The number of the place");
  const auto who = command.argument("TASTER", "Name or id");
  const auto as = command.option("--as", "HOW", "signed, nickname or loose: how they want to appear (signed)");
  const auto heard = command.flag("--heard-about-cups", "A latecomer who heard something about the cups");
  command.does([=](Desk& desk) -> Answer {
    tasting::SitDown down{{place->whole(1, mostPlaces)}, {}, ShownAs::signedName, true, true, true, *heard};
    if (as->isGiven()) down.as = named<ShownAs>(as->oneOf({"signed", "nickname", "loose"})).value();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    down.taster = tasterOf(*store, *who);
    tasting::sit(*store, desk.clock(), id, down);
    const std::string told = words::placeQuestions(desk.voice(), words::guessedAmong(session::record(*store, id).plan)).fewFriends;
    Answer answer{Json{{"id", id.text}, {"place", down.place.value}, {"as", nameOf(down.as)}, {"told", told.empty() ? Json() : Json(told)}},
                  {entryLine(desk.voice(), lastEntry(*store, id, Event::placeTaken))}};
    if (!told.empty()) answer.lines.push_back(told);
    return answer;
  });
}

void describePoured(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "poured", "The pourer says that all stands ready, and with FILE what really went into which cup");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto file = command.argument("FILE", "A CSV table with the columns code and lot (or \"not sure\")");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    std::vector<session::ReallyPoured> cups;
    if (file->isGiven()) cups = exchange::readPoured(*store, id, file->text());
    store::Together together(*store);
    session::pouredReallyAll(*store, desk.clock(), desk.chance(), id, cups);
    if (!tasting::board(*store, id).pourReported) session::sayPoured(*store, desk.clock(), id);
    together.commit();
    return {Json{{"id", id.text}, {"cups", cups.size()}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::poured))}};
  });
}

void describeSpilled(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "spilled", "A cup is lost: its spare code takes its place; where hands hid the cups its round is set aside");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto code = command.argument("CODE", "What stood on the cup");
  command.does([=](Desk& desk) -> Answer {
    const Code lost{code->whole(100, 9999)};
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const auto by = tasting::lostCup(*store, desk.clock(), desk.chance(), id, lost);
    return {Json{{"id", id.text}, {"code", lost.value}, {"by", by ? Json(by->value) : Json()}, {"set_aside", !by}},
            {entryLine(desk.voice(), lastEntry(*store, id, by ? Event::spilled : Event::voided))}};
  });
}

void describeVoid(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "void", "Sets a flight aside; it will not count");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto place = command.argument("PLACE", "The number of the place");
  const auto round = command.argument("ROUND", "The number of the round");
  const auto reason = command.option("--reason", "TEXT", "not_sure, poured_wrong, mixed_up, wrong_person, cup_lost, misread, or in your own words");
  const auto written = command.option("--written", "TEXT", "With misread: what was written in place of a code, as it stands there");
  command.does([=](Desk& desk) -> Answer {
    const Place at{place->whole(1, mostPlaces)};
    const Round in{round->whole(1, mostRounds)};
    const auto offered = named<VoidReason>(reason->text());
    if (written->isGiven() && offered != VoidReason::misread) throw Problem(Trouble::doesNotFit, "--written");
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    tasting::setAside(*store, desk.clock(), desk.chance(), id, at, in, offered.value_or(VoidReason::other), written->isGiven() ? written->text() : offered ? "" : reason->text());
    return {Json{{"id", id.text}, {"place", at.value}, {"round", in.value}, {"reason", nameOf(offered.value_or(VoidReason::other))}},
            {entryLine(desk.voice(), lastEntry(*store, id, Event::voided))}};
  });
}

void describeSwapped(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "swapped", "Two places had each other's cups in a round: what is not locked begins again, what is locked is set aside");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto one = command.argument("PLACE", "The number of one place");
  const auto other = command.argument("OTHER", "The number of the other");
  const auto round = command.argument("ROUND", "The number of the round");
  command.does([=](Desk& desk) -> Answer {
    const Place first{one->whole(1, mostPlaces)}, second{other->whole(1, mostPlaces)};
    const Round in{round->whole(1, mostRounds)};
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const tasting::MatsSwapped done = tasting::matsSwapped(*store, desk.clock(), desk.chance(), id, first, second, in);
    const auto list = [](const std::vector<Place>& places) {
      Json json = Json::array();
      for (Place each : places) json.push_back(each.value);
      return json;
    };
    return {Json{{"id", id.text}, {"round", in.value}, {"begin_again", list(done.begunAgain)}, {"set_aside", list(done.setAside)}},
            {entryLine(desk.voice(), lastEntry(*store, id, Event::matsSwapped))}};
  });
}

void describeWrongPerson(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "wrong-person", "The wrong person sat at a place: it is free again, or what was locked there is set aside");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto place = command.argument("PLACE", "The number of the place");
  command.does([=](Desk& desk) -> Answer {
    const Place at{place->whole(1, mostPlaces)};
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const tasting::WrongPerson done = tasting::wrongPerson(*store, desk.clock(), desk.chance(), id, at);
    return {Json{{"id", id.text}, {"place", at.value}, {"freed", done.freed}, {"set_aside", done.setAside}}, {words::wrongPersonLine(desk.voice(), at, done.freed, done.setAside)}};
  });
}

void describeStops(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "stops", "Whoever sits at a place stops here; with --take-back all their answers are destroyed");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto place = command.argument("PLACE", "The number of the place");
  const auto back = command.flag("--take-back", "Takes back all that was locked at that place");
  const auto sure = command.flag("--yes-cannot-be-undone", "Needed with --take-back");
  command.does([=](Desk& desk) -> Answer {
    const Place at{place->whole(1, mostPlaces)};
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    if (*back) session::takeBack(*store, desk.clock(), id, at, *sure);
    else tasting::stopHere(*store, desk.clock(), id, at);
    return {Json{{"id", id.text}, {"place", at.value}, {"taken_back", *back}}, {entryLine(desk.voice(), lastEntry(*store, id, *back ? Event::erased : Event::placeLeft))}};
  });
}

std::set<Place> placesIn(const Given& given) {
  std::set<Place> places;
  if (!given.isGiven()) return places;
  std::istringstream parts(given.text());
  for (std::string part; std::getline(parts, part, ',');) places.insert({Given{given.name, part}.whole(1, mostPlaces)});
  return places;
}

void describeSaid(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "said", "Something about the cups was said aloud");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto heard = command.option("--heard-by", "PLACES", "Such as 1,4; everybody when left out");
  const auto text = command.option("--text", "TEXT", "What was said; shown after the reveal only");
  command.does([=](Desk& desk) -> Answer {
    const std::set<Place> places = placesIn(*heard);
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    tasting::said(*store, desk.clock(), desk.chance(), id, places, text->typed.value_or(""));
    Json list = Json::array();
    for (Place each : places) list.push_back(each.value);
    return {Json{{"id", id.text}, {"heard_by", std::move(list)}}, {entryLine(desk.voice(), lastEntry(*store, id, Event::said))}};
  });
}

}  // namespace

void describeTable(CLI::App& app, Command::Work& chosen) {
  describeBoard(app, chosen);
  describeSit(app, chosen);
  describePoured(app, chosen);
  describeSpilled(app, chosen);
  describeVoid(app, chosen);
  describeSwapped(app, chosen);
  describeWrongPerson(app, chosen);
  describeStops(app, chosen);
  describeSaid(app, chosen);
  describeAnswer(app, chosen);
}

}  // namespace oddglass::cli
