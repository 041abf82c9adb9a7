#include "planning/stopping.h"

#include "domain/names.h"
#include "planning/within.h"
#include "stats/psychometric.h"

#include <cmath>

namespace oddglass::planning {

Sequential sequentialAfter(Method method, const Stopping& stopping, int alphaPm, int trials, int right) {
  requireWithin("trials", trials, 0, 1'000'000);
  requireWithin("right", right, 0, trials);
  requireWithin("share_pm", stopping.sharePm, 1, 1000);
  requireWithin("beta_pm", stopping.betaPm, 1, 500);
  requireWithin("alpha_pm", alphaPm, 1, 200);
  const stats::Method named = stats::methodNamed(nameOf(method));
  const double p0 = stats::guessing(named), p1 = stats::rightAnswersOfShare(named, stopping.sharePm / 1000.0);
  const double alpha = alphaPm / 1000.0, beta = stopping.betaPm / 1000.0;
  const double ratio = right * std::log(p1 / p0) + (trials - right) * (p1 < 1.0 ? std::log((1.0 - p1) / (1.0 - p0)) : (trials > right ? -1e9 : 0.0));
  if (ratio >= std::log((1.0 - beta) / alpha)) return Sequential::difference;
  if (ratio <= std::log(beta / (1.0 - alpha))) return Sequential::none;
  return Sequential::goOn;
}

}  // namespace oddglass::planning
