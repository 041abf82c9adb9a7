#include "blinding/commitment.h"
#include "blinding/draw.h"
#include "blinding/seal_mark.h"
#include "domain/by_hand.h"
#include "domain/flight_form.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/plan_now.h"
#include "session/record.h"
#include "session/steps.h"
#include "store/plan_json.h"
#include "tasting/table.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace oddglass::session {
namespace {

using canon::Json;

std::string entryName(Seq seq) { return "entry " + std::to_string(seq.value); }

// Goes through a record once and notes what does not hold.
class Inspector {
 public:
  explicit Inspector(const SessionRecord& record) : record_(record), isOpen_(record.key.has_value()) {}

  Verification look() {
    lookAtChain();
    if (!record_.log.empty() && bodies_.size() == record_.log.size() && lookAtStates()) {
      for (std::size_t i = 0; i < bodies_.size(); ++i) noteErasure(i);
      lookAtPlan();
      if (isOpen_) {
        lookAtKey();
        lookAtAnswers();
        lookAtRemarks();
        lookAtPours();
        if (!isDrawn(record_.plan.routine)) lookAtFound();
        lookAtPeople();
        if (!record_.open.empty()) lookAtOpen();
      }
      lookAtPromises();
    }
    return result_;
  }

 private:
  // One line per thing looked at; the first place where it fails is kept.
  void start(const std::string& what) { result_.checks.push_back({what, true, {}}); }
  void fail(const std::string& where) {
    Check& check = result_.checks.back();
    if (check.holds) check = {check.what, false, where};
  }

  void lookAtChain() {
    start("chain");
    if (record_.log.empty()) fail("entry 1");
    canon::Digest before{};
    int seq = 0;
    for (const store::LogEntry& entry : record_.log) {
      const std::string name = entryName(entry.seq);
      if (entry.seq.value != ++seq) fail(name);
      try {
        bodies_.push_back(Json::parse(entry.body));
        if (canon::canonical(bodies_.back()) != entry.body || store::Log::hashOf(before, record_.id, entry) != entry.hash) fail(name);
      } catch (const std::exception&) {
        fail(name);
        return;
      }
      before = entry.hash;
      if (entry.event == Event::pourSheetOpened) ++result_.pourSheetOpenings;
    }
  }

  // What the entries say must be something that can be said in that state, under this plan; only then are their bodies read any further.
  bool lookAtStates() {
    start("states");
    State state = State::draft;
    for (const store::LogEntry& entry : record_.log) {
      if (stateAfter(state, entry.event) != entry.after) fail(entryName(entry.seq));
      state = entry.after;
    }
    if (state != record_.state) fail("state");
    const auto impossible = impossibleStep(record_.plan, record_.log, bodies_);
    if (impossible) fail(entryName(*impossible));
    return !impossible;
  }

  void noteErasure(std::size_t i) {
    if (record_.log[i].event != Event::erased) return;
    const int place = bodies_[i].at("place").get<int>();
    // Somebody who sat here and is the host too leaves two entries at once.
    const bool isSamePerson = place == 0 && i > 0 && record_.log[i - 1].event == Event::erased && record_.log[i - 1].at == record_.log[i].at;
    if (erased_.insert(place).second && !isSamePerson) ++result_.erased;
    if (bodies_[i].at("what") == "everything") gone_.insert(place);
  }

  void lookAtPlan() {
    start("plan");
    const Json& first = bodies_.front();
    if (first.value("plan", "") != canon::hex(canon::sha256({canon::bytesOf(record_.planText)}))) fail("plan");
    if (canon::canonical(store::planJson(record_.plan)) != record_.planText || !isPossible(record_.plan)) fail("plan");
    if (first.value("commitment", "") != canon::hex(record_.commitment)) fail("commitment");
    if (blinding::sealMark(record_.commitment) != record_.sealMark) fail("seal mark");
  }

