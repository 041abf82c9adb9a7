#pragma once

#include "domain/plan.h"

namespace oddglass {

/// How a flight of a method stands before a taster and what they answer: facts of the method, nothing of the key.
struct FlightForm {
  int cups = 0;           ///< in one flight, the marked one among them; 0 for a score sheet, where the plan says it
  bool hasMarked = false; ///< the first cup is marked, and everybody knows that it is the one to compare with
  int picks = 0;          ///< how many cups are picked; 0 where the answer is a word
  bool saysSame = false;  ///< "the same" or "not the same" is answered
  bool hasRight = true;   ///< an answer can be right; a preference cannot
};

/// Source: ISO 4120 (triangle), ISO 10399 (duo-trio), ISO 5495 (pair); tetrad, two-out-of-five, 3-AFC, same-different, A-not-A: ISO 6658 and *common practice*.
constexpr FlightForm formOf(Method method) {
  switch (method) {
    case Method::triangle: return {3, false, 1, false, true};
    case Method::duoTrio: return {3, true, 1, false, true};
    case Method::tetrad: return {4, false, 2, false, true};
    case Method::twoOutOfFive: return {5, false, 2, false, true};
    case Method::pair: return {2, false, 1, false, true};
    case Method::threeAfc: return {3, false, 1, false, true};
    case Method::sameDifferent: return {2, false, 0, true, true};
    case Method::aNotA: return {2, true, 0, true, true};
    case Method::preference: return {2, false, 0, false, false};
    case Method::sheet: return {0, false, 0, false, false};
  }
  return {};
}

/// The methods that compare cups: all but the score sheet.
const std::vector<Method>& comparingMethods();

/// Cups in one flight of a plan, the marked one among them.
inline int cupsInFlight(const Plan& plan) {
  if (!plan.sheet) return formOf(plan.method).cups;
  return (plan.marked ? 1 : 0) + (plan.sheet->orders.empty() ? 0 : static_cast<int>(plan.sheet->orders.front().size()));
}

/// True where the first cup of each flight is marked: the one to compare with.
inline bool hasMarkedCup(const Plan& plan) { return plan.sheet ? plan.marked.has_value() : formOf(plan.method).hasMarked; }

/// True for the methods whose answers are right or wrong against a guessing chance: all but preference, same-different and A-not-A.
constexpr bool hasGuessing(Method method) { return formOf(method).hasRight && !formOf(method).saysSame; }

/// True where one named thing is compared, and so a lot has to be expected to have more of it.
constexpr bool namesAThing(Method method) { return method == Method::pair || method == Method::threeAfc; }

/// True where a plan holds one thing by its name and the lot that has more of it: the method asks about it, or the difference is known beforehand.
constexpr bool holdsAThing(Method method, Question question) { return namesAThing(method) || question == Question::notice; }

/// True where a method answers a question: a preference is asked for as such, and what is more so of one named thing. Whether they differ may be
/// asked of a named thing too; whether a known difference is noticed takes a right answer that can be guessed.
constexpr bool answers(Method method, Question question) {
  switch (question) {
    case Question::differ: return formOf(method).hasRight;
    case Question::more: return namesAThing(method);
    case Question::prefer: return method == Method::preference;
    case Question::good:
    case Question::lacks: return method == Method::sheet;
    case Question::notice: return hasGuessing(method);
  }
  return false;
}

/// The method that a question is asked by until something better is known.
constexpr Method usualMethod(Question question) {
  switch (question) {
    case Question::differ: return Method::triangle;
    case Question::more:
    case Question::notice: return Method::pair;
    case Question::prefer: return Method::preference;
    case Question::good:
    case Question::lacks: return Method::sheet;
  }
  return Method::triangle;
}

/// True where three lots may be compared in three pairs: a right answer that needs no named thing.
constexpr bool comparesThree(Method method) { return method == Method::triangle || method == Method::duoTrio || method == Method::tetrad; }

/// True where a preference may be asked after the choice.
constexpr bool mayAlsoPrefer(Method method) { return formOf(method).hasRight && formOf(method).picks > 0; }

/// True where a verdict of alike may be sought: few right answers must say something, so not where one direction only is asked about.
constexpr bool mayBeAlike(Method method) { return hasGuessing(method) && !namesAThing(method); }

/// True where a plan may be looked at after whole rounds: two lots, and a guessing chance to compare with.
constexpr bool mayStopEarly(Method method, std::size_t lots) { return hasGuessing(method) && comparisonsOf(lots) == 1; }

/// The questions that a method asks, in their order, numbered from 1: the choice, sureness, how they knew, what was liked better, a comment.
/// A score sheet asks its own (domain/sheet.h).
std::vector<SheetItem> sheetOf(Method method, bool mayHaveNone, bool alsoPrefer);

}  // namespace oddglass
