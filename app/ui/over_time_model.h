#pragma once
#include <QObject>
#include "domain/series.h"
#include "session/sittings.h"
#include "ui/figure_row.h"
#include "ui/page_model.h"
#include "ui/paper_wishes.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One series in the list of them.
struct SeriesRow {
  Q_GADGET
  Q_PROPERTY(QString title MEMBER title)
  Q_PROPERTY(bool here MEMBER here)
  Q_PROPERTY(bool archived MEMBER archived)

public:
  QString title;
  bool here = false, archived = false;
};

/// One sitting of the series: when, how it stands, and what may be done with it.
struct SittingRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(QString more MEMBER more)
  Q_PROPERTY(QString deed MEMBER deed)

public:
  QString says, more;
  QString deed;  ///< empty where nothing is to be done
};

/// Over time: what the sittings of an aging batch have shown, and the next one to plan.
class OverTimeModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool anything MEMBER m_anything NOTIFY changed)
  Q_PROPERTY(bool closed MEMBER m_closed NOTIFY changed)
  Q_PROPERTY(bool archived MEMBER m_archived NOTIFY changed)
  Q_PROPERTY(bool archivedShown MEMBER m_archivedShown NOTIFY changed)
  Q_PROPERTY(bool anyArchived MEMBER m_anyArchived NOTIFY changed)
  Q_PROPERTY(bool mayThrowAway MEMBER m_mayThrowAway NOTIFY changed)
  Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
  Q_PROPERTY(QString shape MEMBER m_shape NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString next MEMBER m_next NOTIFY changed)
  Q_PROPERTY(QString primary MEMBER m_primary NOTIFY changed)
  Q_PROPERTY(QStringList lines MEMBER m_lines NOTIFY changed)
  Q_PROPERTY(QStringList how READ how NOTIFY changed)
  Q_PROPERTY(QStringList notes MEMBER m_notes NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)
  Q_PROPERTY(QString calendarFile MEMBER m_calendarFile NOTIFY changed)
  Q_PROPERTY(QString reportFile MEMBER m_reportFile NOTIFY changed)
  Q_PROPERTY(QString reported MEMBER m_reported NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* series READ series CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* sittings READ sittings CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* asked READ asked CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* seen READ seen CONSTANT)

public:
  OverTimeModel(const Stage& stage, const QString& settings, QObject* parent);
  /// How it is worked out, and after whom.
  QStringList how() const;
  Rows* series() { return &m_series; }
  Rows* sittings() { return &m_sittings; }
  Rows* asked() { return &m_asked; }
  Rows* seen() { return &m_seen; }
  Q_INVOKABLE void load();
  Q_INVOKABLE void choose(int row);
  /// Plans the next sitting, or begins a series where there is none.
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void begin() { go(Router::Page::BeginSeries); }
  /// Plans a sitting that is not planned yet; opens one that is.
  Q_INVOKABLE void sitting(int row);
  /// Opens the old pages although a sitting is sealed; that is written down.
  Q_INVOKABLE void openAnyway();
  Q_INVOKABLE void writeCalendar();
  /// Writes the report of the series that is shown into the file named in `reportFile`; HTML, or PDF or JSON when its name says so. Not while the pages are closed.
  Q_INVOKABLE void writeReport();
  /// Prints tags for its bottles on the label sheets that were used last.
  Q_INVOKABLE void printTags();
  /// Takes the series out of the list, or puts it back into it.
  Q_INVOKABLE void archive(bool archived);
  Q_INVOKABLE void setArchivedShown(bool shown);
  /// Throws the series away, none of whose looks was sealed.
  Q_INVOKABLE void throwAway();
  /// The series that the page shows from now on.
  void open(const SeriesId& series) { m_id = series; }

signals:
  void planRequested(const oddglass::SessionId& session);

private:
  void read(bool opened);
  void show(const struct AgedRead& read);
  void showSittings(const struct AgedRead& read);
  PaperWishes m_wishes;
  SeriesId m_id;
  std::vector<SeriesId> m_ids;
  std::vector<session::SittingNow> m_now;
  bool m_loaded = false, m_anything = false, m_closed = false, m_archived = false, m_archivedShown = false, m_anyArchived = false, m_mayThrowAway = false;
  QString m_title, m_shape, m_headline, m_next, m_primary, m_told, m_calendarFile, m_reported, m_reportFile;
  QStringList m_lines, m_notes;
  Rows m_series, m_sittings, m_asked, m_seen;
};

}  // namespace oddglass::ui
