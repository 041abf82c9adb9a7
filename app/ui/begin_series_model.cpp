#include "ui/begin_series_model.h"

#include "domain/day.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/people.h"
#include "shelf/series.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/aging.h"
#include "words/over_time.h"

#include <algorithm>
#include <array>

namespace oddglass::ui {
namespace {

constexpr std::array offeredControls{ControlKind::twin, ControlKind::reference, ControlKind::none};

// The usual ages and, for patient brewers, two more.
std::vector<int> offeredAges() {
  std::vector<int> ages = planning::usualAges();
  ages.insert(ages.end(), {548, 730});
  return ages;
}

// For the step buttons: from what stands there, or from the least where that is no number.
int stepped(const QString& text, int by, int least, int most) { return std::clamp(text.toInt() + by, least, most); }

}  // namespace

BeginSeriesModel::BeginSeriesModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent), m_days(offeredAges()), m_taken(m_days.size(), false), m_ages(AgeRow::staticMetaObject, this) {
  nameFields({"title", "batch", "control", "begun_on", "bottles", "bottles_each", "reserve", "main_word", "main_limit", "due_on", "sittings", "main", "ages"});
}

void BeginSeriesModel::load() {
  settle();
  struct Choices {
    std::vector<LotChoice> lots;
    int people = 0;
  };
  ask([](Cellar& cellar) {
    Choices read;
    for (const Lot& lot : shelf::lotsToPour(cellar.store())) {
      const Beverage drink = shelf::beverage(cellar.store(), lot.beverage);
      read.lots.push_back({lot, shown(drink.name + ", " + lot.name), drink.origin});
    }
    for (const Taster& taster : shelf::people(cellar.store())) read.people += !taster.isBrewer;
    return read;
  }, [this](Choices read) {
    m_lots = std::move(read.lots);
    m_people = std::min(read.people, 12);
    m_batchLots.clear();
    m_batchNames.clear();
    for (std::size_t i = 0; i < m_lots.size(); ++i) {
      if (m_lots[i].origin != Origin::batch) continue;
      m_batchLots.push_back(static_cast<int>(i));
      m_batchNames << m_lots[i].name;
    }
    m_controls = {tr("Its cold twin"), tr("A bought drink"), tr("Nothing")};
    for (std::size_t i = 0; i < m_days.size(); ++i) m_taken[i] = i < planning::usualAges().size();
    m_word.clear();
    m_limit.clear();
    m_loaded = true;
    chooseBatch(m_batchLots.empty() ? -1 : 0);
  });
}

void BeginSeriesModel::chooseBatch(int index) {
  m_batch = index;
  if (index >= 0) {
    const LotChoice& lot = m_lots[static_cast<std::size_t>(m_batchLots[static_cast<std::size_t>(index)])];
    m_title = tr("%1 over time").arg(lot.name);
    m_begunOn = shown(lot.lot.packagedOn);
  }
  choices();
}

void BeginSeriesModel::chooseControl(int index) {
  m_control = index;
  choices();
}

void BeginSeriesModel::chooseControlLot(int index) {
  m_controlLot = index;
  m_setsAside = offeredControls[static_cast<std::size_t>(m_control)] == ControlKind::twin && index == 0;
  workOut();
}

// What may stand beside the batch: for a twin its own drink's other lots, or bottles that are set aside now; else the bought ones.
void BeginSeriesModel::choices() {
  m_controlLots.clear();
  m_controlNames.clear();
  const ControlKind kind = offeredControls[static_cast<std::size_t>(m_control)];
  if (m_batch >= 0 && kind != ControlKind::none) {
    const LotChoice& batch = m_lots[static_cast<std::size_t>(m_batchLots[static_cast<std::size_t>(m_batch)])];
    if (kind == ControlKind::twin) {
      m_controlLots.push_back(-1);
      m_controlNames << tr("Set bottles of this lot aside now");
    }
    for (std::size_t i = 0; i < m_lots.size(); ++i) {
      const bool isOfBatch = m_lots[i].lot.beverage == batch.lot.beverage;
      if (m_lots[i].lot.id == batch.lot.id || (kind == ControlKind::twin ? !isOfBatch : isOfBatch || m_lots[i].origin != Origin::reference)) continue;
      m_controlLots.push_back(static_cast<int>(i));
      m_controlNames << m_lots[i].name;
    }
  }
  chooseControlLot(m_controlLots.empty() ? -1 : 0);
}

