#include "ui/sheet_model.h"

#include "domain/names.h"
#include "tasting/typed.h"
#include "ui/cups.h"
#include "ui/sheet_rows.h"

#include <algorithm>

namespace oddglass::ui {

using tasting::SheetStepKind;

SheetModel::SheetModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_questions(QuestionRow::staticMetaObject, this) {
  m_goWords = tr("Go on");
  m_wait.setObjectName(QStringLiteral("wait"));
  m_wait.setInterval(1000);
  connect(&m_wait, &QTimer::timeout, this, &SheetModel::tick);
  m_keep.setSingleShot(true);
  m_keep.setInterval(400);
  connect(&m_keep, &QTimer::timeout, this, &SheetModel::keep);
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (m_stage.router.page() != Router::Page::MySheet) forget();
  });
}

void SheetModel::open(const tasting::Flight& flight) {
  struct Read {
    std::vector<tasting::Reply> typed;
    std::array<std::uint8_t, 16> clientId{};
  };
  ask([id = m_stage.current.id(), place = flight.place, round = flight.round](Cellar& cellar) {
    return Read{tasting::typed(cellar.store(), id, place, round), cellar.chance.bytes<16>()};
  }, [this, flight](const Read& read) {
    m_filling.emplace(flight, m_stage.current.id(), read.typed);
    m_clientId = read.clientId;
    m_passed.clear();
    m_isLocking = false;
    m_placeLine = flight.rounds > 1 ? tr("Place %1, round %2 of %3").arg(flight.place.value).arg(flight.round.value).arg(flight.rounds)
                                    : tr("Place %1").arg(flight.place.value);
    showStep();
    go(Router::Page::MySheet);
  });
}

// A new step: its words, its questions, and its wait.
void SheetModel::showStep() {
  const tasting::SheetStep& step = m_filling->step();
  const auto cups = m_filling->cups();
  m_nudged.reset();
  m_stepNumber++;
  m_waits = step.kind == SheetStepKind::pause || step.kind == SheetStepKind::swallow;
  m_code.clear();
  m_spokenCode.clear();
  m_position.clear();
  if (step.cup) {
    const Code code = m_filling->code();
    m_code = codeText(code);
    m_spokenCode = oddglass::ui::spokenCode(code);
    const auto at = std::ranges::find(cups, code) - cups.begin();
    m_position = positionWord({static_cast<int>(at) + 1}, static_cast<int>(cups.size()));
    m_stepLine = tr("Cup %1 of %2").arg(at + 1).arg(cups.size());
  } else {
    m_stepLine = tr("All cups together");
  }
  m_headline = headlineOf(step);
  m_lead = leadOf(step, m_filling->flight());
  m_isLast = m_filling->isLast();
  m_canGoBack = !m_filling->isFirst();
  if (m_waits) startWait();
  else m_wait.stop();
  show();
}

void SheetModel::show() {
  if (!m_filling) return;
  std::vector<QuestionRow> rows;
  m_rowItems.clear();
  for (Item number : m_filling->step().items) {
    const SheetItem& item = m_filling->item(number);
    // All words to tick stand in one row.
    if (item.kind == ItemKind::check && !rows.empty() && rows.back().form == QStringLiteral("ticks")) {
      addTick(rows.back(), item, m_filling->value(number, m_filling->code()));
      m_rowItems.back().push_back(number);
      continue;
    }
    rows.push_back(rowOf(item));
    m_rowItems.push_back({number});
  }
  m_questions.set(rows);
  m_goReason = reason();
  m_goWords = m_isLast ? tr("Lock my sheet") : m_waits ? tr("Go on") : nextIsCup(*m_filling) ? tr("Next cup") : tr("Go on");
  emit changed();
}

QuestionRow SheetModel::rowOf(const SheetItem& item) const {
  QuestionRow row = questionRow(item, *m_filling);
  row.passed = std::ranges::find(m_passed, std::pair(item.item, m_filling->code())) != m_passed.end() ||
               (item.kind == ItemKind::worst && m_filling->value(item.item, m_filling->code()) == 0);
  if (m_nudged == std::pair(item.item, m_filling->code())) row.nudge = tr("Look once more: the smell, the first sip, the end. If there is nothing, tap again.");
  return row;
}

QString SheetModel::reason() const {
  if (m_isLocking) return tr("One moment.");
  if (m_waits && m_secondsLeft > 0) return tr("In %1 seconds.").arg(m_secondsLeft);
  const auto open = m_filling->open();
  if (open.empty()) return {};
  return openReason(m_filling->item(open.front()), static_cast<int>(open.size()));
}

