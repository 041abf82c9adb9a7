#include "cli/reasons.h"
#include "cli/tables.h"

#include <random>

using oddglass::cli::Json;
using oddglass::testing::everyTable;
using oddglass::testing::Ran;
using oddglass::testing::requireReasons;
using oddglass::testing::TableCommand;
using oddglass::testing::Terminal;

namespace {

using Chance = std::mt19937;

std::size_t below(Chance& chance, std::size_t n) { return n == 0 ? 0 : chance() % n; }

/// What a cell may hold that it should not, or that lies at an end of what it may.
const std::vector<std::string> cells{"1e400", "-1e400", "1e308", "1e12", "-1e12", "1e-320", "nan", "NaN", "inf", "-inf", "-0", "+5", "+-5", "0x10", "1,5", "\"1,5\"", "5 ", "1e", "--1", "1e5000", "NA", ".", "",
                                     "\"\"", "\"\"\"\"", "\"", "\"x", "tie", "none", "9223372036854775808", "2147483648", "0", "1", "2", "3", "0.5", "-3", std::string(2000, '9'), std::string(70000, 'x'),
                                     std::string(1, '\0'), std::string("A\0B", 3), "\xff", "\xc3", "\xe2\x80\xae", "\xef\xbb\xbf", "a\tb", "\r", "=1+1"};

void replaceAll(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size()) text.replace(at, from.size(), to);
}

/// Where a cell of the table begins and ends; separators and line ends part cells.
std::pair<std::size_t, std::size_t> oneCell(const std::string& text, Chance& chance) {
  const std::string ends = ",;\t\r\n";
  const std::size_t at = below(chance, text.size());
  const std::size_t before = text.find_last_of(ends, at), after = text.find_first_of(ends, at);
  return {before == std::string::npos || before == at ? at : before + 1, after == std::string::npos ? text.size() : after};
}

std::string oneLine(const std::string& text, Chance& chance) {
  const std::size_t at = below(chance, text.size()), before = text.rfind('\n', at), after = text.find('\n', at);
  return text.substr(before == std::string::npos ? 0 : before + 1, after == std::string::npos ? std::string::npos : after - (before == std::string::npos ? 0 : before + 1) + 1);
}

void damage(std::string& text, Chance& chance) {
  const std::string bytes("\0\"\",;\t\r\n\xff .", 12);
  switch (below(chance, 16)) {
    case 0: case 1: case 2: {
      const auto [from, to] = oneCell(text, chance);
      text.replace(from, to - from, cells[below(chance, cells.size())]);
      return;
    }
    case 3: text.insert(below(chance, text.size() + 1), 1, bytes[below(chance, bytes.size())]); return;
    case 4: text.erase(below(chance, text.size()), 1 + below(chance, 4)); return;
    case 5: text.resize(below(chance, text.size() + 1)); return;
    case 6: text += oneLine(text, chance); return;
    case 7: replaceAll(text, "\n", "\r\n"); return;
    case 8: replaceAll(text, "\n", "\r"); return;
    case 9: replaceAll(text, ",", below(chance, 2) ? ";" : "\t"); return;
    case 10: text.insert(0, "\xef\xbb\xbf"); return;
    case 11: text = text.substr(0, text.find('\n') + 1); return;
    case 12: text = text.substr(0, text.find('\n', text.find('\n') + 1) + 1); return;
    case 13: text.replace(0, text.find('\n'), oneLine(text, chance)); return;
    case 14: text.erase(0, text.find('\n') + 1); return;
    default: {
      // One value all over, as where nobody differs.
      const auto [from, to] = oneCell(text, chance);
      const std::string value = text.substr(from, to - from), other = cells[below(chance, cells.size())];
      if (!value.empty() && text.size() < 20'000) replaceAll(text, "," + value, "," + other);
    }
  }
}

void requireAnswered(const Ran& ran, const std::string& told) {
  INFO(told << '\n' << ran.out.substr(0, 2000) << '\n' << ran.err);
  REQUIRE((ran.status == 0 || ran.status == 2));
  REQUIRE(ran.linesOfError() == (ran.status == 0 ? 0 : 1));
  REQUIRE(ran.err.size() < 3000);
  REQUIRE(Json::accept(ran.out));
  const Json json = Json::parse(ran.out);
  if (ran.status == 2) REQUIRE_FALSE(json.at("error").at("argument").get<std::string>().empty());
  else requireReasons(json, false, {"similarity", "preference", "sureness", "note"});
}

}  // namespace

TEST_CASE("a damaged table is answered in one object with reasons, or refused in one line") {
  Terminal run;
  Chance chance(20);
  int done = 0, refused = 0;
  for (const TableCommand& each : everyTable()) {
    requireAnswered(run("--json " + each.words, {run.write("t.csv", each.text)}), each.words);
    for (int i = 0; i < 60; ++i) {
      std::string text = each.text;
      for (std::size_t k = 1 + below(chance, 3); k > 0; --k) damage(text, chance);
      const Ran ran = run("--json " + each.words, {run.write("t.csv", text)});
      requireAnswered(ran, each.words + '\n' + text.substr(0, 3000));
      ++(ran.status == 0 ? done : refused);
    }
  }
  CHECK(done > 300);
  CHECK(refused > 300);
}

TEST_CASE("tables as wide, as long in one cell or as empty as they come") {
  Terminal run;
  std::string wide = "y,s,t", one = "5,A,B", two = "6,C,B";
  for (int i = 0; i < 1'000'000; ++i) {
    wide += ',' + std::to_string(i);
    one += ",1";
    two += ",2";
  }
  const std::string longest(1'000'000, 'q'), header = "y,s,t\n";
  const std::vector<std::pair<std::string, int>> tables{
      {wide + '\n' + one + '\n' + two + '\n', 0}, {header + "5," + longest + ",B\n6,C,B\n", 0}, {header + longest + ",A,B\n", 2}, {std::string(1'000'000, '"'), 2}, {std::string(1'000'000, ','), 2},
      {std::string(1'000'000, '\n'), 2}, {std::string(1'000'000, '\0'), 2}, {header, 2}, {"", 2}, {"\xef\xbb\xbf", 2}, {"\n", 2}, {header + "5,A,B\n", 2}, {"y;s;t\n5;A;B\n6;C;B\n", 0}, {"y;s;t\n5,5;A;B\n6;C;B\n", 2},
      {"y,s;t\n5,A;B\n", 2}, {"y\rs\rt\r", 2}, {"y,s,t\r5,A,B\r6,C,B\r", 0}};
  for (std::size_t i = 0; i < tables.size(); ++i) {
    const Ran ran = run("--json scores --response y --sample s --taster t", {run.write("t.csv", tables[i].first)});
    INFO("table " << i << ": " << tables[i].first.substr(0, 60));
    CHECK(ran.status == tables[i].second);
    requireAnswered(ran, "");
  }
}

TEST_CASE("a name that is not there is refused in a line that can be read, however many there are") {
  Terminal run;
  std::string table = "y,s,t\n";
  for (int i = 0; i < 5000; ++i) table += "5,A,Taster number " + std::to_string(i) + "\n6,B,Taster number " + std::to_string(i) + '\n';
  const Ran ran = run("--json lean --response y --sample s --taster t --maker Nobody --own A --reference B", {run.write("t.csv", table)});
  CHECK(ran.status == 2);
  requireAnswered(ran, "");
  CHECK(ran.err.find("--maker") != std::string::npos);
}
