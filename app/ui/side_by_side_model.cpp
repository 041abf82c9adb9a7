#include "ui/side_by_side_model.h"

#include "domain/day.h"
#include "insight/noticing.h"
#include "report/side_pictures.h"
#include "session/about_lots.h"
#include "session/known_differences.h"
#include "session/same_again.h"
#include "session/sittings.h"
#include "shelf/batches.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/series.h"
#include "shelf/vocabulary.h"
#include "ui/shapes.h"
#include "ui/voice.h"
#include "words/numbers.h"
#include "words/ready_sheets.h"
#include "words/side_by_side.h"
#include "words/sources.h"

#include <algorithm>

namespace oddglass::ui {

/// All that the page shows, read in one go.
struct BesideRead {
  std::vector<Recipe> recipes;
  bool hasBatches = false;           ///< on the shelf, of whatever recipe
  std::vector<Batch> all;            ///< only while they are picked from
  std::string recipe;
  std::vector<Batch> batches;
  std::string closedBy;              ///< a series whose pages are closed
  BatchTastings tastings;
  insight::SideBySide found;
  std::vector<LotId> links;
  std::string today;
};

namespace {

std::vector<BeverageId> idsOf(const std::vector<Batch>& batches) {
  std::vector<BeverageId> ids;
  for (const Batch& each : batches) ids.push_back(each.beverage.id);
  return ids;
}

std::vector<BeverageId> everyBatch(store::Store& store) {
  std::vector<BeverageId> ids;
  for (const shelf::OnShelf& each : shelf::find(store, {}, true))
    if (each.beverage.origin == Origin::batch) ids.push_back(each.beverage.id);
  return ids;
}

std::string usualRecipe(const std::vector<Recipe>& recipes) {
  const auto most = std::ranges::max_element(recipes, {}, &Recipe::batches);
  return most == recipes.end() ? std::string() : most->name;
}

void compare(store::Store& store, BesideRead& read, const std::optional<BeverageId>& good) {
  read.tastings = session::batchTastings(store, read.batches);
  if (const auto closed = session::closedSeries(store, read.tastings.lots)) {
    read.closedBy = shelf::series(store, *closed).title;
    return;
  }
  const auto base = good ? std::ranges::find(read.batches, *good, [](const Batch& each) { return each.beverage.id; }) : read.batches.end();
  read.found = insight::sideBySideOf(read.batches, read.tastings, shelf::wordsNow(store, wordsAsked(read.tastings.about)), base == read.batches.end() ? std::nullopt : std::optional(static_cast<int>(base - read.batches.begin())),
                                     insight::noticersOf(session::knownDifferences(store), read.tastings.about.questions, shelf::meaningNow(store)));
  read.links = insight::lotsToLink(read.found, read.tastings, shelf::freeToPour(store, read.tastings.lots));
}

}  // namespace

SideBySideModel::SideBySideModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent),
      m_recipes(RecipeRow::staticMetaObject, this),
      m_batches(BatchRow::staticMetaObject, this),
      m_table(ColumnsRow::staticMetaObject, this),
      m_steps(FigureRow::staticMetaObject, this) {}

void SideBySideModel::load() {
  ask([wanted = m_wanted, picking = m_picking](Cellar& cellar) {
    store::Store& store = cellar.store();
    BesideRead read;
    read.recipes = shelf::recipes(store);
    read.today = dayOf(cellar.clock.now());
    const std::vector<BeverageId> every = everyBatch(store);
    read.hasBatches = !every.empty();
    if (picking) read.all = shelf::batches(store, every);
    read.recipe = !wanted.picked.empty() ? std::string() : wanted.recipe.empty() ? usualRecipe(read.recipes) : wanted.recipe;
    read.batches = !wanted.picked.empty() ? shelf::batches(store, wanted.picked) : shelf::batchesOf(store, read.recipe);
    compare(store, read, wanted.good);
    return read;
  }, [this](const BesideRead& read) { show(read); });
}

void SideBySideModel::show(const BesideRead& read) {
  m_loaded = true;
  m_recipeValues = read.recipes;
  std::vector<RecipeRow> recipes;
  for (const Recipe& each : read.recipes) {
    RecipeRow row;
    row.name = shown(each.name);
    row.line = each.name == read.recipe ? tr("shown below") : each.batches == 1 ? tr("1 batch") : tr("%1 batches").arg(each.batches);
    recipes.push_back(row);
  }
  m_recipes.set(recipes);
  m_recipe = shown(read.recipe);
  m_all = idsOf(read.all);
  m_shown = idsOf(read.batches);
  std::vector<BatchRow> batches;
  for (const Batch& each : read.all) {
    BatchRow row;
    row.name = shown(each.beverage.name);
    row.line = each.beverage.recipe.empty() ? shown(each.madeOn) : tr("%1, %2").arg(shown(each.beverage.recipe), shown(each.madeOn));
    row.ticked = std::ranges::find(m_shown, each.beverage.id) != m_shown.end();
    batches.push_back(row);
  }
  m_batches.set(batches);
  m_anything = !read.batches.empty();
  m_hasBatches = read.hasBatches;
  m_closedBy = shown(read.closedBy);
  showFindings(read);
  emit changed();
}

