#include "words/denials.h"
#include "words/references.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace oddglass::words;
using Catch::Matchers::Contains;

namespace {

struct Book {
  std::vector<Reference> references{1};
  std::vector<insight::ReferenceFindings> found{1};

  Book() {
    Reference& bought = references[0];
    bought.beverage.name = "Bought mead";
    Lot lot;
    lot.name = "vintage 1";
    lot.packagedOn = "2024-01-01";
    lot.bestBefore = "2025-06-01";
    lot.storage = "cellar, 12 degrees";
    lot.source = "the corner shop";
    lot.bottles = 1;
    bought.lots = {lot};
    bought.poured = {{0, {"s"}, "An evening", "2025-12-08"}};
    found[0].lots = {{24.0, 213, true, false}};
  }

  ReferenceBookWords words() const { return referenceBookWords(Voice{}, references, found); }
};

}  // namespace

TEST_CASE("a lot says how old it is, that it is past its best-before, and that one bottle is left") {
  Book book;
  const ReferenceBookWords words = book.words();
  CHECK(words.headline == "One bought drink. One lot is down to its last bottle. One is past its best-before.");
  const ReferenceLotWords& lot = words.references[0].lots[0];
  CHECK(lot.age == "Packaged 2024-01-01, 24 months old.");
  CHECK(lot.past == "Past its best-before (2025-06-01) by 7 months.");
  CHECK(lot.bottles == "The last bottle");
  CHECK(lot.kept == "Kept: cellar, 12 degrees. From: the corner shop.");
  CHECK(lot.poured == "Poured in An evening (2025-12-08).");
  CHECK_THAT(words.references[0].ranges[0], Contains("One lot gives no range"));
}

TEST_CASE("the range of the vintages names both ends with their people") {
  Book book;
  book.references[0].lots.push_back(book.references[0].lots[0]);
  book.references[0].lots[1].name = "vintage 2";
  book.references[0].lots[1].bestBefore.clear();
  book.found[0].lots.push_back({std::nullopt, std::nullopt, false, true});
  CHECK(book.words().references[0].ranges[0] == "No range yet: pour two of its lots in one tasting.");
  book.found[0].ranges = {{{ItemKind::line, Part::main, "honey", 0, 100}, {0, 6, 35.2}, {1, 5, 48.4}, 2, 2}};
  const ReferenceBookWords words = book.words();
  CHECK(words.references[0].ranges[0] == "Honey: from 35 (vintage 1, 6 people) to 48 of 100 (vintage 2, 5 people), over 2 tastings.");
  CHECK(words.references[0].lots[1].bottles == "No bottle left");
  CHECK(words.references[0].lots[1].past.empty());
  CHECK(words.references[0].lots[1].poured.empty());
  for (const std::string& line : {words.headline, words.references[0].ranges[0], words.references[0].lots[0].past}) CHECK(forbiddenWordIn(line).empty());
  CHECK(referenceBookWords(Voice{}, {}, {}).headline == "There is no bought drink on the shelf.");
}
