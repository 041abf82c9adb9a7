#include "exchange/csv.h"

#include "domain/problem.h"
#include "exchange/document.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>
#include <optional>
#include <set>

namespace oddglass::exchange {
namespace {

constexpr std::size_t mostBytes = 256U << 20, mostRows = 1000000;

/// What can be read in one line; a cell may hold megabytes.
std::string inShort(const std::string& text, std::size_t most = 60) {
  if (text.size() <= most) return text;
  std::size_t end = most;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
  return text.substr(0, end) + " ...";
}

[[noreturn]] void refuseAt(const std::string& file, int line, const std::string& column, const std::string& text) {
  const std::string shown = column.empty() ? "1" : inShort(column, 200);
  throw Problem(Trouble::badFile, column.empty() ? "file" : shown, {{"file", file}, {"line", std::to_string(line)}, {"column", shown}, {"text", text}});
}

bool isUtf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto first = static_cast<unsigned char>(text[i]);
    const int more = first < 0x80 ? 0 : first >= 0xc2 && first < 0xe0 ? 1 : (first & 0xf0) == 0xe0 ? 2 : first >= 0xf0 && first < 0xf5 ? 3 : -1;
    if (more < 0 || i + static_cast<std::size_t>(more) >= text.size()) return false;
    std::uint32_t point = more == 0 ? first : first & (0x3fU >> more);
    for (int k = 1; k <= more; ++k) {
      const auto next = static_cast<unsigned char>(text[i + static_cast<std::size_t>(k)]);
      if ((next & 0xc0) != 0x80) return false;
      point = point << 6 | (next & 0x3fU);
    }
    if ((more == 2 && (point < 0x800 || (point >= 0xd800 && point < 0xe000))) || (more == 3 && (point < 0x10000 || point > 0x10ffff))) return false;
    i += static_cast<std::size_t>(more) + 1;
  }
  return true;
}

std::string trimmed(std::string_view cell) {
  while (!cell.empty() && (cell.front() == ' ' || cell.front() == '\t')) cell.remove_prefix(1);
  while (!cell.empty() && (cell.back() == ' ' || cell.back() == '\t')) cell.remove_suffix(1);
  return std::string(cell);
}

/// Takes one row after another from the text.
class Rows {
 public:
  Rows(std::string_view text, std::string file) : text_(text), file_(std::move(file)) {}

  char separator = ',';

  std::optional<CsvRow> next() {
    while (at_ < text_.size()) {
      CsvRow row{line_, {}};
      bool more = true;
      while (more) more = cell(row.cells);
      if (row.cells.size() > 1 || !row.cells.front().empty()) return row;
    }
    return std::nullopt;
  }

 private:
  /// Adds a cell; true when another follows in the same row.
  bool cell(std::vector<std::string>& cells) {
    std::string text;
    const int began = line_;
    std::size_t start = at_;
    while (start < text_.size() && text_[start] == ' ') ++start;
    if (start < text_.size() && text_[start] == '"') {
      at_ = start + 1;
      for (;; ++at_) {
        if (at_ >= text_.size()) refuseAt(file_, began, std::to_string(cells.size() + 1), "a quote that was opened is never closed");
        if (text_[at_] == '"') {
          if (at_ + 1 >= text_.size() || text_[at_ + 1] != '"') break;
          ++at_;
        }
        if (text_[at_] == '\n') ++line_;
        text += text_[at_];
      }
      for (++at_; at_ < text_.size() && text_[at_] == ' ';) ++at_;
      if (at_ < text_.size() && text_[at_] != separator && text_[at_] != '\r' && text_[at_] != '\n')
        refuseAt(file_, line_, std::to_string(cells.size() + 1), "text follows a closed quote");
    } else {
      const std::size_t end = std::min(text_.find_first_of(std::string{separator, '\r', '\n'}, at_), text_.size());
      text = trimmed(text_.substr(at_, end - at_));
      at_ = end;
    }
    cells.push_back(std::move(text));
    if (at_ >= text_.size()) return false;
    if (text_[at_] == separator) {
      ++at_;
      if (at_ >= text_.size()) cells.emplace_back();
      return at_ < text_.size();
    }
    if (text_[at_] == '\r') ++at_;
    if (at_ < text_.size() && text_[at_] == '\n') ++at_;
    ++line_;
    return false;
  }

  std::string_view text_;
  std::string file_;
  std::size_t at_ = 0;
  int line_ = 1;
};

/// The one that parts most names of the first row that is not empty; what stands in quotes parts nothing.
char separatorOf(std::string_view text) {
  std::map<char, int> parted{{',', 0}, {';', 0}, {'\t', 0}};
  bool isQuoted = false;
  for (std::size_t at = std::min(text.find_first_not_of("\r\n"), text.size()); at < text.size(); ++at) {
    if (text[at] == '"') isQuoted = !isQuoted;
    if (isQuoted) continue;
    if (text[at] == '\r' || text[at] == '\n') break;
    if (const auto found = parted.find(text[at]); found != parted.end()) ++found->second;
  }
  char best = ',';
  for (char candidate : {';', '\t'})
    if (parted[candidate] > parted[best]) best = candidate;
  return best;
}

