#include "domain/flight_form.h"
#include "domain/names.h"
#include "german.h"
#include "insight/table.h"
#include "words/came_out.h"
#include "words/denials.h"
#include "words/maker.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace oddglass;
using namespace oddglass::words;

namespace {

/// What a denying sentence may add to a line: nothing else of the line may hold a forbidden word.
std::string withoutDenials(std::string text) {
  for (const char* sentence : denyingSentences()) {
    const std::string denial(sentence);
    for (std::size_t at = text.find(denial); at != std::string::npos; at = text.find(denial)) text.erase(at, denial.size());
  }
  return text;
}

struct Seen {
  std::set<std::string> headlines;
  int verdicts[5] = {};
  int weakened[4] = {};
};

/// What no German headline may say either: that two are one, that something is proved, sure or ready, or that nobody could.
std::string forbiddenInGerman(std::string text) {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  std::ranges::transform(text, text.begin(), lower);
  for (const char* word : {"gleich", "identisch", "derselbe", "dasselbe", "so gut wie", "ebenso gut", "bewies", "beweis", "belegt", " reif", "trinkreif", "fertig", "sicher", "niemand kon", "keiner kon",
                           "kein mensch", "ununterscheidbar"})
    if (text.find(word) != std::string::npos) return word;
  return {};
}

void lookInGerman(const RevealedSession& session, const insight::Findings& findings, const std::string& english) {
  static const Voice voice = testing::germanVoice();
  const CameOut out = cameOut(voice, session, findings);
  std::vector<std::string> headlines{out.headline, out.word};
  for (const CameOut& pair : out.pairs) headlines.push_back(pair.headline);
  for (const std::string& headline : headlines)
    if (const std::string word = forbiddenInGerman(headline); !word.empty()) FAIL(word << " in: " << headline);
  if (out.headline == english) FAIL("not in German: " << english);
  std::vector<std::string> lines = out.lines();
  lines.push_back(out.headline);
  for (const std::string& line : lines)
    if (line.find_first_of("{}%") != std::string::npos || line.find("  ") != std::string::npos || line.find("..") != std::string::npos) FAIL("left open, or badly joined: " << line);
}

void look(const RevealedSession& session, Seen& seen) {
  const auto findings = insight::findingsOf(session);
  const CameOut out = cameOut(Voice{}, session, findings);
  lookInGerman(session, findings, out.headline);
  ++seen.verdicts[static_cast<int>(findings.verdict)];
  ++seen.weakened[static_cast<int>(findings.weakenedBy)];
  seen.headlines.insert(out.headline);
  if (const std::string word = forbiddenWordIn(out.headline); !word.empty()) FAIL(word << " in: " << out.headline);
  std::vector<std::string> lines = out.lines();
  lines.push_back(out.headline);
  lines.push_back(out.word);
  lines.insert(lines.end(), out.first.begin(), out.first.end());
  if (out.interval) {
    lines.push_back(out.interval->sentence);
    for (const auto& row : out.interval->rows)
      if (row.size() != out.interval->headers.size()) FAIL("a short row");
    if (!(out.interval->low <= out.interval->high)) FAIL("an interval upside down");
  }
  for (const CameOut& pair : out.pairs) {
    if (const std::string word = forbiddenWordIn(pair.headline); !word.empty()) FAIL(word << " in: " << pair.headline);
    if (pair.headline.empty() || pair.what.empty() || pair.count.empty()) FAIL("a pair without its words");
    lines.push_back(pair.headline);
  }
  const MakerPart part = makerPart(Voice{}, session, findings);
  lines.insert(lines.end(), part.makers.begin(), part.makers.end());
  lines.push_back(part.differ);
  lines.push_back(part.onlyInSums);
  for (const std::string& line : lines) {
    if (const std::string word = forbiddenWordIn(withoutDenials(line)); !word.empty()) FAIL(word << " in: " << line);
    if (line.find_first_of("{}%") != std::string::npos) FAIL("left open, or a percentage: " << line);
    if (line.find("  ") != std::string::npos || line.find("..") != std::string::npos) FAIL("badly joined: " << line);
    if (line.find("never") != std::string::npos || line.find(" 1 tastings") != std::string::npos || line.find(" 1 people") != std::string::npos) FAIL(line);
  }
  if (out.headline.empty() || out.word.empty() || out.count.empty() || out.next.empty() || out.method.empty()) FAIL("something is not said: " << out.headline);
  if ((out.shape == Shape::dash) != (findings.verdict == insight::Verdict::none)) FAIL("the wrong shape");
}

}  // namespace

