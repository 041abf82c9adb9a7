#include "figures/rows.h"

#include "figures/layout.h"

#include <algorithm>
#include <cmath>

namespace oddglass::figures {
namespace {

constexpr double gap = 16, between = 6, leastForMarks = 240;

double noteWidthOf(const RowWords& row, const Measure& measure) {
  const double word = measure(row.word, smallType), count = measure(row.count, smallType);
  return row.word.empty() || row.count.empty() ? word + count : word + gap + count;
}

bool isOneLine(const RowWords& row, double room, const Measure& measure) {
  constexpr double slack = 1e-6;  // the room may come from a difference of two widths
  return noteWidthOf(row, measure) <= room + slack;
}

double addBlock(Figure& figure, const std::vector<std::string>& lines, double x, double baseline, Role role, const std::string& readOut = {}) {
  for (const std::string& line : lines) {
    figure.marks.push_back({Text{x, baseline, smallType, Anchor::start, line}, role, readOut});
    baseline += lineHeight;
  }
  return baseline;
}

/// Word and count from `left` to `right`, on one line where they fit; the first baseline at `baseline`, returns the next free one.
double addNote(Figure& figure, const RowWords& row, double left, double right, double baseline, const Measure& measure) {
  if (isOneLine(row, right - left, measure)) {
    if (!row.word.empty()) figure.marks.push_back({Text{left, baseline, smallType, Anchor::start, row.word}, Role::ink, row.readOut});
    if (!row.count.empty()) figure.marks.push_back({Text{right, baseline, smallType, Anchor::end, row.count}, Role::muted, row.readOut});
    return baseline + lineHeight;
  }
  baseline = addBlock(figure, wrapped(row.word, right - left, measure), left, baseline, Role::ink, row.readOut);
  return addBlock(figure, wrapped(row.count, right - left, measure), left, baseline, Role::muted, row.readOut);
}

std::size_t noteLines(const RowWords& row, double room, const Measure& measure) {
  if (isOneLine(row, room, measure)) return 1;
  return wrapped(row.word, room, measure).size() + wrapped(row.count, room, measure).size();
}

/// The label and what belongs to it above the strip; returns where the strip may begin.
double addHead(Figure& figure, const RowPlan& plan, const RowWords& row, double baseline, const Measure& measure) {
  const double label = measure(row.label, smallType), note = noteWidthOf(row, measure);
  if (label + gap + note <= plan.width) {
    const double next = addBlock(figure, {row.label}, 0, baseline, Role::ink);
    addNote(figure, row, plan.width - note, plan.width, baseline, measure);
    return next - lineHeight + descent + 3;
  }
  baseline = addBlock(figure, wrapped(row.label, plan.width, measure), 0, baseline, Role::ink);
  if (note > 0) baseline = addNote(figure, row, 0, plan.width, baseline, measure);
  return baseline - lineHeight + descent + 3;
}

}  // namespace

RowPlan planRows(const std::vector<RowWords>& rows, double width, double inset, const Measure& measure) {
  double label = 0, note = 0;
  for (const RowWords& row : rows) {
    label = std::max(label, measure(row.label, smallType));
    note = std::max(note, noteWidthOf(row, measure));
  }
  label = std::min(label, 0.32 * width);
  note = std::min(note, 0.30 * width);
  const double left = label + gap + inset, right = width - (note > 0 ? note + gap : 0) - inset;
  if (right - left >= leastForMarks) return {true, width, label, width - note, left, right, inset};
  return {false, width, width, 0, inset, width - inset, inset};
}

Rows addRows(Figure& figure, const RowPlan& plan, const std::vector<RowWords>& rows, const std::vector<double>& heights, double top, const Measure& measure) {
  Rows placed;
  double y = plan.beside ? top : top + between;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const RowWords& row = rows[i];
    if (plan.beside) {
      const std::vector<std::string> label = wrapped(row.label, plan.labelWidth, measure);
      const std::size_t note = noteLines(row, plan.width - plan.noteLeft, measure);
      const double height = std::ceil(std::max({heights[i], blockHeight(label.size()), blockHeight(note)}) + between);
      const double axis = y + height / 2;
      addBlock(figure, label, 0, axis - blockHeight(label.size()) / 2 + smallType, Role::ink);
      addNote(figure, row, plan.noteLeft, plan.width, axis - blockHeight(note) / 2 + smallType, measure);
      placed.strips.push_back({axis - heights[i] / 2, axis, axis + heights[i] / 2});
      y += height;
    } else {
      const double from = addHead(figure, plan, row, y + smallType, measure);
      placed.strips.push_back({from, from + heights[i] / 2, from + heights[i]});
      y = from + heights[i] + 2 * between;
    }
  }
  placed.bottom = y;
  placed.panes = placed.strips;
  if (plan.beside && !rows.empty()) placed.panes = {{top, (top + y) / 2, y}};
  return placed;
}

void addUpright(Figure& figure, const Rows& rows, double x, double stroke, Role role, bool dashed, const std::string& readOut) {
  for (const Strip& pane : rows.panes) figure.marks.push_back({Line{x, pane.top, x, pane.bottom, stroke, dashed}, role, readOut});
}

void addGuides(Figure& figure, const Rows& rows, const RowPlan& plan) {
  for (const Strip& strip : rows.strips) figure.marks.push_back({Line{plan.left, strip.axis, plan.right, strip.axis, 1, true}, Role::hair, {}});
}

}  // namespace oddglass::figures
