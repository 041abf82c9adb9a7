#include "stats/checks/checked.h"

#include "stats/column.h"
#include "stats/error.h"
#include "stats/multiple/adjust.h"

#include <algorithm>
#include <map>

namespace oddglass::stats {
namespace {

constexpr double mostDrawn = 20'000;
constexpr int notAnswered = -1;

/// For each descriptor the answers of each taster who answered anything about it, by sample.
using Sheets = std::map<int, std::vector<int>>;

std::vector<Sheets> sheetsOf(const CheckRows& rows) {
  std::vector<Sheets> sheets(static_cast<std::size_t>(rows.descriptor.levels));
  for (std::size_t row = 0; row < rows.checked.size(); ++row) {
    auto& sheet = sheets[static_cast<std::size_t>(rows.descriptor.of[row])][rows.taster.of[row]];
    sheet.resize(static_cast<std::size_t>(rows.sample.levels), notAnswered);
    int& box = sheet[static_cast<std::size_t>(rows.sample.of[row])];
    if (box != notAnswered) throw BadInput("taster", "a taster answered a box twice");
    box = rows.checked[row];
  }
  return sheets;
}

void requireRows(const CheckRows& rows) {
  if (rows.checked.empty()) throw BadInput("checked", "there are no answers");
  for (int cell : rows.checked)
    if (cell != 0 && cell != 1) throw BadInput("checked", "must be 0 or 1");
  requireColumn("sample", rows.sample, rows.checked.size());
  requireColumn("taster", rows.taster, rows.checked.size());
  requireColumn("descriptor", rows.descriptor, rows.checked.size());
  if (rows.sample.levels < 2) throw BadInput("sample", "a comparison needs two samples or more");
}

CheckTable completeIn(const Sheets& sheets) {
  CheckTable table;
  for (const auto& [taster, sheet] : sheets)
    if (std::ranges::find(sheet, notAnswered) == sheet.end()) table.push_back(sheet);
  return table;
}

std::optional<double> shareOf(const Sheets& sheets, std::size_t sample) {
  int answered = 0, checked = 0;
  for (const auto& [taster, sheet] : sheets) {
    answered += sheet[sample] != notAnswered;
    checked += sheet[sample] == 1;
  }
  if (answered == 0) return std::nullopt;
  return static_cast<double>(checked) / answered;
}

CheckPair pairOf(const Sheets& sheets, int a, int b) {
  CheckPair pair{a, b, 0, 0, {}, {}};
  bool isCompared = false;
  for (const auto& [taster, sheet] : sheets) {
    const int atA = sheet[static_cast<std::size_t>(a)], atB = sheet[static_cast<std::size_t>(b)];
    if (atA == notAnswered || atB == notAnswered) continue;
    isCompared = true;
    pair.onlyA += atA > atB;
    pair.onlyB += atB > atA;
  }
  if (isCompared) pair.pMcNemar = mcNemar(pair.onlyA, pair.onlyB);
  return pair;
}

/// Holm over those that have a p.
template <class Items, class P, class Set>
void adjust(Items& items, const P& p, const Set& set) {
  std::vector<double> values;
  for (const auto& each : items)
    if (const std::optional<double> one = p(each)) values.push_back(*one);
  const std::vector<double> adjusted = adjustHolm(values);
  std::size_t next = 0;
  for (auto& each : items)
    if (p(each)) set(each, adjusted[next++]);
}

std::optional<double> bestP(const CochranQ& test) {
  if (test.arranged.exact) return test.arranged.exact;
  if (test.arranged.drawn) return test.arranged.drawn->pValue;
  return test.pValue;
}

CheckedDescriptor described(int descriptor, const Sheets& sheets, const CheckTable& complete, int samples, bool mayDraw) {
  CheckedDescriptor found;
  found.descriptor = descriptor;
  found.tasters = static_cast<int>(complete.size());
  found.leftOut = static_cast<int>(sheets.size() - complete.size());
  found.test = cochranQ(complete, mayDraw);
  found.test.df = samples - 1;
  found.checks.assign(static_cast<std::size_t>(samples), 0);
  for (const auto& row : complete)
    for (std::size_t i = 0; i < row.size(); ++i) found.checks[i] += row[i];
  for (int a = 0; a < samples; ++a) {
    found.shares.push_back(shareOf(sheets, static_cast<std::size_t>(a)));
    for (int b = a + 1; b < samples; ++b) found.pairs.push_back(pairOf(sheets, a, b));
  }
  adjust(found.pairs, [](const CheckPair& pair) { return pair.pMcNemar; }, [](CheckPair& pair, double p) { pair.pHolm = p; });
  return found;
}

}  // namespace

std::vector<CheckedDescriptor> checkedDescriptors(const CheckRows& rows) {
  requireRows(rows);
  const std::vector<Sheets> sheets = sheetsOf(rows);
  std::vector<CheckTable> complete;
  double dealt = 0.0;
  for (const Sheets& each : sheets) {
    complete.push_back(completeIn(each));
    dealt += static_cast<double>(tellers(complete.back())) * rows.sample.levels;
  }
  std::vector<CheckedDescriptor> found;
  for (std::size_t i = 0; i < sheets.size(); ++i) found.push_back(described(static_cast<int>(i), sheets[i], complete[i], rows.sample.levels, dealt <= mostDrawn));
  adjust(found, [](const CheckedDescriptor& each) { return bestP(each.test); }, [](CheckedDescriptor& each, double p) { each.pHolm = p; });
  return found;
}

}  // namespace oddglass::stats
