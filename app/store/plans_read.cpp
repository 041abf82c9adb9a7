#include "store/plans_read.h"

#include "store/plan_json.h"

#include <optional>
#include <string_view>

namespace oddglass::store {
namespace {

/// Where the list that begins at `from` ends: the place of its closing bracket; npos when it does not.
std::size_t endOfList(std::string_view text, std::size_t from) {
  int depth = 0;
  bool inText = false;
  for (std::size_t at = from; at < text.size(); ++at) {
    const char c = text[at];
    if (inText) {
      if (c == '\\') ++at;
      else if (c == '"') inText = false;
      continue;
    }
    if (c == '"') inText = true;
    else if (c == '[') ++depth;
    else if (c == ']' && --depth == 0) return at;
  }
  return std::string_view::npos;
}

/// Takes what stands in a list of the plan out of its text, and moves `at` behind it: keys stand in alphabetical order. Inside a text the key's closing
/// quotation mark would have a backslash before it.
std::optional<std::string> takeOut(std::string& text, std::string_view key, std::size_t& at) {
  const std::size_t found = text.find(key, at);
  if (found == std::string::npos) return std::nullopt;
  const std::size_t from = found + key.size() - 1, to = endOfList(text, from);
  if (to == std::string::npos) return std::nullopt;
  std::string taken = text.substr(from, to + 1 - from);
  text.replace(from, taken.size(), "[]");
  at = from + 2;
  return taken;
}

}  // namespace

Plan PlansRead::read(std::string text) {
  std::size_t at = 0;
  takeOut(text, R"("cups":[)", at);
  std::optional<std::string> items = takeOut(text, R"("items":[)", at);
  std::optional<std::string> lots = takeOut(text, R"("lots":[)", at);
  const auto whole = [&] {
    canon::Json json = canon::Json::parse(text);
    if (lots) json["lots"] = canon::Json::parse(*lots);
    if (items) json["items"] = canon::Json::parse(*items);
    return planFrom(json);
  };
  const auto knownLots = lots ? lots_.find(*lots) : lots_.end();
  const auto knownItems = items ? items_.find(*items) : items_.end();
  if (knownLots == lots_.end() || knownItems == items_.end()) {
    Plan plan = whole();
    if (lots) lots_.emplace(std::move(*lots), plan.lots);
    if (items) items_.emplace(std::move(*items), plan.items);
    return plan;
  }
  Plan plan = planFrom(canon::Json::parse(text));
  plan.lots = knownLots->second;
  plan.items = knownItems->second;
  return plan;
}

}  // namespace oddglass::store
