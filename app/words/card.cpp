#include "words/card.h"

#include "words/mark.h"
#include "words/noticing.h"
#include "words/numbers.h"

#include <cmath>

namespace oddglass::words {
namespace {

using insight::Card;

std::string points(const Voice& voice, double value) { return decimal(voice, std::abs(value), 1); }

bool roundsToNothing(double value) { return std::abs(value) < 0.05; }

std::string levelLine(const Voice& voice, const Card& card) {
  if (!card.level) return {};
  const Values values{{"raw", points(voice, *card.level)}, {"shrunk", points(voice, card.shrunkLevel.value_or(0.0))}};
  if (roundsToNothing(*card.level)) return say(voice, QT_TRANSLATE_NOOP("words", "You score about as high as the others do for the same cups."));
  return *card.level > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "You score {raw} points higher than the others do for the same cups; {shrunk} once it is allowed for how little is known. That is a way of using the scale, and it does no harm."), values)
                         : say(voice, QT_TRANSLATE_NOOP("words", "You score {raw} points lower than the others do for the same cups; {shrunk} once it is allowed for how little is known. That is a way of using the scale, and it does no harm."), values);
}

std::string cardSpreadLine(const Voice& voice, const Card& card) {
  if (!card.spread) return {};
  Values values{{"raw", points(voice, *card.spread)}, {"shrunk", points(voice, card.shrunkSpread.value_or(*card.spread))}};
  if (!card.othersSpread) return say(voice, QT_TRANSLATE_NOOP("words", "From drink to drink your scores spread by {raw} points (standard deviation); {shrunk} once it is allowed for how little is known."), values);
  values["others"] = points(voice, *card.othersSpread);
  return say(voice, QT_TRANSLATE_NOOP("words", "From drink to drink your scores spread by {raw} points (standard deviation), those of the others by {others}; yours by {shrunk} once it is allowed for how little is known."), values);
}

std::string agreementLine(const Voice& voice, const Card& card) {
  if (!card.agreement) return say(voice, QT_TRANSLATE_NOOP("words", "How far you and the others like the same drinks better: too little known; it takes four drinks that do not all get one score."));
  const Values values{{"raw", decimal(voice, *card.agreement, 2)}, {"shrunk", decimal(voice, card.shrunkAgreement.value_or(*card.agreement), 2)}};
  const double r = card.shrunkAgreement.value_or(*card.agreement);
  const char* source = r >= 0.5  ? QT_TRANSLATE_NOOP("words", "You mostly like the same drinks better as the others do: correlation {raw}, {shrunk} once it is allowed for how little is known. Where you do not, nobody is wrong.")
                       : r >= 0.2 ? QT_TRANSLATE_NOOP("words", "You partly like the same drinks better as the others do: correlation {raw}, {shrunk} once it is allowed for how little is known. Where you do not, nobody is wrong.")
                                  : QT_TRANSLATE_NOOP("words", "Your liking goes its own way beside that of the others: correlation {raw}, {shrunk} once it is allowed for how little is known. Nobody is wrong about what they like, and a voice of its own is worth hearing.");
  return say(voice, source, values);
}

std::string steadierLine(const Voice& voice, const insight::RepeatChange& change) {
  const Values values{{"before", points(voice, change.earlierSd)}, {"after", points(voice, change.laterSd)}, {"low", decimal(voice, change.low, 1)}, {"high", decimal(voice, change.high, 1)}};
  const char* source = change.high < 1.0  ? QT_TRANSLATE_NOOP("words", "You have become steadier: {before} points in the earlier tastings, {after} in the later ones, {low} to {high} times as much.")
                       : change.low > 1.0 ? QT_TRANSLATE_NOOP("words", "Lately they scattered more: {before} points in the earlier tastings, {after} in the later ones, {low} to {high} times as much. Stronger or stranger drinks do that too.")
                                          : QT_TRANSLATE_NOOP("words", "No change shown: {before} points in the earlier tastings, {after} in the later ones; anything from {low} to {high} times as much fits.");
  return say(voice, source, values);
}

void addLine(std::vector<std::string>& lines, std::string line) {
  if (!line.empty()) lines.push_back(std::move(line));
}

