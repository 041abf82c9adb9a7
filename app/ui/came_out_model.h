#pragma once
#include <QObject>
#include "ui/figure_item.h"
#include "ui/page_model.h"
#include "ui/paper_wishes.h"
#include "ui/rows.h"
#include "words/came_out.h"
#include "words/maker.h"

namespace oddglass::report {
struct SheetDrawings;
}

namespace oddglass::ui {

/// One small fact under a verdict.
struct FactRow {
  Q_GADGET
  Q_PROPERTY(QString label MEMBER label)
  Q_PROPERTY(QString says MEMBER says)

public:
  QString label, says;
};

/// One of three pairs, or one question of a score sheet: its own verdict, evidence and figures.
struct PairRow {
  Q_GADGET
  Q_PROPERTY(QString shape MEMBER shape)
  Q_PROPERTY(QString word MEMBER word)
  Q_PROPERTY(QString headline MEMBER headline)
  Q_PROPERTY(QString count MEMBER count)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ drawn)
  Q_PROPERTY(oddglass::ui::FigureSource second READ drawnSecond)
  Q_PROPERTY(QString evidence MEMBER evidence)

public:
  QString shape, word, headline, count, evidence;  ///< `evidence`: sentence by sentence, one a line
  FigureSource figure, other;
  FigureSource drawn() const { return figure; }
  FigureSource drawnSecond() const { return other; }
};

/// What came out: for the room, without any person; for the maker, with everybody as they asked to be shown.
class CameOutModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool closed MEMBER m_closed NOTIFY changed)   ///< a look of the same series is sealed: nothing is shown
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
  Q_PROPERTY(bool mayOpenRound MEMBER m_mayOpenRound NOTIFY changed)
  Q_PROPERTY(bool mayShowMap MEMBER m_mayShowMap NOTIFY changed)
  Q_PROPERTY(bool mapShown MEMBER m_mapShown NOTIFY changed)
  Q_PROPERTY(QString mapLink MEMBER m_mapLink NOTIFY changed)
  Q_PROPERTY(QStringList mapLines MEMBER m_mapLines NOTIFY changed)
  Q_PROPERTY(oddglass::ui::FigureSource map READ map NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)

public:
  /// `settings`: where this machine keeps which paper it has.
  CameOutModel(const Stage& stage, const QString& settings, QObject* parent);
  FigureSource figure() const { return m_figure; }
  FigureSource map() const { return m_map; }
  Rows* facts() { return &m_facts; }
  Rows* pairs() { return &m_pairs; }
  Rows* people() { return &m_people; }
  Q_INVOKABLE void load() { read(false); }
  /// Shows a page that is closed, and writes that down.
  Q_INVOKABLE void openAnyway();
  Q_INVOKABLE void decide();
  /// Works out and shows how the cups of a score sheet lie to each other, or takes it away again.
  Q_INVOKABLE void showMap();
  /// Writes the report (for the room, or with the maker's part on the maker's page) into the file named in `reportFile`; HTML, or PDF or JSON when its name says so.
  Q_INVOKABLE void writeReport();
  Q_INVOKABLE void toHistory() { go(Router::Page::History); }
  /// On to scoring the same drinks once more, with the labels known.
  Q_INVOKABLE void toOpenRound() { go(Router::Page::OpenRound); }

private:
  void read(bool opened);
  void showClosed();
  PaperWishes m_wishes;
  bool m_closed = false;
  void showPairs(const words::CameOut& out);
  void showSections(const words::CameOut& out, const report::SheetDrawings& drawings);
  void hideMap(const Plan& plan);
  void showFacts(const words::CameOut& out);
  void showMaker(const words::MakerPart& part);
  bool m_mayOpenRound = false, m_mayShowMap = false, m_mapShown = false;
  QString m_mapLink;
  QStringList m_mapLines;
  FigureSource m_map;
  bool m_broken = false, m_loaded = false, m_forMaker = false, m_deciding = false;
  QString m_alarm, m_over, m_shape, m_word, m_headline, m_second, m_count, m_promised, m_decision, m_decided, m_reportFile, m_told;
  QStringList m_evidence, m_record, m_makerLines;
  FigureSource m_figure;
  Rows m_facts, m_people, m_pairs;
};

}  // namespace oddglass::ui
