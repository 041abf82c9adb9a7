#pragma once
#include <QObject>
#include "planning/amounts.h"
#include "planning/gap.h"
#include "planning/outlook.h"
#include "planning/recommend.h"
#include "session/drafts.h"
#include "ui/figure_item.h"
#include "ui/give_aways_model.h"
#include "ui/page_model.h"
#include "ui/rows.h"
#include "ui/routine_model.h"
#include "ui/serving_model.h"
#include "ui/sheet_plan_model.h"
#include "words/seal.h"

#include <vector>

namespace oddglass::ui {

/// A way to find more, in words; those that only need a number can be taken at once.
struct WayRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(bool taken MEMBER taken)

public:
  QString says;
  bool taken = false;
};

/// A way to ask, with what speaks for it.
struct MethodRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(QString why MEMBER why)
  Q_PROPERTY(bool taken MEMBER taken)

public:
  QString says, why;
  bool taken = false;
};

/// What may be poured of three drinks: a pair of them, or all three pair by pair.
struct CompareRow {
  Q_GADGET
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(QString price MEMBER price)
  Q_PROPERTY(bool taken MEMBER taken)

public:
  QString says, price;
  bool taken = false;
};

/// The five pages of a plan: The question, What it takes, Give-aways, Care, The seal. Every change is saved to the draft at once.
class DraftModel : public oddglass::ui::PageModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(QString title READ title WRITE setTitle NOTIFY changed)
  Q_PROPERTY(QString guestTitle READ guestTitle WRITE setGuestTitle NOTIFY changed)
  Q_PROPERTY(QStringList questions READ questions CONSTANT)
  Q_PROPERTY(int question MEMBER m_question NOTIFY changed)
  Q_PROPERTY(QString questionHeadline MEMBER m_questionHeadline NOTIFY changed)
  Q_PROPERTY(QString questionLead MEMBER m_questionLead NOTIFY changed)
  Q_PROPERTY(QString lotsLabel MEMBER m_lotsLabel NOTIFY changed)
  Q_PROPERTY(oddglass::ui::SheetPlanModel* sheet READ sheet CONSTANT)
  Q_PROPERTY(oddglass::ui::GiveAwaysModel* giveAways READ giveAways CONSTANT)
  Q_PROPERTY(oddglass::ui::ServingModel* serving READ serving CONSTANT)
  Q_PROPERTY(QString coverage MEMBER m_coverage NOTIFY changed)
  Q_PROPERTY(QString attribute READ attribute WRITE setAttribute NOTIFY changed)
  Q_PROPERTY(QString dose READ dose WRITE setDose NOTIFY changed)
  Q_PROPERTY(bool knownDifference MEMBER m_knownDifference NOTIFY changed)
  Q_PROPERTY(QStringList lotChoices MEMBER m_lotChoices NOTIFY changed)
  Q_PROPERTY(int expected MEMBER m_expected NOTIFY changed)
  Q_PROPERTY(bool namesThing MEMBER m_namesThing NOTIFY changed)
  Q_PROPERTY(bool mayBeAlike MEMBER m_mayBeAlike NOTIFY changed)
  Q_PROPERTY(bool asksLiking MEMBER m_asksLiking NOTIFY changed)
  Q_PROPERTY(bool mayAlsoPrefer MEMBER m_mayAlsoPrefer NOTIFY changed)
  Q_PROPERTY(bool alsoPrefer MEMBER m_alsoPrefer NOTIFY changed)
  Q_PROPERTY(bool mayHaveNone MEMBER m_mayHaveNone NOTIFY changed)
  Q_PROPERTY(QStringList outcomeLabels MEMBER m_outcomeLabels NOTIFY changed)
  Q_PROPERTY(bool hasMarked MEMBER m_hasMarked NOTIFY changed)
  Q_PROPERTY(QStringList markedChoices MEMBER m_markedChoices NOTIFY changed)
  Q_PROPERTY(int marked MEMBER m_marked NOTIFY changed)
  Q_PROPERTY(bool mayStopEarly MEMBER m_mayStopEarly NOTIFY changed)
  Q_PROPERTY(bool stopsEarly MEMBER m_stopsEarly NOTIFY changed)
  Q_PROPERTY(QString evenings MEMBER m_evenings NOTIFY changed)
  Q_PROPERTY(QString wave MEMBER m_wave NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* methods READ methods CONSTANT)
  Q_PROPERTY(QString methodNote MEMBER m_methodNote NOTIFY changed)
  Q_PROPERTY(bool methodChosen MEMBER m_methodChosen NOTIFY changed)
  Q_PROPERTY(bool lingers MEMBER m_lingers NOTIFY changed)
  Q_PROPERTY(bool isThree MEMBER m_isThree NOTIFY changed)
  Q_PROPERTY(QString threeHeadline MEMBER m_threeHeadline NOTIFY changed)
  Q_PROPERTY(QString threeAdvice MEMBER m_threeAdvice NOTIFY changed)
  Q_PROPERTY(oddglass::ui::Rows* threeWays READ threeWays CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* lots READ lots CONSTANT)
  Q_PROPERTY(oddglass::ui::Rows* tasters READ tasters CONSTANT)
  Q_PROPERTY(oddglass::ui::RoutineModel* routine READ routine CONSTANT)
  Q_PROPERTY(int sought MEMBER m_sought NOTIFY changed)
  Q_PROPERTY(int limit MEMBER m_limit NOTIFY changed)
  Q_PROPERTY(QStringList limits READ limits NOTIFY changed)
  Q_PROPERTY(int alpha MEMBER m_alpha NOTIFY changed)
  Q_PROPERTY(QStringList alphas READ alphas NOTIFY changed)
  Q_PROPERTY(QString ifShown READ ifShown WRITE setIfShown NOTIFY changed)
  Q_PROPERTY(QString ifNotShown READ ifNotShown WRITE setIfNotShown NOTIFY changed)
  Q_PROPERTY(QString ifAlike READ ifAlike WRITE setIfAlike NOTIFY changed)
  Q_PROPERTY(QString lastDecision MEMBER m_lastDecision NOTIFY changed)
  Q_PROPERTY(QString notYet MEMBER m_notYet NOTIFY changed)
  Q_PROPERTY(bool anyLots MEMBER m_anyLots NOTIFY changed)
  Q_PROPERTY(QString rounds MEMBER m_rounds NOTIFY changed)
  Q_PROPERTY(QString cupMl MEMBER m_cupMl NOTIFY changed)
  Q_PROPERTY(QString spares MEMBER m_spares NOTIFY changed)
  Q_PROPERTY(QString takesHeadline MEMBER m_takesHeadline NOTIFY changed)
  Q_PROPERTY(QString takesLead MEMBER m_takesLead NOTIFY changed)
  Q_PROPERTY(QString panelLine MEMBER m_panelLine NOTIFY changed)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ figure NOTIFY changed)
  Q_PROPERTY(QStringList amounts MEMBER m_amounts NOTIFY changed)
  Q_PROPERTY(QStringList small MEMBER m_small NOTIFY changed)
  Q_PROPERTY(QStringList how MEMBER m_how NOTIFY changed)       ///< how the chances are worked out, and after whom
  Q_PROPERTY(oddglass::ui::Rows* ways READ ways CONSTANT)
  Q_PROPERTY(QString careHeadline MEMBER m_careHeadline NOTIFY changed)
  Q_PROPERTY(QStringList care MEMBER m_care NOTIFY changed)
  Q_PROPERTY(bool careSettled MEMBER m_careSettled NOTIFY changed)
  Q_PROPERTY(QString sealQuestion MEMBER m_sealQuestion NOTIFY changed)
  Q_PROPERTY(QStringList sealRule MEMBER m_sealRule NOTIFY changed)
  Q_PROPERTY(QStringList sealPromises MEMBER m_sealPromises NOTIFY changed)
  Q_PROPERTY(QString sealBinding MEMBER m_sealBinding NOTIFY changed)
  Q_PROPERTY(QString expectation MEMBER m_expectation NOTIFY changed)
  Q_PROPERTY(QString expectationAsked MEMBER m_expectationAsked NOTIFY changed)
  Q_PROPERTY(QString expectationHint READ expectationHint CONSTANT)
  Q_PROPERTY(QString expectationLine MEMBER m_expectationLine NOTIFY changed)
  Q_PROPERTY(QString sealReason MEMBER m_sealReason NOTIFY changed)
  Q_PROPERTY(QString sealMark MEMBER m_sealMark NOTIFY changed)
  Q_PROPERTY(QString afterSeal MEMBER m_afterSeal NOTIFY changed)
  Q_PROPERTY(QString sealMarkLine MEMBER m_sealMarkLine NOTIFY changed)
  Q_PROPERTY(QString sealLimits READ sealLimits CONSTANT)

