#include "demo/demo_methods.h"

#include "demo/demo_table.h"
#include "session/erase.h"
#include "session/look_after.h"

using namespace oddglass;

namespace {

const std::vector<const char*> sixAndWenna{"Ilse", "Bram", "Tove", "Nia", "Ruan", "Kit", "Wenna"};

Draft draftOf(DemoShelf& demo, const char* title, const char* guestTitle, std::vector<LotId> lots, Method method) {
  Draft draft;
  draft.title = title;
  draft.guestTitle = guestTitle;
  draft.lots = std::move(lots);
  draft.method = method;
  draft.methodChosen = true;
  draft.pourer = demo.people.at("Odo");
  draft.cupMl = 20;
  draft.promises = {{Outcome::shown, "write it into the recipe"}, {Outcome::notShown, "ask again with more people"}};
  return draft;
}

}  // namespace

PlayedEvening playTetrad(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Amber ale: two days of dry hops or five?", "An evening with pale beer", {demo.amberShort, demo.amberLong}, Method::tetrad);
  DemoTable table(demo, draft, eightAndWenna, 1781204400000);  // 11 June 2026, 19:00 UTC
  table.round("010010010");
  return {table.end("two days are enough until somebody can show otherwise"), "A tetrad of eight people, three right: no difference shown, and what could have been missed."};
}

PlayedEvening playPair(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Is the heather mead sweeter than the bought one?", "An evening with mead", {demo.mead, demo.boughtMead}, Method::pair);
  draft.question = Question::more;
  draft.attribute = "sweet";
  draft.expected = Slot{1};
  draft.rounds = 3;
  draft.cupMl = 15;
  DemoTable table(demo, draft, sixAndWenna, 1781809200000);  // 18 June 2026, 19:00 UTC
  table.round("1110111");
  table.round("1011111");
  table.round("1101011");
  return {table.end("let the next one ferment two points further down"), "A directional pair, six people, three rounds: 14 of 18 called the batch the sweeter one, which is shown."};
}

PlayedEvening playPreference(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Which of the two ales do friends like better?", "Two ales", {demo.amberShort, demo.amberLong}, Method::preference);
  draft.question = Question::prefer;
  draft.mayHaveNone = true;
  DemoTable table(demo, draft, eightAndWenna, 1782414000000);  // 25 June 2026, 19:00 UTC
  for (int place = 1; place <= 9; ++place)
    table.answer(place, {.likes = place == 4 ? std::nullopt : std::optional(Slot{place == 9 ? 2 : 1}), .words = place == 1 ? "fresher" : ""});
  return {table.end("two days of hops it is"), "A preference with \"no preference\" allowed: 7 to 0, one had none. Shown; with that one split in two it would not be."};
}

PlayedEvening playAlike(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Does the warm pantry harm the porter?", "An evening with dark beer", {demo.porter, demo.porterWarm}, Method::triangle);
  draft.rounds = 3;
  draft.cupMl = 15;
  draft.sought = Sought::alike;
  draft.limitPm = 300;
  draft.promises = {{Outcome::alike, "store it where there is room"}, {Outcome::notShown, "keep it in the cellar"}};
  const std::vector<const char*> ten{"Ilse", "Bram", "Tove", "Nia", "Ruan", "Ebba", "Kit", "Sorrel", "Piet", "Maud"};
  DemoTable table(demo, draft, ten, 1783018800000);  // 2 July 2026, 19:00 UTC
  table.round("0100010010");
  table.round("1001000010");
  table.round("0010100100");
  return {table.end("the rest goes into the pantry"), "Alike within a limit set before (3 in 10): 9 of 30 triangles right at this table, 11 would still have counted."};
}

PlayedEvening playSequential(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Porter no. 4 against a bought one, looked at after each round", "Dark beer once more", {demo.porter, demo.boughtPorter}, Method::triangle);
  draft.rounds = 4;
  draft.cupMl = 15;
  draft.stopping = Stopping{500, 100};
  DemoTable table(demo, draft, sixAndWenna, 1783623600000);  // 9 July 2026, 19:00 UTC
  table.round("1101101");
  table.later(5);
  session::lookAfterRound(*demo.store, demo.clock, table.session);
  table.round("1111101");
  table.later(5);
  session::lookAfterRound(*demo.store, demo.clock, table.session);
  return {table.end("name the roast and pour pairs"), "A sequential plan of up to four rounds: after the second it said stop, and a difference is the decision."};
}

