#include "exchange/take_in.h"

#include "exchange/series_json.h"
#include "exchange/session_json.h"
#include "exchange/shelf_json.h"
#include "store/together.h"

#include <map>

namespace oddglass::exchange {
namespace {

struct InFile {
  Node node;
  std::optional<session::SessionRecord> record;  ///< nothing for a sealed plan
};

std::vector<InFile> sessionsOf(const Node& file) {
  std::vector<InFile> all;
  std::set<SessionId> ids;
  for (const Node& node : file.maybeList("sessions")) {
    all.push_back({node, sessionFrom(node)});
    if (!ids.insert(node.at("id").uid<struct SessionTag>()).second) node.at("id").refuse(Trouble::alreadyThere, {{"text", node.at("id").text(32)}});
  }
  return all;
}

void requireHolds(const InFile& in) {
  for (const session::Check& each : session::check(*in.record).checks)
    if (!each.holds) in.node.refuse(Trouble::doesNotVerify, {{"text", each.what + (each.where.empty() ? "" : ": " + each.where)}, {"what", each.what}, {"where", each.where}});
}

/// Names and nicknames of the people who sat down, from the file's own list.
void nameThem(const Node& file, std::vector<InFile>& sessions) {
  std::map<std::string, Node> tasters;
  for (const Node& each : file.maybeList("tasters")) tasters.emplace(each.at("id").text(32), each);
  for (InFile& in : sessions) {
    if (!in.record) continue;
    const auto entries = in.node.at("people").list();
    for (std::size_t i = 0; i < entries.size(); ++i) {
      const auto found = tasters.find(entries[i].at("taster").text(32));
      if (found == tasters.end()) entries[i].at("taster").refuse(Trouble::brokenReference, {{"text", "this file has no taster " + entries[i].at("taster").text(32)}});
      in.record->people[i].name = found->second.at("name").text(100);
      if (const auto nickname = found->second.maybe("nickname")) in.record->people[i].nickname = nickname->text(60);
    }
  }
}

}  // namespace

Brought put(store::Store& store, Clock& clock, const std::filesystem::path& path) {
  const Document document = readDocument(path);
  const Node file(document);
  requireForm(file);
  for (const char* key : {"sessions", "series", "plan"})
    if (file.has(key) && !file.at(key).json().empty())
      file.at(key).refuse(Trouble::notAChoice, {{"text", key}, {"choices", "beverages, lots, notes, tasters, words"}});
  Brought brought;
  store::Together together(store);
  bringShelf(store, clock, file, brought);
  together.commit();
  return brought;
}

Brought importFile(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& path, CameFrom as) {
  const Document document = readDocument(path);
  const Node file(document);
  requireForm(file);
  requireShelf(file);
  requireSeries(file);
  auto sessions = sessionsOf(file);
  nameThem(file, sessions);
  for (const InFile& in : sessions)
    if (in.record) requireHolds(in);

  Brought brought;
  store::Together together(store);
  bringShelf(store, clock, file, brought);
  for (InFile& in : sessions) {
    if (!in.record) {
      brought.leftOut.push_back(in.node.at("id").uid<struct SessionTag>());
      continue;
    }
    in.record->cameFrom = as;
    try {
      session::insertRecord(store, clock, chance, *in.record);
    } catch (const Problem& problem) {
      if (problem.trouble() == Trouble::diskFull || problem.trouble() == Trouble::storeReadOnly || problem.trouble() == Trouble::storeInUse) throw;
      auto values = problem.values();
      values.emplace("text", in.record->title);
      // What the store's own guards refuse is a record that cannot have come about.
      in.node.refuse(problem.trouble() == Trouble::storeFailed ? Trouble::brokenReference : problem.trouble(), values);
    }
    brought.sessions.push_back(in.record->id);
  }
  bringSeries(store, clock, file, brought);
  together.commit();
  return brought;
}

std::vector<CheckedSession> verifyFile(const std::filesystem::path& path) {
  const Document document = readDocument(path);
  const Node file(document);
  requireForm(file);
  requireShelf(file);
  requireSeries(file);
  std::vector<CheckedSession> checked;
  for (const InFile& in : sessionsOf(file)) {
    CheckedSession session{in.node.at("id").uid<struct SessionTag>(), in.node.at("title").text(200), !in.record, {}};
    if (in.record) session.found = session::check(*in.record);
    checked.push_back(std::move(session));
  }
  return checked;
}

}  // namespace oddglass::exchange
