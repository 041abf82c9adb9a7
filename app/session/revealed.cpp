#include "blinding/stream.h"
#include "domain/by_hand.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/choice_reply.h"
#include "session/look.h"
#include "session/record.h"
#include "store/step.h"

#include <algorithm>
#include <map>
#include <set>
#include <stdexcept>

namespace oddglass::session {
namespace {

using canon::Json;

std::string letters(int index) {
  std::string text;
  for (int n = index; n >= 0; n = n / 26 - 1) text.insert(text.begin(), static_cast<char>('A' + n % 26));
  return text;
}

// A letter for every place, dealt by a stream of its own, so that letters do not follow the order of arrival and never change afterwards.
std::map<Place, std::string> lettersOf(const SessionRecord& record) {
  blinding::Stream names(record.key->seed, blinding::StreamName::names);
  std::vector<int> order;
  for (int place = 1; place <= record.plan.places; ++place) order.push_back(place - 1);
  names.shuffle(order);
  std::map<Place, std::string> all;
  for (int place = 1; place <= record.plan.places; ++place) all[{place}] = letters(order[static_cast<std::size_t>(place - 1)]);
  return all;
}

// Goes through a record's log and gathers what findings are worked out from.
class Reader {
 public:
  Reader(const SessionRecord& record, const Verification& verification) : record_(record), verification_(verification) {
    for (const auto& [code, slot] : record.key->lines) drawn_[code] = slot;
    for (const RecordedPour& pour : record.key->poured) really_[pour.code] = pour.slot;
    for (const RecordedFound& each : record.key->found)
      for (const auto& [code, slot] : linesOf(record.plan, each.flight)) found_[code] = slot;
  }

  RevealedSession read() {
    result_.id = record_.id;
    result_.title = record_.title;
    result_.cameFrom = record_.cameFrom;
    result_.state = record_.state;
    result_.plan = record_.plan;
    result_.commitment = canon::hex(record_.commitment);
    result_.sealMark = record_.sealMark;
    for (const RecordedPromise& each : record_.promises) result_.promises[each.outcome] = each.text;
    for (const store::LogEntry& entry : record_.log) note(entry, Json::parse(entry.body));
    namePeople();
    for (ShownPerson& person : result_.people) {
      if (person.erased) continue;
      for (int round = 1; round <= lastRound_; ++round) {
        const RevealedFlight flight = flightOf(person.place, {round});
        if (person.isMaker)
          result_.makers.emplace_back(flight);
        else
          result_.panel.emplace_back(flight);
      }
    }
    for (const Check& each : verification_.checks)
      if (each.what == "commitment") result_.commitmentHolds = each.holds;
    result_.pourSheetOpenings = verification_.pourSheetOpenings;
    return result_;
  }

 private:
  void note(const store::LogEntry& entry, const Json& body) {
    LoggedEvent event{entry.seq, entry.at, entry.event, std::nullopt, std::nullopt};
    if (body.contains("place")) event.place = Place{body.at("place").get<int>()};
    if (body.contains("round")) event.round = Round{body.at("round").get<int>()};
    result_.log.push_back(event);
    switch (entry.event) {
      case Event::sealed: result_.sealedAt = entry.at; break;
      case Event::revealed:
      case Event::broken: result_.revealedAt = entry.at; break;
      case Event::placeTaken:
        result_.people.push_back({*event.place, named<ShownAs>(body.at("as").get<std::string>()).value_or(ShownAs::loose), {}, body.at("maker").get<bool>(),
                                  false, event.place->value > record_.plan.places - record_.plan.spares, false});
        break;
      case Event::placeLeft: person(*event.place).left = true; break;
      case Event::placeFreed: free(*event.place); break;
      case Event::judged: {
        const bool goOn = body.at("go_on").get<bool>();
        result_.log.back().goOn = goOn;
        if (!goOn) lastRound_ = event.round->value;
        break;
      }
      case Event::spilled: replaced_[{body.at("code").get<int>()}] = {body.at("by").get<int>()}; break;
      case Event::voided: voided_[{*event.place, *event.round}] = named<VoidReason>(body.at("reason").get<std::string>()).value_or(VoidReason::other); break;
      case Event::said: said(entry, body); break;
      case Event::decided: result_.decision = remark(entry.seq); break;
      case Event::erased:
        if (event.place->value > 0 && body.at("what") == "everything") {
          ++result_.erasedPeople;
          person(*event.place).erased = true;
        }
        break;
      case Event::found:
        result_.log.back().readBy = named<ReadBy>(body.at("by").get<std::string>());
        if (result_.log.back().readBy) result_.readBy.insert(*result_.log.back().readBy);
        break;
      case Event::answered: typedIn(entry.seq, body); break;
      case Event::pourSheetOpened:
      case Event::poured:
      case Event::asPoured:
      case Event::matsSwapped:
      case Event::opened:
      case Event::began:
      case Event::looked:
      case Event::closed:
      case Event::abandoned: break;
    }
  }

