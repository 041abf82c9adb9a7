#pragma once
#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include "domain/plan.h"

#include <optional>
#include <vector>

namespace oddglass::ui {

/// Who hides what is in the cups: a pourer and the program's key, or hands.
class RoutineModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QStringList routines READ routines NOTIFY changed)
  Q_PROPERTY(int routine READ routine NOTIFY changed)
  /// What the routine is, and what stands in its way.
  Q_PROPERTY(QString line MEMBER m_line NOTIFY changed)
  Q_PROPERTY(QString wrong MEMBER m_wrong NOTIFY changed)
  Q_PROPERTY(bool byHand READ isByHand NOTIFY changed)
  Q_PROPERTY(bool asksPourer READ asksPourer NOTIFY changed)
  Q_PROPERTY(QStringList pourers MEMBER m_pourers NOTIFY changed)
  Q_PROPERTY(int pourer MEMBER m_pourer NOTIFY changed)
  Q_PROPERTY(bool asksName READ asksName NOTIFY changed)
  Q_PROPERTY(QString pourerName READ pourerName WRITE setPourerName NOTIFY changed)

public:
  RoutineModel(Draft& draft, QObject* parent) : QObject(parent), m_draft(draft) {}
  static QStringList routines();
  int routine() const { return static_cast<int>(m_draft.routine); }
  bool isByHand() const;
  bool asksPourer() const { return !isByHand() || m_draft.routine == Routine::die; }
  /// Whether somebody is to pour who does not taste.
  bool hasPourer() const { return m_pourer > 0; }
  /// "somebody else" was chosen: who is it?
  bool asksName() const { return asksPourer() && hasPourer() && m_pourer + 1 == m_pourers.size(); }
  QString pourerName() const { return QString::fromStdString(m_draft.pourerName); }
  void setPourerName(const QString& text);
  /// What the draft says now; `people` are those who could pour.
  void show(const std::vector<Taster>& people);

  /// One of `routines`.
  Q_INVOKABLE void choose(int index);
  /// One of `pourers`.
  Q_INVOKABLE void choosePourer(int index);

signals:
  void changed();
  /// The draft is another one now and wants to be kept.
  void edited();

private:
  void showPourers(const std::vector<Taster>& people);
  Draft& m_draft;
  QString m_line, m_wrong;
  QStringList m_pourers;
  std::vector<std::optional<TasterId>> m_pourerIds;   ///< of `pourers`: nobody for the first and the last
  int m_pourer = 0;
};

}  // namespace oddglass::ui
