#include "tasting/typing.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "domain/text.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace oddglass::tasting {
namespace {

std::string trimmed(std::string_view text) {
  const std::size_t from = text.find_first_not_of(" \t");
  return from == std::string_view::npos ? std::string() : std::string(text.substr(from, text.find_last_not_of(" \t") - from + 1));
}

std::optional<int> wholeIn(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  return error == std::errc() && end == text.data() + text.size() ? std::optional(value) : std::nullopt;
}

/// "61.5" or "61,5" as tenths.
std::optional<int> tenthsIn(std::string text) {
  std::ranges::replace(text, ',', '.');
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
  if (error != std::errc() || end != text.data() + text.size() || !(std::abs(value) < 10'000)) return std::nullopt;
  return static_cast<int>(std::lround(value * 10));
}

/// The questions in the order of the paper: those of a forced choice as they are numbered, those of a score sheet step by step; ranks and points cup by cup.
std::vector<TypedAsk> asksOf(const Flight& flight, const SessionId& session) {
  std::vector<TypedAsk> asks;
  if (flight.method != Method::sheet) {
    for (const SheetItem& item : flight.items) asks.push_back({item, {}});
    return asks;
  }
  for (const SheetStep& step : sheetSteps(flight, session))
    for (const Item number : step.items) {
      const SheetItem& item = *std::ranges::find(flight.items, number, &SheetItem::item);
      if (step.cup || !item.perCup) {
        asks.push_back({item, step.cup ? flight.cups[static_cast<std::size_t>(*step.cup)].code : Code{}});
        continue;
      }
      for (const FlightCup& cup : flight.cups)
        if (!cup.isMarked) asks.push_back({item, cup.code});
    }
  return asks;
}

}  // namespace

Typing::Typing(Flight flight, const SessionId& session) : flight_(std::move(flight)), asks_(asksOf(flight_, session)), first_(asks_.size()), second_(asks_.size()) {}

bool Typing::isOpen(std::size_t ask) const { return isSecond_ ? !second_[ask] && first_[ask] && !first_[ask]->text : !first_[ask]; }

std::size_t Typing::at() const {
  std::size_t ask = 0;
  while (ask < asks_.size() && !isOpen(ask)) ++ask;
  return ask;
}

const TypedAsk* Typing::next() const {
  const std::size_t ask = at();
  return ask < asks_.size() ? &asks_[ask] : nullptr;
}

bool Typing::stands(int code) const {
  return std::ranges::any_of(flight_.cups, [code](const FlightCup& cup) { return !cup.isMarked && cup.code.value == code; });
}

void Typing::refuseCode(int code) const {
  std::string all;
  for (const FlightCup& cup : flight_.cups)
    if (!cup.isMarked) all += (all.empty() ? "" : ", ") + std::to_string(cup.code.value);
  throw Problem(Trouble::codeNotHere, "value", {{"code", std::to_string(code)}, {"place", std::to_string(flight_.place.value)}, {"codes", all}});
}

Typing::Answer Typing::readCode(const TypedAsk& ask, int code) const {
  if (code == 0 && ask.item.kind == ItemKind::prefer && ask.item.low == 0) return {false, 0, {}};
  if (!stands(code)) refuseCode(code);
  return {false, code, {}};
}

Typing::Answer Typing::readNumber(const TypedAsk& ask, const std::string& text) const {
  const auto number = ask.item.kind == ItemKind::magnitude ? tenthsIn(text) : wholeIn(text);
  if (!number) throw Problem(Trouble::notANumber, "value", {{"text", text}});
  const bool isBelow = ask.item.low && *number < *ask.item.low, isAbove = ask.item.high && *number > *ask.item.high;
  if (isBelow || isAbove) throw Problem(Trouble::answerOutOfRange, "value", {{"value", text}, {"item", std::to_string(ask.item.item.value)}});
  return {false, *number, {}};
}

Typing::Answer Typing::read(const TypedAsk& ask, std::string_view line) const {
  const std::string text = trimmed(line);
  const AnswerForm form = answerForm(ask.item.kind);
  if (text.empty()) {
    if (ask.item.kind == ItemKind::check || ask.item.kind == ItemKind::split) return {false, 0, {}};   // no tick, no point
    if (ask.item.required) throw Problem(Trouble::answerMissing, "value", {{"item", std::to_string(ask.item.item.value)}, {"kind", std::string(nameOf(ask.item.kind))}});
    return {true, 0, {}};
  }
  if (form.isText) {
    if (ask.item.kind == ItemKind::worst && text == "0") return {false, 0, {}};
    return {false, 0, cleaned(text)};
  }
  if (!form.isCode) return readNumber(ask, text);
  const auto code = wholeIn(text);
  if (!code) throw Problem(Trouble::notANumber, "value", {{"text", text}});
  return readCode(ask, *code);
}

Typing::Took Typing::take(std::string_view line) {
  std::size_t ask = at();
  if (ask == asks_.size()) return Took::yes;
  std::string rest = trimmed(line);
  // "472 40": the cup is named, and the same question about it is meant.
  if (const auto blank = rest.find(' '); asks_[ask].cup.value != 0 && !answerForm(asks_[ask].item.kind).isText && blank != std::string::npos) {
    const auto code = wholeIn(std::string_view(rest).substr(0, blank));
    if (!code) throw Problem(Trouble::notANumber, "value", {{"text", rest.substr(0, blank)}});
    const auto named = std::ranges::find_if(asks_, [&](const TypedAsk& each) { return each.item.item == asks_[ask].item.item && each.cup.value == *code; });
    if (named == asks_.end()) refuseCode(*code);
    ask = static_cast<std::size_t>(named - asks_.begin());
    rest = trimmed(std::string_view(rest).substr(blank));
  }
  const Answer answer = read(asks_[ask], rest);
  if (!isSecond_) {
    first_[ask] = answer;
    if (at() == asks_.size()) isSecond_ = true;
    return Took::yes;
  }
  if (first_[ask] != answer) {
    first_[ask] = answer;
    second_[ask].reset();
    return Took::differs;
  }
  second_[ask] = answer;
  return Took::yes;
}

void Typing::back() {
  auto& turn = isSecond_ ? second_ : first_;
  for (std::size_t ask = at(); ask-- > 0;)
    if (turn[ask]) {
      turn[ask].reset();
      return;
    }
}

std::string Typing::shown(std::size_t ask) const {
  const auto& answer = isSecond_ && first_[ask] && !first_[ask]->text ? second_[ask] : first_[ask];
  if (!answer || answer->isLeftOut) return {};
  if (answer->text) return *answer->text;
  if (asks_[ask].item.kind == ItemKind::magnitude) return std::to_string(answer->value / 10) + '.' + std::to_string(answer->value % 10);
  return std::to_string(answer->value);
}

std::vector<Reply> Typing::replies() const {
  std::vector<Reply> all;
  for (std::size_t ask = 0; ask < asks_.size(); ++ask)
    if (first_[ask] && !first_[ask]->isLeftOut) all.push_back({asks_[ask].item.item, first_[ask]->value, first_[ask]->text, asks_[ask].cup});
  return all;
}

}  // namespace oddglass::tasting
