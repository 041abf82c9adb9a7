#include "domain/problem.h"
#include "figures/well_formed.h"
#include "report/evening.h"
#include "report/html.h"
#include "words/denials.h"
#include "report/reported.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using namespace report_test;
using report::For;

namespace {

}  // namespace

TEST_CASE("a report holds what a test report holds") {
  const std::string text = htmlOf(evening(), For::maker);
  CHECK(tests::whatIsWrong(text) == "");
  // Purpose, risk and limit set before, lots with age and storage, volume, tasters' number, orders, rounds, answers, exact p, interval, power,
  // conclusion, deviations, openings, commitment and seal mark: ISO 4120:2021, clause on the test report (its list from memory), and common practice.
  for (const char* word : {"Purpose: Can anyone tell them apart?", "Risk of a false alarm (alpha): 5 times in 100", "fewer than 3 in 10 set before", "Heather mead, bottled in February",
                           "29 days", "cellar, 12 C", "12.5 %", "30 mL in each cup", "4 people in the panel", "ABB", "3 rounds", "Answers that count: 10", "Missing: 1", "Set aside: 1",
                           "exact p, one-sided", "Power: a difference that half", "1 cup was spilled", "The pour sheet was opened 3 times.", "kapo rilu 7",
                           "978d238643285b017f7dc21e34b52760738d0102b58359efb385f8fb2999edc2", "after ISO 4120:2021, not certified", "Not recorded: vessel, temperature",
                           "Worked out before anything was poured:", "of the panel 2 had answered in an earlier session kept here, of the makers 1", "First cup on 2024-03-01",
                           "If they are told apart: find out in what", "Once something was said aloud.", "sulphites", "not known", "pairs in May"}) {
    INFO(word);
    CHECK(text.find(word) != std::string::npos);
  }
  CHECK(text.find("<svg") != text.rfind("<svg"));  // the mark and the interval
  CHECK(text.find("<script") == std::string::npos);
  CHECK(text.find("http://") == text.find("http://www.w3.org/2000/svg"));
}

TEST_CASE("the room's part holds no person, whoever asks; the room's report has no other part") {
  const std::string room = htmlOf(evening(), For::room), full = htmlOf(evening(), For::maker);
  const std::size_t border = full.find("class=\"maker\"");
  REQUIRE(border != std::string::npos);
  CHECK(full.find("For the maker alone") > border);
  for (const char* word : {"Ida", "Bram", "Quell", "Dora", "Mara", "waxy", "soapy", "cardboard"}) {
    INFO(word);
    CHECK(room.find(word) == std::string::npos);
    CHECK(full.substr(0, border).find(word) == std::string::npos);
  }
  CHECK(room.find("For the maker alone") == std::string::npos);
  for (const char* word : {"Ida", "Bram", "Dora", "Mara", "waxy", "soapy", "cardboard"}) {
    INFO(word);
    CHECK(full.find(word) > border);
  }
  CHECK(full.find("Quell") == std::string::npos);  // only in the sums
  CHECK(full.find("1 person asked to be only in the sums.") != std::string::npos);
}

TEST_CASE("hostile texts survive as text") {
  for (const std::string odd : {"<script>alert(1)</script>", "\"><img src=x onerror=y>", "</td></tr></table>", "&amp;'", "]]>", "{n}{limit}", "\xFF\xC0", "\xE2\x80\xAE", "\x01"}) {
    const std::string text = htmlOf(evening(odd), For::maker);
    INFO(odd);
    CHECK(tests::whatIsWrong(text) == "");
    CHECK(text.find("<script") == std::string::npos);
    CHECK(text.find("<img") == std::string::npos);
  }
  CHECK(htmlOf(evening("<b>"), For::maker).find("Heather mead&lt;b&gt;") != std::string::npos);
  CHECK(htmlOf(evening("{n}"), For::maker).find("Heather mead{n}") != std::string::npos);
}

TEST_CASE("no report before the key is open") {
  RevealedSession session = evening();
  for (const State state : {State::draft, State::sealed, State::tasting, State::closed, State::abandoned}) {
    session.state = state;
    try {
      htmlOf(session, For::room);
      FAIL("a report came out");
    } catch (const Problem& problem) {
      CHECK(problem.trouble() == Trouble::stillSealed);
      CHECK(problem.argument() == "session");
    }
  }
  session.state = State::broken;
  session.log.push_back({Seq{40}, 1709257000000, Event::broken, {}, {}});
  const std::string text = htmlOf(session, For::room);
  CHECK(text.find("No verdict: the key was opened early.") != std::string::npos);
  CHECK(text.find("the report will always say so") != std::string::npos);
}

TEST_CASE("a seal that does not hold stands first") {
  RevealedSession session = evening();
  session.commitmentHolds = false;
  const std::string text = htmlOf(session, For::room);
  CHECK(text.find("class=\"first\">Plan or key are not what was sealed.") < text.find("<h1"));
}

TEST_CASE("the same document gives the same bytes") { CHECK(htmlOf(evening(), For::maker) == htmlOf(evening(), For::maker)); }

TEST_CASE("alone, the report speaks of one taster") {
  RevealedSession session = evening();
  session.plan.claim = Claim::me;
  session.panel.clear();
  session.people.erase(session.people.begin(), session.people.begin() + 4);
  const std::string text = htmlOf(session, For::maker);
  CHECK(text.find("One taster sat down, alone.") != std::string::npos);
  CHECK(text.find("in the panel") == std::string::npos);
  CHECK(text.find("Answers that count: 3") != std::string::npos);
}

TEST_CASE("the lines of a report claim no more than its verdict") {
  const RevealedSession session = evening();
  const words::Voice voice;
  const report::Document document = report::document(voice, session, insight::findingsOf(session), For::room);
  for (const report::Section& section : document.room)
    for (const std::string& line : section.lines) {
      INFO(line);
      CHECK(words::forbiddenWordIn(line).empty());
    }
}
