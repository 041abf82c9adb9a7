#include "ui/word_model.h"

#include "domain/names.h"
#include "shelf/vocabulary.h"
#include "ui/kinds.h"
#include "ui/voice.h"
#include "words/vocabulary.h"

#include <algorithm>

namespace oddglass::ui {

WordModel::WordModel(const Stage& stage, QObject* parent)
    : PageModel(stage, parent),
      m_merged(OtherWordRow::staticMetaObject, this),
      m_drinks(TickRow::staticMetaObject, this),
      m_candidates(OtherWordRow::staticMetaObject, this) {
  nameFields({"word", "drinks", "meaning", "into"});
}

QStringList WordModel::classes() const {
  QStringList names;
  for (const WordClass each : allOf<WordClass>()) names << shown(words::className(voice(), each));
  return names;
}

QStringList WordModel::leanings() const {
  QStringList names;
  for (const Leaning each : allOf<Leaning>()) names << shown(words::leaningName(voice(), each));
  return names;
}

WordModel::Read WordModel::read(Cellar& cellar, const WordId& id) { return {shelf::vocabulary(cellar.store()), shelf::wordChanges(cellar.store()), id}; }

void WordModel::open(const WordId& id) {
  ask([id](Cellar& cellar) { return read(cellar, id); }, [this](Read read) {
    show(std::move(read));
    go(Router::Page::Word);
  });
}

void WordModel::readAgain() {
  if (m_id.empty()) return;
  ask([id = m_id](Cellar& cellar) { return read(cellar, id); }, [this](Read read) { show(std::move(read)); });
}

void WordModel::openNew(const QString& name) {
  TastingWord blank;
  blank.text = plain(name.trimmed());
  blank.drinks = {Kind::beer, Kind::mead, Kind::cider, Kind::wine};
  m_id = {};
  m_isNew = m_editing = m_own = m_loaded = true;
  m_retired = m_merging = false;
  m_over = tr("Words");
  m_headline = tr("A word of your own");
  m_lead = tr("The word that comes to your tongue, if the list has none for it.");
  m_caution = m_causes = m_deeds = m_source = m_meant = m_countsAs = QString();
  m_changes.clear();
  m_mergedWords.clear();
  m_merged.set(std::vector<OtherWordRow>{});
  fillForm(blank);
  settle();
  emit changed();
  go(Router::Page::Word);
}

void WordModel::show(Read read) {
  m_list = std::move(read.list);
  m_id = read.id;
  const TastingWord* word = shelf::wordWith(m_list, m_id);
  if (!word) return;
  m_loaded = true;
  m_isNew = m_editing = m_merging = false;
  m_own = word->own;
  m_retired = word->retired;
  m_over = shown(words::className(voice(), word->wordClass));
  m_headline = shown(word->own ? word->text : words::capitalised(words::wordText(voice(), *word)));
  m_lead = shown(words::otherNamesLine(voice(), *word));
  showHint(*word);
  fillForm(*word);
  showOthers();
  showChanges(read.changes);
  emit changed();
}

void WordModel::showHint(const TastingWord& word) {
  const auto hint = words::wordHint(voice(), word).value_or(words::WordHint{});
  m_caution = shown(words::careSentence(voice(), word.care));
  m_causes = shown(hint.causes);
  m_deeds = shown(hint.deeds);
  m_source = hint.source.empty() ? QString() : shown(hint.reservation + ' ' + hint.source);
  m_meant = shown(words::capitalised(words::leaningName(voice(), word.leaning)) + ". " + words::drinksLine(voice(), word));
}

void WordModel::fillForm(const TastingWord& word) {
  m_name = shown(word.text);
  m_meaning = shown(word.meaning);
  m_wordClass = static_cast<int>(word.wordClass);
  m_leaning = static_cast<int>(word.leaning);
  std::vector<TickRow> drinks;
  for (const Kind kind : allOf<Kind>()) {
    TickRow row;
    row.name = kindWord(kind);
    row.ticked = word.drinks.contains(kind);
    drinks.push_back(row);
  }
  m_drinks.set(drinks);
}

QString WordModel::nameOfWord(const WordId& id) const {
  const TastingWord* word = shelf::wordWith(m_list, id);
  return word ? shown(words::wordText(voice(), *word)) : tr("a word that is not in the list");
}

void WordModel::showOthers() {
  const TastingWord* word = shelf::wordWith(m_list, m_id);
  m_countsAs = word->sameAs ? tr("It counts as \u201c%1\u201d, in old answers too.").arg(nameOfWord(shelf::standsFor(m_list, m_id)->id)) : QString();
  m_mergedWords = shelf::mergedInto(m_list, m_id);
  std::vector<OtherWordRow> rows;
  for (const TastingWord& each : m_mergedWords) {
    OtherWordRow row;
    row.name = shown(words::wordText(voice(), each));
    row.direct = *each.sameAs == m_id;
    if (!row.direct) row.line = tr("by way of \u201c%1\u201d").arg(nameOfWord(*each.sameAs));
    rows.push_back(row);
  }
  m_merged.set(rows);
}

void WordModel::showChanges(const std::vector<WordChange>& changes) {
  m_changes.clear();
  for (const WordChange& change : changes)
    if (change.word == m_id || change.other == m_id)
      m_changes << shown(words::changeLine(voice(), change, plain(nameOfWord(change.word)), change.other ? plain(nameOfWord(*change.other)) : std::string()));
}

}  // namespace oddglass::ui
