#include "ui/seat_model.h"

#include "planning/amounts.h"
#include "session/record.h"
#include "shelf/people.h"
#include "tasting/seats.h"
#include "planning/setup_of.h"
#include "ui/voice.h"
#include "words/care.h"

#include <algorithm>

namespace oddglass::ui {

SeatModel::SeatModel(const Stage& stage, QObject* parent) : PageModel(stage, parent) {
  nameFields({"name", "nickname"});
}

void SeatModel::open(int place) {
  m_place = Place{place};
  ask([id = m_stage.current.id()](Cellar& cellar) {
    const Plan plan = session::record(cellar.store(), id).plan;
    Read read{tasting::board(cellar.store(), id), {}, {}, words::guessedAmong(plan), plan.question == Question::notice};
    for (const PlannedLot& lot : plan.lots) read.drinks.push_back(lot.ingredients);
    read.amounts = planning::amountsOf(planning::setupOf(plan));
    return read;
  }, [this](const Read& read) { fill(read); });
}

void SeatModel::fill(const Read& read) {
  const auto& places = read.board.places;
  const auto at = std::find_if(places.begin(), places.end(), [this](const auto& place) { return place.place == m_place; });
  if (at == places.end()) return;
  m_firstTime = at->step == tasting::PlaceStep::empty;
  m_spare = at->isSpare;
  m_iAm = tr("I am place %1").arg(m_place.value);
  m_headline = m_firstTime ? tr("Place %1. Who sits here?").arg(m_place.value)
               : at->who.empty() ? tr("This is for place %1.").arg(m_place.value)
                                 : tr("This is for %1, at place %2.").arg(shown(at->who)).arg(m_place.value);
  m_lead = m_firstTime ? tr("Once, before the first cup.") : tr("Hand it over. Everybody else looks away.");
  m_who = m_heardAbout = m_shownAs = -1;
  m_newName = m_nickname = QString();
  m_ofAge = m_careHeard = m_consents = false;
  m_invited.clear();
  m_names.clear();
  for (const tasting::Invited& person : read.board.invited) {
    if (person.isSeated) continue;
    m_invited.push_back(person);
    m_names << shown(person.name);
  }
  m_names << tr("somebody else");
  if (m_invited.empty()) m_who = 0;
  m_care.clear();
  for (const std::string& line : words::care(voice(), {read.drinks, read.amounts.grams.value_or(0), read.amounts.drinks, read.amounts.drinkGrams, read.isDosed}).all()) m_care << shown(line);
  const words::PlaceQuestions questions = words::placeQuestions(voice(), read.guessedAmong);
  m_ofAgeWords = shown(questions.ofAge);
  m_careWords = shown(questions.careHeard);
  m_consentWords = shown(questions.consent);
  m_fewFriends = shown(questions.fewFriends);
  m_sitOut = shown(questions.sitOut);
  m_shownAsWords = {shown(questions.signedName), shown(questions.nickname), shown(questions.loose)};
  settle();
  emit changed();
  go(Router::Page::HandOver);
}

QString SeatModel::iAmReason() const {
  if (!m_firstTime) return {};
  if (m_who < 0) return tr("Say who sits here.");
  if (!m_ofAge || !m_careHeard || !m_consents) return tr("Tick the three lines first, or sit out; nobody asks why.");
  if (m_shownAs < 0) return tr("Say how you want to be shown.");
  if (m_spare && m_heardAbout < 0) return tr("Say whether you have heard anything about the cups.");
  return {};
}

void SeatModel::sit() {
  if (!m_firstTime) {
    emit seated(m_place.value);
    return;
  }
  tasting::SitDown who;
  who.place = m_place;
  who.as = static_cast<ShownAs>(m_shownAs);
  who.ofAge = m_ofAge;
  who.careHeard = m_careHeard;
  who.consents = m_consents;
  who.heardAboutCups = m_heardAbout == 0;
  const bool isNew = m_who >= static_cast<int>(m_invited.size());
  if (!isNew) who.taster = m_invited[static_cast<std::size_t>(m_who)].taster;
  ask([id = m_stage.current.id(), who, isNew, name = plain(m_newName), nickname = plain(m_nickname)](Cellar& cellar) mutable {
    if (isNew) {
      Taster person;
      person.name = name;
      who.taster = shelf::save(cellar.store(), cellar.chance, person);
    }
    if (who.as == ShownAs::nickname) {
      Taster person = shelf::taster(cellar.store(), who.taster);
      if (nickname.empty() && person.nickname.empty()) throw Problem(Trouble::empty, "nickname");
      if (!nickname.empty() && nickname != person.nickname) {
        person.nickname = nickname;
        shelf::save(cellar.store(), cellar.chance, person);
      }
    }
    tasting::sit(cellar.store(), cellar.clock, id, who);
  }, [this] { emit seated(m_place.value); });
}

}  // namespace oddglass::ui
