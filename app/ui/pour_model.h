#pragma once
#include <QObject>
#include "session/pour.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <functional>
#include <optional>

namespace oddglass::ui {

/// One cup on the pourer's sheet.
struct PourRow {
  Q_GADGET
  Q_PROPERTY(QString section MEMBER section)
  Q_PROPERTY(QString code MEMBER code)
  Q_PROPERTY(QString spoken MEMBER spoken)
  Q_PROPERTY(QString where MEMBER where)
  Q_PROPERTY(QString note MEMBER note)
  Q_PROPERTY(bool ticked MEMBER ticked)
  Q_PROPERTY(bool spare MEMBER spare)

public:
  QString section, code, spoken, where, note;
  bool ticked = false, spare = false;
};

/// The pourer's sheet. It holds the key in the open while it is shown and nothing as soon as it is left.
class PourModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool opened MEMBER m_opened NOTIFY changed)
  Q_PROPERTY(bool byPlace READ isByPlace WRITE setByPlace NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString openingsLine MEMBER m_openingsLine NOTIFY changed)
  Q_PROPERTY(QString picked MEMBER m_picked NOTIFY changed)
  Q_PROPERTY(QString pickedLine MEMBER m_pickedLine NOTIFY changed)
  Q_PROPERTY(QStringList lotNames MEMBER m_lotNames NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* cups READ cups CONSTANT)

public:
  PourModel(const Stage& stage, QObject* parent);
  Rows* cups() { return &m_cups; }
  bool isByPlace() const { return m_byPlace; }
  void setByPlace(bool byPlace);

  /// Opens the sheet; that is logged before anything is shown.
  Q_INVOKABLE void open();
  Q_INVOKABLE void tick(int row);
  /// Picks a cup that something went wrong with; the same again lets go of it.
  Q_INVOKABLE void pick(int row);
  /// Another lot of the plan went into the picked cup; the index is one of `lotNames`.
  Q_INVOKABLE void pouredReally(int lot);
  Q_INVOKABLE void notSure();
  Q_INVOKABLE void spilled();
  /// To the page that prints it; that opening is one of its own.
  Q_INVOKABLE void toPaper() { emit paperRequested(); }
  Q_INVOKABLE void leave();
  /// Everything stands ready: says so and goes to the places.
  Q_INVOKABLE void done();

signals:
  void paperRequested();

private:
  void show();
  void forget();
  void noted(Code code, std::optional<Slot> really);
  /// Changes the lines of one code in what is shown.
  void each(Code code, const std::function<void(session::PourLine&)>& change);
  Rows m_cups;
  std::optional<session::PourSheet> m_sheet;
  bool m_opened = false, m_byPlace = false;
  QString m_lead, m_openingsLine, m_picked, m_pickedLine;
  QStringList m_lotNames;
  std::vector<Code> m_order;
};

}  // namespace oddglass::ui
