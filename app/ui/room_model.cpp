#include "ui/room_model.h"

#include "insight/room.h"
#include "report/room_pictures.h"
#include "session/look.h"
#include "session/own.h"
#include "shelf/people.h"
#include "ui/shapes.h"
#include "ui/voice.h"
#include "words/room.h"
#include "words/sources.h"

#include <algorithm>

namespace oddglass::ui {

namespace {

std::vector<ExpectedRow> rowsOf(const words::OutSection& section) {
  std::vector<ExpectedRow> rows;
  for (const auto& each : section.rows) {
    ExpectedRow row;
    row.when = shown(each[0]);
    row.wrote = shown(each[1]);
    row.came = shown(each[2]);
    rows.push_back(row);
  }
  return rows;
}

}  // namespace

struct RoomModel::Read {
  std::optional<words::RoomPage> page;   ///< nothing while nobody is the brewer
  SessionId draft;                       ///< the newest plan that is being made; may be empty
};

RoomModel::RoomModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_expected(ExpectedRow::staticMetaObject, this), m_label(ExpectedRow::staticMetaObject, this) {
  m_nobody = shown(words::nobodysRoom(voice()));
}

void RoomModel::load() {
  ask([](Cellar& cellar) {
    Read read;
    store::Store& store = cellar.store();
    if (const auto brewer = shelf::brewer(store)) {
      const OwnTastings tastings = session::ownTastings(store, brewer->id);
      read.page = words::roomPage(voice(), tastings, insight::roomOf(tastings));
    }
    const auto sessions = session::sessions(store);
    const auto draft = std::ranges::find(sessions, State::draft, &session::SessionLine::state);
    if (draft != sessions.end()) read.draft = draft->id;
    return read;
  }, [this](const Read& read) { take(read); });
}

void RoomModel::take(const Read& read) {
  m_loaded = true;
  m_known = read.page.has_value();
  m_draft = read.draft;
  const words::RoomPage page = read.page.value_or(words::RoomPage{});
  m_shape = m_known ? shapeName(page.shape) : QString();
  m_headline = m_known ? shown(page.headline) : tr("You and the room");
  m_lead = shown(page.lead);
  m_lines = shownAll(page.lines);
  m_expectedHeading = shown(page.expected.heading);
  m_expectedLines = shownAll(page.expected.lines);
  m_expected.set(rowsOf(page.expected));
  m_labelHeading = shown(page.label.heading);
  m_labelLines = shownAll(page.label.lines);
  m_label.set(rowsOf(page.label));
  m_figure = m_curve = {};
  if (page.picture)
    m_figure.layOut = [picture = report::picture(*page.picture)](double width, const figures::Measure& measure) { return figures::gapFigure(picture, width, measure); };
  if (page.curve)
    m_curve.layOut = [picture = report::picture(*page.curve)](double width, const figures::Measure& measure) { return figures::meanFigure(picture, width, measure); };
  emit changed();
}

void RoomModel::expectNext() { emit planRequested(m_draft); }

QStringList RoomModel::how() const { return m_known ? shownAll(words::roomSources(voice())) : QStringList(); }

}  // namespace oddglass::ui
