#pragma once

#include "domain/by_hand.h"
#include "words/voice.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace oddglass::words {

/// What a routine is called: "A couple", "Whole bottles".
std::string routineName(const Voice& voice, Routine routine);

/// What it is, in one plain line, and what it asks of people.
std::string routineLine(const Voice& voice, Routine routine);

/// Why hands cannot do a plan, as the beginning of a sentence that says so.
std::string notByHandLine(const Voice& voice, NotByHand why, Routine routine);

/// Who read the cups, for everything that is found; empty where the key was drawn. `readBy` may be empty: nothing has been read off.
std::string keyReadLine(const Voice& voice, Routine routine, const std::set<ReadBy>& readBy);

/// "by whoever tasted them", as it ends a sentence.
std::string readByWords(const Voice& voice, ReadBy by);

/// How the cups were hidden, for a report; empty where the key was drawn.
std::string hiddenLine(const Voice& voice, Routine routine, Method method);

/// A letter for a whole bottle: 1 is A.
std::string bottleLetter(int bottle);

/// What the steps of a routine are made of. Drinks are those of the plan, which everybody may know; nothing of the key.
struct HandFacts {
  Routine routine = Routine::alone;
  Method method = Method::triangle;
  std::optional<Slot> expected, marked;
  std::vector<std::string> drinks;   ///< by slot
  int cupMl = 30;
  int places = 1, rounds = 1;
  int bottles = 0;                   ///< lettered ones
};

HandFacts handFacts(const Voice& voice, const Plan& plan);

/// Whose hands a step is for.
enum class Hands { any, first, second, pourer };

/// One step of a routine, in the order hands do it.
struct HandStep {
  Hands whose = Hands::any;
  std::string who;       ///< "First person"; may be empty
  std::string text;
  bool handsOver = false;  ///< after it somebody else takes over
  bool showsCodes = false; ///< the codes, or the letters beside them, are needed for it
};
std::vector<HandStep> handSteps(const Voice& voice, const HandFacts& facts);

/// What comes after the steps: "Then everybody tastes ..."; and when and how it is read off.
std::string thenTaste(const Voice& voice, const HandFacts& facts);
std::string thenRead(const Voice& voice, const HandFacts& facts);

/// "2. Pour ..."
std::string numberedStep(const Voice& voice, int number, const std::string& text);

/// Titles and heads of a routine's blank lists.
struct RoutinePaperText {
  std::string firstSheet, secondSheet, list, pouring;  ///< titles
  std::string keep;                                    ///< what becomes of a sheet
  std::string place, code, mark, drink, bottle, aside; ///< heads; the cup set aside
  std::string blank;                                   ///< room for writing
};
RoutinePaperText routinePaperText(const Voice& voice, Routine routine);

/// "Turn cup 472 over: what is under it?", after the routine; `code` 0: the cup that was set aside.
std::string readQuestion(const Voice& voice, Routine routine, Code code);
/// "Round 2 at place 1 is set aside: what was read under the cups does not add up."
std::string asideLine(const Voice& voice, Place place, Round round, VoidReason reason);

std::string cannotReadWord(const Voice& voice);

}  // namespace oddglass::words
