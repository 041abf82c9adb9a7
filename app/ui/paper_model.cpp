#include "ui/paper_model.h"

#include "tasting/board.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/numbers.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>

namespace oddglass::ui {
namespace {

/// In the order of the page; the key last.
constexpr std::array offeredPaper{Printed::labels, Printed::mats, Printed::sheets, Printed::blank, Printed::run, Printed::pour, Printed::key};
/// Where hands hide the key there is none to print; the routine stands in its place.
constexpr std::array offeredByHand{Printed::labels, Printed::mats, Printed::sheets, Printed::blank, Printed::routine};

QString fileWordOf(Printed what) {
  switch (what) {
    case Printed::labels: return QStringLiteral("labels");
    case Printed::mats: return QStringLiteral("mats");
    case Printed::sheets: return QStringLiteral("sheets");
    case Printed::blank: return QStringLiteral("blank-sheet");
    case Printed::run: return QStringLiteral("run");
    case Printed::routine: return QStringLiteral("routine");
    case Printed::pour: return QStringLiteral("for-the-pourer");
    case Printed::key: return QStringLiteral("key-card");
    case Printed::report:
    case Printed::series:
    case Printed::tags: break;
  }
  return QStringLiteral("report");
}

/// So many millimetres, with blanks or commas between them; a comma may also stand before a fraction.
std::vector<double> millimetres(const QString& typed, std::size_t count, const char* argument) {
  std::vector<double> all;
  QStringList parts = typed.split(QRegularExpression(QStringLiteral("[,;]?\\s+|;")), Qt::SkipEmptyParts);
  if (static_cast<std::size_t>(parts.size()) != count) parts = typed.split(QLatin1Char(','), Qt::SkipEmptyParts);
  for (const QString& part : parts) {
    const auto number = words::readNumber(plain(part));
    if (!number) throw Problem(Trouble::notANumber, argument, {{"text", plain(part)}});
    all.push_back(*number);
  }
  if (all.size() != count) throw Problem(Trouble::notANumber, argument, {{"text", plain(typed)}});
  return all;
}

QString joined(std::initializer_list<double> all) {
  QStringList parts;
  for (const double each : all) parts << QString::number(each);
  return parts.join(QLatin1Char(' '));
}

}  // namespace

PaperModel::PaperModel(const Stage& stage, const QString& settings, QObject* parent) : PageModel(stage, parent), m_wishes(settings) {
  nameFields({"columns", "rows", "skip", "margins", "gaps", "out"});
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (m_stage.router.page() == Router::Page::Paper || !m_forPourer) return;
    m_forPourer = false;
    m_kind = 0;
  });
}

Printed PaperModel::paperAt(int kind) const {
  const auto at = static_cast<std::size_t>(kind);
  return m_byHand ? offeredByHand.at(std::min(at, offeredByHand.size() - 1)) : offeredPaper.at(at);
}

QStringList PaperModel::kinds() const {
  QStringList all{tr("Cup labels"), tr("Place mats"), tr("Answer sheets"), tr("A sheet without codes")};
  if (m_byHand) all << tr("Steps and lists of the routine");
  else all << tr("Run list") << tr("Pourer's sheet") << tr("Key card");
  return all;
}

bool PaperModel::isOfLabels() const { return paperAt(m_kind) == Printed::labels; }

bool PaperModel::isOfKey() const { return isKey(paperAt(m_kind)); }


void PaperModel::load() {
  ask([id = m_stage.current.id()](Cellar& cellar) {
    // Without a session the measures of the paper stand here all the same.
    return std::pair(cellar.store().file().parent_path(), !id.text.empty() && tasting::board(cellar.store(), id).routine != Routine::pourer);
  }, [this](const std::pair<std::filesystem::path, bool>& read) {
    const std::filesystem::path& folder = read.first;
    m_byHand = read.second;
    m_kind = std::min(m_kind, static_cast<int>(m_byHand ? offeredByHand.size() : offeredPaper.size()) - 1);
    m_folder = QString::fromStdString(folder.string());
    const print::LabelSheet labels = m_wishes.labels();
    m_size = m_wishes.size() == print::PaperSize::letter ? 1 : 0;
    m_columns = QString::number(labels.columns);
    m_rows = QString::number(labels.rows);
    m_skip = QStringLiteral("0");
    m_margins = joined({labels.top, labels.right, labels.bottom, labels.left});
    m_gaps = joined({labels.across, labels.down});
    showKind();
  });
}

