#include "ui/word_model.h"

#include "domain/names.h"
#include "shelf/vocabulary.h"
#include "ui/spoken_words.h"
#include "ui/voice.h"
#include "words/vocabulary.h"

#include <algorithm>

namespace oddglass::ui {

template <class Work>
void WordModel::change(Work work) {
  changeShelf([work = std::move(work), id = m_id](Cellar& cellar) {
    work(cellar);
    return read(cellar, id);
  }, [this](Read read) { show(std::move(read)); });
}

void WordModel::tickDrink(int row, bool ticked) {
  std::vector<TickRow> drinks;
  for (int i = 0; i < m_drinks.count(); ++i) drinks.push_back(m_drinks.at<TickRow>(i));
  drinks.at(static_cast<std::size_t>(row)).ticked = ticked;
  m_drinks.set(drinks);
}

void WordModel::save() {
  TastingWord word;
  word.id = m_id;
  word.text = plain(m_name);
  word.meaning = plain(m_meaning);
  word.wordClass = allOf<WordClass>().at(static_cast<std::size_t>(m_wordClass));
  word.leaning = allOf<Leaning>().at(static_cast<std::size_t>(m_leaning));
  for (int i = 0; i < m_drinks.count(); ++i)
    if (m_drinks.at<TickRow>(i).ticked) word.drinks.insert(allOf<Kind>().at(static_cast<std::size_t>(i)));
  changeShelf([word](Cellar& cellar) {
    WordId id = word.id;
    if (id.empty()) id = shelf::addWord(cellar.store(), cellar.clock, cellar.chance, word);
    else shelf::changeWord(cellar.store(), cellar.clock, word);
    return read(cellar, id);
  }, [this](Read read) { show(std::move(read)); });
}

void WordModel::leave() {
  settle();
  if (m_isNew) {
    toList();
    return;
  }
  if (const TastingWord* word = shelf::wordWith(m_list, m_id)) fillForm(*word);
  m_editing = false;
  emit changed();
}

void WordModel::retire(bool retired) {
  change([id = m_id, retired](Cellar& cellar) {
    if (retired) shelf::retireWord(cellar.store(), cellar.clock, id);
    else shelf::bringBackWord(cellar.store(), cellar.clock, id);
  });
}

void WordModel::setMerging(bool merging) {
  m_merging = merging;
  m_mergeWanted.clear();
  settle();
  showCandidates();
  emit changed();
}

void WordModel::setMergeWanted(const QString& wanted) {
  m_mergeWanted = wanted;
  showCandidates();
  emit changed();
}

void WordModel::showCandidates() {
  constexpr std::size_t most = 8;
  m_candidateWords.clear();
  std::vector<OtherWordRow> rows;
  if (!m_mergeWanted.trimmed().isEmpty()) m_candidateWords = wordsSpoken(m_list, {.text = plain(m_mergeWanted), .wordClass = {}, .drink = {}});
  std::erase_if(m_candidateWords, [this](const TastingWord& word) { return word.id == m_id; });
  if (m_candidateWords.size() > most) m_candidateWords.resize(most);
  for (const TastingWord& word : m_candidateWords) {
    OtherWordRow row;
    row.name = shown(words::wordText(voice(), word));
    row.line = shown(words::className(voice(), word.wordClass));
    rows.push_back(row);
  }
  m_candidates.set(rows);
}

void WordModel::mergeInto(int candidate) {
  change([id = m_id, into = m_candidateWords.at(static_cast<std::size_t>(candidate)).id](Cellar& cellar) {
    shelf::mergeWord(cellar.store(), cellar.clock, id, into);
  });
}

void WordModel::takeApart() {
  change([id = m_id](Cellar& cellar) { shelf::takeApart(cellar.store(), cellar.clock, id); });
}

void WordModel::takeOut(int row) {
  change([id = m_mergedWords.at(static_cast<std::size_t>(row)).id](Cellar& cellar) { shelf::takeApart(cellar.store(), cellar.clock, id); });
}

void WordModel::openOther() {
  if (const TastingWord* word = shelf::standsFor(m_list, m_id)) open(word->id);
}

}  // namespace oddglass::ui
