#pragma once

#include "insight/findings.h"
#include "words/voice.h"

#include <optional>
#include <vector>

namespace oddglass::words {

/// The mark of a verdict: told by shape, never by colour alone.
enum class Shape { disc, ring, bars, dash };  ///< shown, not shown, alike, no verdict

/// The words of the interval picture.
struct IntervalWords {
  double low = 0, high = 1, point = 0;   ///< shares, 0..1
  std::optional<double> limit;           ///< 0..1, where alike was sought
  std::string title, none, half, all, range, limitLabel, sentence;
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> rows;
};

/// What kind of question of a score sheet a section is about.
enum class About { nothing, points, right, ticked, ranked, behaviour, split, said, sure };

/// A part of what came out under a heading of its own: one question of a score sheet, or what was looked at afterwards.
struct OutSection {
  std::string heading;
  std::vector<std::string> lines;
  std::vector<std::string> headers;            ///< of a table; may be empty
  std::vector<std::vector<std::string>> rows;
  About about = About::nothing;                ///< of a score sheet, with the question (ticked words: the first of them)
  Item item{};
};

/// What came out, for the room: no person in it, no place, no words of anybody. Empty fields have nothing to say.
struct CameOut {
  std::vector<std::string> first;   ///< what stands before everything else: a seal that does not hold, a demo
  Shape shape = Shape::dash;
  std::string word;                 ///< the shape in words: "not shown"
  std::string what;                 ///< "Heather mead, bottled 14 March beside a bought mead, vintage 2024"
  std::string headline;
  std::string under;                ///< a second, quieter line of the headline
  std::string count;
  std::string notSaid;              ///< what it does not say
  std::string range;
  std::string missed;
  std::string weaker;               ///< why a weaker verdict is printed than all answers would give
  std::string howKnew;
  std::string sureness;
  std::vector<std::string> beside;  ///< looked at afterwards, no part of the verdict: each says so
  std::vector<std::string> cautions;
  std::vector<std::string> deviations;
  std::string next;
  std::string promise;              ///< what had been written for this outcome
  std::string decision;
  std::string method;
  std::optional<IntervalWords> interval;
  std::vector<OutSection> sections; ///< of a score sheet: what was asked, then what was looked at afterwards
  std::vector<CameOut> pairs;       ///< with three lots: each pair by itself, `what` naming it; their own words and intervals

  /// Every sentence below the headline, in reading order.
  std::vector<std::string> lines() const;
};

/// Findings and the session they were worked out from, in sentences.
CameOut cameOut(const Voice& voice, const RevealedSession& session, const insight::Findings& findings);

/// One deviation in a sentence, without any person or place.
std::string deviationLine(const Voice& voice, const insight::Deviation& deviation);

/// What went otherwise than planned; that the pourer opened the sheet once, and a seal that does not hold, are told elsewhere.
std::vector<std::string> deviationLines(const Voice& voice, const std::vector<insight::Deviation>& deviations);

/// What stands before everything else: a seal that does not hold, a seal broken early, a demo, a file.
std::vector<std::string> firstLines(const Voice& voice, const RevealedSession& session);

/// What had been written before anything was poured for this outcome; empty where nothing was.
std::string promiseFor(const Voice& voice, const RevealedSession& session, insight::Verdict verdict);

/// "Heather mead, bottled 14 March".
std::string lotTitle(const Voice& voice, const PlannedLot& lot);

}  // namespace oddglass::words
