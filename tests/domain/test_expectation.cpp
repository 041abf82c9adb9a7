// What an expectation of a score sheet is about.
#include "domain/expectation.h"

#include <catch2/catch.hpp>

using namespace oddglass;

namespace {

PlannedLot lot(int slot, Origin origin, LotRole role = LotRole::compared) {
  PlannedLot lot;
  lot.slot = {slot};
  lot.origin = origin;
  lot.role = role;
  return lot;
}

SheetItem question(ItemKind kind, const std::string& word = {}, bool isMain = false, Part part = Part::main) {
  SheetItem item;
  item.kind = kind;
  item.word = word;
  item.isMain = isMain;
  item.part = part;
  return item;
}

const std::vector<PlannedLot> lots{lot(1, Origin::reference), lot(2, Origin::batch), lot(3, Origin::batch), lot(4, Origin::reference, LotRole::reference)};

}  // namespace

TEST_CASE("the overall liking is expected about, else the first main question on a line") {
  const std::vector<SheetItem> both{question(ItemKind::line, "sweet", true), question(ItemKind::liking, "colour", false, Part::look), question(ItemKind::liking)};
  CHECK(expectedAbove(lots, std::nullopt, both) == ExpectedAbove{{3}, {2}, {4}});
  CHECK(expectedAbove(lots, std::nullopt, {question(ItemKind::line, "sour"), question(ItemKind::line, "sweet", true)}) == ExpectedAbove{{2}, {2}, {4}});
  CHECK_FALSE(expectedAbove(lots, std::nullopt, {question(ItemKind::line, "sour"), question(ItemKind::justRight, "sweet", true)}));
  CHECK_FALSE(expectedAbove(lots, std::nullopt, {question(ItemKind::distance, "", true)}));
}

TEST_CASE("it needs a batch of one's own and something to hold it against") {
  const std::vector<SheetItem> sheet{question(ItemKind::liking)};
  CHECK(expectedAbove({lot(1, Origin::batch), lot(2, Origin::batch, LotRole::reference)}, std::nullopt, sheet) == ExpectedAbove{{1}, {1}, {2}});
  CHECK_FALSE(expectedAbove({lot(1, Origin::reference), lot(2, Origin::reference, LotRole::reference)}, std::nullopt, sheet));
  CHECK_FALSE(expectedAbove({lot(1, Origin::batch), lot(2, Origin::reference)}, std::nullopt, sheet));
  CHECK_FALSE(expectedAbove({lot(1, Origin::batch, LotRole::control), lot(2, Origin::reference, LotRole::reference)}, std::nullopt, sheet));
  const std::vector<PlannedLot> two{lot(1, Origin::batch), lot(2, Origin::reference, LotRole::reference), lot(3, Origin::reference, LotRole::reference)};
  CHECK(expectedAbove(two, std::nullopt, sheet)->reference == Slot{2});
  CHECK(expectedAbove(two, Slot{3}, sheet)->reference == Slot{3});
}

TEST_CASE("a choice of cups can always be expected about; a sheet only with others at the table") {
  CHECK(mayExpect(Method::triangle, Claim::me, {}, std::nullopt, {}));
  CHECK(mayExpect(Method::preference, Claim::people, {}, std::nullopt, {}));
  const std::vector<SheetItem> sheet{question(ItemKind::liking)};
  CHECK(mayExpect(Method::sheet, Claim::table, lots, std::nullopt, sheet));
  CHECK_FALSE(mayExpect(Method::sheet, Claim::me, lots, std::nullopt, sheet));
  CHECK_FALSE(mayExpect(Method::sheet, Claim::people, lots, std::nullopt, {question(ItemKind::words)}));
}
