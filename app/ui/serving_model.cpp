#include "ui/serving_model.h"

#include "domain/names.h"
#include "domain/problem.h"
#include "ui/page_model.h"
#include "ui/voice.h"
#include "words/problems.h"
#include "words/serving.h"
#include "words/units.h"

namespace oddglass::ui {

void ServingModel::setVessel(const QString& text) {
  if (vessel() == text) return;
  m_draft.serving.vessel = plain(text);
  emit edited();
}

void ServingModel::setTemperature(const QString& text) {
  if (m_typed == text) return;
  m_typed = text;
  m_wrong.clear();
  const std::string typed = plain(text.trimmed());
  const auto celsius = words::readTemperature(voice(), typed);
  if (typed.empty()) {
    m_draft.serving.temperatureC.reset();
    emit edited();
  } else if (!celsius) {
    m_wrong = shown(words::sentence(voice(), Problem(Trouble::notANumber, "temperature_c", {{"text", typed}})));
  } else if (*celsius < coldestServed || *celsius > warmestServed) {
    m_wrong = shown(words::sentence(voice(), Problem(Trouble::outOfRange, "temperature_c", {{"text", typed}, {"low", words::temperature(voice(), coldestServed)}, {"high", words::temperature(voice(), warmestServed)}})));
  } else {
    m_draft.serving.temperatureC = celsius;
    emit edited();
  }
  emit changed();
}

QString ServingModel::temperatureUnit() { return shown(words::temperatureUnit(voice())); }

QStringList ServingModel::mouthfuls() {
  QStringList all;
  for (const Mouthful each : allOf<Mouthful>()) all << shown(words::mouthfulName(voice(), each));
  return all;
}

void ServingModel::chooseMouthful(int index) {
  const Mouthful chosen = allOf<Mouthful>().at(static_cast<std::size_t>(index));
  if (m_draft.serving.mouthful == chosen) m_draft.serving.mouthful.reset();
  else m_draft.serving.mouthful = chosen;
  emit edited();
  emit changed();
}

// What was typed stays as it was typed, wrong or right, as long as it says what the draft says.
void ServingModel::show() {
  const auto& kept = m_draft.serving.temperatureC;
  const auto typed = words::readTemperature(voice(), plain(m_typed.trimmed()));
  if (m_of != m_draft.id || (m_wrong.isEmpty() && typed != kept)) {
    m_typed = kept ? shown(words::temperatureTyped(voice(), *kept)) : QString();
    m_wrong.clear();
  }
  m_of = m_draft.id;
  emit changed();
}

}  // namespace oddglass::ui
