#include "exchange/demo.h"

#include "domain/problem.h"
#include "exchange/plan_file.h"
#include "exchange/take_in.h"
#include "session/card.h"
#include "session/seal.h"
#include "shelf/people.h"
#include "store/together.h"

#include <algorithm>

namespace oddglass::exchange {

namespace {

/// The files evening_1.json, evening_2.json, ... of the folder, in the order of their numbers.
std::vector<std::filesystem::path> evenings(const std::filesystem::path& folder) {
  std::vector<std::filesystem::path> files;
  std::error_code error;
  for (int number = 1;; ++number) {
    const auto file = folder / ("evening_" + std::to_string(number) + ".json");
    if (!std::filesystem::exists(file, error)) return files;
    files.push_back(file);
  }
}

}  // namespace

Demo loadDemo(store::Store& store, Clock& clock, Chance& chance, const std::filesystem::path& folder) {
  std::error_code error;
  if (!std::filesystem::is_directory(folder, error)) throw Problem(Trouble::storeMissing, "demo", {{"file", folder.string()}});
  store::Together together(store);
  Demo demo;
  put(store, clock, folder / "shelf.json");
  for (const auto& evening : evenings(folder))
    for (const SessionId& session : importFile(store, clock, chance, evening, CameFrom::demo).sessions) demo.revealed.push_back(session);
  for (const SessionId& session : importFile(store, clock, chance, folder / "two_years.json", CameFrom::demo).sessions) demo.revealed.push_back(session);
  // Ilse has asked how she tastes; nobody has looked at her card yet.
  const auto people = shelf::people(store);
  const auto asking = std::ranges::find(people, "Ilse", &Taster::name);
  if (asking != people.end()) session::askForCard(store, clock, asking->id);
  for (const char* hands : {"alone.json", "couple.json"})
    for (const SessionId& session : importFile(store, clock, chance, folder / hands, CameFrom::demo).sessions) demo.revealed.push_back(session);
  demo.waiting = planFromFile(store, clock, chance, folder / "plan.json", CameFrom::demo);
  demo.sealMark = session::seal(store, clock, chance, demo.waiting).sealMark;
  together.commit();
  return demo;
}

}  // namespace oddglass::exchange