  void typedIn(Seq seq, const Json& body) {
    const auto in = std::ranges::find(record_.handIns, seq, &RecordedHandIn::seq);
    if (in == record_.handIns.end()) return;
    result_.typedIn.fromPaper += in->via == "paper";
    result_.typedIn.fromFile += in->via == "file";
    if (!body.contains("typed_by")) return;
    ++(body.at("typed_by").get<int>() > 0 ? result_.typedIn.byTasters : result_.typedIn.byOthers);
  }

  ShownPerson& person(Place place) {
    const auto found = std::ranges::find(result_.people, place, &ShownPerson::place);
    if (found == result_.people.end()) throw Problem(Trouble::storeDamaged, "log");
    return *found;
  }

  // Whoever sits down there next has heard nothing of what was said before to that place alone.
  void free(Place place) {
    std::erase_if(result_.people, [&](const ShownPerson& each) { return each.place == place; });
    std::erase_if(result_.said, [&](const SaidAloud& each) { return each.heardBy == std::set{place}; });
    for (SaidAloud& each : result_.said) each.heardBy.erase(place);
  }

  std::string remark(Seq seq) const {
    const auto found = std::ranges::find(record_.remarks, seq, &RecordedRemark::seq);
    return found == record_.remarks.end() ? std::string() : found->text;
  }

  void said(const store::LogEntry& entry, const Json& body) {
    SaidAloud aloud{entry.seq, entry.at, {}, remark(entry.seq)};
    for (const Json& place : body.at("heard")) aloud.heardBy.insert({place.get<int>()});
    result_.said.push_back(std::move(aloud));
  }

  void namePeople() {
    const auto letter = lettersOf(record_);
    for (ShownPerson& each : result_.people) {
      const auto known = std::ranges::find(record_.people, each.place, &RecordedPerson::place);
      if (known != record_.people.end() && each.as == ShownAs::signedName) each.shown = known->name;
      if (known != record_.people.end() && each.as == ShownAs::nickname) each.shown = known->nickname;
      if (each.shown.empty()) each.shown = letter.at(each.place);
    }
  }

  RevealedFlight flightOf(Place place, Round round) const {
    RevealedFlight flight;
    flight.place = place;
    flight.round = round;
    std::vector<Code> codes;
    for (const Cup& cup : record_.plan.cups) {
      if (cup.place != place || cup.round != round || cup.spare != 0) continue;
      Code code = cup.code;
      // A cup has nine spare codes at most; more steps are an altered log that goes in circles.
      int steps = 0;
      for (auto next = replaced_.find(code); next != replaced_.end() && steps < 9; next = replaced_.find(code), ++steps) code = next->second;
      codes.push_back(code);
      if (!isDrawn(record_.plan.routine)) {
        const auto line = found_.find(code);
        flight.poured.push_back(line == found_.end() ? std::nullopt : line->second);
        continue;
      }
      flight.drawn.push_back(drawn_.at(cup.code));
      const auto said = really_.find(code);
      flight.poured.push_back(said == really_.end() ? std::optional(drawn_.at(code)) : said->second);
    }
    // What was found is what was poured; where a cup could not be read nothing is said of the flight.
    if (!isDrawn(record_.plan.routine) && std::ranges::all_of(flight.poured, [](const auto& each) { return each.has_value(); }))
      for (const auto& each : flight.poured) flight.drawn.push_back(*each);
    if (const auto aside = voided_.find({place, round}); aside != voided_.end()) flight.voided = aside->second;
    const auto in = std::ranges::find_if(record_.handIns, [&](const RecordedHandIn& each) { return each.place == place && each.round == round; });
    if (in != record_.handIns.end()) answer(flight, *in, codes);
    return flight;
  }