std::vector<std::string> scoreLines(const Voice& voice, const Card& card) {
  if (card.sheets < insight::fewestForCard)
    return {say(voice, QT_TRANSLATE_NOOP("words", "Scores: too little known. It takes {least} score sheets beside two others or more, so far {n}."),
                {{"least", spelled(voice, insight::fewestForCard)}, {"n", whole(voice, card.sheets)}})};
  std::vector<std::string> lines{say(voice, QT_TRANSLATE_NOOP("words", "From {drinks} drinks over {n} score sheets, overall liking on nine points:"), {{"drinks", whole(voice, card.samples)}, {"n", whole(voice, card.sheets)}})};
  addLine(lines, levelLine(voice, card));
  addLine(lines, cardSpreadLine(voice, card));
  addLine(lines, agreementLine(voice, card));
  return lines;
}

}  // namespace

std::vector<std::string> repeatLines(const Voice& voice, const insight::Repeats& repeats) {
  if (!repeats.sd) return {};
  std::vector<std::string> lines{sayCount(voice, QT_TRANSLATE_NOOP("words", "When the same drink came twice, unknown to you, your scores scattered by {sd} points (standard deviation, 1 repeat)."),
                                          QT_TRANSLATE_NOOP("words", "When the same drink came twice, unknown to you, your scores scattered by {sd} points (standard deviation, {n} repeats)."), repeats.repeats, {{"sd", points(voice, *repeats.sd)}})};
  if (repeats.change) lines.push_back(steadierLine(voice, *repeats.change));
  return lines;
}

CardPage cardPage(const Voice& voice, const std::string& name, const Card& card) {
  CardPage page;
  page.headline = say(voice, QT_TRANSLATE_NOOP("words", "This is for {name}. Others look away."), {{"name", name}});
  page.limits = say(voice, QT_TRANSLATE_NOOP("words", "This is about some evenings and these drinks, not about you. Tastings at which you were only in the sums are not in it. You may have it forgotten at any time."));
  if (card.isTooFew) {
    page.lead = say(voice, QT_TRANSLATE_NOOP("words", "Too little known yet. It takes {least} opened tastings under your name or nickname; so far {n}."),
                    {{"least", spelled(voice, insight::fewestForCard)}, {"n", whole(voice, card.sessions)}});
    return page;
  }
  page.lead = say(voice, QT_TRANSLATE_NOOP("words", "What {n} opened tastings say of how you taste. It is no mark, and there is no place in a row."), {{"n", whole(voice, card.sessions)}});
  page.scores = scoreLines(voice, card);
  for (std::string& line : repeatLines(voice, card.repeats)) page.scores.push_back(std::move(line));
  if (card.repeats.sd && card.othersRepeatSd)
    page.scores.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Those of the others scattered by {sd} points."), {{"sd", points(voice, *card.othersRepeatSd)}}));
  for (const insight::Noticed& each : card.noticed) {
    for (std::string& line : noticedLines(voice, each)) page.noticed.push_back(std::move(line));
    page.noticed.push_back(changeLine(voice, each));
  }
  if (!card.noticed.empty()) page.noticed.push_back(noticingRule(voice));
  return page;
}

std::vector<std::string> CardPage::all() const {
  std::vector<std::string> lines{lead};
  lines.insert(lines.end(), scores.begin(), scores.end());
  lines.insert(lines.end(), noticed.begin(), noticed.end());
  lines.push_back(limits);
  return lines;
}

std::string cardExists(const Voice& voice, const std::string& name, bool isShown) {
  const Values values{{"name", name}};
  return isShown ? say(voice, QT_TRANSLATE_NOOP("words", "{name} has a card, has seen it, and lets you see it as it was then."), values)
                 : say(voice, QT_TRANSLATE_NOOP("words", "{name} asked for a card. It is shown to them first; what is on it stays theirs until they say otherwise."), values);
}

std::string noCard(const Voice& voice, const std::string& name) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{name} has no card. Cards are for those who ask for one themselves."), {{"name", name}});
}

std::string cardLeave(const Voice& voice) {
  return say(voice, QT_TRANSLATE_NOOP("words", "May the brewer see this too, as it is today? You need not say why."));
}

}  // namespace oddglass::words
