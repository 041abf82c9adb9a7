#include "ui/typing_model.h"

#include "tasting/board.h"
#include "tasting/mishaps.h"
#include "ui/cups.h"
#include "ui/voice.h"
#include "words/numbers.h"
#include "words/paper.h"
#include "words/typing.h"

#include <algorithm>

namespace oddglass::ui {
namespace {

QString reasonOf(const tasting::Typist& person) {
  const QString name = shown(person.name);
  if (person.isMaker) return TypingModel::tr("%1 made one of the drinks").arg(name);
  if (person.isPourer) return TypingModel::tr("%1 pours").arg(name);
  return TypingModel::tr("%1 has not locked yet").arg(name);
}

words::TypedQuestion questionOf(const tasting::Flight& flight, const tasting::TypedAsk& ask) {
  std::vector<std::string> codes;
  for (const tasting::FlightCup& cup : flight.cups)
    if (!cup.isMarked) codes.push_back(std::to_string(cup.code.value));
  return words::typedQuestion(voice(), flight.method, flight.attribute, ask.item, words::listed(voice(), codes), static_cast<int>(codes.size()));
}

}  // namespace

TypingModel::TypingModel(const Stage& stage, QObject* parent) : PageModel(stage, parent), m_typed(TypedRow::staticMetaObject, this), m_form(stage, this) {
  nameFields({"value"});
  connect(&stage.router, &Router::pageChanged, this, [this] {
    if (m_stage.router.page() != Router::Page::TypeIn) forget();
  });
  connect(&m_form, &FormModel::taken, this, [this](int flights) {
    m_before = m_form.typist();
    load();
    m_told = tr("Locked from the table: %1.").arg(shown(words::tastings(voice(), flights)));
  });
}

void TypingModel::load() {
  forget();
  ask([id = m_stage.current.id()](Cellar& cellar) { return std::pair(tasting::typists(cellar.store(), id), tasting::board(cellar.store(), id)); },
      [this](const std::pair<std::vector<tasting::Typist>, tasting::Board>& read) {
        QStringList others;
        for (const tasting::Typist& each : read.first) {
          if (!each.mayType()) {
            others << reasonOf(each);
            continue;
          }
          m_typists << shown(each.name);
          m_typistIds.push_back(each.taster);
        }
        m_typists << tr("somebody who neither tastes nor pours, and made none of it");
        m_typistIds.push_back(std::nullopt);
        m_notThese = others.isEmpty() ? QString() : tr("Not these: %1.").arg(others.join(QStringLiteral("; ")));
        for (const tasting::BoardPlace& place : read.second.places) {
          if (place.step != tasting::PlaceStep::waiting && place.step != tasting::PlaceStep::tasting) continue;
          m_places << shown(words::placeLine(voice(), place.place, place.round.value_or(Round{1}), read.second.rounds));
          m_placeNumbers.push_back(place.place);
        }
        // Whoever has typed a sheet in goes on with the next one.
        const auto before = m_before ? std::ranges::find(m_typistIds, *m_before) : m_typistIds.end();
        if (before != m_typistIds.end()) m_typist = static_cast<int>(before - m_typistIds.begin()), m_form.setTypist(*before);
        show();
      });
}

void TypingModel::pickTypist(int typist) {
  m_typist = typist;
  m_form.setTypist(m_typistIds.at(static_cast<std::size_t>(typist)));
  m_told.clear();
  show();
}

void TypingModel::pickPlace(int place) {
  ask([id = m_stage.current.id(), number = m_placeNumbers.at(static_cast<std::size_t>(place))](Cellar& cellar) {
    return std::pair(tasting::nextFlight(cellar.store(), id, number), cellar.chance.bytes<16>());
  }, [this](const std::pair<std::optional<tasting::Flight>, std::array<std::uint8_t, 16>>& read) {
    if (!read.first) return load();
    m_clientId = read.second;
    m_told.clear();
    m_typing.emplace(*read.first, m_stage.current.id());
    show();
  });
}

void TypingModel::show() {
  std::vector<TypedRow> rows;
  if (!m_typing) {
    m_over.clear();
    m_headline = m_typist < 0 ? tr("Who types the sheets in?") : m_places.isEmpty() ? tr("No sheet is waited for.") : tr("Whose sheet is it?");
    m_lead = m_typist < 0 ? tr("Whoever made or pours one of the drinks sees no answers before the table is closed.") : tr("Each sheet is typed in twice, so that a slip is noticed.");
    m_typed.set(rows);
    emit changed();
    return;
  }
  const tasting::Flight& flight = m_typing->flight();
  const QString place = shown(words::placeLine(voice(), flight.place, flight.round, flight.rounds));
  m_over = m_typing->isSecond() ? tr("%1, the second time").arg(place) : place;
  for (std::size_t i = 0; i < m_typing->asks().size(); ++i) {
    const tasting::TypedAsk& each = m_typing->asks()[i];
    TypedRow row;
    row.says = shown(m_typing->shown(i));
    if (row.says.isEmpty()) continue;
    const QString label = shown(questionOf(flight, each).label);
    row.label = each.cup.value > 0 ? tr("%1: %2").arg(codeText(each.cup), label) : label;
    rows.insert(rows.begin(), row);
  }
  if (const tasting::TypedAsk* next = m_typing->next()) {
    const words::TypedQuestion question = questionOf(flight, *next);
    m_headline = next->cup.value > 0 ? tr("%1: %2").arg(codeText(next->cup), shown(question.label)) : shown(question.label);
    m_lead = shown(question.hint);
  } else {
    m_headline = tr("Both times agree.");
    m_lead = tr("Locked, it stays as it is.");
  }
  m_typed.set(rows);
  emit changed();
}

void TypingModel::enter() {
  if (!m_typing || m_typing->isDone()) return;
  try {
    const auto took = m_typing->take(plain(m_line));
    settle();
    m_note = took == tasting::Typing::Took::differs ? tr("The first time something else was typed. Look at the sheet, and type it once more.") : QString();
    m_line.clear();
    show();
  } catch (const Problem& problem) {
    PageModel::fail(problem);
  }
}

void TypingModel::back() {
  if (!m_typing) return;
  m_typing->back();
  m_note.clear();
  m_line.clear();
  show();
}

bool TypingModel::asksACode() const {
  const tasting::TypedAsk* next = m_typing ? m_typing->next() : nullptr;
  return next && m_typing->flight().method != Method::sheet && answerForm(next->item.kind).isCode;
}

void TypingModel::cannotRead() {
  if (!asksACode()) return;
  const tasting::Flight& flight = m_typing->flight();
  ask([id = m_stage.current.id(), place = flight.place, round = flight.round, written = plain(m_line)](Cellar& cellar) {
    tasting::setAside(cellar.store(), cellar.clock, cellar.chance, id, place, round, VoidReason::misread, written);
  }, [this, place = words::placeLine(voice(), flight.place, flight.round, flight.rounds), typist = m_typistIds.at(static_cast<std::size_t>(m_typist))] {
    load();
    m_before = typist;
    m_told = tr("%1 is set aside, and what was written is kept as it stands.").arg(shown(place));
  });
}

void TypingModel::lock() {
  if (!isDone()) return;
  tasting::HandIn in;
  in.place = m_typing->flight().place;
  in.round = m_typing->flight().round;
  in.clientId = m_clientId;
  in.replies = m_typing->replies();
  ask([id = m_stage.current.id(), typist = m_typistIds.at(static_cast<std::size_t>(m_typist)), in](Cellar& cellar) {
    tasting::handInTyped(cellar.store(), cellar.clock, cellar.chance, id, typist, in);
  }, [this, place = words::placeLine(voice(), in.place, in.round, m_typing->flight().rounds), typist = m_typistIds.at(static_cast<std::size_t>(m_typist))] {
    load();
    m_before = typist;
    m_told = tr("%1 is locked.").arg(shown(place));
  });
}

// What the hand-in refuses as a whole, such as two ranks alike, opens the sheet again from its last line.
void TypingModel::fail(const Problem& problem) {
  if (m_typing && m_typing->isDone()) {
    m_typing->back();
    show();
  }
  m_stage.notice.say(sentenceOf(problem));
}

void TypingModel::forget() {
  m_typing.reset();
  m_typists.clear();
  m_places.clear();
  m_typistIds.clear();
  m_placeNumbers.clear();
  m_typist = -1;
  m_before.reset();
  m_line = m_note = m_told = m_over = QString();
  m_typed.set(std::vector<TypedRow>());
  m_form.forget();
  settle();
}

}  // namespace oddglass::ui
