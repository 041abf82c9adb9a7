#include "ui/beverage_model.h"

#include "domain/names.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/people.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/drinks.h"
#include "words/numbers.h"
#include "words/units.h"

#include <algorithm>

namespace oddglass::ui {

BeverageModel::BeverageModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent),
      m_allergens(TickRow::staticMetaObject, this),
      m_makers(TickRow::staticMetaObject, this),
      m_lots(LotRow::staticMetaObject, this),
      m_notes(NoteRow::staticMetaObject, this) {
  nameFields({"name", "recipe", "level", "word", "og", "fg", "abv", "abv_from", "allergens", "ingredients", "makers", "lot_name", "packaged_on", "best_before", "bottle_ml",
              "storage", "source", "bottles", "done_on", "gravity", "text"});
}

BeverageModel::Read BeverageModel::read(store::Store& store, const BeverageId& id) {
  return {shelf::beverage(store, id), shelf::lotsOf(store, id, true), shelf::notesOf(store, id), shelf::people(store)};
}

void BeverageModel::open(const BeverageId& id) {
  ask([id](Cellar& cellar) { return read(cellar.store(), id); }, [this](const Read& read) {
    m_editing = m_lotOpen = false;
    m_moveLot.clear();
    fill(read);
    clearNote();
    go(Router::Page::Beverage);
  });
}

void BeverageModel::readAgain() {
  ask([id = m_id](Cellar& cellar) -> std::optional<Read> {
    try {
      return read(cellar.store(), id);
    } catch (const Problem& problem) {
      if (problem.trouble() == Trouble::unknown) return std::nullopt;
      throw;
    }
  }, [this](const std::optional<Read>& read) {
    if (!read) return go(Router::Page::Shelf);
    m_lotOpen = false;
    m_moveLot.clear();
    fill(*read);
  });
}

void BeverageModel::openBlank(Origin origin) {
  ask([](Cellar& cellar) { return shelf::people(cellar.store()); }, [this, origin](std::vector<Taster> people) {
    Read blank;
    blank.beverage.origin = origin;
    blank.people = std::move(people);
    for (const Taster& person : blank.people)
      if (person.isBrewer) blank.beverage.makers.push_back(person.id);
    m_lotOpen = false;
    fill(blank);
    m_editing = true;
    clearNote();
    go(Router::Page::Beverage);
  });
}

void BeverageModel::fill(const Read& read) {
  const Beverage& drink = read.beverage;
  m_id = drink.id;
  m_drink = drink;
  m_isNew = m_id.empty();
  m_archived = drink.archived;
  m_name = shown(drink.name);
  m_origin = static_cast<int>(drink.origin);
  m_recipe = shown(drink.recipe);
  m_kind = static_cast<int>(drink.kind);
  m_abv = strengthText(drink.abvBp);
  m_abvFrom = drink.abvFrom ? static_cast<int>(*drink.abvFrom) : -1;
  m_ingredients = static_cast<int>(drink.ingredients.how);
  m_allergensTicked = drink.ingredients.allergens;
  m_makersTicked = drink.makers;
  m_people = read.people;
  m_lotValues = read.lots;
  m_noteValues = read.notes;
  showTicks();
  sayDrink();
  emit changed();
}

// All that is told in the reader's language and units, from what is known here.
void BeverageModel::sayDrink() {
  m_headline = m_isNew ? tr("What is in the bottle?") : shown(m_drink.name);
  m_lead = m_isNew ? tr("Three lines are enough; the rest can wait.") : drinkLine(m_drink);
  m_originalGravity = gravityText(m_drink.originalGravity);
  m_finalGravity = gravityText(m_drink.finalGravity);
  std::vector<LotRow> lots;
  for (const Lot& lot : m_lotValues) {
    QStringList parts;
    if (!lot.packagedOn.empty()) parts << tr("bottled %1").arg(shown(lot.packagedOn));
    if (!lot.bestBefore.empty()) parts << tr("best before %1").arg(shown(lot.bestBefore));
    parts << shown(words::volume(voice(), lot.bottleMl));
    if (!lot.storage.empty()) parts << shown(lot.storage);
    if (!lot.source.empty()) parts << tr("from %1").arg(shown(lot.source));
    QString stock = shown(words::bottles(voice(), lot.bottles));
    if (lot.held > 0) stock = tr("%1, %2 set aside").arg(stock).arg(lot.held);
    LotRow row;
    row.name = shown(lot.name);
    row.line = parts.join(tr(", "));
    row.stock = stock;
    row.archived = lot.archived;
    lots.push_back(row);
  }
  m_lots.set(lots);
  std::vector<NoteRow> notes;
  for (const Note& note : m_noteValues) {
    QString says = noteWord(note.kind);
    if (note.gravity) says += QStringLiteral(" ") + shown(words::gravity(voice(), *note.gravity));
    if (note.level) says += QStringLiteral(": ") + shown(words::noteLevelName(voice(), note.kind, *note.level));
    if (!note.word.empty()) says += tr(" against %1").arg(shown(note.word));
    if (!note.text.empty()) says += QStringLiteral(": ") + shown(note.text);
    NoteRow row;
    row.day = shown(note.doneOn);
    row.says = says;
    notes.push_back(row);
  }
  m_notes.set(notes);
  showTooEarly();
}

