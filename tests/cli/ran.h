#pragma once

#include "cli/run.h"
#include "fixed.h"

#include <catch2/catch.hpp>

#include <fstream>
#include <sstream>

namespace oddglass::testing {

/// A number as options and tables take it, with all its digits.
inline std::string number(double value) {
  std::ostringstream text;
  text.precision(17);
  text << value;
  return text.str();
}

/// What a command printed and how it ended.
struct Ran {
  int status = 0;
  std::string out, err;

  /// The one object on stdout.
  cli::Json json() const {
    INFO(out << err);
    REQUIRE(cli::Json::accept(out));
    return cli::Json::parse(out);
  }
  int linesOfError() const { return static_cast<int>(std::count(err.begin(), err.end(), '\n')); }
};

/// The command line with a clock, chance and store of the test's own.
struct Terminal {
  FixedClock clock;
  FixedChance chance;
  Folder folder;
  std::string store = (folder / "cellar.oddglass").string();
  std::vector<std::filesystem::path> demoFolders{};
  std::filesystem::path printer{};   ///< the program with windows

  /// Runs a command; words are parted at blanks, quoted ones go into `more`, which follows.
  Ran operator()(const std::string& words, const std::vector<std::string>& more = {}) {
    std::vector<std::string> arguments{"--store", store};
    std::istringstream parts(words);
    for (std::string word; parts >> word;) arguments.push_back(word);
    arguments.insert(arguments.end(), more.begin(), more.end());
    return exactly(arguments);
  }

  Ran exactly(const std::vector<std::string>& arguments) {
    std::ostringstream out, err;
    words::Voice voice;
    voice.timeOfDay = [](Millis) { return std::string("20:15"); };
    voice.day = [](Millis) { return std::string("2026-03-14"); };
    cli::Surroundings around{clock, chance, out, err, voice, demoFolders, printer};
    const int status = cli::run(arguments, around);
    return {status, out.str(), err.str()};
  }

  /// The JSON of a command that must succeed.
  cli::Json json(const std::string& words, const std::vector<std::string>& more = {}) {
    const Ran ran = (*this)("--json " + words, more);
    INFO(words << '\n' << ran.out << ran.err);
    REQUIRE(ran.status == 0);
    REQUIRE(ran.err.empty());
    return ran.json();
  }

  std::string write(const std::string& name, const std::string& text) {
    std::ofstream(folder / name) << text;
    return (folder / name).string();
  }
};

/// True when a command was refused as bad input: status 2, one line on stderr that holds `named`, with --json the same on stdout.
inline void requireRefused(Terminal& terminal, const std::string& words, const std::string& named, const std::vector<std::string>& more = {}) {
  INFO(words);
  const Ran plain = terminal(words, more);
  INFO(plain.out << plain.err);
  CHECK(plain.status == 2);
  CHECK(plain.out.empty());
  CHECK(plain.linesOfError() == 1);
  CHECK(plain.err.find(named) != std::string::npos);
  const Ran json = terminal("--json " + words, more);
  CHECK(json.status == 2);
  CHECK(json.linesOfError() == 1);
  const cli::Json error = json.json().at("error");
  CHECK(error.at("argument").is_string());
  CHECK_FALSE(error.at("message").get<std::string>().empty());
}

}  // namespace oddglass::testing
