#include "ui/today_model.h"

#include "exchange/demo.h"
#include "session/look.h"
#include "shelf/beverages.h"
#include "tasting/board.h"
#include "ui/voice.h"
#include "words/history.h"

#include <algorithm>
#include <array>
#include <filesystem>

namespace oddglass::ui {
namespace {

/// What waits most: an interrupted table, a sealed plan, a key to open, a plan to finish.
constexpr std::array waiting{State::tasting, State::sealed, State::closed, State::draft};

QString shapeOf(State state) {
  switch (state) {
    case State::revealed: return QStringLiteral("disc");
    case State::broken:
    case State::abandoned: return QStringLiteral("dash");
    default: return QStringLiteral("ring");
  }
}

struct TodayRead {
  std::vector<session::SessionLine> sessions;
  std::optional<session::SessionLine> next;
  std::optional<tasting::Board> board;
  bool emptyShelf = false;
};

TodayRead readAll(store::Store& store) {
  TodayRead read;
  read.sessions = session::sessions(store);
  read.emptyShelf = shelf::find(store, "", true).empty();
  for (const State state : waiting) {
    const auto found = std::find_if(read.sessions.begin(), read.sessions.end(), [&](const auto& line) { return line.state == state; });
    if (found == read.sessions.end()) continue;
    read.next = *found;
    if (state != State::draft) read.board = tasting::board(store, found->id);
    break;
  }
  return read;
}

}  // namespace

TodayModel::TodayModel(const Stage& stage, const QString& demo, QObject* parent)
    : PageModel(stage, parent), m_sessions(SessionRow::staticMetaObject, this), m_demo(demo) {}

void TodayModel::load() { read(false); }
void TodayModel::resume() { read(true); }

void TodayModel::read(bool resuming) {
  ask([](Cellar& cellar) { return readAll(cellar.store()); }, [this, resuming](const TodayRead& read) {
    m_listed.clear();
    std::vector<SessionRow> rows;
    const auto listed = [](const session::SessionLine& line) {
      return Listed{line.id, line.state, shown(line.guestTitle), shown(line.sealMark)};
    };
    for (const session::SessionLine& line : read.sessions) {
      SessionRow row;
      row.title = line.title.empty() ? tr("A plan without a title") : shown(line.title);
      row.line = tr("%1, %2").arg(shown(words::capitalised(words::stateName(voice(), line.state))), shown(words::day(voice(), line.lastAt)));
      row.shape = shapeOf(line.state);
      rows.push_back(row);
      m_listed.push_back(listed(line));
    }
    m_sessions.set(rows);
    m_emptyShelf = read.emptyShelf && read.sessions.empty();
    m_hasNext = read.next.has_value();
    m_loaded = true;
    m_refusal.clear();
    if (read.next) {
      m_next = listed(*read.next);
      sayNext(shown(read.next->title), read.board);
    }
    emit changed();
    if (!resuming || !read.next || read.next->state != State::tasting) return;
    emit interrupted(read.next->id, read.board->lastAt);
    enter(m_next);
  });
}

void TodayModel::sayNext(const QString& title, const std::optional<tasting::Board>& board) {
  const QString name = title.isEmpty() ? tr("a plan without a title") : title;
  switch (m_next.state) {
    case State::tasting:
      m_headline = tr("The table is open.");
      m_lead = tr("%1. Last written at %2; %3 of %4 answers are safe. Nobody has seen the key.")
                   .arg(name, shown(words::timeOfDay(voice(), board->lastAt))).arg(board->locked).arg(board->expected);
      break;
    case State::sealed:
      m_headline = tr("A tasting is sealed and waits for its table.");
      m_lead = tr("%1. Its seal mark is %2.").arg(name, m_next.sealMark);
      break;
    case State::closed:
      m_headline = tr("The table is closed. The key waits.");
      m_lead = tr("%1. Answers locked: %2.").arg(name).arg(board->locked);
      break;
    default:
      m_headline = tr("A plan waits to be finished.");
      m_lead = name;
  }
}

void TodayModel::enter(const Listed& session) {
  if (session.state == State::draft) {
    emit planRequested(session.id);
    return;
  }
  m_stage.current.set(session.id, session.title, session.sealMark);
  go(pageOf(session.state));
}

void TodayModel::fail(const Problem& problem) {
  if (m_loaded) {
    PageModel::fail(problem);
    return;
  }
  m_refusal = sentenceOf(problem);
  emit changed();
}

void TodayModel::goOn() { enter(m_next); }

void TodayModel::open(int row) { enter(m_listed.at(static_cast<std::size_t>(row))); }

void TodayModel::startTasting() { emit planRequested({}); }

void TodayModel::loadDemo() {
  ask([folder = std::filesystem::path(plain(m_demo))](Cellar& cellar) {
    return exchange::loadDemo(cellar.store(), cellar.clock, cellar.chance, folder);
  }, [this](const exchange::Demo&) { load(); });
}

}  // namespace oddglass::ui
