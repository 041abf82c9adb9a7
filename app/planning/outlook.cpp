#include "planning/outlook.h"

#include "planning/ways_out.h"
#include "stats/power.h"

namespace oddglass::planning {

namespace {

constexpr int sharesPm[] = {300, 500, 800};
constexpr int half = 1;  // the one of `sharesPm` that the rules ask about

std::vector<TooSmall> tooSmallOf(const Setup& setup, const Outlook& outlook) {
  std::vector<TooSmall> rules;
  const bool wantsDifference = setup.sought != Sought::alike, wantsAlike = setup.sought != Sought::difference;
  if (wantsDifference && !outlook.needed) rules.push_back(TooSmall::practice);
  if (wantsDifference && outlook.needed && outlook.findings[half].chance < 0.5) rules.push_back(TooSmall::halfMissed);
  if (wantsAlike && outlook.alike && outlook.alike->chance < 0.5) rules.push_back(TooSmall::alikeUnlikely);
  if (setup.limitPm && *setup.limitPm > 500) rules.push_back(TooSmall::limitTooWide);
  if (setup.panel > 0 && setup.panel < 4) rules.push_back(TooSmall::fewFriends);
  return rules;
}

}  // namespace

Outlook outlookFor(const Setup& setup) {
  requireSetup(setup);
  Outlook outlook;
  outlook.claim = claimOf(setup);
  outlook.people = setup.counting();
  outlook.trials = outlook.people * setup.rounds;
  for (const int sharePm : sharesPm) {
    const auto power = stats::powerOfRounds(stats::Method::triangle, outlook.people, setup.rounds, sharePm / 1000.0, setup.gamma(), setup.alpha());
    outlook.needed = power.critical;
    outlook.alphaActual = power.alphaActual;
    outlook.findings.push_back({sharePm, power.power, power.independent});
  }
  if (setup.limitPm) {
    const auto alike = stats::alikePowerOfRounds(stats::Method::triangle, outlook.people, setup.rounds, *setup.limitPm / 1000.0, 0.0, setup.gamma(), setup.alpha());
    outlook.alike = AlikeOutlook{*setup.limitPm, alike.largest, alike.power};
  }
  outlook.tooSmall = tooSmallOf(setup, outlook);
  outlook.waysOut = waysOutOf(setup);
  outlook.countsOnly = outlook.people < 20;
  return outlook;
}

}  // namespace oddglass::planning
