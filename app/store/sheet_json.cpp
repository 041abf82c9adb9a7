#include "store/sheet_json.h"

#include "store/json_parts.h"

namespace oddglass::store {

using canon::Json;
using namespace parts;

// The parts of a question that only a score sheet has, written only where they are there.
Json itemJson(const SheetItem& item) {
  Json json{{"item", item.item.value}, {"kind", nameOf(item.kind)}, {"required", item.required}, {"low", maybe(item.low)}, {"high", maybe(item.high)}};
  if (item.perCup) json["cup"] = true;
  if (item.part != Part::main) json["part"] = nameOf(item.part);
  if (!item.word.empty()) json["word"] = item.word;
  if (item.limit) json["limit"] = *item.limit;
  if (item.isMain) json["main"] = true;
  return json;
}

SheetItem itemFrom(const Json& json) {
  onlyKeys(json, {"item", "kind", "required", "low", "high", "cup", "part", "word", "limit", "main"});
  SheetItem item{{whole(json, "item")}, choice<ItemKind>(json, "kind"), truth(json, "required"), maybeWhole(json, "low"), maybeWhole(json, "high")};
  if (json.contains("cup")) item.perCup = truth(json, "cup");
  if (json.contains("part")) item.part = choice<Part>(json, "part");
  if (json.contains("word")) item.word = text(json, "word");
  if (json.contains("limit")) item.limit = whole(json, "limit");
  if (json.contains("main")) item.isMain = truth(json, "main");
  return item;
}

Json sheetPlanJson(const SheetPlan& sheet) {
  return {{"orders", sheet.orders}, {"duplicate", sheet.hasDuplicate}, {"pause_s", sheet.pauseSeconds}, {"cleanser", sheet.cleanser}};
}

SheetPlan sheetPlanFrom(const Json& json) {
  onlyKeys(json, {"orders", "duplicate", "pause_s", "cleanser"});
  SheetPlan sheet{{}, truth(json, "duplicate"), whole(json, "pause_s"), text(json, "cleanser")};
  for (const Json& order : list(json, "orders")) {
    if (!order.is_array()) refuse("orders", "holds something that is no list");
    std::vector<int>& samples = sheet.orders.emplace_back();
    for (const Json& sample : order) samples.push_back(wholeOf(sample, "orders"));
  }
  return sheet;
}

Json sheetDraftJson(const SheetDraft& sheet) {
  Json items = Json::array(), roles = Json::array();
  for (const SheetItem& item : sheet.items) items.push_back(itemJson(item));
  for (LotRole role : sheet.roles) roles.push_back(nameOf(role));
  return {{"items", items}, {"roles", roles}, {"duplicate", sheet.hasDuplicate}, {"cups_at_once", sheet.cupsAtOnce}, {"pause_s", sheet.pauseSeconds},
          {"cleanser", sheet.cleanser}};
}

SheetDraft sheetDraftFrom(const Json& json) {
  SheetDraft sheet{{}, {}, truth(json, "duplicate"), whole(json, "cups_at_once"), whole(json, "pause_s"), text(json, "cleanser")};
  for (const Json& each : list(json, "items")) sheet.items.push_back(itemFrom(each));
  for (const Json& each : list(json, "roles")) sheet.roles.push_back(choice<LotRole>({{"roles", each}}, "roles"));
  return sheet;
}

}  // namespace oddglass::store
