#include "ui/beverage_model.h"

#include "domain/names.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/notes.h"
#include "shelf/people.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/numbers.h"

#include <algorithm>

namespace oddglass::ui {

BeverageModel::BeverageModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent),
      m_allergens(TickRow::staticMetaObject, this),
      m_makers(TickRow::staticMetaObject, this),
      m_lots(LotRow::staticMetaObject, this),
      m_notes(NoteRow::staticMetaObject, this) {
  nameFields({"name", "og", "fg", "abv", "abv_from", "allergens", "ingredients", "makers", "lot_name", "packaged_on", "best_before", "bottle_ml",
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

void BeverageModel::openNew() {
  ask([](Cellar& cellar) { return shelf::people(cellar.store()); }, [this](std::vector<Taster> people) {
    Read blank;
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
  m_isNew = m_id.empty();
  m_archived = drink.archived;
  m_headline = m_isNew ? tr("What is in the bottle?") : shown(drink.name);
  m_lead = m_isNew ? tr("Three lines are enough; the rest can wait.") : drinkLine(drink);
  m_name = shown(drink.name);
  m_origin = static_cast<int>(drink.origin);
  m_kind = static_cast<int>(drink.kind);
  m_originalGravity = gravityText(drink.originalGravity);
  m_finalGravity = gravityText(drink.finalGravity);
  m_abv = strengthText(drink.abvBp);
  m_abvFrom = drink.abvFrom ? static_cast<int>(*drink.abvFrom) : -1;
  m_ingredients = static_cast<int>(drink.ingredients.how);
  m_allergensTicked = drink.ingredients.allergens;
  m_makersTicked = drink.makers;
  m_people = read.people;
  m_lotValues = read.lots;
  m_noteValues = read.notes;
  showTicks();
  std::vector<LotRow> lots;
  for (const Lot& lot : m_lotValues) {
    QStringList parts;
    if (!lot.packagedOn.empty()) parts << tr("bottled %1").arg(shown(lot.packagedOn));
    if (!lot.bestBefore.empty()) parts << tr("best before %1").arg(shown(lot.bestBefore));
    parts << tr("%1 mL").arg(lot.bottleMl);
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
    if (note.gravity) says += QStringLiteral(" ") + gravityText(note.gravity);
    if (!note.text.empty()) says += QStringLiteral(": ") + shown(note.text);
    NoteRow row;
    row.day = shown(note.doneOn);
    row.says = says;
    notes.push_back(row);
  }
  m_notes.set(notes);
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
  drink.originalGravity = typedScaled(m_originalGravity, 10000, "og");
  drink.finalGravity = typedScaled(m_finalGravity, 10000, "fg");
  drink.abvBp = typedScaled(m_abv, 100, "abv");
  if (drink.abvBp && m_abvFrom >= 0) drink.abvFrom = static_cast<AbvFrom>(m_abvFrom);
  drink.ingredients.how = static_cast<IngredientsKnown>(m_ingredients);
  if (drink.ingredients.how == IngredientsKnown::known) drink.ingredients.allergens = m_allergensTicked;
  if (drink.origin == Origin::batch) drink.makers = m_makersTicked;
  drink.archived = m_archived;
  return drink;
}

void BeverageModel::save() {
  try {
    ask([drink = formValue()](Cellar& cellar) { return read(cellar.store(), shelf::save(cellar.store(), cellar.chance, drink)); },
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
  ask([id = m_id, archived](Cellar& cellar) {
    if (archived) shelf::archive(cellar.store(), cellar.clock, id);
    else shelf::bringBack(cellar.store(), id);
    return read(cellar.store(), id);
  }, [this](const Read& read) { fill(read); });
}

void BeverageModel::newLot() {
  m_lotAt = -1;
  m_lotName = m_lotPackaged = m_lotBest = m_lotStorage = m_lotSource = QString();
  m_lotMl = QStringLiteral("500");
  m_lotOpen = true;
  emit changed();
}

void BeverageModel::editLot(int row) {
  const Lot& lot = m_lotValues.at(static_cast<std::size_t>(row));
  m_lotAt = row;
  m_lotName = shown(lot.name);
  m_lotPackaged = shown(lot.packagedOn);
  m_lotBest = shown(lot.bestBefore);
  m_lotMl = QString::number(lot.bottleMl);
  m_lotStorage = shown(lot.storage);
  m_lotSource = shown(lot.source);
  m_lotOpen = true;
  emit changed();
}

void BeverageModel::leaveLot() {
  m_lotOpen = false;
  settle();
  emit changed();
}

void BeverageModel::saveLot() {
  try {
    Lot lot;
    if (m_lotAt >= 0) lot = m_lotValues.at(static_cast<std::size_t>(m_lotAt));
    lot.beverage = m_id;
    lot.name = plain(m_lotName);
    lot.packagedOn = plain(m_lotPackaged.trimmed());
    lot.bestBefore = plain(m_lotBest.trimmed());
    lot.bottleMl = typedWhole(m_lotMl, "bottle_ml");
    lot.storage = plain(m_lotStorage);
    lot.source = plain(m_lotSource);
    ask([lot, id = m_id](Cellar& cellar) {
      try {
        shelf::save(cellar.store(), cellar.chance, lot);
      } catch (const Problem& problem) {
        // The page has two names to fill in: this one is the lot's.
        if (problem.argument() == "name") throw Problem(problem.trouble(), "lot_name", problem.values());
        throw;
      }
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      const bool isNew = m_lotAt < 0;
      m_lotOpen = false;
      std::vector<LotId> before;
      for (const Lot& known : m_lotValues) before.push_back(known.id);
      fill(read);
      for (std::size_t i = 0; isNew && i < m_lotValues.size(); ++i)
        if (std::find(before.begin(), before.end(), m_lotValues[i].id) == before.end()) startMove(static_cast<int>(i));
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::archiveLot(int row) {
  const Lot lot = m_lotValues.at(static_cast<std::size_t>(row));
  ask([lot, id = m_id](Cellar& cellar) {
    if (lot.archived) shelf::bringBackLot(cellar.store(), lot.id);
    else shelf::archiveLot(cellar.store(), cellar.clock, lot.id);
    return read(cellar.store(), id);
  }, [this](const Read& read) { fill(read); });
}

void BeverageModel::startMove(int row) {
  m_moveAt = row;
  m_moveLot = shown(m_lotValues.at(static_cast<std::size_t>(row)).name);
  m_moveKind = 0;
  m_moveBottles.clear();
  emit changed();
}

void BeverageModel::leaveMove() {
  m_moveLot.clear();
  settle();
  emit changed();
}

void BeverageModel::saveMove() {
  try {
    const LotId lot = m_lotValues.at(static_cast<std::size_t>(m_moveAt)).id;
    const int bottles = typedWhole(m_moveBottles, "bottles");
    const auto change = static_cast<StockChange>(m_moveKind);
    ask([lot, bottles, change, id = m_id](Cellar& cellar) {
      if (change == StockChange::counted) shelf::count(cellar.store(), cellar.clock, lot, bottles);
      else shelf::move(cellar.store(), cellar.clock, lot, change, bottles);
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      m_moveLot.clear();
      fill(read);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::clearNote() {
  m_noteDay = shown(today());
  m_noteKind = static_cast<int>(NoteKind::other);
  m_noteGravity = m_noteText = m_noteReplaced = m_again = QString();
  m_replaces.reset();
  emit changed();
}

void BeverageModel::saveNote() { saveNote(false); }
void BeverageModel::saveNoteAgain() { saveNote(true); }

void BeverageModel::saveNote(bool again) {
  try {
    Note note;
    note.beverage = m_id;
    note.replaces = m_replaces;
    note.doneOn = plain(m_noteDay.trimmed());
    note.kind = static_cast<NoteKind>(m_noteKind);
    if (note.kind == NoteKind::reading) note.gravity = typedScaled(m_noteGravity, 10000, "gravity");
    note.text = plain(m_noteText);
    ask([note, again, id = m_id](Cellar& cellar) {
      shelf::add(cellar.store(), cellar.chance, note, again);
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      fill(read);
      clearNote();
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::leaveAgain() {
  m_again.clear();
  emit changed();
}

void BeverageModel::correctNote(int row) {
  const Note& note = m_noteValues.at(static_cast<std::size_t>(row));
  m_replaces = note.id;
  m_noteDay = shown(note.doneOn);
  m_noteKind = static_cast<int>(note.kind);
  m_noteGravity = gravityText(note.gravity);
  m_noteText = shown(note.text);
  m_noteReplaced = tr("This corrects the note of %1. The old one stays in the record.").arg(shown(note.doneOn));
  emit changed();
}

void BeverageModel::leaveCorrection() { clearNote(); }

void BeverageModel::withdrawNote(int row) {
  const NoteId note = m_noteValues.at(static_cast<std::size_t>(row)).id;
  ask([note, id = m_id](Cellar& cellar) {
    shelf::withdraw(cellar.store(), cellar.chance, note);
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
