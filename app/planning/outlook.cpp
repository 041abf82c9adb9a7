#include "planning/outlook.h"

#include "planning/chances.h"
#include "planning/ways_out.h"

#include <algorithm>

namespace oddglass::planning {

namespace {

std::vector<int> sharesOf(Method method) {
  if (method == Method::preference) return {750, 900};
  return {300, 500, 800};
}

std::vector<TooSmall> tooSmallOf(const Setup& setup, const Outlook& outlook) {
  std::vector<TooSmall> rules;
  const bool wantsDifference = setup.sought != Sought::alike, wantsAlike = setup.sought != Sought::difference;
  if (wantsDifference && !outlook.canShow) rules.push_back(TooSmall::practice);
  if (wantsDifference && outlook.canShow && outlook.half().chance < 0.5) rules.push_back(TooSmall::halfMissed);
  if (wantsAlike && outlook.alike && outlook.alike->chance < 0.5) rules.push_back(TooSmall::alikeUnlikely);
  if (setup.limitPm && *setup.limitPm > 500) rules.push_back(TooSmall::limitTooWide);
  if (setup.panel > 0 && setup.panel < 4) rules.push_back(TooSmall::fewFriends);
  return rules;
}

}  // namespace

int halfOf(Method method) { return shareMeantBy(method) == ShareOf::preferring ? 750 : 500; }

const Finding& Outlook::half() const {
  return *std::ranges::find(findings, halfOf(method), &Finding::sharePm);
}

Outlook outlookFor(const Setup& setup) {
  requireSetup(setup);
  const Size size = sizeOf(setup);
  Outlook outlook;
  outlook.method = setup.method;
  outlook.shareOf = shareMeantBy(setup.method);
  outlook.claim = claimOf(setup);
  outlook.people = size.people;
  outlook.rounds = size.rounds;
  outlook.trials = setup.method == Method::preference ? size.people : size.trials();
  outlook.comparisons = setup.comparisons();
  outlook.mayHaveNone = setup.mayHaveNone;
  outlook.canShow = canShow(setup, size);
  outlook.neededInTurn = neededInTurn(setup, size);
  outlook.needed = outlook.neededInTurn.front();
  outlook.alphaActual = alphaActual(setup, size);
  for (const int sharePm : sharesOf(setup.method)) {
    const Chance chance = chanceOf(setup, size, differenceOfShare(setup.method, sharePm));
    outlook.findings.push_back({sharePm, chance.chance, chance.independent});
  }
  if (setup.stopping && hasGuessing(setup.method))
    outlook.sequential = SequentialOutlook{size.people, size.trials(), setup.stopping->sharePm, sequentialEnd(setup, size, 0.0),
                                           sequentialEnd(setup, size, setup.stopping->sharePm / 1000.0)};
  if (setup.limitPm && hasGuessing(setup.method) && !setup.stopping) {
    const AlikeChance alike = alikeChanceOf(setup, size, *setup.limitPm);
    outlook.alike = AlikeOutlook{*setup.limitPm, alike.largestInTurn.front(), alike.largestInTurn, alike.chance};
  }
  outlook.tooSmall = tooSmallOf(setup, outlook);
  outlook.waysOut = waysOutOf(setup);
  outlook.countsOnly = outlook.people < 20;
  return outlook;
}

}  // namespace oddglass::planning
