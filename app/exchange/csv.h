#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::exchange {

/// One row of a table, with the line of the file on which it begins.
struct CsvRow {
  int line = 0;
  std::vector<std::string> cells;  ///< as many as there are columns; blanks at the ends are cut off
};

/// A table with a header row.
struct CsvTable {
  std::string file;
  std::vector<std::string> columns;
  std::vector<CsvRow> rows;

  bool has(std::string_view column) const;
  /// Where a column stands. Problem(badFile, column) when it is missing.
  std::size_t column(std::string_view name) const;

  /// Throws Problem(badFile) about a cell, with file, line and the column's name.
  [[noreturn]] void refuse(const CsvRow& row, std::string_view column, const std::string& text) const;
  /// A whole number in a cell, within bounds.
  int whole(const CsvRow& row, std::string_view column, int low, int high) const;
  /// The same of a text that is part of a cell, or means one.
  int wholeOf(const CsvRow& row, std::string_view column, const std::string& cell, int low, int high) const;
  /// A number with a decimal point in a cell, finite and within bounds.
  double number(const CsvRow& row, std::string_view column, double low, double high) const;
  /// A cell as text.
  const std::string& text(const CsvRow& row, std::string_view column) const;
};

/// True for what stands for a missing answer: nothing, NA or a point.
bool isMissing(std::string_view cell);

/// Reads CSV: UTF-8 with or without a byte order mark; a header row; comma, semicolon or tab, whichever the header row uses;
/// quotes as in RFC 4180; empty lines are passed over. Problem(badFile) with file, line and column for an open quote, a row of
/// another length, an empty or repeated name of a column, bytes that are no UTF-8; fileTooLarge above 1,000,000 rows or 256 MB.
CsvTable readCsv(const std::filesystem::path& file);
CsvTable parseCsv(std::string_view text, const std::string& file);

/// One cell as it is written: quoted where needed, and with an apostrophe before a leading = + - @ tab or line end, so that no
/// spreadsheet takes it for a formula. Whole numbers, also negative ones, stay as they are.
std::string csvCell(std::string_view text);

/// A row with its line end (CR LF, RFC 4180).
std::string csvLine(const std::vector<std::string>& cells);

}  // namespace oddglass::exchange
