#include "exchange/document.h"

#include "domain/problem.h"
#include "domain/text.h"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <limits>
#include <set>
#include <vector>

namespace oddglass::exchange {
namespace {

using canon::Json;

constexpr int deepestKept = 5;  // "sessions/0/hand_ins/3" and one more

/// Reads characters and knows where it is.
struct Counting {
  using difference_type = std::ptrdiff_t;
  using value_type = char;
  using pointer = const char*;
  using reference = const char&;
  using iterator_category = std::input_iterator_tag;

  const char* at = nullptr;
  const char** seen = nullptr;
  const char& operator*() const { return *at; }
  Counting& operator++() {
    ++at;
    *seen = at;
    return *this;
  }
  Counting operator++(int) {
    Counting before = *this;
    ++*this;
    return before;
  }
  bool operator==(const Counting& other) const { return at == other.at; }
  bool operator!=(const Counting& other) const { return at != other.at; }
};

/// Builds the value while looking at each key and number once.
class Look : public nlohmann::json_sax<Json> {
 public:
  Look(std::string_view text, Document& document, const Limits& limits) : text_(text), seen_(text.data()), document_(document), limits_(limits) {}

  Counting begin() { return {text_.data(), &seen_}; }
  Counting end() { return {text_.data() + text_.size(), &seen_}; }

  bool null() override { return put(nullptr); }
  bool boolean(bool value) override { return put(value); }
  bool number_integer(number_integer_t value) override { return put(value); }
  bool number_unsigned(number_unsigned_t value) override {
    if (value > static_cast<number_unsigned_t>(std::numeric_limits<std::int64_t>::max())) refuse(Trouble::notWhole, std::to_string(value));
    return put(static_cast<std::int64_t>(value));
  }
  bool number_float(number_float_t, const string_t& text) override { refuse(Trouble::notWhole, text); }
  bool string(string_t& value) override {
    if (cleaned(value) != value) refuse(Trouble::badFile, "this text has control or direction characters, or blanks at an end");
    return put(std::move(value));
  }
  bool binary(binary_t&) override { refuse(Trouble::badFile, "binary"); }
  bool start_object(std::size_t) override { return open(Json::object()); }
  bool start_array(std::size_t) override { return open(Json::array()); }
  bool end_object() override { return close(); }
  bool end_array() override { return close(); }
  bool key(string_t& value) override {
    if (!open_.back().keys.insert(value).second) refuse(Trouble::keyTwice, value);
    open_.back().key = value;
    return true;
  }
  bool parse_error(std::size_t, const std::string&, const Json::exception& error) override {
    std::string text = error.what();
    if (const auto bracket = text.find("] "); bracket != std::string::npos) text = text.substr(bracket + 2);
    refuse(Trouble::badFile, text);
  }

 private:
  struct Level {
    Json* value = nullptr;
    std::string key;
    std::set<std::string> keys;
  };

  std::string path() const {
    std::string path;
    for (const Level& level : open_) {
      // An entry that is being read further inside stands in its list already; the next one does not.
      const bool isInside = &level != &open_.back();
      const std::string step = level.value->is_array() ? std::to_string(level.value->size() - (isInside ? 1 : 0)) : level.key;
      path += path.empty() ? step : '/' + step;
    }
    return path;
  }

  int line() const { return 1 + static_cast<int>(std::count(text_.data(), std::min(seen_, text_.data() + text_.size()), '\n')); }

  [[noreturn]] void refuse(Trouble trouble, const std::string& text) const {
    const char* const here = std::min(seen_, text_.data() + text_.size());
    const char* start = here;
    while (start > text_.data() && start[-1] != '\n') --start;
    throw Problem(trouble, path().empty() ? "file" : path(),
                  {{"file", document_.file}, {"line", std::to_string(line())}, {"column", std::to_string(here - start)}, {"text", text}});
  }

  Json* place(Json&& value) {
    if (open_.empty()) return &(document_.json = std::move(value));
    Level& top = open_.back();
    if (!top.value->is_array()) return &((*top.value)[top.key] = std::move(value));
    top.value->push_back(std::move(value));
    return &top.value->back();
  }

  bool put(Json&& value) {
    place(std::move(value));
    return true;
  }

  bool open(Json&& value) {
    if (static_cast<int>(open_.size()) >= limits_.depth) refuse(Trouble::fileTooDeep, std::to_string(limits_.depth));
    if (static_cast<int>(open_.size()) < deepestKept) {
      lines_ += static_cast<int>(std::count(counted(), seen_, '\n'));
      document_.lines[path()] = lines_;
      lineSeen_ = seen_;
    }
    open_.push_back({place(std::move(value)), {}, {}});
    return true;
  }

  bool close() {
    open_.pop_back();
    return true;
  }

  const char* counted() const { return lineSeen_ ? lineSeen_ : text_.data(); }

  std::string_view text_;
  const char* seen_;
  const char* lineSeen_ = nullptr;
  int lines_ = 1;
  Document& document_;
  const Limits& limits_;
  std::vector<Level> open_;
};

}  // namespace

int Document::lineOf(std::string path) const {
  for (;;) {
    if (const auto found = lines.find(path); found != lines.end()) return found->second;
    const auto slash = path.rfind('/');
    if (slash == std::string::npos) return 1;
    path.resize(slash);
  }
}

std::string readBytes(const std::filesystem::path& file, std::size_t limit) {
  const std::string name = file.filename().string();
  std::error_code error;
  if (!std::filesystem::is_regular_file(file, error)) throw Problem(Trouble::storeMissing, "file", {{"file", file.string()}});
  const Problem tooLarge(Trouble::fileTooLarge, "file", {{"file", name}, {"limit", std::to_string(limit >> 20)}});
  if (std::filesystem::file_size(file, error) > limit && !error) throw tooLarge;
  std::ifstream in(file, std::ios::binary);
  if (!in) throw Problem(Trouble::badFile, "file", {{"file", name}, {"line", "1"}, {"column", "1"}, {"text", "cannot be read"}});
  std::string text;
  char buffer[1 << 16];
  while (in.read(buffer, sizeof buffer) || in.gcount() > 0) {
    text.append(buffer, static_cast<std::size_t>(in.gcount()));
    if (text.size() > limit) throw tooLarge;
  }
  return text;
}

Document readDocument(const std::filesystem::path& file, const Limits& limits) {
  return parseDocument(readBytes(file, limits.bytes), file.filename().string(), limits);
}

Document parseDocument(std::string_view text, const std::string& file, const Limits& limits) {
  Document document{file, nullptr, {}};
  if (text.size() > limits.bytes) throw Problem(Trouble::fileTooLarge, "file", {{"file", file}, {"limit", std::to_string(limits.bytes >> 20)}});
  if (text.starts_with("\xef\xbb\xbf")) text.remove_prefix(3);
  Look look(text, document, limits);
  Json::sax_parse(look.begin(), look.end(), &look);
  return document;
}

}  // namespace oddglass::exchange