  void lookAtKey() {
    const RecordedKey& key = *record_.key;
    const blinding::KeyContents contents{key.seed, key.salt, key.generator, key.lines, blinding::custodyOf(record_.plan.routine)};
    start("commitment");
    if (!blinding::commitmentHolds(record_.commitment, contents, canon::sha256({canon::bytesOf(record_.planText)}))) fail("commitment");
    start("orders");
    try {
      if (!blinding::reproduces(key.seed, shapeOf(record_.plan), {record_.plan.cups, key.lines})) fail("orders");
    } catch (const Problem&) {
      fail("orders");
    }
  }

  void lookAtAnswers() {
    start("answers");
    std::set<int> seen;
    for (std::size_t i = 0; i < record_.log.size(); ++i) {
      if (record_.log[i].event != Event::answered) continue;
      const Json& body = bodies_[i];
      const Seq seq = record_.log[i].seq;
      const int place = body.value("place", 0);
      const auto in = std::ranges::find(record_.handIns, seq, &RecordedHandIn::seq);
      if (in == record_.handIns.end()) {
        if (!gone_.contains(place)) fail(entryName(seq));
        continue;
      }
      seen.insert(seq.value);
      if (in->place.value != place || in->round.value != body.value("round", 0) || digestOf(*in) != body.value("digest", "")) fail(entryName(seq));
    }
    for (const RecordedHandIn& in : record_.handIns)
      if (!seen.contains(in.seq.value)) fail("answers without " + entryName(in.seq));
    if (const auto impossible = impossibleAnswer(record_, bodies_)) fail(entryName(*impossible));
    lookAtWords();
  }

  static std::string digestOf(const RecordedHandIn& in) {
    Json cells = Json::array();
    for (const RecordedReply& reply : in.replies)
      cells.push_back({reply.item.value, reply.code.value, reply.value ? Json(*reply.value) : Json(canon::hex(reply.textDigest.value_or(canon::Digest{})))});
    return tasting::digestOf(in.salt, canon::canonical(cells));
  }

  void lookAtWords() {
    start("words");
    for (const RecordedHandIn& in : record_.handIns) {
      for (const RecordedReply& reply : in.replies) {
        if (!reply.textDigest) continue;
        const auto words = std::ranges::find_if(in.words, [&](const RecordedWords& each) { return each.item == reply.item && each.code == reply.code; });
        if (words == in.words.end()) {
          if (!erased_.contains(in.place.value)) fail(entryName(in.seq));
        } else if (canon::sha256({words->salt, canon::bytesOf(words->text)}) != *reply.textDigest) {
          fail(entryName(in.seq));
        }
      }
      for (const RecordedWords& words : in.words)
        if (std::ranges::none_of(in.replies, [&](const RecordedReply& reply) { return reply.item == words.item && reply.code == words.code && reply.textDigest; })) fail(entryName(in.seq));
    }
  }

  static const char* aboutOf(Event event) { return event == Event::said ? "said" : event == Event::decided ? "decision" : "reason"; }

  // What stood on somebody's paper in place of a code went with them.
  bool isWrittenBy(Event event, const Json& body) const {
    return event == Event::voided && body.value("reason", "") == nameOf(VoidReason::misread) && body.contains("place") && body.at("place").is_number_integer() &&
           erased_.contains(body.at("place").get<int>());
  }

  void lookAtRemarks() {
    start("remarks");
    std::set<int> seen;
    for (std::size_t i = 0; i < record_.log.size(); ++i) {
      const Event event = record_.log[i].event;
      if (event != Event::said && event != Event::voided && event != Event::broken && event != Event::abandoned && event != Event::decided) continue;
      const Json& body = bodies_[i];
      if (!body.contains("digest") || !body.at("digest").is_string()) continue;
      const auto remark = std::ranges::find(record_.remarks, record_.log[i].seq, &RecordedRemark::seq);
      if (remark == record_.remarks.end()) {
        if (!erased_.contains(0) && !isWrittenBy(event, body)) fail(entryName(record_.log[i].seq));
        continue;
      }
      seen.insert(remark->seq.value);
      if (tasting::digestOf(remark->salt, remark->text) != body.at("digest").get<std::string>() || remark->about != aboutOf(event)) fail(entryName(remark->seq));
    }
    std::set<int> once;
    for (const RecordedRemark& remark : record_.remarks)
      if (!seen.contains(remark.seq.value) || !once.insert(remark.seq.value).second) fail("a remark without " + entryName(remark.seq));
  }

