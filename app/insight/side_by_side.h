#pragma once

#include "domain/batch.h"
#include "insight/points.h"
#include "stats/estimated.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::insight {

/// One tasting of a batch.
struct TastedOnce {
  int session = 0;                ///< its place among the sessions of the tastings
  std::string heldOn;
  std::optional<double> age;      ///< months after the bottling; nothing where its day is not known or lies later
  int people = 0;                 ///< who said anything of the batch
};

/// One batch as a column.
struct BatchColumn {
  std::optional<int> lot;             ///< which of its lots is compared, by its place among the lots; nothing where it has none
  int lotsLeftOut = 0;                ///< other lots of it that were tasted blind and are left out here
  std::vector<TastedOnce> tasted;     ///< the first day first
};

/// What a batch was given in one question, over all its tastings; each person's cups averaged first.
struct BatchMean {
  int people = 0;
  std::optional<double> mean;         ///< from two people on
};

/// One question over all batches. Words that count as one today are one question.
struct BatchLine {
  LotQuestion question;                    ///< under the one name it was asked by, or the name that the word has today
  std::vector<std::string> formerly;       ///< other names it was asked under in these tastings
  std::vector<std::string> changedOn;      ///< days between the first and the last of these tastings on which the word was renamed, merged or taken apart
  std::vector<BatchMean> means;            ///< for each batch
};

/// How often a word was ticked, for each batch.
struct BatchMentions {
  LotQuestion question;
  struct Count {
    int ticked = 0, asked = 0;             ///< people
    int noticersTicked = 0, noticers = 0;  ///< of these, those known to notice the word
  };
  std::vector<Count> counts;
};

/// How two batches are held together.
enum class BatchLink {
  none,        ///< never poured together, nor beside a shared bottle
  together,    ///< poured in one session
  reference,   ///< each poured beside one lot, in sessions of their own: the weaker way
};

/// A batch minus another in one question, by the people who had both.
struct BatchGap {
  int line = 0;                               ///< its place among the lines
  int people = 0;
  std::optional<double> base, other;          ///< means of these people; minus the shared lot where that is the link
  stats::Estimated difference;                ///< other minus base, interval at 95 % for this question alone
  std::optional<int> limit;                   ///< the narrowest that was set; only where every session used had one
  std::optional<double> limitLow, limitHigh;  ///< at 90 %, for the limit
  std::optional<double> pDifference, pWithin; ///< adjusted over all comparisons of the page (Holm)
  GapVerdict verdict = GapVerdict::cannotTell;
};

/// A batch set against another one.
struct BatchStep {
  int base = 0, other = 0;                    ///< columns
  BatchLink link = BatchLink::none;
  std::optional<int> shared;                  ///< the shared lot, by its place among the lots
  std::vector<int> baseSessions, otherSessions;   ///< the sessions used, by their place; both the same where poured together
  int people = 0;                             ///< who had both
  std::vector<Note> changed;                  ///< written down as changed on the way from base to other
  std::optional<double> baseAge, otherAge;    ///< months, the mean over the sessions used
  std::optional<std::string> sameAgeOn;       ///< the day on which the other gets as old as the base was; only where it was younger
  std::vector<BatchGap> gaps;                 ///< in the order of the lines; those that were asked of both
};

/// What two batches or more amount to beside each other.
struct SideBySide {
  std::vector<BatchColumn> columns;           ///< in the order of the batches
  std::optional<int> good;                    ///< the batch that all others are held against
  std::vector<BatchLine> lines;               ///< liking first, then by word
  std::vector<BatchMentions> mentions;
  std::vector<BatchStep> steps;
  int comparisons = 0;                        ///< how many differences were judged together
};

/// Sets batches side by side. `words` are those of the tastings' questions, `noticers` who is known to notice them. Each batch is held against the one before it, or, where these two have no link, against
/// the latest earlier one that has; with `good` every other batch is held against that one.
/// Of a batch with several lots the one that was poured together with most of the others counts, then the one with most links, then the one tasted most often.
/// The unit is the person. Poured together: each person's own difference, over the sessions averaged first. Through a shared lot: each batch minus that lot,
/// by those who sat at both; several such lots: the one with most people.
/// Verdicts at alpha 0.05, in the order within, less or more, cannot tell; under three people, or without spread, cannot tell.
/// Source: Student's t over people (paired); Schuirmann 1987 for the limit; Holm 1979 over all steps and questions.
SideBySide sideBySideOf(const std::vector<Batch>& batches, const BatchTastings& tastings, const std::vector<WordNow>& words, std::optional<int> good = std::nullopt, const Noticers& noticers = {});

/// The lots of a tasting that would link the batches: of each one that has bottles, and beside those that are drunk a lot that stood beside them and has some
/// (`free` for each of the tastings' lots). Fewer than two: no bottle is left that could.
std::vector<LotId> lotsToLink(const SideBySide& found, const BatchTastings& tastings, const std::vector<int>& free);

}  // namespace oddglass::insight
