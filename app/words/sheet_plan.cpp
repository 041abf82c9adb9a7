#include "words/sheet_plan.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

#include <algorithm>

namespace oddglass::words {
namespace {

std::string gapText(const Voice& voice, const planning::Gap& gap) {
  const Values values{{"gap", points(voice, gap.kind, *gap.smallest)}, {"of", outOf(voice, gap.kind)}, {"kind", kindName(voice, gap.kind)}};
  return say(voice, QT_TRANSLATE_NOOP("words", "{gap} {of} on {kind}"), values);
}

/// A gap wider than half of its scale is hardly ever there to be found; the share is our own figure.
bool isHardlyEver(const planning::Gap& gap) { return gap.smallest && *gap.smallest > gap.scale / 2; }

std::string gapHeadline(const Voice& voice, const planning::SheetOutlook& outlook) {
  std::vector<std::string> gaps;
  for (const planning::Gap& gap : outlook.gaps)
    if (gap.smallest) gaps.push_back(gapText(voice, gap));
  if (outlook.noIntervals) return say(voice, QT_TRANSLATE_NOOP("words", "With fewer than three people the answers are shown as they are: no range, no verdict."));
  if (outlook.gaps.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "This sheet counts what people say; it measures no gap."));
  if (gaps.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "With this panel no gap would show: none that fits on the scale would come out 8 times in 10."));
  const Values values{{"gaps", listed(voice, gaps)}};
  if (std::ranges::all_of(outlook.gaps, [](const planning::Gap& gap) { return !gap.smallest || isHardlyEver(gap); }))
    return say(voice, QT_TRANSLATE_NOOP("words", "With this panel almost nothing would show: to come out 8 times in 10 a gap has to be {gaps}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "The smallest gap that would show, 8 times in 10: {gaps}."), values);
}

// What the smallest gap rests on, in points of nine.
std::string spreadLine(const Voice& voice, const planning::Spread& spread) {
  if (!spread.fromPast)
    return say(voice, QT_TRANSLATE_NOOP("words", "It rests on our stated default, a guess: people differ by one point of nine in what they find, and one person by one point from cup to cup. Your own tastings will replace it."));
  constexpr double points = 8.0;  // from one to nine
  return say(voice, QT_TRANSLATE_NOOP("words", "It comes from your last {n} tables with mostly these people: they differed by {between} points of nine in what they found, and one person by {within} from cup to cup."),
             {{"n", whole(voice, spread.tables)}, {"between", decimal(voice, points * spread.interaction, 1)}, {"within", decimal(voice, points * spread.repeat, 1)}});
}

}  // namespace

std::string kindName(const Voice& voice, ItemKind kind) {
  switch (kind) {
    case ItemKind::liking: return say(voice, QT_TRANSLATE_NOOP("words", "liking"));
    case ItemKind::line: return say(voice, QT_TRANSLATE_NOOP("words", "a line"));
    case ItemKind::magnitude: return say(voice, QT_TRANSLATE_NOOP("words", "a line with words on it"));
    case ItemKind::justRight: return say(voice, QT_TRANSLATE_NOOP("words", "too little, too much"));
    case ItemKind::check: return say(voice, QT_TRANSLATE_NOOP("words", "a word to tick"));
    case ItemKind::rank: return say(voice, QT_TRANSLATE_NOOP("words", "an order of all cups"));
    case ItemKind::split: return say(voice, QT_TRANSLATE_NOOP("words", "five points to give"));
    case ItemKind::behaviour: return say(voice, QT_TRANSLATE_NOOP("words", "what they would do with it"));
    case ItemKind::worst: return say(voice, QT_TRANSLATE_NOOP("words", "the worst thing"));
    case ItemKind::changeOne: return say(voice, QT_TRANSLATE_NOOP("words", "one thing to change"));
    case ItemKind::distance: return say(voice, QT_TRANSLATE_NOOP("words", "distance from the marked cup"));
    case ItemKind::words: return say(voice, QT_TRANSLATE_NOOP("words", "free words"));
    case ItemKind::sureness: return say(voice, QT_TRANSLATE_NOOP("words", "how sure they are"));
    case ItemKind::choose:
    case ItemKind::same:
    case ItemKind::prefer:
    case ItemKind::clue: break;
  }
  return {};
}

std::string roleName(const Voice& voice, LotRole role) {
  switch (role) {
    case LotRole::compared: return say(voice, QT_TRANSLATE_NOOP("words", "asked about"));
    case LotRole::reference: return say(voice, QT_TRANSLATE_NOOP("words", "the others are held against it"));
    case LotRole::control: return say(voice, QT_TRANSLATE_NOOP("words", "flawed or thinned on purpose"));
    case LotRole::warmUp: return say(voice, QT_TRANSLATE_NOOP("words", "a warm-up cup, never scored"));
  }
  return {};
}

std::string sheetItemLine(const Voice& voice, const SheetItem& item) {
  std::vector<std::string> more;
  if (item.part != Part::main && item.part != Part::last) more.push_back(item.part == Part::look ? say(voice, QT_TRANSLATE_NOOP("words", "by eye")) : item.part == Part::smell ? say(voice, QT_TRANSLATE_NOOP("words", "by smell")) : say(voice, QT_TRANSLATE_NOOP("words", "45 seconds after swallowing")));
  if (item.isMain) more.push_back(say(voice, QT_TRANSLATE_NOOP("words", "one of those the plan is about")));
  if (item.limit) more.push_back(say(voice, QT_TRANSLATE_NOOP("words", "a gap up to {limit} does not matter"), {{"limit", limitPoints(voice, item.kind, *item.limit)}}));
  if (!item.required) more.push_back(say(voice, QT_TRANSLATE_NOOP("words", "may be left out")));
  std::string remarks;
  for (const std::string& each : more) remarks += (remarks.empty() ? "" : "; ") + each;
  const Values values{{"kind", capitalised(kindName(voice, item.kind))}, {"word", item.word}, {"more", remarks}};
  if (item.word.empty()) return more.empty() ? values.at("kind") : say(voice, QT_TRANSLATE_NOOP("words", "{kind} ({more})"), values);
  return more.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "{kind}: {word}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "{kind}: {word} ({more})"), values);
}

SheetPlanWords sheetPlanWords(const Voice& voice, const planning::SheetOutlook& outlook) {
  SheetPlanWords words{gapHeadline(voice, outlook), {}, {}};
  const bool isMeasured = std::ranges::any_of(outlook.gaps, [](const planning::Gap& gap) { return gap.smallest.has_value(); });
  const auto add = [&](bool holds, const char* source, const Values& values = {}) {
    if (holds) words.lines.push_back(say(voice, source, values));
  };
  const auto warn = [&](bool holds, const char* source, const Values& values = {}) {
    if (holds) words.cautions.push_back(say(voice, source, values));
  };
  if (isMeasured) words.lines.push_back(spreadLine(voice, outlook.spread));
  const bool isHeld = !outlook.gaps.empty() && outlook.gaps.front().questions > 1;
  add(isHeld && isMeasured, QT_TRANSLATE_NOOP("words", "{n} questions are held together: each more of them makes the smallest gap wider."), {{"n", isHeld ? capitalised(spelled(voice, outlook.gaps.front().questions)) : std::string()}});
  add(!outlook.isComplete, QT_TRANSLATE_NOOP("words", "Nobody gets all {samples} cups: {cups} each, shared out so that every pair meets as evenly as it can."),
      {{"samples", whole(voice, outlook.samples)}, {"cups", whole(voice, outlook.cups)}});
  warn(outlook.noReference, QT_TRANSLATE_NOOP("words", "Nothing is held beside it. Friends' scores by themselves say little: add a bought drink, or pour one cup twice."));
  warn(outlook.withinUnlikely && !outlook.noIntervals, QT_TRANSLATE_NOOP("words", "With so few people “within the limit” seldom comes out, even where it is true: expect “cannot tell yet”."));
  warn(outlook.willBeGuessed, QT_TRANSLATE_NOOP("words", "With {n} people you will guess who wrote what. Signed sheets are more honest."), {{"n", spelled(voice, outlook.people)}});
  return words;
}

}  // namespace oddglass::words
