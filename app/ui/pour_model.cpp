#include "ui/pour_model.h"

#include "tasting/mishaps.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/paper.h"
#include "words/record.h"
#include "words/units.h"

namespace oddglass::ui {
namespace {


}  // namespace

PourModel::PourModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_cups(PourRow::staticMetaObject, this) {
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (m_stage.router.page() != Router::Page::PourSheet) forget();
  });
}

void PourModel::open() {
  ask([id = m_stage.current.id()](Cellar& cellar) { return session::openPourSheet(cellar.store(), cellar.clock, id); },
      [this](session::PourSheet sheet) {
        // A sheet that comes after the pourer has gone is not shown.
        if (m_stage.router.page() != Router::Page::PourSheet) return;
        m_sheet = std::move(sheet);
        m_opened = true;
        m_lead = tr("%1 into each cup. Take this screen with you; do not talk about it, do not taste.").arg(shown(words::volume(voice(), m_sheet->cupMl)));
        m_openingsLine = tr("%1 Every opening is counted in the report.").arg(shown(words::openingsLine(voice(), m_sheet->openings)));
        m_lotNames.clear();
        for (const session::PourLot& lot : m_sheet->bottleByBottle) {
          const QString name = shown(m_sheet->nameOf(lot.slot));
          if (!m_lotNames.contains(name)) m_lotNames << name;
        }
        show();
      });
}

void PourModel::setByPlace(bool byPlace) {
  m_byPlace = byPlace;
  m_picked.clear();
  show();
}

void PourModel::show() {
  std::vector<PourRow> rows;
  m_order.clear();
  if (!m_sheet) {
    m_cups.set(rows);
    emit changed();
    return;
  }
  QString before;
  const auto add = [&](const session::PourLine& line, const QString& section) {
    PourRow row;
    row.section = section == before ? QString() : section;
    before = section;
    row.code = codeText(line.code);
    row.spoken = spokenCode(line.code);
    row.where = tr("place %1, %2").arg(line.place.value)
                    .arg(m_sheet->hasMarked && line.position == Position{1} ? tr("the marked cup (write R on it)") : positionWord(line.position, m_sheet->cupsPerFlight));
    if (m_byPlace && m_sheet->rounds > 1) row.where = tr("%1, round %2").arg(row.where).arg(line.round.value);
    if (m_byPlace || line.spare > 0) row.where += tr(": %1").arg(shown(m_sheet->nameOf(line.slot)));
    row.spare = line.spare > 0;
    row.ticked = line.isPoured;
    if (line.isSpilled) row.note = tr("spilled; the spare stands in");
    else if (line.really && !*line.really) row.note = tr("not sure: set aside");
    else if (line.really) row.note = tr("really holds %1").arg(shown(m_sheet->nameOf(**line.really)));
    rows.push_back(row);
    m_order.push_back(line.code);
  };
  const QString onlySpilled = tr("Spare codes: pour one only where its cup was spilled");
  if (m_byPlace) {
    for (const session::PourLine& line : m_sheet->placeByPlace)
      add(line, line.spare > 0 ? onlySpilled : tr("Place %1, from left to right as the taster sees it").arg(line.place.value));
  } else {
    const bool isInWaves = session::isInWaves(*m_sheet);
    for (const session::PourStep& step : session::pourSteps(*m_sheet))
      for (const session::PourLine& line : step.lines)
        add(line, shown(words::pourHeading(voice(), {step.round, m_sheet->rounds, step.evening, m_sheet->evenings, step.first, step.last, isInWaves, step.name})));
    for (const session::PourLot& lot : m_sheet->bottleByBottle)
      for (const session::PourLine& line : lot.lines)
        if (line.spare > 0) add(line, onlySpilled);
  }
  m_cups.set(rows);
  emit changed();
}

void PourModel::each(Code code, const std::function<void(session::PourLine&)>& change) {
  for (session::PourLot& lot : m_sheet->bottleByBottle)
    for (session::PourLine& line : lot.lines)
      if (line.code == code) change(line);
  for (session::PourLine& line : m_sheet->placeByPlace)
    if (line.code == code) change(line);
}

void PourModel::tick(int row) {
  const Code code = m_order.at(static_cast<std::size_t>(row));
  const bool poured = !m_cups.at<PourRow>(row).ticked;
  ask([id = m_stage.current.id(), code, poured](Cellar& cellar) { session::tick(cellar.store(), cellar.clock, id, code, poured); },
      [this, code, poured] {
        if (!m_sheet) return;
        each(code, [poured](session::PourLine& line) { line.isPoured = poured; });
        show();
      });
}

void PourModel::pick(int row) {
  const PourRow cup = m_cups.at<PourRow>(row);
  m_picked = m_picked == cup.code ? QString() : cup.code;
  m_pickedLine = tr("Cup %1, %2. What happened?").arg(cup.code, cup.where);
  emit changed();
}

void PourModel::pouredReally(int lot) {
  const Code code{m_picked.toInt()};
  const std::string name = plain(m_lotNames.value(lot));
  const Slot slot = [&] {
    for (const session::PourLot& known : m_sheet->bottleByBottle)
      if (m_sheet->nameOf(known.slot) == name) return known.slot;
    return Slot{};
  }();
  ask([id = m_stage.current.id(), code, slot](Cellar& cellar) {
    session::pouredReally(cellar.store(), cellar.clock, cellar.chance, id, code, slot);
  }, [this, code, slot] { noted(code, slot); });
}

void PourModel::notSure() {
  const Code code{m_picked.toInt()};
  ask([id = m_stage.current.id(), code](Cellar& cellar) {
    session::pouredReally(cellar.store(), cellar.clock, cellar.chance, id, code, std::nullopt);
  }, [this, code] { noted(code, std::nullopt); });
}

void PourModel::noted(Code code, std::optional<Slot> really) {
  m_picked.clear();
  if (!m_sheet) return;
  each(code, [&](session::PourLine& line) { line.really = really; });
  show();
}

void PourModel::spilled() {
  const Code code{m_picked.toInt()};
  ask([id = m_stage.current.id(), code](Cellar& cellar) { return tasting::spilled(cellar.store(), cellar.clock, id, code); },
      [this, code](Code spare) {
        m_picked.clear();
        if (!m_sheet) return;
        each(code, [](session::PourLine& line) { line.isSpilled = true; });
        m_stage.notice.say(tr("Pour %1 in its place, from the same bottle.").arg(codeText(spare)));
        show();
      });
}

void PourModel::leave() { go(Router::Page::Places); }

void PourModel::done() {
  ask([id = m_stage.current.id()](Cellar& cellar) { session::sayPoured(cellar.store(), cellar.clock, id); }, [this] { leave(); });
}

void PourModel::forget() {
  m_sheet.reset();
  m_order.clear();
  m_opened = m_byPlace = false;
  m_lead = m_openingsLine = m_picked = m_pickedLine = QString();
  m_lotNames.clear();
  m_cups.set(std::vector<PourRow>());
  emit changed();
}

}  // namespace oddglass::ui
