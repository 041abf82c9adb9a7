#include "domain/names.h"
#include "session/look.h"
#include "session/record.h"
#include "store/step.h"

#include <algorithm>

namespace oddglass::session {
namespace {

using canon::Json;

std::optional<int> number(const Json& body, const char* key) {
  if (!body.is_object() || !body.contains(key) || !body.at(key).is_number_integer()) return std::nullopt;
  return body.at(key).get<int>();
}

template <class T>
std::optional<T> tagged(const Json& body, const char* key) {
  const auto value = number(body, key);
  return value ? std::optional(T{*value}) : std::nullopt;
}

std::optional<bool> matchesOf(store::Store& store, const SessionId& session) {
  return store::read(store, [&](SQLite::Database& db) -> std::optional<bool> {
    auto row = store::bound(db, "SELECT k.matches FROM key_opened k JOIN session s ON s.id = k.session_id WHERE s.uid = ?", session.text);
    return row.executeStep() ? std::optional(row.getColumn(0).getInt() != 0) : std::nullopt;
  });
}

}  // namespace

std::vector<HistoryLine> history(store::Store& store, const SessionId& session) {
  const SessionRecord record = session::record(store, session);
  const auto matches = matchesOf(store, session);
  std::vector<HistoryLine> lines;
  for (const store::LogEntry& entry : record.log) {
    // What was altered by other means is shown as far as it can be read; `verify` says that it does not check.
    const Json body = Json::parse(entry.body, nullptr, false);
    HistoryLine line;
    line.seq = entry.seq;
    line.at = entry.at;
    line.event = entry.event;
    line.after = entry.after;
    line.place = tagged<Place>(body, "place");
    line.round = tagged<Round>(body, "round");
    line.code = tagged<Code>(body, "code");
    line.byCode = tagged<Code>(body, "by");
    if (entry.event == Event::found && body.is_object() && body.contains("by") && body.at("by").is_string()) line.readBy = named<ReadBy>(body.at("by").get<std::string>());
    line.missing = number(body, "missing");
    line.typedBy = tagged<Place>(body, "typed_by");
    if (body.is_object() && body.contains("go_on") && body.at("go_on").is_boolean()) line.goOn = body.at("go_on").get<bool>();
    if (body.is_object() && body.contains("reason") && body.at("reason").is_string()) line.reason = named<VoidReason>(body.at("reason").get<std::string>());
    if (body.is_object() && body.contains("heard"))
      for (const Json& place : body.at("heard"))
        if (place.is_number_integer()) line.heardBy.push_back({place.get<int>()});
    if (body.is_object() && body.contains("places") && body.at("places").is_array())
      for (const Json& place : body.at("places"))
        if (place.is_number_integer()) line.places.push_back({place.get<int>()});
    line.clockBack = !lines.empty() && entry.at < lines.back().at;
    if (entry.event == Event::revealed || entry.event == Event::broken) line.commitmentHolds = matches;
    const auto remark = std::ranges::find(record.remarks, entry.seq, &RecordedRemark::seq);
    if (remark != record.remarks.end()) line.words = remark->text;
    lines.push_back(std::move(line));
  }
  return lines;
}

}  // namespace oddglass::session