PlayedEvening playThreeComparisons(DemoShelf& demo) {
  Draft draft = draftOf(demo, "The mead beside two vintages of the bought one", "Three meads, two at a time", {demo.mead, demo.boughtMead, demo.boughtMeadOlder}, Method::triangle);
  draft.cupMl = 15;
  DemoTable table(demo, draft, sixAndWenna, 1784228400000);  // 16 July 2026, 19:00 UTC
  // Six of six tell the batch from the first vintage, five of six from the second; the vintages themselves, two of six.
  std::map<std::pair<Slot, Slot>, std::string> script{{{{1}, {2}}, "1111111"}, {{{1}, {3}}, "1111011"}, {{{2}, {3}}, "0100010"}};
  for (int round = 1; round <= 3; ++round)
    for (int place = 1; place <= 7; ++place) {
      const auto pair = comparedIn(testing::standing(table.sheet, table.next(place))).value();
      const bool is = script.at(pair)[static_cast<std::size_t>(place) - 1] == '1';
      table.answer(place, {.isRight = is, .clue = is ? Clue::smell : Clue::guess});
    }
  return {table.end("take the younger vintage as the target"), "Three short comparisons: the batch is told from both vintages, the vintages from each other not; three looks are paid for (Holm)."};
}

PlayedEvening playWrongPour(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Cider with and without oak, once more", "An evening with cider", {demo.ciderMarch, demo.ciderOak}, Method::triangle);
  draft.pourer = demo.people.at("Ebba");
  const std::vector<const char*> nine{"Ilse", "Bram", "Tove", "Nia", "Ruan", "Kit", "Sorrel", "Maud", "Wenna"};
  DemoTable table(demo, draft, nine, 1784833200000);  // 23 July 2026, 19:00 UTC
  // At place 3 the odd cup was filled from the other bottle: three alike.
  const auto flight = table.next(3);
  const auto there = testing::standing(table.sheet, flight);
  const Position odd = rightCups(table.plan, there)->front();
  const std::size_t at = static_cast<std::size_t>(odd.value) - 1;
  session::pouredReally(*demo.store, demo.clock, demo.chance, table.session, flight.cups[at].code, there.poured[at == 0 ? 1 : 0]);
  table.round("110111011");
  return {table.end("oak the whole of the next one"), "One cup was poured wrong and the pourer said so: that flight does not count, six of the other seven are right."};
}

PlayedEvening playKnownDifference(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Can my friends taste the warm pantry?", "An evening with dark beer", {demo.porter, demo.porterWarm}, Method::threeAfc);
  draft.question = Question::notice;
  draft.attribute = "wet cardboard";
  draft.dose = "six months at 22 degrees";
  draft.expected = Slot{2};
  draft.rounds = 3;
  draft.cupMl = 15;
  draft.promises = {{Outcome::shown, "ask these six about every porter from now on"}, {Outcome::notShown, "keep one bottle warm for another half a year"}};
  DemoTable table(demo, draft, sixAndWenna, 1786042800000);  // 6 August 2026, 19:00 UTC
  table.round("1110111");
  table.round("1110101");
  table.round("1100111");
  return {table.end("ask Ilse first when a porter tastes old"), "A known difference, six people, three rounds: 13 of 18 picked the warm bottle; Ilse and Wenna did so each time, Nia never."};
}

PlayedEvening playErased(DemoShelf& demo) {
  Draft draft = draftOf(demo, "Two ales, and a guest who asked to be forgotten", "Two ales", {demo.amberShort, demo.amberLong}, Method::duoTrio);
  demo.people["Fenn"] = shelf::save(*demo.store, demo.chance, Taster{{}, "Fenn", "", false, false});
  draft.tasters.clear();
  const std::vector<const char*> names{"Ilse", "Bram", "Fenn", "Nia", "Ruan", "Kit", "Sorrel", "Maud", "Wenna"};
  DemoTable table(demo, draft, names, 1785438000000);  // 30 July 2026, 19:00 UTC
  for (int place = 1; place <= 9; ++place)
    table.answer(place, {.isRight = place != 5, .words = place == 3 ? "this will be forgotten" : ""});
  const SessionId session = table.end("ask once more what it is that differs");
  table.later(60);
  session::erase(*demo.store, demo.clock, demo.chance, demo.people.at("Fenn"), ErasureKind::everything, true);
  demo.people.erase("Fenn");
  return {session, "A duo-trio after which one guest asked to be forgotten: seven people are left, six of them right, and the record still verifies."};
}