  void answer(RevealedFlight& flight, const RecordedHandIn& in, const std::vector<Code>& codes) const {
    flight.lockedAt = in.seq;
    flight.lockedTime = in.at;
    if (record_.plan.sheet) return sheet(flight, in, codes);
    for (const RecordedReply& reply : in.replies)
      if (reply.value) addReply(flight, record_.plan, reply.item, *reply.value, codes);
    for (const RecordedWords& words : in.words) flight.words += (flight.words.empty() ? "" : " ") + words.text;
  }

  void sheet(RevealedFlight& flight, const RecordedHandIn& in, const std::vector<Code>& codes) const {
    for (const RecordedReply& reply : in.replies) {
      SheetReply said{reply.item, std::nullopt, reply.value, {}};
      const auto at = std::ranges::find(codes, reply.code);
      if (at != codes.end()) said.cup = Position{static_cast<int>(at - codes.begin()) + 1};
      const auto words = std::ranges::find_if(in.words, [&](const RecordedWords& each) { return each.item == reply.item && each.code == reply.code; });
      if (words != in.words.end()) said.words = words->text;
      flight.replies.push_back(std::move(said));
    }
  }

  const SessionRecord& record_;
  const Verification& verification_;
  RevealedSession result_;
  std::map<Code, Slot> drawn_;
  std::map<Code, std::optional<Slot>> really_;
  std::map<Code, std::optional<Slot>> found_;
  std::map<Code, Code> replaced_;
  std::map<std::pair<Place, Round>, VoidReason> voided_;
  int lastRound_ = record_.plan.rounds;   ///< rounds after a *stop* were never to be tasted
};

}  // namespace

namespace {

// An erased person, or a loose one, has no link to a name and is not among them.
SatBefore satBefore(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) {
    auto row = store::bound(db, R"sql(
      SELECT coalesce(sum(NOT t.is_maker), 0), coalesce(sum(t.is_maker), 0)
        FROM session s JOIN log b ON b.session_id = s.id AND b.seq = 1 JOIN place_person p ON p.session_id = s.id
        JOIN place_taken t ON t.session_id = p.session_id AND t.place = p.place
       WHERE s.uid = ?1 AND EXISTS (SELECT 1 FROM place_person q JOIN hand_in h ON h.session_id = q.session_id AND h.place = q.place
                                      JOIN log e ON e.session_id = q.session_id AND e.seq = 1
                                     WHERE q.taster_id = p.taster_id AND q.session_id <> s.id AND (e.at, q.session_id) < (b.at, s.id)))sql", session.text);
    row.executeStep();
    return SatBefore{row.getColumn(0).getInt(), row.getColumn(1).getInt()};
  });
}

}  // namespace

RevealedSession revealed(store::Store& store, const SessionId& session) {
  const SessionRecord record = session::record(store, session);
  if (!record.key) throw Problem(Trouble::stillSealed, "session");
  // A store that was altered by other means may say anything: the rest is shown, not trusted; what cannot be read is a damaged store.
  const Verification verification = check(record);
  try {
    RevealedSession read = Reader(record, verification).read();
    if (read.cameFrom != CameFrom::import) read.satBefore = satBefore(store, session);
    return read;
  } catch (const Json::exception& error) {
    throw Problem(Trouble::storeDamaged, "log", {{"text", error.what()}});
  } catch (const std::out_of_range& error) {
    throw Problem(Trouble::storeDamaged, "key", {{"text", error.what()}});
  }
}

}  // namespace oddglass::session
