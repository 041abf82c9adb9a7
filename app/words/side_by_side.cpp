#include "words/side_by_side.h"

#include "words/batch_steps.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_out.h"

#include <algorithm>

namespace oddglass::words {

using insight::BatchGap;
using insight::BatchLink;
using insight::BatchStep;
using insight::GapVerdict;
using insight::SideBySide;

namespace {

struct StepCounts {
  int linked = 0, moved = 0, within = 0, limited = 0, judged = 0;
  std::vector<std::string> movedWords;
};

StepCounts countsOf(const Voice& voice, const SideBySide& found) {
  StepCounts counts;
  for (const BatchStep& step : found.steps) {
    counts.linked += step.link != BatchLink::none;
    for (const BatchGap& gap : step.gaps) {
      const LotQuestion& question = found.lines[static_cast<std::size_t>(gap.line)].question;
      counts.judged += gap.difference.pValue.has_value();
      counts.limited += gap.pWithin.has_value();
      counts.within += gap.verdict == GapVerdict::within;
      if (gap.verdict != GapVerdict::less && gap.verdict != GapVerdict::more) continue;
      ++counts.moved;
      const std::string name = questionName(voice, question.kind, question.part, question.word);
      if (std::ranges::find(counts.movedWords, name) == counts.movedWords.end()) counts.movedWords.push_back(name);
    }
  }
  return counts;
}

void addHeadline(const Voice& voice, const std::vector<std::string>& names, const SideBySide& found, SideBySideWords& out) {
  const StepCounts counts = countsOf(voice, found);
  out.shape = Shape::dash;
  out.word = say(voice, QT_TRANSLATE_NOOP("words", "no verdict"));
  if (names.size() < 2) {
    out.headline = names.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "There is no batch here yet.")) : say(voice, QT_TRANSLATE_NOOP("words", "One batch has nothing to stand beside yet."));
    return;
  }
  if (counts.linked == 0) {
    out.word = say(voice, QT_TRANSLATE_NOOP("words", "not comparable"));
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "These batches were never poured together, nor beside a shared bottle: not comparable."));
    return;
  }
  if (counts.judged == 0) {
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Too few people had both, or all answered alike: nothing can be judged yet."));
    return;
  }
  if (counts.moved > 0) {
    out.shape = Shape::disc;
    out.word = say(voice, QT_TRANSLATE_NOOP("words", "moved"));
    const Values values{{"what", capitalised(listed(voice, counts.movedWords))}, {"n", spelled(voice, counts.moved)}};
    out.headline = counts.movedWords.size() <= 3 ? say(voice, QT_TRANSLATE_NOOP("words", "{what} moved between batches."), values)
                                                 : capitalised(say(voice, QT_TRANSLATE_NOOP("words", "{n} things moved between batches."), values));
    return;
  }
  if (counts.within > 0 && counts.within == counts.limited) {
    out.shape = Shape::bars;
    out.word = say(voice, QT_TRANSLATE_NOOP("words", "within your limit"));
    out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Within your limit in all that a limit was set for, before anything was poured."));
    return;
  }
  out.shape = Shape::ring;
  out.word = say(voice, QT_TRANSLATE_NOOP("words", "not shown"));
  out.headline = say(voice, QT_TRANSLATE_NOOP("words", "Nothing is shown to have moved."));
}

std::string tickedCell(const Voice& voice, const insight::BatchMentions::Count& count) {
  if (count.asked == 0) return "–";
  const Values values{{"count", countOf(voice, count.ticked, count.asked)}, {"noticers", countOf(voice, count.noticersTicked, count.noticers)}};
  return count.noticers > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "{count}; {noticers} of those known to notice it"), values) : values.at("count");
}

