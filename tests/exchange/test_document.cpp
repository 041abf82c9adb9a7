#include "exchange/document.h"
#include "exchange/node.h"
#include "refused.h"

#include <unistd.h>

#include <fstream>

using namespace oddglass;
using namespace oddglass::exchange;

namespace {

Problem refusedText(const std::string& text, const Limits& limits = {}) {
  return problemOf([&] { parseDocument(text, "evening.json", limits); });
}

std::string nested(int depth) { return std::string(depth, '[') + std::string(depth, ']'); }

}  // namespace

TEST_CASE("A good document is read, with the lines of its parts") {
  const auto document = parseDocument("{\n \"sessions\": [\n  {\"id\": \"a\"},\n  {\n   \"log\": [{}]}\n ]\n}", "evening.json");
  CHECK(document.json["sessions"][0]["id"] == "a");
  CHECK(document.lineOf("") == 1);
  CHECK(document.lineOf("sessions") == 2);
  CHECK(document.lineOf("sessions/0/id") == 3);
  CHECK(document.lineOf("sessions/1/log/0") == 5);
  CHECK(document.lineOf("sessions/9/what") == 2);
}

TEST_CASE("Whole numbers of 64 bits pass unchanged, in every kind of value") {
  const auto document = parseDocument("\xef\xbb\xbf[1, -5, 9223372036854775807, null, true, \"\xc3\xa5\"]", "x");
  CHECK(document.json.dump() == "[1,-5,9223372036854775807,null,true,\"\xc3\xa5\"]");
}

TEST_CASE("A key that stands twice is refused by its path and line") {
  const auto problem = refusedText("{\n\"plan\": {\"rounds\": 1,\n \"rounds\": 2}}");
  CHECK(problem.trouble() == Trouble::keyTwice);
  CHECK(said(problem, "text") == "rounds");
  CHECK(said(problem, "line") == "3");
  CHECK(said(problem, "file") == "evening.json");
  // Another way to write the same key.
  CHECK(refusedText("{\"a\": 1, \"\\u0061\": 2}").trouble() == Trouble::keyTwice);
}

TEST_CASE("The same key in two objects is no repetition") { CHECK_NOTHROW(parseDocument("[{\"a\": 1}, {\"a\": {\"a\": 2}}]", "x")); }

TEST_CASE("Fractions, exponents and numbers beyond 64 bits are refused") {
  for (const char* number : {"1.5", "1.0", "1e3", "-0.0", "1E400", "9223372036854775808", "99999999999999999999999", "-9223372036854775809"}) {
    const auto problem = refusedText(std::string("{\"plan\": {\"alpha_pm\": ") + number + "}}");
    INFO(number);
    CHECK((problem.trouble() == Trouble::notWhole || problem.trouble() == Trouble::badFile));
    CHECK(problem.argument() == "plan/alpha_pm");
  }
}

TEST_CASE("Depth is limited, also far beyond what a stack would bear") {
  CHECK_NOTHROW(parseDocument(nested(32), "x"));
  CHECK(refusedText(nested(33)).trouble() == Trouble::fileTooDeep);
  CHECK(refusedText(nested(10000)).trouble() == Trouble::fileTooDeep);
  CHECK(refusedText(std::string(1000000, '[')).trouble() == Trouble::fileTooDeep);
  std::string objects;
  for (int i = 0; i < 10000; ++i) objects += "{\"a\":";
  CHECK(refusedText(objects).trouble() == Trouble::fileTooDeep);
}

TEST_CASE("What is no JSON is refused with line and column") {
  for (const char* text : {"", " ", "{", "{\"a\"}", "[1,]", "nul", "{} {}", "\"open", "[1 2]", "{'a': 1}", "\"\xff\"", "\"\xed\xa0\x80\"", "\"\\ud800\"", "[01]", "NaN", "[Infinity]", "\"bell \\u0007\"", "\"turned \xe2\x80\xae\"", "\" blank\""}) {
    const auto problem = refusedText(text);
    INFO(text);
    CHECK(problem.trouble() == Trouble::badFile);
    CHECK(said(problem, "line") == "1");
    CHECK_FALSE(said(problem, "column").empty());
  }
  CHECK(said(refusedText("{\n\n  \"a\": oops}"), "line") == "3");
}

TEST_CASE("A file that is too large is refused before it is read as JSON") {
  const auto problem = refusedText("[" + std::string(2000, ' ') + "]", {.bytes = 1000, .depth = 32});
  CHECK(problem.trouble() == Trouble::fileTooLarge);
}

TEST_CASE("A file that claims to be huge is not read at all") {
  const auto file = std::filesystem::temp_directory_path() / ("oddglass-huge-" + std::to_string(::getpid()) + ".json");
  { std::ofstream(file) << "{}"; }
  std::filesystem::resize_file(file, 100U << 20);  // a hole of 100 MB
  const auto problem = problemOf([&] { readDocument(file); });
  std::filesystem::remove(file);
  CHECK(problem.trouble() == Trouble::fileTooLarge);
  CHECK(said(problem, "file") == file.filename().string());
  CHECK(problemOf([&] { readDocument(file); }).trouble() == Trouble::storeMissing);
  CHECK(problemOf([&] { readDocument(std::filesystem::temp_directory_path()); }).trouble() == Trouble::storeMissing);
}

TEST_CASE("A value names its file, line and path when it is refused") {
  const auto document = parseDocument(R"({"lots": [
    {"id": "0123456789abcdef0123456789abcdef", "bottle_ml": 330, "day": "2026-02-30", "name": "ab", "empty": "", "how": "none", "wrong": 7}]})", "shelf.json");
  const Node lot = Node(document).at("lots").list().at(0);
  CHECK(lot.at("id").uid<struct LotTag>().text == "0123456789abcdef0123456789abcdef");
  CHECK(lot.at("bottle_ml").small(1, 1000) == 330);
  CHECK(lot.at("how").choice<IngredientsKnown>() == IngredientsKnown::none);

  const auto range = problemOf([&] { lot.at("bottle_ml").small(1, 100); });
  CHECK(range.trouble() == Trouble::outOfRange);
  CHECK(range.argument() == "lots/0/bottle_ml");
  CHECK(said(range, "line") == "2");
  CHECK(said(range, "file") == "shelf.json");
  CHECK_FALSE(lot.maybe("nothing"));
  CHECK(lot.maybe("name")->text(2) == "ab");
  CHECK(problemOf([&] { lot.at("id").text(10); }).trouble() == Trouble::tooLong);
  CHECK(problemOf([&] { lot.at("empty").text(10, false); }).trouble() == Trouble::empty);
  CHECK(problemOf([&] { lot.at("day").day(true); }).trouble() == Trouble::notADay);
  CHECK(problemOf([&] { lot.at("name").whole(0, 9); }).trouble() == Trouble::notANumber);
  CHECK(problemOf([&] { lot.at("how").choice<Kind>(); }).trouble() == Trouble::notAChoice);
  CHECK(problemOf([&] { lot.at("how").bytes<16>(); }).argument() == "lots/0/how");
  CHECK(problemOf([&] { lot.at("nothing"); }).argument() == "lots/0");
  CHECK(problemOf([&] { lot.onlyKeys({"id", "bottle_ml", "day", "name", "empty", "how"}); }).argument() == "lots/0/wrong");
  CHECK(problemOf([&] { lot.list(); }).trouble() == Trouble::badFile);
}
