#include "stats/lean/lean.h"

#include "stats/cases.h"
#include "stats/error.h"
#include "stats/rows.h"

#include <cmath>

using namespace oddglass::stats;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

// Sources beside each case in people_and_time.json.
TEST_CASE("lean: published cases") {
  int looked = 0;
  for (const auto& c : checks::family("people_and_time")) {
    const auto& out = c["expected"];
    if (c["id"] == "bias_one_session") {
      ScoreRows answers;
      for (int t = 0; t < 6; ++t) {
        rows::add(answers, t, 0, c["inputs"]["own"][t].get<double>());
        rows::add(answers, t, 1, c["inputs"]["reference"][t].get<double>());
      }
      const MakerContrast found = makerContrast(ownMinusReference(answers, 0, 1), 0, 0.95, sizeOf(answers));
      CHECK_THAT(found.lean.estimate.value(), WithinAbs(out["estimate"].get<double>(), 1e-9));
      CHECK_THAT(found.lean.se.value(), WithinAbs(out["se"].get<double>(), 1e-9));
      CHECK_THAT(found.lean.df.value(), WithinAbs(out["df"].get<double>(), 0.0));
      CHECK_THAT(found.lean.low.value(), WithinAbs(out["low"].get<double>(), 1e-9));
      CHECK_THAT(found.lean.high.value(), WithinAbs(out["high"].get<double>(), 1e-9));
      CHECK_THAT(found.lean.pValue.value(), WithinAbs(out["p_value"].get<double>(), 1e-9));
      CHECK(found.friends == 5);
      REQUIRE(found.sessions.size() == 1);
      CHECK_THAT(found.sessions[0].lean.se.value(), WithinAbs(out["se"].get<double>(), 1e-9));
      ++looked;
    }
    if (c["id"] == "bias_no_spread") {
      std::vector<PersonDifference> differences;
      const auto& table = c["inputs"]["differences_person_x_session"];
      for (int person = 0; person < static_cast<int>(table.size()); ++person) differences.push_back({person, 0, table[person][0].get<double>()});
      const MakerContrast found = makerContrast(differences, c["inputs"]["brewer_row"], 0.95);
      CHECK_THAT(found.lean.estimate.value(), WithinAbs(out["estimate"].get<double>(), 1e-12));
      CHECK((out["se"].is_null() && out["low"].is_null() && out["high"].is_null() && out["p_value"].is_null()));
      CHECK_FALSE((found.lean.se || found.lean.low || found.lean.high || found.lean.pValue || found.lean.df));
      CHECK(found.lean.why == Reason::noSpread);
      checks::requireAllSeen(out, {"estimate", "se", "low", "high", "p_value", "why"});
      ++looked;
    }
  }
  CHECK(looked == 2);
}

// Hand-made: what follows from the definition.
TEST_CASE("a missing visit does not move the lean") {
  // Session 1 was kind to everybody by 3. A friend who came only then is not kinder for it.
  std::vector<PersonDifference> all, some;
  const double person[]{2.0, 0.5, -0.5, 1.0, 0.0};
  for (int p = 0; p < 5; ++p)
    for (int session = 0; session < 3; ++session) {
      const PersonDifference each{p, session, person[p] + (session == 1 ? 3.0 : 0.0)};
      all.push_back(each);
      if (!(p == 1 && session != 1) && !(p == 0 && session == 1)) some.push_back(each);
    }
  const MakerContrast full = makerContrast(all, 0, 0.95), holes = makerContrast(some, 0, 0.95);
  CHECK_THAT(full.lean.estimate.value(), WithinAbs(2.0 - 0.25, 1e-12));
  CHECK_THAT(holes.lean.estimate.value(), WithinAbs(*full.lean.estimate, 1e-12));
  CHECK_THAT(holes.lean.se.value(), WithinAbs(*full.lean.se, 1e-12));
  CHECK(*holes.lean.df == 3.0);
  CHECK(holes.sessions[1].lean.why == Reason::notGiven);
  CHECK_FALSE(holes.sessions[1].lean.estimate);
  // More sessions do not add degrees of freedom.
  CHECK(full.lean.df == full.sessions[0].lean.df);
}

