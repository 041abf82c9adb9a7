// `card`: for those who ask, shown to them first.
#include "cli/ran.h"
#include "own_evenings.h"

using namespace oddglass;
using testing::requireRefused;
using testing::Terminal;
using Catch::Matchers::WithinAbs;

namespace {

struct Table : Terminal {
  testing::OwnEvenings evenings{4};

  void tell(int count) {
    for (int evening = 0; evening < count; ++evening)
      evenings.tell([evening](int place) { return std::pair{4 + (place + evening) % 4, 5 - (place * evening) % 3}; });
  }
  void leave() {
    clock.set(evenings.clock.now());
    store = evenings.store->file().string();
    evenings.store.reset();
  }
};

}  // namespace

TEST_CASE("a card is shown to nobody before its person has seen it and says so") {
  Table run;
  run.tell(3);
  run.leave();
  const auto card = [&](const std::string& more = {}) { return run.json("card" + more, {"Friend A"}); };
  CHECK(card().at("asked_at").is_null());
  CHECK(card().at("card").is_null());
  requireRefused(run, "card --show", "Friend A", {"Friend A"});
  CHECK(card(" --ask").at("asked_at").is_number());
  CHECK(card().at("card").is_null());
  CHECK(card().at("why") == "it is shown to them first");
  CHECK(run("card", {"Friend A"}).out.find("It is shown to them first") != std::string::npos);

  const cli::Json shown = card(" --show").at("card");
  CHECK(shown.at("sheets") == 3);
  CHECK(shown.at("level").at("raw").is_number());
  CHECK(shown.at("level").at("shrunk").is_number());
  CHECK(run("card --show", {"Friend A"}).out.starts_with("This is for Friend A. Others look away."));
  CHECK(card().at("card").is_null());  // seen, but not let be seen

  CHECK(card(" --let-be-seen").at("shown_at").is_number());
  CHECK(card().at("card").at("sessions") == 3);
  CHECK(card(" --take-back").at("asked_at").is_null());
  CHECK(card().at("card").is_null());
}

TEST_CASE("what was opened after a card was let be seen is not on it for others") {
  Table run;
  run.tell(3);
  const auto file = run.evenings.store->file();
  run.leave();
  run.json("card --ask --let-be-seen", {"Friend B"});
  run.evenings.store = store::Store::open(file, store::Access::write, run.evenings.clock, run.evenings.chance);
  run.evenings.clock.set(run.clock.now() + 86'400'000);
  run.tell(1);
  run.leave();
  CHECK(run.json("card", {"Friend B"}).at("card").at("sessions") == 3);
  CHECK(run.json("card --show", {"Friend B"}).at("card").at("sessions") == 4);
}

TEST_CASE("a card of too few sessions says so; nobody by that name is refused") {
  Table run;
  run.tell(2);
  run.leave();
  const cli::Json card = run.json("card --ask --show", {"Friend C"}).at("card");
  CHECK(card.at("sessions") == 2);
  CHECK(card.at("why").is_string());
  CHECK_FALSE(card.contains("level"));
  requireRefused(run, "card", "Nobody here", {"Nobody here"});
}
