#pragma once

#include "tasting/hand_in.h"
#include "tasting/sheet_steps.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace oddglass::tasting {

/// A score sheet while one taster fills it in, step by step. Nothing is stored here: `replies` is what is kept and handed in.
class Filling {
 public:
  /// Starts at the first step that still needs something; `typed` is what was kept before.
  Filling(Flight flight, const SessionId& session, const std::vector<Reply>& typed = {});

  const Flight& flight() const { return flight_; }
  const std::vector<SheetStep>& steps() const { return steps_; }
  const SheetStep& step() const { return steps_.at(at_); }
  bool isFirst() const { return at_ == 0; }
  bool isLast() const { return at_ + 1 == steps_.size(); }
  const SheetItem& item(Item number) const;
  /// Codes that are scored, from left to right.
  std::vector<Code> cups() const;
  /// The code of the cup that the step is about; 0 for all together.
  Code code() const;

  std::optional<int> value(Item item, Code cup) const;
  std::string text(Item item, Code cup) const;
  /// A number for a question; nothing takes it back. A value outside the question's range is ignored.
  void set(Item item, Code cup, std::optional<int> value);
  /// Words for a question; empty takes them back.
  void write(Item item, Code cup, const std::string& text);
  /// Ranks by tapping from the most to the least: the cup takes the highest rank left; a cup that has one loses it, and so do all that came after it.
  void tapRank(Item item, Code cup);
  /// One point more or less for a cup, never above five in all or below none.
  void givePoint(Item item, Code cup, int by);
  int pointsLeft(Item item) const;

  /// Questions of this step that still need an answer, in their order; words to tick never do.
  std::vector<Item> open() const;
  /// Words of this step that were not ticked do not apply: said when the step is left or the sheet is locked.
  void settle();
  /// Settles the step and goes on; does nothing while something is open, or at the last step.
  void next();
  /// Back to the cup before, past pauses; does nothing at the first step.
  void back();

  std::vector<Reply> replies() const;

 private:
  bool isAnswered(const SheetItem& item, Code cup) const;
  std::vector<Code> askedCups(const SheetItem& item) const;
  bool needsMore(const SheetStep& step) const;

  Flight flight_;
  std::vector<SheetStep> steps_;
  std::map<std::pair<Item, Code>, int> values_;
  std::map<std::pair<Item, Code>, std::string> texts_;
  std::size_t at_ = 0;
};

}  // namespace oddglass::tasting
