#include "domain/flight_form.h"
#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/report.h"

namespace oddglass::words {
namespace {

using insight::Findings;
using insight::Reading;
using Cells = std::vector<std::string>;

std::string dash() { return "–"; }

/// Which columns a reading has.
enum class RowKind { choices, pairs, votes, signal, lines };

RowKind kindOf(const Plan& plan) {
  if (plan.method == Method::preference) return RowKind::votes;
  if (formOf(plan.method).saysSame) return RowKind::signal;
  if (plan.stopping) return RowKind::lines;
  return plan.comparisons() == 3 ? RowKind::pairs : RowKind::choices;
}

/// The cells of a reading, or their heads where there is none.
class Columns {
 public:
  Columns(const Voice& voice, const Plan& plan, const Reading* reading) : voice_(voice), plan_(plan), reading_(reading) {}

  Cells cells() {
    switch (kindOf(plan_)) {
      case RowKind::choices:
      case RowKind::pairs: choices(); break;
      case RowKind::votes: votes(); break;
      case RowKind::signal: signal(); break;
      case RowKind::lines: lines(); break;
    }
    return cells_;
  }

 private:
  // `of` gives the cell of a reading; it is not asked for the heads.
  template <class Of>
  void column(const char* head, Of&& of) {
    cells_.push_back(reading_ ? of(*reading_) : say(voice_, head));
  }
  std::string whole(const std::optional<int>& value) const { return value ? words::whole(voice_, *value) : dash(); }
  std::string two(const std::optional<double>& value) const { return value ? decimal(voice_, *value, 2) : dash(); }
  std::string p(const std::optional<double>& value) const { return value ? pValue(voice_, *value) : dash(); }

  void rightOfTastings() {
    column(QT_TRANSLATE_NOOP("words", "right"), [&](const Reading& each) { return whole(each.right); });
    column(QT_TRANSLATE_NOOP("words", "tastings"), [&](const Reading& each) { return whole(each.trials); });
  }

  void range(const char* low, const char* high) {
    column(low, [&](const Reading& each) { return each.range ? two(each.range->low) : dash(); });
    column(high, [&](const Reading& each) { return each.range ? two(each.range->high) : dash(); });
    column(QT_TRANSLATE_NOOP("words", "level of the range"), [&](const Reading& each) { return each.range ? two(each.range->level) : dash(); });
  }

  void choices() {
    rightOfTastings();
    column(QT_TRANSLATE_NOOP("words", "needed"), [&](const Reading& each) { return whole(each.needed); });
    if (!namesAThing(plan_.method)) column(QT_TRANSLATE_NOOP("words", "at most for alike"), [&](const Reading& each) { return whole(each.largest); });
    column(QT_TRANSLATE_NOOP("words", "exact p, one-sided"), [&](const Reading& each) { return p(each.pValue); });
    if (namesAThing(plan_.method)) column(QT_TRANSLATE_NOOP("words", "p of the other way, two-sided"), [&](const Reading& each) { return p(each.otherWayP); });
    if (plan_.comparisons() == 3) column(QT_TRANSLATE_NOOP("words", "p adjusted (Holm)"), [&](const Reading& each) { return p(each.adjustedP); });
    range(QT_TRANSLATE_NOOP("words", "share who can tell, low end"), QT_TRANSLATE_NOOP("words", "high end"));
  }

  void votes() {
    const auto vote = [&](int insight::Votes::*which) {
      return [this, which](const Reading& each) { return each.votes ? whole((*each.votes).*which) : dash(); };
    };
    column(QT_TRANSLATE_NOOP("words", "votes for A"), vote(&insight::Votes::first));
    column(QT_TRANSLATE_NOOP("words", "votes for B"), vote(&insight::Votes::second));
    column(QT_TRANSLATE_NOOP("words", "no preference"), vote(&insight::Votes::none));
    column(QT_TRANSLATE_NOOP("words", "as often A as B"), vote(&insight::Votes::even));
    column(QT_TRANSLATE_NOOP("words", "needed"), [&](const Reading& each) { return whole(each.needed); });
    column(QT_TRANSLATE_NOOP("words", "exact p, two-sided"), [&](const Reading& each) { return p(each.pValue); });
    range(QT_TRANSLATE_NOOP("words", "share who prefer A, low end"), QT_TRANSLATE_NOOP("words", "high end"));
  }

