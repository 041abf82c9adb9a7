// With the orders as the only thing that changes (the codes stay), no dot of any sheet for the table changes. Masked: the seal mark.
#include "blinding/stream.h"
#include "print/run_pages.h"
#include "print/table_evening.h"
#include "print/table_pages.h"
#include "session/seal.h"

using namespace oddglass;
using namespace oddglass::testing;

namespace {

/// What an order was drawn, and the paper of its table.
struct Drawn {
  std::vector<int> key;
  tasting::TablePaper paper;
};

Drawn drawn(unsigned char orders, Method method) {
  Evening evening(2, 1, 4);
  Draft draft = session::draft(*evening.store, evening.session);
  draft.method = method;
  draft.methodChosen = true;
  if (method == Method::sheet) {
    draft.question = Question::lacks;
    draft.sheet.items = {asked(ItemKind::line, "sweet"), asked(ItemKind::liking)};
    draft.sheet.hasDuplicate = true;
  }
  session::saveDraft(*evening.store, evening.clock, draft);
  blinding::Seed seed{}, other{};
  seed.fill(7);
  other.fill(orders);
  session::sealDrawnFrom(*evening.store, evening.clock, evening.chance, evening.session, seed,
                         {blinding::Stream(other, blinding::StreamName::orders), blinding::Stream(seed, blinding::StreamName::codes)});
  Drawn made{{}, tasting::tablePaper(*evening.store, evening.session)};
  for (const session::PourLine& line : session::openPourSheet(*evening.store, evening.clock, evening.session).placeByPlace) made.key.push_back(line.slot.value);
  made.paper.sealMark = "kapo rilu 7";
  return made;
}

}  // namespace

TEST_CASE("two keys under the same codes print the same dots on everything for the table") {
  for (const Method method : {Method::triangle, Method::duoTrio, Method::sheet})
    for (const print::PaperSize size : {print::PaperSize::a4, print::PaperSize::letter}) {
      const Drawn one = drawn(1, method), two = drawn(2, method);
      REQUIRE(one.key != two.key);
      const auto dots = [&](const char* name, const Drawn& from, auto&& bytes) { return Paper(std::string("blind_") + name, bytes(from.paper)).dots(); };
      const auto alike = [&](const char* name, auto&& bytes) {
        INFO(name);
        const std::string first = dots(name, one, bytes);
        REQUIRE(first.size() > 10'000);
        CHECK(first == dots(name, two, bytes));
      };
      alike("labels", [&](const tasting::TablePaper& paper) { return print::labelsPdf({}, paper, size); });
      alike("mats", [&](const tasting::TablePaper& paper) { return print::matsPdf({}, paper, size); });
      alike("answers", [&](const tasting::TablePaper& paper) { return print::answerSheetsPdf({}, paper, size); });
      alike("blank", [&](const tasting::TablePaper& paper) { return print::answerSheetsPdf({}, paper, size, true); });
      alike("run", [&](const tasting::TablePaper& paper) { return print::runPdf({}, paper, size); });
    }
}

TEST_CASE("the same comparison sees a leak that is planted") {
  const Drawn one = drawn(1, Method::triangle);
  tasting::TablePaper leaking = one.paper;
  std::swap(leaking.places[0].flights[0].cups[0].code, leaking.places[0].flights[0].cups[1].code);
  CHECK(Paper("leak_not", print::matsPdf({}, one.paper, print::PaperSize::a4)).dots() != Paper("leak", print::matsPdf({}, leaking, print::PaperSize::a4)).dots());
}
