#pragma once
#include <QObject>
#include "domain/shelf.h"
#include "store/store.h"
#include "ui/page_model.h"
#include "ui/rows.h"

#include <vector>

namespace oddglass::ui {

/// What a bottle is taken to hold until something else is typed.
constexpr int usualBottleMl = 500;

/// A thing to tick, such as an allergen or a maker.
struct TickRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString note MEMBER note)
  Q_PROPERTY(bool ticked MEMBER ticked)

public:
  QString name, note;
  bool ticked = false;
};

/// One lot of the drink.
struct LotRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(QString line MEMBER line)
  Q_PROPERTY(QString stock MEMBER stock)
  Q_PROPERTY(bool archived MEMBER archived)

public:
  QString name, line, stock;
  bool archived = false;
};

/// One note of what was done.
struct NoteRow {
  Q_GADGET
  Q_PROPERTY(QString day MEMBER day)
  Q_PROPERTY(QString says MEMBER says)

public:
  QString day, says;
};

/// A beverage's page: what it is, its lots and their stock, its dated notes.
class BeverageModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool isNew MEMBER m_isNew NOTIFY changed)
  Q_PROPERTY(bool editing MEMBER m_editing NOTIFY changed)
  Q_PROPERTY(bool archived MEMBER m_archived NOTIFY changed)
  Q_PROPERTY(QString headline MEMBER m_headline NOTIFY changed)
  Q_PROPERTY(QString lead MEMBER m_lead NOTIFY changed)
  Q_PROPERTY(QString name MEMBER m_name NOTIFY changed)
  Q_PROPERTY(int origin MEMBER m_origin NOTIFY changed)
  Q_PROPERTY(int kind MEMBER m_kind NOTIFY changed)
  Q_PROPERTY(QString recipe MEMBER m_recipe NOTIFY changed)
  Q_PROPERTY(QString originalGravity MEMBER m_originalGravity NOTIFY changed)
  Q_PROPERTY(QString finalGravity MEMBER m_finalGravity NOTIFY changed)
  Q_PROPERTY(QString abv MEMBER m_abv NOTIFY changed)
  Q_PROPERTY(int abvFrom MEMBER m_abvFrom NOTIFY changed)
  Q_PROPERTY(QString gravityLine READ gravityLine NOTIFY changed)
  Q_PROPERTY(QString gravityExample READ gravityExample NOTIFY changed)
  Q_PROPERTY(QString coolExample READ coolExample NOTIFY changed)
  Q_PROPERTY(int ingredients MEMBER m_ingredients NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* allergens READ allergens CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* makers READ makers CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* lots READ lots CONSTANT)
  Q_PROPERTY(bool lotOpen MEMBER m_lotOpen NOTIFY changed)
  Q_PROPERTY(QString lotName MEMBER m_lotName NOTIFY changed)
  Q_PROPERTY(QString lotPackaged MEMBER m_lotPackaged NOTIFY changed)
  Q_PROPERTY(QString lotBest MEMBER m_lotBest NOTIFY changed)
  Q_PROPERTY(QString lotMl MEMBER m_lotMl NOTIFY changed)
  Q_PROPERTY(QString lotStorage MEMBER m_lotStorage NOTIFY changed)
  Q_PROPERTY(QString lotSource MEMBER m_lotSource NOTIFY changed)
  Q_PROPERTY(QString moveLot MEMBER m_moveLot NOTIFY changed)
  Q_PROPERTY(int moveKind MEMBER m_moveKind NOTIFY changed)
  Q_PROPERTY(QString moveBottles MEMBER m_moveBottles NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* notes READ notes CONSTANT)
  Q_PROPERTY(QString earlyHeadline MEMBER m_earlyHeadline NOTIFY changed)   ///< *Too early?*, of a batch; empty for a reference
  Q_PROPERTY(QStringList earlyLines MEMBER m_earlyLines NOTIFY changed)
  Q_PROPERTY(QStringList earlyCautions MEMBER m_earlyCautions NOTIFY changed)
  Q_PROPERTY(bool earlyUrgent MEMBER m_earlyUrgent NOTIFY changed)          ///< a bottle gushed
  Q_PROPERTY(QString noteDay MEMBER m_noteDay NOTIFY changed)
  Q_PROPERTY(int noteKind MEMBER m_noteKind WRITE setNoteKind NOTIFY changed)
  Q_PROPERTY(QString noteGravity MEMBER m_noteGravity NOTIFY changed)
  Q_PROPERTY(int noteLevel MEMBER m_noteLevel NOTIFY changed)            ///< -1: not said yet
  Q_PROPERTY(QStringList noteLevels READ noteLevels NOTIFY changed)      ///< what the levels of this kind mean; empty: it has none
  Q_PROPERTY(QString noteWord MEMBER m_noteWord NOTIFY changed)          ///< the fault that was acted against
  Q_PROPERTY(bool noteIsDeed READ noteIsDeed NOTIFY changed)             ///< something that may have been done against a fault
  Q_PROPERTY(QString noteText MEMBER m_noteText NOTIFY changed)
  Q_PROPERTY(QString noteReplaced MEMBER m_noteReplaced NOTIFY changed)
  Q_PROPERTY(QString again MEMBER m_again NOTIFY changed)

