#pragma once

#include "figures/ages.h"
#include "figures/gaps.h"
#include "figures/map.h"
#include "figures/means.h"
#include "figures/mentions.h"
#include "figures/sides.h"
#include "figures/strips.h"

#include <algorithm>
#include <functional>
#include <random>
#include <string>
#include <vector>

namespace oddglass::tests {

/// Invents inputs of every figure at random, within what the figures allow. The same seed gives the same inputs.
class Invented {
public:
  explicit Invented(unsigned seed) : m_random(seed) {}

  int whole(int from, int to) { return std::uniform_int_distribution<int>(from, to)(m_random); }
  double within(double from, double to) { return whole(0, 4) == 0 ? (whole(0, 1) ? from : to) : std::uniform_real_distribution<double>(from, to)(m_random); }
  bool coin() { return whole(0, 1) == 1; }

  /// Short and long words, one word of sixty letters, other scripts, and text that would break a page.
  std::string words() {
    static const std::vector<std::string> known{"sweet", "bitter, then dry", "hop aroma that stays in the nose for a long while after the glass is empty",
                                                "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", "Überschwänglichkeitswahrnehmungsschwellenüberschreitungsangst",
                                                "苦味が強い", "<script>alert(1)</script>", "\"/><x & y", "]]>", "\xFF\xFE broken", "it's"};
    return known[static_cast<std::size_t>(whole(0, static_cast<int>(known.size()) - 1))];
  }

  figures::Table table() {
    figures::Table made{{words(), words()}, {}};
    for (int i = whole(0, 5); i > 0; --i) made.rows.push_back({words(), words()});
    return made;
  }

  figures::GapPicture gaps(int rows);
  figures::MeanPicture means(int rows);
  figures::SidesPicture sides(int rows);
  figures::StripPicture strips(int rows);
  figures::RankPicture ranks(int rows);
  figures::MentionPicture mentions(int rows);
  figures::MapPicture map(int points);
  figures::AgePicture ages(int dots);

private:
  std::mt19937 m_random;
};

inline figures::GapPicture Invented::gaps(int rows) {
  figures::GapPicture made;
  made.title = words();
  made.scale = {-50, 50, words(), words(), {{25, words()}}};
  made.zeroName = words();
  made.limitName = words();
  made.rangeName = words();
  made.table = table();
  if (coin()) made.limit = within(1, 50);
  for (int i = 0; i < rows; ++i) {
    figures::GapRow row;
    row.label = words();
    row.gap = within(-50, 50);
    if (coin()) row.interval = figures::Span{*row.gap - within(0, 90), *row.gap + within(0, 90)};
    if (coin()) row.range = figures::Span{within(-50, 0), within(0, 50)};
    row.verdict = *row.gap < 0 ? figures::GapVerdict::less : *row.gap > 0 ? figures::GapVerdict::more : figures::GapVerdict::unclear;
    if (!made.limit && coin()) row.limit = within(1, 50);
    if (coin()) row.verdict = (made.limit || row.limit) && coin() ? figures::GapVerdict::within : figures::GapVerdict::unclear;
    if (whole(0, 9) == 0) row.gap.reset(), row.verdict = figures::GapVerdict::unclear;
    row.word = words();
    row.count = words();
    row.readOut = words();
    row.why = words();
    row.rangeReadOut = words();
    made.rows.push_back(row);
  }
  return made;
}

inline figures::MeanPicture Invented::means(int rows) {
  figures::MeanPicture made{words(), {1, 9, words(), words(), {{5, words()}}}, {}, words(), table()};
  for (int i = 0; i < rows; ++i) {
    figures::MeanRow row;
    row.label = words();
    row.mean = within(1, 9);
    if (coin()) row.interval = figures::Span{*row.mean - within(0, 9), *row.mean + within(0, 9)};
    if (coin()) row.word = words();
    row.count = words();
    row.readOut = words();
    row.why = words();
    if (whole(0, 3) == 0) row.twice = figures::Twice{within(1, 9), within(1, 9), words(), words(), words(), words()};
    made.rows.push_back(row);
  }
  return made;
}

inline figures::SidesPicture Invented::sides(int rows) {
  figures::SidesPicture made{words(), words(), words(), words(), {}, words(), table()};
  for (int i = 0; i < rows; ++i) made.rows.push_back({words(), {whole(0, 20), words()}, {whole(0, 20), words()}, {whole(0, 20), words()}, words()});
  return made;
}

inline figures::StripPicture Invented::strips(int rows) {
  figures::StripPicture made{words(), {0, 100, words(), words(), {{50, words()}}}, {}, words(), table()};
  for (int i = 0; i < rows; ++i) {
    figures::StripRow row{words(), {}, coin() ? words() : "", words()};
    for (int heap = whole(0, 15); heap > 0; --heap) row.heaps.push_back({coin() ? within(0, 100) : 10.0 * whole(0, 10), whole(0, 4), words()});
    made.rows.push_back(row);
  }
  return made;
}

inline figures::RankPicture Invented::ranks(int rows) {
  figures::RankPicture made{words(), words(), words(), {}, words(), table()};
  const int ranks = std::clamp(rows, 2, 12);
  for (int i = 0; i < rows; ++i) {
    figures::RankRow row{words(), {}, {}, words(), words()};
    for (int rank = 0; rank < ranks; ++rank) row.times.push_back(whole(0, 60 / ranks)), row.readOuts.push_back(words());
    made.rows.push_back(row);
  }
  return made;
}

inline figures::MentionPicture Invented::mentions(int rows) {
  figures::MentionPicture made{words(), {}, {}, words(), table()};
  for (int i = whole(1, 6); i > 0; --i) made.samples.push_back(words());
  for (int i = 0; i < rows; ++i) {
    figures::MentionRow row{words(), {}};
    for (std::size_t s = 0; s < made.samples.size(); ++s) {
      const int of = whole(0, 60), times = whole(0, of);
      row.mentions.push_back({times, of, std::to_string(times) + " of " + std::to_string(of), words()});
    }
    made.rows.push_back(row);
  }
  return made;
}

inline figures::MapPicture Invented::map(int points) {
  figures::MapPicture made;
  made.title = words();
  made.xName = words();
  made.yName = words();
  made.count = words();
  made.note = coin() ? words() : "";
  made.table = table();
  for (int i = 0; i < points; ++i) {
    figures::MapPoint point{words(), within(-3, 3), within(-1, 2), coin(), {}, words()};
    if (coin()) point.ellipse = figures::MapEllipse{within(0, 2), within(0, 1), within(-90, 90), words()};
    made.points.push_back(point);
  }
  return made;
}

inline figures::AgePicture Invented::ages(int dots) {
  figures::AgePicture made;
  made.title = words();
  made.scale = {-50, 50, words(), words(), {{-25, "-25"}, {0, words()}, {10, "10"}, {12, "12"}}};
  made.lastAge = within(1, 60);
  for (int i = 0; i < dots; ++i) {
    figures::AgeDot dot{within(0, made.lastAge), words(), within(-50, 50), {}, words()};
    if (coin()) dot.interval = figures::Span{dot.value - within(0, 90), dot.value + within(0, 90)};
    made.dots.push_back(dot);
  }
  if (dots >= 3 && coin()) made.line = std::pair(within(-80, 80), within(-80, 80));
  for (int i = whole(0, 5); i > 0; --i) made.notes.push_back({within(0, made.lastAge), std::string(1, static_cast<char>('a' + i)), words()});
  made.sentence = words();
  made.table = table();
  return made;
}

}  // namespace oddglass::tests
