#include "cli/run.h"

#include "cli/families.h"
#include "domain/problem.h"
#include "stats/error.h"
#include "words/problems.h"

#include <algorithm>
#include <map>
#include <new>
#include <ostream>

namespace oddglass::cli {
namespace {

/// What is wrong, and with which argument.
struct Wrong {
  std::string argument;
  std::string message;
};

std::string inOneLine(std::string text) {
  std::ranges::replace_if(text, [](unsigned char c) { return c < 0x20 || c == 0x7f; }, ' ');
  while (!text.empty() && text.back() == ' ') text.pop_back();
  return text;
}

/// "dPrime" in the code is "--d-prime" here.
std::string optionOf(const std::string& name) {
  std::string option = "--";
  for (char c : name) {
    if (c >= 'A' && c <= 'Z') option += {'-', static_cast<char>(c - 'A' + 'a')};
    else option += c;
  }
  return option;
}

/// The first word of the parser's message that looks like an argument; the command where there is none.
Wrong wrongIn(const CLI::ParseError& error) {
  const std::string message = inOneLine(error.what());
  for (std::size_t at = 0; at < message.size();) {
    const std::size_t end = std::min(message.find_first_of(" ,:", at), message.size());
    if (message[at] == '-' && end - at > 1) return {message.substr(at, end - at), message};
    at = end + 1;
  }
  return {"COMMAND", message};
}

/// What the rooms below call an argument, as it is written here.
std::string argumentOf(const std::string& name) {
  static const std::map<std::string, std::string> names{{"out", "--out"}, {"store", "--store"}, {"session", "SESSION"}, {"taster", "TASTER"}};
  const auto found = names.find(name);
  return found == names.end() ? name : found->second;
}

/// The sentence, and before it file and line where it does not say them itself.
Wrong wrongIn(const Problem& problem, const words::Voice& voice) {
  const auto value = [&](const char* key) { return problem.values().contains(key) ? problem.values().at(key) : std::string(); };
  Wrong wrong{argumentOf(problem.argument()), words::sentence(voice, problem)};
  const std::string line = "line " + value("line");
  if (!value("line").empty() && wrong.message.find(line) == std::string::npos) wrong.message = value("file") + ", " + line + ": " + wrong.message;
  return wrong;
}

int refuse(Surroundings& around, bool json, Wrong wrong) {
  wrong.message = inOneLine(wrong.message);
  const bool isNamed = wrong.argument.empty() || wrong.message.find(wrong.argument) != std::string::npos;
  around.err << "oddglass-cli: " << (isNamed ? "" : wrong.argument + ": ") << wrong.message << std::endl;
  if (json) around.out << Json{{"error", {{"argument", wrong.argument}, {"message", wrong.message}}}}.dump(-1, ' ', false, Json::error_handler_t::replace) << std::endl;
  return static_cast<int>(Status::badInput);
}

void show(std::ostream& out, const Answer& answer, bool json) {
  if (json) out << answer.json.dump(-1, ' ', false, Json::error_handler_t::replace) << '\n';
  else if (answer.lines.empty()) out << readable(answer.json);
  for (std::size_t i = 0; !json && i < answer.lines.size(); ++i) out << answer.lines[i] << '\n';
  out.flush();
}

/// Does the work; a store that was made for nothing is taken away again.
Answer work(const Command::Work& chosen, Desk& desk) {
  try {
    return chosen(desk);
  } catch (...) {
    desk.takeBackMade();
    throw;
  }
}

constexpr Describe families[]{describeCount, describePower, describeLink, describePositions, describeCritical, describeMultiple, describeProportion, describeDrinks,
                              describeSignal, describeSequential, describeDesign,
                              describeShelf, describeTooEarly, describeWords, describePlan, describeSeal, describeTable, describeReadingOff, describeEnding, describeLooking, describeReport, describePaper, describeKeeping,
                              describePanel, describeLean, describeExpect, describeRoom, describeNoticing, describeCard, describeOpen, describeAlike, describeOrder, describeTrend, describeAges, describeOverTime, describeSideBySide, describeReferences, describeScores, describeProfile, describeRatings,
                              describeRanks, describeChoices, describeRight, describeChecks};

}  // namespace

std::vector<std::filesystem::path> demoFoldersNear(const std::filesystem::path& programFolder) {
  return {programFolder / ".." / ".." / ".." / "demo_sessions", programFolder / ".." / "share" / "oddglass" / "demo_sessions"};
}

int run(const std::vector<std::string>& arguments, Surroundings& around) {
  CLI::App app("Blind tastings for one home brewer, without a window.", "oddglass-cli");
  Command::Work chosen;
  Desk desk(around);
  bool json = false;
  app.add_option("--store", desk.storeOption.typed, "The file that holds everything (usually the one the window uses)")->type_name("FILE");
  app.add_flag("--json", json, "One JSON object instead of a table");
  app.require_subcommand(1);
  for (const Describe describe : families) describe(app, chosen);

  /// Names a command that is none; the parser only says that one is missing.
  const auto requireCommand = [&] {
    for (std::size_t i = 0; i < arguments.size(); ++i) {
      if (arguments[i] == "--store") ++i;
      else if (!arguments[i].starts_with('-')) {
        if (app.get_subcommands([&](const CLI::App* each) { return each->get_name() == arguments[i]; }).empty()) throw Problem(Trouble::unknown, "COMMAND", {{"what", "command"}, {"text", arguments[i]}});
        return;
      }
    }
  };
  const bool wantsJson = std::ranges::find(arguments, "--json") != arguments.end();
  try {
    requireCommand();
    app.parse(std::vector<std::string>(arguments.rbegin(), arguments.rend()));
    const Answer answer = work(chosen, desk);
    show(around.out, answer, json);
    return static_cast<int>(answer.status);
  } catch (const CLI::Success&) {
    around.out << (app.get_subcommands().empty() ? &app : app.get_subcommands().front())->help();
    return static_cast<int>(Status::done);
  } catch (const CLI::ParseError& error) {
    return refuse(around, wantsJson, wrongIn(error));
  } catch (const Problem& problem) {
    return refuse(around, wantsJson, wrongIn(problem, around.voice));
  } catch (const stats::BadInput& bad) {
    return refuse(around, wantsJson, {optionOf(bad.argument()), optionOf(bad.argument()) + ' ' + bad.message() + '.'});
  } catch (const std::bad_alloc&) {
    return refuse(around, wantsJson, {"COMMAND", "The computer has not enough memory for this. Nothing was changed."});
  } catch (const std::exception& error) {
    return refuse(around, wantsJson, wrongIn(Problem(Trouble::storeFailed, "COMMAND", {{"text", error.what()}}), around.voice));
  }
}

}  // namespace oddglass::cli