TEST_CASE("no headline over a broad sweep of findings claims too much, and other lines only where they deny it") {
  Seen seen;
  for (const auto& [people, rounds] : std::vector<std::pair<int, int>>{{1, 1}, {2, 1}, {3, 1}, {6, 1}, {12, 1}, {24, 1}, {2, 2}, {4, 3}, {6, 3}, {1, 8}}) {
    const int trials = people * rounds;
    for (int right = 0; right <= trials; ++right) {
      for (const Sought sought : {Sought::difference, Sought::alike, Sought::both}) {
        for (const int clues : {0, 1, 2, 3}) {
          std::vector<int> each(static_cast<std::size_t>(people), right / people);
          for (int i = 0; i < right % people; ++i) ++each[static_cast<std::size_t>(i)];
          RevealedSession session = table::panel(each, rounds);
          session.plan.sought = sought;
          if (sought != Sought::difference) session.plan.limitPm = right % 2 == 0 ? 300 : 500;
          if (clues == 1) session.cameFrom = CameFrom::demo;
          for (std::size_t i = 0; i < session.panel.size(); ++i) {
            PanelFlight& flight = session.panel[i];
            const bool isRight = flight.picks == std::vector{table::oddAsPoured(flight).value()};
            flight.sureness = static_cast<Sureness>(1 + i % 3);
            if (clues == 1) flight.clue = static_cast<Clue>(1 + i % 6);
            if (clues == 2) flight.clue = isRight && i % 2 == 0 ? Clue::fizz : Clue::taste;
            if (clues == 3) flight.clue = isRight ? Clue::taste : Clue::look;
          }
          if (clues == 2) session.plan.giveAways = GiveAways{{GiveAway::foam, right % 2 == 0 ? WayOut::anyMeans : WayOut::mend}, {GiveAway::hadBefore, WayOut::anyMeans}};
          if (clues >= 2) session.said.push_back({Seq{clues == 2 ? 150 : 103}, 0, {}, "butter"});
          look(session, seen);
        }
      }
    }
  }
  // Large panels, where both can come out.
  for (const int right : {90, 118, 130, 150}) {
    std::vector<int> each(300, 0);
    std::fill(each.begin(), each.begin() + right, 1);
    RevealedSession session = table::panel(each, 1);
    session.plan.sought = Sought::both;
    session.plan.limitPm = 300;
    look(session, seen);
  }
  // Alone.
  for (int right = 0; right <= 8; ++right) {
    for (const Sought sought : {Sought::difference, Sought::alike, Sought::both}) {
      RevealedSession session = table::session(8, Claim::me);
      session.plan.sought = sought;
      if (sought != Sought::difference) session.plan.limitPm = 500;
      for (int round = 1; round <= 8; ++round) session.makers.push_back(table::flight<MakerFlight>(1, round, round <= right, 10 * round));
      look(session, seen);
    }
  }
  RevealedSession broken = table::panel({1, 1, 1, 1, 1, 1}, 1);
  broken.log.push_back({Seq{9}, 0, Event::broken, std::nullopt, std::nullopt});
  look(broken, seen);
  look(table::session(1, Claim::people), seen);
  for (const int count : seen.verdicts) CHECK(count > 0);
  for (const int count : seen.weakened) CHECK(count > 0);
  CHECK(seen.headlines.size() >= 15);
}

