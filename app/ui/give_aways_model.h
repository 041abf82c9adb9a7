#pragma once
#include <QObject>
#include "domain/plan.h"
#include "ui/rows.h"

#include <map>
#include <optional>

namespace oddglass::ui {

class SheetPlanModel;

/// One of the nine checks: alike, or different with its ways out.
struct GiveAwayRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString hint MEMBER hint)
  Q_PROPERTY(bool different MEMBER different)
  Q_PROPERTY(QStringList ways MEMBER ways)
  Q_PROPERTY(int way MEMBER way)
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(bool leaveOut MEMBER leaveOut)

public:
  QString name, hint, says;
  QStringList ways;
  int way = -1;
  bool different = false;
  bool leaveOut = false;  ///< the other way is to leave a person out
};

/// Give-aways: what but the taste could tell the drinks apart, and what is done about it. Until it is settled nothing of it stands in the draft.
class GiveAwaysModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(oddglass::ui::Rows* checks READ checks CONSTANT)
  Q_PROPERTY(QString notYet MEMBER m_notYet NOTIFY changed)
  Q_PROPERTY(bool settled READ isSettled NOTIFY changed)
  Q_PROPERTY(QString asked MEMBER m_asked NOTIFY changed)

public:
  GiveAwaysModel(Draft& draft, SheetPlanModel& sheet, QObject* parent);
  Rows* checks() { return &m_checks; }
  bool isSettled() const { return m_draft.giveAways.has_value(); }
  /// What the draft says now; ticks of another draft are forgotten.
  void show();
  /// Other drinks are looked at anew.
  void forget();
  /// Puts what was chosen into the draft. Does nothing while `notYet` says why not.
  void settle();

  Q_INVOKABLE void tick(int row);
  /// One of the row's `ways`. What is asked instead changes the question, or adds one to the sheet.
  Q_INVOKABLE void choose(int row, int way);

signals:
  void changed();
  /// The draft is another one now and wants to be kept.
  void edited();

private:
  void askAbout(GiveAway check);
  void askAsBefore(GiveAway check);
  void dropWhatIsNotAsked();
  Draft& m_draft;
  SheetPlanModel& m_sheet;
  SessionId m_of;
  std::optional<Draft> m_before;   ///< as it asked until something was asked instead
  std::map<GiveAway, std::optional<WayOut>> m_found;
  Rows m_checks;
  QString m_notYet, m_asked;
};

}  // namespace oddglass::ui