public:
  DraftModel(const Stage& stage, QObject* parent);
  /// What is offered, in the language of the moment.
  static QStringList questions();
  static QStringList limits();
  static QStringList alphas();
  static QString sealLimits();
  static QString expectationHint();
  SheetPlanModel* sheet() { return &m_sheet; }
  GiveAwaysModel* giveAways() { return &m_giveAways; }
  ServingModel* serving() { return &m_serving; }
  RoutineModel* routine() { return &m_routine; }
  FigureSource figure() const { return m_figure; }
  Rows* lots() { return &m_lots; }
  Rows* tasters() { return &m_tasters; }
  Rows* ways() { return &m_ways; }
  Rows* methods() { return &m_methods; }
  Rows* threeWays() { return &m_threeWays; }
  QString attribute() const { return shown(m_draft.attribute); }
  void setAttribute(const QString& text);
  QString dose() const { return shown(m_draft.dose); }
  void setDose(const QString& text);
  QString title() const { return shown(m_draft.title); }
  QString guestTitle() const { return shown(m_draft.guestTitle); }
  QString ifShown() const { return promise(Outcome::shown); }
  QString ifNotShown() const { return promise(Outcome::notShown); }
  QString ifAlike() const { return promise(Outcome::alike); }
  void setTitle(const QString& text);
  void setGuestTitle(const QString& text);
  void setIfShown(const QString& text) { setPromise(Outcome::shown, text); }
  void setIfNotShown(const QString& text) { setPromise(Outcome::notShown, text); }
  void setIfAlike(const QString& text) { setPromise(Outcome::alike, text); }

  /// Goes on with a draft, or begins a new one when `id` is empty.
  void open(const SessionId& id);
  /// Reads the draft and the shelf again, since drinks and people may have changed meanwhile.
  Q_INVOKABLE void load();
  /// One of `questions`; what only another question has is left out.
  Q_INVOKABLE void chooseQuestion(int index);
  /// Which of the two is expected to have more of it.
  Q_INVOKABLE void chooseExpected(int index);
  /// One of `methods`; from now on it stays, whatever is recommended.
  Q_INVOKABLE void chooseMethod(int row);
  /// Takes the recommended one again, and follows it from now on.
  Q_INVOKABLE void letProgramPick();
  /// One of `threeWays`: leaves the third drink for another day, or keeps all three.
  Q_INVOKABLE void chooseThreeWay(int row);
  Q_INVOKABLE void tickLingers();
  /// Which lot stands in the marked cup; the last choice is either.
  Q_INVOKABLE void chooseMarked(int index);
  Q_INVOKABLE void tickAlsoPrefer();
  Q_INVOKABLE void tickMayHaveNone();
  Q_INVOKABLE void tickStopsEarly();
  Q_INVOKABLE void typeEvenings(const QString& text);
  Q_INVOKABLE void typeWave(const QString& text);
  Q_INVOKABLE void stepEvenings(int by);
  Q_INVOKABLE void stepWave(int by);
  Q_INVOKABLE void tickLot(int row);
  Q_INVOKABLE void tickTaster(int row);
  Q_INVOKABLE void chooseSought(int index);
  Q_INVOKABLE void chooseLimit(int index);
  Q_INVOKABLE void chooseAlpha(int index);
  Q_INVOKABLE void typeRounds(const QString& text);
  Q_INVOKABLE void typeCupMl(const QString& text);
  Q_INVOKABLE void typeSpares(const QString& text);
  Q_INVOKABLE void stepRounds(int by);
  Q_INVOKABLE void stepCupMl(int by);
  Q_INVOKABLE void stepSpares(int by);
  /// How likely the brewer thinks the outcome, 1 to 99; empty: nothing is written.
  Q_INVOKABLE void typeExpectation(const QString& text);
  Q_INVOKABLE void stepExpectation(int by);
  Q_INVOKABLE void takeWay(int row);
  /// Puts what was found about give-aways into the plan, and goes on to the next page.
  Q_INVOKABLE void settleGiveAways();
  Q_INVOKABLE void settleCare(bool settled);
  Q_INVOKABLE void toTakes() { go(Router::Page::Takes); }
  Q_INVOKABLE void toGiveAways() { go(Router::Page::GiveAways); }
  Q_INVOKABLE void toCare() { go(Router::Page::Care); }
  Q_INVOKABLE void toSeal() { go(Router::Page::Seal); }
  Q_INVOKABLE void toShelf() { go(Router::Page::Shelf); }
  Q_INVOKABLE void toPeople() { go(Router::Page::People); }
  Q_INVOKABLE void seal();
  /// To the pour sheet, or to the steps of the routine that hides the key.
  Q_INVOKABLE void toPour();
  Q_INVOKABLE void toPlaces() { go(Router::Page::Places); }
  Q_INVOKABLE void toPaper() { go(Router::Page::Paper); }
  /// Throws the draft away.
  Q_INVOKABLE void discard();

