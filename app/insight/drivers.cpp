#include "insight/drivers.h"

#include "domain/item_kinds.h"
#include "insight/points.h"
#include "stats/drivers/drivers.h"

#include <algorithm>
#include <map>
#include <utility>

namespace oddglass::insight {
namespace {

constexpr std::size_t fewestLots = 4, fewestPeople = 5;

bool mayDrive(ItemKind kind) { return kind == ItemKind::line || kind == ItemKind::magnitude || kind == ItemKind::check; }

bool wasFlawed(const Plan& plan, Slot lot) { return plan.lots[static_cast<std::size_t>(lot.value) - 1].role == LotRole::control; }

// How many of the question's own points a step of 10 hundredths is; a tick is one.
double stepOf(ItemKind kind) { return kind == ItemKind::check ? 1.0 : *answerForm(kind).high / 10.0; }

std::optional<double> times(std::optional<double> value, double step) { return value ? std::optional(*value * step) : std::nullopt; }

}  // namespace

Drivers driversOf(const Plan& plan, const Sheets<PanelFlight>& sheets) {
  Drivers drivers;
  auto lots = codedLots(plan);
  std::erase_if(lots, [&](Slot lot) { return wasFlawed(plan, lot); });
  drivers.lots = static_cast<int>(lots.size());
  const auto liking = std::ranges::find_if(plan.items, isOverallLiking);
  const bool hasWords = std::ranges::any_of(plan.items, [](const SheetItem& item) { return mayDrive(item.kind); });
  if (liking == plan.items.end() || !hasWords) drivers.why = stats::Reason::notGiven;
  else if (lots.size() < fewestLots) drivers.why = stats::Reason::fewSamples;
  else if (sheets.places.size() < fewestPeople) drivers.why = stats::Reason::fewTasters;
  if (drivers.why) return drivers;
  std::map<std::pair<Place, Slot>, double> liked;
  for (const Score& score : byPerson(sheets.answers(liking->item))) liked[{score.place, score.lot}] = score.value;
  std::vector<std::vector<stats::WordAndLiking>> words;
  for (const SheetItem& item : plan.items) {
    if (!mayDrive(item.kind)) continue;
    DriverLine line;
    line.item = item.item;
    line.kind = item.kind;
    line.part = item.part;
    line.word = item.word;
    drivers.lines.push_back(std::move(line));
    words.emplace_back();
    for (const Score& score : byPerson(sheets.answers(item.item)))
      if (const auto found = liked.find({score.place, score.lot}); found != liked.end() && !wasFlawed(plan, score.lot))
        words.back().push_back({score.place.value, score.lot.value, score.value, found->second});
  }
  const auto found = stats::driversOf(words, 1.0 - plan.alphaPm / 1000.0);
  for (std::size_t i = 0; i < found.size(); ++i) {
    DriverLine& line = drivers.lines[i];
    const double step = stepOf(line.kind);
    line.people = found[i].tasters;
    line.more = times(found[i].slope.estimate, step);
    line.low = times(found[i].slope.low, step);
    line.high = times(found[i].slope.high, step);
    line.shrunk = times(found[i].shrunk, step);
    line.pAdjusted = found[i].pAdjusted;
    line.why = found[i].slope.why;
  }
  return drivers;
}

}  // namespace oddglass::insight
