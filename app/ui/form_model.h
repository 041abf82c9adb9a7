#pragma once
#include <QObject>
#include "domain/uid.h"
#include "tasting/flight.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <optional>
#include <string>

namespace oddglass::ui {

/// One column of somebody's table.
struct ColumnRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(bool here MEMBER here)

public:
  QString name;
  QString says;        ///< what it means, and what stands in it
  bool here = false;   ///< it is being told what it means
};

/// Answers from a table of any form: which file, then what each column means, then all of it or nothing. Whoever types in was asked before.
class FormModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString file MEMBER m_file NOTIFY changed)
  Q_PROPERTY(bool read READ isRead NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* columns READ columns CONSTANT)
  Q_PROPERTY(bool choosing READ isChoosing NOTIFY changed)
  Q_PROPERTY(QString asked MEMBER m_asked NOTIFY changed)
  Q_PROPERTY(QStringList meanings MEMBER m_meanings NOTIFY changed)
  Q_PROPERTY(int meaning READ meaning NOTIFY changed)
  Q_PROPERTY(QStringList cups MEMBER m_cups NOTIFY changed)
  Q_PROPERTY(int cup READ cup NOTIFY changed)
  Q_PROPERTY(QStringList rounds MEMBER m_rounds NOTIFY changed)
  Q_PROPERTY(int round READ round NOTIFY changed)

public:
  FormModel(const Stage& stage, QObject* parent);
  bool isRead() const { return !m_columns.empty(); }
  bool isChoosing() const { return m_at >= 0; }
  Rows* columns() { return &m_rows; }
  int meaning() const { return isChoosing() ? column().meaning : -1; }
  int cup() const { return isChoosing() ? column().cup : -1; }
  int round() const { return isChoosing() ? column().round : -1; }

  /// Reads the columns of the table named in `file`.
  Q_INVOKABLE void open();
  /// The column that is told next what it means.
  Q_INVOKABLE void choose(int column);
  Q_INVOKABLE void setMeaning(int meaning);
  Q_INVOKABLE void setCup(int cup);
  Q_INVOKABLE void setRound(int round);
  /// Hands all of it in, or nothing.
  Q_INVOKABLE void take();
  /// Who types in; nothing: somebody who is not on the shelf.
  void setTypist(const std::optional<TasterId>& typist) { m_typist = typist; }
  const std::optional<TasterId>& typist() const { return m_typist; }
  Q_INVOKABLE void forget();

signals:
  /// So many flights are locked.
  void taken(int flights);

protected:
  void fail(const Problem& problem) override;

private:
  struct Column {
    std::string name, example;
    int meaning = 0, cup = 0, round = 0;   ///< their places in the lists of choices; cup and round 0: those of the row
  };
  const Column& column() const { return m_columns.at(static_cast<std::size_t>(m_at)); }
  bool isPerCup(const Column& column) const;
  std::string meansOf(const Column& column) const;
  void readMeaning(Column& column, const std::string& means) const;
  void nameChoices();
  void show();
  QString m_file, m_asked;
  QStringList m_meanings, m_cups, m_rounds, m_allCups, m_allRounds;
  std::vector<std::string> m_codes;        ///< the meanings as the table's reader takes them
  std::optional<tasting::Flight> m_flight; ///< the first one of the session: what is asked, and how many cups
  std::vector<Column> m_columns;
  int m_at = -1;
  std::optional<TasterId> m_typist;
  Rows m_rows;
};

}  // namespace oddglass::ui
