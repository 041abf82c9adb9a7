#include "cli/count_file.h"

#include "cli/counted.h"
#include "cli/trial_rows.h"
#include "cli/why.h"
#include "stats/preference.h"
#include "stats/replicated.h"

#include <algorithm>

namespace oddglass::cli {
namespace {

/// The most rounds of one person that are worked out by people.
constexpr int mostRounds = 200;
constexpr const char* tooManyRounds = "somebody has more than 200 rounds, which is more than is worked out by people";

Json replicatedJson(const std::vector<stats::PersonCount>& people, double guess, double level) {
  if (std::ranges::any_of(people, [](const stats::PersonCount& each) { return each.trials > mostRounds; }))
    return {{"mu", nullptr}, {"low", nullptr}, {"high", nullptr}, {"gamma", nullptr}, {"log_likelihood", nullptr}, {"lr", nullptr}, {"p_value", nullptr}, {"why", tooManyRounds}};
  const auto fit = stats::fitReplicated(people, guess);
  const auto share = stats::shareOfPeople(people, guess, level);
  if (!fit || !share) return nullptr;
  Json json{{"mu", numberOrNull(fit->mu)}, {"low", numberOrNull(share->low)}, {"high", numberOrNull(share->high)}, {"gamma", numberOrNull(fit->gamma)},
            {"log_likelihood", numberOrNull(fit->logLikelihood)}, {"lr", numberOrNull(fit->likelihoodRatio)}, {"p_value", numberOrNull(fit->pValue)}};
  if (fit->why) json["why"] = why(*fit->why);
  return json;
}

/// `whyNone` stands beside people of whom nothing is in `each`.
Json tastersJson(const std::vector<TasterRows>& tasters, const std::vector<stats::SharePosteriorOfPeople>& each, const std::string& whyNone) {
  Json list = Json::array();
  for (std::size_t i = 0; i < tasters.size(); ++i) {
    Json one{{"taster", tasters[i].taster}, {"trials", tasters[i].rows.size()}, {"correct", tasters[i].right()}};
    for (const char* key : {"median", "low", "high"}) one[key] = nullptr;
    if (i < each.size()) {
      one["median"] = numberOrNull(each[i].median);
      one["low"] = numberOrNull(each[i].low);
      one["high"] = numberOrNull(each[i].high);
    } else {
      one["why"] = whyNone;
    }
    list.push_back(std::move(one));
  }
  return list;
}

Json surenessJson(const std::vector<TrialRow>& rows) {
  Json list = Json::array();
  for (int level = 1; level <= 3; ++level) {
    int trials = 0, right = 0;
    for (const TrialRow& row : rows)
      if (row.sureness == level) ++trials, right += row.right;
    list.push_back({{"class", level}, {"trials", trials}, {"correct", right}});
  }
  return list;
}

/// One vote a person among the right answers; a person whose rounds are even has none.
Json preferenceJson(stats::Method method, const std::vector<TrialRow>& rows, const std::vector<TasterRows>& tasters, double level) {
  int first = 0, second = 0, correct = 0, wrong = 0;
  for (const TrialRow& row : rows) row.right ? ++correct : ++wrong;
  for (const TasterRows& taster : tasters) {
    const int lean = taster.leanToFirst(true);
    first += lean > 0;
    second += lean < 0;
  }
  Json json{{"correct", correct}, {"first", first}, {"second", second}, {"p_value", numberOrNull(stats::twoSidedHalf(std::min(first, second), first + second))}};
  const bool onceEach = std::ranges::all_of(tasters, [](const TasterRows& each) { return each.rows.size() == 1; });
  const auto share = onceEach ? stats::preferenceOfTellers(first, second, wrong, stats::guessing(method), level) : std::nullopt;
  json["share"] = share ? Json{{"estimate", numberOrNull(share->estimate)}, {"low", numberOrNull(share->low)}, {"high", numberOrNull(share->high)}} : Json();
  if (!share) json["why"] = onceEach ? "nobody here could tell for sure, so nothing is known of what they prefer" : "with rounds the share among people who tell is not worked out";
  return json;
}

/// The votes of a preference: one a person. A person whose rounds are even has no vote; one who never had a preference is counted apart.
struct Votes {
  int first = 0, second = 0, none = 0, even = 0;
};

Votes votesOf(const std::vector<TasterRows>& tasters) {
  Votes votes;
  for (const TasterRows& taster : tasters) {
    const int lean = taster.leanToFirst(false);
    if (std::ranges::all_of(taster.rows, &TrialRow::prefersNone)) ++votes.none;
    else ++(lean > 0 ? votes.first : lean < 0 ? votes.second : votes.even);
  }
  return votes;
}

}  // namespace

Json countFile(stats::Method method, const Given& file, const TrialColumns& columns, double alpha, double level, std::optional<double> limit) {
  const bool isPreference = method == stats::Method::preference;
  const std::vector<TrialRow> rows = readTrials(isPreference, file, columns);
  const std::vector<TasterRows> tasters = byTaster(rows);
  std::vector<stats::PersonCount> people;
  bool byPeople = !isPreference;
  for (const TasterRows& taster : tasters) {
    byPeople = byPeople && taster.rows.size() <= mostRounds;
    people.push_back({taster.right(), static_cast<int>(taster.rows.size())});
  }
  const Votes votes = isPreference ? votesOf(tasters) : Votes{};
  const int right = static_cast<int>(std::ranges::count_if(rows, &TrialRow::right));
  Json json = isPreference ? countedJson(method, votes.first, votes.first + votes.second, alpha, level, limit) : countedJson(method, right, static_cast<int>(rows.size()), alpha, level, limit);
  const double guess = stats::guessing(method);
  json["replicated"] = isPreference ? Json() : replicatedJson(people, guess, level);
  json["tasters"] = tastersJson(tasters, byPeople ? stats::eachPerson(people, guess, level) : std::vector<stats::SharePosteriorOfPeople>{}, isPreference ? why(stats::Reason::noGuessing) : tooManyRounds);
  json["preference"] = columns.prefers.isGiven() && !isPreference ? preferenceJson(method, rows, tasters, level) : Json();
  if (isPreference) {
    json["no_preference"] = noPreferenceJson(votes.first, votes.second, votes.none, alpha);
    json["even"] = votes.even;
  }
  json["sureness"] = columns.sure.isGiven() ? surenessJson(rows) : Json();
  return json;
}

}  // namespace oddglass::cli
