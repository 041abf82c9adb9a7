#pragma once
#include <QObject>
#include "domain/problem.h"
#include "session/drafts.h"
#include "shelf/word_list.h"
#include "ui/rows.h"
#include "words/ready_sheets.h"

#include <QtQml/qqmlregistration.h>
#include <optional>

namespace oddglass::ui {

/// A drink of a score sheet and what it is there for.
struct RoleRow {
  Q_GADGET
  Q_PROPERTY(QString name MEMBER name)
  Q_PROPERTY(int role MEMBER role)

public:
  QString name;
  int role = 0;  ///< one of `roleChoices`
};

/// One question of the sheet in the list of them.
struct AskedRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(bool isFirst MEMBER isFirst)
  Q_PROPERTY(bool isLast MEMBER isLast)

public:
  QString says;
  bool isFirst = false, isLast = false;
};

/// What only a score sheet has, while the plan is made: what each drink is there for, the sheet, and how the cups are served. It changes the
/// draft that it is given and says so; whoever owns the draft keeps it.
class SheetPlanModel : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(bool isSheet READ isSheet NOTIFY changed)
  Q_PROPERTY(bool isGap READ isGap NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* roles READ roles CONSTANT)
  Q_PROPERTY(QStringList roleChoices READ roleChoices CONSTANT)
  Q_PROPERTY(QString lacksReference MEMBER m_lacksReference NOTIFY changed)
  Q_PROPERTY(QStringList markedChoices MEMBER m_markedChoices NOTIFY changed)
  Q_PROPERTY(int marked MEMBER m_marked NOTIFY changed)
  Q_PROPERTY(bool hasDuplicate READ hasDuplicate NOTIFY changed)
  Q_PROPERTY(QStringList ready READ ready CONSTANT)
  Q_PROPERTY(int taken MEMBER m_taken NOTIFY changed)
  Q_PROPERTY(QString readyNote MEMBER m_readyNote NOTIFY changed)
  Q_PROPERTY(QString cupsAtOnce MEMBER m_cupsAtOnce NOTIFY changed)
  Q_PROPERTY(QString pause MEMBER m_pause NOTIFY changed)
  Q_PROPERTY(QString cleanser READ cleanser WRITE setCleanser NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* asked READ asked CONSTANT)
  Q_PROPERTY(QString impossible MEMBER m_impossible NOTIFY changed)
  Q_PROPERTY(bool isOpen MEMBER m_isOpen NOTIFY changed)
  Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
  Q_PROPERTY(QStringList kinds READ kinds CONSTANT)
  Q_PROPERTY(int kind MEMBER m_kind NOTIFY changed)
  Q_PROPERTY(QStringList parts MEMBER m_parts NOTIFY changed)
  Q_PROPERTY(int part MEMBER m_part NOTIFY changed)
  Q_PROPERTY(bool mayHaveWord MEMBER m_mayHaveWord NOTIFY changed)
  Q_PROPERTY(QString word READ word NOTIFY changed)
  Q_PROPERTY(QStringList offered MEMBER m_offered NOTIFY changed)
  Q_PROPERTY(bool mayHaveLimit MEMBER m_mayHaveLimit NOTIFY changed)
  Q_PROPERTY(QString limit MEMBER m_limit NOTIFY changed)
  Q_PROPERTY(QString limitUnit MEMBER m_limitUnit NOTIFY changed)
  Q_PROPERTY(bool mayBeMain READ mayBeMain NOTIFY changed)
  Q_PROPERTY(bool isMain READ isMain NOTIFY changed)
  Q_PROPERTY(bool mayBeLeftOut READ mayBeLeftOut NOTIFY changed)
  Q_PROPERTY(QString notYet MEMBER m_notYet NOTIFY changed)

