// What was expected, and what came of it.
#include "words/expectation.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/room.h"

namespace oddglass::words {
namespace {

using insight::RoomFindings;

std::string cameOf(const Voice& voice, const std::optional<bool>& cameTrue) {
  if (!cameTrue) return say(voice, QT_TRANSLATE_NOOP("words", "no verdict came of it"));
  return *cameTrue ? say(voice, QT_TRANSLATE_NOOP("words", "it came so")) : say(voice, QT_TRANSLATE_NOOP("words", "it did not"));
}

void addCalibration(const Voice& voice, const RoomFindings& findings, std::vector<std::string>& lines) {
  const stats::Calibration& found = *findings.calibration;
  const Values values{{"n", whole(voice, findings.settled)}, {"hits", whole(voice, found.hits)}, {"sum", decimal(voice, found.expectedHits, 1)}, {"brier", decimal(voice, found.brier, 2)},
                      {"often", found.pValue ? timesIn(voice, *found.pValue) : std::string()}};
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Of {n} outcomes {hits} came as you had in mind; your numbers add up to {sum}."), values));
  const bool isOff = found.pValue && *found.pValue <= 0.05;
  if (isOff && found.hits < found.expectedHits) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "You expected more than came. Had your numbers been right, a count as far off would come {often}."), values));
  else if (isOff) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "More came than you expected. Had your numbers been right, a count as far off would come {often}."), values));
  else if (found.pValue) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Had your numbers been right, a count as far off or further would come {often}: not shown that they are off."), values));
  lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Mean squared miss (Brier): {brier}. Whoever always writes 50 has 0.25; less is better."), values));
}

}  // namespace

OutSection expectedSection(const Voice& voice, const OwnTastings& tastings, const RoomFindings& findings) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "What you expected")), {}, {}, {}};
  if (findings.expectations.empty()) {
    section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Nothing written so far. On the page of the seal you may write how likely you think the outcome is; once the key is open it stands here.")));
    return section;
  }
  if (findings.calibration) addCalibration(voice, findings, section.lines);
  else section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Too little known yet: {n} of the three outcomes that this needs."), {{"n", whole(voice, findings.settled)}}));
  section.headers = {say(voice, QT_TRANSLATE_NOOP("words", "Opened")), say(voice, QT_TRANSLATE_NOOP("words", "Written beforehand")), say(voice, QT_TRANSLATE_NOOP("words", "What came"))};
  for (auto line = findings.expectations.rbegin(); line != findings.expectations.rend() && section.rows.size() < mostRoomRows; ++line) {
    const RevealedSession& session = tastings.sessions[line->at].session;
    section.rows.push_back({say(voice, QT_TRANSLATE_NOOP("words", "{day} {title}"), {{"day", day(voice, session.revealedAt)}, {"title", session.title}}),
                            say(voice, QT_TRANSLATE_NOOP("words", "{percent} in 100 that {event}"), {{"percent", whole(voice, line->percent)}, {"event", expectedEvent(voice, expectationFacts(session.plan))}}),
                            cameOf(voice, line->cameTrue)});
  }
  return section;
}

std::optional<CurvePicture> curvePicture(const Voice& voice, const RoomFindings& findings) {
  if (!findings.calibration || findings.calibration->curve.empty()) return std::nullopt;
  CurvePicture picture;
  picture.title = say(voice, QT_TRANSLATE_NOOP("words", "What you wrote, and how often it came"));
  picture.never = say(voice, QT_TRANSLATE_NOOP("words", "never came"));
  picture.always = say(voice, QT_TRANSLATE_NOOP("words", "always came"));
  picture.headers = {say(voice, QT_TRANSLATE_NOOP("words", "You wrote")), say(voice, QT_TRANSLATE_NOOP("words", "It came")), say(voice, QT_TRANSLATE_NOOP("words", "In a sentence"))};
  for (const auto& band : findings.calibration->curve) {
    CurveRow row;
    row.share = *band.cameTrue.estimate;
    row.low = *band.cameTrue.low;
    row.high = *band.cameTrue.high;
    const auto hundredths = [&](double share) { return decimal(voice, share * 100, 0); };
    const Values values{{"from", hundredths(band.low)}, {"to", hundredths(band.high)}, {"hits", decimal(voice, row.share * band.count, 0)}, {"n", whole(voice, band.count)},
                        {"low", hundredths(row.low)}, {"high", hundredths(row.high)}};
    row.label = say(voice, QT_TRANSLATE_NOOP("words", "{from} to {to} in 100"), values);
    row.word = say(voice, QT_TRANSLATE_NOOP("words", "{hits} of {n}"), values);
    row.count = sayCount(voice, QT_TRANSLATE_NOOP("words", "1 outcome"), QT_TRANSLATE_NOOP("words", "{n} outcomes"), band.count);
    row.readOut = say(voice, QT_TRANSLATE_NOOP("words", "Where you wrote {from} to {to}, it came {hits} times of {n}; anything from {low} to {high} in 100 fits."), values);
    picture.table.push_back({row.label, row.word, row.readOut});
    picture.rows.push_back(std::move(row));
  }
  return picture;
}

}  // namespace oddglass::words
