// What knowing the labels did, beside the others.
#include "words/mark.h"
#include "words/numbers.h"
#include "words/room.h"

#include <cmath>

namespace oddglass::words {
namespace {

using insight::LeanVerdict;
using insight::NoLean;

std::string unsigned1(const Voice& voice, double value) { return decimal(voice, std::abs(value), 1); }

// "by 1.2 points towards your own", "by 0.4 points away from it"; what rounds to nothing is not at all.
std::string moved(const Voice& voice, double value) {
  if (std::abs(value) < 0.05) return say(voice, QT_TRANSLATE_NOOP("words", "not at all"));
  const Values values{{"x", unsigned1(voice, value)}};
  return value > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "by {x} points towards your own"), values) : say(voice, QT_TRANSLATE_NOOP("words", "by {x} points away from your own"), values);
}

std::string overAll(const Voice& voice, const insight::Label& label) {
  const stats::Estimated& over = label.over;
  const bool isAway = over.high && *over.high < 0.0;
  Values values{{"tastings", tastings(voice, label.together)}, {"people", people(voice, label.friends)}, {"n", whole(voice, static_cast<long long>(label.sessions.size()))}};
  if (over.estimate) values["points"] = unsigned1(voice, *over.estimate);
  if (over.low && over.high) {
    values["low"] = unsigned1(voice, isAway ? *over.high : *over.low);
    values["high"] = unsigned1(voice, isAway ? *over.low : *over.high);
    values["from"] = moved(voice, *over.low);
    values["to"] = moved(voice, *over.high);
  }
  switch (label.verdict) {
    case LeanVerdict::kinder: return say(voice, QT_TRANSLATE_NOOP("words", "Knowing the labels moved you further towards your own than it moved the others, by {points} points ({low} to {high}), over {tastings} and {people}."), values);
    case LeanVerdict::harder: return say(voice, QT_TRANSLATE_NOOP("words", "Knowing the labels moved you less towards your own than it moved the others, by {points} points ({low} to {high}), over {tastings} and {people}."), values);
    case LeanVerdict::notShown: return say(voice, QT_TRANSLATE_NOOP("words", "No label effect shown over {tastings} and {people}: beside the others you may have moved {from}, {to}, or anything between."), values);
    case LeanVerdict::none: break;
  }
  switch (label.why.value_or(NoLean::fewSessions)) {
    case NoLean::fewSessions: return say(voice, QT_TRANSLATE_NOOP("words", "Too little known: it takes three tastings with an open round, so far {n}."), values);
    case NoLean::fewKnown: return say(voice, QT_TRANSLATE_NOOP("words", "Most of the others asked to be only in the sums, so each tasting stands by itself."));
    case NoLean::fewFriends: return say(voice, QT_TRANSLATE_NOOP("words", "Three others are needed for a range; each tasting stands by itself."));
    case NoLean::noSpread: return say(voice, QT_TRANSLATE_NOOP("words", "The others moved by the same to the point, so there is nothing to measure a range by."));
  }
  return {};
}

}  // namespace

OutSection labelSection(const Voice& voice, const OwnTastings& tastings, const insight::Label& label) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "When the labels were known")), {}, {}, {}};
  if (label.sessions.empty()) {
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "No open round so far. After a score sheet with a drink of your own beside a reference is opened, whoever likes may score the same drinks once more, knowing what they are: on the page of what came out.")));
    return section;
  }
  section.lines.push_back(overAll(voice, label));
  section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The open round always comes after the blind one, so what the label did and what tasting again did cannot be told apart.")));
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Opened")), say(voice, QT_TRANSLATE_NOOP("words", "You moved")), say(voice, QT_TRANSLATE_NOOP("words", "The others moved"))};
  for (auto line = label.sessions.rbegin(); line != label.sessions.rend() && section.rows.size() < mostRoomRows; ++line) {
    const RevealedSession& session = tastings.sessions[line->at].session;
    section.rows.push_back({say(voice, QT_TRANSLATE_NOOP("words", "{day} {title}"), {{"day", day(voice, session.revealedAt)}, {"title", session.title}}),
                            say(voice, QT_TRANSLATE_NOOP("words", "You moved {you}"), {{"you", moved(voice, line->own)}}),
                            say(voice, QT_TRANSLATE_NOOP("words", "the others ({people}) moved {others}"), {{"people", people(voice, line->friends)}, {"others", moved(voice, line->others)}})});
  }
  return section;
}

}  // namespace oddglass::words
