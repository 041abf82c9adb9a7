#pragma once

#include "cli/answer.h"
#include "cli/given.h"
#include "domain/chance.h"
#include "domain/uid.h"
#include "store/store.h"
#include "words/voice.h"

#include <CLI/CLI.hpp>

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <memory>

namespace oddglass::cli {

/// All that the command line takes from outside; tests pass their own.
struct Surroundings {
  Clock& clock;
  Chance& chance;
  std::ostream& out;
  std::ostream& err;
  words::Voice voice;
  std::vector<std::filesystem::path> demoFolders;  ///< where the demo may lie, the likeliest first
  std::filesystem::path printer{};                 ///< the program with windows, which prints
};

/// What a command works with: the surroundings and the store that was named.
class Desk {
 public:
  explicit Desk(Surroundings& around) : around_(around) {}

  Clock& clock() { return around_.clock; }
  Chance& chance() { return around_.chance; }
  const words::Voice& voice() const { return around_.voice; }
  const std::vector<std::filesystem::path>& demoFolders() const { return around_.demoFolders; }
  const std::filesystem::path& printer() const { return around_.printer; }

  /// The file named with --store, or the usual one.
  std::filesystem::path storeFile() const;
  /// Opens it to read, also while a window is open. Problem storeMissing where there is none.
  std::unique_ptr<store::Store> toRead();
  /// Opens it to write; refused while a window is open. Problem storeMissing where there is none.
  std::unique_ptr<store::Store> toWrite();
  /// The same, and makes it where there is none.
  std::unique_ptr<store::Store> toWriteOrMake();
  /// Takes away a store that was made for a request that came to nothing. Nothing may have it open.
  void takeBackMade() noexcept;

  Given storeOption{"--store", {}};

 private:
  Surroundings& around_;
  bool hasMade_ = false;
};

/// The start of an id as typed, in lower case as ids are written. Problem empty.
std::string idStart(const Given& given);

/// The session whose id begins as typed. Problems empty, unknown, ambiguous.
SessionId sessionOf(store::Store& store, const Given& given);

/// The taster of this name or id. Problems empty, unknown, ambiguous.
TasterId tasterOf(store::Store& store, const Given& given);

/// A command while it is being described: its options, and what it does.
class Command {
 public:
  using Work = std::function<Answer(Desk&)>;

  /// `chosen` is set to the work of the command that was typed.
  Command(CLI::App& app, Work& chosen, const std::string& name, const std::string& about);

  /// An option with a value, such as "--trials", and the word for its value in the help; or an argument such as "SESSION". Read when the work is done.
  std::shared_ptr<Given> option(const std::string& name, const std::string& value, const std::string& about);
  std::shared_ptr<Given> argument(const std::string& name, const std::string& about);
  std::shared_ptr<std::vector<std::string>> arguments(const std::string& name, const std::string& about);
  /// An option that may be given several times.
  std::shared_ptr<std::vector<std::string>> options(const std::string& name, const std::string& value, const std::string& about);
  std::shared_ptr<bool> flag(const std::string& name, const std::string& about);

  void does(Work work);

 private:
  CLI::App* command_;
  Work& chosen_;
};

/// A family of commands describes itself; one small file each.
using Describe = void (*)(CLI::App& app, Command::Work& chosen);

}  // namespace oddglass::cli