void SideBySideModel::showFindings(const BesideRead& read) {
  m_shape.clear();
  m_headline.clear();
  m_lines.clear();
  m_headers.clear();
  m_marks.clear();
  m_bases.clear();
  m_underTable.clear();
  m_base = 0;
  std::vector<ColumnsRow> table;
  std::vector<FigureRow> steps;
  const bool isOpen = m_anything && m_closedBy.isEmpty();
  if (isOpen) {
    const words::SideBySideWords out = words::sideBySideWords(voice(), read.batches, read.tastings, read.found, read.today);
    m_shape = read.batches.size() < 2 ? QString() : shapeName(out.shape);
    m_headline = shown(out.headline);
    m_lines = shownAll(out.lines);
    m_headers = shownAll(out.headers);
    m_underTable = shown(out.underTable);
    m_marks = shownAll(out.marks);
    for (const auto& cells : out.rows) {
      ColumnsRow row;
      row.label = shown(cells.front());
      row.cells = shownAll(cells).mid(1);
      row.spoken = row.label;
      for (int i = 0; i < row.cells.size(); ++i) row.spoken += tr("; %1: %2").arg(m_headers[i + 1], row.cells[i]);
      table.push_back(row);
    }
    for (std::size_t i = 0; i < out.steps.size(); ++i) {
      FigureRow row;
      row.heading = shown(out.steps[i].heading);
      QStringList says = shownAll(out.steps[i].lines) + shownAll(out.steps[i].told);
      if (!out.steps[i].advice.empty()) says << shown(out.steps[i].advice);
      row.says = says.join(QLatin1Char('\n'));
      for (auto& picture : report::stepPictures(voice(), out.columns, read.found, read.found.steps[i])) {
        row.figure.layOut = [picture = std::move(picture)](double width, const figures::Measure& measure) { return figures::gapFigure(picture, width, measure); };
        steps.push_back(row);
        row = {};
      }
      if (!row.says.isEmpty()) steps.push_back(row);
    }
    if (read.batches.size() > 1) {
      m_bases << tr("the one before");
      for (const std::string& name : out.columns) m_bases << shown(name);
      m_base = read.found.good.value_or(-1) + 1;
    }
  }
  m_table.set(table);
  m_steps.set(steps);
  m_linkable = isOpen && read.batches.size() > 1;
  m_primary = m_linkable ? tr("Plan a tasting that links them") : m_hasBatches && !m_picking ? tr("Choose batches") : tr("Put a batch on the shelf");
  m_primaryReason = m_linkable && read.links.empty() ? tr("No bottle is left that would link them. Keep one back of the next batch, or buy a lot that each can stand beside.") : QString();
}

void SideBySideModel::chooseRecipe(int row) {
  m_wanted = {m_recipeValues.at(static_cast<std::size_t>(row)).name, {}, std::nullopt};
  load();
}

void SideBySideModel::pick(bool picking) {
  m_picking = picking;
  load();
}

void SideBySideModel::tick(int row) {
  std::vector<BeverageId> picked = m_shown;
  const BeverageId id = m_all.at(static_cast<std::size_t>(row));
  if (!std::erase(picked, id)) picked.push_back(id);
  if (picked.empty()) return;   // the last one stays: a page of nothing would go back to a recipe
  m_wanted = {{}, picked, std::nullopt};
  load();
}

void SideBySideModel::holdAgainst(int base) {
  m_wanted.good = base > 0 ? std::optional(m_shown.at(static_cast<std::size_t>(base) - 1)) : std::nullopt;
  load();
}

void SideBySideModel::open(const BeverageId& batch) {
  ask([batch](Cellar& cellar) { return shelf::beverage(cellar.store(), batch); }, [this](const Beverage& beverage) {
    m_wanted = beverage.recipe.empty() ? Wanted{{}, {beverage.id}, std::nullopt} : Wanted{beverage.recipe, {}, std::nullopt};
    m_picking = false;
    go(Router::Page::SideBySide);
  });
}

void SideBySideModel::goOn() {
  if (!m_linkable) {
    if (!m_hasBatches || m_picking) return go(Router::Page::Shelf);
    return pick(true);
  }
  ask([ids = m_shown](Cellar& cellar) {
    store::Store& store = cellar.store();
    BesideRead read;
    read.batches = shelf::batches(store, ids);
    compare(store, read, std::nullopt);
    if (read.links.empty()) return SessionId{};   // drunk meanwhile
    const auto& sessions = read.tastings.about.sessions;
    const auto items = sessions.empty() ? words::readyItems(voice(), words::readyFor(read.batches.front().beverage.kind)) : session::questionsOf(sessions.back().plan);
    return session::planSheet(store, cellar.clock, cellar.chance, words::linkTitle(voice(), read.batches.front().beverage.recipe), read.links, items);
  }, [this](const SessionId& session) {
    if (session.empty()) return load();
    emit planRequested(session);
  });
}

QStringList SideBySideModel::how() const { return m_anything && m_closedBy.isEmpty() ? shownAll(words::sideBySideSources(voice())) : QStringList(); }

}  // namespace oddglass::ui