void addColumnRows(const Voice& voice, const std::vector<Batch>& batches, const BatchTastings& tastings, const SideBySide& found, SideBySideWords& out) {
  out.headers = {std::string()};
  out.headers.insert(out.headers.end(), out.columns.begin(), out.columns.end());
  std::vector<std::string> lots{say(voice, QT_TRANSLATE_NOOP("words", "bottles"))}, ages{say(voice, QT_TRANSLATE_NOOP("words", "age at tasting"))}, changed{say(voice, QT_TRANSLATE_NOOP("words", "changed in it"))};
  for (std::size_t b = 0; b < batches.size(); ++b) {
    const insight::BatchColumn& column = found.columns[b];
    const auto lot = column.lot ? std::ranges::find(batches[b].lots, tastings.lots[static_cast<std::size_t>(*column.lot)], &Lot::id) : batches[b].lots.end();
    lots.push_back(lot == batches[b].lots.end() ? std::string("–") : lot->name);
    std::string tasted;
    for (const insight::TastedOnce& each : column.tasted)
      tasted += (tasted.empty() ? "" : "; ") + say(voice, QT_TRANSLATE_NOOP("words", "{age} ({people})"), {{"age", each.age ? ageName(voice, *each.age) : each.heldOn}, {"people", people(voice, each.people)}});
    ages.push_back(tasted.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "not tasted blind yet")) : tasted);
    std::vector<std::string> notes;
    for (const Note& note : batches[b].changed) notes.push_back(note.text);
    changed.push_back(notes.empty() ? std::string("–") : listed(voice, notes));
  }
  out.rows = {lots, ages, changed};
  for (const insight::BatchLine& line : found.lines) {
    std::vector<std::string> row{questionName(voice, line.question.kind, line.question.part, line.question.word) + ", " + outOf(voice, line.question.kind)};
    for (const insight::BatchMean& mean : line.means)
      row.push_back(mean.people == 0 ? std::string("–")
                    : mean.mean     ? say(voice, QT_TRANSLATE_NOOP("words", "{value} ({people})"), {{"value", points(voice, line.question.kind, *mean.mean)}, {"people", people(voice, mean.people)}})
                                    : say(voice, QT_TRANSLATE_NOOP("words", "one person only")));
    out.rows.push_back(std::move(row));
  }
  for (const insight::BatchMentions& mentions : found.mentions) {
    std::vector<std::string> row{say(voice, QT_TRANSLATE_NOOP("words", "{word}, ticked by"), {{"word", questionName(voice, mentions.question.kind, mentions.question.part, mentions.question.word)}})};
    for (const auto& count : mentions.counts) row.push_back(tickedCell(voice, count));
    out.rows.push_back(std::move(row));
  }
  if (!found.lines.empty() || !found.mentions.empty())
    out.underTable = say(voice, QT_TRANSLATE_NOOP("words", "Averages as they were given, each on its own evening: no line joins them. What may be compared is told by itself, with its range. Ticks are counted, not judged."));
}

std::vector<std::string> markLines(const Voice& voice, const SideBySide& found) {
  std::vector<std::string> lines;
  for (const insight::BatchLine& line : found.lines) {
    std::vector<std::string> names;
    for (const std::string& name : line.formerly) names.push_back(quoted(voice, name));
    Values values{{"word", quoted(voice, line.question.word)}, {"names", listed(voice, names)}, {"days", listed(voice, line.changedOn)}};
    if (!names.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{word} was also asked as {names}; both count as one word here. People may not have understood them alike."), values));
    else if (!line.changedOn.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{word}: the list of words was changed here between the tastings, on {days}."), values));
  }
  return lines;
}

}  // namespace

std::vector<std::string> batchNames(const std::vector<Batch>& batches, const BatchTastings& tastings, const SideBySide& found) {
  std::vector<std::string> names;
  for (std::size_t b = 0; b < batches.size(); ++b) {
    const std::string& name = batches[b].beverage.name;
    const auto lot = found.columns[b].lot;
    const bool isTwice = std::ranges::count_if(batches, [&](const Batch& each) { return each.beverage.name == name; }) > 1;
    names.push_back(isTwice && lot ? tastings.names[static_cast<std::size_t>(*lot)] : name);
  }
  return names;
}

SideBySideWords sideBySideWords(const Voice& voice, const std::vector<Batch>& batches, const BatchTastings& tastings, const SideBySide& found, const std::string& today) {
  SideBySideWords out;
  out.columns = batchNames(batches, tastings, found);
  addHeadline(voice, out.columns, found, out);
  if (found.comparisons > 0) {
    out.lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "One comparison was made."),
                                 QT_TRANSLATE_NOOP("words", "{n} comparisons were looked at together: less, more and within your limit stand only where they hold among all of them. Each range is for its word alone."), found.comparisons));
    if (out.shape == Shape::ring) out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "That is not “nothing moved”: the ranges below say what may still be there.")));
    if (out.shape == Shape::disc) out.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "More or less of a thing is not better or worse.")));
  }
  for (std::size_t b = 0; b < batches.size(); ++b)
    if (found.columns[b].lotsLeftOut > 0)
      out.lines.push_back(sayCount(voice, QT_TRANSLATE_NOOP("words", "Another bottling of {batch} was tasted too; it is left out here."), QT_TRANSLATE_NOOP("words", "{n} other bottlings of {batch} were tasted too; they are left out here."),
                                   found.columns[b].lotsLeftOut, {{"batch", out.columns[b]}}));
  if (!batches.empty()) addColumnRows(voice, batches, tastings, found, out);
  for (const BatchStep& step : found.steps) out.steps.push_back(batchStepWords(voice, out.columns, tastings, found, step, today));
  out.marks = markLines(voice, found);
  return out;
}

std::string linkTitle(const Voice& voice, const std::string& recipe) {
  return recipe.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Batches side by side")) : say(voice, QT_TRANSLATE_NOOP("words", "{recipe}: batches side by side"), {{"recipe", recipe}});
}

}  // namespace oddglass::words
