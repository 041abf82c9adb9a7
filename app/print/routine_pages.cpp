#include "print/routine_pages.h"

#include "domain/flight_form.h"
#include "print/pages.h"
#include "words/numbers.h"
#include "words/paper.h"
#include "words/routine.h"

#include <map>

namespace oddglass::print {
namespace {

using Rows = std::vector<std::vector<std::string>>;

struct Flight {
  Place place;
  Round round;
  std::vector<Code> codes;   ///< of the cups whose content is hidden, from left to right
};

// In the order of pouring: round by round, place by place.
std::vector<Flight> flightsOf(const Plan& plan) {
  std::map<std::pair<Round, Place>, Flight> flights;
  for (const Cup& cup : plan.cups) {
    if (cup.spare > 0 || (hasMarkedCup(plan) && cup.position == Position{1})) continue;
    Flight& flight = flights[{cup.round, cup.place}];
    flight.place = cup.place;
    flight.round = cup.round;
    flight.codes.push_back(cup.code);
  }
  std::vector<Flight> all;
  for (auto& [at, flight] : flights) all.push_back(std::move(flight));
  return all;
}

class Lists {
 public:
  Lists(const words::Voice& voice, const Plan& plan, Pages& pages) : voice_(voice), plan_(plan), pages_(pages), text_(words::routinePaperText(voice, plan.routine)) {}

  void write() {
    switch (plan_.routine) {
      case Routine::pourer: return;
      case Routine::couple:
        sheet(text_.firstSheet, {text_.place, text_.mark, text_.drink}, marks());
        sheet(text_.secondSheet, {text_.place, text_.code, text_.mark}, codes());
        return;
      case Routine::die:
      case Routine::alone: return sheet(text_.list, {text_.place, text_.code, text_.drink}, codes());
      case Routine::bottles:
        sheet(text_.pouring, {text_.bottle, text_.place, text_.code}, pouring());
        return sheet(text_.list, {text_.bottle, text_.drink}, letters());
    }
  }

 private:
  void sheet(const std::string& heading, const std::vector<std::string>& headers, const Rows& rows) {
    pages_.turn();
    pages_.heading(heading);
    pages_.paragraph(text_.keep);
    pages_.space(4);
    pages_.table({headers, rows});
  }

  std::string where(const Flight& flight) const { return words::placeLine(voice_, flight.place, flight.round, plan_.rounds); }

  bool setsAside() const {
    const auto hands = pouredByHand(plan_.routine, plan_.method, plan_.expected);
    return hands && hands->setsOneAside;
  }

  Rows codes() const {
    Rows rows;
    for (const Flight& flight : flightsOf(plan_)) {
      for (const Code code : flight.codes) rows.push_back({where(flight), std::to_string(code.value), text_.blank});
      if (setsAside()) rows.push_back({where(flight), text_.aside, text_.blank});
    }
    return rows;
  }

  Rows marks() const {
    Rows rows;
    for (const Flight& flight : flightsOf(plan_)) {
      const int cups = static_cast<int>(flight.codes.size()) + (setsAside() ? 1 : 0);
      for (int mark = 1; mark <= cups; ++mark) rows.push_back({where(flight), words::bottleLetter(mark), text_.blank});
    }
    return rows;
  }

  Rows pouring() const {
    std::map<int, Rows> byBottle;
    for (const Cup& cup : plan_.cups)
      byBottle[cup.bottle].push_back({words::bottleLetter(cup.bottle), cup.spare > 0 ? words::labelLine(voice_, cup, plan_.rounds, cupsInFlight(plan_)) : words::placeLine(voice_, cup.place, cup.round, plan_.rounds),
                                      std::to_string(cup.code.value)});
    Rows rows;
    for (auto& [bottle, each] : byBottle) rows.insert(rows.end(), each.begin(), each.end());
    return rows;
  }

  Rows letters() const {
    Rows rows;
    for (int bottle = 1; bottle <= letteredBottles(plan_); ++bottle) rows.push_back({words::bottleLetter(bottle), text_.blank});
    return rows;
  }

  const words::Voice& voice_;
  const Plan& plan_;
  Pages& pages_;
  words::RoutinePaperText text_;
};

}  // namespace

std::string routinePdf(const words::Voice& voice, const RoutinePaper& paper, PaperSize size) {
  const words::HandFacts facts = words::handFacts(voice, paper.plan);
  const std::string title = words::routineName(voice, paper.plan.routine);
  const PaperWords about{title, words::paperFoot(voice, paper.guestTitle, paper.sealMark), [&voice](int at, int pages) { return words::pageOf(voice, at, pages); }};
  return pdf(size, about, [&](Pages& pages) {
    pages.paragraph(title, {20, true, Type{}.colour}, 6);
    pages.paragraph(words::routineLine(voice, paper.plan.routine));
    int number = 0;
    std::string who;
    for (const words::HandStep& step : words::handSteps(voice, facts)) {
      pages.space(6);
      if (step.who != who) pages.heading(step.who);
      who = step.who;
      pages.paragraph(words::numberedStep(voice, ++number, step.text), {13, false, Type{}.colour}, 4);
    }
    pages.space(8);
    pages.paragraph(words::thenTaste(voice, facts));
    pages.paragraph(words::thenRead(voice, facts));
    Lists(voice, paper.plan, pages).write();
  });
}

}  // namespace oddglass::print
