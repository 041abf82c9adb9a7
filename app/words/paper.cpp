#include "words/paper.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_asked.h"
#include "words/units.h"

namespace oddglass::words {

std::string pageOf(const Voice& voice, int page, int pages) {
  return say(voice, QT_TRANSLATE_NOOP("words", "page {page} of {pages}"), {{"page", whole(voice, page)}, {"pages", whole(voice, pages)}});
}

std::string paperFoot(const Voice& voice, const std::string& guestTitle, const std::string& sealMark) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Seal mark: {mark}. {title}"), {{"mark", sealMark}, {"title", guestTitle}});
}

std::string placeLine(const Voice& voice, Place place, Round round, int rounds) {
  const Values values{{"place", whole(voice, place.value)}, {"round", whole(voice, round.value)}, {"rounds", whole(voice, rounds)}};
  return rounds > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "Place {place}, round {round} of {rounds}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "Place {place}"), values);
}

std::string positionWord(const Voice& voice, Position position, int cups) {
  if (position.value == 1) return say(voice, QT_TRANSLATE_NOOP("words", "left"));
  if (position.value == cups) return say(voice, QT_TRANSLATE_NOOP("words", "right"));
  if (cups == 3) return say(voice, QT_TRANSLATE_NOOP("words", "middle"));
  return say(voice, QT_TRANSLATE_NOOP("words", "number {n} from the left"), {{"n", whole(voice, position.value)}});
}

std::string labelLine(const Voice& voice, const Cup& cup, int rounds, int cups) {
  const Values values{{"place", whole(voice, cup.place.value)}, {"round", whole(voice, cup.round.value)}, {"position", positionWord(voice, cup.position, cups)}};
  if (cup.spare > 0)
    return rounds > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "spare: place {place}, round {round}, {position}"), values)
                      : say(voice, QT_TRANSLATE_NOOP("words", "spare: place {place}, {position}"), values);
  return rounds > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "place {place}, round {round}, {position}"), values)
                    : say(voice, QT_TRANSLATE_NOOP("words", "place {place}, {position}"), values);
}

TablePaperText tablePaperText(const Voice& voice) {
  TablePaperText text;
  text.labels = say(voice, QT_TRANSLATE_NOOP("words", "Cup labels"));
  text.mats = say(voice, QT_TRANSLATE_NOOP("words", "Place mats"));
  text.answers = say(voice, QT_TRANSLATE_NOOP("words", "Answer sheets"));
  text.leftToRight = say(voice, QT_TRANSLATE_NOOP("words", "Taste from left to right, as you sit here."));
  text.tasterSits = say(voice, QT_TRANSLATE_NOOP("words", "This edge is yours. Do the codes on the cups stand here, in this order? If not, do not taste; tell the host."));
  text.mark = say(voice, QT_TRANSLATE_NOOP("words", "R"));
  text.markedCup = say(voice, QT_TRANSLATE_NOOP("words", "marked cup"));
  text.howSure = say(voice, QT_TRANSLATE_NOOP("words", "How sure are you?"));
  text.howKnew = say(voice, QT_TRANSLATE_NOOP("words", "How did you know? Tick one."));
  text.likedBetter = say(voice, QT_TRANSLATE_NOOP("words", "Which one did you like better?"));
  text.remark = say(voice, QT_TRANSLATE_NOOP("words", "Anything else, if you like"));
  text.tickOne = say(voice, QT_TRANSLATE_NOOP("words", "Tick one."));
  text.tickTwo = say(voice, QT_TRANSLATE_NOOP("words", "Tick two."));
  text.noneFound = say(voice, QT_TRANSLATE_NOOP("words", "I looked and found none"));
  text.blankPlace = say(voice, QT_TRANSLATE_NOOP("words", "Place and round"));
  text.blankCode = say(voice, QT_TRANSLATE_NOOP("words", "Write the codes of your cups into the boxes, from left to right."));
  text.inMillimetres = say(voice, QT_TRANSLATE_NOOP("words", "A line is 100 mm long when this page is printed at its own size. Whoever types it in measures from its beginning."));
  text.fold = say(voice, QT_TRANSLATE_NOOP("words", "No talking until everybody is done. Fold this sheet and put it into the box; nobody reads it before the table is closed but whoever types it in."));
  return text;
}

std::string partHeadline(const Voice& voice, Part part) {
  switch (part) {
    case Part::look: return say(voice, QT_TRANSLATE_NOOP("words", "Look at this cup"));
    case Part::smell: return say(voice, QT_TRANSLATE_NOOP("words", "Smell this cup"));
    case Part::main: return say(voice, QT_TRANSLATE_NOOP("words", "Taste this cup"));
    case Part::late: return say(voice, QT_TRANSLATE_NOOP("words", "The same cup, some time later"));
    case Part::last: return say(voice, QT_TRANSLATE_NOOP("words", "All cups together"));
  }
  return {};
}

