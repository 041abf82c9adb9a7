#include "demo/demo_sheets.h"

using namespace oddglass;

namespace {

SheetItem ask(ItemKind kind, const char* word = "", std::optional<int> limit = std::nullopt, bool isMain = false) {
  SheetItem item;
  item.kind = kind;
  item.word = word;
  item.limit = limit;
  item.isMain = isMain;
  item.required = kind != ItemKind::changeOne;
  return item;
}

Draft sheetDraftOf(DemoShelf& demo, const char* title, const char* guestTitle, std::vector<LotId> lots, Question question, std::vector<SheetItem> items) {
  Draft draft;
  draft.title = title;
  draft.guestTitle = guestTitle;
  draft.question = question;
  draft.method = Method::sheet;
  draft.methodChosen = true;
  draft.lots = std::move(lots);
  draft.sheet.items = std::move(items);
  draft.sheet.cleanser = "water";
  draft.pourer = demo.people.at("Odo");
  draft.cupMl = 20;
  draft.careSettled = true;
  draft.giveAwaysUnasked = true;
  draft.promises = {{Outcome::shown, "change one thing and pour it again"}, {Outcome::notShown, "leave the recipe alone"}};
  return draft;
}

tasting::HandIn filledIn(DemoShelf& demo, const session::PourSheet& sheet, const tasting::Flight& flight, const Script& script) {
  tasting::HandIn in;
  in.place = flight.place;
  in.round = flight.round;
  in.clientId = demo.chance.bytes<16>();
  for (const SheetItem& item : flight.items) {
    std::map<Slot, int> seen;
    for (const tasting::FlightCup& cup : flight.cups) {
      if (cup.isMarked) continue;
      Slot lot{0};
      for (const auto& line : sheet.placeByPlace)
        if (line.code == cup.code) lot = line.slot;
      const Said said = script(flight.place.value, item, lot, ++seen[lot]);
      if (said.value) in.replies.push_back({item.item, *said.value, std::nullopt, cup.code});
      else if (!said.words.empty()) in.replies.push_back({item.item, 0, said.words, cup.code});
    }
  }
  return in;
}

SessionId play(DemoShelf& demo, Draft draft, const std::vector<const char*>& names, Millis begins, const Script& script, const char* decision) {
  demo.clock.set(begins);
  draft.id = session::newDraft(*demo.store, demo.clock, demo.chance, draft.title);
  return carryOut(demo, draft, names, begins, script, decision);
}

}  // namespace

SessionId carryOut(DemoShelf& demo, Draft draft, const std::vector<const char*>& names, Millis begins, const Script& script, const char* decision, bool allSigned) {
  Millis now = begins;
  const auto later = [&](int minutes) { demo.clock.set(now += minutes * minute); };
  const SessionId id = draft.id;
  draft.tasters.clear();
  for (const char* name : names) draft.tasters.push_back(demo.people.at(name));
  session::saveDraft(*demo.store, demo.clock, draft);
  session::seal(*demo.store, demo.clock, demo.chance, id);
  later(10);
  const session::PourSheet sheet = session::openPourSheet(*demo.store, demo.clock, id);
  later(20);
  session::sayPoured(*demo.store, demo.clock, id);
  int place = 0;
  for (const char* name : names) {
    later(1);
    tasting::sit(*demo.store, demo.clock, id, {{++place}, demo.people.at(name), place % 3 == 2 && !allSigned ? ShownAs::loose : ShownAs::signedName, true, true, true, false});
  }
  for (int at = 1; at <= place; ++at) {
    const auto flight = tasting::nextFlight(*demo.store, id, {at}).value();
    tasting::begin(*demo.store, demo.clock, id, {at}, flight.round);
    later(8);
    tasting::handIn(*demo.store, demo.clock, demo.chance, id, filledIn(demo, sheet, flight, script));
  }
  later(5);
  session::close(*demo.store, demo.clock, id);
  session::reveal(*demo.store, demo.clock, id);
  later(20);
  session::decide(*demo.store, demo.clock, demo.chance, id, decision);
  return id;
}

PlayedEvening playMarkedCup(DemoShelf& demo) {
  Draft draft = sheetDraftOf(demo, "How far is the heather mead from the bought one?", "An evening with mead", {demo.mead, demo.boughtMead, demo.boughtMeadOlder}, Question::lacks,
                        {ask(ItemKind::distance, "", 2, true), ask(ItemKind::liking)});
  draft.marked = Slot{2};
  const auto script = [](int place, const SheetItem& item, Slot lot, int) -> Said {
    if (item.kind == ItemKind::liking) return {5 + (place + lot.value) % 3};
    if (lot == Slot{2}) return {place % 2};                 // the marked drink again, under a code: hardly any distance
    return {lot == Slot{3} ? 2 + place % 2 : 5 + place % 3};  // the older vintage; the batch
  };
  const auto id = play(demo, draft, eightAndWenna, 1784660400000, script, "brew it drier, and pour it beside the marked cup again");  // 21 July 2026, 19:00 UTC
  return {id, "Two vintages beside a marked cup: the coded marked drink lies next to nothing away, the older vintage about 2 of 10 further, the batch about 5: more than the reference's own range."};
}

