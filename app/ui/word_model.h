#pragma once
#include <QObject>
#include "domain/vocabulary.h"
#include "store/store.h"
#include "ui/beverage_model.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <QStringList>
#include <vector>

namespace oddglass::ui {

/// A word that counts as this one, or one to merge it into.
struct OtherWordRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(bool direct MEMBER direct)

public:
  QString name, line;
  bool direct = true;  ///< merged into this one itself, not by way of another
};

/// A word's own page: what it hints at, what it is merged with, and, for an own word, its form.
class WordModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool isNew MEMBER m_isNew NOTIFY changed)
  Q_PROPERTY(bool editing MEMBER m_editing NOTIFY changed)
  Q_PROPERTY(bool own MEMBER m_own NOTIFY changed)
  Q_PROPERTY(bool retired MEMBER m_retired NOTIFY changed)
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString caution MEMBER m_caution NOTIFY changed)
  Q_PROPERTY(QString causes MEMBER m_causes NOTIFY changed)
  Q_PROPERTY(QString deeds MEMBER m_deeds NOTIFY changed)
  Q_PROPERTY(QString source MEMBER m_source NOTIFY changed)
  Q_PROPERTY(QString meant MEMBER m_meant NOTIFY changed)
  Q_PROPERTY(QString countsAs MEMBER m_countsAs NOTIFY changed)
  Q_PROPERTY(QStringList changes MEMBER m_changes NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* merged READ merged CONSTANT)

  Q_PROPERTY(QString name MEMBER m_name NOTIFY changed)
  Q_PROPERTY(QString meaning MEMBER m_meaning NOTIFY changed)
  Q_PROPERTY(QStringList classes READ classes CONSTANT)
  Q_PROPERTY(int wordClass MEMBER m_wordClass NOTIFY changed)
  Q_PROPERTY(QStringList leanings READ leanings CONSTANT)
  Q_PROPERTY(int leaning MEMBER m_leaning NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* drinks READ drinks CONSTANT)

  Q_PROPERTY(bool merging READ isMerging WRITE setMerging NOTIFY changed)
  Q_PROPERTY(QString mergeWanted READ mergeWanted WRITE setMergeWanted NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* candidates READ candidates CONSTANT)

public:
  WordModel(const Stage& stage, QObject* parent);
  Rows* merged() { return &m_merged; }
  Rows* drinks() { return &m_drinks; }
  Rows* candidates() { return &m_candidates; }
  QStringList classes() const;
  QStringList leanings() const;
  bool isMerging() const { return m_merging; }
  void setMerging(bool merging);
  const QString& mergeWanted() const { return m_mergeWanted; }
  void setMergeWanted(const QString& wanted);

  void open(const WordId& id);
  /// The same word as it is now.
  void readAgain();
  void openNew(const QString& name);
  Q_INVOKABLE void toList() { go(Router::Page::Words); }
  Q_INVOKABLE void tickDrink(int row, bool ticked);
  Q_INVOKABLE void save();
  /// Leaves the form: back to the word, or to the list when it was a new one.
  Q_INVOKABLE void leave();
  Q_INVOKABLE void retire(bool retired);
  Q_INVOKABLE void mergeInto(int candidate);
  /// Lets this word stand for itself again, or one that is merged into it.
  Q_INVOKABLE void takeApart();
  Q_INVOKABLE void takeOut(int row);
  /// Shows the word that this one counts as.
  Q_INVOKABLE void openOther();

private:
  struct Read {
    std::vector<TastingWord> list;
    std::vector<WordChange> changes;
    WordId id;
  };
  static Read read(Cellar& cellar, const WordId& id);
  /// Runs a command on the store, then shows the word as it is then.
  template <class Work>
  void change(Work work);
  void show(Read read);
  void fillForm(const TastingWord& word);
  void showHint(const TastingWord& word);
  void showOthers();
  void showChanges(const std::vector<WordChange>& changes);
  void showCandidates();
  QString nameOfWord(const WordId& id) const;

  bool m_loaded = false, m_isNew = false, m_editing = false, m_own = false, m_retired = false, m_merging = false;
  int m_wordClass = 0, m_leaning = 1;
  QString m_over, m_headline, m_lead, m_caution, m_causes, m_deeds, m_source, m_meant, m_countsAs, m_name, m_meaning, m_mergeWanted;
  QStringList m_changes;
  WordId m_id;
  std::vector<TastingWord> m_list, m_mergedWords, m_candidateWords;
  Rows m_merged, m_drinks, m_candidates;
};

}  // namespace oddglass::ui
