#include "domain/names.h"
#include "words/hint_rows.h"
#include "words/vocabulary.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace oddglass;
using namespace oddglass::words;
using Catch::Matchers::Contains;

namespace {

const TastingWord& called(const std::string& text) {
  const auto found = std::ranges::find(builtInWords(), text, &TastingWord::text);
  REQUIRE(found != builtInWords().end());
  return *found;
}

std::string lower(std::string text) {
  std::ranges::transform(text, text.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return text;
}

}  // namespace

TEST_CASE("every word of the program's list has one hint, in whole sentences, and every hint a word") {
  std::size_t rows = 0;
  std::set<std::string> hinted;
  for (const auto& some : {hintsMadeOf(), hintsOfTaste(), hintsOfFaults()})
    for (const HintRow& row : some) {
      ++rows;
      INFO(row.word);
      CHECK(hinted.insert(row.word).second);
    }
  CHECK(rows == builtInWords().size());
  for (const TastingWord& word : builtInWords()) {
    INFO(word.text);
    const auto hint = wordHint(Voice{}, word);
    REQUIRE(hint);
    for (const std::string& text : {hint->causes, hint->deeds, hint->source, hint->reservation}) {
      CHECK(text.size() > 4);
      CHECK(text.back() == '.');
      CHECK(text.find_first_of("{}*") == std::string::npos);
    }
  }
}

// A hint is never a diagnosis: it does not speak of this drink, and it is certain of nothing.
TEST_CASE("no hint passes judgement on the drink in the glass") {
  for (const TastingWord& word : builtInWords()) {
    const auto hint = wordHint(Voice{}, word);
    REQUIRE(hint);
    const std::string all = lower(hint->causes + ' ' + hint->deeds);
    for (const char* certain : {"you have", "your batch", "your beer", "always", "never fails", "is infected", "is safe", "proves", "ruined", "diagnos"}) {
      INFO(word.text << ": " << certain);
      const auto at = all.find(certain);
      CHECK((at == std::string::npos || all.find("nearly always") + 7 == at));
    }
    CHECK_THAT(hint->reservation, Contains("not a diagnosis"));
  }
}

// The usual faults and what is done about them: extension-service fault series and fermentation guides.
TEST_CASE("faults that the guides describe are hinted at as the guides do, and say so") {
  struct Fault {
    const char* word;
    const char* cause;
    const char* deed;
  };
  for (const Fault& fault : {Fault{"butter", "too early", "warm rest"}, {"green apple", "oxidation", "healthy yeast"}, {"cooked corn", "boil", "fast chill"},
                             {"wet cardboard", "Oxygen", "splashing"}, {"rotten egg", "nitrogen", "Nutrient"}, {"onion", "Sulphide", "hard to remove"},
                             {"vinegar", "air", "seal"}, {"nail varnish", "hot ferment", "oxygen"}, {"hot alcohol", "young", "Cooler"}, {"barnyard", "Brettanomyces", "Hygiene"},
                             {"mousy", "high pH", "no good cure"}, {"damp cellar", "chlorine", "discard"}, {"skunk", "Light", "Brown glass"}, {"sick", "Bacteria", "Hygiene"},
                             {"geranium", "sorbate", "Little sorbate"}}) {
    INFO(fault.word);
    const auto hint = wordHint(Voice{}, called(fault.word));
    REQUIRE(hint);
    CHECK_THAT(hint->causes, Contains(fault.cause));
    CHECK_THAT(hint->deeds, Contains(fault.deed));
    CHECK_THAT(hint->source, Contains("guides"));
  }
  // Beer's course of ageing: Dalgliesh 1977.
  CHECK_THAT(wordHint(Voice{}, called("catty"))->source, Contains("Dalgliesh"));
  CHECK(wordHint(Voice{}, called("banana"))->source == "Common practice.");
}

TEST_CASE("cautions: pressure, sulphite, and not swallowing") {
  CHECK(careSentence(Voice{}, Care::none).empty());
  CHECK_THAT(careSentence(Voice{}, Care::pressure), Contains("several days") && Contains("goggles"));
  CHECK_THAT(careSentence(Voice{}, Care::sulphite), Contains("asthma") && Contains("law"));
  CHECK_THAT(careSentence(Voice{}, Care::doNotSwallow), Contains("Smell first") && Contains("do not swallow"));
}

TEST_CASE("classes and leanings have names and lines of their own") {
  std::set<std::string> seen;
  for (const WordClass each : allOf<WordClass>())
    for (const std::string& text : {className(Voice{}, each), classLine(Voice{}, each)}) {
      CHECK_FALSE(text.empty());
      CHECK(seen.insert(text).second);
    }
  for (const Leaning each : allOf<Leaning>()) CHECK(seen.insert(leaningName(Voice{}, each)).second);
}

TEST_CASE("words of the list are said in the reader's language, own words as they were typed") {
  Voice voice;
  voice.translate = [](const char*, const char* source) {
    const std::string text = source;
    return text == "butter" ? std::string("Butter!") : text == "buttery; butterscotch; diacetyl" ? std::string("butterig; Karamell") : text;
  };
  TastingWord word = called("butter");
  CHECK(wordText(voice, word) == "Butter!");
  CHECK(otherNames(voice, word) == std::vector<std::string>{"butterig", "Karamell"});
  word.own = true;
  word.alsoCalled.clear();
  CHECK(wordText(voice, word) == "butter");
  CHECK(otherNames(voice, word).empty());
  CHECK_FALSE(wordHint(voice, word));
  CHECK(drinksLine(Voice{}, called("petrol")) == "Said of wine.");
}

TEST_CASE("a change of the list is told with its day") {
  Voice voice;
  voice.day = [](Millis) { return std::string("2026-03-14"); };
  const auto line = [&](WordChangeKind kind) { return changeLine(voice, {0, kind, {"x"}, "hay", WordId{"y"}}, "straw", "grass"); };
  CHECK(line(WordChangeKind::added) == "2026-03-14: “hay” was added.");
  CHECK(line(WordChangeKind::renamed) == "2026-03-14: “hay” got another name.");
  CHECK(line(WordChangeKind::merged) == "2026-03-14: “straw” was merged into “grass”.");
  CHECK(line(WordChangeKind::takenApart) == "2026-03-14: “straw” was taken apart from “grass”.");
  CHECK(line(WordChangeKind::retired) == "2026-03-14: “straw” was retired.");
  CHECK(line(WordChangeKind::broughtBack) == "2026-03-14: “straw” was brought back.");
}
