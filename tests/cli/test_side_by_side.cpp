#include "cli/ran.h"
#include "recipe_evenings.h"
#include "store/store.h"

using namespace oddglass::testing;
using oddglass::cli::Json;
using Catch::Matchers::Contains;

namespace {

constexpr oddglass::Millis day = 86'400'000, december = 1765200000000;

/// Two evenings of three batches: the first two poured together, the third beside nothing they had.
struct BesideNights : Terminal {
  RecipeEvenings evening;

  BesideNights() {
    evening.changed(1, "2025-05-01", "another yeast");
    evening.changed(1, "2025-05-02", "less honey");
    const std::vector<oddglass::SheetItem> sheet{asked(oddglass::ItemKind::line, "honey"), asked(oddglass::ItemKind::check, "butter")};
    evening.hold(december, {evening.lots[0], evening.lots[1]}, sheet, [](int place, int, const oddglass::SheetItem& item, oddglass::Slot slot, int) -> Said {
      if (item.kind == oddglass::ItemKind::check) return {slot == oddglass::Slot{2} && place == 1 ? 1 : 0};
      return {slot == oddglass::Slot{2} ? 50 + place % 2 : 30};
    });
    evening.hold(december + 30 * day, {evening.lots[2], evening.bought}, sheet, [](int place, int, const oddglass::SheetItem& item, oddglass::Slot, int) -> Said {
      return {item.kind == oddglass::ItemKind::check ? 0 : 40 + place};
    });
    evening.store.reset();
    store = (evening.folder / "cellar.oddglass").string();
  }
};

}  // namespace

TEST_CASE("batches of a recipe are compared where they were poured together, and nowhere else") {
  BesideNights run;
  CHECK(run.json("side-by-side").at("recipes") == Json::array({{{"recipe", "Hedge mead"}, {"batches", 3}}}));
  const Json found = run.json("side-by-side", {"hedge mead"});
  REQUIRE(found.at("batches").size() == 3);
  CHECK(found.at("batches")[1].at("changed").size() == 2);
  REQUIRE(found.at("steps").size() == 2);
  const Json& together = found.at("steps")[0];
  CHECK(together.at("link") == "together");
  CHECK(together.at("changed") == 2);
  REQUIRE(together.at("questions").size() == 1);
  // Six people: 20 or 21 points apart, half and half; by Student's paired t over people the mean is 20.5 and the error sqrt(0.3 / 6).
  CHECK(together.at("questions")[0].at("difference").at("estimate").get<double>() == 20.5);
  CHECK(together.at("questions")[0].at("verdict") == "more");
  CHECK(found.at("steps")[1].at("link") == "none");
  CHECK(found.at("steps")[1].at("why") == "never poured together, nor beside a shared bottle");
  CHECK(found.at("mentions")[0].at("counts")[1].at("ticked") == 1);
  CHECK(found.at("mentions")[0].at("counts")[1].at("asked") == 6);

  const Ran said = run("side-by-side", {"Hedge mead"});
  CHECK_THAT(said.out, Contains("Two things changed together. This cannot say which did it."));
  CHECK_THAT(said.out, Contains("not comparable"));
  const Json good = run.json("side-by-side --good", {"Hedge mead 2", "Hedge mead"});
  CHECK(good.at("good") == 1);
  CHECK(good.at("steps")[0].at("questions")[0].at("verdict") == "less");
  CHECK(run.json("side-by-side", {"Hedge mead 1", "Hedge mead 3"}).at("steps")[0].at("link") == "none");
}

TEST_CASE("a tasting that links the batches is planned with their questions, and unknown names are refused") {
  BesideNights run;
  const Json planned = run.json("side-by-side --plan", {"Hedge mead"});
  CHECK(planned.at("planned").is_string());
  const Ran nobody = run("side-by-side", {"Nothing brewed"});
  CHECK(nobody.status == 2);
  CHECK(nobody.linesOfError() == 1);
  CHECK(run("side-by-side --good", {"Bought mead", "Hedge mead"}).status == 2);
}

TEST_CASE("the reference book says what is left of a bought drink and where it was poured") {
  BesideNights run;
  const Json book = run.json("references");
  REQUIRE(book.at("references").size() == 1);
  const Json& bought = book.at("references")[0];
  CHECK(bought.at("name") == "Bought mead");
  REQUIRE(bought.at("lots").size() == 1);
  CHECK(bought.at("lots")[0].at("poured").size() == 1);
  CHECK(bought.at("lots")[0].at("last_bottle") == false);
  CHECK(bought.at("lots")[0].at("age_months").is_null());
  CHECK(bought.at("range").empty());
  CHECK(bought.at("why") == "no two of its lots were scored in one session");
  CHECK_THAT(run("references").out, Contains("One lot gives no range"));
}
