#pragma once
#include <QObject>
#include "ui/page_model.h"
#include "ui/paper_wishes.h"
#include "ui/printing.h"

#include <QUrl>

namespace oddglass::ui {

/// Paper for an evening: what is printed, on which paper, into which file. The pourer's sheet and the key card are the key: they are asked for twice, and logged.
class PaperModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QStringList kinds READ kinds NOTIFY changed)
  Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY changed)
  Q_PROPERTY(QString kindLine MEMBER m_kindLine NOTIFY changed)
  Q_PROPERTY(bool ofLabels READ isOfLabels NOTIFY changed)
  Q_PROPERTY(bool ofKey READ isOfKey NOTIFY changed)
  Q_PROPERTY(bool asking MEMBER m_asking NOTIFY changed)
  Q_PROPERTY(int size READ size WRITE setSize NOTIFY changed)
  Q_PROPERTY(QString columns MEMBER m_columns NOTIFY changed)
  Q_PROPERTY(QString rows MEMBER m_rows NOTIFY changed)
  Q_PROPERTY(QString skip MEMBER m_skip NOTIFY changed)
  Q_PROPERTY(QString margins MEMBER m_margins NOTIFY changed)
  Q_PROPERTY(QString gaps MEMBER m_gaps NOTIFY changed)
  Q_PROPERTY(QString file MEMBER m_file NOTIFY changed)
  Q_PROPERTY(QString told MEMBER m_told NOTIFY changed)
  Q_PROPERTY(QUrl written MEMBER m_written NOTIFY changed)

public:
  PaperModel(const Stage& stage, const QString& settings, QObject* parent);
  QStringList kinds() const;
  int kind() const { return m_kind; }
  void setKind(int kind);
  bool isOfLabels() const;
  bool isOfKey() const;
  int size() const { return m_size; }
  void setSize(int size);

  Q_INVOKABLE void load();
  /// Opened from the pourer's page: their sheet is chosen already.
  Q_INVOKABLE void openForPourer();
  /// One more or less of what is named "columns", "rows" or "skip".
  Q_INVOKABLE void step(const QString& what, int by);
  /// Prints; before the key it asks first.
  Q_INVOKABLE void print();
  /// The pourer has taken over.
  Q_INVOKABLE void printForPourer();
  Q_INVOKABLE void leave() { go(Router::Page::Places); }

private:
  Printed paperAt(int kind) const;
  void showKind();
  print::LabelSheet typedLabels() const;
  void write();
  PaperWishes m_wishes;
  int m_kind = 0, m_size = 0;
  bool m_byHand = false, m_asking = false, m_forPourer = false;
  QString m_kindLine, m_columns, m_rows, m_skip, m_margins, m_gaps, m_file, m_told, m_folder;
  QUrl m_written;
};

}  // namespace oddglass::ui