TEST_CASE("who never sat with the maker is not compared") {
  std::vector<PersonDifference> differences;
  for (int p = 0; p < 4; ++p) differences.push_back({p, 0, 0.5 * p * p});
  differences.push_back({4, 1, 100.0});
  differences.push_back({5, 1, -100.0});
  const MakerContrast found = makerContrast(differences, 0, 0.95);
  CHECK(found.friends == 3);
  CHECK_THAT(found.lean.estimate.value(), WithinAbs(0.0 - (0.5 + 2.0 + 4.5) / 3.0, 1e-12));
}

TEST_CASE("too few friends, or no maker: no interval") {
  const MakerContrast two = makerContrast({{0, 0, 2.0}, {1, 0, 1.0}, {2, 0, 0.0}}, 0, 0.95);
  CHECK_THAT(two.lean.estimate.value(), WithinAbs(1.5, 1e-12));
  CHECK_FALSE(two.lean.se);
  CHECK(two.lean.why == Reason::fewTasters);
  const MakerContrast none = makerContrast({{0, 0, 2.0}}, 0, 0.95);
  CHECK_FALSE(none.lean.estimate);
  CHECK(none.lean.why == Reason::fewTasters);
  CHECK(makerContrast({{1, 0, 2.0}, {2, 0, 1.0}}, 0, 0.95).lean.why == Reason::notGiven);
  CHECK(makerContrast({}, 0, 0.95).lean.why == Reason::notGiven);
}

TEST_CASE("label: open minus blind of own minus reference") {
  ScoreRows answers;
  std::vector<bool> isOpen;
  const double blindOwn[]{6, 6, 5, 7, 6}, openOwn[]{9, 6, 6, 7, 5}, blindReference[]{5, 6, 6, 5, 6}, openReference[]{5, 7, 6, 5, 6};
  for (int t = 0; t < 5; ++t)
    for (int open = 0; open < 2; ++open) {
      rows::add(answers, t, 0, open ? openOwn[t] : blindOwn[t]), isOpen.push_back(open);
      rows::add(answers, t, 1, open ? openReference[t] : blindReference[t]), isOpen.push_back(open);
    }
  const auto differences = openMinusBlind(answers, isOpen, 0, 1);
  REQUIRE(differences.size() == 5);
  CHECK(differences[0].difference == 3.0);   // (9 - 5) - (6 - 5)
  CHECK(differences[1].difference == -1.0);  // (6 - 7) - (6 - 6)
  const MakerContrast found = makerContrast(differences, 0, 0.95);
  CHECK_THAT(found.lean.estimate.value(), WithinAbs(3.0 - (-1.0 + 1.0 + 0.0 - 1.0) / 4.0, 1e-12));
  // Who missed one of the four cups is left out.
  isOpen[0] = true;
  CHECK(openMinusBlind(answers, isOpen, 0, 1).size() == 4);
}

TEST_CASE("impossible differences are refused by name") {
  const auto refused = [](const std::vector<PersonDifference>& differences, int maker, double level, const char* argument) {
    try {
      makerContrast(differences, maker, level);
      FAIL("not refused");
    } catch (const BadInput& bad) {
      CHECK(bad.argument() == argument);
    }
  };
  refused({{0, 0, NAN}}, 0, 0.95, "differences");
  refused({{0, 0, 1.0}, {0, 0, 2.0}}, 0, 0.95, "differences");
  refused({{-1, 0, 1.0}}, 0, 0.95, "differences");
  refused({{0, 0, 1.0}}, -1, 0.95, "maker");
  refused({{0, 0, 1.0}, {1, 0, 2.0}, {2, 0, 4.0}, {3, 0, 4.0}}, 0, 0.0, "level");
  const ScoreRows answers = rows::ofTasters({{1, 2}, {3, 4}});
  CHECK_THROWS_AS(ownMinusReference(answers, 0, 0), BadInput);
  CHECK_THROWS_AS(ownMinusReference(answers, 2, 0), BadInput);
  CHECK_THROWS_AS(openMinusBlind(answers, {true}, 0, 1), BadInput);
}