// A number that was typed was meant in the unit that stood beside it: such fields begin anew.
void BeverageModel::sayAgain() {
  sayDrink();
  m_noteGravity.clear();
  m_lotMl = shown(words::volumeTyped(voice(), m_lotAt >= 0 && m_lotAt < static_cast<int>(m_lotValues.size()) ? m_lotValues[static_cast<std::size_t>(m_lotAt)].bottleMl : usualBottleMl));
  emit changed();
}

void BeverageModel::showTicks() {
  std::vector<TickRow> allergens, makers;
  for (const Allergen allergen : allOf<Allergen>()) {
    TickRow row;
    row.name = allergenWord(allergen);
    row.ticked = m_allergensTicked.contains(allergen);
    allergens.push_back(row);
  }
  for (const Taster& person : m_people) {
    TickRow row;
    row.name = shown(person.name);
    row.ticked = std::find(m_makersTicked.begin(), m_makersTicked.end(), person.id) != m_makersTicked.end();
    makers.push_back(row);
  }
  m_allergens.set(allergens);
  m_makers.set(makers);
}

QString BeverageModel::gravityLine() const {
  return m_abvFrom == static_cast<int>(AbvFrom::gravities) ? tr("Worked out by you from the two gravities.") : QString();
}

QString BeverageModel::gravityExample() { return gravityText(10500); }
QString BeverageModel::coolExample() { return shown(words::temperature(voice(), 12)); }

void BeverageModel::tickAllergen(int row) {
  const Allergen allergen = allOf<Allergen>().at(static_cast<std::size_t>(row));
  if (!m_allergensTicked.erase(allergen)) m_allergensTicked.insert(allergen);
  showTicks();
}

void BeverageModel::tickMaker(int row) {
  const TasterId id = m_people.at(static_cast<std::size_t>(row)).id;
  if (!std::erase(m_makersTicked, id)) m_makersTicked.push_back(id);
  showTicks();
}

Beverage BeverageModel::formValue() const {
  Beverage drink;
  drink.id = m_id;
  drink.name = plain(m_name);
  drink.origin = static_cast<Origin>(m_origin);
  drink.kind = static_cast<Kind>(m_kind);
  drink.originalGravity = typedGravity(m_originalGravity, "og");
  drink.finalGravity = typedGravity(m_finalGravity, "fg");
  drink.abvBp = typedScaled(m_abv, 100, "abv");
  if (drink.abvBp && m_abvFrom >= 0) drink.abvFrom = static_cast<AbvFrom>(m_abvFrom);
  drink.ingredients.how = static_cast<IngredientsKnown>(m_ingredients);
  if (drink.ingredients.how == IngredientsKnown::known) drink.ingredients.allergens = m_allergensTicked;
  if (drink.origin == Origin::batch) drink.makers = m_makersTicked;
  if (drink.origin == Origin::batch) drink.recipe = plain(m_recipe);
  drink.archived = m_archived;
  return drink;
}

void BeverageModel::save() {
  try {
    changeShelf([drink = formValue()](Cellar& cellar) { return read(cellar.store(), shelf::save(cellar.store(), cellar.chance, drink)); },
        [this](const Read& read) {
          m_editing = false;
          fill(read);
          if (m_lotValues.empty()) newLot();
        });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::archive(bool archived) {
  changeShelf([id = m_id, archived](Cellar& cellar) {
    if (archived) shelf::archive(cellar.store(), cellar.clock, id);
    else shelf::bringBack(cellar.store(), id);
    return read(cellar.store(), id);
  }, [this](const Read& read) { fill(read); });
}

void BeverageModel::fail(const Problem& problem) {
  if (problem.trouble() == Trouble::alreadyStabilised) {
    m_again = sentenceOf(problem);
    emit changed();
    return;
  }
  PageModel::fail(problem);
}

}  // namespace oddglass::ui