std::string partLead(const Voice& voice, Part part) {
  switch (part) {
    case Part::look: return say(voice, QT_TRANSLATE_NOOP("words", "Do not smell or taste yet."));
    case Part::smell: return say(voice, QT_TRANSLATE_NOOP("words", "Do not taste yet."));
    case Part::main: return say(voice, QT_TRANSLATE_NOOP("words", "There is no right answer. Say what you find, not what you think it is."));
    case Part::late: return say(voice, QT_TRANSLATE_NOOP("words", "Say what is there now."));
    case Part::last: return say(voice, QT_TRANSLATE_NOOP("words", "You may taste again."));
  }
  return {};
}

std::string writtenLabel(const Voice& voice, const SheetItem& item, int cups) {
  const Values values{{"what", item.word}, {"most", whole(voice, cups)}};
  switch (item.kind) {
    case ItemKind::line:
    case ItemKind::magnitude: return say(voice, QT_TRANSLATE_NOOP("words", "How much: {what}? Put a stroke across the line."), values);
    case ItemKind::check: return say(voice, QT_TRANSLATE_NOOP("words", "Tick every word that applies. None is an answer too."));
    case ItemKind::rank:
      return item.word.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Number the cups: 1 for the one you like least, {most} for the one you like most. Each number once."), values)
                               : say(voice, QT_TRANSLATE_NOOP("words", "Number the cups: 1 for the least, {most} for the most: {what}. Each number once."), values);
    case ItemKind::split: return say(voice, QT_TRANSLATE_NOOP("words", "You have five points. Give them to the cups; all five."));
    default: return askedLabel(voice, item);
  }
}

std::string pauseLine(const Voice& voice, int seconds, const std::string& cleanser) {
  const Values values{{"seconds", whole(voice, seconds)}, {"what", cleanser}};
  return cleanser.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "A pause of {seconds} seconds and a sip of water. Then comes the next cup."), values)
                          : say(voice, QT_TRANSLATE_NOOP("words", "A pause of {seconds} seconds. Take what everybody takes: {what}. Then comes the next cup."), values);
}

std::string waitLine(const Voice& voice, int seconds) {
  return say(voice, QT_TRANSLATE_NOOP("words", "Wait {seconds} seconds for what comes late. Do not drink anything meanwhile."), {{"seconds", whole(voice, seconds)}});
}

PourPaperText pourPaperText(const Voice& voice, int cupMl) {
  PourPaperText text;
  text.title = say(voice, QT_TRANSLATE_NOOP("words", "For the pourer"));
  text.keyTitle = say(voice, QT_TRANSLATE_NOOP("words", "Key card"));
  text.warning = say(voice, QT_TRANSLATE_NOOP("words", "For the pourer alone: this sheet is the key. Do not read it aloud, do not taste, take it with you."));
  text.amount = say(voice, QT_TRANSLATE_NOOP("words", "{volume} into each cup."), {{"volume", volume(voice, cupMl)}});
  text.pourOrder = say(voice, QT_TRANSLATE_NOOP("words", "Pour bottle by bottle"));
  text.placeOrder = say(voice, QT_TRANSLATE_NOOP("words", "Then check place by place, from the taster's left to the right"));
  text.spares = say(voice, QT_TRANSLATE_NOOP("words", "Only for a spilled cup: the code that takes its place"));
  text.spare = say(voice, QT_TRANSLATE_NOOP("words", "spare"));
  text.keyHead = say(voice, QT_TRANSLATE_NOOP("words", "The key, sealed"));
  text.keyHow = say(voice, QT_TRANSLATE_NOOP("words", "Everybody at the table signs across the tape."));
  text.keyWhen = say(voice, QT_TRANSLATE_NOOP("words", "Not needed when all goes well: burn it then. It is opened only when the computer is lost, after the last answer is written down."));
  text.keyInside = say(voice, QT_TRANSLATE_NOOP("words", "What stood under which code"));
  text.folds = {say(voice, QT_TRANSLATE_NOOP("words", "3. Fold this quarter to the back, round all of it, and tape it down.")),
                say(voice, QT_TRANSLATE_NOOP("words", "This quarter stays in front.")),
                say(voice, QT_TRANSLATE_NOOP("words", "2. Fold these two quarters to the back.")),
                say(voice, QT_TRANSLATE_NOOP("words", "1. Fold this quarter up, over the writing."))};
  return text;
}

std::string pourHeading(const Voice& voice, const PourHeading& step) {
  const Values values{{"round", whole(voice, step.round.value)}, {"evening", whole(voice, step.evening)}, {"first", whole(voice, step.first.value)}, {"last", whole(voice, step.last.value)}, {"drink", step.drink}};
  if (!step.isWave && step.rounds == 1) return step.drink;
  if (!step.isWave)
    return step.evenings > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "Evening {evening}, round {round}: {drink}"), values) : say(voice, QT_TRANSLATE_NOOP("words", "Round {round}: {drink}"), values);
  if (step.rounds == 1) return say(voice, QT_TRANSLATE_NOOP("words", "Places {first} to {last}: {drink}"), values);
  return step.evenings > 1 ? say(voice, QT_TRANSLATE_NOOP("words", "Evening {evening}, round {round}, places {first} to {last}: {drink}"), values)
                           : say(voice, QT_TRANSLATE_NOOP("words", "Round {round}, places {first} to {last}: {drink}"), values);
}

}  // namespace oddglass::words
