#include "words/room.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <algorithm>
#include <cmath>

namespace oddglass::words {
namespace {

using insight::Lean;
using insight::LeanVerdict;
using insight::NoLean;

// Points without a sign: the words say which way. Above 0 is kinder.
std::string pointsOf(const Voice& voice, double value) { return decimal(voice, std::abs(value), 1); }

// "0.7 harder", "1.6 kinder"; what rounds to nothing is neither.
std::string sided(const Voice& voice, double value) {
  const Values values{{"x", pointsOf(voice, value)}};
  if (std::abs(value) < 0.05) return values.at("x");
  return value > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "{x} kinder"), values) : say(voice, QT_TRANSLATE_NOOP("words", "{x} harder"), values);
}

// How far the scale goes, so that all leans and the nearer intervals lie on it.
double reachOf(const std::vector<LeanRow>& rows) {
  double furthest = 0.0;
  for (const LeanRow& row : rows) {
    furthest = std::max(furthest, std::abs(*row.lean));
    if (row.low) furthest = std::max(furthest, std::min(5.0, std::max(std::abs(*row.low), std::abs(*row.high))));
  }
  for (const double reach : {1.0, 2.0, 3.0, 5.0, 8.0})
    if (furthest <= reach) return reach;
  return 16.0;
}

// Before "than ...".
std::string thanOthers(const Voice& voice, double value) {
  return std::abs(value) < 0.05 ? say(voice, QT_TRANSLATE_NOOP("words", "neither kinder nor harder")) : sided(voice, value);
}

Values rangeOf(const Voice& voice, const stats::Estimated& lean) {
  const bool isHarder = *lean.high < 0.0;
  return {{"points", pointsOf(voice, *lean.estimate)}, {"low", pointsOf(voice, isHarder ? *lean.high : *lean.low)}, {"high", pointsOf(voice, isHarder ? *lean.low : *lean.high)},
          {"harder", sided(voice, *lean.low)}, {"kinder", sided(voice, *lean.high)}};
}

std::string leadOf(const Voice& voice, const Lean& lean) {
  if (lean.verdict == LeanVerdict::kinder) return say(voice, QT_TRANSLATE_NOOP("words", "Knowing nothing of the cup, you may still know your own taste. That is no fault; it is why others are asked too."));
  if (lean.verdict == LeanVerdict::harder) return say(voice, QT_TRANSLATE_NOOP("words", "Knowing nothing of the cup, you may still know your own taste, and hear in it what others pass over."));
  if (lean.verdict == LeanVerdict::notShown)
    return lean.weaker ? say(voice, QT_TRANSLATE_NOOP("words", "All answers together point one way; without those given after something was said aloud it does not hold, and the weaker of the two stands."))
                       : say(voice, QT_TRANSLATE_NOOP("words", "A small lean may still be there. More people at the table narrow this down, more than further evenings do."));
  switch (*lean.why) {
    case NoLean::fewSessions: return say(voice, QT_TRANSLATE_NOOP("words", "Needs three opened tastings of your own. So far {n}."), {{"n", whole(voice, static_cast<long long>(lean.sessions.size()))}});
    case NoLean::fewKnown: return say(voice, QT_TRANSLATE_NOOP("words", "Most of the others asked to be only in the sums, so nobody can tell who sat at which tasting. Each tasting stands by itself."));
    case NoLean::fewFriends:
      return sayCount(voice, QT_TRANSLATE_NOOP("words", "Beside one other person: {lean} than they were, and no range. Three others are needed."),
                      QT_TRANSLATE_NOOP("words", "Beside {n} other people: {lean} than they were, and no range. Three others are needed."), lean.friends, {{"lean", thanOthers(voice, lean.over.estimate.value_or(0.0))}});
    case NoLean::noSpread: return say(voice, QT_TRANSLATE_NOOP("words", "The others were of one mind to the point, so there is nothing to measure a range by: {lean} than they were."), {{"lean", thanOthers(voice, lean.over.estimate.value_or(0.0))}});
  }
  return {};
}

std::vector<std::string> linesOf(const Voice& voice, const Lean& lean) {
  std::vector<std::string> lines;
  if (lean.sessions.empty()) {
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "What counts: a score sheet with the overall liking, your own drink beside a reference, and you at the table as its maker under your name or nickname, beside others.")));
    return lines;
  }
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Points are those of the liking from 1 to 9: your own minus the reference, as you gave them, less the mean of what the others gave. At 0 you and the room saw the same distance.")));
  if (lean.verdict != LeanVerdict::none)
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "It rests on {tastings} and {people}. People are the unit: the same few people over more evenings sharpen it only a little."),
                        {{"tastings", tastings(voice, lean.together)}, {"people", people(voice, lean.friends)}}));
  if (lean.onlyInSums > 0)
    lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "Once somebody asked to be only in the sums: counted in that tasting, not over all of them."),
                             QT_TRANSLATE_NOOP("words", "{n} times somebody asked to be only in the sums: counted in that tasting, not over all of them."), lean.onlyInSums));
  return lines;
}

Shape leanShape(LeanVerdict verdict) {
  switch (verdict) {
    case LeanVerdict::kinder:
    case LeanVerdict::harder: return Shape::disc;
    case LeanVerdict::notShown: return Shape::ring;
    case LeanVerdict::none: break;
  }
  return Shape::dash;
}

