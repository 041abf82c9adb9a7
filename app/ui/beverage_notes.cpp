// The notes of a batch: written, corrected, withdrawn.
#include "ui/beverage_model.h"

#include "domain/names.h"
#include "shelf/notes.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/drinks.h"
#include "words/numbers.h"
#include "words/too_early.h"

#include <algorithm>

namespace oddglass::ui {

void BeverageModel::clearNote() {
  m_noteDay = shown(today());
  m_noteKind = static_cast<int>(NoteKind::other);
  m_noteLevel = -1;
  m_noteWord = m_noteGravity = m_noteText = m_noteReplaced = m_again = QString();
  m_replaces.reset();
  emit changed();
}

// A level of haze is none of sediment.
void BeverageModel::setNoteKind(int kind) {
  if (m_noteKind == kind) return;
  m_noteKind = kind;
  m_noteLevel = -1;
  emit changed();
}

QStringList BeverageModel::noteLevels() const {
  QStringList all;
  const auto kind = static_cast<NoteKind>(m_noteKind);
  if (hasLevel(kind))
    for (int level = 0; level <= 3; ++level) all << shown(words::noteLevelName(voice(), kind, level));
  return all;
}

bool BeverageModel::noteIsDeed() const {
  switch (static_cast<NoteKind>(m_noteKind)) {
    case NoteKind::addition:
    case NoteKind::stabilised:
    case NoteKind::racked:
    case NoteKind::other:
    case NoteKind::changed: return true;
    default: return false;
  }
}

void BeverageModel::saveNote() { saveNote(false); }
void BeverageModel::saveNoteAgain() { saveNote(true); }

void BeverageModel::saveNote(bool again) {
  try {
    Note note;
    note.beverage = m_id;
    note.replaces = m_replaces;
    note.doneOn = plain(m_noteDay.trimmed());
    note.kind = static_cast<NoteKind>(m_noteKind);
    if (note.kind == NoteKind::reading) note.gravity = typedGravity(m_noteGravity, "gravity");
    if (hasLevel(note.kind) && m_noteLevel >= 0) note.level = m_noteLevel;
    if (noteIsDeed()) note.word = plain(m_noteWord);
    note.text = plain(m_noteText);
    changeShelf([note, again, id = m_id](Cellar& cellar) {
      shelf::add(cellar.store(), cellar.chance, note, again);
      return read(cellar.store(), id);
    }, [this](const Read& read) {
      fill(read);
      clearNote();
    });
  } catch (const Problem& problem) {
    fail(problem);
  }
}

void BeverageModel::showTooEarly() {
  m_earlyHeadline.clear();
  m_earlyLines.clear();
  m_earlyCautions.clear();
  m_earlyUrgent = false;
  if (m_isNew || m_drink.origin == Origin::reference) return;
  const planning::TooEarly early = planning::tooEarly(m_drink, m_lotValues, m_noteValues, today());
  const words::TooEarlyWords said = words::tooEarlyWords(voice(), m_drink, m_lotValues, early);
  m_earlyHeadline = shown(said.headline);
  m_earlyLines = shownAll(said.body());
  m_earlyCautions = shownAll(said.smallPrint());
  m_earlyUrgent = said.isUrgent;
}

void BeverageModel::leaveAgain() {
  m_again.clear();
  emit changed();
}

void BeverageModel::correctNote(int row) {
  const Note& note = m_noteValues.at(static_cast<std::size_t>(row));
  m_replaces = note.id;
  m_noteDay = shown(note.doneOn);
  m_noteKind = static_cast<int>(note.kind);
  m_noteGravity = gravityText(note.gravity);
  m_noteLevel = note.level.value_or(-1);
  m_noteWord = shown(note.word);
  m_noteText = shown(note.text);
  m_noteReplaced = tr("This corrects the note of %1. The old one stays in the record.").arg(shown(note.doneOn));
  emit changed();
}

void BeverageModel::leaveCorrection() { clearNote(); }

void BeverageModel::withdrawNote(int row) {
  const NoteId note = m_noteValues.at(static_cast<std::size_t>(row)).id;
  changeShelf([note, id = m_id](Cellar& cellar) {
    shelf::withdraw(cellar.store(), cellar.chance, note);
    return read(cellar.store(), id);
  }, [this](const Read& read) { fill(read); });
}

}  // namespace oddglass::ui
