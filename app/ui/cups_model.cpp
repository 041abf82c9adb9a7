#include "ui/cups_model.h"

#include "tasting/board.h"
#include "tasting/seats.h"
#include "ui/cups.h"
#include "ui/voice.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

/// The order of the page: the surest first.
constexpr std::array surenessAsShown{Sureness::sure, Sureness::fairly, Sureness::guess};

bool asks(const tasting::Flight& flight, ItemKind kind) {
  return std::any_of(flight.items.begin(), flight.items.end(), [kind](const SheetItem& item) { return item.kind == kind; });
}

bool needs(const tasting::Flight& flight, ItemKind kind) {
  return std::any_of(flight.items.begin(), flight.items.end(), [kind](const SheetItem& item) { return item.kind == kind && item.required; });
}

}  // namespace

CupsModel::CupsModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_cups(CupRow::staticMetaObject, this) {
  connect(&stage.current, &Current::changed, this, &PageModel::changed);
  connect(&stage.router, &Router::pageChanged, this, [this] {
    const Router::Page page = m_stage.router.page();
    if (page != Router::Page::MyCups && page != Router::Page::Locked) forget();
  });
}

CupsModel::Read CupsModel::read(Cellar& cellar, const SessionId& id, Place place) {
  Read read{tasting::nextFlight(cellar.store(), id, place), cellar.chance.bytes<16>(), false};
  for (const tasting::BoardPlace& at : tasting::board(cellar.store(), id).places)
    if (at.place == place) read.loose = at.who.empty();
  return read;
}

void CupsModel::open(int place) {
  m_place = Place{place};
  ask([id = m_stage.current.id(), at = m_place](Cellar& cellar) { return read(cellar, id, at); }, [this](const Read& read) {
    if (!read.flight) {
      go(Router::Page::Places);
      return;
    }
    m_flight = read.flight;
    m_clientId = read.clientId;
    m_loose = read.loose;
    m_confirmed = false;
    m_chosen = m_sureness = m_clue = -1;
    m_comment = m_notMine = QString();
    m_asksSureness = asks(*m_flight, ItemKind::sureness);
    m_asksClue = asks(*m_flight, ItemKind::clue);
    m_asksWords = asks(*m_flight, ItemKind::words);
    m_placeLine = m_flight->rounds > 1 ? tr("Place %1, round %2 of %3").arg(m_place.value).arg(m_flight->round.value).arg(m_flight->rounds)
                                       : tr("Place %1").arg(m_place.value);
    std::vector<std::string> codes;
    for (const tasting::FlightCup& cup : m_flight->cups) codes.push_back(plain(codeText(cup.code)));
    m_confirmSentence = tr("%1 stand before me, from left to right.").arg(shown(words::listed(voice(), codes)));
    show();
    go(Router::Page::MyCups);
  });
}

void CupsModel::show() {
  std::vector<CupRow> rows;
  for (std::size_t i = 0; m_flight && i < m_flight->cups.size(); ++i) {
    const tasting::FlightCup& cup = m_flight->cups[i];
    CupRow row;
    row.code = codeText(cup.code);
    row.spoken = spokenCode(cup.code);
    row.position = positionWord(cup.position, static_cast<int>(m_flight->cups.size()));
    row.chosen = static_cast<int>(i) == m_chosen;
    rows.push_back(row);
  }
  m_cups.set(rows);
  emit changed();
}

void CupsModel::confirm() {
  if (!m_flight) return;
  ask([id = m_stage.current.id(), place = m_place, round = m_flight->round](Cellar& cellar) {
    tasting::begin(cellar.store(), cellar.clock, id, place, round);
  }, [this] {
    m_confirmed = true;
    m_notMine.clear();
    emit changed();
  });
}

void CupsModel::choose(int row) {
  if (!m_confirmed || !m_flight || row < 0 || row >= static_cast<int>(m_flight->cups.size())) return;
  m_chosen = row;
  show();
}

QString CupsModel::lockWords() const {
  if (!m_flight || m_chosen < 0) return tr("Lock");
  return tr("Lock %1").arg(codeText(m_flight->cups[static_cast<std::size_t>(m_chosen)].code));
}

QString CupsModel::lockReason() const {
  if (!m_flight || m_chosen < 0) return tr("Choose a cup first. Not sure? Choose one anyway.");
  if (m_sureness < 0 && needs(*m_flight, ItemKind::sureness)) return tr("Say how sure you are.");
  if (m_clue < 0 && needs(*m_flight, ItemKind::clue)) return tr("Say how you knew.");
  return {};
}

void CupsModel::lock() {
  if (!m_flight || !lockReason().isEmpty()) return;
  tasting::HandIn given;
  given.place = m_place;
  given.round = m_flight->round;
  given.clientId = m_clientId;
  for (const SheetItem& item : m_flight->items) {
    tasting::Reply reply;
    reply.item = item.item;
    switch (item.kind) {
      case ItemKind::choose: reply.value = m_flight->cups[static_cast<std::size_t>(m_chosen)].code.value; break;
      case ItemKind::same:
      case ItemKind::prefer: continue;
      case ItemKind::sureness:
        if (m_sureness < 0) continue;
        reply.value = static_cast<int>(surenessAsShown.at(static_cast<std::size_t>(m_sureness)));
        break;
      case ItemKind::clue:
        if (m_clue < 0) continue;
        reply.value = m_clue + 1;
        break;
      case ItemKind::words:
        if (m_comment.trimmed().isEmpty()) continue;
        reply.text = plain(m_comment);
        break;
    }
    given.replies.push_back(reply);
  }
  struct Done {
    Millis at = 0;
    std::optional<tasting::Flight> next;
  };
  ask([id = m_stage.current.id(), given](Cellar& cellar) {
    const tasting::Receipt receipt = tasting::handIn(cellar.store(), cellar.clock, cellar.chance, id, given);
    return Done{receipt.at(), tasting::nextFlight(cellar.store(), id, given.place)};
  }, [this](const Done& done) {
    m_more = done.next.has_value();
    m_lockedHeadline = tr("Locked. Thank you.");
    m_lockedLead = m_more ? tr("It is safe since %1. Round %2 comes next; a sip of water first.")
                                .arg(shown(words::timeOfDay(voice(), done.at))).arg(done.next->round.value)
                   : m_loose ? tr("It is safe since %1. Nobody sees it with your name.").arg(shown(words::timeOfDay(voice(), done.at)))
                             : tr("It is safe since %1. Keep what you think to yourself until the key is opened.").arg(shown(words::timeOfDay(voice(), done.at)));
    m_flight.reset();
    m_chosen = m_sureness = m_clue = -1;
    m_comment.clear();
    show();
    go(Router::Page::Locked);
  });
}

void CupsModel::stop() {
  ask([id = m_stage.current.id(), place = m_place](Cellar& cellar) { tasting::stopHere(cellar.store(), cellar.clock, id, place); },
      [this] { go(Router::Page::Places); });
}

void CupsModel::sayNotMine() {
  m_notMine = tr("Do not taste. Take the mat and this screen back to the host: cups and place must fit before anything is chosen.");
  emit changed();
}

void CupsModel::forget() {
  m_flight.reset();
  m_chosen = m_sureness = m_clue = -1;
  m_confirmed = false;
  m_comment = m_notMine = m_placeLine = m_confirmSentence = m_lockedHeadline = m_lockedLead = QString();
  show();
}

}  // namespace oddglass::ui
