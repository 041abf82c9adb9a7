#include "planning/run_list.h"

#include "domain/evenings.h"
#include "domain/problem.h"
#include "planning/pace.h"

#include <algorithm>
#include <string>

namespace oddglass::planning {
namespace {

void requireOne(int value, const char* argument) {
  if (value < 1) throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(value)}, {"low", "1"}, {"high", "999"}});
}

int upToMinutes(int seconds) { return (seconds + 59) / 60; }

int secondsToTaste(const RunFacts& facts, int places) {
  if (facts.isSheet) return facts.codedCups * (tasteSeconds + facts.pauseSeconds + questionSeconds * facts.questionsACup);
  return tasteSeconds * facts.cupsInFlight * places;
}

}  // namespace

std::vector<std::vector<RunStep>> runList(const RunFacts& facts) {
  requireOne(facts.places, "places");
  requireOne(facts.rounds, "rounds");
  requireOne(facts.evenings, "evenings");
  requireOne(facts.cupsInFlight, "cups");
  const int wave = facts.wave <= 0 ? facts.places : std::min(facts.wave, facts.places);
  std::vector<std::vector<RunStep>> evenings;
  int round = 0;
  for (int evening = 0; evening < facts.evenings; ++evening) {
    std::vector<RunStep> steps;
    int seconds = 0;
    const auto add = [&](RunStep step, int lasts) {
      step.fromMinute = upToMinutes(seconds);
      step.toMinute = upToMinutes(seconds += lasts);
      steps.push_back(step);
    };
    add({RunStepKind::settle}, settleSeconds);
    const int rounds = roundsOn(evening + 1, facts.rounds, facts.evenings);
    for (int i = 0; i < rounds; ++i) {
      ++round;
      for (int first = 1; first <= facts.places; first += wave) {
        const int last = std::min(facts.places, first + wave - 1), cups = (last - first + 1) * facts.cupsInFlight;
        add({RunStepKind::pour, 0, 0, round, first, last, cups}, pourSeconds * cups);
        add({RunStepKind::taste, 0, 0, round, first, last, 0}, secondsToTaste(facts, last - first + 1));
      }
    }
    add({RunStepKind::close}, 0);
    evenings.push_back(std::move(steps));
  }
  return evenings;
}

}  // namespace oddglass::planning
