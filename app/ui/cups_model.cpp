#include "ui/cups_model.h"

#include "domain/flight_form.h"
#include "tasting/board.h"
#include "tasting/seats.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/method.h"
#include "words/numbers.h"

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
    if (page != Router::Page::MyCups && page != Router::Page::MySheet && page != Router::Page::Locked) forget();
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
    clearAnswers();
    m_notMine.clear();
    prepareQuestions();
    m_asksSureness = asks(*m_flight, ItemKind::sureness);
    m_asksClue = asks(*m_flight, ItemKind::clue);
    m_asksWords = asks(*m_flight, ItemKind::words);
    m_placeLine = m_flight->rounds > 1 ? tr("Place %1, round %2 of %3").arg(m_place.value).arg(m_flight->round.value).arg(m_flight->rounds)
                                       : tr("Place %1").arg(m_place.value);
    std::vector<std::string> codes;
    for (const tasting::FlightCup& cup : m_flight->cups)
      codes.push_back(plain(cup.isMarked ? tr("the marked cup %1").arg(codeText(cup.code)) : codeText(cup.code)));
    m_confirmSentence = tr("%1 stand before me, from left to right.").arg(shown(words::capitalised(words::listed(voice(), codes))));
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
    row.position = cup.isMarked ? tr("marked cup") : positionWord(cup.position, static_cast<int>(m_flight->cups.size()));
    row.marked = cup.isMarked;
    row.chosen = std::find(m_picked.begin(), m_picked.end(), static_cast<int>(i)) != m_picked.end();
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
    m_notMine.clear();
    if (m_flight->method == Method::sheet) {
      emit sheetRequested(*m_flight);
      return;
    }
    m_confirmed = true;
    emit changed();
  });
}

int CupsModel::picks() const { return likesOnly() ? 1 : formOf(m_flight->method).picks; }

bool CupsModel::likesOnly() const { return m_flight && !formOf(m_flight->method).hasRight; }

bool CupsModel::choosesCups() const { return m_flight && picks() > 0; }

// The words of the question, and the rows of answers beside the cups.
void CupsModel::prepareQuestions() {
  const auto likes = std::find_if(m_flight->items.begin(), m_flight->items.end(), [](const SheetItem& item) { return item.kind == ItemKind::prefer; });
  const bool mayHaveNone = likes != m_flight->items.end() && likes->low == 0;
  m_question = shown(words::prompt(voice(), m_flight->method, m_flight->attribute));
  m_hint = shown(words::promptHint(voice(), m_flight->method, mayHaveNone));
  m_sameWords.clear();
  m_likings.clear();
  m_likingLabel.clear();
  if (formOf(m_flight->method).saysSame)
    m_sameWords = {shown(words::capitalised(words::sameWord(voice(), m_flight->method, true))), shown(words::capitalised(words::sameWord(voice(), m_flight->method, false)))};
  if (likesOnly()) {
    if (mayHaveNone) m_likings << tr("No preference");
  } else if (likes != m_flight->items.end()) {
    m_likingLabel = tr("Which one did you like better?");
    for (const tasting::FlightCup& cup : m_flight->cups)
      if (!cup.isMarked) m_likings << codeText(cup.code);
    if (mayHaveNone) m_likings << tr("No preference");
  }
}

void CupsModel::clearAnswers() {
  m_picked.clear();
  m_same = m_liking = m_sureness = m_clue = -1;
  m_comment.clear();
}

void CupsModel::choose(int row) {
  if (!m_confirmed || !m_flight || row < 0 || row >= cupCount() || picks() == 0 || m_flight->cups[static_cast<std::size_t>(row)].isMarked) return;
  const auto found = std::find(m_picked.begin(), m_picked.end(), row);
  if (picks() == 1) {
    m_picked = {row};
  } else if (found != m_picked.end()) {
    m_picked.erase(found);
  } else {
    // A third cup takes the place of the one tapped first.
    if (static_cast<int>(m_picked.size()) == picks()) m_picked.erase(m_picked.begin());
    m_picked.push_back(row);
  }
  if (likesOnly()) m_liking = -1;
  show();
}

void CupsModel::like(int index) {
  m_liking = index;
  if (likesOnly()) m_picked.clear();
  show();
}

