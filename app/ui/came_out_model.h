#pragma once
#include <QObject>
#include "ui/figure_item.h"
#include "ui/page_model.h"
#include "ui/paper_wishes.h"
#include "ui/rows.h"
#include "words/came_out.h"
#include "words/maker.h"

namespace oddglass::ui {

/// One small fact under a verdict.
struct FactRow {
  Q_GADGET
  Q_PROPERTY(QString label MEMBER label)
  Q_PROPERTY(QString says MEMBER says)

public:
  QString label, says;
};

/// One of three pairs: its own verdict, evidence and figure.
struct PairRow {
  Q_GADGET
  Q_PROPERTY(QString shape MEMBER shape)
  Q_PROPERTY(QString word MEMBER word)
  Q_PROPERTY(QString headline MEMBER headline)
  Q_PROPERTY(QString count MEMBER count)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ drawn)
  Q_PROPERTY(QString evidence MEMBER evidence)

public:
  QString shape, word, headline, count, evidence;  ///< `evidence`: sentence by sentence, one a line
  FigureSource figure;
  FigureSource drawn() const { return figure; }
};

/// What came out: for the room, without any person; for the maker, with everybody as they asked to be shown.
class CameOutModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool forMaker MEMBER m_forMaker NOTIFY changed)
  Q_PROPERTY(QString alarm MEMBER m_alarm NOTIFY changed)
  Q_PROPERTY(bool broken MEMBER m_broken NOTIFY changed)
  Q_PROPERTY(QString over MEMBER m_over NOTIFY changed)
  Q_PROPERTY(QString shape MEMBER m_shape NOTIFY changed)
  Q_PROPERTY(QString word MEMBER m_word NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString second MEMBER m_second NOTIFY changed)
  Q_PROPERTY(QString count MEMBER m_count NOTIFY changed)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ figure NOTIFY changed)
  Q_PROPERTY(QStringList evidence MEMBER m_evidence NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* pairs READ pairs CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* facts READ facts CONSTANT)
  Q_PROPERTY(QStringList record MEMBER m_record NOTIFY changed)
  Q_PROPERTY(QStringList makerLines MEMBER m_makerLines NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* people READ people CONSTANT)
  Q_PROPERTY(QString promised MEMBER m_promised NOTIFY changed)
  Q_PROPERTY(QString decision MEMBER m_decision NOTIFY changed)
  Q_PROPERTY(bool deciding MEMBER m_deciding NOTIFY changed)
  Q_PROPERTY(QString decided MEMBER m_decided NOTIFY changed)
  Q_PROPERTY(QString reportFile MEMBER m_reportFile NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)

public:
  /// `settings`: where this machine keeps which paper it has.
  CameOutModel(const Stage& stage, const QString& settings, QObject* parent);
  FigureSource figure() const { return m_figure; }
  Rows* facts() { return &m_facts; }
  Rows* pairs() { return &m_pairs; }
  Rows* people() { return &m_people; }
  Q_INVOKABLE void load();
  Q_INVOKABLE void decide();
  /// Writes the report (for the room, or with the maker's part on the maker's page) into the file named in `reportFile`; HTML, or PDF or JSON when its name says so.
  Q_INVOKABLE void writeReport();
  Q_INVOKABLE void toHistory() { go(Router::Page::History); }

private:
  PaperWishes m_wishes;
  void showPairs(const words::CameOut& out);
  void showFacts(const words::CameOut& out);
  void showMaker(const words::MakerPart& part);
  bool m_broken = false, m_loaded = false, m_forMaker = false, m_deciding = false;
  QString m_alarm, m_over, m_shape, m_word, m_headline, m_second, m_count, m_promised, m_decision, m_decided, m_reportFile, m_told;
  QStringList m_evidence, m_record, m_makerLines;
  FigureSource m_figure;
  Rows m_facts, m_people, m_pairs;
};

}  // namespace oddglass::ui
