#include "cli/desk.h"

#include "domain/problem.h"
#include "session/look.h"
#include "shelf/people.h"

#include <algorithm>

namespace oddglass::cli {

std::filesystem::path Desk::storeFile() const { return storeOption.isGiven() ? std::filesystem::path(storeOption.text()) : store::usualFile(); }

std::unique_ptr<store::Store> Desk::toRead() { return store::Store::open(storeFile(), store::Access::read, clock(), chance()); }

std::unique_ptr<store::Store> Desk::toWrite() {
  std::error_code error;
  if (!std::filesystem::exists(storeFile(), error)) throw Problem(Trouble::storeMissing, "store", {{"file", storeFile().string()}});
  return store::Store::open(storeFile(), store::Access::write, clock(), chance());
}

std::unique_ptr<store::Store> Desk::toWriteOrMake() {
  std::error_code error;
  hasMade_ = !std::filesystem::exists(storeFile(), error);
  return store::Store::open(storeFile(), store::Access::write, clock(), chance());
}

void Desk::takeBackMade() noexcept {
  std::error_code error;
  if (!hasMade_) return;
  for (const char* tail : {"", "-wal", "-shm"}) std::filesystem::remove(storeFile().string() + tail, error);
}

std::string idStart(const Given& given) {
  std::string start = given.text();
  std::ranges::transform(start, start.begin(), [](char c) { return c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c; });
  return start;
}

SessionId sessionOf(store::Store& store, const Given& given) { return session::sessionNamed(store, idStart(given)); }

TasterId tasterOf(store::Store& store, const Given& given) {
  return looksLikeUid(given.text()) ? shelf::taster(store, {given.text()}).id : shelf::tasterNamed(store, given.text()).id;
}

Command::Command(CLI::App& app, Work& chosen, const std::string& name, const std::string& about)
    : command_(app.add_subcommand(name, about)), chosen_(chosen) {
  command_->fallthrough();
}

std::shared_ptr<Given> Command::option(const std::string& name, const std::string& value, const std::string& about) {
  auto given = std::make_shared<Given>(Given{name, {}});
  command_->add_option(name, given->typed, about)->type_name(value);
  return given;
}

std::shared_ptr<Given> Command::argument(const std::string& name, const std::string& about) {
  auto given = std::make_shared<Given>(Given{name, {}});
  command_->add_option(name, given->typed, about)->type_name("");
  return given;
}

std::shared_ptr<std::vector<std::string>> Command::arguments(const std::string& name, const std::string& about) {
  auto given = std::make_shared<std::vector<std::string>>();
  command_->add_option(name, *given, about)->type_name("");
  return given;
}

std::shared_ptr<std::vector<std::string>> Command::options(const std::string& name, const std::string& value, const std::string& about) {
  auto given = std::make_shared<std::vector<std::string>>();
  command_->add_option(name, *given, about)->type_name(value)->allow_extra_args(false);
  return given;
}

std::shared_ptr<bool> Command::flag(const std::string& name, const std::string& about) {
  auto given = std::make_shared<bool>(false);
  command_->add_flag(name, *given, about);
  return given;
}

void Command::does(Work work) {
  command_->callback([this_chosen = &chosen_, work = std::move(work)] { *this_chosen = work; });
}

}  // namespace oddglass::cli
