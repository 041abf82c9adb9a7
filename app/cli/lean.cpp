#include "cli/estimated.h"
#include "cli/families.h"
#include "cli/options.h"
#include "cli/score_options.h"
#include "stats/lean/lean.h"

namespace oddglass::cli {
namespace {

Json sessionsJson(const stats::MakerContrast& found, const std::vector<std::string>& sessions) {
  Json list = Json::array();
  if (sessions.empty()) return list;
  for (const auto& each : found.sessions) {
    Json one{{"session", sessions[static_cast<std::size_t>(each.session)]}, {"friends", each.friends}};
    one.update(estimatedJson(each.lean, friendsAlike));
    if (each.lean.why == stats::Reason::notGiven) one["why"] = "the maker was not there";
    list.push_back(std::move(one));
  }
  return list;
}

Json contrastJson(const stats::MakerContrast& found) {
  Json json = estimatedJson(found.lean, friendsAlike);
  if (found.lean.why == stats::Reason::notGiven) json["why"] = "the maker did not have both";
  json["friends"] = found.friends;
  return json;
}

/// The options that both commands have.
struct MakerOptions {
  ScoreColumns columns;
  std::shared_ptr<Given> maker, own, reference, level;
};

MakerOptions makerOptions(Command& command) {
  MakerOptions options;
  options.columns = scoreColumns(command, {"--round", "--session"});
  options.maker = command.option("--maker", "M", "The taster who made it");
  options.own = command.option("--own", "X", "The sample the maker made");
  options.reference = command.option("--reference", "Y", "The sample it is compared with");
  options.level = levelOption(command);
  return options;
}

/// For each row of the scores whether its cup was open.
std::vector<bool> openRows(const ScoreColumns& columns, const Given& condition) {
  LongTable table(*columns.file, {columns.response.get(), &condition});
  table.keepAnswered(*columns.response);
  const std::vector<std::string> texts = table.texts(condition);
  std::vector<bool> isOpen;
  for (std::size_t row = 0; row < texts.size(); ++row) {
    if (texts[row] != "open" && texts[row] != "blind") table.refuse(row, condition, '"' + texts[row] + "\" is neither blind nor open");
    isOpen.push_back(texts[row] == "open");
  }
  return isOpen;
}

void describeLeanAlone(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "lean", "Whether the maker is kinder to their own than the others are");
  const MakerOptions options = makerOptions(command);
  command.does([=](Desk&) -> Answer {
    const double level = options.level->openShareOr(0.95);
    const NamedScores scores = readScores(options.columns);
    const auto [own, reference] = twoSamples(scores, *options.own, *options.reference);
    const int maker = labelIn(scores.tasters, *options.maker);
    const auto found = stats::makerContrast(stats::ownMinusReference(scores.rows, own, reference), maker, level, stats::sizeOf(scores.rows));
    return {Json{{"lean", contrastJson(found)}, {"per_session", sessionsJson(found, scores.sessions)}}, {}};
  });
}

void describeLabel(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "label", "What knowing the label did: open minus blind, the maker against the others");
  const MakerOptions options = makerOptions(command);
  const auto condition = command.option("--condition", "C", "The column that says blind or open");
  command.does([=](Desk&) -> Answer {
    const double level = options.level->openShareOr(0.95);
    const NamedScores scores = readScores(options.columns);
    const std::vector<bool> isOpen = openRows(options.columns, *condition);
    const auto [own, reference] = twoSamples(scores, *options.own, *options.reference);
    const int maker = labelIn(scores.tasters, *options.maker);
    const auto found = stats::makerContrast(stats::openMinusBlind(scores.rows, isOpen, own, reference), maker, level, stats::sizeOf(scores.rows));
    return {Json{{"label", contrastJson(found)}, {"per_session", sessionsJson(found, scores.sessions)},
                 {"note", "open cups come after blind ones, so the order and the label cannot be told apart"}}, {}};
  });
}

}  // namespace

void describeLean(CLI::App& app, Command::Work& chosen) {
  describeLeanAlone(app, chosen);
  describeLabel(app, chosen);
}

}  // namespace oddglass::cli
