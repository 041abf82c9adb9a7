#include "cli/multiple.h"

#include "cli/critical.h"
#include "cli/families.h"
#include "cli/options.h"
#include "stats/multiple/adjust.h"
#include "stats/multiple/dunnett.h"
#include "stats/multiple/studentized_range.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::cli {
namespace {

constexpr double mostDf = 1e12;

/// "inf" stands for a spread that is known, as it is for ranks.
double dfOf(const MultipleOptions& options) { return options.df->typed == "inf" ? mostDf : options.df->number(0.1, mostDf); }
int groupsOf(const MultipleOptions& options) { return options.groups->whole(2, 1000); }

/// Both sides unless one is asked for.
stats::DunnettPlan planOf(const MultipleOptions& options) {
  return {stats::equalLoads(options.treatments->whole(1, 500)), dfOf(options), options.sides->wholeOr(2, 1, 2) == 2};
}

template <class Above>
Answer criticalDifferenceOf(const std::optional<double>& critical, const Above& above) {
  Json json{{"critical", numberOrNull(critical)}, {"alpha_actual", critical ? numberOrNull(above(*critical)) : Json()}, {"by", "exact"}};
  if (!critical) json["why"] = "larger than any number";
  return {std::move(json), {}};
}

void describeTail(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "tail", "How often chance alone reaches this value");
  const auto of = command.option("--of", "M", "studentized-range or dunnett");
  const MultipleOptions options = multipleOptions(command);
  const auto value = command.option("--value", "Q", "The value reached: q, or the largest t");
  command.does([=](Desk&) -> Answer {
    if (of->oneOf({"studentized-range", "dunnett"}) == "studentized-range")
      return {Json{{"p_value", numberOrNull(stats::studentizedRangeAbove(value->number(0.0, 1e100), groupsOf(options), dfOf(options)))}}, {}};
    const stats::DunnettPlan plan = planOf(options);
    return {Json{{"p_value", numberOrNull(stats::dunnettAbove(value->number(plan.isTwoSided ? 0.0 : -1e100, 1e100), plan))}}, {}};
  });
}

void describeAdjust(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "adjust", "p values adjusted for how many there are");
  const auto p = command.option("--p", "P,P,...", "The p values, parted by commas");
  command.does([=](Desk&) -> Answer {
    std::vector<double> values;
    const std::string& all = p->text();
    for (std::size_t from = 0; from <= all.size();) {
      const std::size_t end = std::min(all.find(',', from), all.size());
      std::string piece = all.substr(from, end - from);
      piece.erase(0, piece.find_first_not_of(' '));
      piece.erase(piece.find_last_not_of(' ') + 1);
      values.push_back(Given{p->name, piece}.number(0.0, 1.0));
      from = end + 1;
    }
    return {Json{{"holm", stats::adjustHolm(values)}, {"benjamini_hochberg", stats::adjustBenjaminiHochberg(values)}}, {}};
  });
}

}  // namespace

MultipleOptions multipleOptions(Command& command) {
  return {command.option("--groups", "K", "How many groups the range is over, 2 or more"), command.option("--treatments", "K", "How many treatments beside the control"),
          command.option("--df", "V", "Degrees of freedom of the estimate of the spread; inf where it is known"), command.option("--sides", "1 or 2", "One side, or both (2)")};
}

Answer criticalStudentizedRange(const CriticalOptions& options) {
  const int groups = groupsOf(options.multiple);
  const double df = dfOf(options.multiple);
  return criticalDifferenceOf(stats::studentizedRangeCritical(options.alpha->openShareOr(0.05), groups, df), [&](double q) { return stats::studentizedRangeAbove(q, groups, df); });
}

Answer criticalDunnett(const CriticalOptions& options) {
  const stats::DunnettPlan plan = planOf(options.multiple);
  return criticalDifferenceOf(stats::dunnettCritical(options.alpha->openShareOr(0.05), plan), [&](double d) { return stats::dunnettAbove(d, plan); });
}

void describeMultiple(CLI::App& app, Command::Work& chosen) {
  describeTail(app, chosen);
  describeAdjust(app, chosen);
}

}  // namespace oddglass::cli