  void lookAtPours() {
    start("poured");
    std::set<int> seen;
    for (std::size_t i = 0; i < record_.log.size(); ++i) {
      if (record_.log[i].event != Event::asPoured) continue;
      const auto& all = record_.key->poured;
      const auto pour = std::ranges::find(all, record_.log[i].seq, &RecordedPour::seq);
      if (pour == all.end()) {
        fail(entryName(record_.log[i].seq));
        continue;
      }
      seen.insert(pour->seq.value);
      const std::string text = canon::canonical({pour->code.value, pour->slot ? Json(pour->slot->value) : Json(nullptr)});
      if (tasting::digestOf(pour->salt, text) != bodies_[i].value("digest", "")) fail(entryName(pour->seq));
    }
    std::set<int> once;
    for (const RecordedPour& pour : record_.key->poured) {
      if (!seen.contains(pour.seq.value) || !once.insert(pour.seq.value).second) fail("a pour without " + entryName(pour.seq));
      const bool isCup = std::ranges::find(record_.plan.cups, pour.code, &Cup::code) != record_.plan.cups.end();
      const bool isLot = !pour.slot || std::ranges::find(record_.plan.lots, *pour.slot, &PlannedLot::slot) != record_.plan.lots.end();
      if (!isCup || !isLot) fail(entryName(pour.seq));
    }
  }

  // What was read off: as it was then, each cup of its flight once, the same lot for the same bottle; a flight that counts was read off and adds up.
  void lookAtFound() {
    start("found");
    std::map<std::pair<Place, Round>, const RecordedFound*> read;
    std::map<int, std::optional<Slot>> bottles;
    for (const RecordedFound& each : record_.key->found) {
      const auto index = static_cast<std::size_t>(each.seq.value - 1);
      const bool isEntry = each.seq.value >= 1 && index < record_.log.size() && record_.log[index].event == Event::found;
      if (!isEntry || !read.emplace(std::pair{each.flight.place, each.flight.round}, &each).second) {
        fail("read off without " + entryName(each.seq));
        continue;
      }
      const Json& body = bodies_[index];
      if (tasting::digestOf(each.salt, foundText(each.flight)) != body.value("digest", "") || body.value("place", 0) != each.flight.place.value ||
          body.value("round", 0) != each.flight.round.value || !areCupsOf(each.flight, bottles))
        fail(entryName(each.seq));
    }
    std::set<std::pair<Place, Round>> aside;
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
      if (record_.log[i].event == Event::voided) aside.insert({Place{bodies_[i].at("place").get<int>()}, Round{bodies_[i].at("round").get<int>()}});
      if (record_.log[i].event == Event::found && std::ranges::find(record_.key->found, record_.log[i].seq, &RecordedFound::seq) == record_.key->found.end()) fail(entryName(record_.log[i].seq));
    }
    if (record_.state != State::revealed) return;
    for (const RecordedHandIn& in : record_.handIns) {
      const auto found = read.find({in.place, in.round});
      if (!aside.contains({in.place, in.round}) && (found == read.end() || whyNotCounted(record_.plan, found->second->flight))) fail(entryName(in.seq));
    }
  }

