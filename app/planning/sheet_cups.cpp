#include "planning/sheet_cups.h"

#include "planning/alcohol.h"
#include "stats/design/incomplete.h"
#include "stats/design/williams.h"

#include <algorithm>
#include <functional>

namespace oddglass::planning {
namespace {

const SetupLot& lotAt(const Setup& setup, int lot) { return setup.lots[static_cast<std::size_t>(lot)]; }

bool isCoded(const SetupLot& lot) { return lot.role != LotRole::warmUp; }
bool mayDouble(const Setup& setup, const SetupLot& lot) { return setup.sheet->hasDuplicate && isCoded(lot) && lot.role != LotRole::control; }

}  // namespace

int samplesOf(const Setup& setup) { return static_cast<int>(std::ranges::count_if(setup.lots, isCoded)) + (setup.sheet->hasDuplicate ? 1 : 0); }

int codedCups(const Setup& setup) { return std::min(samplesOf(setup), setup.sheet->cupsAtOnce); }

int cupsOfSheet(const Setup& setup) { return codedCups(setup) + (setup.marked ? 1 : 0); }

std::vector<std::vector<int>> sheetOrders(int samples, int cupsInFlight, int places) {
  std::vector<std::vector<int>> orders;
  if (samples == 1) return {{1}};
  if (samples <= cupsInFlight) {
    for (const stats::SampleOrders& square : stats::williamsSquares(samples)) orders.insert(orders.end(), square.begin(), square.end());
  } else {
    // A design is made for so many places; two are needed for any to be even.
    orders = stats::evenOrders(stats::incompleteBlocks(samples, cupsInFlight, std::max(2, places)), samples);
  }
  for (std::vector<int>& order : orders)
    for (int& sample : order) ++sample;
  return orders;
}

int worstSheetCups(const Setup& setup, int lot) {
  const SetupLot& from = lotAt(setup, lot);
  if (!isCoded(from)) return 0;
  const int samples = samplesOf(setup), cups = codedCups(setup), places = setup.places();
  // In incomplete blocks samples stand equally often to within one, or nearly so: one more is held in reserve, and no sample twice in a flight.
  const int ofSample = samples <= cups ? places : std::min(places, (places * cups + samples - 1) / samples + 1);
  const int marked = setup.marked && setup.marked->value == lot + 1 ? places : 0;
  return ofSample * (mayDouble(setup, from) ? 2 : 1) + marked;
}

int warmUpCups(const Setup& setup, int lot) { return isCoded(lotAt(setup, lot)) ? 0 : setup.places(); }

std::optional<SheetGrams> gramsOfSheet(const Setup& setup, int cupMl) {
  std::vector<double> cups;
  double strongest = 0.0;
  SheetGrams grams;
  for (std::size_t i = 0; i < setup.lots.size(); ++i) {
    const SetupLot& lot = setup.lots[i];
    if (!lot.abvBp) return std::nullopt;
    const double cup = ethanolGrams(cupMl, *lot.abvBp / 100.0);
    if (setup.marked && setup.marked->value == static_cast<int>(i) + 1) grams.flight += cup;
    if (!isCoded(lot)) grams.warmUp = cup;
    if (isCoded(lot)) cups.push_back(cup);
    if (mayDouble(setup, lot)) strongest = std::max(strongest, cup);
  }
  if (setup.sheet->hasDuplicate) cups.push_back(strongest);
  std::ranges::sort(cups, std::greater<>());
  for (int i = 0; i < std::min(codedCups(setup), static_cast<int>(cups.size())); ++i) grams.flight += cups[static_cast<std::size_t>(i)];
  return grams;
}

}  // namespace oddglass::planning
