#pragma once
#include <QObject>
#include "ui/alone_model.h"
#include "ui/begin_series_model.h"
#include "ui/beverage_model.h"
#include "ui/board_model.h"
#include "ui/came_out_model.h"
#include "ui/card_model.h"
#include "ui/cups_model.h"
#include "ui/current.h"
#include "ui/draft_model.h"
#include "ui/history_model.h"
#include "ui/keeping_model.h"
#include "ui/key_model.h"
#include "ui/notice.h"
#include "ui/open_round_model.h"
#include "ui/paper_model.h"
#include "ui/over_time_model.h"
#include "ui/people_model.h"
#include "ui/pour_model.h"
#include "ui/preferences.h"
#include "ui/references_model.h"
#include "ui/room_model.h"
#include "ui/router.h"
#include "ui/seat_model.h"
#include "ui/sheet_model.h"
#include "ui/shelf_model.h"
#include "ui/side_by_side_model.h"
#include "ui/table_watch.h"
#include "ui/today_model.h"
#include "ui/typing_model.h"
#include "ui/undo_model.h"
#include "ui/word_model.h"
#include "ui/words_model.h"
#include "ui/worker.h"

#include <QtQml/qqmlregistration.h>

namespace oddglass::ui {

/// Everything that the window is given: where one is, what went wrong, and one view model for each page.
class App : public QObject {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("made by the program")
  Q_PROPERTY(oddglass::ui::Router* router MEMBER m_router CONSTANT)
  Q_PROPERTY(oddglass::ui::Notice* notice MEMBER m_notice CONSTANT)
  Q_PROPERTY(oddglass::ui::Preferences* preferences MEMBER m_preferences CONSTANT)
  Q_PROPERTY(oddglass::ui::Current* current MEMBER m_current CONSTANT)
  Q_PROPERTY(bool working READ isWorking NOTIFY workingChanged)
  Q_PROPERTY(oddglass::ui::TableWatch* table MEMBER m_table CONSTANT)
  Q_PROPERTY(oddglass::ui::UndoModel* undo MEMBER m_undo CONSTANT)
  Q_PROPERTY(oddglass::ui::TodayModel* today MEMBER m_today CONSTANT)
  Q_PROPERTY(oddglass::ui::ShelfModel* shelf MEMBER m_shelf CONSTANT)
  Q_PROPERTY(oddglass::ui::BeverageModel* beverage MEMBER m_beverage CONSTANT)
  Q_PROPERTY(oddglass::ui::DraftModel* draft MEMBER m_draft CONSTANT)
  Q_PROPERTY(oddglass::ui::PourModel* pour MEMBER m_pour CONSTANT)
  Q_PROPERTY(oddglass::ui::AloneModel* alone MEMBER m_alone CONSTANT)
  Q_PROPERTY(oddglass::ui::BoardModel* board MEMBER m_board CONSTANT)
  Q_PROPERTY(oddglass::ui::SeatModel* seat MEMBER m_seat CONSTANT)
  Q_PROPERTY(oddglass::ui::CupsModel* cups MEMBER m_cups CONSTANT)
  Q_PROPERTY(oddglass::ui::SheetModel* sheet MEMBER m_sheet CONSTANT)
  Q_PROPERTY(oddglass::ui::KeyModel* key MEMBER m_key CONSTANT)
  Q_PROPERTY(oddglass::ui::CameOutModel* cameOut MEMBER m_cameOut CONSTANT)
  Q_PROPERTY(oddglass::ui::HistoryModel* history MEMBER m_history CONSTANT)
  Q_PROPERTY(oddglass::ui::RoomModel* room MEMBER m_room CONSTANT)
  Q_PROPERTY(oddglass::ui::OpenRoundModel* openRound MEMBER m_openRound CONSTANT)
  Q_PROPERTY(oddglass::ui::CardModel* card MEMBER m_card CONSTANT)
  Q_PROPERTY(oddglass::ui::PeopleModel* people MEMBER m_people CONSTANT)
  Q_PROPERTY(oddglass::ui::WordsModel* words MEMBER m_words CONSTANT)
  Q_PROPERTY(oddglass::ui::WordModel* word MEMBER m_word CONSTANT)
  Q_PROPERTY(oddglass::ui::PaperModel* paper MEMBER m_paper CONSTANT)
  Q_PROPERTY(oddglass::ui::TypingModel* typeIn MEMBER m_typeIn CONSTANT)
  Q_PROPERTY(oddglass::ui::KeepingModel* keeping MEMBER m_keeping CONSTANT)
  Q_PROPERTY(oddglass::ui::OverTimeModel* overTime MEMBER m_overTime CONSTANT)
  Q_PROPERTY(oddglass::ui::SideBySideModel* sideBySide MEMBER m_sideBySide CONSTANT)
  Q_PROPERTY(oddglass::ui::ReferencesModel* references MEMBER m_references CONSTANT)
  Q_PROPERTY(oddglass::ui::BeginSeriesModel* beginSeries MEMBER m_beginSeries CONSTANT)

public:
  /// The store is opened by `cellar` on the worker's thread. Settings of this machine are kept in the file at `settings`; the folder of the demo is `demo`.
  App(std::unique_ptr<Cellar> cellar, const QString& settings, const QString& demo, QObject* parent = nullptr);
  /// Finishes what was asked of the store before anything that waits for it goes.
  ~App() override;
  /// Reads what there is; a table that was left open comes back at its places.
  void start();
  Router* router() { return m_router; }
  Notice* notice() { return m_notice; }
  Preferences* preferences() { return m_preferences; }
  TableWatch* table() { return m_table; }
  Worker& worker() { return *m_worker; }
  /// True while something takes longer than people wait without a word.
  bool isWorking() const { return m_worker && m_worker->isSlow(); }

signals:
  void workingChanged();

private:
  /// The page that is shown, from the store.
  void readAgain();
  std::unique_ptr<Worker> m_worker;
  Router* m_router;
  Notice* m_notice;
  Preferences* m_preferences;
  Current* m_current;
  TableWatch* m_table;
  UndoModel* m_undo;
  TodayModel* m_today;
  ShelfModel* m_shelf;
  BeverageModel* m_beverage;
  DraftModel* m_draft;
  PourModel* m_pour;
  AloneModel* m_alone;
  BoardModel* m_board;
  SeatModel* m_seat;
  CupsModel* m_cups;
  SheetModel* m_sheet;
  KeyModel* m_key;
  CameOutModel* m_cameOut;
  HistoryModel* m_history;
  RoomModel* m_room;
  OpenRoundModel* m_openRound;
  CardModel* m_card;
  PeopleModel* m_people;
  WordsModel* m_words;
  WordModel* m_word;
  PaperModel* m_paper;
  TypingModel* m_typeIn;
  KeepingModel* m_keeping;
  OverTimeModel* m_overTime;
  BeginSeriesModel* m_beginSeries;
  SideBySideModel* m_sideBySide;
  ReferencesModel* m_references;
};

}  // namespace oddglass::ui
