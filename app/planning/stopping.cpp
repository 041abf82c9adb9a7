#include "planning/stopping.h"

#include "planning/within.h"
#include "stats/psychometric.h"
#include "stats/sequential/sprt.h"

namespace oddglass::planning {

namespace {

stats::SequentialLines linesFor(Method method, const Stopping& stopping, int alphaPm) {
  requireWithin("share_pm", stopping.sharePm, 1, 1000);
  requireWithin("beta_pm", stopping.betaPm, 1, 500);
  requireWithin("alpha_pm", alphaPm, 1, 200);
  return stats::linesOfShare(statsMethod(method), stopping.sharePm / 1000.0, alphaPm / 1000.0, stopping.betaPm / 1000.0);
}

}  // namespace

Sequential sequentialAfter(Method method, const Stopping& stopping, int alphaPm, int trials, int right) {
  requireWithin("trials", trials, 0, 1'000'000);
  requireWithin("right", right, 0, trials);
  switch (stats::verdictAt(linesFor(method, stopping, alphaPm), right, trials)) {
    case stats::SequentialVerdict::difference: return Sequential::difference;
    case stats::SequentialVerdict::none: return Sequential::none;
    case stats::SequentialVerdict::goOn:
    case stats::SequentialVerdict::undecided: break;
  }
  return Sequential::goOn;
}

SequentialEnd sequentialEnd(const Setup& setup, const Size& size, double share) {
  if (!setup.stopping || size.trials() == 0) return {};
  const auto lines = linesFor(setup.method, *setup.stopping, setup.alphaPm);
  const auto end = stats::outcomeOf(lines, stats::rightAnswersOfShare(statsMethod(setup.method), share), {size.people, size.trials()});
  if (!end) return {};
  return {end->difference, end->none, end->undecided, end->expectedTrials};
}

}  // namespace oddglass::planning
