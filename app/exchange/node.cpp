#include "exchange/node.h"

#include "domain/text.h"

#include <algorithm>

namespace oddglass::exchange {

Node::Node(const Document& document) : document_(&document), json_(&document.json) {}

void Node::refuse(Trouble trouble, Problem::Values values) const {
  values.emplace("file", document_->file);
  values.emplace("line", std::to_string(document_->lineOf(path_)));
  values.emplace("column", "1");
  throw Problem(trouble, path_.empty() ? "file" : path_, std::move(values));
}

bool Node::has(const char* key) const { return json_->is_object() && json_->contains(key); }

Node Node::at(const char* key) const {
  if (!json_->is_object()) refuse("this is no object");
  const auto found = json_->find(key);
  if (found == json_->end()) refuse("the key \"" + std::string(key) + "\" is missing");
  return inside(key, *found);
}

std::vector<Node> Node::list(std::size_t most) const {
  if (!json_->is_array()) refuse("this is no list");
  if (json_->size() > most) refuse("this list is longer than " + std::to_string(most));
  std::vector<Node> entries;
  entries.reserve(json_->size());
  for (std::size_t i = 0; i < json_->size(); ++i) entries.push_back(inside(std::to_string(i), (*json_)[i]));
  return entries;
}

std::vector<Node> Node::maybeList(const char* key) const { return has(key) ? at(key).list() : std::vector<Node>{}; }

void Node::onlyKeys(std::initializer_list<const char*> keys) const {
  if (!json_->is_object()) refuse("this is no object");
  for (const auto& [key, value] : json_->items())
    if (std::ranges::none_of(keys, [&key = key](const char* known) { return key == known; }))
      inside(key, value).refuse("the key \"" + key + "\" is not known here");
}

std::optional<Node> Node::maybe(const char* key) const {
  if (!has(key) || json_->at(key).is_null()) return std::nullopt;
  return at(key);
}

bool Node::truth() const {
  if (!json_->is_boolean()) refuse("this is neither true nor false");
  return json_->get<bool>();
}

std::int64_t Node::whole(std::int64_t low, std::int64_t high) const {
  if (!json_->is_number_integer()) refuse(Trouble::notANumber, {{"text", json_->dump(-1, ' ', false, canon::Json::error_handler_t::replace).substr(0, 40)}});
  const auto number = json_->get<std::int64_t>();
  if (number < low || number > high)
    refuse(Trouble::outOfRange, {{"text", std::to_string(number)}, {"low", std::to_string(low)}, {"high", std::to_string(high)}});
  return number;
}

std::optional<int> Node::maybeSmall(int low, int high) const {
  if (isNull()) return std::nullopt;
  return small(low, high);
}

std::string Node::text(std::size_t letters, bool mayBeEmpty) const {
  if (!json_->is_string()) refuse("this is no text");
  const auto& text = json_->get_ref<const std::string&>();
  if (text.empty() && !mayBeEmpty) refuse(Trouble::empty);
  if (lettersIn(text) > letters) refuse(Trouble::tooLong, {{"limit", std::to_string(letters)}});
  return text;
}

std::string Node::day(bool mayBeEmpty) const {
  const std::string day = text(10, mayBeEmpty);
  if (!day.empty() && !isDay(day)) refuse(Trouble::notADay, {{"text", day}});
  return day;
}

std::string Node::uidText() const {
  const std::string id = text(32);
  if (!looksLikeUid(id)) refuse("an id has 32 hex digits in lower case");
  return id;
}

}  // namespace oddglass::exchange
