#include "canon/digest.h"
#include "cli/dealt.h"
#include "cli/families.h"
#include "domain/problem.h"
#include "stats/design/balance.h"
#include "stats/design/incomplete.h"
#include "stats/design/servings.h"

#include <map>
#include <optional>

namespace oddglass::cli {
namespace {

/// What each kind of design was given; a kind reads the options it needs.
struct DesignOptions {
  std::shared_ptr<Given> kind, samples, size, tasters, reference, target, seed;
};

/// What there is to deal from.
struct Blocks {
  std::vector<stats::SampleOrders> blocks;
  int samples = 2;
  int marked = 0;       ///< cups at the beginning that carry a mark
  bool renamed = false;  ///< may the samples trade names
};

stats::Serving servingOf(const DesignOptions& options) {
  const std::string& kind = options.kind->text();
  if (kind == "a-not-a") return stats::Serving::aNotA;
  std::optional<stats::Side> marked, target;
  if (kind == "duo-trio" && options.reference->isGiven() && options.reference->oneOf({"both", "1", "2"}) != "both") marked = options.reference->whole(1, 2);
  if (kind == "three-afc" && options.target->isGiven()) target = options.target->oneOf({"1", "2"}) == "2" ? 2 : 1;
  return stats::servingNamed(kind, marked, target);
}

Blocks servedBlocks(const DesignOptions& options) {
  if (options.samples->isGiven()) options.samples->whole(2, 2);
  const stats::Served& served = stats::served(servingOf(options));
  Blocks found;
  found.marked = served.marked;
  stats::SampleOrders block;
  for (const stats::CupOrder& order : served.orders) {
    block.emplace_back();
    for (const stats::Side side : order) block.back().push_back(side - 1);
  }
  const int cups = static_cast<int>(block[0].size());
  options.size->wholeOr(cups, cups, cups);
  found.blocks.push_back(std::move(block));
  return found;
}

Blocks williamsBlocks(const DesignOptions& options) {
  const int samples = options.samples->whole(2, 60);
  options.size->wholeOr(samples, samples, samples);
  return {stats::williamsSquares(samples), samples, 0, true};
}

/// So many orders as tasters were given, or the smallest balanced design; where none is found, as many orders as samples.
Blocks incompleteBlocks(const DesignOptions& options) {
  const int samples = options.samples->whole(3, 60), size = options.size->whole(2, samples - 1);
  const auto balanced = options.tasters->isGiven() ? std::nullopt : stats::smallestBalancedBlocks(samples, size);
  const stats::Blocks blocks = balanced ? *balanced : stats::incompleteBlocks(samples, size, options.tasters->wholeOr(samples, 1, 1000));
  return {{stats::evenOrders(blocks, samples)}, samples, 0, true};
}

/// What each kind of design deals from.
const std::map<std::string, Blocks (*)(const DesignOptions&)>& kinds() {
  static const std::map<std::string, Blocks (*)(const DesignOptions&)> list{
      {"williams", williamsBlocks}, {"incomplete", incompleteBlocks}, {"triangle", servedBlocks}, {"duo-trio", servedBlocks}, {"tetrad", servedBlocks}, {"two-out-of-five", servedBlocks}, {"pair", servedBlocks},
      {"three-afc", servedBlocks}, {"same-different", servedBlocks}, {"a-not-a", servedBlocks}, {"preference", servedBlocks}};
  return list;
}

/// Samples are numbered from 1 for people.
Json ordersJson(stats::SampleOrders orders) {
  for (auto& row : orders)
    for (int& sample : row) ++sample;
  return orders;
}

}  // namespace

void describeDesign(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "design", "In which orders cups stand, dealt at random within blocks, and how even that is");
  DesignOptions options;
  std::vector<std::string> names;
  std::string list;
  for (const auto& [name, make] : kinds()) {
    names.push_back(name);
    list += (list.empty() ? "" : ", ") + name;
  }
  options.kind = command.option("--kind", "K", list);
  options.samples = command.option("--samples", "T", "How many samples; two in a forced choice");
  options.size = command.option("--size", "K", "Samples in each order, where it is fewer than all");
  options.tasters = command.option("--tasters", "N", "How many orders; a whole block where it is not said");
  options.reference = command.option("--reference", "R", "The marked cup of a duo-trio: 1, 2 or both (both)");
  options.target = command.option("--target", "S", "The target of a 3-AFC: 1 or 2 (1)");
  options.seed = command.option("--seed", "S", "Any text; the same seed gives the same orders");
  command.does([=](Desk& desk) -> Answer {
    const Blocks from = kinds().at(options.kind->oneOf(names))(options);
    int whole = 0;
    for (const auto& block : from.blocks) whole += static_cast<int>(block.size());
    const int tasters = options.tasters->wholeOr(whole, 1, 100'000);
    const blinding::Seed seed = options.seed->isGiven() ? seedOf(*options.seed) : desk.chance().bytes<32>();
    blinding::Stream stream(seed, blinding::StreamName::orders);
    const stats::SampleOrders orders = dealt(from.blocks, tasters, from.samples, from.renamed, stream);
    const stats::Balance balance = stats::balanceOf(orders, from.samples);
    return {Json{{"orders", ordersJson(orders)}, {"marked", from.marked},
                 {"balance", {{"position", balance.position}, {"carryover", balance.carryover}, {"second_carryover", balance.second}, {"pairs", balance.pairs}}},
                 {"whole_block", whole}, {"seed", canon::hex(seed)}}, {}};
  });
}

}  // namespace oddglass::cli
