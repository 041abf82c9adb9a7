// The numbers of a score sheet, question by question.
#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_out.h"

#include <cmath>

namespace oddglass::words {

using insight::GapVerdict;
using insight::LotGap;
using insight::LotMean;
using insight::PointsLine;

namespace {

double shown(ItemKind kind, double value) { return kind == ItemKind::magnitude ? value / 10.0 : value; }

std::string range(const Voice& voice, ItemKind kind, double low, double high) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{low} to {high}"), {{"low", points(voice, kind, low)}, {"high", points(voice, kind, high)}});
}

std::string whyNot(const Voice& voice, const LotGap& gap) {
  if (!gap.why) return {};
  switch (*gap.why) {
    case stats::Reason::fewTasters: return say(voice, QT_TRANSLATE_NOOP("words", "Fewer than three people had both, so nothing can be told."));
    case stats::Reason::noSpread: return say(voice, QT_TRANSLATE_NOOP("words", "Everybody gave the same gap, so there is nothing to judge it by."));
    case stats::Reason::emptyCell: return say(voice, QT_TRANSLATE_NOOP("words", "Nobody answered for both."));
    default: return say(voice, QT_TRANSLATE_NOOP("words", "These answers do not allow a judgement."));
  }
}

}  // namespace

std::string questionName(const Voice& voice, ItemKind kind, Part part, const std::string& word) {
  const auto named = [&]() -> std::string {
    switch (kind) {
      case ItemKind::liking:
        return word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "liking")) : say(voice, QT_TRANSLATE_NOOP("words", "liking of the {what}"), {{"what", word}});
      case ItemKind::distance: return say(voice, QT_TRANSLATE_NOOP("words", "distance from the marked cup"));
      default: return word;
    }
  }();
  switch (part) {
    case Part::look: return say(voice, QT_TRANSLATE_NOOP("words", "{what} (by eye)"), {{"what", named}});
    case Part::smell: return say(voice, QT_TRANSLATE_NOOP("words", "{what} (by smell)"), {{"what", named}});
    case Part::late: return say(voice, QT_TRANSLATE_NOOP("words", "{what} (some time after swallowing)"), {{"what", named}});
    case Part::main:
    case Part::last: break;
  }
  return named;
}

std::string points(const Voice& voice, ItemKind kind, double value) {
  const double as = shown(kind, value);
  return decimal(voice, as, kind == ItemKind::line || kind == ItemKind::magnitude ? 0 : 1);
}

std::string limitPoints(const Voice& voice, ItemKind kind, int limit) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{limit} {of}"), {{"limit", decimal(voice, shown(kind, limit), 0)}, {"of", outOf(voice, kind)}});
}

std::string outOf(const Voice& voice, ItemKind kind) {
  switch (kind) {
    case ItemKind::liking: return say(voice, QT_TRANSLATE_NOOP("words", "of 9"));
    case ItemKind::distance: return say(voice, QT_TRANSLATE_NOOP("words", "of 10"));
    default: return say(voice, QT_TRANSLATE_NOOP("words", "of 100"));
  }
}

std::string countOf(const Voice& voice, int count, int of) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{k} of {n}"), {{"k", whole(voice, count)}, {"n", whole(voice, of)}});
}

std::string gapLine(const Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const PointsLine& line, const LotGap& gap) {
  Values values{{"what", capitalised(questionName(voice, line.kind, line.part, line.word))}, {"drink", lotNamed(voice, plan, gap.lot)},
                {"reference", findings.target ? lotNamed(voice, plan, *findings.target) : std::string()}, {"of", outOf(voice, line.kind)}};
  if (gap.difference) values["by"] = points(voice, line.kind, std::abs(*gap.difference));
  if (gap.low && gap.high) {
    // The range of a gap that has a direction is told in that direction.
    const bool isLess = gap.verdict == GapVerdict::less;
    values["range"] = range(voice, line.kind, isLess ? -*gap.high : *gap.low, isLess ? -*gap.low : *gap.high);
  }
  if (line.limit) values["limit"] = points(voice, line.kind, *line.limit);
  if (gap.limitLow && gap.limitHigh) values["here"] = range(voice, line.kind, *gap.limitLow, *gap.limitHigh);
  switch (gap.verdict) {
    case GapVerdict::less: {
      std::string text = say(voice, QT_TRANSLATE_NOOP("words", "{what}: {drink} less than {reference}, by {by} {of} ({range})."), values);
      if (gap.lacks) {
        values["k"] = whole(voice, gap.saidTooLittle);
        values["n"] = whole(voice, gap.askedRight);
        text += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "It lacks it: {k} of {n} said too little."), values);
      }
      return text;
    }
    case GapVerdict::more: return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {drink} more than {reference}, by {by} {of} ({range})."), values);
    case GapVerdict::within:
      return say(voice, QT_TRANSLATE_NOOP("words", "{what}: {drink} within your limit (no more than {limit} {of} from {reference}; here between {here})."), values);
    case GapVerdict::cannotTell: break;
  }
  std::string text = gap.low && gap.high ? say(voice, QT_TRANSLATE_NOOP("words", "{what}: cannot tell yet whether {drink} differs from {reference}; anything from {range} {of} fits."), values)
                                         : say(voice, QT_TRANSLATE_NOOP("words", "{what}: cannot tell yet whether {drink} differs from {reference}."), values);
  if (const std::string why = whyNot(voice, gap); !why.empty()) text += ' ' + why;
  if (gap.weaker) text += ' ' + say(voice, QT_TRANSLATE_NOOP("words", "With everybody it would have been told; without those who had heard something it is not, and the weaker stands."));
  return text;
}

std::string meanLine(const Voice& voice, const Plan& plan, const PointsLine& line, const LotMean& lot) {
  Values values{{"drink", capitalised(lotNamed(voice, plan, lot.lot))}, {"of", outOf(voice, line.kind)}, {"people", people(voice, lot.people)}};
  if (lot.people == 0) return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: nobody answered."), values);
  if (!lot.mean) {
    values["value"] = points(voice, line.kind, lot.values.front());
    return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: {value} {of}, from one person."), values);
  }
  values["mean"] = points(voice, line.kind, *lot.mean);
  if (!lot.low || !lot.high) return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: {mean} {of} on average, {people}; too few, or too much alike, for a range."), values);
  values["range"] = range(voice, line.kind, *lot.low, *lot.high);
  return say(voice, QT_TRANSLATE_NOOP("words", "{drink}: {mean} {of} on average ({range}), {people}."), values);
}

std::string mannerLine(const Voice& voice, const insight::SheetFindings& findings) {
  const insight::TableManner& table = findings.table;
  if (!table.liking || table.likings < 3) return {};
  const Values values{{"liking", decimal(voice, *table.liking, 1)}, {"moved", table.moved ? decimal(voice, *table.moved, 1) : std::string()}};
  const bool isGenerous = *table.liking >= 6.5;
  if (!table.moved)
    return isGenerous ? say(voice, QT_TRANSLATE_NOOP("words", "A generous table: {liking} of 9 over all cups. Without the same drink twice nobody knows how sharp it was."), values)
                      : say(voice, QT_TRANSLATE_NOOP("words", "This table gave {liking} of 9 over all cups. Without the same drink twice nobody knows how sharp it was."), values);
  return isGenerous ? say(voice, QT_TRANSLATE_NOOP("words", "A generous table: {liking} of 9 over all cups; it moved the same drink by {moved}."), values)
                    : say(voice, QT_TRANSLATE_NOOP("words", "This table gave {liking} of 9 over all cups; it moved the same drink by {moved}."), values);
}

}  // namespace oddglass::words
