#pragma once

#include "canon/digest.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "domain/uid.h"
#include "exchange/document.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <vector>

namespace oddglass::exchange {

/// A value in a document that knows where it stands, so that what is wrong with it is named by file, line and path.
class Node {
 public:
  explicit Node(const Document& document);

  /// The member `key`. Problem(badFile) when this is no object or has no such key.
  Node at(const char* key) const;
  bool has(const char* key) const;
  bool isNull() const { return json_->is_null(); }

  /// The entries of a list; at most `most` of them.
  std::vector<Node> list(std::size_t most = 100000) const;
  /// The same for member `key`; no entries when the key is not there.
  std::vector<Node> maybeList(const char* key) const;
  /// The member `key`, or nothing when it is not there or null.
  std::optional<Node> maybe(const char* key) const;

  /// Refuses keys that are not among these: what is not understood is not silently dropped.
  void onlyKeys(std::initializer_list<const char*> keys) const;

  bool truth() const;
  std::int64_t whole(std::int64_t low, std::int64_t high) const;
  int small(int low, int high) const { return static_cast<int>(whole(low, high)); }
  std::optional<int> maybeSmall(int low, int high) const;

  /// Text of at most `letters` letters.
  std::string text(std::size_t letters, bool mayBeEmpty = true) const;
  /// A day, YYYY-MM-DD; or nothing at all where `mayBeEmpty`.
  std::string day(bool mayBeEmpty) const;

  template <class Tag>
  Uid<Tag> uid() const {
    return {uidText()};
  }

  template <class E>
  E choice() const {
    const std::string word = text(60);
    if (const auto value = named<E>(word)) return *value;
    std::string choices;
    for (E each : allOf<E>()) choices += (choices.empty() ? "" : ", ") + std::string(nameOf(each));
    refuse(Trouble::notAChoice, {{"text", word}, {"choices", choices}});
  }

  template <std::size_t N>
  std::array<std::uint8_t, N> bytes() const {
    if (json_->is_string())
      if (const auto bytes = canon::fromHex<N>(json_->get_ref<const std::string&>())) return *bytes;
    refuse(Trouble::badFile, {{"text", "this needs " + std::to_string(2 * N) + " lower-case hex digits"}});
  }

  const canon::Json& json() const { return *json_; }
  const std::string& path() const { return path_; }

  /// Throws a Problem about this value: argument is its path, values get file, line and column.
  [[noreturn]] void refuse(Trouble trouble, Problem::Values values = {}) const;
  /// Problem(badFile) with a plain reason.
  [[noreturn]] void refuse(const std::string& text) const { refuse(Trouble::badFile, {{"text", text}}); }

 private:
  Node(const Document& document, const canon::Json& json, std::string path) : document_(&document), json_(&json), path_(std::move(path)) {}
  std::string uidText() const;
  Node inside(const std::string& step, const canon::Json& json) const { return {*document_, json, path_.empty() ? step : path_ + '/' + step}; }

  const Document* document_;
  const canon::Json* json_;
  std::string path_;
};

}  // namespace oddglass::exchange