std::optional<int> wholeIn(std::string_view text) {
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
  return value;
}

}  // namespace

bool CsvTable::has(std::string_view column) const { return std::ranges::find(columns, column) != columns.end(); }

std::size_t CsvTable::column(std::string_view name) const {
  const auto found = std::ranges::find(columns, name);
  if (found == columns.end()) refuseAt(file, 1, std::string(name), "there is no column \"" + inShort(std::string(name)) + '"');
  return static_cast<std::size_t>(found - columns.begin());
}

void CsvTable::refuse(const CsvRow& row, std::string_view name, const std::string& text) const { refuseAt(file, row.line, std::string(name), inShort(text, 400)); }

const std::string& CsvTable::text(const CsvRow& row, std::string_view name) const { return row.cells[column(name)]; }

int CsvTable::whole(const CsvRow& row, std::string_view name, int low, int high) const { return wholeOf(row, name, text(row, name), low, high); }

int CsvTable::wholeOf(const CsvRow& row, std::string_view name, const std::string& cell, int low, int high) const {
  const auto value = wholeIn(cell);
  if (!value) refuse(row, name, '"' + inShort(cell) + "\" is no whole number");
  if (*value < low || *value > high) refuse(row, name, cell + " lies outside " + std::to_string(low) + " to " + std::to_string(high));
  return *value;
}

double CsvTable::number(const CsvRow& row, std::string_view name, double low, double high) const {
  const std::string& cell = text(row, name);
  const std::string_view digits = std::string_view(cell).substr(cell.size() > 1 && cell[0] == '+' && cell[1] != '-' ? 1 : 0);
  double value = 0.0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (end != digits.data() + digits.size() || (error != std::errc{} && error != std::errc::result_out_of_range) || std::isnan(value)) {
    const bool hasComma = cell.find(',') != std::string::npos;
    refuse(row, name, '"' + inShort(cell) + (hasComma ? "\" is no number; write the fraction after a point" : "\" is no number"));
  }
  if (error == std::errc::result_out_of_range || value < low || value > high) refuse(row, name, inShort(cell) + " is out of range");
  return value;
}

bool isMissing(std::string_view cell) { return cell.empty() || cell == "NA" || cell == "."; }

CsvTable readCsv(const std::filesystem::path& file) { return parseCsv(readBytes(file, mostBytes), file.filename().string()); }

CsvTable parseCsv(std::string_view text, const std::string& file) {
  if (text.starts_with("\xef\xbb\xbf")) text.remove_prefix(3);
  if (!isUtf8(text)) {
    std::size_t good = 0;
    int line = 1;
    for (std::size_t end; good < text.size(); good = end, ++line) {
      end = text.find('\n', good);
      end = end == std::string_view::npos ? text.size() : end + 1;
      if (!isUtf8(text.substr(good, end - good))) break;
    }
    refuseAt(file, line, "", "this is no UTF-8 text");
  }
  Rows rows(text, file);
  rows.separator = separatorOf(text);
  CsvTable table{file, {}, {}};
  const auto header = rows.next();
  if (!header) refuseAt(file, 1, "", "the file is empty; the first row names the columns");
  table.columns = header->cells;
  std::set<std::string> names;
  for (std::size_t i = 0; i < table.columns.size(); ++i) {
    if (table.columns[i].empty()) refuseAt(file, header->line, std::to_string(i + 1), "a column without a name");
    if (!names.insert(table.columns[i]).second) refuseAt(file, header->line, table.columns[i], "two columns are called \"" + inShort(table.columns[i]) + '"');
  }
  while (auto row = rows.next()) {
    if (row->cells.size() != table.columns.size())
      refuseAt(file, row->line, "", "this row has " + std::to_string(row->cells.size()) + " cells, the first one names " + std::to_string(table.columns.size()));
    if (table.rows.size() == mostRows) throw Problem(Trouble::fileTooLarge, "file", {{"file", file}, {"limit", "1000000 rows"}});
    table.rows.push_back(std::move(*row));
  }
  return table;
}

std::string csvCell(std::string_view text) {
  std::string cell(text);
  if (!cell.empty() && std::string_view("=+-@\t\r\n").find(cell[0]) != std::string_view::npos && !wholeIn(cell)) cell.insert(0, 1, '\'');
  if (cell.find_first_of(",;\t\"\r\n") == std::string::npos) return cell;
  std::string quoted = "\"";
  for (char c : cell) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
  return quoted + '"';
}

std::string csvLine(const std::vector<std::string>& cells) {
  std::string line;
  for (std::size_t i = 0; i < cells.size(); ++i) line += (i ? "," : "") + csvCell(cells[i]);
  return line + "\r\n";
}

}  // namespace oddglass::exchange