planning::AgingSetup BeginSeriesModel::setup() const {
  planning::AgingSetup setup;
  for (std::size_t i = 0; i < m_days.size(); ++i)
    if (m_taken[i]) setup.ages.push_back(m_days[i]);
  setup.control = offeredControls[static_cast<std::size_t>(m_control)];
  setup.bottlesEach = typedWhole(m_each, "bottles_each");
  setup.reserve = typedWhole(m_reserve, "reserve");
  setup.people = m_people;
  if (m_batch < 0) return setup;
  setup.bottles = shelf::freeBottles(m_lots[static_cast<std::size_t>(m_batchLots[static_cast<std::size_t>(m_batch)])].lot);
  const bool hasOwnTwin = setup.control == ControlKind::twin && m_controlLot > 0;
  if (hasOwnTwin) setup.bottles += shelf::freeBottles(m_lots[static_cast<std::size_t>(m_controlLots[static_cast<std::size_t>(m_controlLot)])].lot);
  return setup;
}

void BeginSeriesModel::workOut() {
  std::vector<AgeRow> rows;
  for (std::size_t i = 0; i < m_days.size(); ++i) {
    AgeRow row;
    row.says = shown(words::ageName(voice(), m_days[i] / insight::daysOfAMonth));
    row.on = shown(dayAfter(plain(m_begunOn), m_days[i]).value_or(std::string()));
    row.taken = m_taken[i];
    rows.push_back(row);
  }
  m_ages.set(rows);
  m_headline.clear();
  m_lines.clear();
  m_cheaper.clear();
  m_mayTakeCheaper = false;
  try {
    const planning::AgingSetup now = setup();
    const planning::AgingOutlook outlook = planning::agingOutlook(now);
    const words::AgingWords said = words::agingWords(voice(), now, outlook);
    m_headline = shown(said.headline);
    m_lines = shownAll(said.lines);
    m_cheaper = shown(said.cheaper);
    m_offered = outlook.cheaper;
    m_mayTakeCheaper = outlook.cheaper.has_value();
  } catch (const Problem& problem) {
    m_headline = sentenceOf(problem);
  }
  emit changed();
}

void BeginSeriesModel::takeAge(int row, bool taken) {
  m_taken.at(static_cast<std::size_t>(row)) = taken;
  workOut();
}

void BeginSeriesModel::setTitle(const QString& title) {
  m_title = title;
  emit changed();
}

void BeginSeriesModel::setBegunOn(const QString& day) {
  m_begunOn = day;
  workOut();
}

void BeginSeriesModel::setWord(const QString& word) {
  m_word = word;
  emit changed();
}

void BeginSeriesModel::setEach(const QString& text) {
  m_each = text;
  workOut();
}

void BeginSeriesModel::setReserve(const QString& text) {
  m_reserve = text;
  workOut();
}

void BeginSeriesModel::stepEach(int by) { setEach(QString::number(stepped(m_each, by, 1, 24))); }
void BeginSeriesModel::stepReserve(int by) { setReserve(QString::number(stepped(m_reserve, by, 0, 48))); }

void BeginSeriesModel::setLimit(const QString& text) {
  m_limit = text;
  emit changed();
}

void BeginSeriesModel::takeCheaper() {
  if (!m_offered) return;
  for (std::size_t i = 0; i < m_days.size(); ++i) m_taken[i] = std::ranges::find(m_offered->ages, m_days[i]) != m_offered->ages.end();
  m_reserve = QString::number(m_offered->reserve);
  workOut();
}

void BeginSeriesModel::begin() {
  if (m_batch < 0) return;
  try {
    const LotChoice& batch = m_lots[static_cast<std::size_t>(m_batchLots[static_cast<std::size_t>(m_batch)])];
    const planning::AgingSetup now = setup();
    Series series;
    series.title = plain(m_title);
    series.batch = batch.lot.id;
    series.control = now.control;
    series.begunOn = plain(m_begunOn);
    series.bottlesEach = now.bottlesEach;
    series.reserve = now.reserve;
    series.main = {static_cast<int>(now.ages.size()), plain(m_word), std::nullopt};
    if (!m_limit.trimmed().isEmpty()) series.main.limit = typedBetween(m_limit, 1, 1000, "main_limit");
    for (const int age : now.ages) series.sittings.push_back({0, dayAfter(series.begunOn, age).value_or(std::string()), std::nullopt});
    if (!m_setsAside && m_controlLot >= 0) series.controlLot = m_lots[static_cast<std::size_t>(m_controlLots[static_cast<std::size_t>(m_controlLot)])].lot.id;
    const int setAside = m_setsAside ? static_cast<int>(now.ages.size()) * now.bottlesEach : 0;
    ask([series, setAside, name = plain(tr("%1, kept cold").arg(shown(batch.lot.name))), cold = plain(tr("cold"))](Cellar& cellar) {
      return shelf::begin(cellar.store(), cellar.clock, cellar.chance, series, setAside, name, cold);
    }, [this](const SeriesId& id) {
      emit begun(id);
      go(Router::Page::OverTime);
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

}  // namespace oddglass::ui