private:
  struct Read;
  static Read look(Cellar& cellar, const SessionId& id);
  static Read read(Cellar& cellar, const SessionId& id);
  static std::string coverageOf(store::Store& store, const session::DraftFacts& facts, const shelf::WordList& words);
  void take(Read read);
  void followWhatWasPicked(const Draft& kept);
  void keep();
  void showAsking();
  void showMethods(const std::optional<planning::Recommendation>& recommendation);
  void showThree(const std::optional<planning::Recommendation>& recommendation);
  void fitToMethod();
  void showLots();
  void showTasters();
  void showTakes(const planning::Amounts& amounts, const planning::Outlook& outlook);
  void showNothing(const QString& why);
  void showSheetTakes(const planning::Amounts& amounts, const planning::SheetOutlook& outlook);
  void showSheetSeal(const std::optional<planning::SheetOutlook>& outlook, const std::string& refusal);
  QString notYet() const;
  void tickSheetLot(LotId lot);
  void showCare(const planning::Amounts& amounts);
  void showSeal(const planning::Outlook& outlook, const std::string& refusal);
  void showSealPage(const words::SealPage& page);
  void showExpectation();
  QString promise(Outcome outcome) const;
  void setPromise(Outcome outcome, const QString& text);
  void type(QString& shownText, const QString& text, int& value, int low, int high, const char* argument);

  Draft m_draft;
  SheetPlanModel m_sheet;
  GiveAwaysModel m_giveAways;
  ServingModel m_serving;
  RoutineModel m_routine;
  session::DraftFacts m_facts;
  std::vector<Lot> m_lotValues;
  std::vector<std::string> m_lotNames;
  std::vector<Taster> m_people;
  std::vector<planning::WayOut> m_wayValues;
  std::vector<Method> m_methodValues;
  std::vector<std::vector<int>> m_threeValues;
  QStringList m_lotChoices, m_outcomeLabels, m_markedChoices;
  QString m_questionHeadline, m_questionLead, m_coverage, m_lotsLabel, m_evenings, m_wave, m_methodNote, m_threeHeadline, m_threeAdvice;
  int m_question = 0, m_expected = -1, m_marked = -1;
  bool m_knownDifference = false, m_namesThing = false, m_mayBeAlike = true, m_asksLiking = false, m_mayAlsoPrefer = false, m_alsoPrefer = false, m_mayHaveNone = false, m_hasMarked = false;
  bool m_mayStopEarly = false, m_stopsEarly = false, m_methodChosen = false, m_lingers = false, m_isThree = false;
  Rows m_lots, m_tasters, m_ways, m_methods, m_threeWays;
  Lane m_lane;
  FigureSource m_figure;
  QStringList m_amounts, m_small, m_how, m_care, m_sealRule, m_sealPromises;
  int m_sought = 0, m_limit = -1, m_alpha = 1;
  bool m_anyLots = true, m_careSettled = false;
  QString m_rounds, m_cupMl, m_spares, m_notYet, m_takesHeadline, m_takesLead, m_panelLine, m_lastDecision;
  QString m_careHeadline, m_sealQuestion, m_sealBinding, m_sealReason, m_sealMark, m_afterSeal, m_sealMarkLine;
  QString m_expectation, m_expectationAsked, m_expectationLine;
};

}  // namespace oddglass::ui
