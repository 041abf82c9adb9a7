#include "ui/page_model.h"

#include "ui/voice.h"
#include "words/problems.h"
#include "words/units.h"

namespace oddglass::ui {

Router::Page pageOf(State state) {
  switch (state) {
    case State::sealed:
    case State::tasting: return Router::Page::Places;
    case State::closed: return Router::Page::OpenKey;
    case State::revealed: return Router::Page::CameOut;
    default: return Router::Page::History;
  }
}

QString sentenceOf(const Problem& problem) { return shown(words::sentence(voice(), problem)); }

QString PageModel::volumeUnit() { return shown(words::volumeUnit(voice())); }
QString PageModel::gravityUnit() { return shown(words::gravityUnit(voice())); }

void PageModel::nameFields(std::initializer_list<const char*> names) {
  for (const char* name : names) m_fields << QString::fromLatin1(name);
}

void PageModel::fail(const Problem& problem) {
  const QString field = shown(problem.argument());
  if (!m_fields.contains(field)) {
    m_stage.notice.say(sentenceOf(problem));
    return;
  }
  m_wrongField = field;
  m_wrong = sentenceOf(problem);
  emit wrongChanged();
}

void PageModel::settle() {
  m_stage.notice.dismiss();
  if (m_wrongField.isEmpty()) return;
  m_wrongField.clear();
  m_wrong.clear();
  emit wrongChanged();
}

}  // namespace oddglass::ui
