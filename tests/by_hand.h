#pragma once

#include "answers.h"
#include "domain/by_hand.h"
#include "session/found.h"
#include "session/record.h"

#include <map>
#include <numeric>
#include <random>
#include <vector>

namespace oddglass::testing {

/// Hands that hide the cups of a sealed session as its routine says: which cup holds what is known here and nowhere in the program.
struct Hands {
  Plan plan;
  std::map<std::pair<Round, Place>, session::FoundFlight> under;
  std::map<int, Slot> inBottle;      ///< by letter, 1 for A
  session::PourSheet known;          ///< what no sheet holds, in the form that answers are made from

  Hands(store::Store& store, const SessionId& session, unsigned seed) : plan(session::record(store, session).plan), engine_(seed) {
    std::vector<Slot> coded;
    for (const PlannedLot& lot : plan.lots)
      if (lot.role != LotRole::warmUp) coded.push_back(lot.slot);
    mix(coded);
    for (int bottle = 1; bottle <= letteredBottles(plan); ++bottle) inBottle[bottle] = coded[static_cast<std::size_t>(bottle) - 1];
    for (int round = 1; round <= plan.rounds; ++round)
      for (int place = 1; place <= plan.places; ++place) hide({round}, {place});
  }

  const session::FoundFlight& at(int place, int round) const { return under.at({Round{round}, Place{place}}); }

  std::vector<session::Peeled> peeled() const {
    std::vector<session::Peeled> all;
    for (const auto& [bottle, slot] : inBottle) all.push_back({bottle, slot});
    return all;
  }

  /// A couple's two sheets of one flight: the marks follow the lots in the order of pouring, whatever the codes are.
  std::pair<std::vector<session::MarkedLot>, std::vector<session::MarkedCode>> twoSheets(int place, int round) {
    auto lines = at(place, round).lines;
    mix(lines);
    std::pair<std::vector<session::MarkedLot>, std::vector<session::MarkedCode>> sheets;
    std::string mark = "A";
    for (const session::FoundLine& line : lines) {
      sheets.first.push_back({{place}, {round}, mark, line.slot});
      sheets.second.push_back({{place}, {round}, mark, line.code});
      ++mark[0];
    }
    mix(sheets.second);
    return sheets;
  }

 private:
  template <class T>
  void mix(std::vector<T>& all) {
    // Written out, since the order that std::shuffle gives is the library's own.
    for (std::size_t i = all.size(); i > 1; --i) std::swap(all[i - 1], all[engine_() % i]);
  }

  void hide(Round round, Place place) {
    std::vector<Slot> cups;
    if (const auto hands = pouredByHand(plan.routine, plan.method, plan.expected))
      for (int slot = 1; slot <= 2; ++slot) cups.insert(cups.end(), static_cast<std::size_t>(hands->cups[static_cast<std::size_t>(slot) - 1]), Slot{slot});
    mix(cups);
    session::FoundFlight flight{place, round, {}};
    std::size_t next = 0;
    for (const Cup& cup : plan.cups) {
      if (cup.place != place || cup.round != round) continue;
      const bool isMarked = hasMarkedCup(plan) && cup.position == Position{1};
      const Slot slot = isMarked ? *plan.marked : cup.bottle > 0 ? inBottle.at(cup.bottle) : cups.at(next++);
      known.placeByPlace.push_back({cup.code, place, round, cup.position, cup.spare, slot, false, false, {}});
      if (!isMarked && cup.spare == 0) flight.lines.push_back({cup.code, slot});
    }
    if (next < cups.size()) flight.lines.push_back({{0}, cups.at(next)});
    under[{round, place}] = flight;
  }

  std::mt19937 engine_;
};

}  // namespace oddglass::testing
