#include "words/problems.h"

#include "domain/names.h"
#include "words/give_aways.h"
#include "words/history.h"
#include "words/mark.h"
#include "words/method.h"
#include "words/numbers.h"
#include "words/routine.h"
#include "words/units.h"

namespace oddglass::words {
namespace {

/// The sentence with its {places}; a new trouble without one does not compile.
const char* sourceOf(Trouble trouble) {
  switch (trouble) {
    case Trouble::empty: return QT_TRANSLATE_NOOP("words", "{Field} is empty. Nothing was changed. Fill it in and try again.");
    case Trouble::tooLong: return QT_TRANSLATE_NOOP("words", "{Field} is longer than {limit} letters. Nothing was changed. Shorten it and try again.");
    case Trouble::notANumber: return QT_TRANSLATE_NOOP("words", "{Field}: “{text}” is not a number. Nothing was changed. Write digits, with a comma or a point before the fraction.");
    case Trouble::outOfRange: return QT_TRANSLATE_NOOP("words", "{Field}: {text} lies outside {low} to {high}. Nothing was changed. Choose a value within that range.");
    case Trouble::notAChoice: return QT_TRANSLATE_NOOP("words", "{Field}: “{text}” cannot be chosen here. Nothing was changed. Choose one of {choices}.");
    case Trouble::notADay: return QT_TRANSLATE_NOOP("words", "{Field}: “{text}” is not a day. Nothing was changed. Write it like 2026-03-14.");
    case Trouble::finalAboveOriginal: return QT_TRANSLATE_NOOP("words", "The final gravity is above the original one. Nothing was changed. Check that the two were not swapped.");
    case Trouble::unknown: return QT_TRANSLATE_NOOP("words", "There is no {what} called “{text}”. Nothing was changed. Check the name, or look in the list.");
    case Trouble::ambiguous: return QT_TRANSLATE_NOOP("words", "“{text}” begins more than one. Nothing was changed. Give a few more letters.");
    case Trouble::alreadyThere: return QT_TRANSLATE_NOOP("words", "“{text}” is there already. Nothing was changed. Use the one that is there, or choose another name.");
    case Trouble::alreadyStabilised: return QT_TRANSLATE_NOOP("words", "This batch was stabilised on {day}. Nothing was added. If it was really done twice, say so once more.");
    case Trouble::undoneAlready: return QT_TRANSLATE_NOOP("words", "This change was taken back already, or something else was changed since. Nothing was changed now. Look at the page.");
    case Trouble::undoDoesNotFit: return QT_TRANSLATE_NOOP("words", "This cannot be taken back any more: what came later needs “{name}” as it is. Nothing was changed. Change it by hand, or put it away.");
    case Trouble::stillInUse: return QT_TRANSLATE_NOOP("words", "A sealed session still pours this. It stays on the shelf. Put it away after the reveal.");
    case Trouble::ofTheProgram: return QT_TRANSLATE_NOOP("words", "“{text}” belongs to the list that comes with the program and keeps its name. Nothing was changed. Retire it, or merge it into a word of your own.");
    case Trouble::wordRetired: return QT_TRANSLATE_NOOP("words", "“{text}” is retired and takes no other word in. Nothing was changed. Bring it back first, or choose another one.");
    case Trouble::ringOfWords: return QT_TRANSLATE_NOOP("words", "“{text}” counts as “{other}” already, so the two cannot be merged this way round. Nothing was changed. Choose another word.");
    case Trouble::badFile: return QT_TRANSLATE_NOOP("words", "{file}, line {line}, column {column}: {text}. Nothing was read in. Mend that place and try again.");

    case Trouble::needsTwoLots: return QT_TRANSLATE_NOOP("words", "A comparison needs a second drink. The plan is kept. Add the bought one, or another of your own.");
    case Trouble::sameLotTwice: return QT_TRANSLATE_NOOP("words", "{lot} stands on both sides. The plan is kept. Choose a different drink for one of them.");
    case Trouble::noPanel: return QT_TRANSLATE_NOOP("words", "Nobody is left who did not make it. The plan is kept. Add at least one person who had no hand in it, or taste alone.");
    case Trouble::makerPours: return QT_TRANSLATE_NOOP("words", "{name} made this batch and is also the pourer. The plan is kept. Choose someone else to pour, or use a routine where nobody knows.");
    case Trouble::pourerTastes: return QT_TRANSLATE_NOOP("words", "{name} pours and so knows the cups. The plan is kept. Take {name} off the tasters, or choose someone else to pour.");
    case Trouble::tooFewBottles: return QT_TRANSLATE_NOOP("words", "There are {have} bottles of {lot}; this plan needs {need}. The plan is kept. Pour less into each cup, or leave out a round.");
    case Trouble::aboveCeiling: return QT_TRANSLATE_NOOP("words", "This plan offers each person {grams} g of alcohol in an evening; your ceiling is {ceiling} g. The plan is kept. Pour less into each cup, spread it over two evenings, or leave out a round.");
    case Trouble::limitTooWide: return QT_TRANSLATE_NOOP("words", "Half the room tasting it is not alike. The plan is kept. Set a limit of half the people or fewer.");
    case Trouble::alikeNeedsLimit: return QT_TRANSLATE_NOOP("words", "A verdict of alike needs a limit that is set before. The plan is kept. Say how few may still taste it.");
    case Trouble::noStrength: return QT_TRANSLATE_NOOP("words", "No alcohol strength is known for {lot}. The plan is kept. Write its strength, a careful guess if need be: it is marked as one.");
    case Trouble::tooManyCups: return QT_TRANSLATE_NOOP("words", "This plan needs more cups than there are codes. The plan is kept. Leave out a round, or invite fewer people.");
    case Trouble::abvMissing: return QT_TRANSLATE_NOOP("words", "The alcohol strength is missing. Nothing was changed. Write it, or both gravities.");

    case Trouble::notByHand: return QT_TRANSLATE_NOOP("words", "{why} The plan is kept. Change that, or choose another routine.");

    case Trouble::wrongState: return QT_TRANSLATE_NOOP("words", "That cannot be done while this session is {state}. Nothing was changed. Go on with what the session's page offers now.");
    case Trouble::notSealed: return QT_TRANSLATE_NOOP("words", "This plan is not sealed yet. The plan is kept. Seal it first.");
    case Trouble::alreadySealed: return QT_TRANSLATE_NOOP("words", "This plan is sealed and cannot be changed. It stays as it is. Make a new plan, or break the seal, which ends the session without a verdict.");
    case Trouble::seriesBegun: return QT_TRANSLATE_NOOP("words", "A sitting of this series is sealed, so what the series was begun for stays. Everything is kept. Begin another series if you want to know something else.");
    case Trouble::pagesClosed: return QT_TRANSLATE_NOOP("words", "The old pages of {text} are closed while one of its sittings is sealed: what you read there would sit at the table with you. Everything is kept. Open the key of that sitting first.");
    case Trouble::stillSealed: return QT_TRANSLATE_NOOP("words", "The key is still sealed, so there is nothing to report. All answers are kept. Close the table and open the key first.");
    case Trouble::askTwice: return QT_TRANSLATE_NOOP("words", "This cannot be undone, so it needs to be said twice. Nothing was changed. Say it once more if you mean it.");

    case Trouble::noSuchPlace: return QT_TRANSLATE_NOOP("words", "There is no place {place}. Nothing was changed. Look at the number on the mat.");
    case Trouble::placeTaken: return QT_TRANSLATE_NOOP("words", "Place {place} is taken. Nothing was changed. Choose a free one.");
    case Trouble::placeEmpty: return QT_TRANSLATE_NOOP("words", "Nobody sits at place {place}. Nothing was changed. Seat somebody there first.");
    case Trouble::alreadySeated: return QT_TRANSLATE_NOOP("words", "{name} sits at place {place} already. Nothing was changed. Go on there.");
    case Trouble::samePlace: return QT_TRANSLATE_NOOP("words", "Place {place} was named twice. Nothing was changed. Name the two places that had each other's cups.");
    case Trouble::tooLateToTakeBack: return QT_TRANSLATE_NOOP("words", "The table is closed, so answers are not taken back here any more. Everything is kept. Whoever gave a name or a nickname can be forgotten by the brewer, on the page of people; what was given without a name can no longer be found.");
    case Trouble::notOfAge: return QT_TRANSLATE_NOOP("words", "Only adults taste. Nothing was changed. Somebody else may take this place.");
    case Trouble::careNotHeard: return QT_TRANSLATE_NOOP("words", "The cautions have not been read yet. Nothing was changed. Read them aloud, then go on.");
    case Trouble::noConsent: return QT_TRANSLATE_NOOP("words", "Without consent nobody tastes. Nothing was changed. Sitting out needs no reason.");
    case Trouble::pourerSits: return QT_TRANSLATE_NOOP("words", "The pourer knows the cups and cannot taste. Nothing was changed. Seat somebody else.");
    case Trouble::noSuchRound: return QT_TRANSLATE_NOOP("words", "There is no round {round} in this session. Nothing was changed. Look at the sheet.");
    case Trouble::notThisRound: return QT_TRANSLATE_NOOP("words", "Round {round} is not the next one at place {place}. Nothing was changed. Take the rounds in their order.");
    case Trouble::codeNotHere: return QT_TRANSLATE_NOOP("words", "{code} is not a code at place {place}. Nothing was changed. This place has {codes}.");
    case Trouble::flightLocked: return QT_TRANSLATE_NOOP("words", "This answer was already locked at {time}. It stays as it is. Tell the host if it is wrong: a note can be added.");
    case Trouble::flightVoid: return QT_TRANSLATE_NOOP("words", "This round was set aside at place {place}. What was said before is kept. Go on with the next round.");
    case Trouble::placeLeft: return QT_TRANSLATE_NOOP("words", "Whoever sat at place {place} has stopped. What was locked is kept. A latecomer takes a spare place.");
    case Trouble::answerMissing: return QT_TRANSLATE_NOOP("words", "Question {item} needs an answer. What you chose is still here. A guess is a good answer.");
    case Trouble::notARanking: return QT_TRANSLATE_NOOP("words", "Question {item} gives two cups the same rank. Nothing was locked. Give each rank once.");
    case Trouble::notFivePoints: return QT_TRANSLATE_NOOP("words", "Question {item} has five points to give, and {sum} were given. Nothing was locked. Give all five.");
    case Trouble::sheetImpossible: return QT_TRANSLATE_NOOP("words", "Question {item} of the sheet cannot be asked like that. Nothing was changed. It may lack its word, stand twice, or need a marked cup.");
    case Trouble::needsALot: return QT_TRANSLATE_NOOP("words", "There is nothing to score yet. The plan is kept. Choose at least one drink.");
    case Trouble::needsReference: return QT_TRANSLATE_NOOP("words", "Nothing is there to compare with. The plan is kept. Add a bought drink, or say which one the others are held against.");
    case Trouble::sheetEmpty: return QT_TRANSLATE_NOOP("words", "The sheet asks nothing about a cup, or has more than 200 questions. Nothing was changed. Take a ready sheet, or put together your own.");
    case Trouble::answerOutOfRange: return QT_TRANSLATE_NOOP("words", "“{value}” is no answer to question {item}. Nothing was locked. Choose one of those offered.");
    case Trouble::noSpareLeft: return QT_TRANSLATE_NOOP("words", "No spare code is left for cup {code}. What was locked is kept. Set this round aside at that place; it will be counted as missing.");
    case Trouble::alreadySpilled: return QT_TRANSLATE_NOOP("words", "Cup {code} was replaced already. Nothing was changed. Use the code that took its place.");
    case Trouble::notSequential: return QT_TRANSLATE_NOOP("words", "This plan is not looked at before the end: looking early would raise the false alarms. Nothing was opened. Close the table when everybody has locked.");
    case Trouble::roundOpen: return QT_TRANSLATE_NOOP("words", "Place {place} has not locked this round. Nothing was opened. Look when the whole round is locked.");
    case Trouble::lastRound: return QT_TRANSLATE_NOOP("words", "There is no further round to open. All that was locked is kept. Close the table.");
    case Trouble::nothingAnswered: return QT_TRANSLATE_NOOP("words", "Nobody sits at the table yet. Nothing was opened. Look when a whole round is locked.");
    case Trouble::needsThree: return QT_TRANSLATE_NOOP("words", "Three lots are compared pair by pair, by a triangle, a duo-trio or a tetrad only. The plan is kept. Choose one of these, or two lots.");
    case Trouble::noAttribute: return QT_TRANSLATE_NOOP("words", "Say what one of them has more of, and which one you expect it of. The plan is kept.");
    case Trouble::giveAwaysOpen: return QT_TRANSLATE_NOOP("words", "Nobody has looked yet whether anything but the taste tells the drinks apart. The plan is kept. Go through the nine checks of the give-aways.");
    case Trouble::giveAwayUnfit: return QT_TRANSLATE_NOOP("words", "{check}: what was chosen for it does not go with this plan. The plan is kept. Choose another way out among the give-aways.");
    case Trouble::doesNotFit: return QT_TRANSLATE_NOOP("words", "{Field} does not go with this way of asking. The plan is kept. Leave it out, or choose another way.");
    case Trouble::otherQuestion: return QT_TRANSLATE_NOOP("words", "“{question}” is not answered by this way of asking: {method}. Nothing was changed. Choose another way, or ask another question.");
    case Trouble::tableClosed: return QT_TRANSLATE_NOOP("words", "A closed table cannot take late sheets. All that was locked is kept. Keep it as a note; it will not be counted.");

    case Trouble::keyByHand: return QT_TRANSLATE_NOOP("words", "Hands hide the key of this session, so there is no sheet to pour by. Nothing was opened. Follow the steps of its routine.");
    case Trouble::keyDrawn: return QT_TRANSLATE_NOOP("words", "The program drew the key of this session, so nothing is read off. Nothing was changed. Open the key when the table is closed.");
    case Trouble::notReadOff: return QT_TRANSLATE_NOOP("words", "Round {round} at place {place} has not been read off. Nothing was opened. Read it off, or set that round aside; it will be counted as set aside.");
    case Trouble::alreadyRead: return QT_TRANSLATE_NOOP("words", "Round {round} at place {place} was read off already. What was read stays. If it was wrong, set that round aside; it will be counted as set aside.");
    case Trouble::notTastedYet: return QT_TRANSLATE_NOOP("words", "Round {round} at place {place} is not locked yet. Nothing was read off. Taste and lock first.");
    case Trouble::tableOpen: return QT_TRANSLATE_NOOP("words", "The table is still open. Nothing was read off. Close it first: nobody may learn what is in a cup while somebody tastes.");
    case Trouble::cupsNotTold: return QT_TRANSLATE_NOOP("words", "Each cup of round {round} at place {place} is told once: {codes}, and the one set aside where there is one. Nothing was kept. Look at the cups again.");
    case Trouble::bottlesNotTold: return QT_TRANSLATE_NOOP("words", "Each lettered bottle is told once; there are {bottles}. Nothing was kept. Look at the covers again.");
    case Trouble::markNotThere: return QT_TRANSLATE_NOOP("words", "The first sheet has no mark “{mark}” for round {round} at place {place}. Nothing was kept. Lay both sheets side by side and look again.");

    case Trouble::storeInUse: return QT_TRANSLATE_NOOP("words", "The file is in use by another program. Nothing was changed. Close the other one and try again.");
    case Trouble::storeNewer: return QT_TRANSLATE_NOOP("words", "This file comes from a newer Oddglass ({version}). It was not touched. Update the program, or open a backup.");
    case Trouble::storeForeign: return QT_TRANSLATE_NOOP("words", "{file} is no Oddglass file. It was not touched. Choose another file.");
    case Trouble::storeDamaged: return QT_TRANSLATE_NOOP("words", "{file} is damaged. It was not touched any further. Keep a copy of it, then restore the latest backup.");
    case Trouble::storeReadOnly: return QT_TRANSLATE_NOOP("words", "Not saved: {file} or its folder cannot be written. What was there is kept. Allow writing, or choose another folder.");
    case Trouble::diskFull: return QT_TRANSLATE_NOOP("words", "Not saved: the disk is full. What was saved before is kept, and your answer is still on this screen. Free some space, then try again.");
    case Trouble::storeFailed: return QT_TRANSLATE_NOOP("words", "The store could not be used: {text}. What was saved before is kept. Try again; if it stays so, make a backup.");
    case Trouble::storeMissing: return QT_TRANSLATE_NOOP("words", "There is no file {file}. Nothing was made in its place. Check the name, or restore a backup.");

    case Trouble::programMissing: return QT_TRANSLATE_NOOP("words", "The program with windows makes the paper, and it is not at {file}. Nothing was written. Install it beside this one, or ask for another kind of file.");
    case Trouble::labelsDoNotFit: return QT_TRANSLATE_NOOP("words", "{Field}: that leaves {have} mm for each label, and a code needs {need} mm. Nothing was printed. Take fewer of them, or smaller margins and gaps.");
    case Trouble::notPrinted: return QT_TRANSLATE_NOOP("words", "{text} Nothing was printed.");

    case Trouble::fileTooLarge: return QT_TRANSLATE_NOOP("words", "{file} is too large to be one of ours. Nothing was read in. Choose another file.");
    case Trouble::fileTooDeep: return QT_TRANSLATE_NOOP("words", "{file} is nested too deeply to be one of ours. Nothing was read in. Choose another file.");
    case Trouble::keyTwice: return QT_TRANSLATE_NOOP("words", "In {file} the name “{text}” stands twice in one place. Nothing was read in. Mend that place and try again.");
    case Trouble::notWhole: return QT_TRANSLATE_NOOP("words", "In {file}, {field} is not a whole number. Nothing was read in. Mend that place and try again.");
    case Trouble::brokenReference: return QT_TRANSLATE_NOOP("words", "In {file}, {field} points to something that is not in it ({text}). Nothing was read in. Ask for a complete file.");
    case Trouble::doesNotVerify: return QT_TRANSLATE_NOOP("words", "The record does not check: {text}. Nothing was read in or changed by this. Compare with your backup, or ask for a fresh file.");
    case Trouble::sessionThere: return QT_TRANSLATE_NOOP("words", "This session is here already. It stays as it is. There is nothing more to do.");
    case Trouble::fileNewer: return QT_TRANSLATE_NOOP("words", "{file} was written by a newer Oddglass ({version}). Nothing was read in. Update the program, or ask for an older file.");
  }
  return "";
}

/// What stands in for a value that the problem does not bring.
Values generalWords(const Voice& voice) {
  return {{"lot", say(voice, QT_TRANSLATE_NOOP("words", "this drink"))},
          {"name", say(voice, QT_TRANSLATE_NOOP("words", "this person"))},
          {"check", say(voice, QT_TRANSLATE_NOOP("words", "One of the checks"))},
          {"what", say(voice, QT_TRANSLATE_NOOP("words", "entry"))},
          {"text", say(voice, QT_TRANSLATE_NOOP("words", "what was given"))},
          {"value", say(voice, QT_TRANSLATE_NOOP("words", "what was given"))},
          {"file", say(voice, QT_TRANSLATE_NOOP("words", "the file"))},
          {"choices", say(voice, QT_TRANSLATE_NOOP("words", "those offered"))},
          {"codes", say(voice, QT_TRANSLATE_NOOP("words", "other codes"))},
          {"place", say(voice, QT_TRANSLATE_NOOP("words", "of this number"))},
          {"version", say(voice, QT_TRANSLATE_NOOP("words", "not known"))},
          {"time", say(voice, QT_TRANSLATE_NOOP("words", "an earlier time"))},
          {"day", say(voice, QT_TRANSLATE_NOOP("words", "an earlier day"))},
          {"question", say(voice, QT_TRANSLATE_NOOP("words", "this question"))},
          {"method", say(voice, QT_TRANSLATE_NOOP("words", "another one"))},
          {"state", say(voice, QT_TRANSLATE_NOOP("words", "where it stands now"))},
          {"other", say(voice, QT_TRANSLATE_NOOP("words", "this word"))},
          {"limit", "…"}, {"low", "…"}, {"high", "…"}, {"have", "…"}, {"need", "…"}, {"grams", "…"}, {"ceiling", "…"},
          {"round", "…"}, {"code", "…"}, {"item", "…"}, {"bottles", "…"}, {"mark", "…"}, {"why", say(voice, QT_TRANSLATE_NOOP("words", "Hands cannot hide this plan."))}, {"line", "…"}, {"column", "…"}, {"sum", "…"}};
}

/// Problems bring amounts and gravities as the store keeps them.
void tellInUnits(const Voice& voice, const std::string& argument, Values& values) {
  const bool isVolume = argument == "cup_ml" || argument == "bottle_ml";
  const bool isGravity = argument == "og" || argument == "fg" || argument == "gravity";
  const Voice kept;
  for (const char* name : {"text", "low", "high"}) {
    const auto found = values.find(name);
    if (found == values.end()) continue;
    if (const auto ml = isVolume ? readVolume(kept, found->second) : std::nullopt) found->second = volume(voice, *ml);
    if (const auto sg = isGravity ? readGravity(kept, found->second) : std::nullopt) found->second = gravity(voice, *sg);
  }
}

}  // namespace

std::string fieldName(const Voice& voice, const std::string& argument) {
  static const std::map<std::string, const char*> names{
      {"name", QT_TRANSLATE_NOOP("words", "the name")},
      {"nickname", QT_TRANSLATE_NOOP("words", "the nickname")},
      {"title", QT_TRANSLATE_NOOP("words", "the title")},
      {"guest_title", QT_TRANSLATE_NOOP("words", "the title that guests see")},
      {"lots", QT_TRANSLATE_NOOP("words", "the two drinks")},
      {"lot", QT_TRANSLATE_NOOP("words", "the drink")},
      {"tasters", QT_TRANSLATE_NOOP("words", "the tasters")},
      {"pourer", QT_TRANSLATE_NOOP("words", "the pourer")},
      {"rounds", QT_TRANSLATE_NOOP("words", "the number of rounds")},
      {"cup_ml", QT_TRANSLATE_NOOP("words", "the amount in a cup")},
      {"vessel", QT_TRANSLATE_NOOP("words", "the vessel")},
      {"temperature_c", QT_TRANSLATE_NOOP("words", "the temperature")},
      {"spares", QT_TRANSLATE_NOOP("words", "the number of spare places")},
      {"limit", QT_TRANSLATE_NOOP("words", "the limit for alike")},
      {"alpha", QT_TRANSLATE_NOOP("words", "the risk of a false alarm")},
      {"original_gravity", QT_TRANSLATE_NOOP("words", "the original gravity")},
      {"final_gravity", QT_TRANSLATE_NOOP("words", "the final gravity")},
      {"gravity", QT_TRANSLATE_NOOP("words", "the gravity")},
      {"abv", QT_TRANSLATE_NOOP("words", "the alcohol strength")},
      {"bottles", QT_TRANSLATE_NOOP("words", "the number of bottles")},
      {"bottle_ml", QT_TRANSLATE_NOOP("words", "the bottle size")},
      {"packaged_on", QT_TRANSLATE_NOOP("words", "the day of bottling")},
      {"best_before", QT_TRANSLATE_NOOP("words", "the best-before day")},
      {"done_on", QT_TRANSLATE_NOOP("words", "the day")},
      {"storage", QT_TRANSLATE_NOOP("words", "the storage")},
      {"source", QT_TRANSLATE_NOOP("words", "where it was bought")},
      {"text", QT_TRANSLATE_NOOP("words", "the text")},
      {"decision", QT_TRANSLATE_NOOP("words", "what you will do")},
      {"reason", QT_TRANSLATE_NOOP("words", "the reason")},
      {"ceiling", QT_TRANSLATE_NOOP("words", "the ceiling in grams")},
      {"give_aways", QT_TRANSLATE_NOOP("words", "the give-aways")},
      {"country", QT_TRANSLATE_NOOP("words", "the country")},
      {"place", QT_TRANSLATE_NOOP("words", "the place")},
      {"round", QT_TRANSLATE_NOOP("words", "the round")},
      {"code", QT_TRANSLATE_NOOP("words", "the code")},
      {"session", QT_TRANSLATE_NOOP("words", "the session")},
      {"taster", QT_TRANSLATE_NOOP("words", "the taster")},
      {"beverage", QT_TRANSLATE_NOOP("words", "the drink")},
      {"word", QT_TRANSLATE_NOOP("words", "the word")},
      {"into", QT_TRANSLATE_NOOP("words", "the word it is merged into")},
      {"drinks", QT_TRANSLATE_NOOP("words", "the list of drinks")},
      {"columns", QT_TRANSLATE_NOOP("words", "labels side by side")},
      {"rows", QT_TRANSLATE_NOOP("words", "labels one below the other")},
      {"margins", QT_TRANSLATE_NOOP("words", "the margins")},
      {"gaps", QT_TRANSLATE_NOOP("words", "the gaps")},
      {"skip", QT_TRANSLATE_NOOP("words", "labels already gone")},
      {"value", QT_TRANSLATE_NOOP("words", "what was typed")},
      {"typist", QT_TRANSLATE_NOOP("words", "who types it in")},
      {"routine", QT_TRANSLATE_NOOP("words", "the routine")},
      {"mark", QT_TRANSLATE_NOOP("words", "the mark")},
      {"bottle", QT_TRANSLATE_NOOP("words", "the bottle")},
      {"meaning", QT_TRANSLATE_NOOP("words", "what it means")},
  };
  const auto found = names.find(argument);
  if (found != names.end()) return say(voice, found->second);
  return argument.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "this field")) : argument;
}

