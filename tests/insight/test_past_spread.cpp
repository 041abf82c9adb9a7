#include "insight/past_spread.h"
#include "insight/sheet_table.h"
#include "stats/cases.h"

#include <cmath>

using namespace oddglass;
using namespace oddglass::insight;
using checks::Json;
using oddglass::testing::SheetTable;
using Catch::Matchers::WithinAbs;

namespace {

// Scores of products by assessors and repetitions, in tenths on a line to 100: one revealed sheet, a round for each repetition.
RevealedSession scoredBy(const Json& scores) {
  SheetTable table(static_cast<int>(scores.size()));
  const Item item = table.ask(ItemKind::line, "sweet");
  for (std::size_t lot = 0; lot < scores.size(); ++lot)
    for (std::size_t person = 0; person < scores[lot].size(); ++person)
      for (std::size_t round = 0; round < scores[lot][person].size(); ++round)
        table.say(static_cast<int>(person) + 1, item, static_cast<int>(lot) + 1, static_cast<int>(std::lround(10.0 * scores[lot][person][round].get<double>())), static_cast<int>(round) + 1);
  return table.session;
}

}  // namespace

// Two-way mixed analysis of variance of constructed scores: components from the mean squares of interaction and repetition (Scheffe 1959, chapter 8).
TEST_CASE("the spread of past tables is that of the analysis of variance") {
  const Json each = checks::caseOf("anova", "aov_constructed_1");
  INFO(each.at("source"));
  const RevealedSession table = scoredBy(each.at("inputs").at("scores_product_x_assessor_x_rep"));
  const auto& df = each.at("expected").at("df");
  const auto& ss = each.at("expected").at("ss");
  const double interaction = ss[2].get<double>() / df[2].get<double>(), repeat = ss[3].get<double>() / df[3].get<double>();
  const auto found = pastSpreadOf({table, table});
  REQUIRE(found);
  CHECK(found->tables == 2);
  CHECK(found->hasRepeats);
  CHECK_THAT(found->repeat, WithinAbs(std::sqrt(repeat) / 10.0, 1e-9));                          // a tenth of a line is one point of the scores
  CHECK_THAT(found->interaction, WithinAbs(std::sqrt((interaction - repeat) / 2.0) / 10.0, 1e-9));  // two repetitions
}

TEST_CASE("an interaction below zero is none") {
  const Json each = checks::caseOf("anova", "aov_constructed_0");
  const auto found = pastSpreadOf(std::vector<RevealedSession>(2, scoredBy(each.at("inputs").at("scores_product_x_assessor_x_rep"))));
  REQUIRE(found);
  CHECK(found->interaction == 0.0);
  CHECK_THAT(found->repeat, WithinAbs(std::sqrt(each.at("expected").at("ss")[3].get<double>() / 12.0) / 10.0, 1e-9));
}

TEST_CASE("where nothing was answered twice the variance is shared between the two") {
  const Json each = checks::caseOf("anova", "aov_constructed_2");
  const auto found = pastSpreadOf(std::vector<RevealedSession>(2, scoredBy(each.at("inputs").at("scores_product_x_assessor_x_rep"))));
  REQUIRE(found);
  CHECK_FALSE(found->hasRepeats);
  const double left = each.at("expected").at("ss")[2].get<double>() / 14.0 / 100.0;
  CHECK_THAT(found->interaction * found->interaction + found->repeat * found->repeat, WithinAbs(left, 1e-9));
  CHECK(found->interaction == found->repeat);
}

TEST_CASE("one table, a small one, or one without any spread says nothing of the next") {
  const RevealedSession table = scoredBy(checks::caseOf("anova", "aov_constructed_1").at("inputs").at("scores_product_x_assessor_x_rep"));
  CHECK_FALSE(pastSpreadOf({}));
  CHECK_FALSE(pastSpreadOf({table}));
  SheetTable small(2), flat(4);
  const Item one = small.ask(ItemKind::liking), other = flat.ask(ItemKind::liking);
  for (int place = 1; place <= 6; ++place) {
    for (int lot = 1; lot <= 2; ++lot) small.say(place, one, lot, 4 + (place * lot) % 3);
    for (int lot = 1; lot <= 4; ++lot) flat.say(place, other, lot, 5);
  }
  CHECK_FALSE(pastSpreadOf({small.session, small.session}));  // twice 5 degrees of freedom
  CHECK_FALSE(pastSpreadOf({flat.session, flat.session}));
}