TEST_CASE("no headline of any method, outcome or claim says too much") {
  Seen seen;
  for (const Method method : comparingMethods()) {
    for (const auto& [people, rounds] : std::vector<std::pair<int, int>>{{0, 1}, {1, 1}, {2, 1}, {5, 1}, {6, 1}, {12, 1}, {24, 1}, {2, 2}, {6, 3}}) {
      for (int right = 0; right <= people * rounds; ++right) {
        for (const int variant : {0, 1, 2, 3}) {
          RevealedSession session = table::panelOf(method, people > 0 ? table::dealt(people, right) : std::vector<int>{}, rounds);
          const FlightForm form = formOf(method);
          if (variant == 1 && form.hasRight && !form.saysSame) {
            session.plan.sought = right % 2 == 0 ? Sought::both : Sought::alike;
            session.plan.limitPm = 500;
          }
          if (variant == 2) {
            session.plan.alsoPrefer = mayAlsoPrefer(method);
            session.plan.mayHaveNone = true;
            if (form.picks > 0 && right % 3 == 0) session.plan.stopping = Stopping{500, 200};
            if (session.plan.stopping && right % 2 == 0) session.log.push_back({Seq{500}, 0, Event::judged, std::nullopt, Round{rounds}, false});
          }
          if (variant == 3) session.said.push_back({Seq{rounds > 1 ? 150 : 103}, 0, {}, "butter"});
          for (std::size_t i = 0; i < session.panel.size(); ++i) {
            PanelFlight& flight = session.panel[i];
            flight.sureness = static_cast<Sureness>(1 + (i * 7 + static_cast<std::size_t>(right)) % 3);
            if (form.hasRight && variant > 0) flight.clue = static_cast<Clue>(1 + i % 6);
            if (variant == 2 && session.plan.alsoPrefer && i % 4 != 3) flight.preferred = Position{1 + static_cast<int>(i) % form.cups};
            if (variant == 2 && (i % 4 == 3)) {
              if (method == Method::preference) flight.preferred.reset();
              flight.preferredNone = method == Method::preference || session.plan.alsoPrefer;
            }
          }
          look(session, seen);
          // The same answers, alone.
          session.plan.claim = Claim::me;
          for (const PanelFlight& flight : session.panel)
            if (flight.place == Place{1}) session.makers.emplace_back(static_cast<const RevealedFlight&>(flight));
          session.panel.clear();
          look(session, seen);
        }
      }
    }
  }
  for (int first = 0; first <= 8; ++first)
    for (int second = 0; second <= 8; second += 2)
      for (const Sought sought : {Sought::difference, Sought::both, Sought::alike}) {
        RevealedSession session = table::threePairs(8, {first, second, 3});
        session.plan.sought = sought;
        if (sought != Sought::difference) session.plan.limitPm = 500;
        for (PanelFlight& flight : session.panel) flight.clue = flight.place.value == second ? Clue::look : Clue::taste;
        look(session, seen);
      }
  // Told apart, but by fewer than the limit: 300 duo-trios, 165 needed, alike up to 180 at 3 in 10 (exact binomial, worked for this test).
  RevealedSession large = table::panelOf(Method::duoTrio, table::dealt(300, 172), 1);
  large.plan.sought = Sought::both;
  large.plan.limitPm = 300;
  look(large, seen);
  for (const int count : seen.verdicts) CHECK(count > 0);
  CHECK(seen.headlines.size() >= 100);
}

TEST_CASE("the denials are said as they are listed, and nowhere is another one") {
  RevealedSession session = table::panel({1, 1, 1, 0, 0, 0}, 1);
  const CameOut out = cameOut(Voice{}, session, insight::findingsOf(session));
  CHECK(std::any_of(denyingSentences().begin(), denyingSentences().end(), [&](const char* each) { return out.notSaid == each; }));
}
