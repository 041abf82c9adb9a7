#pragma once
#include <QObject>
#include "shelf/beverages.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// One drink on the shelf.
struct BeverageRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(bool archived MEMBER archived)

public:
  QString name, line;
  bool archived = false;
};

/// The shelf: own batches and bought ones, found by a part of their name.
class ShelfModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool anything MEMBER m_anything NOTIFY changed)
  Q_PROPERTY(QString wanted READ wanted WRITE setWanted NOTIFY changed)
  Q_PROPERTY(bool archivedShown READ archivedShown WRITE setArchivedShown NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* beverages READ beverages CONSTANT)

public:
  ShelfModel(const Stage& stage, QObject* parent);
  Rows* beverages() { return &m_beverages; }
  const QString& wanted() const { return m_wanted; }
  void setWanted(const QString& wanted);
  bool archivedShown() const { return m_archivedShown; }
  void setArchivedShown(bool shown);

  Q_INVOKABLE void load();
  Q_INVOKABLE void open(int row);
  Q_INVOKABLE void add();

signals:
  void beverageRequested(const oddglass::BeverageId& id);
  void newBeverageRequested();

private:
  bool m_loaded = false, m_anything = false, m_archivedShown = false;
  QString m_wanted;
  Rows m_beverages;
  std::vector<shelf::OnShelf> m_all;
  Lane m_lane;
};

}  // namespace oddglass::ui
