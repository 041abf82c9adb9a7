#include "ui/key_model.h"

#include "report/entry_line.h"
#include "session/ending.h"
#include "session/look.h"
#include "tasting/board.h"
#include "ui/voice.h"
#include "words/history.h"
#include "words/numbers.h"

namespace oddglass::ui {
namespace {

/// What the room should hear before the key is opened.
bool isTold(Event event) {
  switch (event) {
    case Event::spilled:
    case Event::voided:
    case Event::said:
    case Event::placeLeft:
    case Event::placeFreed:
    case Event::matsSwapped:
    case Event::pourSheetOpened: return true;
    default: return false;
  }
}

struct KeyRead {
  tasting::Board board;
  std::vector<session::HistoryLine> history;
};

}  // namespace

KeyModel::KeyModel(const Stage& stage, QObject* parent) : PageModel(stage, parent) { nameFields({"reason"}); }

void KeyModel::load() {
  ask([id = m_stage.current.id()](Cellar& cellar) { return KeyRead{tasting::board(cellar.store(), id), session::history(cellar.store(), id)}; },
      [this](const KeyRead& read) {
        m_canOpen = read.board.state == State::closed;
        m_readFirst = m_canOpen && read.board.unread > 0;
        m_canEnd = m_canOpen || read.board.state == State::sealed || read.board.state == State::tasting;
        const int missing = read.board.expected - read.board.locked;
        m_headline = m_canOpen ? tr("Is everybody here?") : tr("The key is sealed.");
        m_lead = !m_canOpen ? tr("It can be opened when the table is closed.")
                 : missing > 0 ? tr("Handed in: %1. Missing, and staying so: %2.")
                                     .arg(shown(words::tastings(voice(), read.board.locked)), QString::number(missing))
                               : tr("Handed in: %1. None is missing.").arg(shown(words::tastings(voice(), read.board.locked)));
        if (m_readFirst) {
          m_headline = tr("What stood in the cups?");
          m_lead = tr("Hands hid the key of this evening. It is read off first, cup by cup; then it is opened for everybody at once.");
        }
        m_happened.clear();
        for (const session::HistoryLine& line : read.history)
          if (isTold(line.event))
            m_happened << tr("%1  %2").arg(shown(words::timeOfDay(voice(), line.at)),
                                           shown(report::entryLine(voice(), line, false)));
        m_reason.clear();
        emit changed();
      });
}

void KeyModel::open() {
  ask([id = m_stage.current.id()](Cellar& cellar) { return session::reveal(cellar.store(), cellar.clock, id); },
      [this](const session::Revealed& revealed) {
        go(Router::Page::CameOut);
        if (revealed.backupProblem) m_stage.notice.say(tr("The key is open. No backup could be made: %1").arg(sentenceOf(*revealed.backupProblem)));
      });
}

void KeyModel::breakSeal() {
  ask([id = m_stage.current.id(), reason = plain(m_reason)](Cellar& cellar) {
    session::breakSeal(cellar.store(), cellar.clock, cellar.chance, id, reason, true);
  }, [this] { go(Router::Page::History); });
}

void KeyModel::abandon() {
  ask([id = m_stage.current.id(), reason = plain(m_reason)](Cellar& cellar) {
    session::abandon(cellar.store(), cellar.clock, cellar.chance, id, reason, true);
  }, [this] { go(Router::Page::History); });
}

}  // namespace oddglass::ui
