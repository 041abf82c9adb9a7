#include "tasting/filling.h"

#include "domain/text.h"

#include <algorithm>

namespace oddglass::tasting {

Filling::Filling(Flight flight, const SessionId& session, const std::vector<Reply>& typed) : flight_(std::move(flight)), steps_(sheetSteps(flight_, session)) {
  for (const Reply& reply : typed) {
    const auto found = std::ranges::find(flight_.items, reply.item, &SheetItem::item);
    if (found == flight_.items.end()) continue;
    if (reply.text) write(reply.item, reply.code, *reply.text);
    else values_[{reply.item, reply.code}] = reply.value;
  }
  if (typed.empty()) return;
  // Pauses before what comes next are waited for once more; nobody knows how long ago they began.
  const auto open = std::ranges::find_if(steps_, [this](const SheetStep& each) { return needsMore(each); });
  at_ = open == steps_.end() ? steps_.size() - 1 : static_cast<std::size_t>(open - steps_.begin());
}

const SheetItem& Filling::item(Item number) const { return *std::ranges::find(flight_.items, number, &SheetItem::item); }

std::vector<Code> Filling::cups() const {
  std::vector<Code> all;
  for (const FlightCup& cup : flight_.cups)
    if (!cup.isMarked) all.push_back(cup.code);
  return all;
}

Code Filling::code() const { return step().cup ? flight_.cups[static_cast<std::size_t>(*step().cup)].code : Code{}; }

std::optional<int> Filling::value(Item item, Code cup) const {
  const auto found = values_.find({item, cup});
  return found == values_.end() ? std::nullopt : std::optional(found->second);
}

std::string Filling::text(Item item, Code cup) const {
  const auto found = texts_.find({item, cup});
  return found == texts_.end() ? std::string() : found->second;
}

void Filling::set(Item number, Code cup, std::optional<int> value) {
  const SheetItem& asked = item(number);
  if (!value) {
    values_.erase({number, cup});
    return;
  }
  if (asked.kind == ItemKind::worst ? *value != 0 : (asked.low && *value < *asked.low) || (asked.high && *value > *asked.high)) return;
  values_[{number, cup}] = *value;
  texts_.erase({number, cup});
}

void Filling::write(Item number, Code cup, const std::string& text) {
  if (cleaned(text).empty()) {
    texts_.erase({number, cup});
    return;
  }
  texts_[{number, cup}] = text;
  values_.erase({number, cup});
}

void Filling::tapRank(Item number, Code cup) {
  const auto all = cups();
  if (const auto had = value(number, cup)) {
    for (Code each : all)
      if (value(number, each).value_or(*had + 1) <= *had) values_.erase({number, each});
    return;
  }
  int rank = static_cast<int>(all.size());
  for (Code each : all) rank -= value(number, each).has_value();
  values_[{number, cup}] = rank;
  // The last one left over needs no tap.
  if (rank != 2) return;
  for (Code each : all)
    if (!value(number, each)) values_[{number, each}] = 1;
}

int Filling::pointsLeft(Item number) const {
  int left = 5;
  for (Code each : cups()) left -= value(number, each).value_or(0);
  return left;
}

void Filling::givePoint(Item number, Code cup, int by) {
  const int points = value(number, cup).value_or(0) + by;
  if (points < 0 || by > pointsLeft(number)) return;
  // Whoever gives a point has seen all the cups: those without one have none.
  for (Code each : cups()) values_.try_emplace({number, each}, 0);
  values_[{number, cup}] = points;
}

std::vector<Code> Filling::askedCups(const SheetItem& item) const {
  if (!item.perCup) return {Code{}};
  if (item.part == Part::last) return cups();
  return {code()};
}

bool Filling::isAnswered(const SheetItem& item, Code cup) const { return value(item.item, cup) || !text(item.item, cup).empty(); }

bool Filling::needsMore(const SheetStep& step) const {
  return std::ranges::any_of(step.items, [&](Item number) {
    const SheetItem& asked = item(number);
    if (!asked.required) return false;
    if (!step.cup) return std::ranges::any_of(askedCups(asked), [&](Code cup) { return !isAnswered(asked, cup); }) || (asked.kind == ItemKind::split && pointsLeft(number) > 0);
    return !isAnswered(asked, flight_.cups[static_cast<std::size_t>(*step.cup)].code);
  });
}

std::vector<Item> Filling::open() const {
  std::vector<Item> all;
  for (Item number : step().items) {
    const SheetItem& asked = item(number);
    // No word ticked is an answer too.
    if (asked.kind == ItemKind::check) continue;
    const auto asking = askedCups(asked);
    const auto answered = std::ranges::count_if(asking, [&](Code cup) { return isAnswered(asked, cup); });
    const bool isPartly = answered > 0 && answered < static_cast<std::ptrdiff_t>(asking.size());
    const bool isShort = asked.kind == ItemKind::split && answered > 0 && pointsLeft(number) > 0;
    if ((asked.required && answered < static_cast<std::ptrdiff_t>(asking.size())) || isPartly || isShort) all.push_back(number);
  }
  return all;
}

void Filling::settle() {
  for (Item number : step().items) {
    if (item(number).kind != ItemKind::check) continue;
    for (Code cup : askedCups(item(number)))
      if (!value(number, cup)) values_[{number, cup}] = 0;
  }
}

void Filling::next() {
  if (isLast() || !open().empty()) return;
  settle();
  ++at_;
}

void Filling::back() {
  std::size_t to = at_;
  while (to > 0) {
    --to;
    if (steps_[to].kind == SheetStepKind::cup || steps_[to].kind == SheetStepKind::together) {
      at_ = to;
      return;
    }
  }
}

std::vector<Reply> Filling::replies() const {
  std::vector<Reply> all;
  for (const SheetItem& item : flight_.items)
    for (Code cup : item.perCup ? cups() : std::vector<Code>{Code{}}) {
      if (const auto found = value(item.item, cup)) all.push_back({item.item, *found, std::nullopt, cup});
      else if (const std::string words = text(item.item, cup); !words.empty()) all.push_back({item.item, 0, words, cup});
    }
  return all;
}

}  // namespace oddglass::tasting
