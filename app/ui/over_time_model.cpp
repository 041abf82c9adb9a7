#include "ui/over_time_model.h"

#include "exchange/calendar.h"
#include "exchange/file_out.h"
#include "report/age_picture.h"
#include "report/html.h"
#include "report/series_document.h"
#include "session/look.h"
#include "shelf/beverages.h"
#include "shelf/lots.h"
#include "shelf/series.h"
#include "ui/printing.h"
#include "ui/shapes.h"
#include "ui/voice.h"
#include "words/history.h"
#include "words/over_time.h"
#include "words/ready_sheets.h"
#include "words/sources.h"

#include <algorithm>
#include <filesystem>

namespace oddglass::ui {

/// All that the page shows of one series, read in one go.
struct AgedRead : report::SeriesRead {
  std::vector<Series> all;
  bool isClosed = false, anyArchived = false;
  std::filesystem::path folder;
};

namespace {

bool isHeld(const session::SittingNow& sitting) { return sitting.state == State::revealed; }

AgedRead readAged(store::Store& store, const SeriesId& wanted, bool opened, bool archivedToo) {
  AgedRead read;
  read.all = shelf::allSeries(store, true);
  read.anyArchived = std::ranges::any_of(read.all, &Series::archived);
  if (!archivedToo) std::erase_if(read.all, &Series::archived);
  read.folder = store.file().parent_path();
  if (read.all.empty()) return read;
  const auto found = std::ranges::find(read.all, wanted, &Series::id);
  read.series = found == read.all.end() ? read.all.front() : *found;
  read.now = session::sittingsNow(store, read.series.id);
  read.isClosed = session::sealedSitting(store, read.series.id).has_value() && !opened;
  if (read.isClosed) return read;
  static_cast<report::SeriesRead&>(read) = report::readSeries(store, read.series.id);
  return read;
}

FigureRow rowWith(const words::OutSection& section, std::optional<figures::AgePicture> picture) {
  FigureRow row;
  row.heading = shown(section.heading);
  row.says = shownAll(section.lines).join(QLatin1Char('\n'));
  if (picture) row.figure.layOut = [picture = std::move(*picture)](double width, const figures::Measure& measure) { return figures::ageFigure(picture, width, measure); };
  return row;
}

std::vector<FigureRow> askedRows(const AgedRead& read, const words::OverTimeWords& out) {
  std::vector<FigureRow> rows;
  const std::size_t lines = read.over.lines.size();
  for (std::size_t i = 0; i < out.round.size(); ++i)
    rows.push_back(rowWith(out.round[i], i < lines ? report::agePicture(voice(), read.series, read.over, read.over.lines[i], read.notes)
                                                   : report::mentionPicture(voice(), read.series, read.over, read.over.mentions[i - lines], read.notes)));
  return rows;
}

std::vector<FigureRow> seenRows(const AgedRead& read, const words::OverTimeWords& out) {
  std::vector<FigureRow> rows;
  const auto seen = insight::seenInBottle(read.series, read.notes);
  for (std::size_t i = 0; i < out.seen.size(); ++i) rows.push_back(rowWith(out.seen[i], i < seen.size() ? std::optional(report::seenPicture(voice(), seen[i])) : std::nullopt));
  return rows;
}

}  // namespace

OverTimeModel::OverTimeModel(const Stage& stage, const QString& settings, QObject* parent)
    : PageModel(stage, parent), m_wishes(settings), m_series(SeriesRow::staticMetaObject, this), m_sittings(SittingRow::staticMetaObject, this), m_asked(FigureRow::staticMetaObject, this), m_seen(FigureRow::staticMetaObject, this) {
  nameFields({"out", "calendar"});
}

void OverTimeModel::load() { read(false); }

void OverTimeModel::read(bool opened) {
  m_told.clear();
  m_reported.clear();
  ask([id = m_id, opened, archivedToo = m_archivedShown](Cellar& cellar) { return readAged(cellar.store(), id, opened, archivedToo); }, [this](const AgedRead& read) { show(read); });
}

void OverTimeModel::show(const AgedRead& read) {
  m_loaded = true;
  m_anything = !read.all.empty();
  m_ids.clear();
  std::vector<SeriesRow> rows;
  for (const Series& each : read.all) {
    m_ids.push_back(each.id);
    SeriesRow row;
    row.title = shown(each.title);
    row.here = each.id == read.series.id;
    row.archived = each.archived;
    rows.push_back(row);
  }
  m_series.set(rows);
  m_id = read.series.id;
  m_now = read.now;
  m_closed = read.isClosed;
  m_archived = read.series.archived;
  m_anyArchived = read.anyArchived;
  m_mayThrowAway = m_anything && std::ranges::none_of(read.now, [](const session::SittingNow& each) { return each.session && each.state != State::draft; });
  m_title = shown(read.series.title);
  m_lines.clear();
  m_notes.clear();
  m_shape.clear();
  m_headline.clear();
  const session::SittingNow* next = session::nextSitting(read.now);
  m_next = next ? tr("Next look: %1.").arg(shown(next->dueOn)) : QString();
  m_primary = !m_anything ? tr("Begin a series") : !next ? tr("Begin another series") : next->session ? tr("Go on with the next look") : tr("Plan the next look");
  std::vector<FigureRow> asked, seen;
  if (m_anything && !m_closed) {
    const words::OverTimeWords out = words::overTimeWords(voice(), read.series, read.over, {}, read.notes);
    m_shape = read.over.sittings.empty() ? QString() : shapeName(out.shape);
    m_headline = shown(out.headline);
    m_lines = shownAll(out.lines) + (read.over.sittings.empty() ? QStringList() : shownAll(out.cautions));
    m_notes = shownAll(report::noteLines(voice(), read.series, read.over, read.notes));
    asked = askedRows(read, out);
    seen = seenRows(read, out);
  }
  m_asked.set(asked);
  m_seen.set(seen);
  showSittings(read);
  m_calendarFile = QString::fromStdString((read.folder / "looks.ics").string());
  m_reportFile = QString::fromStdString((read.folder / ("series-" + read.series.id.text.substr(0, 8) + ".html")).string());
  emit changed();
}

void OverTimeModel::showSittings(const AgedRead& read) {
  std::vector<SittingRow> rows;
  for (const session::SittingNow& each : read.now) {
    SittingRow row;
    const auto held = std::ranges::find(read.over.sittings, each.number, &insight::TimeSitting::number);
    row.says = held != read.over.sittings.end() ? tr("%1. %2").arg(each.number).arg(shown(words::sittingLine(voice(), *held, held == read.over.sittings.begin())))
               : each.heldOn.empty()            ? tr("%1. Due on %2").arg(each.number).arg(shown(each.dueOn))
                                                : tr("%1. Held on %2").arg(each.number).arg(shown(each.heldOn));
    QStringList more;
    if (each.session && !isHeld(each)) more << shown(words::capitalised(words::stateName(voice(), each.state)));
    if (held != read.over.sittings.end()) {
      const auto& parts = read.setup[static_cast<std::size_t>(held - read.over.sittings.begin())];
      if (!parts.empty()) more << shown(words::setupLine(voice(), parts));
    }
    if (each.timesSeen > 0) more << tr("The old pages were opened while it was sealed.");
    row.more = more.join(QStringLiteral(". "));
    row.deed = !each.session ? tr("Plan it") : each.state == State::draft ? tr("Go on with its plan") : tr("Open it");
    rows.push_back(row);
  }
  m_sittings.set(rows);
}

void OverTimeModel::choose(int row) {
  m_id = m_ids.at(static_cast<std::size_t>(row));
  load();
}

void OverTimeModel::goOn() {
  const session::SittingNow* next = session::nextSitting(m_now);
  if (!next) return begin();
  sitting(static_cast<int>(next - m_now.data()));
}

void OverTimeModel::sitting(int row) {
  const session::SittingNow& sitting = m_now.at(static_cast<std::size_t>(row));
  if (sitting.session && sitting.state == State::draft) {
    emit planRequested(*sitting.session);
    return;
  }
  if (!sitting.session) {
    ask([id = m_id, number = sitting.number](Cellar& cellar) {
      const Series series = shelf::series(cellar.store(), id);
      const Kind kind = shelf::beverage(cellar.store(), shelf::lot(cellar.store(), series.batch).beverage).kind;
      return session::planSitting(cellar.store(), cellar.clock, cellar.chance, id, number, words::readyItems(voice(), words::readyFor(kind)));
    }, [this](const SessionId& session) { emit planRequested(session); });
    return;
  }
  ask([id = *sitting.session](Cellar& cellar) {
    const auto all = session::sessions(cellar.store());
    return *std::ranges::find(all, id, &session::SessionLine::id);
  }, [this](const session::SessionLine& line) {
    m_stage.current.set(line.id, shown(line.guestTitle), shown(line.sealMark));
    go(pageOf(line.state));
  });
}

void OverTimeModel::openAnyway() {
  ask([id = m_id](Cellar& cellar) { session::openOldPages(cellar.store(), cellar.clock, id); }, [this] { read(true); });
}

void OverTimeModel::archive(bool archived) {
  ask([id = m_id, archived](Cellar& cellar) {
    if (archived) shelf::archive(cellar.store(), cellar.clock, id);
    else shelf::bringBack(cellar.store(), id);
  }, [this, archived] {
    if (archived && !m_archivedShown) m_id = {};
    load();
  });
}

void OverTimeModel::setArchivedShown(bool shown) {
  m_archivedShown = shown;
  load();
}

void OverTimeModel::throwAway() {
  ask([id = m_id](Cellar& cellar) { shelf::discard(cellar.store(), id); }, [this] {
    m_id = {};
    load();
  });
}

void OverTimeModel::writeCalendar() {
  ask([id = m_id, file = std::filesystem::path(plain(m_calendarFile.trimmed()))](Cellar& cellar) {
    if (file.empty()) throw Problem(Trouble::empty, "calendar");
    try {
      exchange::writeCalendar(cellar.store(), cellar.clock, id, [](const Series& series, const Sitting& sitting) { return words::sittingTitle(voice(), series.title, sitting.number); }, file);
    } catch (const Problem& problem) {
      // Two files are named on this page.
      throw problem.argument() == "out" ? Problem(problem.trouble(), "calendar", problem.values()) : problem;
    }
    return file;
  }, [this](const std::filesystem::path& file) {
    m_told = tr("The coming looks are in %1.").arg(QString::fromStdString(file.string()));
    emit changed();
  });
}

void OverTimeModel::writeReport() {
  ask([id = m_id, file = std::filesystem::path(plain(m_reportFile.trimmed())), size = m_wishes.size()](Cellar& cellar) {
    if (file.empty()) throw Problem(Trouble::empty, "out");
    if (file.extension() == ".pdf") {
      printSeries(cellar.store(), voice(), id, size, file);
      return file;
    }
    const report::SeriesReport read = report::readSeriesReport(cellar.store(), id);
    if (session::areClosed(read.now)) throw Problem(Trouble::pagesClosed, "series", {{"text", read.series.title}});
    exchange::writeWhole(file, file.extension() == ".json" ? report::seriesJson(voice(), read) : report::html(voice(), report::seriesDocument(voice(), read)));
    return file;
  }, [this](const std::filesystem::path& file) {
    m_reported = tr("The report is at %1.").arg(QString::fromStdString(file.string()));
    emit changed();
  });
}

void OverTimeModel::printTags() {
  Printing wish;
  wish.what = Printed::tags;
  wish.size = m_wishes.size();
  wish.labels = m_wishes.labels();
  ask([id = m_id, wish](Cellar& cellar) {
    const std::filesystem::path file = cellar.store().file().parent_path() / ("bottle-tags-" + id.text.substr(0, 8) + ".pdf");
    ui::printTags(cellar.store(), voice(), id, wish, file);
    return file;
  }, [this](const std::filesystem::path& file) {
    m_told = tr("The tags are at %1. Their letters can be taken for no cup's code.").arg(QString::fromStdString(file.string()));
    emit changed();
  });
}

QStringList OverTimeModel::how() const { return m_anything && !m_closed ? shownAll(words::overTimeSources(voice())) : QStringList(); }

}  // namespace oddglass::ui
