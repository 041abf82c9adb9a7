#include "words/denials.h"
#include "words/side_by_side.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace oddglass;
using namespace oddglass::words;
using insight::BatchLink;
using insight::GapVerdict;
using Catch::Matchers::Contains;

namespace {

/// Two batches beside each other in two words, written by hand.
struct Beside {
  std::vector<oddglass::Batch> batches{2};
  BatchTastings tastings;
  insight::SideBySide found;

  Beside() {
    for (std::size_t i = 0; i < 2; ++i) {
      batches[i].beverage.name = "Hedge mead " + std::to_string(i + 1);
      Lot lot;
      lot.id.text = "lot" + std::to_string(i);
      lot.name = "bottling";
      batches[i].lots = {lot};
      tastings.lots.push_back(lot.id);
      tastings.names.push_back(batches[i].beverage.name + ", bottling");
      tastings.batchOf.push_back(static_cast<int>(i));
    }
    tastings.lots.push_back({"bought"});
    tastings.names.push_back("Bought mead, vintage 2");
    tastings.batchOf.push_back(-1);
    for (const char* day : {"2026-03-01", "2026-06-01"}) tastings.about.sessions.push_back({{day}, "t", day, {}, {}});
    found.columns = {{0, 0, {{0, "2026-03-01", 12.0, 6}}}, {1, 0, {{0, "2026-03-01", 3.0, 6}}}};
    for (const char* word : {"honey", "smoke"}) found.lines.push_back({{ItemKind::line, Part::main, word, 0, 100}, {}, {}, {{6, 37.5}, {1, std::nullopt}}});
    found.mentions.push_back({{ItemKind::check, Part::main, "butter", 0, 1}, {{0, 5}, {2, 6}}});
    insight::BatchStep step;
    step.other = 1;
    step.link = BatchLink::together;
    step.baseSessions = step.otherSessions = {0};
    step.people = 6;
    step.baseAge = 12.0;
    step.otherAge = 3.0;
    step.sameAgeOn = "2026-12-01";
    step.gaps = {gap(0, 12, 4, 20, GapVerdict::more), gap(1, 1, -9, 11, GapVerdict::cannotTell)};
    found.steps = {step};
    found.comparisons = 2;
  }

  static insight::BatchGap gap(int line, double estimate, double low, double high, GapVerdict verdict) {
    insight::BatchGap gap;
    gap.line = line;
    gap.people = 6;
    gap.difference.estimate = estimate;
    gap.difference.low = low;
    gap.difference.high = high;
    gap.difference.pValue = 0.01;
    gap.verdict = verdict;
    return gap;
  }

  void change(std::vector<const char*> what) {
    for (const char* text : what) {
      Note note;
      note.kind = NoteKind::changed;
      note.text = text;
      found.steps[0].changed.push_back(note);
      batches[1].changed.push_back(note);
    }
  }

  SideBySideWords words(const std::string& today = "2026-03-02") const { return sideBySideWords(Voice{}, batches, tastings, found, today); }
};

std::vector<std::string> allOf(const SideBySideWords& out) {
  std::vector<std::string> all = out.lines;
  all.insert(all.end(), out.marks.begin(), out.marks.end());
  for (const std::string& each : {out.headline, out.word, out.underTable}) all.push_back(each);
  for (const auto& row : out.rows) all.insert(all.end(), row.begin(), row.end());
  for (const BatchStepWords& step : out.steps) {
    for (const auto* part : {&step.lines, &step.gaps, &step.told}) all.insert(all.end(), part->begin(), part->end());
    all.push_back(step.heading);
    all.push_back(step.advice);
  }
  return all;
}

}  // namespace

