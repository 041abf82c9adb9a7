#include "ui/history_model.h"

#include "report/entry_line.h"
#include "session/look.h"
#include "session/record.h"
#include "ui/voice.h"
#include "words/history.h"
#include "words/record.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

struct HistoryRead {
  std::vector<session::HistoryLine> lines;
  session::Verification found;
  Millis now = 0;
};

}  // namespace

HistoryModel::HistoryModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_entries(HistoryRow::staticMetaObject, this) {}

void HistoryModel::load() {
  ask([id = m_stage.current.id()](Cellar& cellar) {
    return HistoryRead{session::history(cellar.store(), id), session::verify(cellar.store(), id), cellar.clock.now()};
  }, [this](const HistoryRead& read) {
    std::vector<HistoryRow> rows;
    for (const session::HistoryLine& line : read.lines) {
      HistoryRow row;
      row.number = QString::number(line.seq.value);
      row.when = tr("%1 %2").arg(shown(words::day(voice(), line.at)), shown(words::timeOfDay(voice(), line.at)));
      row.says = shown(report::entryLine(voice(), line));
      rows.push_back(row);
    }
    m_entries.set(rows);
    m_checks.clear();
    for (const session::Check& check : read.found.checks) m_checks << shown(words::checkLine(voice(), check.what, check.holds, check.where));
    m_revealed = std::any_of(read.lines.begin(), read.lines.end(), [](const auto& line) { return line.event == Event::revealed; });
    const bool keyOpen = m_revealed || std::any_of(read.lines.begin(), read.lines.end(), [](const auto& line) { return line.event == Event::broken; });
    const bool holds = read.found.holds();
    m_headline = holds ? tr("The record holds.") : tr("The record does not check.");
    m_lead = holds && keyOpen ? QString() : shown(words::checkHeadline(voice(), holds, keyOpen));
    m_shape = holds ? QStringLiteral("disc") : QStringLiteral("dash");
    m_checkedAt = tr("Looked at, at %1. %2").arg(shown(words::timeOfDay(voice(), read.now)), shown(words::openingsLine(voice(), read.found.pourSheetOpenings)));
    if (read.found.erased > 0) m_checkedAt += tr(" People who asked to be forgotten: %1.").arg(read.found.erased);
    emit changed();
  });
}

}  // namespace oddglass::ui