void SheetModel::answer(int row, int value) {
  const Item item = m_rowItems.at(static_cast<std::size_t>(row)).front();
  const SheetItem& asked = m_filling->item(item);
  m_filling->set(item, asked.perCup ? m_filling->code() : Code{}, valueOfOption(asked, value));
  std::erase(m_passed, std::pair(item, m_filling->code()));
  m_keep.start();
  show();
}

void SheetModel::step(int row, int by) {
  const Item item = m_rowItems.at(static_cast<std::size_t>(row)).front();
  const SheetItem& asked = m_filling->item(item);
  const int low = asked.low.value_or(0), high = asked.high.value_or(100);
  const int now = m_filling->value(item, m_filling->code()).value_or((low + high) / 2 - by);
  m_filling->set(item, m_filling->code(), std::clamp(now + by, low, high));
  m_keep.start();
  show();
}

void SheetModel::touch(int row, int option, int by) {
  const auto& items = m_rowItems.at(static_cast<std::size_t>(row));
  const SheetItem& asked = m_filling->item(items.front());
  const auto cup = [&] { return m_filling->cups().at(static_cast<std::size_t>(option)); };
  if (asked.kind == ItemKind::check) {
    const Item item = items.at(static_cast<std::size_t>(option));
    const bool isTicked = m_filling->value(item, m_filling->code()) == 1;
    m_filling->set(item, m_filling->code(), isTicked ? 0 : 1);
  } else if (asked.kind == ItemKind::rank) {
    m_filling->tapRank(asked.item, cup());
  } else if (asked.kind == ItemKind::split) {
    m_filling->givePoint(asked.item, cup(), by);
  }
  m_keep.start();
  show();
}

void SheetModel::write(int row, const QString& text) {
  const Item item = m_rowItems.at(static_cast<std::size_t>(row)).front();
  m_nudged.reset();
  m_filling->write(item, m_filling->item(item).perCup ? m_filling->code() : Code{}, plain(text));
  m_keep.start();
  show();
}

void SheetModel::passOver(int row) {
  const Item item = m_rowItems.at(static_cast<std::size_t>(row)).front();
  const SheetItem& asked = m_filling->item(item);
  const std::pair at(item, m_filling->code());
  if (asked.kind == ItemKind::worst) {
    if (m_nudged != at) {
      m_nudged = at;
      show();
      return;
    }
    m_nudged.reset();
    m_filling->set(item, m_filling->code(), 0);
  } else {
    m_filling->set(item, m_filling->code(), std::nullopt);
    if (std::ranges::find(m_passed, at) == m_passed.end()) m_passed.push_back(at);
  }
  m_keep.start();
  show();
}

void SheetModel::next() {
  if (!m_filling || !reason().isEmpty() || m_isLast) return;
  m_filling->next();
  keep();
  showStep();
}

void SheetModel::back() {
  if (!m_filling) return;
  m_filling->back();
  showStep();
}

void SheetModel::startWait() {
  m_secondsLeft = m_filling->step().seconds;
  m_wait.start();
}

void SheetModel::tick() {
  if (m_secondsLeft > 0) --m_secondsLeft;
  if (m_secondsLeft == 0) m_wait.stop();
  if (!m_filling) return;
  m_goReason = reason();
  emit changed();
}

// Keeps what is typed; a crash loses the last touch at most.
void SheetModel::keep() {
  m_keep.stop();
  if (!m_filling || m_isLocking) return;
  ask([id = m_stage.current.id(), place = m_filling->flight().place, round = m_filling->flight().round, replies = m_filling->replies()](Cellar& cellar) {
    tasting::keepTyped(cellar.store(), cellar.clock, id, place, round, replies);
  }, [] {});
}

void SheetModel::lock() {
  if (!m_filling || !m_isLast || !reason().isEmpty()) return;
  m_filling->settle();
  m_keep.stop();
  m_isLocking = true;
  tasting::HandIn in;
  in.place = m_filling->flight().place;
  in.round = m_filling->flight().round;
  in.clientId = m_clientId;
  in.replies = m_filling->replies();
  show();
  ask([id = m_stage.current.id(), in](Cellar& cellar) { return tasting::handIn(cellar.store(), cellar.clock, cellar.chance, id, in).at(); },
      [this](Millis at) {
        m_isLocking = false;
        emit locked(at);
      });
}

// Whoever leaves the page between two touches loses neither.
void SheetModel::forget() {
  m_wait.stop();
  if (m_keep.isActive()) keep();
  m_filling.reset();
  m_rowItems.clear();
  m_passed.clear();
  m_questions.set(std::vector<QuestionRow>{});
}

}  // namespace oddglass::ui
