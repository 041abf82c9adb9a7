#pragma once

#include "domain/revealed.h"
#include "store/store.h"

#include <string>
#include <vector>

namespace oddglass::session {

/// A session in a list. Nothing in it depends on a sealed key.
struct SessionLine {
  SessionId id;
  std::string title;
  std::string guestTitle;
  State state = State::draft;
  Question question = Question::differ;
  CameFrom cameFrom = CameFrom::here;
  Millis createdAt = 0;
  Millis lastAt = 0;       ///< when the record, or the draft, was last added to
  std::string sealMark;    ///< empty for a draft
  int answered = 0;        ///< flights handed in
  int places = 0;          ///< places taken, or planned while nobody sits
};
std::vector<SessionLine> sessions(store::Store& store);

/// The one session whose id begins so; four digits or more. Problem unknown, ambiguous.
SessionId sessionNamed(store::Store& store, const std::string& start);

/// A revealed (or broken) session by value, for findings. Problem stillSealed before.
RevealedSession revealed(store::Store& store, const SessionId& session);

/// One entry of the log in the terms of the house; `words` turns it into a sentence.
struct HistoryLine {
  Seq seq;
  Millis at = 0;
  Event event = Event::sealed;
  State after = State::sealed;
  std::optional<Place> place;
  std::optional<Round> round;
  std::optional<Code> code, byCode;      ///< a spilled cup
  std::optional<VoidReason> reason;
  std::vector<Place> heardBy;            ///< empty: everybody
  std::optional<bool> commitmentHolds;   ///< at the reveal
  std::optional<int> missing;            ///< at the close
  std::optional<bool> goOn;              ///< what a look after a round said
  std::optional<ReadBy> readBy;          ///< who read off what stood under the cups
  std::optional<Place> typedBy;          ///< whose place typed answers in; 0: somebody not at the table
  std::string words;                     ///< only after the reveal or the breaking of the seal; may be erased
  std::vector<Place> places;             ///< the two that had each other's cups
  bool clockBack = false;                ///< earlier, by the clock, than the entry before it
};
std::vector<HistoryLine> history(store::Store& store, const SessionId& session);

/// What was decided after the last revealed session that poured one of these lots or beverages, for the next plan; empty when nothing was.
std::string lastDecision(store::Store& store, const std::vector<LotId>& lots);

}  // namespace oddglass::session
