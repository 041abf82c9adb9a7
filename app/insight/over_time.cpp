#include "insight/over_time.h"

#include "domain/day.h"
#include "domain/item_kinds.h"
#include "insight/points.h"
#include "stats/multiple/adjust.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace oddglass::insight {
namespace {

constexpr double alphaOverTime = 0.05;
constexpr double levelOverTime = 0.95;

/// The mean of what somebody said of a lot (0 the batch, 1 the control) at a sitting.
using Said = std::map<std::tuple<int, int, int>, double>;   // sitting, person, lot

Said saidTo(int question, const AboutLots& about, const std::map<int, int>& sittingOf) {
  std::map<std::tuple<int, int, int>, std::pair<double, int>> sums;
  for (const LotAnswer& each : about.answers) {
    const auto sitting = sittingOf.find(each.session);
    if (each.question != question || sitting == sittingOf.end()) continue;
    auto& [sum, count] = sums[{sitting->second, each.person, each.lot}];
    sum += each.value;
    ++count;
  }
  Said said;
  for (const auto& [key, sum] : sums) said[key] = sum.first / sum.second;
  return said;
}

bool hasControl(const Series& series) { return series.control != ControlKind::none; }

// Sittings of the series that were revealed and have an answer, by age; `sittingOf` finds them by their place among the sessions.
std::vector<TimeSitting> sittingsOf(const Series& series, const AboutLots& about, std::map<int, int>& sittingOf) {
  std::vector<std::pair<TimeSitting, int>> found;
  for (std::size_t i = 0; i < about.sessions.size(); ++i) {
    const LotSession& session = about.sessions[i];
    const auto planned = std::ranges::find(series.sittings, std::optional(session.id), &Sitting::session);
    const auto days = daysBetween(series.begunOn, session.heldOn);
    if (planned == series.sittings.end() || !days) continue;
    std::map<int, std::set<int>> had;
    for (const LotAnswer& each : about.answers)
      if (each.session == static_cast<int>(i)) had[each.person].insert(each.lot);
    const auto counts = [&](const auto& each) { return each.second.contains(0) && (!hasControl(series) || each.second.contains(1)); };
    const int people = static_cast<int>(std::ranges::count_if(had, counts));
    if (people > 0) found.push_back({{planned->number, session.id, session.heldOn, *days / daysOfAMonth, people, 0}, static_cast<int>(i)});
  }
  std::ranges::stable_sort(found, {}, [](const auto& each) { return std::pair(each.first.age, each.first.number); });
  std::vector<TimeSitting> sittings;
  for (const auto& [sitting, session] : found) {
    sittingOf[session] = static_cast<int>(sittings.size());
    sittings.push_back(sitting);
  }
  return sittings;
}

std::set<int> whoSat(int sitting, const AboutLots& about, const std::map<int, int>& sittingOf) {
  std::set<int> who;
  for (const LotAnswer& each : about.answers)
    if (const auto at = sittingOf.find(each.session); at != sittingOf.end() && at->second == sitting) who.insert(each.person);
  return who;
}

int inBoth(const std::set<int>& a, const std::set<int>& b) {
  return static_cast<int>(std::ranges::count_if(a, [&](int each) { return b.contains(each); }));
}

// Only whole visits count: whoever had the batch, and beside it the control where there is one.
stats::TimeRows rowsOf(const Said& said, const std::vector<TimeSitting>& sittings, int people, bool withControl) {
  stats::TimeRows rows;
  rows.taster.levels = people;
  rows.session.levels = static_cast<int>(sittings.size());
  for (const TimeSitting& each : sittings) rows.age.push_back(each.age);
  for (const auto& [key, value] : said) {
    const auto [sitting, person, lot] = key;
    if (withControl && !said.contains({sitting, person, 1 - lot})) continue;
    if (!withControl && lot != 0) continue;
    rows.response.push_back(value);
    rows.taster.of.push_back(person);
    rows.session.of.push_back(sitting);
    if (withControl) rows.isControl.push_back(lot == 1);
  }
  return rows;
}

TimeDot dotAt(int sitting, const stats::TimeRows& rows) {
  TimeDot dot;
  dot.sitting = sitting;
  std::map<int, std::pair<std::optional<double>, std::optional<double>>> each;
  for (std::size_t i = 0; i < rows.response.size(); ++i) {
    if (rows.session.of[i] != sitting) continue;
    const bool isControl = rows.hasControl() && rows.isControl[i];
    (isControl ? each[rows.taster.of[i]].second : each[rows.taster.of[i]].first) = rows.response[i];
  }
  std::vector<double> batch, control, followed;
  for (const auto& [person, pair] : each) {
    if (pair.first) batch.push_back(*pair.first);
    if (pair.second) control.push_back(*pair.second);
    if (pair.first && (pair.second || !rows.hasControl())) followed.push_back(*pair.first - pair.second.value_or(0.0));
  }
  dot.people = static_cast<int>(followed.size());
  if (!batch.empty()) dot.batch = stats::meanAndSpread(batch).mean;
  if (!control.empty()) dot.control = stats::meanAndSpread(control).mean;
  if (followed.empty()) return dot;
  const stats::Estimated mean = stats::meanOf(followed, levelOverTime);
  dot.value = mean.estimate;
  if (dot.people >= fewestForARange) {
    dot.low = mean.low;
    dot.high = mean.high;
  }
  return dot;
}

std::optional<int> limitOf(const LotQuestion& question, const SessionId& session, const AboutLots& about) {
  const auto last = std::ranges::find(about.sessions, session, &LotSession::id);
  for (const SheetItem& item : last->plan.items)
    if (item.kind == question.kind && item.part == question.part && item.word == question.word) return item.limit;
  return std::nullopt;
}

TimeLine lineOf(int question, const Series& series, const AboutLots& about, const OverTime& over, const std::map<int, int>& sittingOf) {
  TimeLine line;
  line.question = about.questions[static_cast<std::size_t>(question)];
  const stats::TimeRows rows = rowsOf(saidTo(question, about, sittingOf), over.sittings, about.people, hasControl(series));
  for (std::size_t i = 0; i < over.sittings.size(); ++i)
    if (TimeDot dot = dotAt(static_cast<int>(i), rows); dot.value) line.dots.push_back(dot);
  if (rows.response.empty()) return line;
  line.trend = stats::trend(rows, levelOverTime);
  line.limit = limitOf(line.question, over.sittings.back().session, about);
  if (line.limit && line.dots.size() >= 2) line.lastTwo = stats::lastTwoAlike(rows, *line.limit, alphaOverTime);
  return line;
}

// Of all lines together, so that looking at many words does not make one of them speak by chance.
void judge(std::vector<TimeLine>& lines) {
  std::vector<double> raw;
  std::vector<TimeLine*> judged;
  for (TimeLine& line : lines) {
    if (line.dots.size() < 3) continue;
    line.verdict = TimeVerdict::cannotTell;
    if (!line.trend.slope.pValue) continue;
    raw.push_back(*line.trend.slope.pValue);
    judged.push_back(&line);
  }
  const std::vector<double> adjusted = stats::adjustHolm(raw);
  for (std::size_t i = 0; i < judged.size(); ++i) {
    judged[i]->pAdjusted = adjusted[i];
    const bool isShown = adjusted[i] <= alphaOverTime;
    judged[i]->verdict = !isShown ? TimeVerdict::notShown : *judged[i]->trend.slope.estimate > 0 ? TimeVerdict::rose : TimeVerdict::fell;
  }
}

MainChange mainChangeOf(const Series& series, const AboutLots& about, const OverTime& over, const std::map<int, int>& sittingOf) {
  MainChange main = over.main;
  const auto later = std::ranges::find(over.sittings, series.main.sitting, &TimeSitting::number);
  if (later == over.sittings.end()) return main;
  main.verdict = ChangeVerdict::noFirst;
  if (over.sittings.front().number != 1) return main;
  const auto question = std::ranges::find_if(about.questions, [&](const LotQuestion& each) { return isAbout(series.main, each); });
  main.verdict = ChangeVerdict::notAsked;
  if (question == about.questions.end()) return main;
  main.kind = question->kind;
  const stats::TimeRows rows = rowsOf(saidTo(static_cast<int>(question - about.questions.begin()), about, sittingOf), over.sittings, about.people, hasControl(series));
  if (rows.response.empty()) return main;
  const stats::Visits visits = stats::visitsOf(rows);
  const auto at = [&](int label) { return static_cast<int>(std::ranges::find(visits.session, label) - visits.session.begin()); };
  const int first = at(0), second = at(static_cast<int>(later - over.sittings.begin()));
  if (first >= visits.sessions() || second >= visits.sessions()) return main;
  const std::vector<double> changed = stats::changes(visits, first, second);
  main.people = static_cast<int>(changed.size());
  main.verdict = ChangeVerdict::cannotTell;
  if (changed.empty()) return main;
  main.change = stats::meanOf(changed, levelOverTime, stats::Reason::fewTasters, visits.scale);
  if (series.main.limit) main.alike = stats::pairedAlike(changed, *series.main.limit, alphaOverTime);
  if (main.alike && main.alike->isAlike && main.people >= fewestForARange) main.verdict = ChangeVerdict::within;
  else if (main.change.pValue && main.people >= fewestForARange) main.verdict = *main.change.pValue > alphaOverTime ? ChangeVerdict::notShown : *main.change.estimate > 0 ? ChangeVerdict::more : ChangeVerdict::less;
  return main;
}

TimeMentions mentionsOf(int question, const Series& series, const AboutLots& about, const OverTime& over, const std::map<int, int>& sittingOf, const Noticers& noticers) {
  TimeMentions mentions;
  mentions.question = about.questions[static_cast<std::size_t>(question)];
  for (std::size_t i = 0; i < over.sittings.size(); ++i) mentions.counts.push_back({static_cast<int>(i)});
  for (const auto& [key, value] : saidTo(question, about, sittingOf)) {
    const auto [sitting, person, lot] = key;
    auto& count = mentions.counts[static_cast<std::size_t>(sitting)];
    if (lot == 0) ++count.batchOf, count.batch += value > 0;
    if (lot == 0 && notices(noticers, mentions.question.word, about, person)) ++count.noticersOf, count.noticers += value > 0;
    if (lot == 1 && hasControl(series)) ++count.controlOf, count.control += value > 0;
  }
  return mentions;
}

}  // namespace