TEST_CASE("what moved is told with its range, its people, its ages and how many comparisons there were") {
  Beside beside;
  beside.change({"another yeast"});
  const SideBySideWords out = beside.words();
  CHECK(out.headline == "Honey moved between batches.");
  CHECK(out.word == "moved");
  CHECK(out.shape == Shape::disc);
  CHECK_THAT(out.lines[0], Contains("2 comparisons were looked at together"));
  REQUIRE(out.steps.size() == 1);
  const BatchStepWords& step = out.steps[0];
  CHECK(step.heading == "Hedge mead 2 beside Hedge mead 1");
  CHECK(step.lines[0] == "Poured together on 2026-03-01: 6 people had both.");
  CHECK(step.lines[1] == "At tasting Hedge mead 1 was 12 months old and Hedge mead 2 was 3 months old: what moved may be age.");
  CHECK(step.lines[2] == "One thing was changed: another yeast. What moved may come of it, or of what nobody wrote down.");
  CHECK(step.gaps[0] == "Honey: Hedge mead 2 more than Hedge mead 1, by 12 of 100 (4 to 20), 6 people.");
  CHECK(step.gaps[1] == "Smoke: cannot tell yet; anything from −9 to 11 of 100 fits, 6 people.");
  CHECK(step.told == std::vector<std::string>{step.gaps[0], "Cannot tell yet in smoke."});
  CHECK_THAT(step.advice, Contains("Hedge mead 2 is as old as Hedge mead 1 was on 2026-12-01"));
  CHECK_THAT(beside.words("2027-01-01").steps[0].advice, Contains("pour the next batches at one age"));
  REQUIRE(out.rows.size() == 6);
  for (const auto& row : out.rows) CHECK(row.size() == out.headers.size());
  CHECK(out.rows[1][1] == "12 months (6 people)");
  CHECK(out.rows[3] == std::vector<std::string>{"honey, of 100", "38 (6 people)", "one person only"});
  CHECK(out.rows[5] == std::vector<std::string>{"butter, ticked by", "0 of 5", "2 of 6"});
  beside.found.mentions[0].counts[1].noticers = 2;
  beside.found.mentions[0].counts[1].noticersTicked = 1;
  CHECK(beside.words().rows[5][2] == "2 of 6; 1 of 2 of those known to notice it");
}

TEST_CASE("several things changed together cannot say which did it") {
  Beside beside;
  beside.change({"yeast", "honey", "acid", "oak"});
  CHECK(beside.words().steps[0].lines[2] == "Four things changed together. This cannot say which did it. They were: yeast, honey, acid and oak.");
  CHECK(beside.words().rows[2][2] == "yeast, honey, acid and oak");
  CHECK_THAT(changedLine(Voice{}, {}), Contains("Nothing is written down as changed"));
}

TEST_CASE("what was never poured together is not compared") {
  Beside beside;
  beside.found.steps[0] = {};
  beside.found.steps[0].other = 1;
  beside.found.comparisons = 0;
  const SideBySideWords out = beside.words();
  CHECK(out.headline == "These batches were never poured together, nor beside a shared bottle: not comparable.");
  CHECK(out.shape == Shape::dash);
  CHECK(out.word == "not comparable");
  CHECK(out.steps[0].gaps.empty());
  CHECK(out.steps[0].advice.empty());
  CHECK(out.rows.size() == 6);   // the columns stay
}

TEST_CASE("the way through a shared bottle is said to be the weaker one") {
  Beside beside;
  insight::BatchStep& step = beside.found.steps[0];
  step.link = BatchLink::reference;
  step.shared = 2;
  step.otherSessions = {1};
  CHECK_THAT(beside.words().steps[0].lines[0], Contains("each beside Bought mead, vintage 2 (Hedge mead 1 on 2026-03-01, Hedge mead 2 on 2026-06-01)") && Contains("the 6 people who sat at both") && Contains("the weaker way"));
  CHECK_THAT(batchPictureWords(Voice{}, {"one", "two"}, step, ItemKind::liking).title, Contains("points of 9, each minus the shared bottle"));
  step.otherAge.reset();
  CHECK_THAT(beside.words().steps[0].lines[1], Contains("not known"));
}

