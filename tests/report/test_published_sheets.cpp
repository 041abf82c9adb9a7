#include "insight/sheet_table.h"
#include "report/sheet_report.h"
#include "stats/cases.h"
#include "stats/open_table.h"

#include <cmath>

using namespace oddglass;
using checks::Json;
using oddglass::testing::SheetTable;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Published and open data as revealed score sheets: what the report says of them, not only what the statistics below it say.

namespace {

Json foundOf(SheetTable& table) {
  table.session.commitmentHolds = true;
  return Json::parse(report::jsonOf(words::Voice{}, table.session, report::For::maker)).at("findings");
}

double numberAt(const Json& value) { return value.get<double>(); }

}  // namespace

TEST_CASE("drops and penalties of just about right") {
  int looked = 0;
  for (const Json& each : checks::family("jar_penalty")) {
    const std::string id = each.at("id");
    if (id != "jar_a" && id != "jar_c" && id != "jar_g") continue;
    INFO(id << ": " << each.at("source"));
    SheetTable table(1);
    const Item right = table.ask(ItemKind::justRight, "bitter"), liking = table.ask(ItemKind::liking);
    const Json& categories = each.at("inputs").at("jar_1to5_3_is_right");
    for (std::size_t i = 0; i < categories.size(); ++i) {
      table.say(static_cast<int>(i) + 1, right, 1, categories[i].get<int>());
      table.say(static_cast<int>(i) + 1, liking, 1, static_cast<int>(each.at("inputs").at("liking")[i].get<double>()));
    }
    const Json lot = foundOf(table).at("counts").at("just_right").at(0).at("lots").at(0);
    const Json& out = each.at("expected");
    CHECK_THAT(numberAt(lot.at("little").at("drop")), WithinAbs(numberAt(out.at("drop_low")), 1e-9));
    if (out.at("drop_high").is_number()) CHECK_THAT(numberAt(lot.at("much").at("drop")), WithinAbs(numberAt(out.at("drop_high")), 1e-9));
    CHECK_THAT(100.0 * numberAt(lot.at("right")) / numberAt(lot.at("people")), WithinAbs(numberAt(out.at("pct_jar")), 1e-9));
    if (out.contains("total_penalty_low")) CHECK_THAT(numberAt(lot.at("little").at("penalty")), WithinAbs(numberAt(out.at("total_penalty_low")), 1e-9));
    ++looked;
  }
  CHECK(looked == 3);
}

// Conover's games and predictors and a constructed table; Cochran 1950.
TEST_CASE("words that apply, by Cochran's Q") {
  for (const char* id : {"cochran_conover_nag", "cochran_1"}) {
    const Json each = checks::caseOf("cata", id);
    INFO(id << ": " << each.at("source"));
    const Json& data = each.at("inputs").at("data");
    SheetTable table(static_cast<int>(data.at(0).size()));
    const Item item = table.ask(ItemKind::check, "hay");
    for (std::size_t person = 0; person < data.size(); ++person)
      for (std::size_t lot = 0; lot < data[person].size(); ++lot) table.say(static_cast<int>(person) + 1, item, static_cast<int>(lot) + 1, data[person][lot].get<int>());
    const Json line = foundOf(table).at("counts").at("ticked").at(0);
    CHECK_THAT(numberAt(line.at("p_holm")), WithinAbs(numberAt(each.at("expected").at("p_exact_permutation")), 1e-9));
  }
}

// Four brands ranked by eleven assessors, a worked exercise; and the exact distribution of Friedman's statistic, k = 3 and n = 6, at 7: 0.028935 (Friedman 1937).
TEST_CASE("ranks: sums, Kendall's W and the exact p") {
  const Json brands = checks::caseOf("ranking", "friedman_brands4x11");
  INFO(brands.at("source"));
  SheetTable table(4);
  const Item item = table.ask(ItemKind::rank);
  const Json& rows = brands.at("inputs").at("data_rows_are_assessors");
  for (std::size_t person = 0; person < rows.size(); ++person)
    for (std::size_t lot = 0; lot < 4; ++lot) table.say(static_cast<int>(person) + 1, item, static_cast<int>(lot) + 1, rows[person][lot].get<int>());
  const Json line = foundOf(table).at("counts").at("ranked").at(0);
  CHECK(line.at("rank_sums") == brands.at("expected").at("rank_sums"));
  CHECK_THAT(numberAt(line.at("kendall_w")), WithinAbs(numberAt(brands.at("expected").at("W")), 1e-9));

  SheetTable six(3);
  const Item rank = six.ask(ItemKind::rank);
  constexpr int given[6][3] = {{1, 2, 3}, {1, 2, 3}, {1, 2, 3}, {1, 3, 2}, {2, 1, 3}, {1, 3, 2}};  // sums 7, 13, 16: the statistic is 7
  for (int person = 0; person < 6; ++person)
    for (int lot = 0; lot < 3; ++lot) six.say(person + 1, rank, lot + 1, given[person][lot]);
  CHECK_THAT(numberAt(foundOf(six).at("counts").at("ranked").at(0).at("p_value")), WithinAbs(0.028935185185185185, 1e-12));
}

