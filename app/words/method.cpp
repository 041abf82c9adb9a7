#include "words/method.h"

#include "domain/flight_form.h"
#include "words/came_out.h"
#include "words/mark.h"

namespace oddglass::words {

std::string methodName(const Voice& voice, Method method) {
  switch (method) {
    case Method::triangle: return say(voice, QT_TRANSLATE_NOOP("words", "triangle"));
    case Method::duoTrio: return say(voice, QT_TRANSLATE_NOOP("words", "duo-trio"));
    case Method::tetrad: return say(voice, QT_TRANSLATE_NOOP("words", "tetrad"));
    case Method::twoOutOfFive: return say(voice, QT_TRANSLATE_NOOP("words", "two-out-of-five"));
    case Method::pair: return say(voice, QT_TRANSLATE_NOOP("words", "directional pair"));
    case Method::threeAfc: return say(voice, QT_TRANSLATE_NOOP("words", "3-AFC"));
    case Method::sameDifferent: return say(voice, QT_TRANSLATE_NOOP("words", "same-different"));
    case Method::aNotA: return say(voice, QT_TRANSLATE_NOOP("words", "A-not-A"));
    case Method::preference: return say(voice, QT_TRANSLATE_NOOP("words", "paired preference"));
    case Method::sheet: return say(voice, QT_TRANSLATE_NOOP("words", "score sheet"));
  }
  return {};
}

std::string methodLine(const Voice& voice, Method method, const std::string& attribute) {
  const Values more{{"more", attribute}};
  switch (method) {
    case Method::triangle: return say(voice, QT_TRANSLATE_NOOP("words", "A triangle: three cups, two of one drink and one of the other. Which one is odd?"));
    case Method::duoTrio: return say(voice, QT_TRANSLATE_NOOP("words", "A duo-trio: a marked cup first, then two coded ones. Which of the two is the same as the marked cup?"));
    case Method::tetrad: return say(voice, QT_TRANSLATE_NOOP("words", "A tetrad: four cups, two of each drink. Which two go together?"));
    case Method::twoOutOfFive: return say(voice, QT_TRANSLATE_NOOP("words", "Two out of five: five cups, three of one drink and two of the other. Which two are the odd ones?"));
    case Method::pair: return say(voice, QT_TRANSLATE_NOOP("words", "A directional pair: two cups, one of each drink. “{more}”: which one has more of it?"), more);
    case Method::threeAfc: return say(voice, QT_TRANSLATE_NOOP("words", "A 3-AFC: three cups, one of the drink that is expected to have more of it and two of the other. “{more}”: which one has the most of it?"), more);
    case Method::sameDifferent: return say(voice, QT_TRANSLATE_NOOP("words", "Same-different: two cups, of one drink or of both. Are they the same or not?"));
    case Method::aNotA: return say(voice, QT_TRANSLATE_NOOP("words", "A-not-A: a marked cup to learn, then one coded cup. Is it the same as the marked one or not?"));
    case Method::preference: return say(voice, QT_TRANSLATE_NOOP("words", "A paired preference: two cups, one of each drink. Which one do you like better?"));
    case Method::sheet: return say(voice, QT_TRANSLATE_NOOP("words", "Score sheets: each person gets all the cups under codes and says of each one what they find."));
  }
  return {};
}

std::string markedLine(const Voice& voice, const Plan& plan) {
  if (!hasMarkedCup(plan)) return {};
  if (!plan.marked) return say(voice, QT_TRANSLATE_NOOP("words", "The marked cup holds either drink, drawn for each flight (balanced reference)."));
  for (const PlannedLot& lot : plan.lots)
    if (lot.slot == *plan.marked)
      return say(voice, QT_TRANSLATE_NOOP("words", "The marked cup always holds {lot} (constant reference)."), {{"lot", lotTitle(voice, lot)}});
  return {};
}

std::string questionLine(const Voice& voice, Question question, const std::string& attribute, bool alone) {
  switch (question) {
    case Question::differ: return say(voice, QT_TRANSLATE_NOOP("words", "Can anyone tell them apart?"));
    case Question::more:
      return attribute.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Is mine more …?")) : say(voice, QT_TRANSLATE_NOOP("words", "Is mine more {more}?"), {{"more", attribute}});
    case Question::prefer: return say(voice, QT_TRANSLATE_NOOP("words", "Which do people prefer?"));
    case Question::good: return say(voice, QT_TRANSLATE_NOOP("words", "How good is it really?"));
    case Question::lacks: return say(voice, QT_TRANSLATE_NOOP("words", "What is it like, and what does it lack next to the reference?"));
    case Question::notice:
      if (attribute.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Can my friends taste what I know is there?"));
      return say(voice, alone ? QT_TRANSLATE_NOOP("words", "Do I notice “{more}” where I know it is?") : QT_TRANSLATE_NOOP("words", "Can my friends notice “{more}”?"), {{"more", attribute}});
  }
  return {};
}

std::string prompt(const Voice& voice, Method method, const std::string& attribute) {
  const Values more{{"more", attribute}};
  switch (method) {
    case Method::triangle: return say(voice, QT_TRANSLATE_NOOP("words", "Which one is the odd one?"));
    case Method::duoTrio: return say(voice, QT_TRANSLATE_NOOP("words", "Which one is the same as the marked cup?"));
    case Method::tetrad: return say(voice, QT_TRANSLATE_NOOP("words", "Which two go together?"));
    case Method::twoOutOfFive: return say(voice, QT_TRANSLATE_NOOP("words", "Which two are the odd ones?"));
    case Method::pair: return say(voice, QT_TRANSLATE_NOOP("words", "“{more}”: which one has more of it?"), more);
    case Method::threeAfc: return say(voice, QT_TRANSLATE_NOOP("words", "“{more}”: which one has the most of it?"), more);
    case Method::sameDifferent: return say(voice, QT_TRANSLATE_NOOP("words", "Are these two the same?"));
    case Method::aNotA: return say(voice, QT_TRANSLATE_NOOP("words", "Is the coded cup the same as the marked one?"));
    case Method::preference: return say(voice, QT_TRANSLATE_NOOP("words", "Which one do you like better?"));
    case Method::sheet: return say(voice, QT_TRANSLATE_NOOP("words", "What do you find in each cup?"));
  }
  return {};
}

std::string promptHint(const Voice& voice, Method method, bool mayHaveNone) {
  switch (method) {
    case Method::triangle:
    case Method::threeAfc: return say(voice, QT_TRANSLATE_NOOP("words", "Taste from left to right. Choose one; a guess is a good answer."));
    case Method::pair: return say(voice, QT_TRANSLATE_NOOP("words", "Taste from left to right. Choose one, even when they seem alike."));
    case Method::duoTrio: return say(voice, QT_TRANSLATE_NOOP("words", "Taste the marked cup first, then the two others. Choose one; a guess is a good answer."));
    case Method::tetrad: return say(voice, QT_TRANSLATE_NOOP("words", "Choose the two of one group; the other two are the other group. A guess is a good answer."));
    case Method::twoOutOfFive: return say(voice, QT_TRANSLATE_NOOP("words", "Choose two; the other three are alike. A guess is a good answer."));
    case Method::sameDifferent: return say(voice, QT_TRANSLATE_NOOP("words", "Some flights hold one drink twice, some hold two. A guess is a good answer."));
    case Method::aNotA: return say(voice, QT_TRANSLATE_NOOP("words", "Taste the marked cup first and remember it, then the coded one. A guess is a good answer."));
    case Method::preference:
      return mayHaveNone ? say(voice, QT_TRANSLATE_NOOP("words", "There is no right answer. “No preference” is an answer too."))
                         : say(voice, QT_TRANSLATE_NOOP("words", "There is no right answer. Choose one, even when it is close."));
    case Method::sheet: return say(voice, QT_TRANSLATE_NOOP("words", "There is no right answer. Say what you find, not what you think it is."));
  }
  return {};
}

std::string sameWord(const Voice& voice, Method method, bool isSame) {
  if (method == Method::aNotA)
    return isSame ? say(voice, QT_TRANSLATE_NOOP("words", "the same as the marked cup")) : say(voice, QT_TRANSLATE_NOOP("words", "another one"));
  return isSame ? say(voice, QT_TRANSLATE_NOOP("words", "the same")) : say(voice, QT_TRANSLATE_NOOP("words", "different"));
}

}  // namespace oddglass::words
