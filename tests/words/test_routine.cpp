#include "words/routine.h"

#include "domain/names.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;

namespace {

HandFacts handFacts(Routine routine, Method method) {
  HandFacts facts;
  facts.routine = routine;
  facts.method = method;
  facts.drinks = {"Heather mead", "Bought mead"};
  facts.cupMl = 15;
  facts.bottles = 2;
  return facts;
}

std::string whole(const HandFacts& facts) {
  std::string all;
  for (const HandStep& step : handSteps(Voice{}, facts)) all += step.who + ": " + step.text + '\n';
  return all;
}

}  // namespace

TEST_CASE("a routine's steps say what is poured, by its method, and who does it") {
  const std::string triangle = whole(handFacts(Routine::alone, Method::triangle));
  CHECK_THAT(triangle, Catch::Contains("2 cups of Heather mead and 2 cups of Bought mead"));
  CHECK_THAT(triangle, Catch::Contains("15 mL"));
  CHECK_THAT(triangle, Catch::Contains("set it aside"));
  CHECK_THAT(whole(handFacts(Routine::alone, Method::tetrad)), !Catch::Contains("set it aside"));
  HandFacts three = handFacts(Routine::couple, Method::threeAfc);
  three.expected = Slot{2};
  CHECK_THAT(whole(three), Catch::Contains("2 cups of Heather mead and 1 cup of Bought mead"));
  HandFacts marked = handFacts(Routine::alone, Method::duoTrio);
  marked.marked = Slot{2};
  CHECK_THAT(whole(marked), Catch::Contains("one more cup of Bought mead"));
  CHECK_THAT(whole(handFacts(Routine::die, Method::pair)), Catch::Contains("Whoever pours: For each pair say “Heather mead”"));
  CHECK_THAT(whole(handFacts(Routine::bottles, Method::pair)), Catch::Contains("the 2 bottles"));
  CHECK(handSteps(Voice{}, handFacts(Routine::pourer, Method::triangle)).empty());
}

TEST_CASE("a couple hands over once, between the first person and the second") {
  const auto steps = handSteps(Voice{}, handFacts(Routine::couple, Method::triangle));
  Hands before = Hands::first;
  for (const HandStep& step : steps) {
    CHECK((step.whose == before || (before == Hands::first && step.whose == Hands::second)));
    before = step.whose;
  }
  for (std::size_t i = 0; i + 1 < steps.size(); ++i) CHECK(steps[i].handsOver == (steps[i].whose != steps[i + 1].whose));
}

TEST_CASE("every finding says who read the cups, and a drawn key says nothing of it") {
  const Voice voice;
  CHECK(keyReadLine(voice, Routine::pourer, {}).empty());
  for (const Routine routine : allOf<Routine>())
    for (const ReadBy by : allOf<ReadBy>())
      if (routine != Routine::pourer) CHECK_THAT(keyReadLine(voice, routine, {by}), Catch::Contains(readByWords(voice, by)));
  CHECK_THAT(keyReadLine(voice, Routine::alone, {}), Catch::Contains("has not been read off"));
}