// Randall 1989, Biometrical Journal 31:781: bitterness of four wines, two bottles each, by nine judges. Means and intervals by t.test of R 4.2.2 over the judges,
// whose two bottles are averaged; the pair by t.test(paired = TRUE).
TEST_CASE("bitterness of wines: means, and one wine held against another") {
  const auto wine = open_data::Table("wine_bitterness");
  const auto response = wine.numbers("response");
  const auto judge = wine.numbers("judge"), bottle = wine.numbers("bottle");
  // Bottles 1 and 2 cold without contact, 3 and 4 cold with, 5 and 6 warm without, 7 and 8 warm with.
  const auto fill = [&](SheetTable& table, Item item, const std::vector<int>& lots) {
    for (std::size_t i = 0; i < response.size(); ++i) {
      const int kind = (static_cast<int>(bottle[i]) + 1) / 2;
      const auto found = std::ranges::find(lots, kind);
      if (found != lots.end())
        table.say(static_cast<int>(judge[i]), item, static_cast<int>(found - lots.begin()) + 1, static_cast<int>(response[i]), static_cast<int>(bottle[i] - 1) % 2 + 1);
    }
  };
  SheetTable all(4);
  fill(all, all.ask(ItemKind::line, "bitter"), {1, 2, 3, 4});
  const Json lots = foundOf(all).at("points").at(0).at("lots");
  constexpr double published[4][3] = {{31.0555555555556, 23.1873912815210, 38.9237198295901}, {40.5555555555556, 33.5514846473709, 47.5596264637402},
                                      {50.0, 38.519729801844, 61.480270198156}, {67.2777777777778, 56.0132643998099, 78.5422911557456}};
  for (std::size_t lot = 0; lot < 4; ++lot) {
    CHECK(lots[lot].at("people") == 9);
    CHECK_THAT(numberAt(lots[lot].at("mean")), WithinAbs(published[lot][0], 1e-9));
    CHECK_THAT(numberAt(lots[lot].at("low")), WithinAbs(published[lot][1], 1e-9));
    CHECK_THAT(numberAt(lots[lot].at("high")), WithinAbs(published[lot][2], 1e-9));
  }
  SheetTable two(2, {LotRole::compared, LotRole::reference});
  fill(two, two.ask(ItemKind::line, "bitter", std::nullopt, true), {4, 1});
  const Json gap = foundOf(two).at("points").at(0).at("gaps").at(0);
  CHECK_THAT(numberAt(gap.at("difference")), WithinAbs(36.2222222222222, 1e-9));
  CHECK_THAT(numberAt(gap.at("low")), WithinAbs(25.8735137151247, 1e-9));
  CHECK_THAT(numberAt(gap.at("high")), WithinAbs(46.5709307293198, 1e-9));
  CHECK_THAT(numberAt(gap.at("p_adjusted")), WithinRel(4.09602572089839e-05, 1e-9));
  CHECK(gap.at("verdict") == "more");
}

// Anderson 1935 and Fisher 1936, in tenths, as if one person had put 150 flowers on four lines; R's prcomp.
TEST_CASE("components of an open table") {
  const Json each = checks::caseOf("profile", "pca_iris_cov");
  INFO(each.at("source"));
  const auto iris = open_data::Table("iris");
  SheetTable table(150);
  for (const char* column : {"Sepal.Length", "Sepal.Width", "Petal.Length", "Petal.Width"}) {
    const Item item = table.ask(ItemKind::line, column);
    const auto values = iris.numbers(column);
    for (std::size_t i = 0; i < values.size(); ++i) table.say(1, item, static_cast<int>(i) + 1, static_cast<int>(std::lround(10.0 * values[i])));
  }
  const Json map = foundOf(table).at("components");
  const Json& eigenvalues = each.at("expected").at("eigenvalues");
  double sum = 0.0;
  for (const Json& value : eigenvalues) sum += value.get<double>();
  REQUIRE(map.at("share").size() == 4);
  for (std::size_t axis = 0; axis < 4; ++axis) CHECK_THAT(numberAt(map.at("share")[axis]), WithinAbs(eigenvalues[axis].get<double>() / sum, 1e-9));
  double squares = 0.0;
  for (const Json& lot : map.at("lots")) squares += std::pow(lot.at("at")[0].get<double>(), 2);
  CHECK_THAT(squares / 149.0 / 100.0, WithinRel(eigenvalues[0].get<double>(), 1e-9));
}
