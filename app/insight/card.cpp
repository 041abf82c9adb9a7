#include "insight/card.h"

#include "domain/item_kinds.h"
#include "insight/sheets.h"
#include "stats/estimated.h"
#include "stats/panel/tasters.h"
#include "stats/share_change.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace oddglass::insight {
namespace {

constexpr double cardLevel = 0.95;
constexpr int thePerson = 0;

std::vector<Answer> likingsOf(const ScoredSheet& sheet, bool ofMakers) {
  const auto& items = sheet.session.plan.items;
  const auto liking = std::ranges::find_if(items, isOverallLiking);
  if (liking == items.end()) return {};
  return ofMakers ? makerSheets(sheet.session).answers(liking->item) : panelSheets(sheet.session).answers(liking->item);
}

/// Scores of several sessions in one table: a drink of one session is a sample, since another day is another glass of it.
struct Scored {
  stats::ScoreRows rows;
  std::map<int, std::map<int, std::vector<double>>> of;  ///< by taster, then sample
  int sheets = 0;

  void add(const ScoredSheet& sheet, const std::vector<Answer>& answers) {
    std::map<Slot, int> samples;
    std::map<Place, int> strangers;
    for (const Answer& answer : answers) {
      if (!answer.value) continue;
      const int sample = samples.try_emplace(answer.lot, firstSample_ + static_cast<int>(samples.size())).first->second;
      const int taster = tasterOf(sheet, answer.place, strangers);
      rows.response.push_back(*answer.value);
      rows.sample.of.push_back(sample);
      rows.taster.of.push_back(taster);
      of[taster][sample].push_back(*answer.value);
    }
    firstSample_ += static_cast<int>(samples.size());
    ++sheets;
    rows.sample.levels = firstSample_;
  }

  void end() {
    std::map<int, int> number;
    for (const auto& [taster, answers] : of) number.try_emplace(taster, static_cast<int>(number.size()));
    for (int& taster : rows.taster.of) taster = number.at(taster);
    rows.taster.levels = static_cast<int>(number.size());
  }

 private:
  // Whoever asked to be only in the sums is somebody else in every session.
  int tasterOf(const ScoredSheet& sheet, Place place, std::map<Place, int>& strangers) {
    if (place == sheet.seat) return thePerson;
    const auto known = sheet.known.find(place);
    if (known != sheet.known.end()) return known->second;
    const auto [found, isNew] = strangers.try_emplace(place, nextStranger_);
    if (isNew) ++nextStranger_;
    return found->second;
  }

  int firstSample_ = 0, nextStranger_ = 1'000'000;
};

bool hasEnoughBeside(const ScoredSheet& sheet, const std::vector<Answer>& answers) {
  std::set<Place> others;
  bool isThere = false;
  for (const Answer& answer : answers) {
    if (!answer.value) continue;
    if (answer.place == sheet.seat) isThere = true;
    else others.insert(answer.place);
  }
  return isThere && static_cast<int>(others.size()) >= fewestBeside;
}

/// Squared deviations from the mean of each sample, with their degrees of freedom.
struct Within {
  double squares = 0.0;
  int df = 0;

  void add(const std::vector<double>& values) {
    if (values.size() < 2) return;
    const double mean = stats::meanAndSpread(values).mean;
    for (const double value : values) squares += (value - mean) * (value - mean);
    df += static_cast<int>(values.size()) - 1;
  }
  void add(const Within& other) {
    squares += other.squares;
    df += other.df;
  }
  std::optional<double> sd() const { return df > 0 ? std::optional(std::sqrt(squares / df)) : std::nullopt; }
};

/// How the others use the scale, taken together.
void addOthers(const Scored& scored, Card& card) {
  Within spread, repeats;
  for (const auto& [taster, samples] : scored.of) {
    if (taster == thePerson) continue;
    std::vector<double> means;
    for (const auto& [sample, values] : samples) {
      means.push_back(stats::meanAndSpread(values).mean);
      repeats.add(values);
    }
    spread.add(means);
  }
  card.othersSpread = spread.sd();
  card.othersRepeatSd = repeats.sd();
}

void addScores(const Scored& scored, Card& card) {
  const auto person = scored.of.find(thePerson);
  if (card.sheets < fewestForCard || person == scored.of.end() || scored.rows.sample.levels < 2) return;
  card.samples = static_cast<int>(person->second.size());
  const stats::TasterMeasures mine = stats::tasterMeasures(scored.rows).front();
  card.level = mine.level;
  card.shrunkLevel = mine.shrunkLevel;
  card.spread = mine.spread;
  card.shrunkSpread = mine.shrunkSpread;
  card.agreement = mine.agreement;
  card.shrunkAgreement = mine.shrunkAgreement;
  addOthers(scored, card);
}

RepeatChange repeatChangeOf(const std::vector<Within>& sessions) {
  Within earlier, later;
  for (std::size_t i = 0; i < sessions.size(); ++i) (i < sessions.size() / 2 ? earlier : later).add(sessions[i]);
  RepeatChange change{earlier.df, later.df, *earlier.sd(), *later.sd(), 1.0, 0.0, 0.0};
  if (const auto ratio = stats::ratioOfSpreads(earlier.squares, earlier.df, later.squares, later.df, cardLevel)) {
    change.ratio = ratio->ratio;
    change.low = ratio->low;
    change.high = ratio->high;
  }
  return change;
}

}  // namespace

Repeats repeatsOf(const std::vector<ScoredSheet>& sheets) {
  std::vector<Within> sessions;
  Within all;
  for (const ScoredSheet& sheet : sheets) {
    std::map<Slot, std::vector<double>> drinks;
    for (const Answer& answer : likingsOf(sheet, sheet.isMaker))
      if (answer.place == sheet.seat && answer.value) drinks[answer.lot].push_back(*answer.value);
    Within one;
    for (const auto& [lot, values] : drinks) one.add(values);
    if (one.df == 0) continue;
    sessions.push_back(one);
    all.add(one);
  }
  Repeats repeats{static_cast<int>(sessions.size()), all.df, all.sd(), {}};
  if (repeats.sessions < fewestToChange) return repeats;
  const RepeatChange change = repeatChangeOf(sessions);
  if (change.high > 0.0) repeats.change = change;
  return repeats;
}

Card cardOf(const CardTastings& tastings, const Meaning& meaning) {
  Card card;
  for (Noticed& each : noticingOf(tastings.known, meaning))
    if (each.who == tastings.who) card.noticed.push_back(std::move(each));
  std::set<std::size_t> visited;
  for (const Noticed& each : card.noticed)
    for (const NoticedVisit& visit : each.visits) visited.insert(visit.at);
  Scored scored;
  for (const ScoredSheet& sheet : tastings.sheets) {
    const auto answers = likingsOf(sheet, sheet.isMaker);
    card.sessions += std::ranges::any_of(answers, [&](const Answer& answer) { return answer.place == sheet.seat; });
    if (!sheet.isMaker && hasEnoughBeside(sheet, answers)) scored.add(sheet, answers);
  }
  card.sessions += static_cast<int>(visited.size());
  card.isTooFew = card.sessions < fewestForCard;
  card.sheets = scored.sheets;
  card.repeats = repeatsOf(tastings.sheets);
  if (card.isTooFew) return card;
  scored.end();
  addScores(scored, card);
  return card;
}

}  // namespace oddglass::insight
