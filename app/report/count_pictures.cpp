// The pictures of what a score sheet counts: two-sided bars, ranks, words and complaints, what people would do, points split, sureness.
#include "report/sheet_pictures.h"

#include "figures/mentions.h"
#include "figures/shares.h"
#include "figures/sides.h"
#include "figures/strips.h"
#include "words/lots.h"
#include "words/numbers.h"
#include "words/sheet_out.h"
#include "words/sheet_picture.h"

#include <algorithm>
#include <numeric>

namespace oddglass::report {
namespace {

using words::Voice;

/// What every picture here needs: the names of the lots, in the order of the counts.
struct Drinks {
  const Voice& voice;
  std::vector<std::string> names;
};

// The whole picture in words: what its title says and each row's sentences.
void speak(auto& picture, const std::vector<std::string>& told) {
  picture.sentence = picture.title + ':';
  for (const std::string& each : told) picture.sentence += ' ' + each + '.';
}

Drawing rightDrawing(const Drinks& drinks, const insight::RightLine& line) {
  const Voice& voice = drinks.voice;
  const words::CountPictureWords text = words::countPictureWords(voice, line);
  const words::SideNames sides = words::sideNames(voice);
  figures::SidesPicture picture{text.title, sides.little, sides.right, sides.much, {}, {}, {text.headers, {}}};
  std::vector<std::string> told;
  for (std::size_t i = 0; i < line.lots.size(); ++i) {
    const insight::RightLot& lot = line.lots[i];
    const auto side = [&](const std::string& name, int count, const std::optional<double>& drop) {
      told.push_back(words::rightSideLine(voice, drinks.names[i], name, count, lot.people, drop));
      return figures::Side{count, told.back()};
    };
    picture.rows.push_back({drinks.names[i], side(sides.little, lot.little.people, lot.little.drop), side(sides.right, lot.right, std::nullopt),
                            side(sides.much, lot.much.people, lot.much.drop), words::people(voice, lot.people)});
    picture.table.rows.push_back({drinks.names[i], words::whole(voice, lot.little.people), words::whole(voice, lot.right), words::whole(voice, lot.much.people), words::whole(voice, lot.people)});
  }
  speak(picture, told);
  return drawingOf(picture, figures::sidesFigure);
}

/// A word, or a thing that was said, of each lot.
struct Said {
  std::string word;
  std::vector<int> times, of;
};

constexpr std::size_t mostSamples = 6;  // side by side in one picture

std::vector<Drawing> mentionDrawings(const Drinks& drinks, const words::CountPictureWords& text, const std::vector<Said>& rows) {
  std::vector<Drawing> drawings;
  for (std::size_t from = 0; from < drinks.names.size(); from += mostSamples) {
    const std::size_t to = std::min(drinks.names.size(), from + mostSamples);
    figures::MentionPicture picture{text.title, {drinks.names.begin() + static_cast<std::ptrdiff_t>(from), drinks.names.begin() + static_cast<std::ptrdiff_t>(to)}, {}, {}, {text.headers, {}}};
    picture.table.headers.insert(picture.table.headers.end(), picture.samples.begin(), picture.samples.end());
    std::vector<std::string> told;
    for (const Said& said : rows) {
      figures::MentionRow row{said.word, {}};
      std::vector<std::string> cells{said.word};
      for (std::size_t i = from; i < to; ++i) {
        told.push_back(words::mentionLine(drinks.voice, drinks.names[i], said.word, said.times[i], said.of[i]));
        cells.push_back(words::countOf(drinks.voice, said.times[i], said.of[i]));
        row.mentions.push_back({said.times[i], said.of[i], cells.back(), told.back()});
      }
      picture.table.rows.push_back(std::move(cells));
      picture.rows.push_back(std::move(row));
    }
    speak(picture, told);
    drawings.push_back(drawingOf(picture, figures::mentionFigure));
  }
  return drawings;
}

std::vector<Drawing> tickedDrawings(const Drinks& drinks, const std::vector<insight::TickedLine>& lines) {
  std::vector<Said> rows;
  for (const insight::TickedLine& line : lines) rows.push_back({line.word, line.ticked, line.people});
  return mentionDrawings(drinks, words::tickedPictureWords(drinks.voice), rows);
}

std::vector<Drawing> saidDrawings(const Drinks& drinks, const insight::SaidLine& line) {
  std::vector<Said> rows;
  for (const insight::WordCount& word : line.words) rows.push_back({word.word, word.people, line.asked});
  if (line.kind == ItemKind::worst) rows.push_back({words::foundNone(drinks.voice), line.none, line.asked});
  return rows.empty() ? std::vector<Drawing>{} : mentionDrawings(drinks, words::countPictureWords(drinks.voice, line), rows);
}

std::vector<Drawing> rankedDrawings(const Drinks& drinks, const insight::RankedLine& line) {
  if (line.given.size() < 2 || line.people == 0) return {};
  const Voice& voice = drinks.voice;
  const words::CountPictureWords text = words::countPictureWords(voice, line);
  const words::Ends ends = words::rankEnds(voice, line.word);
  figures::RankPicture picture{text.title, ends.low, ends.high, {}, {}, {text.headers, {}}};
  for (std::size_t rank = 1; rank <= line.given.size(); ++rank) picture.table.headers.push_back(words::whole(voice, static_cast<long long>(rank)));
  std::vector<std::string> told;
  for (std::size_t i = 0; i < line.given.size(); ++i) {
    figures::RankRow row{drinks.names[i], line.given[i], {}, words::rankSumWord(voice, line.sums[i]), words::people(voice, line.people)};
    std::vector<std::string> cells{drinks.names[i]};
    for (std::size_t rank = 0; rank < row.times.size(); ++rank) {
      row.readOuts.push_back(words::rankLine(voice, drinks.names[i], static_cast<int>(rank) + 1, row.times[rank], line.people));
      cells.push_back(words::whole(voice, row.times[rank]));
    }
    told.push_back(drinks.names[i] + ", " + row.rankSum);
    picture.table.rows.push_back(std::move(cells));
    picture.rows.push_back(std::move(row));
  }
  speak(picture, told);
  return {drawingOf(picture, figures::rankFigure)};
}

// Answers with a name each, from 1 up, as a strip a row.
figures::StripRow answerRow(const Voice& voice, const std::string& label, const std::vector<std::string>& names, const std::vector<int>& counts, const std::string& count) {
  figures::StripRow row{label, {}, {}, count};
  const int all = std::accumulate(counts.begin(), counts.end(), 0);
  for (std::size_t i = 0; i < names.size(); ++i) row.heaps.push_back({static_cast<double>(i + 1), counts[i], words::mentionLine(voice, label, names[i], counts[i], all)});
  return row;
}

figures::Scale answerScale(const std::vector<std::string>& names) { return {1, static_cast<double>(names.size()), names.front(), names.back(), {{2, names[1]}}}; }

std::vector<std::string> readOutsOf(const figures::StripPicture& picture) {
  std::vector<std::string> told;
  for (const figures::StripRow& row : picture.rows)
    for (const figures::Heap& heap : row.heaps) told.push_back(heap.readOut);
  return told;
}

Drawing behaviourDrawing(const Drinks& drinks, const insight::BehaviourLine& line) {
  const Voice& voice = drinks.voice;
  const words::CountPictureWords text = words::countPictureWords(voice, line);
  const auto names = words::answerWords(voice, ItemKind::behaviour);
  figures::StripPicture picture{text.title, answerScale(names), {}, {}, {text.headers, {}}};
  for (std::size_t i = 0; i < drinks.names.size(); ++i) {
    const int people = std::accumulate(line.counts[i].begin(), line.counts[i].end(), 0);
    picture.rows.push_back(answerRow(voice, drinks.names[i], names, line.counts[i], words::people(voice, people)));
    std::vector<std::string> cells{drinks.names[i]};
    for (int count : line.counts[i]) cells.push_back(words::whole(voice, count));
    picture.table.rows.push_back(std::move(cells));
  }
  speak(picture, readOutsOf(picture));
  return drawingOf(picture, figures::stripFigure);
}

Drawing sureDrawing(const Voice& voice, const insight::SheetSureLine& line, const std::string& label) {
  const words::CountPictureWords text = words::countPictureWords(voice, line);
  const auto names = words::answerWords(voice, ItemKind::sureness);
  figures::StripPicture picture{text.title, answerScale(names), {}, {}, {text.headers, {}}};
  picture.rows.push_back(answerRow(voice, label, names, line.counts, words::sheetsWord(voice, std::accumulate(line.counts.begin(), line.counts.end(), 0))));
  for (std::size_t i = 0; i < names.size(); ++i) picture.table.rows.push_back({names[i], words::whole(voice, line.counts[i])});
  speak(picture, readOutsOf(picture));
  return drawingOf(picture, figures::stripFigure);
}

Drawing splitDrawing(const Drinks& drinks, const insight::SplitLine& line) {
  const Voice& voice = drinks.voice;
  const words::CountPictureWords text = words::countPictureWords(voice, line);
  const words::Ends ends = words::splitEnds(voice);
  figures::SharesPicture picture{text.title, {}, ends.low, ends.high, {}, {text.headers, {}}};
  std::vector<std::string> told;
  for (std::size_t i = 0; i < line.points.size(); ++i) {
    const std::string value = words::splitWord(voice, line.points[i]);
    told.push_back(drinks.names[i] + ": " + value);
    picture.bars.push_back({drinks.names[i], std::clamp(line.points[i] / 5.0, 0.0, 1.0), value, told.back()});
    picture.table.rows.push_back({drinks.names[i], value});
  }
  speak(picture, told);
  return drawingOf(picture, figures::sharesFigure);
}

template <class Lines>
const auto* lineOf(const Lines& lines, Item item) {
  const auto found = std::ranges::find_if(lines, [item](const auto& line) { return line.item == item; });
  return found == lines.end() ? nullptr : &*found;
}

}  // namespace

std::vector<Drawing> countDrawings(const Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const words::OutSection& section) {
  Drinks drinks{voice, {}};
  for (Slot lot : findings.lots) drinks.names.push_back(words::capitalised(words::lotNamed(voice, plan, lot)));
  const insight::Counts& counts = findings.counts;
  if (findings.people == 0) return {};
  switch (section.about) {
    case words::About::right:
      if (const auto* line = lineOf(counts.right, section.item)) return {rightDrawing(drinks, *line)};
      break;
    case words::About::ticked: return tickedDrawings(drinks, counts.ticked);
    case words::About::ranked:
      if (const auto* line = lineOf(counts.ranked, section.item)) return rankedDrawings(drinks, *line);
      break;
    case words::About::behaviour:
      if (const auto* line = lineOf(counts.behaviour, section.item)) return {behaviourDrawing(drinks, *line)};
      break;
    case words::About::split:
      if (const auto* line = lineOf(counts.split, section.item)) return {splitDrawing(drinks, *line)};
      break;
    case words::About::said:
      if (const auto* line = lineOf(counts.said, section.item)) return saidDrawings(drinks, *line);
      break;
    case words::About::sure:
      if (const auto* line = lineOf(counts.sure, section.item)) return {sureDrawing(voice, *line, section.heading)};
      break;
    case words::About::points:
    case words::About::nothing: break;
  }
  return {};
}

}  // namespace oddglass::report
