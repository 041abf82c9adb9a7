#include "cli/families.h"
#include "cli/long_table.h"
#include "cli/options.h"
#include "cli/why.h"
#include "stats/pairs/bradley_terry.h"
#include "stats/pairs/circular.h"

#include <algorithm>
#include <map>

namespace oddglass::cli {
namespace {

struct ChoiceOptions {
  std::shared_ptr<Given> file, left, right, winner, taster;
};

/// Paired choices with the names of the samples, in alphabetical order, and of the tasters (none when the column was not given).
struct NamedChoices {
  std::vector<stats::PairedChoice> choices;
  std::vector<std::string> samples;
  std::optional<Labels> tasters;
};

/// What stands left and right must be there, apart, and hold the winner.
NamedChoices readChoices(const ChoiceOptions& options) {
  LongTable table(*options.file, {options.left.get(), options.right.get(), options.winner.get(), options.taster.get()});
  table.keepAnswered(*options.winner);
  const Labels left = table.labels(*options.left), right = table.labels(*options.right);
  const std::vector<std::string> winner = table.texts(*options.winner);
  NamedChoices named;
  std::ranges::set_union(left.names, right.names, std::back_inserter(named.samples));
  for (std::size_t row = 0; row < table.rows(); ++row) {
    const std::string &a = left.names[static_cast<std::size_t>(left.factor.of[row])], &b = right.names[static_cast<std::size_t>(right.factor.of[row])];
    if (a == "tie") table.refuse(row, *options.left, "this word stands for a tie, so no sample can have it");
    if (b == "tie") table.refuse(row, *options.right, "this word stands for a tie, so no sample can have it");
    if (a == b) table.refuse(row, *options.right, "this is the sample on the left");
    if (winner[row] != a && winner[row] != b && winner[row] != "tie") table.refuse(row, *options.winner, winner[row] + " is none of " + a + ", " + b + " and tie");
    const auto indexOf = [&](const std::string& name) { return static_cast<int>(std::ranges::lower_bound(named.samples, name) - named.samples.begin()); };
    named.choices.push_back({indexOf(a), indexOf(b), winner[row] == a ? stats::Choice::left : winner[row] == b ? stats::Choice::right : stats::Choice::tie});
  }
  if (options.taster->isGiven()) named.tasters = table.labels(*options.taster);
  return named;
}

Json likelihoodRatioJson(const std::optional<stats::LikelihoodRatio>& ratio) {
  if (!ratio) return nullptr;
  return Json{{"statistic", numberOrNull(ratio->statistic)}, {"df", ratio->df}, {"p_value", numberOrNull(ratio->pValue)}};
}

/// A taster's choices among the samples that taster met.
Json triadsOf(const std::string& taster, const std::vector<stats::PairedChoice>& choices) {
  std::map<int, int> met;
  for (const auto& each : choices) met[each.left], met[each.right];
  int count = 0;
  for (auto& [sample, number] : met) number = count++;
  std::vector<stats::PairedChoice> renumbered;
  for (const auto& each : choices) renumbered.push_back({met[each.left], met[each.right], each.came});
  Json json{{"taster", taster}, {"circular_triads", nullptr}, {"zeta", nullptr}};
  if (count > 300) {
    json["why"] = why(stats::Reason::tooLarge);
    return json;
  }
  const stats::CircularTriads found = stats::circularTriads(renumbered, count);
  json["circular_triads"] = found.triads;
  json["zeta"] = numberOrNull(found.zeta);
  if (!found.zeta) json["why"] = count < 3 ? why(stats::Reason::fewSamples) : "a pair was left out or stayed undecided";
  return json;
}

Json triads(const NamedChoices& named) {
  Json list = Json::array();
  if (!named.tasters) return list;
  std::vector<std::vector<stats::PairedChoice>> byTaster(named.tasters->names.size());
  for (std::size_t row = 0; row < named.choices.size(); ++row) byTaster[static_cast<std::size_t>(named.tasters->factor.of[row])].push_back(named.choices[row]);
  for (std::size_t i = 0; i < byTaster.size(); ++i) list.push_back(triadsOf(named.tasters->names[i], byTaster[i]));
  return list;
}

std::string whyNoOrder(stats::Reason reason) {
  return reason == stats::Reason::notGiven ? "every pair stood one way round only, so no effect of the place can be told" : "the place alone would explain the choices, so its effect has no finite value";
}

/// The reasons beside the nulls of the outermost keys.
std::string whyNot(const stats::BradleyTerry& found) {
  if (found.why) return why(*found.why);
  std::string reasons;
  const auto add = [&](const std::string& reason) { reasons += (reasons.empty() ? "" : "; ") + reason; };
  if (found.whyNoOrder) add(whyNoOrder(*found.whyNoOrder));
  if (!found.fit) add(found.isRegularised ? "with half wins added the fit cannot be tested" : "there are no more pairs than estimates, so the fit cannot be tested");
  if (!found.equal || (found.order && !found.noOrder)) add(why(stats::Reason::noConvergence));
  return reasons;
}

Json judgedChoices(const NamedChoices& named) {
  const stats::BradleyTerry found = stats::bradleyTerry(named.choices, static_cast<int>(named.samples.size()));
  Json json{{"worth", Json::object()}, {"se", Json::object()}};
  for (std::size_t i = 0; i < named.samples.size(); ++i) {
    json["worth"][named.samples[i]] = found.why ? Json() : numberOrNull(found.worth[i]);
    json["se"][named.samples[i]] = found.why ? Json() : numberOrNull(found.se(static_cast<int>(i)));
  }
  json["tie"] = numberOrNull(found.tie);
  json["order"] = numberOrNull(found.order);
  json["order_se"] = numberOrNull(found.orderSe);
  json["regularised"] = found.isRegularised;
  json["lr"] = likelihoodRatioJson(found.equal);
  json["order_lr"] = likelihoodRatioJson(found.noOrder);
  json["fit"] = likelihoodRatioJson(found.fit);
  json["log_likelihood"] = found.why ? Json() : numberOrNull(found.logLikelihood);
  if (const std::string reasons = whyNot(found); !reasons.empty()) json["why"] = reasons;
  json["circular_triads"] = triads(named);
  return json;
}

}  // namespace

void describeChoices(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "choices", "How far samples lie apart, by paired choices; ties and the place are taken into account");
  ChoiceOptions options;
  options.file = command.argument("FILE", "A CSV table, one choice between two samples a row");
  options.left = command.option("--left", "A", "The column that names the sample on the left");
  options.right = command.option("--right", "B", "The column that names the sample on the right");
  options.winner = command.option("--winner", "W", "The column that names the sample taken, or says tie; empty is missing");
  options.taster = command.option("--taster", "T", "The column that names the taster");
  command.does([=](Desk&) -> Answer { return {judgedChoices(readChoices(options)), {}}; });
}

}  // namespace oddglass::cli
