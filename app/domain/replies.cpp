#include "domain/replies.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace oddglass {
namespace {

constexpr Code flight{0};

// Goes through a hand-in once.
class Reading {
 public:
  Reading(const std::vector<SheetItem>& items, const std::vector<Code>& cups, const std::vector<GivenReply>& replies)
      : items_(items), cups_(cups.begin(), cups.end()), replies_(replies) {
    for (const SheetItem& item : items) byNumber_[item.item] = &item;
  }

  std::optional<FaultyReply> look() {
    for (const GivenReply& reply : replies_)
      if (const auto fault = oneByOne(reply)) return FaultyReply{*fault, reply.item, reply.code, reply.value.value_or(0)};
    for (const SheetItem& item : items_)
      if (auto faulty = together(item)) return faulty;
    return std::nullopt;
  }

 private:
  std::optional<ReplyFault> oneByOne(const GivenReply& reply) {
    const auto found = byNumber_.find(reply.item);
    if (found == byNumber_.end()) return ReplyFault::unknown;
    const SheetItem& item = *found->second;
    if (item.perCup != (reply.code != flight)) return ReplyFault::outOfRange;
    if (item.perCup && !cups_.contains(reply.code)) return ReplyFault::notHere;
    if (!given_.emplace(std::pair{reply.item, reply.code}, reply.value).second) return ReplyFault::twice;
    return answer(item, reply);
  }

  std::optional<ReplyFault> answer(const SheetItem& item, const GivenReply& reply) {
    const AnswerForm form = answerForm(item.kind);
    const bool saysNone = item.kind == ItemKind::worst && reply.value == 0;
    if ((form.isText && !saysNone) != reply.hasText || reply.hasText == reply.value.has_value()) return ReplyFault::outOfRange;
    if (reply.hasText || saysNone) return std::nullopt;
    if (form.isCode) {
      if (item.kind == ItemKind::prefer && *reply.value == 0 && item.low == 0) return std::nullopt;
      if (!cups_.contains({*reply.value})) return ReplyFault::notHere;
      if (item.kind == ItemKind::choose && !picked_.insert(*reply.value).second) return ReplyFault::twice;
      return std::nullopt;
    }
    return (item.low && *reply.value < *item.low) || (item.high && *reply.value > *item.high) ? std::optional(ReplyFault::outOfRange) : std::nullopt;
  }

  std::optional<FaultyReply> together(const SheetItem& item) const {
    std::vector<int> values;
    const auto cups = item.perCup ? std::vector<Code>(cups_.begin(), cups_.end()) : std::vector<Code>{flight};
    std::size_t answered = 0;
    for (Code cup : cups) {
      const auto found = given_.find({item.item, cup});
      if (found == given_.end()) {
        if (item.required) return FaultyReply{ReplyFault::missing, item.item, cup};
        continue;
      }
      ++answered;
      values.push_back(found->second.value_or(0));
    }
    const bool isSet = item.kind == ItemKind::rank || item.kind == ItemKind::split;
    if (!isSet || answered == 0) return std::nullopt;
    // A ranking, or points split, is of all the cups or none.
    if (answered < cups.size()) return FaultyReply{ReplyFault::missing, item.item, flight};
    if (item.kind == ItemKind::rank && std::set<int>(values.begin(), values.end()).size() != values.size())
      return FaultyReply{ReplyFault::notARanking, item.item, flight};
    int sum = 0;
    for (int value : values) sum += value;
    if (item.kind == ItemKind::split && sum != 5) return FaultyReply{ReplyFault::notFivePoints, item.item, flight, sum};
    return std::nullopt;
  }

  const std::vector<SheetItem>& items_;
  const std::set<Code> cups_;
  const std::vector<GivenReply>& replies_;
  std::map<Item, const SheetItem*> byNumber_;
  std::map<std::pair<Item, Code>, std::optional<int>> given_;
  std::set<int> picked_;
};

}  // namespace

std::optional<FaultyReply> firstFault(const std::vector<SheetItem>& items, const std::vector<Code>& cups, const std::vector<GivenReply>& replies) {
  return Reading(items, cups, replies).look();
}

}  // namespace oddglass