public:
  BeverageModel(const Stage& stage, QObject* parent);
  Rows* allergens() { return &m_allergens; }
  Rows* makers() { return &m_makers; }
  Rows* lots() { return &m_lots; }
  Rows* notes() { return &m_notes; }
  QString gravityLine() const;
  /// A gravity and a cellar's temperature as they may be typed.
  static QString gravityExample();
  static QString coolExample();
  void setNoteKind(int kind);
  QStringList noteLevels() const;
  bool noteIsDeed() const;

  void open(const BeverageId& id);
  /// The same drink as it is now; to the shelf when it is gone.
  void readAgain();
  /// The reader chose another language or other units.
  void sayAgain();
  void openNew() { openBlank(Origin::batch); }
  void openNewReference() { openBlank(Origin::reference); }
  Q_INVOKABLE void save();
  Q_INVOKABLE void archive(bool archived);
  /// This batch beside the others of its recipe.
  Q_INVOKABLE void setBeside() { emit sideBySideRequested(m_id); }
  Q_INVOKABLE void tickAllergen(int row);
  Q_INVOKABLE void tickMaker(int row);
  Q_INVOKABLE void newLot();
  Q_INVOKABLE void editLot(int row);
  Q_INVOKABLE void saveLot();
  Q_INVOKABLE void leaveLot();
  Q_INVOKABLE void archiveLot(int row);
  Q_INVOKABLE void startMove(int row);
  Q_INVOKABLE void saveMove();
  Q_INVOKABLE void leaveMove();
  Q_INVOKABLE void saveNote();
  /// The same although the batch was stabilised before.
  Q_INVOKABLE void saveNoteAgain();
  Q_INVOKABLE void leaveAgain();
  Q_INVOKABLE void correctNote(int row);
  Q_INVOKABLE void withdrawNote(int row);
  Q_INVOKABLE void leaveCorrection();

signals:
  void sideBySideRequested(const oddglass::BeverageId& batch);

protected:
  void fail(const Problem& problem) override;

private:
  void openBlank(Origin origin);
  Beverage formValue() const;
  struct Read {
    Beverage beverage;
    std::vector<Lot> lots;
    std::vector<Note> notes;
    std::vector<Taster> people;
  };
  static Read read(store::Store& store, const BeverageId& id);
  void fill(const Read& read);
  void sayDrink();
  void showTicks();
  void showTooEarly();
  void clearNote();
  void saveNote(bool again);

  Rows m_allergens, m_makers, m_lots, m_notes;
  BeverageId m_id;
  Beverage m_drink;  ///< as it stands in the store
  std::vector<Taster> m_people;
  std::set<Allergen> m_allergensTicked;
  std::vector<TasterId> m_makersTicked;
  std::vector<Lot> m_lotValues;
  std::vector<Note> m_noteValues;
  bool m_isNew = true, m_archived = false, m_lotOpen = false, m_editing = false;
  QString m_headline, m_lead, m_name, m_originalGravity, m_finalGravity, m_abv;
  int m_origin = 0, m_kind = 0, m_abvFrom = -1, m_ingredients = 2;
  int m_lotAt = -1, m_moveAt = -1, m_moveKind = 0, m_noteKind = 5;
  QString m_lotName, m_lotPackaged, m_lotBest, m_lotMl, m_lotStorage, m_lotSource, m_moveLot, m_moveBottles;
  int m_noteLevel = -1;
  QString m_earlyHeadline;
  QStringList m_earlyLines, m_earlyCautions;
  bool m_earlyUrgent = false;
  QString m_recipe, m_noteWord;
  QString m_noteDay, m_noteGravity, m_noteText, m_noteReplaced, m_again;
  std::optional<NoteId> m_replaces;
};

}  // namespace oddglass::ui
