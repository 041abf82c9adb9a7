#pragma once

#include <exception>
#include <map>
#include <string>

namespace oddglass {

/// Everything that can be wrong with a request. `words` has one sentence for each: what happened, what is kept, what to do.
enum class Trouble {
  // forms and files
  empty,            ///< a field that must be filled is empty
  tooLong,          ///< longer than {limit} letters
  notANumber,       ///< {text} is not a number
  outOfRange,       ///< {text} lies outside {low} to {high}
  notAChoice,       ///< {text} is none of {choices}
  notADay,          ///< {text} is not a day such as 2026-03-14
  finalAboveOriginal,  ///< final gravity above the original one
  unknown,          ///< there is no {what} called {text}
  ambiguous,        ///< {text} begins more than one
  alreadyThere,     ///< {text} is there already
  alreadyStabilised,  ///< this batch was stabilised on {day}
  undoneAlready,    ///< taking back: it is not the last change any more
  undoDoesNotFit,   ///< taking back: what came later needs what would go; {name}
  stillInUse,       ///< cannot be archived while a sealed session pours it
  ofTheProgram,     ///< {text} belongs to the list that comes with the program and keeps its name
  wordRetired,      ///< {text} is retired and takes no other word in
  ringOfWords,      ///< {text} is merged into {other} already
  badFile,          ///< {file}, line {line}, column {column}: {text}
  // the plan
  needsTwoLots,     ///< a comparison needs a second drink
  sameLotTwice,     ///< {lot} stands on both sides
  noPanel,          ///< nobody is left who did not make it
  makerPours,       ///< {name} made this batch and is also the pourer
  pourerTastes,     ///< {name} pours and cannot taste as well
  tooFewBottles,    ///< there are {have} bottles of {lot}; this plan needs {need}
  aboveCeiling,     ///< {grams} g an evening is above the ceiling of {ceiling} g
  limitTooWide,     ///< half the room tasting it is not alike
  alikeNeedsLimit,  ///< a verdict of alike is sought and no limit is set
  noStrength,       ///< no alcohol strength is known for {lot}
  tooManyCups,      ///< more cups than there are codes
  needsThree,       ///< three lots are compared in pairs by a triangle, duo-trio or tetrad only
  noAttribute,      ///< a test of one named thing needs the thing and the lot that is asked about
  doesNotFit,       ///< {what} does not go with this method
  otherQuestion,    ///< {method} does not answer {question}; both by their names in domain/names.h
  giveAwaysOpen,    ///< nobody has looked yet whether anything but the taste tells the drinks apart
  giveAwayUnfit,    ///< {check}, by its name in domain/names.h, has no such way out in this plan
  abvMissing,
  notByHand,        ///< the routine {routine} cannot do this plan: {reason}, both by their names in domain/names.h
  // the session's state
  wrongState,       ///< not while the session is {state}
  notSealed,        ///< not sealed yet
  alreadySealed,    ///< the plan is sealed and cannot be changed
  seriesBegun,      ///< a sitting of the series is sealed, so what it was begun for stays
  pagesClosed,      ///< the old pages of series {text} are closed while one of its sittings is sealed
  stillSealed,      ///< the key is still sealed
  askTwice,         ///< this needs to be said twice
  // the table
  noSuchPlace,      ///< there is no place {place}
  placeTaken,       ///< place {place} is taken
  placeEmpty,       ///< nobody sits at place {place}
  samePlace,        ///< place {place} was named twice
  tooLateToTakeBack,  ///< the table is closed
  alreadySeated,    ///< {name} sits at place {place} already
  notOfAge,         ///< only adults taste
  careNotHeard,     ///< the cautions have not been read
  noConsent,        ///< no consent
  pourerSits,       ///< the pourer knows the cups
  noSuchRound,      ///< there is no round {round}
  notThisRound,     ///< round {round} is not the next one at place {place}
  codeNotHere,      ///< {code} is not a code at place {place}. This place has {codes}.
  flightLocked,     ///< already locked at {time}
  flightVoid,       ///< this flight was set aside
  placeLeft,        ///< whoever sat here has stopped
  answerMissing,    ///< item {item} needs an answer
  notARanking,      ///< item {item}: a rank given twice
  notFivePoints,    ///< item {item}: the points make {sum}, not five
  sheetImpossible,  ///< question {item} of the sheet cannot be asked like that
  needsALot,        ///< nothing to score yet
  needsReference,   ///< no lot is the one to compare with
  sheetEmpty,       ///< the sheet asks nothing of a cup, or more than 200 questions
  answerOutOfRange, ///< {value} is no answer to item {item}
  noSpareLeft,      ///< no spare code is left for {code}
  alreadySpilled,   ///< {code} was replaced already
  tableClosed,      ///< a closed table cannot take late sheets
  notSequential,    ///< this plan is not looked at before the end
  roundOpen,        ///< place {place} has not locked this round
  lastRound,        ///< there is no round left to open: close the table
  nothingAnswered,  ///< nobody sits at the table
  keyByHand,        ///< hands hid this key, so there is no sheet to pour by
  keyDrawn,         ///< this key was drawn, so nothing is to be read off
  notReadOff,       ///< round {round} at place {place} has not been read off
  alreadyRead,      ///< round {round} at place {place} was read off already
  notTastedYet,     ///< round {round} at place {place} is neither locked nor set aside
  tableOpen,        ///< nothing is read off in this routine before the close
  cupsNotTold,      ///< each cup of round {round} at place {place} must be told once: {codes}
  bottlesNotTold,   ///< each bottle must be told once: {bottles}
  markNotThere,     ///< the first sheet has no mark {mark} for round {round} at place {place}
  // the store
  storeInUse,       ///< the file is in use by another program
  storeNewer,       ///< this file comes from a newer Oddglass ({version})
  storeForeign,     ///< this is no Oddglass file
  storeDamaged,     ///< the file is damaged
  storeReadOnly,    ///< the file or its folder cannot be written
  diskFull,         ///< not saved: the disk is full
  storeFailed,      ///< {text}
  storeMissing,     ///< there is no file
  // paper
  programMissing,   ///< the program with windows is not at {file}
  notPrinted,       ///< {text}
  labelsDoNotFit,   ///< {text} in a row or column leave {have} mm for each label; it needs {need}
  // interchange
  fileTooLarge, fileTooDeep, keyTwice, notWhole, brokenReference, doesNotVerify, sessionThere, fileNewer,
};

/// The one error of the program. Nothing was changed when it is thrown.
class Problem : public std::exception {
 public:
  using Values = std::map<std::string, std::string>;

  /// `argument` names the field, option or column; `values` fill the sentence that `words` has for `trouble`.
  Problem(Trouble trouble, std::string argument, Values values = {});

  Trouble trouble() const { return trouble_; }
  const std::string& argument() const { return argument_; }
  const Values& values() const { return values_; }
  const char* what() const noexcept override { return text_.c_str(); }

 private:
  Trouble trouble_;
  std::string argument_;
  Values values_;
  std::string text_;
};

}  // namespace oddglass
