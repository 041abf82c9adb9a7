// `notices` and `better`: what people have shown to notice, from opened sessions with a known difference.
#include "cli/ran.h"
#include "known_evenings.h"

using namespace oddglass;
using testing::KnownEvenings;
using testing::requireRefused;
using testing::Terminal;
using Catch::Matchers::WithinAbs;

namespace {

struct Noticing : Terminal {
  KnownEvenings evenings;

  void leave() {
    store = evenings.store->file().string();
    evenings.store.reset();
  }
};

}  // namespace

TEST_CASE("notices counts people without naming them, and says which words of a plan nobody there notices") {
  Noticing run;
  for (int i = 0; i < 2; ++i) run.evenings.tell(KnownEvenings::right({{2, 1}, {3, 1}}), {{4, ShownAs::loose}});
  Draft next = session::draft(*run.evenings.store, session::newDraft(*run.evenings.store, run.evenings.clock, run.evenings.chance, "Next"));
  next.question = Question::lacks;
  next.method = Method::sheet;
  next.lots = {run.evenings.mine, run.evenings.bought};
  next.tasters = run.evenings.friends;
  for (const char* word : {"diacetyl", "mousy"}) {
    SheetItem item;
    item.kind = ItemKind::check;
    item.word = word;
    next.sheet.items.push_back(item);
  }
  session::saveDraft(*run.evenings.store, run.evenings.clock, next);
  run.leave();
  const cli::Json all = run.json("notices");
  REQUIRE(all.at("words").size() == 1);
  CHECK(all.at("words").at(0) == cli::Json{{"word", "butter"}, {"people", 4}, {"known", 2}});  // one friend and the maker: 6 of 6 is 1/64
  CHECK(all.at("unnoticed").is_null());
  const cli::Json table = run.json("notices --session " + next.id.text.substr(0, 6));
  CHECK(table.at("words").at(0).at("people") == 3);
  CHECK(table.at("unnoticed") == cli::Json{"mousy"});  // diacetyl is another name of butter
  const std::string readable = run("notices --session " + next.id.text.substr(0, 6)).out;
  CHECK(readable.find("Nobody here is known to notice “mousy”.") != std::string::npos);
  CHECK(readable.find("Friend") == std::string::npos);
}

TEST_CASE("better is for the brewer: counts, chance and change") {
  Noticing run;
  for (int i = 0; i < 3; ++i) run.evenings.tell(KnownEvenings::right({{5, i + 1}}));
  run.leave();
  const cli::Json better = run.json("better");
  CHECK(better.at("name") == "Wenna Tarn");
  const cli::Json& word = better.at("words").at(0);
  CHECK(word.at("right") == 6);
  CHECK(word.at("trials") == 9);
  // 130 of 512 by counting: C(9,6) + C(9,7) + C(9,8) + C(9,9).
  CHECK_THAT(word.at("p_value").get<double>(), WithinAbs(130.0 / 512, 1e-12));
  CHECK(word.at("known") == false);
  CHECK(word.at("change").at("earlier_right") == 1);
  CHECK(word.at("change").at("later_right") == 5);
  CHECK(word.at("change").at("later_trials") == 6);
  CHECK(run("better").out.find("Getting better at “butter”? No change shown: 1 of 3 right in the earlier tastings, 5 of 6 in the later ones.") != std::string::npos);
}

TEST_CASE("without a brewer or without a known difference nothing is said, and why") {
  Terminal empty;
  empty.json("put", {empty.write("shelf.json", R"({"format":"oddglass","version":1,"tasters":[{"id":"a1000000000000000000000000000001","name":"Odo"}]})")});
  requireRefused(empty, "better", "brewer");
  CHECK(empty.json("notices").at("words").empty());
  Noticing run;
  run.leave();
  const cli::Json better = run.json("better");
  CHECK(better.at("words").empty());
  CHECK(better.at("why").is_string());
}
