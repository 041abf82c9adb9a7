#include "ui/routine_model.h"

#include "domain/by_hand.h"
#include "domain/names.h"
#include "ui/page_model.h"
#include "ui/voice.h"
#include "words/routine.h"

#include <algorithm>

namespace oddglass::ui {

QStringList RoutineModel::routines() {
  QStringList all;
  for (const Routine routine : allOf<Routine>()) all << shown(words::routineName(voice(), routine));
  return all;
}

bool RoutineModel::isByHand() const { return !isDrawn(m_draft.routine); }

void RoutineModel::show(const std::vector<Taster>& people) {
  showPourers(people);
  m_line = shown(words::routineLine(voice(), m_draft.routine));
  const auto why = m_draft.tasters.empty() ? std::nullopt : whyNotByHand(m_draft, static_cast<int>(m_draft.tasters.size()), hasPourer());
  m_wrong = why ? shown(words::notByHandLine(voice(), *why, m_draft.routine)) : QString();
  emit changed();
}

void RoutineModel::showPourers(const std::vector<Taster>& people) {
  m_pourers = {tr("nobody yet")};
  m_pourerIds = {std::nullopt};
  for (const Taster& person : people) {
    if (std::find(m_draft.tasters.begin(), m_draft.tasters.end(), person.id) != m_draft.tasters.end()) continue;
    m_pourers << shown(person.name);
    m_pourerIds.push_back(person.id);
  }
  m_pourers << tr("somebody else");
  m_pourerIds.push_back(std::nullopt);
  m_pourer = 0;
  if (m_draft.pourer) {
    const auto at = std::find(m_pourerIds.begin(), m_pourerIds.end(), m_draft.pourer);
    if (at != m_pourerIds.end()) m_pourer = static_cast<int>(at - m_pourerIds.begin());
  } else if (!m_draft.pourerName.empty()) {
    m_pourer = static_cast<int>(m_pourers.size()) - 1;
  }
}

void RoutineModel::choose(int index) {
  m_draft.routine = allOf<Routine>().at(static_cast<std::size_t>(index));
  // A way of asking that these hands cannot hide gives way to one that they can.
  if (m_draft.method != Method::sheet && !mayHide(m_draft.routine, m_draft.method)) m_draft.methodChosen = false;
  emit edited();
}

void RoutineModel::choosePourer(int index) {
  m_draft.pourer = m_pourerIds.at(static_cast<std::size_t>(index));
  m_pourer = index;
  if (m_draft.pourer || index == 0) m_draft.pourerName.clear();
  else if (m_draft.pourerName.empty()) m_draft.pourerName = plain(tr("somebody else"));
  emit edited();
}

void RoutineModel::setPourerName(const QString& text) {
  if (pourerName() == text) return;
  m_draft.pourerName = plain(text);
  emit edited();
}

}  // namespace oddglass::ui