void PaperModel::openForPourer() {
  m_forPourer = true;
  m_kind = static_cast<int>(std::ranges::find(offeredPaper, Printed::pour) - offeredPaper.begin());
  go(Router::Page::Paper);
}

void PaperModel::setKind(int kind) {
  m_kind = std::clamp(kind, 0, static_cast<int>(m_byHand ? offeredByHand.size() : offeredPaper.size()) - 1);
  showKind();
}

void PaperModel::setSize(int size) {
  m_size = size;
  m_wishes.keep(size == 1 ? print::PaperSize::letter : print::PaperSize::a4);
  emit changed();
}

void PaperModel::showKind() {
  m_asking = false;
  m_told.clear();
  m_written.clear();
  switch (paperAt(m_kind)) {
    case Printed::labels: m_kindLine = tr("One for every code, place by place; those kept for spilled cups come last. Whoever sticks them on learns nothing from it."); break;
    case Printed::mats: m_kindLine = tr("One for each flight: where each code stands, from left to right as the taster sees it."); break;
    case Printed::sheets: m_kindLine = tr("One for each flight, with the codes of its own place only. They hold no key: print them in any case, for the evening on which the computer gives up."); break;
    case Printed::blank: m_kindLine = tr("One to be copied by hand, with boxes for place and codes."); break;
    case Printed::run: m_kindLine = tr("What happens when, with minutes. Everybody may read it."); break;
    case Printed::routine: m_kindLine = tr("The steps in which hands hide the key, and the blank lists for what each cup held. It holds no key."); break;
    case Printed::pour: m_kindLine = tr("In the order of the bottles, and again place by place. This is the key: the opening is recorded and counted in the report."); break;
    case Printed::key: m_kindLine = tr("To be folded twice and taped, for the day on which the computer is lost. This is the key: the opening is recorded and counted in the report."); break;
    case Printed::report:
    case Printed::series:
    case Printed::tags: break;
  }
  m_file = m_folder + QStringLiteral("/paper-") + shown(m_stage.current.id().text.substr(0, 8)) + QLatin1Char('-') + fileWordOf(paperAt(m_kind)) + QStringLiteral(".pdf");
  emit changed();
}

void PaperModel::step(const QString& what, int by) {
  QString& text = what == QLatin1String("columns") ? m_columns : what == QLatin1String("rows") ? m_rows : m_skip;
  const int least = &text == &m_skip ? 0 : 1;
  text = QString::number(std::clamp(text.toInt() + by, least, 359));
  emit changed();
}

print::LabelSheet PaperModel::typedLabels() const {
  const auto margins = millimetres(m_margins, 4, "margins"), gaps = millimetres(m_gaps, 2, "gaps");
  return {typedWhole(m_columns, "columns"), typedWhole(m_rows, "rows"), margins[0], margins[1], margins[2], margins[3], gaps[0], gaps[1], typedWhole(m_skip, "skip")};
}

void PaperModel::print() {
  if (isOfKey() && !m_asking) {
    m_asking = true;
    emit changed();
    return;
  }
  if (!isOfKey()) write();
}

void PaperModel::printForPourer() { write(); }

void PaperModel::write() {
  try {
    Printing wish;
    wish.what = paperAt(m_kind);
    wish.size = m_size == 1 ? print::PaperSize::letter : print::PaperSize::a4;
    if (isOfLabels()) {
      wish.labels = typedLabels();
      print::requireLabels(wish.labels, wish.size);
      m_wishes.keep(wish.labels);
    }
    ask([id = m_stage.current.id(), wish, file = std::filesystem::path(plain(m_file.trimmed()))](Cellar& cellar) {
      printInto(cellar.store(), cellar.clock, voice(), id, wish, file);
      return file;
    }, [this, what = wish.what](const std::filesystem::path& file) {
      const QString name = QString::fromStdString(file.string());
      m_asking = false;
      m_written = QUrl::fromLocalFile(name);
      m_told = isKey(what) ? tr("It is at %1. Print it at its own size, take it with you, and destroy the file: whoever finds it has the key.").arg(name)
                           : tr("It is at %1. Print it at its own size, not fitted to the page.").arg(name);
      emit changed();
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

}  // namespace oddglass::ui
