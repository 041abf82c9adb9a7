#pragma once
#include <QObject>
#include "domain/series.h"
#include "planning/aging.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One age that a series may look at.
struct AgeRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(QString on MEMBER on)
  Q_PROPERTY(bool taken MEMBER taken)

public:
  QString says, on;
  bool taken = false;
};

/// Begin a series: which batch, beside what, at which ages; what that takes in bottles and what it could show, while it is chosen.
class BeginSeriesModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(QStringList batches MEMBER m_batchNames NOTIFY changed)
  Q_PROPERTY(int batch MEMBER m_batch NOTIFY changed)
  Q_PROPERTY(QStringList controls MEMBER m_controls NOTIFY changed)
  Q_PROPERTY(int control MEMBER m_control NOTIFY changed)
  Q_PROPERTY(QStringList controlLots MEMBER m_controlNames NOTIFY changed)
  Q_PROPERTY(int controlLot MEMBER m_controlLot NOTIFY changed)
  Q_PROPERTY(bool setsAside MEMBER m_setsAside NOTIFY changed)
  Q_PROPERTY(QString title READ title WRITE setTitle NOTIFY changed)
  Q_PROPERTY(QString begunOn READ begunOn WRITE setBegunOn NOTIFY changed)
  Q_PROPERTY(QString each MEMBER m_each NOTIFY changed)
  Q_PROPERTY(QString reserve MEMBER m_reserve NOTIFY changed)
  Q_PROPERTY(QString word READ word WRITE setWord NOTIFY changed)
  Q_PROPERTY(QString limit MEMBER m_limit NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* ages READ ages CONSTANT)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QStringList lines MEMBER m_lines NOTIFY changed)
  Q_PROPERTY(QString cheaper MEMBER m_cheaper NOTIFY changed)
  Q_PROPERTY(bool mayTakeCheaper MEMBER m_mayTakeCheaper NOTIFY changed)

public:
  BeginSeriesModel(const Stage& stage, QObject* parent);
  Rows* ages() { return &m_ages; }
  const QString& title() const { return m_title; }
  void setTitle(const QString& title);
  const QString& begunOn() const { return m_begunOn; }
  void setBegunOn(const QString& day);
  const QString& word() const { return m_word; }
  void setWord(const QString& word);
  Q_INVOKABLE void load();
  Q_INVOKABLE void chooseBatch(int index);
  Q_INVOKABLE void chooseControl(int index);
  Q_INVOKABLE void chooseControlLot(int index);
  Q_INVOKABLE void takeAge(int row, bool taken);
  Q_INVOKABLE void setEach(const QString& text);
  Q_INVOKABLE void setReserve(const QString& text);
  Q_INVOKABLE void stepEach(int by);
  Q_INVOKABLE void stepReserve(int by);
  Q_INVOKABLE void setLimit(const QString& text);
  Q_INVOKABLE void takeCheaper();
  Q_INVOKABLE void begin();

signals:
  void begun(const oddglass::SeriesId& series);

private:
  struct LotChoice {
    Lot lot;
    QString name;
    Origin origin = Origin::batch;
  };
  void choices();
  void workOut();
  planning::AgingSetup setup() const;
  bool m_loaded = false, m_setsAside = false, m_mayTakeCheaper = false;
  std::vector<LotChoice> m_lots;
  std::vector<int> m_batchLots, m_controlLots;   ///< their places in m_lots
  std::vector<int> m_days;                       ///< of every age that is offered
  std::vector<bool> m_taken;
  std::optional<planning::AgingSetup> m_offered;
  QStringList m_batchNames, m_controls, m_controlNames, m_lines;
  int m_batch = -1, m_control = 0, m_controlLot = -1, m_people = 0;
  QString m_title, m_begunOn, m_each = QStringLiteral("1"), m_reserve = QStringLiteral("2"), m_word, m_limit, m_headline, m_cheaper;
  Rows m_ages;
};

}  // namespace oddglass::ui