  bool areCupsOf(const FoundFlight& flight, std::map<int, std::optional<Slot>>& bottles) const {
    std::set<int> positions;
    const int marked = hasMarkedCup(record_.plan) ? 1 : 0;
    const auto hands = pouredByHand(record_.plan.routine, record_.plan.method, record_.plan.expected);
    bool hasAside = false;
    for (const FoundLine& line : flight.lines) {
      if (line.slot && std::ranges::find(record_.plan.lots, *line.slot, &PlannedLot::slot) == record_.plan.lots.end()) return false;
      if (line.code.value == 0) {
        if (hasAside) return false;
        hasAside = true;
        continue;
      }
      const auto cup = std::ranges::find(record_.plan.cups, line.code, &Cup::code);
      if (cup == record_.plan.cups.end() || cup->place != flight.place || cup->round != flight.round || cup->position.value <= marked) return false;
      if (!positions.insert(cup->position.value).second) return false;
      if (cup->bottle > 0 && bottles.emplace(cup->bottle, line.slot).first->second != line.slot) return false;
    }
    return static_cast<int>(positions.size()) == cupsInFlight(record_.plan) - marked && hasAside == (hands && hands->setsOneAside);
  }

  void lookAtPromises() {
    start("promises");
    for (const auto& [outcome, digest] : record_.plan.promiseDigests) {
      const auto promise = std::ranges::find(record_.promises, outcome, &RecordedPromise::outcome);
      if (promise == record_.promises.end()) {
        if (!erased_.contains(0)) fail("promises");
      } else if (tasting::digestOf(promise->salt, promise->text) != digest) {
        fail("promises");
      }
    }
    std::set<Outcome> once;
    for (const RecordedPromise& promise : record_.promises)
      if (!record_.plan.promiseDigests.contains(promise.outcome) || !once.insert(promise.outcome).second) fail("promises");
  }

  // A name may stand only at a place that somebody took under it: never at a loose one, never where everything was forgotten.
  void lookAtPeople() {
    start("people");
    std::map<int, std::string> as;
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
      if (record_.log[i].event == Event::placeTaken) as[bodies_[i].at("place").get<int>()] = bodies_[i].at("as").get<std::string>();
      if (record_.log[i].event == Event::placeFreed) as.erase(bodies_[i].at("place").get<int>());
    }
    std::set<int> places;
    std::set<TasterId> tasters;
    for (const RecordedPerson& person : record_.people) {
      const int place = person.place.value;
      const auto taken = as.find(place);
      if (taken == as.end() || taken->second == nameOf(ShownAs::loose) || erased_.contains(place) || !places.insert(place).second ||
          !tasters.insert(person.taster).second)
        fail("place " + std::to_string(place));
    }
  }

  // Answers with the labels known stand beside the log: by somebody who sat and was not forgotten, to a question about each cup, once for a drink of the plan.
  void lookAtOpen() {
    start("open");
    std::set<int> taken;
    for (std::size_t i = 0; i < bodies_.size(); ++i) {
      if (record_.log[i].event == Event::placeTaken) taken.insert(bodies_[i].at("place").get<int>());
      if (record_.log[i].event == Event::placeFreed) taken.erase(bodies_[i].at("place").get<int>());
    }
    if (record_.state != State::revealed) fail("state");
    std::set<std::tuple<Place, Slot, Item>> once;
    for (const RecordedOpen& each : record_.open) {
      const auto item = std::ranges::find(record_.plan.items, each.item, &SheetItem::item);
      const bool isLot = std::ranges::find(record_.plan.lots, each.slot, &PlannedLot::slot) != record_.plan.lots.end();
      const bool isAsked = item != record_.plan.items.end() && item->perCup && item->low && item->high && each.value >= *item->low && each.value <= *item->high;
      if (!isLot || !isAsked || !taken.contains(each.place.value) || gone_.contains(each.place.value) || !once.insert({each.place, each.slot, each.item}).second)
        fail("place " + std::to_string(each.place.value));
    }
  }

  const SessionRecord& record_;
  bool isOpen_;
  std::vector<Json> bodies_;
  std::set<int> erased_, gone_;
  Verification result_;
};

}  // namespace

bool Verification::holds() const { return std::ranges::all_of(checks, &Check::holds); }

Verification check(const SessionRecord& record) {
  try {
    return Inspector(record).look();
  } catch (const std::exception& error) {
    return {{{"record", false, error.what()}}, 0, 0};
  }
}

Verification verify(store::Store& store, const SessionId& session) { return check(record(store, session)); }

}  // namespace oddglass::session
