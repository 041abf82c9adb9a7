#include "figures/mentions.h"

#include "figures/layout.h"
#include "figures/rows.h"
#include "figures/scale.h"

#include <algorithm>
#include <stdexcept>

namespace oddglass::figures {
namespace {

constexpr double bar = 8, gap = 12;

void checkMentions(const MentionPicture& picture) {
  if (picture.samples.empty() || picture.samples.size() > 6) throw std::invalid_argument("samples: not one to six");
  for (const std::string& sample : picture.samples) requireWords("samples", sample);
  for (const MentionRow& row : picture.rows) {
    requireWords("word", row.word);
    if (row.mentions.size() != picture.samples.size()) throw std::invalid_argument("mentions: not one for each sample");
    for (const Mention& mention : row.mentions) {
      requireWords("value", mention.value);
      if (mention.times < 0 || mention.times > mention.of) throw std::invalid_argument("times: not from 0 to of");
    }
  }
}

double shareOf(const Mention& mention) { return mention.of == 0 ? 0 : static_cast<double>(mention.times) / mention.of; }

std::vector<MentionRow> ordered(std::vector<MentionRow> rows) {
  const auto said = [](const MentionRow& row) {
    double sum = 0;
    for (const Mention& mention : row.mentions) sum += shareOf(mention);
    return sum;
  };
  std::stable_sort(rows.begin(), rows.end(), [&](const MentionRow& a, const MentionRow& b) { return said(a) > said(b); });
  return rows;
}

/// One column for each sample.
struct Columns {
  double left = 0, width = 0;
  double at(std::size_t i) const { return left + static_cast<double>(i) * (width + gap); }
};

/// Each text in its column, all from the same first baseline; returns the lowest baseline.
double addInColumns(Figure& figure, const Columns& columns, const std::vector<std::string>& texts, double y, Role role, const std::vector<std::string>& readOuts, const Measure& measure) {
  double lowest = y;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    double baseline = y;
    for (const std::string& line : wrapped(texts[i], columns.width, measure)) {
      figure.marks.push_back({Text{columns.at(i), baseline, smallType, Anchor::start, line}, role, readOuts[i]});
      lowest = std::max(lowest, baseline);
      baseline += lineHeight;
    }
  }
  return lowest;
}

double heightOf(const MentionRow& row, double width, const Measure& measure) {
  std::size_t lines = 1;
  for (const Mention& mention : row.mentions) lines = std::max(lines, wrapped(mention.value, width, measure).size());
  return lineHeight * static_cast<double>(lines) + bar + 4;
}

}  // namespace

Figure mentionFigure(const MentionPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkMentions(picture);
  const std::vector<MentionRow> rows = ordered(picture.rows);
  std::vector<RowWords> words;
  for (const MentionRow& row : rows) words.push_back({row.word, {}, {}});
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  const RowPlan plan = planRows(words, width, 0, measure);
  const double columnsWide = static_cast<double>(picture.samples.size());
  const Columns columns{plan.left, (plan.right - plan.left - gap * (columnsWide - 1)) / columnsWide};

  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight + 6;
  y = addInColumns(figure, columns, picture.samples, y, Role::muted, std::vector<std::string>(picture.samples.size()), measure) + 8;
  std::vector<double> heights;
  for (const MentionRow& row : rows) heights.push_back(heightOf(row, columns.width, measure));
  const Rows placed = addRows(figure, plan, words, heights, y, measure);
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const Strip& strip = placed.strips[i];
    std::vector<std::string> values, readOuts;
    for (const Mention& mention : rows[i].mentions) {
      values.push_back(mention.value);
      readOuts.push_back(mention.readOut);
    }
    addInColumns(figure, columns, values, strip.top + smallType, Role::ink, readOuts, measure);
    for (std::size_t s = 0; s < rows[i].mentions.size(); ++s) {
      const Mention& mention = rows[i].mentions[s];
      const double top = strip.bottom - bar;
      figure.marks.push_back({Rect{columns.at(s), top, columns.width, bar}, Role::soft, mention.readOut});
      figure.marks.push_back({Rect{columns.at(s), top, columns.width * shareOf(mention), bar}, Role::accent, mention.readOut});
    }
  }
  figure.height = placed.bottom + 6;
  return figure;
}

}  // namespace oddglass::figures
