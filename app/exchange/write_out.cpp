#include "exchange/write_out.h"

#include "domain/problem.h"
#include "exchange/file_out.h"
#include "exchange/series_json.h"
#include "exchange/session_json.h"
#include "exchange/shelf_json.h"
#include "session/look.h"
#include "session/record.h"
#include "shelf/people.h"

namespace oddglass::exchange {
namespace {

/// How somebody at a place asked to be shown, as the log says.
ShownAs shownAs(const session::SessionRecord& record, Place place) {
  for (const auto& entry : record.log) {
    if (entry.event != Event::placeTaken) continue;
    const auto body = canon::Json::parse(entry.body);
    if (body.value("place", 0) == place.value) return named<ShownAs>(body.value("as", "")).value_or(ShownAs::loose);
  }
  return ShownAs::loose;
}

/// The people of one session as they asked to be shown: a nickname goes out in place of the name.
std::map<TasterId, Taster> peopleOf(const session::SessionRecord& record) {
  std::map<TasterId, Taster> people;
  for (const auto& person : record.people) {
    const bool byNickname = shownAs(record, person.place) == ShownAs::nickname && !person.nickname.empty();
    people[person.taster] = {person.taster, byNickname ? person.nickname : person.name, byNickname ? person.nickname : "", false, false};
  }
  return people;
}

std::filesystem::path writeJson(const canon::Json& json, const std::filesystem::path& folder, const std::string& name) {
  const auto file = folder / name;
  writeWhole(file, json.dump(1) + '\n');
  return file;
}

}  // namespace

canon::Json interchange(store::Store& store, Clock& clock, const SessionId& session) {
  const auto record = session::record(store, session);
  ShelfPart part;
  for (const PlannedLot& lot : record.plan.lots) part.lots.insert(lot.lot);
  const canon::Json json = sessionJson(record);
  if (json.contains("people")) part.people = peopleOf(record);
  canon::Json file = heading(clock);
  writeShelf(store, part, file);
  file["sessions"] = canon::Json::array({json});
  return file;
}

canon::Json interchangeOfAll(store::Store& store, Clock& clock) {
  canon::Json file = heading(clock);
  writeShelf(store, {.everything = true, .lots = {}, .people = {}}, file);
  file["sessions"] = canon::Json::array();
  for (const auto& line : session::sessions(store))
    if (line.state != State::draft) file["sessions"].push_back(sessionJson(session::record(store, line.id)));
  writeSeries(store, file);
  return file;
}

std::filesystem::path exportJson(store::Store& store, Clock& clock, const SessionId& session, const std::filesystem::path& folder) {
  return writeJson(interchange(store, clock, session), folder, "oddglass-" + session.text.substr(0, 8) + ".json");
}

std::filesystem::path exportAllJson(store::Store& store, Clock& clock, const std::filesystem::path& folder) {
  return writeJson(interchangeOfAll(store, clock), folder, "oddglass-all.json");
}

}  // namespace oddglass::exchange