TEST_CASE("within the limit of the good one, nothing shown, and nothing to judge by") {
  Beside beside;
  beside.found.good = 0;
  for (insight::BatchGap& gap : beside.found.steps[0].gaps) {
    gap.verdict = GapVerdict::within;
    gap.limit = 10;
    gap.limitLow = -4;
    gap.limitHigh = 7;
    gap.pWithin = 0.01;
  }
  SideBySideWords out = beside.words();
  CHECK(out.shape == Shape::bars);
  CHECK(out.steps[0].heading == "Hedge mead 2 beside the good one, Hedge mead 1");
  CHECK(out.steps[0].gaps[0] == "Honey: Hedge mead 2 within your limit of the good one (no more than 10 of 100; here −4 to 7), 6 people.");
  beside.found.steps[0].gaps[1].verdict = GapVerdict::cannotTell;
  CHECK(beside.words().shape == Shape::ring);
  for (insight::BatchGap& gap : beside.found.steps[0].gaps) gap = Beside::gap(gap.line, 1, -9, 11, GapVerdict::cannotTell);
  out = beside.words();
  CHECK(out.headline == "Nothing is shown to have moved.");
  CHECK_THAT(out.lines[1], Contains("That is not “nothing moved”"));
  beside.found.steps[0].gaps.resize(1);
  beside.found.steps[0].gaps[0].difference = {};
  beside.found.steps[0].gaps[0].people = 2;
  beside.found.comparisons = 0;
  CHECK_THAT(beside.words().headline, Contains("nothing can be judged yet"));
  CHECK_THAT(beside.words().steps[0].gaps[0], Contains("fewer than three people had both"));
}

TEST_CASE("words that were changed between the tastings are marked") {
  Beside beside;
  beside.found.lines[0].formerly = {"honeyed"};
  beside.found.lines[1].changedOn = {"2026-04-01"};
  const SideBySideWords out = beside.words();
  REQUIRE(out.marks.size() == 2);
  CHECK_THAT(out.marks[0], Contains("“honey” was also asked as “honeyed”"));
  CHECK_THAT(out.marks[1], Contains("“smoke”") && Contains("2026-04-01"));
}

TEST_CASE("no sentence about batches claims too much, whatever came out") {
  for (const BatchLink link : {BatchLink::none, BatchLink::together, BatchLink::reference})
    for (const GapVerdict verdict : {GapVerdict::less, GapVerdict::more, GapVerdict::within, GapVerdict::cannotTell})
      for (const int changed : {0, 1, 3})
        for (const bool isGood : {false, true}) {
          Beside beside;
          beside.change(std::vector<const char*>(static_cast<std::size_t>(changed), "another yeast"));
          insight::BatchStep& step = beside.found.steps[0];
          step.link = link;
          if (link == BatchLink::reference) step.shared = 2;
          if (link == BatchLink::none) step.gaps.clear();
          if (isGood) beside.found.good = 0;
          for (insight::BatchGap& gap : step.gaps) {
            gap.verdict = verdict;
            gap.limit = 10;
            gap.limitLow = -4;
            gap.limitHigh = 7;
            gap.pWithin = 0.01;
          }
          beside.found.lines[0].formerly = {"honeyed"};
          beside.found.columns[0].lotsLeftOut = 2;
          for (const std::string& line : allOf(beside.words())) {
            INFO(line);
            CHECK(forbiddenWordIn(line).empty());
            CHECK(line.find_first_of("{}%") == std::string::npos);
            CHECK(line.find("  ") == std::string::npos);
          }
        }
  CHECK(sideBySideWords(Voice{}, {}, {}, {}, "").headline == "There is no batch here yet.");
  insight::SideBySide one;
  one.columns.resize(1);
  CHECK(sideBySideWords(Voice{}, std::vector<oddglass::Batch>(1), {}, one, "").headline == "One batch has nothing to stand beside yet.");
}
