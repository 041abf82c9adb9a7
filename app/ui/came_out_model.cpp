#include "ui/came_out_model.h"

#include "exchange/file_out.h"
#include "figures/interval.h"
#include "insight/findings.h"
#include "report/html.h"
#include "report/pictures.h"
#include "report/sheet_pictures.h"
#include "report/sheet_report.h"
#include "session/ending.h"
#include "session/look.h"
#include "session/open_round.h"
#include "session/sittings.h"
#include "ui/printing.h"
#include "ui/section_lines.h"
#include "ui/shapes.h"
#include "ui/voice.h"
#include "words/came_out.h"
#include "words/expectation.h"
#include "words/maker.h"
#include "words/record.h"
#include "words/sheet_maker.h"
#include "words/sheet_out.h"

#include <filesystem>

namespace oddglass::ui {

namespace {

FigureSource figureSourceOf(const std::optional<words::IntervalWords>& said) {
  if (!said) return {};
  FigureSource source;
  source.layOut = [picture = report::picture(*said)](double width, const figures::Measure& measure) { return figures::intervalFigure(picture, width, measure); };
  return source;
}

void add(QStringList& lines, const std::string& text) {
  if (!text.empty()) lines << shown(text);
}

void add(QStringList& lines, const std::vector<std::string>& texts) {
  for (const std::string& text : texts) add(lines, text);
}

// What stands under a count, beside its picture.
QStringList evidenceOf(const words::CameOut& out) {
  QStringList lines;
  add(lines, out.notSaid);
  if (!out.interval || out.range != out.interval->sentence) add(lines, out.range);  // the picture says it already
  add(lines, out.missed);
  add(lines, out.weaker);
  return lines;
}

struct Read {
  RevealedSession session;
  words::CameOut out;
  words::MakerPart maker;
  std::vector<words::OutSection> makerSections;   ///< of a score sheet
  report::SheetDrawings drawings;                 ///< of a score sheet
  std::filesystem::path folder;
  bool isClosed = false;
};

// What came out, by the findings of the session's own method.
Read readOut(RevealedSession session, std::filesystem::path folder) {
  Read read;
  read.folder = std::move(folder);
  if (session.plan.sheet) {
    const insight::SheetFindings findings = insight::sheetFindingsOf(session);
    read.out = words::sheetOut(voice(), session, findings);
    read.makerSections = words::sheetMakerSections(voice(), session, findings);
    read.drawings = report::sheetDrawings(voice(), session, findings, read.out);
  } else {
    const insight::Findings findings = insight::findingsOf(session);
    read.out = words::cameOut(voice(), session, findings);
    read.maker = words::makerPart(voice(), session, findings);
  }
  read.session = std::move(session);
  return read;
}

}  // namespace

CameOutModel::CameOutModel(const Stage& stage, const QString& settings, QObject* parent)
    : PageModel(stage, parent), m_wishes(settings), m_facts(FactRow::staticMetaObject, this), m_people(FactRow::staticMetaObject, this), m_pairs(PairRow::staticMetaObject, this) {
  nameFields({"text", "out"});
}

void CameOutModel::read(bool opened) {
  m_loaded = m_forMaker = m_deciding = false;
  m_told.clear();
  emit changed();
  ask([id = m_stage.current.id(), opened](Cellar& cellar) {
    if (!opened && session::closedBy(cellar.store(), id)) {
      Read closed;
      closed.isClosed = true;
      return closed;
    }
    return readOut(session::revealed(cellar.store(), id), cellar.store().file().parent_path());
  }, [this](const Read& read) {
    m_closed = read.isClosed;
    if (m_closed) return showClosed();
    const words::CameOut& out = read.out;
    QStringList alarm;
    add(alarm, out.first);
    m_alarm = alarm.join(QLatin1Char(' '));
    m_broken = !read.session.commitmentHolds;
    m_mayOpenRound = session::mayAnswerOpenly(read.session);
    m_over = shown(out.what);
    m_shape = shapeName(out.shape);
    m_word = shown(out.word);
    m_headline = shown(out.headline);
    m_second = shown(out.under);
    m_count = shown(out.count);
    m_figure = read.drawings.lead.empty() ? figureSourceOf(out.interval) : FigureSource{read.drawings.lead.front()};
    m_evidence = evidenceOf(out);
    if (read.session.plan.sheet) showSections(out, read.drawings);
    else showPairs(out);
    hideMap(read.session.plan);
    add(m_evidence, out.beside);
    add(m_evidence, out.cautions);
    showFacts(out);
    m_record.clear();
    add(m_record, out.deviations);
    if (read.session.pourSheetOpenings <= 1) add(m_record, words::openingsLine(voice(), read.session.pourSheetOpenings));
    add(m_record, words::commitmentLine(voice(), read.session));
    add(m_record, out.method);
    showMaker(read.maker);
    if (const auto percent = read.session.plan.expectationPc) m_makerLines.prepend(shown(words::expectationLine(voice(), words::expectationFacts(read.session.plan), *percent)));
    for (const words::OutSection& section : read.makerSections) {
      add(m_makerLines, section.heading);
      m_makerLines << linesOf(section, true);
    }
    m_promised = shown(out.promise);
    m_decision = shown(read.session.decision);
    m_decided = shown(out.decision);
    m_reportFile = QString::fromStdString((read.folder / ("report-" + read.session.id.text.substr(0, 8) + ".html")).string());
    m_loaded = true;
    emit changed();
  });
}

void CameOutModel::showClosed() {
  for (QString* text : {&m_alarm, &m_over, &m_shape, &m_word, &m_second, &m_count, &m_promised, &m_decision, &m_decided, &m_reportFile}) text->clear();
  for (QStringList* lines : {&m_evidence, &m_record, &m_makerLines, &m_mapLines}) lines->clear();
  m_headline = tr("This page is closed while a look of its series is sealed.");
  m_figure = m_map = {};
  m_broken = m_mayOpenRound = m_mayShowMap = m_mapShown = false;
  m_pairs.set(std::vector<PairRow>{});
  m_facts.set(std::vector<FactRow>{});
  m_people.set(std::vector<FactRow>{});
  m_loaded = true;
  emit changed();
}

void CameOutModel::openAnyway() {
  ask([id = m_stage.current.id()](Cellar& cellar) {
    if (const auto series = session::closedBy(cellar.store(), id)) session::openOldPages(cellar.store(), cellar.clock, *series);
  }, [this] { read(true); });
}

void CameOutModel::showPairs(const words::CameOut& out) {
  std::vector<PairRow> rows;
  for (const words::CameOut& pair : out.pairs) {
    QStringList lines = evidenceOf(pair);
    for (const std::string* each : {&pair.howKnew, &pair.sureness}) add(lines, *each);
    add(lines, pair.beside);
    add(lines, pair.cautions);
    PairRow row;
    row.shape = shapeName(pair.shape);
    row.word = shown(pair.word);
    row.headline = shown(pair.headline);
    row.count = shown(pair.count);
    row.figure = figureSourceOf(pair.interval);
    row.evidence = lines.join(QLatin1Char('\n'));
    rows.push_back(row);
  }
  m_pairs.set(rows);
}

void CameOutModel::showFacts(const words::CameOut& out) {
  std::vector<FactRow> rows;
  const auto fact = [&rows](const QString& label, const QString& says) {
    if (says.isEmpty()) return;
    FactRow row;
    row.label = label;
    row.says = says;
    rows.push_back(row);
  };
  fact({}, shown(out.howKnew));
  fact({}, shown(out.sureness));
  fact({}, shown(out.next));
  m_facts.set(rows);
}

void CameOutModel::showMaker(const words::MakerPart& part) {
  m_makerLines.clear();
  add(m_makerLines, part.makers);
  add(m_makerLines, part.onlyInSums);
  add(m_makerLines, part.differ);
  add(m_makerLines, part.remarks);
  add(m_makerLines, part.said);
  std::vector<FactRow> rows;
  for (const words::PersonRow& person : part.people) {
    FactRow row;
    row.label = shown(person.who);
    row.says = shown(person.right);
    rows.push_back(row);
  }
  m_people.set(rows);
}

void CameOutModel::decide() {
  ask([id = m_stage.current.id(), text = plain(m_decision)](Cellar& cellar) {
    session::decide(cellar.store(), cellar.clock, cellar.chance, id, text);
  }, [this] { load(); });
}

void CameOutModel::writeReport() {
  Printing wish;
  wish.size = m_wishes.size();
  wish.whom = m_forMaker ? report::For::maker : report::For::room;
  ask([id = m_stage.current.id(), file = std::filesystem::path(plain(m_reportFile.trimmed())), wish](Cellar& cellar) {
    if (file.empty()) throw Problem(Trouble::empty, "out");
    if (file.extension() == ".pdf") {
      printInto(cellar.store(), cellar.clock, voice(), id, wish, file);
      return file;
    }
    const RevealedSession session = session::revealed(cellar.store(), id);
    exchange::writeWhole(file, file.extension() == ".json" ? report::jsonOf(voice(), session, wish.whom) : report::html(voice(), report::documentOf(voice(), session, wish.whom)));
    return file;
  }, [this](const std::filesystem::path& file) {
    m_told = tr("The report is at %1.").arg(QString::fromStdString(file.string()));
    emit changed();
  });
}

}  // namespace oddglass::ui
