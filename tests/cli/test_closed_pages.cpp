// A series by commands between two stores, and the report of a look while another one is sealed.
#include "aging_evenings.h"
#include "cli/ran.h"

using namespace oddglass;
using namespace oddglass::testing;
using oddglass::cli::Json;

namespace {

struct SealedSecond : Terminal {
  AgingEvenings evening;
  SessionId first;

  SealedSecond() {
    evening.hold(1, 1765200000000, [](int, int, const SheetItem& item, Slot, int) -> Said { return {item.kind == ItemKind::check ? 0 : 5}; });
    first = evening.session;
    evening.clock.set(1765200000000 + 78 * dayLong);
    evening.planned(2);
    evening.sealAndSit();
    clock.set(evening.clock.now());
    store = evening.store->file().string();
    evening.store.reset();
  }
};

}  // namespace

TEST_CASE("the report of a look is closed while another is sealed, and opened all the same it is written down") {
  SealedSecond run;
  const std::string file = (run.folder / "first.json").string();
  requireRefused(run, "report " + run.first.text.substr(0, 8) + " --out", "Heather mead grows old", {file});
  CHECK_FALSE(std::filesystem::exists(file));
  run.json("report " + run.first.text.substr(0, 8) + " --open-anyway --out", {file});
  CHECK(std::filesystem::exists(file));
  const std::string series = (run.folder / "series.html").string();
  requireRefused(run, "report " + run.evening.series.text + " --out", "Heather mead grows old", {series});
  CHECK_FALSE(std::filesystem::exists(series));
  run.json("report " + run.evening.series.text + " --open-anyway --out", {series});
  CHECK(std::filesystem::exists(series));
  const auto store = store::Store::open(run.store, store::Access::read, run.clock, run.chance);
  CHECK(session::sittingsNow(*store, run.evening.series)[1].timesSeen == 2);
}

TEST_CASE("a series is taken in with its sessions and counted") {
  SealedSecond run;
  const std::string out = (run.folder / "out").string();
  run.json("export --all --as json --out", {out});
  std::string file;
  for (const auto& each : std::filesystem::directory_iterator(out)) file = each.path().string();
  Terminal other;
  const Json brought = other.json("import", {file});
  CHECK(brought.at("series") == 1);
  CHECK(other.json("series").at("series").size() == 1);
}
