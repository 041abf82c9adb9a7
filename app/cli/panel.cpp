#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "cli/why.h"
#include "stats/panel/panel.h"

namespace oddglass::cli {
namespace {

Json partOf(const stats::Estimate& estimate, const std::optional<stats::Reason>& reason) {
  Json json{{"estimate", numberOrNull(estimate.estimate)}, {"low", numberOrNull(estimate.low)}, {"high", numberOrNull(estimate.high)}};
  if (reason && (!estimate.estimate || !estimate.low || !estimate.high)) json["why"] = why(*reason);
  return json;
}

Json tasterJson(const std::string& name, const stats::TasterMeasures& taster) {
  Json json{{"taster", name},
            {"level", numberOrNull(taster.level)},
            {"spread", numberOrNull(taster.spread)},
            {"repeat_sd", numberOrNull(taster.repeatSd)},
            {"discrimination_F", numberOrNull(taster.discriminationF)},
            {"p_value", numberOrNull(taster.discriminationP)},
            {"agreement", numberOrNull(taster.agreement)},
            {"shrunk", {{"level", numberOrNull(taster.shrunkLevel)}, {"spread", numberOrNull(taster.shrunkSpread)}, {"agreement", numberOrNull(taster.shrunkAgreement)}}}};
  std::string reasons;
  for (stats::Reason reason : taster.why) reasons += (reasons.empty() ? "" : "; ") + why(reason);
  if (!reasons.empty()) json["why"] = reasons;
  return json;
}

}  // namespace

void describePanel(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "panel", "How a panel's scores hang together, and how each taster uses the scale");
  const ScoreColumns columns = scoreColumns(command, {"--round"});
  const auto level = levelOption(command);
  command.does([=](Desk&) -> Answer {
    const double within = level->openShareOr(0.95);
    const NamedScores scores = readScores(columns);
    const stats::MeanTable means = stats::meanTable(scores.rows);
    stats::Reliability found;
    stats::Concordance ranks{{}, means.why};
    std::optional<stats::Reason> reason = means.why;
    if (means.table) {
      found = stats::reliability(stats::twoWay(*means.table), within);
      reason = found.why;
      ranks = stats::concordance(*means.table);
    }
    Json json{{"icc2_1", partOf(found.single, reason)}, {"icc2_k", partOf(found.ofPanel, reason)}, {"cronbach_alpha", numberOrNull(found.alpha)}, {"kendall_w", numberOrNull(ranks.w)}};
    if (!found.alpha && reason) json["why"] = why(*reason);
    else if (ranks.why) json["why"] = why(*ranks.why);
    json["tasters"] = Json::array();
    const auto tasters = stats::tasterMeasures(scores.rows);
    for (std::size_t t = 0; t < tasters.size(); ++t) json["tasters"].push_back(tasterJson(scores.tasters[t], tasters[t]));
    return {std::move(json), {}};
  });
}

}  // namespace oddglass::cli
