#pragma once
#include <QObject>
#include "domain/shelf_change.h"
#include "ui/page_model.h"

#include <optional>

namespace oddglass::ui {

/// Take it back: what was changed on the shelf last, and before that, one by one, while this program runs.
class UndoModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString line MEMBER m_line NOTIFY changed)          ///< what was done; empty: nothing is offered
  Q_PROPERTY(bool offered READ isOffered NOTIFY changed)         ///< whether it can be taken back

public:
  UndoModel(const Stage& stage, QObject* parent);
  bool isOffered() const { return m_last.has_value(); }
  /// Something was changed just now.
  void look();
  /// Nothing is offered any more, until the next change.
  Q_INVOKABLE void dismiss();
  Q_INVOKABLE void takeBack();

signals:
  void takenBack();

private:
  std::optional<ShelfChange> m_last;
  QString m_line;
};

}  // namespace oddglass::ui