/// The code liked better, 0 for no preference; nothing when that is not answered yet.
std::optional<int> CupsModel::likedCode() const {
  if (likesOnly()) {
    if (m_liking >= 0) return 0;
    return m_picked.empty() ? std::nullopt : std::optional(m_flight->cups[static_cast<std::size_t>(m_picked.front())].code.value);
  }
  if (m_liking < 0) return std::nullopt;
  int at = 0;
  for (const tasting::FlightCup& cup : m_flight->cups)
    if (!cup.isMarked && at++ == m_liking) return cup.code.value;
  return 0;
}

QString CupsModel::lockWords() const {
  if (!m_flight) return tr("Lock");
  if (m_same >= 0) return tr("Lock: %1").arg(shown(words::sameWord(voice(), m_flight->method, m_same == 0)));
  if (likesOnly() && m_liking >= 0) return tr("Lock: no preference");
  if (m_picked.empty() || static_cast<int>(m_picked.size()) < picks()) return tr("Lock");
  auto rows = m_picked;
  std::sort(rows.begin(), rows.end());
  const auto code = [this](int row) { return codeText(m_flight->cups[static_cast<std::size_t>(row)].code); };
  return rows.size() == 2 ? tr("Lock %1 and %2").arg(code(rows[0]), code(rows[1])) : tr("Lock %1").arg(code(rows[0]));
}

QString CupsModel::lockReason() const {
  if (!m_flight) return tr("Choose a cup first. Not sure? Choose one anyway.");
  if (formOf(m_flight->method).saysSame && m_same < 0) return tr("Say which it is. Not sure? A guess is a good answer.");
  if (likesOnly() && !likedCode()) return tr("Choose the one you like better.");
  if (!likesOnly() && static_cast<int>(m_picked.size()) < picks())
    return picks() == 1 ? tr("Choose a cup first. Not sure? Choose one anyway.") : m_picked.empty() ? tr("Choose two cups. Not sure? Choose two anyway.") : tr("Choose one more.");
  if (m_sureness < 0 && needs(*m_flight, ItemKind::sureness)) return tr("Say how sure you are.");
  if (m_clue < 0 && needs(*m_flight, ItemKind::clue)) return tr("Say how you knew.");
  if (!m_likingLabel.isEmpty() && m_liking < 0) return tr("Say which one you liked better.");
  return {};
}

void CupsModel::lock() {
  if (!m_flight || !lockReason().isEmpty()) return;
  tasting::HandIn given;
  given.place = m_place;
  given.round = m_flight->round;
  given.clientId = m_clientId;
  std::size_t pick = 0;
  for (const SheetItem& item : m_flight->items) {
    tasting::Reply reply;
    reply.item = item.item;
    switch (item.kind) {
      case ItemKind::choose: reply.value = m_flight->cups[static_cast<std::size_t>(m_picked.at(pick++))].code.value; break;
      case ItemKind::same: reply.value = m_same + 1; break;
      case ItemKind::prefer: reply.value = likedCode().value_or(0); break;
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
      default: continue;  // of a score sheet, which has a page of its own
    }
    given.replies.push_back(reply);
  }
  ask([id = m_stage.current.id(), given](Cellar& cellar) { return tasting::handIn(cellar.store(), cellar.clock, cellar.chance, id, given).at(); },
      [this](Millis at) { showLocked(at); });
}

void CupsModel::showLocked(Millis at) {
  ask([id = m_stage.current.id(), place = m_place](Cellar& cellar) {
    return std::pair(tasting::nextFlight(cellar.store(), id, place), tasting::board(cellar.store(), id).routine == Routine::alone);
  }, [this, at](const std::pair<std::optional<tasting::Flight>, bool>& then) {
    const auto& next = then.first;
    m_turnsOver = then.second;
    const QString time = shown(words::timeOfDay(voice(), at));
    m_more = next.has_value();
    m_lockedHeadline = tr("Locked. Thank you.");
    m_lockedLead = m_more ? tr("It is safe since %1. Round %2 comes next; a sip of water first.").arg(time).arg(next->round.value)
                   : m_loose ? tr("It is safe since %1. Nobody sees it with your name.").arg(time)
                             : tr("It is safe since %1. Keep what you think to yourself until the key is opened.").arg(time);
    if (m_turnsOver) m_lockedLead = tr("It is safe since %1. Now the cups are turned over, before anything is cleared away.").arg(time);
    m_flight.reset();
    clearAnswers();
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
  clearAnswers();
  m_confirmed = false;
  m_notMine = m_question = m_hint = m_likingLabel = m_placeLine = m_confirmSentence = m_lockedHeadline = m_lockedLead = QString();
  show();
}

}  // namespace oddglass::ui
