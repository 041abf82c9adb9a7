#include "ui/app.h"

namespace oddglass::ui {

App::App(std::unique_ptr<Cellar> cellar, const QString& settings, const QString& demo, QObject* parent)
    : QObject(parent),
      m_worker(std::make_unique<Worker>(std::move(cellar))),
      m_router(new Router(this)),
      m_notice(new Notice(this)),
      m_preferences(new Preferences(settings, this)),
      m_current(new Current(this)) {
  const Stage stage{*m_worker, *m_router, *m_notice, *m_current};
  m_table = new TableWatch(stage, this);
  m_undo = new UndoModel(stage, this);
  m_today = new TodayModel(stage, demo, this);
  m_shelf = new ShelfModel(stage, this);
  m_beverage = new BeverageModel(stage, this);
  m_draft = new DraftModel(stage, this);
  m_pour = new PourModel(stage, this);
  m_alone = new AloneModel(stage, this);
  m_board = new BoardModel(stage, this);
  m_seat = new SeatModel(stage, this);
  m_cups = new CupsModel(stage, this);
  m_sheet = new SheetModel(stage, this);
  m_key = new KeyModel(stage, this);
  m_cameOut = new CameOutModel(stage, settings, this);
  m_history = new HistoryModel(stage, this);
  m_room = new RoomModel(stage, this);
  m_openRound = new OpenRoundModel(stage, this);
  m_card = new CardModel(stage, this);
  m_people = new PeopleModel(stage, this);
  m_words = new WordsModel(stage, this);
  m_word = new WordModel(stage, this);
  m_paper = new PaperModel(stage, settings, this);
  m_typeIn = new TypingModel(stage, this);
  m_keeping = new KeepingModel(stage, this);
  m_overTime = new OverTimeModel(stage, settings, this);
  m_beginSeries = new BeginSeriesModel(stage, this);
  m_sideBySide = new SideBySideModel(stage, this);
  m_references = new ReferencesModel(stage, this);

  connect(m_worker.get(), &Worker::slowChanged, this, &App::workingChanged);
  for (PageModel* changing : {static_cast<PageModel*>(m_beverage), static_cast<PageModel*>(m_people), static_cast<PageModel*>(m_word)})
    connect(changing, &PageModel::shelfChanged, m_undo, &UndoModel::look);
  connect(m_people, &PeopleModel::forgotten, m_undo, &UndoModel::dismiss);
  connect(m_undo, &UndoModel::takenBack, this, &App::readAgain);
  connect(m_today, &TodayModel::interrupted, m_board, &BoardModel::goOnAfter);
  connect(m_preferences, &Preferences::spokenChanged, m_keeping, &KeepingModel::sayAgain);
  connect(m_preferences, &Preferences::spokenChanged, m_draft, &DraftModel::load);
  connect(m_preferences, &Preferences::spokenChanged, m_beverage, &BeverageModel::sayAgain);
  connect(m_preferences, &Preferences::spokenChanged, m_word, &WordModel::readAgain);
  connect(m_today, &TodayModel::planRequested, m_draft, &DraftModel::open);
  connect(m_room, &RoomModel::planRequested, m_draft, &DraftModel::open);
  connect(m_people, &PeopleModel::cardRequested, m_card, &CardModel::open);
  connect(m_overTime, &OverTimeModel::planRequested, m_draft, &DraftModel::open);
  connect(m_sideBySide, &SideBySideModel::planRequested, m_draft, &DraftModel::open);
  connect(m_beverage, &BeverageModel::sideBySideRequested, m_sideBySide, &SideBySideModel::open);
  connect(m_references, &ReferencesModel::planRequested, m_draft, &DraftModel::open);
  connect(m_references, &ReferencesModel::beverageRequested, m_beverage, &BeverageModel::open);
  connect(m_references, &ReferencesModel::newReferenceRequested, m_beverage, &BeverageModel::openNewReference);
  connect(m_beginSeries, &BeginSeriesModel::begun, m_overTime, &OverTimeModel::open);
  connect(m_shelf, &ShelfModel::beverageRequested, m_beverage, &BeverageModel::open);
  connect(m_shelf, &ShelfModel::newBeverageRequested, m_beverage, &BeverageModel::openNew);
  connect(m_words, &WordsModel::wordRequested, m_word, &WordModel::open);
  connect(m_words, &WordsModel::newWordRequested, m_word, &WordModel::openNew);
  connect(m_board, &BoardModel::seatRequested, m_seat, &SeatModel::open);
  connect(m_pour, &PourModel::paperRequested, m_paper, &PaperModel::openForPourer);
  connect(m_seat, &SeatModel::seated, m_cups, &CupsModel::open);
  connect(m_cups, &CupsModel::sheetRequested, m_sheet, &SheetModel::open);
  connect(m_sheet, &SheetModel::locked, m_cups, &CupsModel::showLocked);
}

App::~App() { m_worker.reset(); }

void App::readAgain() {
  switch (m_router->page()) {
    case Router::Page::Shelf: return m_shelf->load();
    case Router::Page::Beverage: return m_beverage->readAgain();
    case Router::Page::People: return m_people->load();
    case Router::Page::Words: return m_words->load();
    case Router::Page::Word: return m_word->readAgain();
    case Router::Page::References: return m_references->load();
    default: return;
  }
}

void App::start() { m_today->resume(); }

}  // namespace oddglass::ui
