#include "ui/words_model.h"

#include "domain/names.h"
#include "shelf/vocabulary.h"
#include "ui/kinds.h"
#include "ui/spoken_words.h"
#include "ui/voice.h"
#include "words/vocabulary.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

WordLineRow wordLine(const TastingWord& word) {
  WordLineRow row;
  row.name = shown(words::wordText(voice(), word));
  row.line = shown(words::otherNamesLine(voice(), word));
  if (word.own) row.mark = WordsModel::tr("yours");
  if (word.retired) row.mark = word.own ? WordsModel::tr("yours, retired") : WordsModel::tr("retired");
  row.faded = word.retired;
  return row;
}

}  // namespace

WordsModel::WordsModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_lines(WordLineRow::staticMetaObject, this) {}

QStringList WordsModel::drinks() const {
  return {tr("any drink"), kindWord(Kind::beer), kindWord(Kind::mead), kindWord(Kind::cider), kindWord(Kind::wine)};
}

void WordsModel::setWanted(const QString& wanted) {
  if (wanted == m_wanted) return;
  m_wanted = wanted;
  show();
}

void WordsModel::setDrink(int drink) {
  m_drink = drink;
  show();
}

void WordsModel::setRetiredShown(bool isShown) {
  m_retiredShown = isShown;
  show();
}

void WordsModel::load() {
  ask([](Cellar& cellar) { return shelf::vocabulary(cellar.store()); }, [this](shelf::WordList list) {
    m_list = std::move(list);
    m_loaded = true;
    show();
  });
}

void WordsModel::show() {
  static constexpr Kind kinds[] = {Kind::beer, Kind::mead, Kind::cider, Kind::wine};
  shelf::WordsWanted wanted{plain(m_wanted), {}, {}, m_retiredShown, false};
  if (m_drink > 0) wanted.drink = kinds[m_drink - 1];
  const auto words = wordsSpoken(m_list, wanted);
  std::vector<WordLineRow> rows;
  m_behind.clear();
  for (const WordClass each : allOf<WordClass>()) {
    const auto count = std::ranges::count(words, each, &TastingWord::wordClass);
    if (count == 0) continue;
    WordLineRow heading;
    heading.isClass = true;
    heading.isOpen = m_open.contains(each) || !m_wanted.trimmed().isEmpty();
    heading.name = shown(words::className(voice(), each));
    heading.line = shown(words::classLine(voice(), each));
    heading.mark = shown(words::wordCount(voice(), static_cast<int>(count)));
    rows.push_back(heading);
    m_behind.push_back({each, {}});
    if (!heading.isOpen) continue;
    for (const TastingWord& word : words) {
      if (word.wordClass != each) continue;
      rows.push_back(wordLine(word));
      m_behind.push_back({each, word.id});
    }
  }
  m_lines.set(rows);
  const auto own = std::ranges::count_if(m_list, [](const TastingWord& word) { return word.own && !word.retired && !word.sameAs; });
  m_countLine = shown(words::wordCount(voice(), static_cast<int>(words.size())));
  m_ownLine = own == 0 ? tr("None of them is your own yet.") : tr("Your own among all words: %1.").arg(own);
  emit changed();
}

void WordsModel::take(int row) {
  const Behind line = m_behind.at(static_cast<std::size_t>(row));
  if (!line.word.empty()) {
    emit wordRequested(line.word);
    return;
  }
  if (!m_open.erase(line.wordClass)) m_open.insert(line.wordClass);
  show();
}

void WordsModel::add() { emit newWordRequested(m_lines.count() == 0 ? m_wanted : QString()); }

}  // namespace oddglass::ui
