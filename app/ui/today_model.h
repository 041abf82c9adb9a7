#pragma once
#include <QObject>
#include "tasting/board.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One session in the list of Today.
struct SessionRow {
  Q_GADGET
  Q_PROPERTY(QString title MEMBER title)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(QString shape MEMBER shape)

public:
  QString title, line, shape;
};

/// Today: the one next thing, and the tastings there are. An interrupted table comes first.
class TodayModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(QString refusal MEMBER m_refusal NOTIFY changed)
  Q_PROPERTY(bool emptyShelf MEMBER m_emptyShelf NOTIFY changed)
  Q_PROPERTY(bool hasNext MEMBER m_hasNext NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* sessions READ sessions CONSTANT)

public:
  /// `demo` is the folder of the demo sessions.
  TodayModel(const Stage& stage, const QString& demo, QObject* parent);
  Rows* sessions() { return &m_sessions; }

  Q_INVOKABLE void load();
  /// At the start: goes straight back to a table that was left open, at the places, never at a sheet or at the key.
  void resume();
  /// Goes on with what stands in the headline.
  Q_INVOKABLE void goOn();
  Q_INVOKABLE void open(int row);
  Q_INVOKABLE void startTasting();
  /// Puts the invented shelf with its sessions into this store.
  Q_INVOKABLE void loadDemo();

signals:
  /// Somebody wants to plan a new tasting, or to go on with a plan.
  void planRequested(const oddglass::SessionId& draft);
  /// A table was found open at the start; it was last written to at that time.
  void interrupted(const oddglass::SessionId& session, qint64 lastAt);

protected:
  /// A store that cannot be opened at the start is said on the page itself: nothing else can be done then.
  void fail(const Problem& problem) override;

private:
  struct Listed {
    SessionId id;
    State state;
    QString title, sealMark;
  };
  void read(bool resuming);
  void sayNext(const QString& title, const std::optional<tasting::Board>& board);
  void enter(const Listed& session);
  bool m_loaded = false, m_emptyShelf = false, m_hasNext = false;
  QString m_headline, m_lead, m_refusal;
  Rows m_sessions;
  std::vector<Listed> m_listed;
  Listed m_next{};
  QString m_demo;
};

}  // namespace oddglass::ui
