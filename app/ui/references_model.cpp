#include "ui/references_model.h"

#include "domain/day.h"
#include "session/about_lots.h"
#include "session/record.h"
#include "session/same_again.h"
#include "shelf/references.h"
#include "ui/voice.h"
#include "words/ready_sheets.h"
#include "words/references.h"

#include <algorithm>
#include <ranges>

namespace oddglass::ui {
namespace {

struct BookRead {
  std::vector<Reference> references;
  std::vector<insight::ReferenceFindings> found;
};

BookRead readBook(store::Store& store, const std::string& today) {
  BookRead read;
  read.references = shelf::references(store);
  for (Reference& reference : read.references) {
    session::readPoured(store, reference);
    read.found.push_back(insight::referenceOf(reference, today));
  }
  return read;
}

// Those of the last sheet that poured the lot, else of a sheet that is made for such drinks.
std::vector<SheetItem> sheetFor(store::Store& store, const Reference& reference, std::size_t lot) {
  for (const PouredIn& each : reference.poured | std::views::reverse) {
    if (each.lot != static_cast<int>(lot)) continue;
    const Plan plan = session::record(store, each.session).plan;
    if (plan.sheet) return session::questionsOf(plan);
  }
  return words::readyItems(voice(), words::readyFor(reference.beverage.kind));
}

}  // namespace

ReferencesModel::ReferencesModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_book(ReferenceRow::staticMetaObject, this) {}

void ReferencesModel::load() {
  ask([](Cellar& cellar) { return readBook(cellar.store(), dayOf(cellar.clock.now())); }, [this](BookRead read) {
    const words::ReferenceBookWords book = words::referenceBookWords(voice(), read.references, read.found);
    std::vector<ReferenceRow> rows;
    m_places.clear();
    for (std::size_t r = 0; r < book.references.size(); ++r) {
      ReferenceRow drink;
      drink.drink = true;
      drink.name = shown(book.references[r].name);
      drink.says = shownAll(book.references[r].ranges).join(QLatin1Char('\n'));
      rows.push_back(drink);
      m_places.push_back({r, 0});
      for (std::size_t lot = 0; lot < book.references[r].lots.size(); ++lot) {
        const words::ReferenceLotWords& said = book.references[r].lots[lot];
        const Lot& bottle = read.references[r].lots[lot];
        ReferenceRow row;
        row.name = shown(said.name);
        row.stock = shown(said.bottles);
        QStringList lines{shown(said.age)};
        for (const std::string& line : {said.kept, said.poured})
          if (!line.empty()) lines << shown(line);
        row.says = lines.join(QLatin1Char('\n'));
        row.past = shown(said.past);
        row.attention = read.found[r].lots[lot].daysPast.value_or(0) > 0;
        row.pourable = !bottle.archived && bottle.bottles > bottle.held;
        rows.push_back(row);
        m_places.push_back({r, lot});
      }
    }
    m_loaded = true;
    m_anything = !read.references.empty();
    m_headline = shown(book.headline);
    m_references = std::move(read.references);
    m_book.set(rows);
    emit changed();
  });
}

void ReferencesModel::open(int row) { emit beverageRequested(m_references.at(m_places.at(static_cast<std::size_t>(row)).reference).beverage.id); }

void ReferencesModel::planBeside(int row) {
  const Place place = m_places.at(static_cast<std::size_t>(row));
  ask([reference = m_references.at(place.reference), lot = place.lot](Cellar& cellar) {
    store::Store& store = cellar.store();
    return session::planSheet(store, cellar.clock, cellar.chance, words::besideTitle(voice(), reference.beverage.name), {reference.lots.at(lot).id}, sheetFor(store, reference, lot));
  }, [this](const SessionId& session) { emit planRequested(session); });
}

}  // namespace oddglass::ui
