#include "print/pages.h"

#include <QPainter>

#include <algorithm>
#include <numeric>
#include <optional>

namespace oddglass::print {
namespace {

constexpr double between = 8;   // points between two columns
const Type cellType{8.5, false, Type{}.colour};
const Type headType{8.5, true, Type{}.colour};

/// Widths of the columns: as wide as their words where there is room, else narrowed in proportion to what they would like. Nothing where words would break.
std::optional<std::vector<double>> columnsOf(const figures::Table& table, double width) {
  const std::size_t count = table.headers.size();
  const double room = width - between * static_cast<double>(count - 1), most = room * 0.3;
  std::vector<double> least(count, 4), wanted(count, 4);
  const auto measure = [&](std::size_t column, const std::string& text, const Type& type) {
    least[column] = std::max(least[column], std::min(widestWordOf(text, type), most));
    wanted[column] = std::max(wanted[column], widthOf(text, type));
  };
  for (std::size_t i = 0; i < count; ++i) {
    measure(i, table.headers[i], headType);
    for (const auto& row : table.rows)
      if (i < row.size()) measure(i, row[i], cellType);
  }
  const double sum = std::accumulate(wanted.begin(), wanted.end(), 0.0), narrowest = std::accumulate(least.begin(), least.end(), 0.0);
  if (sum <= room) return wanted;
  if (narrowest > room) return std::nullopt;
  // Narrow columns keep their words in one line as long as that leaves the others their share.
  double left = room, open = static_cast<double>(count);
  std::vector<double> columns(count, 0);
  for (bool isChanged = true; isChanged;) {
    isChanged = false;
    for (std::size_t i = 0; i < count; ++i)
      if (columns[i] == 0 && wanted[i] <= left / open / 1.5) {
        columns[i] = wanted[i];
        left -= wanted[i];
        --open;
        isChanged = true;
      }
  }
  double wide = 0, narrow = 0;
  for (std::size_t i = 0; i < count; ++i)
    if (columns[i] == 0) wide += wanted[i], narrow += least[i];
  if (narrow > left) {
    for (std::size_t i = 0; i < count; ++i) columns[i] = least[i] + (room - narrowest) * (wanted[i] - least[i]) / (sum - narrowest);
    return columns;
  }
  for (std::size_t i = 0; i < count; ++i)
    if (columns[i] == 0) columns[i] = least[i] + (left - narrow) * (wanted[i] - least[i]) / std::max(wide - narrow, 1.0);
  return columns;
}

std::vector<SetText> laid(const std::vector<std::string>& cells, const std::vector<double>& columns, const Type& type) {
  std::vector<SetText> set;
  for (std::size_t i = 0; i < columns.size(); ++i) set.emplace_back(i < cells.size() ? cells[i] : std::string(), type, columns[i] + 0.5);
  return set;
}

int tallest(const std::vector<SetText>& row) {
  int lines = 1;
  for (const SetText& cell : row) lines = std::max(lines, cell.lines());
  return lines;
}

void drawPart(Pages& pages, const std::vector<SetText>& row, const std::vector<double>& columns, int from, int to) {
  double x = pages.left();
  for (std::size_t i = 0; i < row.size(); ++i) {
    row[i].draw(pages.painter(), x, pages.y(), std::min(from, row[i].lines()), std::min(to, row[i].lines()));
    x += columns[i] + between;
  }
  pages.space((to - from) * leading(cellType) + 3);
}

void stacked(Pages& pages, const figures::Table& table) {
  for (const auto& row : table.rows) {
    pages.need(2 * leading(cellType));
    for (std::size_t i = 0; i < row.size(); ++i)
      if (!row[i].empty()) pages.paragraph((i < table.headers.size() && !table.headers[i].empty() ? table.headers[i] + ": " : std::string()) + row[i], i == 0 ? headType : cellType, 0);
    pages.space(3);
    pages.rule();
  }
}

}  // namespace

double Pages::startOf(const figures::Table& table) const {
  if (table.headers.empty() || table.rows.empty()) return 0;
  const auto columns = columnsOf(table, width());
  if (!columns) return 3 * leading(cellType);
  const int head = tallest(laid(table.headers, *columns, headType)), row = std::min(4, tallest(laid(table.rows.front(), *columns, cellType)));
  return head * leading(headType) + row * leading(cellType) + 18;
}

void Pages::table(const figures::Table& table) {
  if (table.headers.empty() || table.rows.empty()) return;
  const auto columns = columnsOf(table, width());
  if (!columns) {
    stacked(*this, table);
    space(4);
    return;
  }
  const std::vector<SetText> head = laid(table.headers, *columns, headType);
  const double headHeight = tallest(head) * leading(headType) + 9;
  const auto drawHead = [&] {
    drawPart(*this, head, *columns, 0, tallest(head));
    rule();
  };
  need(startOf(table));
  drawHead();
  for (const auto& cells : table.rows) {
    const std::vector<SetText> row = laid(cells, *columns, cellType);
    const int lines = tallest(row);
    const double whole = lines * leading(cellType) + 9;
    if (y() + whole > bottom() && whole < bottom() - top() - headHeight) {
      turn();
      drawHead();
    }
    for (int from = 0; from < lines;) {
      const int fit = static_cast<int>((bottom() - y() - 3) / leading(cellType));
      if (fit < 1) {
        turn();
        drawHead();
        continue;
      }
      const int to = std::min(lines, from + fit);
      drawPart(*this, row, *columns, from, to);
      from = to;
    }
    rule();
  }
  space(4);
}

}  // namespace oddglass::print
