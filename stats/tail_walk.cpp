#include "stats/tail_walk.h"

#include "stats/binomial.h"

#include <algorithm>

namespace oddglass::stats {

void TailWalk::oneMoreTrial() {
  ++trials_;
  if (p_ == 1.0) {
    tail_ = count_ <= trials_ ? 1.0 : 0.0;
    return;
  }
  tail_ = std::min(1.0, tail_ + p_ * mass_);
  mass_ *= (1.0 - p_) * trials_ / (trials_ - count_ + 1.0);
  if (++steps_ % 256 == 0) {
    tail_ = upperTail(count_, trials_, p_);
    mass_ = binomialMass(count_ - 1, trials_, p_);
  }
}

void TailWalk::oneMoreNeeded() {
  ++count_;
  if (p_ == 1.0 || count_ > trials_) {
    tail_ = count_ <= trials_ ? 1.0 : 0.0;
    if (p_ < 1.0) mass_ = binomialMass(count_ - 1, trials_, p_);
    return;
  }
  mass_ *= (trials_ - count_ + 2.0) / (count_ - 1.0) * p_ / (1.0 - p_);
  tail_ = std::max(0.0, tail_ - mass_);
}

}  // namespace oddglass::stats