bool notices(const Noticers& noticers, const std::string& word, const AboutLots& about, int person) {
  const auto known = noticers.find(word);
  if (known == noticers.end() || static_cast<std::size_t>(person) >= about.who.size()) return false;
  const TasterId& who = about.who[static_cast<std::size_t>(person)];
  return !who.empty() && known->second.contains(who);
}

OverTime overTimeOf(const Series& series, const AboutLots& about, const Noticers& noticers) {
  OverTime over;
  over.control = series.control;
  std::map<int, int> sittingOf;
  over.sittings = sittingsOf(series, about, sittingOf);
  over.main.sitting = series.main.sitting;
  over.main.word = series.main.word;
  if (!series.main.word.empty()) over.main.kind = ItemKind::line;
  if (over.sittings.empty()) return over;
  const std::set<int> first = whoSat(0, about, sittingOf);
  for (std::size_t i = 0; i < over.sittings.size(); ++i) over.sittings[i].alsoAtFirst = inBoth(first, whoSat(static_cast<int>(i), about, sittingOf));
  over.atBothEnds = over.sittings.back().alsoAtFirst;
  for (std::size_t q = 0; q < about.questions.size(); ++q) {
    if (hasPoints(about.questions[q].kind)) over.lines.push_back(lineOf(static_cast<int>(q), series, about, over, sittingOf));
    if (about.questions[q].kind == ItemKind::check) over.mentions.push_back(mentionsOf(static_cast<int>(q), series, about, over, sittingOf, noticers));
  }
  std::erase_if(over.lines, [](const TimeLine& line) { return line.dots.empty(); });
  judge(over.lines);
  over.main = mainChangeOf(series, about, over, sittingOf);
  return over;
}

}  // namespace oddglass::insight