std::string sentence(const Voice& voice, const Problem& problem) {
  Values values = problem.values();
  if (const auto state = values.find("state"); state != values.end())
    if (const auto known = named<State>(state->second)) state->second = stateName(voice, *known);
  if (const auto question = values.find("question"); question != values.end())
    if (const auto known = named<Question>(question->second)) question->second = questionLine(voice, *known, {});
  if (const auto method = values.find("method"); method != values.end())
    if (const auto known = named<Method>(method->second)) method->second = methodName(voice, *known);
  if (const auto locked = values.find("at"); locked != values.end())
    if (const auto at = readWhole(locked->second)) values.emplace("time", timeOfDay(voice, *at));
  if (problem.trouble() == Trouble::notByHand)
    if (const auto why = named<NotByHand>(values["reason"])) values["why"] = notByHandLine(voice, *why, named<Routine>(values["routine"]).value_or(Routine::alone));
  if (const auto check = values.find("check"); check != values.end())
    if (const auto known = named<GiveAway>(check->second)) check->second = checkName(voice, *known);
  if (problem.trouble() == Trouble::outOfRange && voice.units != Units{}) tellInUnits(voice, problem.argument(), values);
  const char* source = sourceOf(problem.trouble());
  if (problem.trouble() == Trouble::codeNotHere && (!values.contains("place") || !values.contains("codes")))
    source = QT_TRANSLATE_NOOP("words", "{code} is not a code that can be meant here. Nothing was changed. Read the cup again.");
  values.merge(generalWords(voice));
  const std::string field = fieldName(voice, problem.argument());
  values["field"] = field;
  values["Field"] = capitalised(field);
  return say(voice, source, values);
}

}  // namespace oddglass::words