public:
  SheetPlanModel(Draft& draft, QObject* parent);
  /// What is offered, in the language of the moment.
  static QStringList roleChoices();
  static QStringList ready();
  static QStringList kinds();
  bool isSheet() const { return m_draft.method == Method::sheet; }
  /// True where the sheet asks what a drink lacks, and limits count.
  bool isGap() const { return m_draft.question == Question::lacks; }
  Rows* roles() { return &m_roles; }
  Rows* asked() { return &m_asked; }
  bool hasDuplicate() const { return m_draft.sheet.hasDuplicate; }
  QString cleanser() const { return QString::fromStdString(m_draft.sheet.cleanser); }
  void setCleanser(const QString& text);
  bool isNew() const { return !m_row; }
  QString word() const { return QString::fromStdString(m_item.word); }
  bool mayBeMain() const { return answerForm(m_item.kind).isScored && !answerForm(m_item.kind).isText; }
  bool isMain() const { return m_item.isMain; }
  bool mayBeLeftOut() const { return !m_item.required; }

  /// Another draft: a sheet that is there already is somebody's choice.
  void begin();
  /// What the shelf and the vocabulary say of the draft now.
  void show(const session::DraftFacts& facts, shelf::WordList words);
  /// The question was changed to one of a sheet: roles are those that it suggests.
  void ask();
  /// A lot goes from the draft; roles and the marked cup stay with their lots.
  void dropLot(int at);
  /// One more question, unless it is asked already; from now on the sheet is somebody's choice.
  void add(const SheetItem& item);
  /// Why this plan cannot go on for the sheet's sake, in one sentence; empty when it can.
  QString missing() const;

  Q_INVOKABLE void chooseRole(int row, int role);
  Q_INVOKABLE void chooseMarked(int index);
  Q_INVOKABLE void tickDuplicate();
  /// Takes a ready sheet in place of the one that is there.
  Q_INVOKABLE void takeReady(int index);
  Q_INVOKABLE void typeCupsAtOnce(const QString& text);
  Q_INVOKABLE void typePause(const QString& text);
  Q_INVOKABLE void stepCupsAtOnce(int by);
  Q_INVOKABLE void stepPause(int by);

  /// Moves a question up (-1) or down (1).
  Q_INVOKABLE void move(int row, int by);
  Q_INVOKABLE void remove(int row);
  /// Opens the form for a new question, or for one that is there.
  Q_INVOKABLE void openNew();
  Q_INVOKABLE void change(int row);
  Q_INVOKABLE void leave();
  Q_INVOKABLE void chooseKind(int index);
  Q_INVOKABLE void choosePart(int index);
  Q_INVOKABLE void typeWord(const QString& text);
  /// One of `offered`, words of the vocabulary that go with the drinks.
  Q_INVOKABLE void takeWord(int index);
  Q_INVOKABLE void typeLimit(const QString& text);
  Q_INVOKABLE void stepLimit(int by);
  Q_INVOKABLE void tickMain();
  Q_INVOKABLE void tickLeftOut();
  /// Puts what the form holds on the sheet; does nothing while `notYet` says why not.
  Q_INVOKABLE void put();

signals:
  void changed();
  /// The draft is another one now and wants to be kept.
  void edited();
  /// Something typed is no number, or none that fits.
  void refused(const oddglass::Problem& problem);

private:
  Kind mainKind() const;
  bool followReady();
  void showCups();
  void showSheet();
  void showForm();
  void edit();
  void read(const QString& text, int low, int high, const char* argument, int& value);
  std::vector<SheetItem> wouldBe() const;

  Draft& m_draft;
  session::DraftFacts m_facts;
  shelf::WordList m_words;
  Rows m_roles, m_asked;
  bool m_isPicked = false;           ///< somebody has chosen or changed the sheet; until then it follows the drinks
  std::vector<Slot> m_markedValues;
  QStringList m_markedChoices, m_parts, m_offered;
  int m_marked = 0, m_taken = -1, m_kind = -1, m_part = -1;
  QString m_lacksReference, m_readyNote, m_cupsAtOnce, m_pause, m_impossible, m_limit, m_limitUnit, m_notYet;
  bool m_isOpen = false, m_limitWrong = false, m_mayHaveWord = false, m_mayHaveLimit = false;
  std::optional<std::size_t> m_row;  ///< the question that the form changes; nothing: a new one
  SheetItem m_item;                  ///< what the form holds
  std::vector<Part> m_partValues;
};

}  // namespace oddglass::ui
