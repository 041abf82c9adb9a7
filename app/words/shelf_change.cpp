#include "words/shelf_change.h"

#include "words/mark.h"

namespace oddglass::words {
namespace {

const char* sentenceOf(ChangeDeed deed) {
  switch (deed) {
    case ChangeDeed::added: return QT_TRANSLATE_NOOP("words", "“{name}” was added.");
    case ChangeDeed::changed: return QT_TRANSLATE_NOOP("words", "“{name}” was changed.");
    case ChangeDeed::putAway: return QT_TRANSLATE_NOOP("words", "“{name}” was put away.");
    case ChangeDeed::broughtBack: return QT_TRANSLATE_NOOP("words", "“{name}” was brought back.");
    case ChangeDeed::merged: return QT_TRANSLATE_NOOP("words", "“{name}” was merged.");
  }
  return "";
}

const char* noteSentenceOf(ChangeDeed deed) {
  switch (deed) {
    case ChangeDeed::added: return QT_TRANSLATE_NOOP("words", "A note on “{name}” was written.");
    case ChangeDeed::putAway: return QT_TRANSLATE_NOOP("words", "A note on “{name}” was withdrawn.");
    default: return QT_TRANSLATE_NOOP("words", "A note on “{name}” was corrected.");
  }
}

const char* sourceOfChange(const ShelfChange& change) {
  switch (change.thing) {
    case ChangedThing::bottles: return QT_TRANSLATE_NOOP("words", "Bottles of “{name}” were booked.");
    case ChangedThing::note: return noteSentenceOf(change.deed);
    case ChangedThing::word: return change.deed == ChangeDeed::putAway ? QT_TRANSLATE_NOOP("words", "“{name}” was retired.") : sentenceOf(change.deed);
    default: return sentenceOf(change.deed);
  }
}

}  // namespace

std::string shelfChangeLine(const Voice& voice, const ShelfChange& change) { return say(voice, sourceOfChange(change), {{"name", change.name}}); }

}  // namespace oddglass::words