  void signal() {
    const auto count = [&](int insight::Signal::*which) {
      return [this, which](const Reading& each) { return each.signal ? whole((*each.signal).*which) : dash(); };
    };
    const auto number = [&](std::optional<double> insight::Signal::*which) {
      return [this, which](const Reading& each) { return each.signal ? two((*each.signal).*which) : dash(); };
    };
    column(QT_TRANSLATE_NOOP("words", "hits"), count(&insight::Signal::hits));
    column(QT_TRANSLATE_NOOP("words", "misses"), count(&insight::Signal::misses));
    column(QT_TRANSLATE_NOOP("words", "false alarms"), count(&insight::Signal::falseAlarms));
    column(QT_TRANSLATE_NOOP("words", "correct rejections"), count(&insight::Signal::correctRejections));
    column(QT_TRANSLATE_NOOP("words", "Fisher’s exact p, one-sided"), [&](const Reading& each) { return p(each.pValue); });
    column(QT_TRANSLATE_NOOP("words", "d′"), number(&insight::Signal::dPrime));
    column(QT_TRANSLATE_NOOP("words", "standard error"), number(&insight::Signal::standardError));
    column(QT_TRANSLATE_NOOP("words", "low end"), number(&insight::Signal::low));
    column(QT_TRANSLATE_NOOP("words", "high end"), number(&insight::Signal::high));
    column(plan_.method == Method::aNotA ? QT_TRANSLATE_NOOP("words", "criterion") : QT_TRANSLATE_NOOP("words", "tau"), number(&insight::Signal::criterion));
  }

  void lines() {
    rightOfTastings();
    column(QT_TRANSLATE_NOOP("words", "a difference from"), [&](const Reading& each) { return each.sequential ? whole(each.sequential->differenceFrom) : dash(); });
    column(QT_TRANSLATE_NOOP("words", "none up to"), [&](const Reading& each) { return each.sequential && each.sequential->noneTo >= 0 ? whole(each.sequential->noneTo) : dash(); });
    column(QT_TRANSLATE_NOOP("words", "after round"), [&](const Reading& each) { return each.sequential ? whole(each.sequential->afterRound) : dash(); });
    column(QT_TRANSLATE_NOOP("words", "decision"), [&](const Reading& each) { return each.sequential ? decision(each.sequential->decision) : dash(); });
  }

  std::string decision(insight::Decision what) const {
    switch (what) {
      case insight::Decision::difference: return say(voice_, QT_TRANSLATE_NOOP("words", "a difference"));
      case insight::Decision::none: return say(voice_, QT_TRANSLATE_NOOP("words", "none of the size asked for"));
      case insight::Decision::undecided: return say(voice_, QT_TRANSLATE_NOOP("words", "undecided"));
    }
    return {};
  }

  const Voice& voice_;
  const Plan& plan_;
  const Reading* reading_;
  Cells cells_;
};

void addRows(const Voice& voice, const Plan& plan, const Findings& findings, const std::string& whose, ReadingTable& table) {
  const ReportWords words = reportWords(voice);
  const auto add = [&](const std::string& what, const Reading* reading) {
    if (!reading) return;
    Cells row = Columns(voice, plan, reading).cells();
    row.insert(row.begin(), whose.empty() ? what : say(voice, QT_TRANSLATE_NOOP("words", "{pair}: {what}"), {{"pair", whose}, {"what", what}}));
    table.rows.push_back(std::move(row));
  };
  const auto given = [](const std::optional<Reading>& reading) { return reading ? &*reading : nullptr; };
  add(words.allAnswers, &findings.all);
  add(words.withoutLookOrFizz, given(findings.withoutLookOrFizz));
  add(words.withoutSaid, given(findings.withoutSaid));
  add(words.withoutEither, given(findings.withoutEither));
}

}  // namespace

ReadingTable readingTable(const Voice& voice, const Plan& plan, const Findings& findings) {
  ReadingTable table;
  table.headers = Columns(voice, plan, nullptr).cells();
  table.headers.insert(table.headers.begin(), say(voice, QT_TRANSLATE_NOOP("words", "answers")));
  if (findings.pairs.empty()) addRows(voice, plan, findings, {}, table);
  for (const Findings& pair : findings.pairs) {
    const auto names = namesOf(voice, plan, *pair.lots);
    addRows(voice, plan, pair, say(voice, QT_TRANSLATE_NOOP("words", "{one} and {other}"), {{"one", names.one}, {"other", names.other}}), table);
  }
  return table;
}

}  // namespace oddglass::words
