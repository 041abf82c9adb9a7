// What stood under the cups: one question a screen, kept once a flight is complete.
#include "ui/alone_model.h"

#include "ui/cups.h"
#include "ui/voice.h"
#include "words/came_out.h"
#include "words/paper.h"

#include <algorithm>
#include <array>
#include <set>

namespace oddglass::ui {
namespace {

constexpr std::array readers{ReadBy::taster, ReadBy::pourer, ReadBy::another};

QString markOf(int mark) { return shown(words::bottleLetter(mark + 1)); }

}  // namespace

void AloneModel::startReading() {
  m_at = 0;
  using What = Asked::What;
  const session::ToRead& flight = m_flights.at(*m_flight);
  if (m_plan.routine == Routine::bottles) {
    m_asked.push_back({What::reader, {}, 0, 0, {}});
    for (int bottle = 1; bottle <= letteredBottles(m_plan); ++bottle) m_asked.push_back({What::bottle, {}, 0, bottle, {}});
    return;
  }
  const int cups = static_cast<int>(flight.cups.size()) + (flight.hasAside ? 1 : 0);
  if (m_plan.routine == Routine::couple) {
    for (int mark = 0; mark < cups; ++mark) m_asked.push_back({What::markedLot, {}, mark, 0, {}});
    for (const auto& [position, code] : flight.cups) m_asked.push_back({What::markOfCup, code, 0, 0, {}});
    return;
  }
  for (const auto& [position, code] : flight.cups) m_asked.push_back({What::lot, code, 0, 0, {}});
  if (flight.hasAside) m_asked.push_back({What::lot, {0}, 0, 0, {}});
}

void AloneModel::showQuestion() {
  using What = Asked::What;
  const Asked& asked = m_asked.at(m_at);
  const session::ToRead& flight = m_flights.at(*m_flight);
  const QString place = m_plan.routine == Routine::bottles ? tr("The covers come off") : m_plan.places == 1 ? tr("Round %1 of %2").arg(flight.round.value).arg(m_plan.rounds)
                                                                                                          : shown(words::placeLine(voice(), flight.place, flight.round, m_plan.rounds));
  const QString sheet = asked.what == What::markedLot ? tr("first sheet") : asked.what == What::markOfCup ? tr("second sheet") : QString();
  m_over = sheet.isEmpty() ? place : tr("%1  ·  %2").arg(place, sheet);
  m_lead.clear();
  m_primary.clear();
  m_canGoBack = m_at > 0;
  switch (asked.what) {
    case What::reader:
      m_headline = tr("Who takes the covers off?");
      m_answers = {tr("somebody who tasted"), tr("somebody who poured and did not taste"), tr("somebody else")};
      return;
    case What::markOfCup:
      m_headline = tr("Which mark got cup %1?").arg(codeText(asked.code));
      for (int mark = 0; mark < static_cast<int>(flight.cups.size()) + (flight.hasAside ? 1 : 0); ++mark) {
        const auto got = [&](const Asked& each) { return each.what == What::markOfCup && each.answer == mark; };
        if (std::any_of(m_asked.begin(), m_asked.begin() + static_cast<std::ptrdiff_t>(m_at), got)) continue;
        m_marks.push_back(mark);
        m_answers << markOf(mark);
      }
      return;
    case What::lot: m_headline = shown(words::readQuestion(voice(), m_plan.routine, asked.code)); break;
    case What::markedLot: m_headline = tr("Which drink got mark %1?").arg(markOf(asked.mark)); break;
    case What::bottle: m_headline = tr("What is under the cover of bottle %1?").arg(shown(words::bottleLetter(asked.bottle))); break;
  }
  if (m_at == 0 && asked.what == What::lot) m_lead = m_plan.routine == Routine::alone ? tr("One cup after the other. Nothing of it shows before the key is open.") : tr("Read it off the list. Nothing of it shows before the key is open.");
  for (const PlannedLot& lot : m_plan.lots)
    if (lot.role != LotRole::warmUp) m_answers << shown(words::lotTitle(voice(), lot));
  m_answers << shown(words::cannotReadWord(voice()));
}

// Nothing is kept before it was looked at once more: a slip on the last cup would stand for good.
void AloneModel::showTold() {
  m_headline = tr("All of it is told. Keep it so?");
  m_lead = tr("Kept, it stays as it is, and what does not add up is set aside.");
  m_primary = tr("Keep it");
  m_canGoBack = true;
}

void AloneModel::answer(int index) {
  if (!m_flight || m_at >= m_asked.size()) return;
  Asked& asked = m_asked[m_at++];
  asked.answer = asked.what == Asked::What::markOfCup ? m_marks.at(static_cast<std::size_t>(index)) : index;
  show();
}

void AloneModel::submit() {
  using What = Asked::What;
  std::vector<Slot> coded;
  for (const PlannedLot& lot : m_plan.lots)
    if (lot.role != LotRole::warmUp) coded.push_back(lot.slot);
  const auto slotOf = [&](int answered) { return answered < static_cast<int>(coded.size()) ? std::optional(coded[static_cast<std::size_t>(answered)]) : std::nullopt; };
  const session::ToRead flight = m_flights.at(*m_flight);
  session::FoundFlight found{flight.place, flight.round, {}};
  std::vector<session::MarkedLot> first;
  std::vector<session::MarkedCode> second;
  std::vector<session::Peeled> peeled;
  ReadBy by = usualReader(m_plan.routine);
  std::set<int> marks;
  for (const Asked& asked : m_asked) {
    const int answered = asked.answer.value_or(0);
    switch (asked.what) {
      case What::reader: by = readers.at(static_cast<std::size_t>(answered)); break;
      case What::lot: found.lines.push_back({asked.code, slotOf(answered)}); break;
      case What::bottle: peeled.push_back({asked.bottle, slotOf(answered)}); break;
      case What::markedLot:
        first.push_back({flight.place, flight.round, plain(markOf(asked.mark)), slotOf(answered)});
        break;
      case What::markOfCup:
        marks.insert(answered);
        second.push_back({flight.place, flight.round, plain(markOf(answered)), asked.code});
        break;
    }
  }
  // The mark that no cup got is that of the cup set aside.
  if (flight.hasAside && m_plan.routine == Routine::couple)
    for (const session::MarkedLot& line : first)
      if (!marks.contains(line.mark[0] - 'A')) second.push_back({flight.place, flight.round, line.mark, {0}});
  using Done = std::pair<std::vector<std::optional<VoidReason>>, std::vector<std::pair<Place, Round>>>;
  ask([=, id = m_stage.current.id(), routine = m_plan.routine](Cellar& cellar) -> Done {
    if (routine == Routine::bottles) {
      std::vector<std::pair<Place, Round>> where;
      for (const session::ToRead& each : session::toRead(cellar.store(), id)) where.emplace_back(each.place, each.round);
      return {session::peel(cellar.store(), cellar.clock, cellar.chance, id, peeled, by), where};
    }
    const auto flights = routine == Routine::couple ? session::joined(first, second) : std::vector{found};
    return {session::readOffAll(cellar.store(), cellar.clock, cellar.chance, id, flights, by), {{flight.place, flight.round}}};
  }, [this](const Done& done) { read(done.first, done.second); });
  // While it is written nothing can be told, and nothing taken back.
  m_answers.clear();
  m_primary.clear();
  m_canGoBack = false;
  emit changed();
}

void AloneModel::read(const std::vector<std::optional<VoidReason>>& reasons, const std::vector<std::pair<Place, Round>>& where) {
  QStringList aside;
  for (std::size_t i = 0; i < reasons.size() && i < where.size(); ++i)
    if (reasons[i]) aside << shown(words::asideLine(voice(), where[i].first, where[i].second, *reasons[i]));
  m_toSay = aside.join(QLatin1Char(' '));
  load();
}

}  // namespace oddglass::ui
