#include "words/references.h"

#include "words/mark.h"
#include "words/numbers.h"
#include "words/over_time.h"
#include "words/sheet_out.h"

#include <cstdlib>

namespace oddglass::words {

using insight::ReferenceFindings;
using insight::ReferenceLot;
using insight::VintageRange;

namespace {

std::string ageOfLot(const Voice& voice, const Lot& lot, const ReferenceLot& now) {
  if (!now.age) return lot.packagedOn.empty() ? say(voice, QT_TRANSLATE_NOOP("words", "Its age is not known.")) : say(voice, QT_TRANSLATE_NOOP("words", "Packaged {day}."), {{"day", lot.packagedOn}});
  return say(voice, QT_TRANSLATE_NOOP("words", "Packaged {day}, {age} old."), {{"day", lot.packagedOn}, {"age", ageName(voice, *now.age)}});
}

std::string pastLine(const Voice& voice, const Lot& lot, const ReferenceLot& now) {
  if (!now.daysPast) return {};
  const Values values{{"day", lot.bestBefore}, {"age", ageName(voice, std::abs(*now.daysPast) / insight::daysOfAMonth)}};
  return *now.daysPast > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "Past its best-before ({day}) by {age}."), values) : say(voice, QT_TRANSLATE_NOOP("words", "Best before {day}."), values);
}

std::string bottlesLine(const Voice& voice, const Lot& lot, const ReferenceLot& now) {
  if (now.isGone) return say(voice, QT_TRANSLATE_NOOP("words", "No bottle left"));
  const std::string left = now.isLast ? say(voice, QT_TRANSLATE_NOOP("words", "The last bottle")) : say(voice, QT_TRANSLATE_NOOP("words", "{bottles} left"), {{"bottles", bottles(voice, lot.bottles)}});
  return lot.held > 0 ? say(voice, QT_TRANSLATE_NOOP("words", "{left}, {held} set aside"), {{"left", left}, {"held", whole(voice, lot.held)}}) : left;
}

std::string keptLine(const Voice& voice, const Lot& lot) {
  const Values values{{"kept", lot.storage}, {"from", lot.source}};
  if (!lot.storage.empty() && !lot.source.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Kept: {kept}. From: {from}."), values);
  if (!lot.storage.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "Kept: {kept}."), values);
  return lot.source.empty() ? std::string() : say(voice, QT_TRANSLATE_NOOP("words", "From: {from}."), values);
}

std::string pouredLine(const Voice& voice, const Reference& reference, std::size_t lot) {
  std::vector<std::string> sessions;
  for (const PouredIn& each : reference.poured)
    if (each.lot == static_cast<int>(lot)) sessions.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{title} ({day})"), {{"title", each.title}, {"day", each.heldOn}}));
  return sessions.empty() ? std::string() : say(voice, QT_TRANSLATE_NOOP("words", "Poured in {sessions}."), {{"sessions", listed(voice, sessions)}});
}

std::string rangeLine(const Voice& voice, const Reference& reference, const VintageRange& range) {
  const ItemKind kind = range.question.kind;
  const auto name = [&](int lot) { return reference.lots[static_cast<std::size_t>(lot)].name; };
  return sayCount(voice, QT_TRANSLATE_NOOP("words", "{what}: from {low} ({lowLot}, {lowPeople}) to {high} {of} ({highLot}, {highPeople}), in one tasting."),
                  QT_TRANSLATE_NOOP("words", "{what}: from {low} ({lowLot}, {lowPeople}) to {high} {of} ({highLot}, {highPeople}), over {n} tastings."), range.sessions,
                  {{"what", capitalised(questionName(voice, kind, range.question.part, range.question.word))}, {"of", outOf(voice, kind)}, {"low", points(voice, kind, range.low.mean)},
                   {"high", points(voice, kind, range.high.mean)}, {"lowLot", name(range.low.lot)}, {"highLot", name(range.high.lot)}, {"lowPeople", people(voice, range.low.people)},
                   {"highPeople", people(voice, range.high.people)}});
}

std::string bookHeadline(const Voice& voice, const std::vector<Reference>& references, const std::vector<ReferenceFindings>& found) {
  if (references.empty()) return say(voice, QT_TRANSLATE_NOOP("words", "There is no bought drink on the shelf."));
  int last = 0, past = 0;
  for (const ReferenceFindings& each : found)
    for (const ReferenceLot& lot : each.lots) {
      last += lot.isLast;
      past += !lot.isGone && lot.daysPast.value_or(0) > 0;
    }
  std::string headline = references.size() == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "One bought drink."))
                                                : say(voice, QT_TRANSLATE_NOOP("words", "{n} bought drinks."), {{"n", capitalised(spelled(voice, static_cast<int>(references.size())))}});
  if (last > 0) headline += ' ' + (last == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "One lot is down to its last bottle.")) : say(voice, QT_TRANSLATE_NOOP("words", "{n} lots are down to their last bottle."), {{"n", capitalised(spelled(voice, last))}}));
  if (past > 0) headline += ' ' + (past == 1 ? say(voice, QT_TRANSLATE_NOOP("words", "One is past its best-before.")) : say(voice, QT_TRANSLATE_NOOP("words", "{n} are past their best-before."), {{"n", capitalised(spelled(voice, past))}}));
  return headline;
}

}  // namespace

ReferenceBookWords referenceBookWords(const Voice& voice, const std::vector<Reference>& references, const std::vector<ReferenceFindings>& found) {
  ReferenceBookWords book;
  book.headline = bookHeadline(voice, references, found);
  for (std::size_t r = 0; r < references.size(); ++r) {
    const Reference& reference = references[r];
    ReferenceWords words;
    words.name = reference.beverage.name;
    for (std::size_t lot = 0; lot < reference.lots.size(); ++lot) {
      const Lot& bottle = reference.lots[lot];
      const ReferenceLot& now = found[r].lots[lot];
      words.lots.push_back({bottle.name, ageOfLot(voice, bottle, now), keptLine(voice, bottle), bottlesLine(voice, bottle, now), pastLine(voice, bottle, now), pouredLine(voice, reference, lot)});
    }
    for (const VintageRange& range : found[r].ranges) words.ranges.push_back(rangeLine(voice, reference, range));
    if (words.ranges.empty())
      words.ranges.push_back(reference.lots.size() < 2 ? say(voice, QT_TRANSLATE_NOOP("words", "One lot gives no range. With a second vintage, poured beside it, you would see how far good ones of its own lie apart."))
                                                       : say(voice, QT_TRANSLATE_NOOP("words", "No range yet: pour two of its lots in one tasting.")));
    book.references.push_back(std::move(words));
  }
  return book;
}

std::string besideTitle(const Voice& voice, const std::string& reference) { return say(voice, QT_TRANSLATE_NOOP("words", "Beside {reference}"), {{"reference", reference}}); }

}  // namespace oddglass::words
