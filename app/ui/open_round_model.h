#pragma once
#include <QObject>
#include "session/open_round.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <map>
#include <optional>

namespace oddglass::ui {

/// One place of an open round.
struct OpenPlaceRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString note MEMBER note)
  Q_PROPERTY(bool done MEMBER done)

public:
  QString name, note;
  bool done = false;
};

/// One drink by its name, and the answer that is chosen; -1 while there is none.
struct OpenLotRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(int picked MEMBER picked)

public:
  QString name;
  int picked = -1;
};

/// After the reveal the same people score the same drinks once more, with the labels known: place by place, on a device that is handed round.
class OpenRoundModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString note MEMBER m_note NOTIFY changed)
  Q_PROPERTY(bool asking READ isAsking NOTIFY changed)
  Q_PROPERTY(QString reason READ reason NOTIFY changed)
  Q_PROPERTY(QStringList answers READ answers CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* places READ places CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* lots READ lots CONSTANT)

public:
  OpenRoundModel(const Stage& stage, QObject* parent);
  static QStringList answers();
  Rows* places() { return &m_places; }
  Rows* lots() { return &m_lots; }
  bool isAsking() const { return m_at.has_value(); }
  QString reason() const;
  Q_INVOKABLE void load();
  /// Hands the device to whoever sat at one of the places.
  Q_INVOKABLE void handTo(int row);
  /// One of `answers` for one of the drinks.
  Q_INVOKABLE void choose(int lot, int answer);
  Q_INVOKABLE void lock();
  /// Back to the places without an answer.
  Q_INVOKABLE void rather();
  Q_INVOKABLE void toCameOut() { go(Router::Page::CameOut); }

private:
  void take(const std::optional<session::OpenRound>& round);
  void showPlaces();
  void showLots();
  session::OpenRound m_round;
  std::optional<std::size_t> m_at;
  std::map<Slot, int> m_chosen;
  QString m_headline, m_lead, m_note, m_told;
  Rows m_places, m_lots;
};

}  // namespace oddglass::ui