PlayedEvening playKindFriends(DemoShelf& demo) {
  Draft draft = sheetDraftOf(demo, "How good is porter no. 4 really?", "Dark beer", {demo.porter, demo.boughtPorter}, Question::good,
                        {ask(ItemKind::liking), ask(ItemKind::behaviour), ask(ItemKind::worst), ask(ItemKind::changeOne)});
  draft.sheet.hasDuplicate = true;
  draft.sheet.roles = {LotRole::compared, LotRole::reference};
  const auto script = [](int place, const SheetItem& item, Slot lot, int) -> Said {
    const bool isFrank = place == 4;
    switch (item.kind) {
      case ItemKind::liking: return {isFrank ? (lot == Slot{1} ? 3 : 6) : 7 + place % 2};
      case ItemKind::behaviour: return {isFrank && lot == Slot{1} ? 1 : 2 + place % 2};
      case ItemKind::worst: return isFrank && lot == Slot{1} ? Said{{}, "burnt"} : place % 3 == 0 && lot == Slot{1} ? Said{{}, "a little burnt"} : Said{0};
      default: return isFrank ? Said{{}, "less roast"} : Said{};
    }
  };
  const auto id = play(demo, draft, eightAndWenna, 1785265200000, script, "ask with the roast in mind");  // 28 July 2026, 19:00 UTC
  return {id, "Kind friends and a frank one: everybody gives 7 or 8 of 9, one gives 3, and the bought porter gets no less. A score by itself says little."};
}

PlayedEvening playMovedTwice(DemoShelf& demo) {
  Draft draft = sheetDraftOf(demo, "Amber ale: what did the longer hops change?", "Pale beer again", {demo.amberLong, demo.amberShort}, Question::lacks,
                        {ask(ItemKind::line, "hops", 10, true), ask(ItemKind::line, "bitter", 10, true), ask(ItemKind::liking)});
  draft.sheet.hasDuplicate = true;
  draft.sheet.roles = {LotRole::compared, LotRole::reference};
  const auto script = [](int place, const SheetItem& item, Slot lot, int cup) -> Said {
    const int swing = cup == 2 ? (place % 2 == 0 ? 24 : -16) : 0;
    if (item.kind == ItemKind::liking) return {std::min(9, std::max(1, 6 + (cup == 2 ? (place % 2 == 0 ? 2 : -2) : 0)))};
    return {45 + (place * 7) % 20 + (lot == Slot{1} ? 6 : 0) + swing};
  };
  const auto id = play(demo, draft, eightAndWenna, 1785438000000, script, "say nothing about the hops yet");  // 30 July 2026, 19:00 UTC
  return {id, "The same drink poured twice moved by about 20 of 100: a gap of six points between two lots is nothing to speak of."};
}

PlayedEvening playTwoWords(DemoShelf& demo) {
  Draft draft = sheetDraftOf(demo, "What does the windfall cider lack?", "Cider in the garden", {demo.ciderMarch, demo.ciderOak}, Question::lacks,
                        {ask(ItemKind::line, "apple", 10, true), ask(ItemKind::line, "body", 10, true), ask(ItemKind::line, "sour", 10, true), ask(ItemKind::justRight, "apple"),
                         ask(ItemKind::justRight, "body"), ask(ItemKind::check, "vinegar"), ask(ItemKind::check, "honey"), ask(ItemKind::worst), ask(ItemKind::liking)});
  draft.pourer = demo.people.at("Maud");
  draft.sheet.roles = {LotRole::compared, LotRole::reference};
  const auto script = [](int place, const SheetItem& item, Slot lot, int) -> Said {
    const bool isPlain = lot == Slot{1};
    const int spread = place * 5 % 9;
    switch (item.kind) {
      case ItemKind::line: return {item.word == "sour" ? 40 + spread + (isPlain ? place % 2 : 0) : 60 + spread - (isPlain ? 22 + place % 5 : 0)};
      case ItemKind::justRight: return {isPlain ? (place % 4 == 0 ? 3 : 2) : 3};
      case ItemKind::check: return {item.word == "honey" && !isPlain && place % 2 == 0 ? 1 : 0};
      case ItemKind::worst: return isPlain && place % 2 == 1 ? Said{{}, "thin"} : Said{0};
      default: return {isPlain ? 5 : 6 + place % 2};
    }
  };
  const auto id = play(demo, draft, eightAndWenna, 1785524400000, script, "less water in the press, and wait a month");  // 31 July 2026, 19:00 UTC
  return {id, "A batch that differs in two words: less apple and less body than the one it is held against, and most said too little; sour is within the limit."};
}
