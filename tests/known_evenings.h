#pragma once

#include "answers.h"
#include "evening.h"

#include <functional>
#include <map>

namespace oddglass::testing {

/// Evenings of a known difference one after the other in one store: the brewer's mead has more of a word than the bought one.
struct KnownEvenings : Evening {
  Draft pattern;
  bool isFirst = true;
  session::PourSheet sheet;

  explicit KnownEvenings(Method method = Method::pair, int rounds = 3, int friendCount = 4) : Evening(rounds, 0, friendCount) {
    pattern = session::draft(*store, session);
    pattern.question = Question::notice;
    pattern.method = method;
    pattern.methodChosen = true;
    pattern.attribute = "butter";
    pattern.dose = "half a drop a litre";
    pattern.expected = Slot{1};
    pattern.title = "Butter on purpose";
    pattern.rounds = rounds;
  }

  int makersPlace() const { return static_cast<int>(friends.size()) + 1; }

  /// What somebody says in a round.
  using Teller = std::function<Meant(int place, int round)>;

  /// Right in the first so many rounds, by place; who is not named is right throughout.
  static Teller right(std::map<int, int> rounds) {
    return [rounds = std::move(rounds)](int place, int round) {
      const auto found = rounds.find(place);
      return Meant{found == rounds.end() || round <= found->second};
    };
  }

  /// Plans, seals and tastes one evening, up to the closed table.
  void taste(const Teller& tells, const std::map<int, ShownAs>& as = {}) {
    Draft draft = pattern;
    if (!isFirst) session = session::newDraft(*store, clock, chance, draft.title);
    isFirst = false;
    draft.id = session;
    session::saveDraft(*store, clock, draft);
    seal();
    sheet = session::openPourSheet(*store, clock, session);
    session::sayPoured(*store, clock, session);
    for (int place = 1; place <= makersPlace(); ++place) {
      const auto how = as.find(place);
      sit(place, place == makersPlace() ? maker : friends[static_cast<std::size_t>(place) - 1], how == as.end() ? ShownAs::signedName : how->second);
    }
    const Plan plan = session::record(*store, session).plan;
    for (int place = 1; place <= makersPlace(); ++place)
      while (const auto flight = tasting::nextFlight(*store, session, {place})) {
        tasting::begin(*store, clock, session, {place}, flight->round);
        auto in = answersFor(plan, sheet, *flight, tells(place, flight->round.value));
        chance.fill(in.clientId);
        tasting::handIn(*store, clock, chance, session, in);
      }
    session::close(*store, clock, session);
  }

  /// The same, and the key is opened.
  SessionId tell(const Teller& tells, const std::map<int, ShownAs>& as = {}) {
    taste(tells, as);
    session::reveal(*store, clock, session);
    return session;
  }
};

}  // namespace oddglass::testing
