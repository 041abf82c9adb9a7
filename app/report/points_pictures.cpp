// The pictures of one question's points: interval dots for the means, and a strip with every person's answer.
#include "report/sheet_pictures.h"

#include "figures/means.h"
#include "figures/strips.h"
#include "words/lots.h"
#include "words/numbers.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

#include <algorithm>

namespace oddglass::report {
namespace {

using insight::LotMean;
using insight::PointsLine;

figures::Scale scaleOf(const PointsLine& line, const words::PointsPictureWords& text) {
  figures::Scale scale{static_cast<double>(line.low), static_cast<double>(line.high), text.ends.low, text.ends.high, {}};
  for (const words::ScaleMark& mark : text.marks) scale.ticks.push_back({static_cast<double>(mark.at), mark.word});
  return scale;
}

std::string orDash(const words::Voice& voice, ItemKind kind, const std::optional<double>& value) { return value ? words::points(voice, kind, *value) : std::string("–"); }

std::string allLines(const std::vector<std::string>& lines) {
  std::string all;
  for (const std::string& line : lines) all += (all.empty() ? "" : " ") + line;
  return all;
}

std::optional<figures::MeanPicture> meanPicture(const words::Voice& voice, const Plan& plan, const PointsLine& line) {
  if (std::ranges::none_of(line.lots, [](const LotMean& lot) { return lot.mean.has_value(); })) return std::nullopt;
  const words::PointsPictureWords text = words::pointsPictureWords(voice, line);
  figures::MeanPicture picture{text.means, scaleOf(line, text), {}, {}, {text.meanHeaders, {}}};
  std::vector<std::string> told;
  for (const LotMean& lot : line.lots) {
    figures::MeanRow row;
    row.label = words::capitalised(words::lotNamed(voice, plan, lot.lot));
    row.mean = lot.mean;
    if (lot.low && lot.high) row.interval = figures::Span{*lot.low, *lot.high};
    if (lot.mean) row.word = words::points(voice, line.kind, *lot.mean);
    row.count = words::people(voice, lot.people);
    row.readOut = words::meanLine(voice, plan, line, lot);
    row.why = text.why;
    told.push_back(row.readOut);
    picture.table.rows.push_back({row.label, orDash(voice, line.kind, lot.mean), orDash(voice, line.kind, lot.low), orDash(voice, line.kind, lot.high), words::whole(voice, lot.people)});
    picture.rows.push_back(std::move(row));
  }
  picture.sentence = allLines(told);
  return picture;
}

std::optional<figures::StripPicture> answersPicture(const words::Voice& voice, const Plan& plan, const PointsLine& line) {
  if (std::ranges::all_of(line.lots, [](const LotMean& lot) { return lot.values.empty(); })) return std::nullopt;
  const words::PointsPictureWords text = words::pointsPictureWords(voice, line);
  figures::StripPicture picture{text.answers, scaleOf(line, text), {}, {}, {text.answerHeaders, {}}};
  std::vector<std::string> told;
  for (const LotMean& lot : line.lots) {
    figures::StripRow row;
    row.label = words::capitalised(words::lotNamed(voice, plan, lot.lot));
    row.count = words::people(voice, lot.people);
    std::string all;
    for (std::size_t i = 0; i < lot.values.size();) {
      const auto times = static_cast<int>(std::ranges::count(lot.values, lot.values[i]));
      row.heaps.push_back({lot.values[i], times, words::heapLine(voice, row.label, line.kind, lot.values[i], times)});
      all += (all.empty() ? "" : ", ") + words::points(voice, line.kind, lot.values[i]) + (times > 1 ? " (" + words::whole(voice, times) + ")" : std::string());
      told.push_back(row.heaps.back().readOut + '.');
      i += static_cast<std::size_t>(times);
    }
    picture.table.rows.push_back({row.label, all.empty() ? "–" : all, words::whole(voice, lot.people)});
    picture.rows.push_back(std::move(row));
  }
  picture.sentence = allLines(told);
  return picture;
}

}  // namespace

std::vector<Drawing> pointsDrawings(const words::Voice& voice, const Plan& plan, const PointsLine& line) {
  std::vector<Drawing> drawings;
  if (const auto means = meanPicture(voice, plan, line)) drawings.push_back(drawingOf(*means, figures::meanFigure));
  // Every answer is shown where it is what the plan is about, how it was liked, or where there is nothing else to show.
  const bool isLiking = line.kind == ItemKind::liking && line.word.empty();
  if (!line.isMain && !isLiking && !drawings.empty()) return drawings;
  if (const auto answers = answersPicture(voice, plan, line)) drawings.push_back(drawingOf(*answers, figures::stripFigure));
  return drawings;
}

}  // namespace oddglass::report
