#pragma once
#include <QObject>
#include "domain/batch.h"
#include "ui/figure_row.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <optional>
#include <vector>

namespace oddglass::ui {

/// A recipe in the list of them.
struct RecipeRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)

public:
  QString name, line;
};

/// One line over all columns.
struct ColumnsRow {
  Q_GADGET
  Q_PROPERTY(QString label MEMBER label)
  Q_PROPERTY(QStringList cells MEMBER cells)
  Q_PROPERTY(QString spoken MEMBER spoken)

public:
  QString label;
  QStringList cells;
  QString spoken;  ///< the line in words, with the names of its columns
};

/// A batch that may be picked.
struct BatchRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(bool ticked MEMBER ticked)

public:
  QString name, line;
  bool ticked = false;
};

/// Side by side: the batches of a recipe in columns, and what moved between them where they can be compared.
class SideBySideModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool loaded MEMBER m_loaded NOTIFY changed)
  Q_PROPERTY(bool anything MEMBER m_anything NOTIFY changed)
  Q_PROPERTY(bool picking MEMBER m_picking NOTIFY changed)
  Q_PROPERTY(QString closedBy MEMBER m_closedBy NOTIFY changed)
  Q_PROPERTY(QString recipe MEMBER m_recipe NOTIFY changed)
  Q_PROPERTY(QString shape MEMBER m_shape NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QStringList lines MEMBER m_lines NOTIFY changed)
  Q_PROPERTY(QStringList how READ how NOTIFY changed)
  Q_PROPERTY(QStringList headers MEMBER m_headers NOTIFY changed)
  Q_PROPERTY(QString underTable MEMBER m_underTable NOTIFY changed)
  Q_PROPERTY(QStringList marks MEMBER m_marks NOTIFY changed)
  Q_PROPERTY(QStringList bases MEMBER m_bases NOTIFY changed)
  Q_PROPERTY(int base MEMBER m_base NOTIFY changed)
  Q_PROPERTY(QString primary MEMBER m_primary NOTIFY changed)
  Q_PROPERTY(QString primaryReason MEMBER m_primaryReason NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* recipes READ recipes CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* batches READ batches CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* table READ table CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* steps READ steps CONSTANT)

public:
  SideBySideModel(const Stage& stage, QObject* parent);
  /// How it is worked out, and after whom.
  QStringList how() const;
  Rows* recipes() { return &m_recipes; }
  Rows* batches() { return &m_batches; }
  Rows* table() { return &m_table; }
  Rows* steps() { return &m_steps; }

  Q_INVOKABLE void load();
  Q_INVOKABLE void chooseRecipe(int row);
  /// Opens or leaves the list of all batches to pick from.
  Q_INVOKABLE void pick(bool picking);
  Q_INVOKABLE void tick(int row);
  /// Holds every other batch against one of them (from 1), or each against the one before (0).
  Q_INVOKABLE void holdAgainst(int base);
  /// Plans a tasting that links the batches; where nothing is to be linked, the first step towards it.
  Q_INVOKABLE void goOn();
  /// The batches of this one's recipe; this one alone where it has none.
  void open(const BeverageId& batch);

signals:
  void planRequested(const oddglass::SessionId& session);

private:
  /// What the page is about.
  struct Wanted {
    std::string recipe;
    std::vector<BeverageId> picked;    ///< instead of a recipe
    std::optional<BeverageId> good;
  };
  void show(const struct BesideRead& read);
  void showFindings(const struct BesideRead& read);
  Wanted m_wanted;
  std::vector<Recipe> m_recipeValues;
  std::vector<BeverageId> m_all, m_shown;
  bool m_loaded = false, m_anything = false, m_hasBatches = false, m_picking = false, m_linkable = false;
  QString m_closedBy, m_recipe, m_shape, m_headline, m_underTable, m_primary, m_primaryReason;
  QStringList m_lines, m_headers, m_marks, m_bases;
  int m_base = 0;
  Rows m_recipes, m_batches, m_table, m_steps;
};

}  // namespace oddglass::ui
