#include "shelf/batches.h"

#include "domain/problem.h"
#include "domain/text.h"
#include "shelf/beverages.h"
#include "shelf/folded.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/vocabulary.h"

#include <algorithm>
#include <map>
#include <set>

namespace oddglass::shelf {
namespace {

std::vector<Beverage> ownBatches(store::Store& store) {
  std::vector<Beverage> all;
  for (OnShelf& each : find(store, {}, true))
    if (each.beverage.origin == Origin::batch) all.push_back(std::move(each.beverage));
  return all;
}

Batch batchOf(store::Store& store, const Beverage& beverage) {
  Batch batch;
  batch.beverage = beverage;
  batch.lots = lotsOldestFirst(store, beverage.id);
  std::set<std::string> days;
  for (const Lot& lot : batch.lots)
    if (!lot.packagedOn.empty()) days.insert(lot.packagedOn);
  for (const Note& note : notesOf(store, beverage.id)) {
    days.insert(note.doneOn);
    if (note.kind == NoteKind::changed) batch.changed.push_back(note);
  }
  std::ranges::reverse(batch.changed);
  if (!days.empty()) batch.madeOn = *days.begin();
  return batch;
}

std::vector<Batch> oldestFirst(store::Store& store, const std::vector<Beverage>& beverages) {
  std::vector<Batch> all;
  for (const Beverage& each : beverages) all.push_back(batchOf(store, each));
  std::ranges::stable_sort(all, {}, [](const Batch& batch) { return std::tuple(batch.madeOn.empty(), batch.madeOn, folded(batch.beverage.name)); });
  return all;
}

std::vector<Beverage> ofRecipe(const std::vector<Beverage>& all, const std::string& recipe) {
  std::vector<Beverage> found;
  const std::string wanted = folded(cleaned(recipe));
  std::ranges::copy_if(all, std::back_inserter(found), [&](const Beverage& each) { return !wanted.empty() && folded(each.recipe) == wanted; });
  return found;
}

Beverage batchMeant(const std::vector<Beverage>& all, const std::string& typed, const char* argument) {
  std::vector<Beverage> found;
  const std::string wanted = folded(cleaned(typed));
  for (const Beverage& each : all)
    if (each.id.text == typed || folded(each.name) == wanted) found.push_back(each);
  if (found.size() != 1) throw Problem(found.empty() ? Trouble::unknown : Trouble::ambiguous, argument, {{"what", "batch"}, {"text", typed}});
  return found.front();
}

}  // namespace

std::vector<Recipe> recipes(store::Store& store) {
  std::map<std::string, Recipe> all;
  for (const Beverage& each : ownBatches(store))
    if (!each.recipe.empty()) ++all.try_emplace(folded(each.recipe), Recipe{each.recipe, 0}).first->second.batches;
  std::vector<Recipe> list;
  for (const auto& [key, recipe] : all) list.push_back(recipe);
  return list;
}

std::vector<Batch> batchesOf(store::Store& store, const std::string& recipe) { return oldestFirst(store, ofRecipe(ownBatches(store), recipe)); }

std::vector<Batch> batches(store::Store& store, const std::vector<BeverageId>& beverages) {
  std::vector<Beverage> picked;
  for (const BeverageId& id : beverages) {
    if (std::ranges::find(picked, id, &Beverage::id) != picked.end()) continue;
    picked.push_back(beverage(store, id));
    if (picked.back().origin != Origin::batch) throw Problem(Trouble::notAChoice, "beverage", {{"text", picked.back().name}, {"choices", "batch"}});
  }
  return oldestFirst(store, picked);
}

std::vector<Batch> batchesMeant(store::Store& store, const std::vector<std::string>& typed, const char* argument) {
  if (typed.empty()) throw Problem(Trouble::empty, argument);
  const std::vector<Beverage> all = ownBatches(store);
  if (typed.size() == 1) {
    if (auto found = ofRecipe(all, typed.front()); !found.empty()) return oldestFirst(store, found);
    const Beverage one = batchMeant(all, typed.front(), argument);
    const auto found = ofRecipe(all, one.recipe);
    return oldestFirst(store, found.empty() ? std::vector{one} : found);
  }
  std::vector<BeverageId> ids;
  for (const std::string& each : typed) ids.push_back(batchMeant(all, each, argument).id);
  return batches(store, ids);
}

std::vector<WordNow> wordsNow(store::Store& store, const std::vector<std::string>& asked) {
  const WordList list = vocabulary(store);
  const std::vector<WordChange> changes = wordChanges(store);
  std::vector<WordNow> all;
  for (const std::string& text : asked) {
    WordNow word{text, text, {}};
    const TastingWord* found = resolve(list, text);
    // A name that was given up: its word under the name it has now.
    if (!found)
      for (const WordChange& change : changes)
        if (change.kind == WordChangeKind::renamed && folded(change.text) == folded(text)) found = standsFor(list, change.word);
    if (found) {
      word.now = found->text;
      std::set<std::string> ids{found->id.text};
      for (const TastingWord& each : mergedInto(list, found->id)) ids.insert(each.id.text);
      for (const WordChange& change : changes) {
        const bool tells = change.kind == WordChangeKind::renamed || change.kind == WordChangeKind::merged || change.kind == WordChangeKind::takenApart;
        if (tells && (ids.contains(change.word.text) || (change.other && change.other->text == found->id.text))) word.changes.push_back(change);
      }
    }
    all.push_back(std::move(word));
  }
  return all;
}

}  // namespace oddglass::shelf
