#pragma once
#include <QObject>
#include "domain/vocabulary.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <QStringList>
#include <set>
#include <vector>

namespace oddglass::ui {

/// One line of the list: a class that opens up, or a word of an open one.
struct WordLineRow {
  Q_GADGET
  Q_PROPERTY(bool isClass MEMBER isClass)
  Q_PROPERTY(bool isOpen MEMBER isOpen)
  Q_PROPERTY(bool faded MEMBER faded)
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(QString mark MEMBER mark)

public:
  bool isClass = false, isOpen = false, faded = false;
  QString name, line, mark;
};

/// Words: the vocabulary of tasting words, class by class.
class WordsModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(QString wanted READ wanted WRITE setWanted NOTIFY changed)
  Q_PROPERTY(QStringList drinks READ drinks CONSTANT)
  Q_PROPERTY(int drink READ drink WRITE setDrink NOTIFY changed)
  Q_PROPERTY(bool retiredShown READ retiredShown WRITE setRetiredShown NOTIFY changed)
  Q_PROPERTY(QString countLine MEMBER m_countLine NOTIFY changed)
  Q_PROPERTY(QString ownLine MEMBER m_ownLine NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* lines READ lines CONSTANT)

public:
  WordsModel(const Stage& stage, QObject* parent);
  Rows* lines() { return &m_lines; }
  const QString& wanted() const { return m_wanted; }
  void setWanted(const QString& wanted);
  /// "any drink", then beer to wine.
  QStringList drinks() const;
  int drink() const { return m_drink; }
  void setDrink(int drink);
  bool retiredShown() const { return m_retiredShown; }
  void setRetiredShown(bool shown);

  Q_INVOKABLE void load();
  /// Opens or closes a class, or shows a word's own page.
  Q_INVOKABLE void take(int row);
  /// A new word; what was looked for in vain is its name.
  Q_INVOKABLE void add();

signals:
  void wordRequested(const oddglass::WordId& id);
  void newWordRequested(const QString& name);

private:
  void show();
  bool m_loaded = false, m_retiredShown = false;
  int m_drink = 0;
  QString m_wanted, m_countLine, m_ownLine;
  std::vector<TastingWord> m_list;
  std::set<WordClass> m_open;
  struct Behind {
    WordClass wordClass;
    WordId word;  ///< empty for a class
  };
  std::vector<Behind> m_behind;
  Rows m_lines;
};

}  // namespace oddglass::ui
