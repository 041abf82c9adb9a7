#pragma once
#include <QObject>
#include "domain/reference.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// A bought drink, or one of its lots, in the order of the book.
struct ReferenceRow {
  Q_GADGET
  Q_PROPERTY(bool drink MEMBER drink)
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString stock MEMBER stock)
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(QString past MEMBER past)
  Q_PROPERTY(bool attention MEMBER attention)
  Q_PROPERTY(bool pourable MEMBER pourable)

public:
  bool drink = false;        ///< a drink with its range; otherwise a lot
  QString name, stock, says; ///< `says`: a sentence a line
  QString past;              ///< its best-before
  bool attention = false;    ///< that is past
  bool pourable = false;     ///< a bottle is free
};

/// The reference book: bought drinks with their vintages and lots, and how far these lie apart.
class ReferencesModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool anything MEMBER m_anything NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* book READ book CONSTANT)

public:
  ReferencesModel(const Stage& stage, QObject* parent);
  Rows* book() { return &m_book; }

  Q_INVOKABLE void load();
  Q_INVOKABLE void add() { emit newReferenceRequested(); }
  /// The page of a drink.
  Q_INVOKABLE void open(int row);
  /// Plans a tasting beside the lot of this row, with the questions that were asked of it last.
  Q_INVOKABLE void planBeside(int row);

signals:
  void newReferenceRequested();
  void beverageRequested(const oddglass::BeverageId& id);
  void planRequested(const oddglass::SessionId& session);

private:
  struct Place {
    std::size_t reference = 0, lot = 0;
  };
  bool m_loaded = false, m_anything = false;
  QString m_headline;
  Rows m_book;
  std::vector<Reference> m_references;
  std::vector<Place> m_places;
};

}  // namespace oddglass::ui
