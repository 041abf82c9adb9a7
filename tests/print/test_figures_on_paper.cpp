#include "figures/interval.h"
#include "figures/invented.h"
#include "figures/shares.h"
#include "print/figure_pages.h"
#include "print/paint_figure.h"
#include "print/read_back.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

/// One of each, with many rows.
std::vector<figures::Figure> everyFigure(unsigned seed) {
  tests::Invented made(seed);
  const auto measure = print::figureMeasure();
  const double width = print::figureWidth;
  std::vector<figures::Figure> all{figures::gapFigure(made.gaps(9), width, measure),   figures::meanFigure(made.means(9), width, measure), figures::sidesFigure(made.sides(9), width, measure),
                                   figures::stripFigure(made.strips(9), width, measure), figures::rankFigure(made.ranks(5), width, measure), figures::mentionFigure(made.mentions(9), width, measure),
                                   figures::mapFigure(made.map(6), width, measure)};
  figures::IntervalPicture interval;
  interval.low = 0.1;
  interval.high = 0.7;
  interval.point = 0.4;
  interval.limit = 0.3;
  interval.title = made.words();
  interval.none = "none", interval.half = "half", interval.all = "all", interval.range = "range", interval.limitLabel = "limit", interval.sentence = "sentence";
  interval.table = made.table();
  all.push_back(figures::intervalFigure(interval, width, measure));
  figures::SharesPicture shares;
  shares.title = made.words();
  for (int i = 0; i < 5; ++i) shares.bars.push_back({made.words(), 0.2 * i, "value", "read out"});
  shares.nothing = "never", shares.always = "always", shares.sentence = "sentence";
  shares.table = made.table();
  all.push_back(figures::sharesFigure(shares, width, measure));
  return all;
}

}  // namespace

TEST_CASE("every figure is on paper as vectors, with all its words and the table behind it") {
  for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter})
    for (unsigned seed = 1; seed <= 3; ++seed) {
      const std::vector<figures::Figure> all = everyFigure(seed);
      const bool isA4 = size == print::PaperSize::a4;
      const Paper read("figures_" + std::to_string(seed) + (isA4 ? "_a4" : "_letter"), print::pdf(size, {"figures", "figures", {}}, [&](print::Pages& pages) {
        for (const figures::Figure& figure : all) print::figureAndTable(pages, figure, "the table behind it");
      }));
      const std::string text = squeezed(read.text());
      for (const figures::Figure& figure : all) {
        for (const figures::Mark& mark : figure.marks)
          if (const auto* words = std::get_if<figures::Text>(&mark.shape); words && std::ranges::all_of(words->text, [](char c) { return static_cast<unsigned char>(c) < 0x80; })) {
            INFO(figure.title << ": " << words->text);
            CHECK(text.find(squeezed(words->text)) != std::string::npos);
          }
        for (const auto& row : figure.table.rows)
          for (const std::string& cell : row)
            if (std::ranges::all_of(cell, [](char c) { return static_cast<unsigned char>(c) < 0x80; })) CHECK(text.find(squeezed(cell)) != std::string::npos);
      }
      // Two lines of heads and nothing below: no picture made of dots.
      CHECK(timesIn(read.images(), "\n") <= 2);
      CHECK(beyond(read, isA4 ? 595.3 : 612, isA4 ? 841.9 : 792, 45) == "");
    }
}
