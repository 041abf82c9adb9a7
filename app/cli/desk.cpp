#include "cli/desk.h"

namespace oddglass::cli {

std::filesystem::path Desk::storeFile() const { return storeOption.isGiven() ? std::filesystem::path(storeOption.text()) : store::usualFile(); }

std::unique_ptr<store::Store> Desk::open(store::Access access) { return store::Store::open(storeFile(), access, clock(), chance()); }

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

std::shared_ptr<bool> Command::flag(const std::string& name, const std::string& about) {
  auto given = std::make_shared<bool>(false);
  command_->add_flag(name, *given, about);
  return given;
}

void Command::does(Work work) {
  command_->callback([this_chosen = &chosen_, work = std::move(work)] { *this_chosen = work; });
}

}  // namespace oddglass::cli
