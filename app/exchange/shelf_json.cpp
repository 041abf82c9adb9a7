#include "exchange/shelf_json.h"

#include "exchange/each_record.h"
#include "exchange/words_json.h"
#include "shelf/beverages.h"
#include "shelf/bring.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/people.h"

#include <algorithm>

namespace oddglass::exchange {
namespace {

using canon::Json;

constexpr int formVersion = 1;

Json orNull(std::optional<int> value) { return value ? Json(*value) : Json(nullptr); }

std::string textOr(const Node& node, const char* key, std::size_t letters) {
  const auto value = node.maybe(key);
  return value ? value->text(letters) : std::string();
}

std::optional<int> smallOr(const Node& node, const char* key, int low, int high) {
  const auto value = node.maybe(key);
  return value ? std::optional(value->small(low, high)) : std::nullopt;
}

bool truthOr(const Node& node, const char* key, bool otherwise) {
  const auto value = node.maybe(key);
  return value ? value->truth() : otherwise;
}

// Beverages -----------------------------------------------------------------------------------------------------------

Json beverageJson(const Beverage& drink) {
  Json allergens = Json::array(), makers = Json::array();
  for (Allergen each : drink.ingredients.allergens) allergens.push_back(nameOf(each));
  for (const TasterId& each : drink.makers) makers.push_back(each.text);
  return {{"id", drink.id.text},
          {"origin", nameOf(drink.origin)},
          {"kind", nameOf(drink.kind)},
          {"name", drink.name},
          {"og", orNull(drink.originalGravity)},
          {"fg", orNull(drink.finalGravity)},
          {"abv_bp", orNull(drink.abvBp)},
          {"abv_from", drink.abvFrom ? Json(nameOf(*drink.abvFrom)) : Json(nullptr)},
          {"ingredients", nameOf(drink.ingredients.how)},
          {"allergens", allergens},
          {"makers", makers},
          {"recipe", drink.recipe},
          {"archived", drink.archived}};
}

Beverage beverageFrom(const Node& node) {
  node.onlyKeys({"id", "origin", "kind", "name", "og", "fg", "abv_bp", "abv_from", "ingredients", "allergens", "makers", "recipe", "archived"});
  Beverage drink;
  drink.id = node.at("id").uid<struct BeverageTag>();
  drink.origin = node.at("origin").choice<Origin>();
  drink.kind = node.at("kind").choice<Kind>();
  drink.name = node.at("name").text(200, false);
  drink.originalGravity = smallOr(node, "og", 9500, 13000);
  drink.finalGravity = smallOr(node, "fg", 9500, 13000);
  drink.abvBp = smallOr(node, "abv_bp", 0, 9600);
  if (const auto from = node.maybe("abv_from")) drink.abvFrom = from->choice<AbvFrom>();
  if (const auto how = node.maybe("ingredients")) drink.ingredients.how = how->choice<IngredientsKnown>();
  for (const Node& each : node.maybeList("allergens")) drink.ingredients.allergens.insert(each.choice<Allergen>());
  for (const Node& each : node.maybeList("makers")) drink.makers.push_back(each.uid<struct TasterTag>());
  drink.recipe = textOr(node, "recipe", 200);
  drink.archived = truthOr(node, "archived", false);
  return drink;
}

// Lots ----------------------------------------------------------------------------------------------------------------

Json lotJson(const Lot& lot) {
  return {{"id", lot.id.text},
          {"beverage", lot.beverage.text},
          {"name", lot.name},
          {"packaged_on", lot.packagedOn},
          {"best_before", lot.bestBefore},
          {"bottle_ml", lot.bottleMl},
          {"storage", lot.storage},
          {"source", lot.source},
          {"bottles", lot.bottles},
          {"archived", lot.archived}};
}

Lot lotFrom(const Node& node) {
  node.onlyKeys({"id", "beverage", "name", "packaged_on", "best_before", "bottle_ml", "storage", "source", "bottles", "archived"});
  Lot lot;
  lot.id = node.at("id").uid<struct LotTag>();
  lot.beverage = node.at("beverage").uid<struct BeverageTag>();
  lot.name = node.at("name").text(200, false);
  if (const auto day = node.maybe("packaged_on")) lot.packagedOn = day->day(true);
  if (const auto day = node.maybe("best_before")) lot.bestBefore = day->day(true);
  lot.bottleMl = node.at("bottle_ml").small(1, 100000);
  lot.storage = textOr(node, "storage", 200);
  lot.source = textOr(node, "source", 200);
  lot.bottles = smallOr(node, "bottles", 0, 100000).value_or(0);
  lot.archived = truthOr(node, "archived", false);
  return lot;
}

// Notes and tasters ---------------------------------------------------------------------------------------------------

Json noteJson(const Note& note) {
  return {{"id", note.id.text}, {"beverage", note.beverage.text}, {"done_on", note.doneOn}, {"kind", nameOf(note.kind)}, {"gravity", orNull(note.gravity)}, {"level", orNull(note.level)},
          {"word", note.word}, {"text", note.text}};
}

Note noteFrom(const Node& node) {
  node.onlyKeys({"id", "beverage", "done_on", "kind", "gravity", "level", "word", "text"});
  Note note;
  note.id = node.at("id").uid<struct NoteTag>();
  note.beverage = node.at("beverage").uid<struct BeverageTag>();
  note.doneOn = node.at("done_on").day(false);
  note.kind = node.at("kind").choice<NoteKind>();
  note.gravity = smallOr(node, "gravity", 9500, 13000);
  note.level = smallOr(node, "level", 0, 3);
  note.word = textOr(node, "word", 60);
  note.text = textOr(node, "text", 4000);
  return note;
}

Json tasterJson(const Taster& taster) {
  return {{"id", taster.id.text}, {"name", taster.name}, {"nickname", taster.nickname}, {"is_brewer", taster.isBrewer}, {"archived", taster.archived}};
}

Taster tasterFrom(const Node& node) {
  node.onlyKeys({"id", "name", "nickname", "is_brewer", "archived"});
  Taster taster;
  taster.id = node.at("id").uid<struct TasterTag>();
  taster.name = node.at("name").text(100, false);
  taster.nickname = textOr(node, "nickname", 60);
  taster.isBrewer = truthOr(node, "is_brewer", false);
  taster.archived = truthOr(node, "archived", false);
  return taster;
}

}  // namespace

void requireForm(const Node& file) {
  file.onlyKeys({"format", "version", "written_by", "written_at", "about", "beverages", "lots", "notes", "tasters", "words", "merged_words", "retired_words", "plan", "sessions", "series"});
  if (!file.has("format") || !file.at("format").json().is_string() || file.at("format").text(60) != "oddglass") file.refuse("this is no file of Oddglass");
  const auto version = file.at("version").whole(1, 1000000);
  if (version > formVersion) file.at("version").refuse(Trouble::fileNewer, {{"version", std::to_string(version)}});
}

Json heading(Clock& clock) { return {{"format", "oddglass"}, {"version", formVersion}, {"written_by", ODDGLASS_VERSION}, {"written_at", clock.now()}}; }

void writeShelf(store::Store& store, const ShelfPart& part, Json& file) {
  for (const char* key : {"beverages", "lots", "notes", "tasters"}) file[key] = Json::array();
  std::map<TasterId, Taster> people = part.people;
  if (part.everything)
    for (const Taster& taster : shelf::people(store, true)) people.emplace(taster.id, taster);
  for (const auto& [id, taster] : people) file["tasters"].push_back(tasterJson(taster));
  for (shelf::OnShelf& line : shelf::find(store, "", true)) {
    Beverage& drink = line.beverage;
    bool isWanted = part.everything;
    for (const Lot& lot : shelf::lotsOf(store, drink.id, true)) {
      if (!part.everything && !part.lots.contains(lot.id)) continue;
      isWanted = true;
      file["lots"].push_back(lotJson(lot));
    }
    if (!isWanted) continue;
    std::erase_if(drink.makers, [&](const TasterId& maker) { return !people.contains(maker); });
    file["beverages"].push_back(beverageJson(drink));
    if (part.everything)
      for (const Note& note : shelf::notesOf(store, drink.id)) file["notes"].push_back(noteJson(note));
  }
  if (part.everything) writeWords(store, file);
}

void bringShelf(store::Store& store, Clock& clock, const Node& file, Brought& brought) {
  const auto count = [&brought](bool isNew, int& counter) { ++(isNew ? counter : brought.alreadyThere); };
  eachRecord(file, "tasters", tasterFrom, [&](const Taster& taster) { count(shelf::bring(store, clock, taster), brought.tasters); });
  eachRecord(file, "beverages", beverageFrom, [&](const Beverage& drink) { count(shelf::bring(store, clock, drink), brought.beverages); });
  eachRecord(file, "lots", lotFrom, [&](const Lot& lot) {
    const bool isNew = shelf::bring(store, clock, lot);
    if (isNew && lot.bottles > 0) shelf::move(store, clock, lot.id, StockChange::added, lot.bottles);
    count(isNew, brought.lots);
  });
  eachRecord(file, "notes", noteFrom, [&](const Note& note) { count(shelf::bring(store, note), brought.notes); });
  bringWords(store, clock, file, brought);
}

void requireShelf(const Node& file) {
  eachRecord(file, "tasters", tasterFrom, [](const Taster&) {});
  eachRecord(file, "beverages", beverageFrom, [](const Beverage&) {});
  eachRecord(file, "lots", lotFrom, [](const Lot&) {});
  eachRecord(file, "notes", noteFrom, [](const Note&) {});
  requireWords(file);
}

}  // namespace oddglass::exchange
