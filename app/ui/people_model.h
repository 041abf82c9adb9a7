#pragma once
#include <QObject>
#include "domain/plan.h"
#include "domain/shelf.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One person who tastes.
struct PersonRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(bool archived MEMBER archived)

public:
  QString name, line;
  bool archived = false;
};

/// People: who tastes, how they want to be shown, and how they are forgotten.
class PeopleModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool open MEMBER m_open NOTIFY changed)
  Q_PROPERTY(bool known MEMBER m_known NOTIFY changed)
  Q_PROPERTY(bool archived MEMBER m_archived NOTIFY changed)
  Q_PROPERTY(QString name MEMBER m_name NOTIFY changed)
  Q_PROPERTY(QString nickname MEMBER m_nickname NOTIFY changed)
  Q_PROPERTY(bool isBrewer MEMBER m_isBrewer NOTIFY changed)
  Q_PROPERTY(QString eraseWordsFirst MEMBER m_eraseWordsFirst NOTIFY changed)
  Q_PROPERTY(QString eraseWordsSecond MEMBER m_eraseWordsSecond NOTIFY changed)
  Q_PROPERTY(QString eraseAllFirst MEMBER m_eraseAllFirst NOTIFY changed)
  Q_PROPERTY(QString eraseAllSecond MEMBER m_eraseAllSecond NOTIFY changed)
  Q_PROPERTY(QString erasedLine MEMBER m_erasedLine NOTIFY changed)
  Q_PROPERTY(bool archivedShown READ archivedShown WRITE setArchivedShown NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* people READ people CONSTANT)

public:
  PeopleModel(const Stage& stage, QObject* parent);
  Rows* people() { return &m_people; }
  bool archivedShown() const { return m_archivedShown; }
  void setArchivedShown(bool shown);

  Q_INVOKABLE void load();
  Q_INVOKABLE void openNew();
  Q_INVOKABLE void openPerson(int row);
  Q_INVOKABLE void leave();
  Q_INVOKABLE void save();
  Q_INVOKABLE void archive(bool archived);
  Q_INVOKABLE void eraseWords() { erase(ErasureKind::words); }
  Q_INVOKABLE void eraseEverything() { erase(ErasureKind::everything); }

private:
  void erase(ErasureKind kind);
  void show(std::vector<Taster> people);
  bool m_loaded = false, m_open = false, m_known = false, m_archived = false, m_isBrewer = false, m_archivedShown = false;
  QString m_name, m_nickname, m_erasedLine, m_eraseWordsFirst, m_eraseWordsSecond, m_eraseAllFirst, m_eraseAllSecond;
  TasterId m_id;
  std::vector<Taster> m_values;
  Rows m_people;
};

}  // namespace oddglass::ui