std::string whyAlone(const Voice& voice, const insight::LeanLine& line) {
  if (line.friends < 3) return say(voice, QT_TRANSLATE_NOOP("words", "fewer than three others: no range"));
  return say(voice, QT_TRANSLATE_NOOP("words", "the others did not differ: no range"));
}

LeanRow rowOf(const Voice& voice, const OwnSession& own, const insight::LeanLine& line) {
  const Plan& plan = own.session.plan;
  std::vector<std::string> drinks;
  for (const Slot slot : own.own) drinks.push_back(plan.lots[static_cast<std::size_t>(slot.value) - 1].beverageName);
  LeanRow row;
  const std::string when = day(voice, own.session.revealedAt);
  row.label = say(voice, QT_TRANSLATE_NOOP("words", "{day} {drink}"), {{"day", when}, {"drink", listed(voice, drinks)}});
  row.lean = line.lean.estimate;
  row.low = line.lean.low;
  row.high = line.lean.high;
  row.isKinder = row.low && *row.low > 0.0;
  row.isHarder = row.high && *row.high < 0.0;
  row.word = sided(voice, *row.lean);
  row.count = people(voice, line.friends);
  if (!row.low) row.why = whyAlone(voice, line);
  Values values{{"drink", listed(voice, drinks)}, {"day", when}, {"lean", thanOthers(voice, *row.lean)}, {"people", row.count}, {"why", row.why}};
  if (row.low) {
    values.merge(rangeOf(voice, line.lean));
    row.readOut = say(voice, QT_TRANSLATE_NOOP("words", "{day}, {drink}: {lean} than the mean of {people}; anything from {harder} to {kinder} fits."), values);
  } else {
    row.readOut = say(voice, QT_TRANSLATE_NOOP("words", "{day}, {drink}: {lean} than the mean of {people}; {why}."), values);
  }
  return row;
}

}  // namespace

std::string leanHeadline(const Voice& voice, const Lean& lean) {
  if (lean.verdict == LeanVerdict::none) return say(voice, QT_TRANSLATE_NOOP("words", "Too little known yet."));
  if (lean.verdict == LeanVerdict::notShown && lean.weaker) return say(voice, QT_TRANSLATE_NOOP("words", "No lean shown."));
  Values values = rangeOf(voice, lean.over);
  values["tastings"] = tastings(voice, lean.together);
  if (lean.verdict == LeanVerdict::kinder) return say(voice, QT_TRANSLATE_NOOP("words", "You were kinder to your own than the room was, by {points} points ({low} to {high}), over {tastings}."), values);
  if (lean.verdict == LeanVerdict::harder) return say(voice, QT_TRANSLATE_NOOP("words", "You were harder on your own than the room was, by {points} points ({low} to {high}), over {tastings}."), values);
  return say(voice, QT_TRANSLATE_NOOP("words", "No lean shown; anything from {harder} to {kinder} fits."), values);
}

std::optional<LeanPicture> leanPicture(const Voice& voice, const OwnTastings& tastings, const Lean& lean) {
  if (lean.sessions.empty()) return std::nullopt;
  LeanPicture picture;
  picture.title = say(voice, QT_TRANSLATE_NOOP("words", "You beside the room, tasting by tasting"));
  picture.zero = say(voice, QT_TRANSLATE_NOOP("words", "as the room"));
  picture.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Tasting")), say(voice, QT_TRANSLATE_NOOP("words", "Lean")), say(voice, QT_TRANSLATE_NOOP("words", "Others")), say(voice, QT_TRANSLATE_NOOP("words", "In a sentence"))};
  const std::size_t first = lean.sessions.size() > mostRoomRows ? lean.sessions.size() - mostRoomRows : 0;
  for (std::size_t i = first; i < lean.sessions.size(); ++i) {
    picture.rows.push_back(rowOf(voice, tastings.sessions[lean.sessions[i].at], lean.sessions[i]));
    const LeanRow& row = picture.rows.back();
    picture.table.push_back({row.label, row.word, row.count, row.readOut});
  }
  picture.reach = reachOf(picture.rows);
  const Values reach{{"n", whole(voice, static_cast<long long>(picture.reach))}};
  picture.harder = say(voice, QT_TRANSLATE_NOOP("words", "{n} harder on your own"), reach);
  picture.kinder = say(voice, QT_TRANSLATE_NOOP("words", "{n} kinder to your own"), reach);
  picture.sentence = first == 0 ? picture.title
                                : say(voice, QT_TRANSLATE_NOOP("words", "You beside the room: the last {n} tastings"), {{"n", whole(voice, static_cast<long long>(mostRoomRows))}});
  picture.title = picture.sentence;
  return picture;
}

RoomPage roomPage(const Voice& voice, const OwnTastings& tastings, const insight::RoomFindings& findings) {
  RoomPage page;
  page.shape = leanShape(findings.lean.verdict);
  page.headline = leanHeadline(voice, findings.lean);
  page.lead = leadOf(voice, findings.lean);
  page.lines = linesOf(voice, findings.lean);
  page.picture = leanPicture(voice, tastings, findings.lean);
  page.label = labelSection(voice, tastings, findings.label);
  page.expected = expectedSection(voice, tastings, findings);
  page.curve = curvePicture(voice, findings);
  return page;
}

std::string nobodysRoom(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Nobody is marked as the brewer. Say under People that you are; then this page is about you."));
}

}  // namespace oddglass::words
