#include "ui/print_command.h"

#include "domain/problem.h"
#include "session/look.h"
#include "session/sittings.h"
#include "shelf/series.h"
#include "ui/printing.h"
#include "words/numbers.h"
#include "words/problems.h"

#include <QCommandLineParser>

#include <algorithm>
#include <cmath>
#include <ostream>

namespace oddglass::ui {
namespace {

/// One option after the other; Problem empty or notAChoice naming it.
class Asked {
 public:
  explicit Asked(const QStringList& arguments) {
    // Which session: Qt takes an option of the name "session" for itself.
    for (const char* name : {"print", "store", "which", "out", "size", "for", "labels", "margins", "gaps", "skip"}) parser_.addOption({QString::fromLatin1(name), QString(), QString::fromLatin1(name)});
    if (!parser_.parse(arguments) || !parser_.positionalArguments().isEmpty())
      throw Problem(Trouble::unknown, "--print", {{"what", "option"}, {"text", (parser_.unknownOptionNames() + parser_.positionalArguments()).join(QLatin1Char(' ')).toStdString()}});
  }
  bool has(const char* name) const { return parser_.isSet(QString::fromLatin1(name)); }
  std::string text(const char* name) const {
    const std::string typed = parser_.value(QString::fromLatin1(name)).toStdString();
    if (typed.empty()) throw Problem(Trouble::empty, std::string("--") + name);
    return typed;
  }

 private:
  QCommandLineParser parser_;
};

/// "3x8", "10,5,10,5" and so on: whole parts of a text. Problem notANumber naming the option.
std::vector<double> numbersIn(const Asked& asked, const char* name, char between, std::size_t count) {
  const std::string text = asked.text(name);
  const Problem wrong(Trouble::notANumber, std::string("--") + name, {{"text", text}});
  std::vector<double> numbers;
  for (std::size_t at = 0; at <= text.size();) {
    const std::size_t end = std::min(text.find(between, at), text.size());
    const auto number = words::readNumber(std::string_view(text).substr(at, end - at));
    if (!number || !(std::abs(*number) < 10'000)) throw wrong;
    numbers.push_back(*number);
    at = end + 1;
  }
  if (numbers.size() != count) throw wrong;
  return numbers;
}

int wholeOf(double number, const char* argument) {
  if (number != std::floor(number)) throw Problem(Trouble::notANumber, argument, {{"text", std::to_string(number)}});
  return static_cast<int>(number);
}

print::LabelSheet labelsOf(const Asked& asked) {
  print::LabelSheet sheet;
  if (asked.has("labels")) {
    const auto numbers = numbersIn(asked, "labels", 'x', 2);
    sheet.columns = wholeOf(numbers[0], "--labels");
    sheet.rows = wholeOf(numbers[1], "--labels");
  }
  if (asked.has("margins")) {
    const auto numbers = numbersIn(asked, "margins", ',', 4);
    sheet.top = numbers[0], sheet.right = numbers[1], sheet.bottom = numbers[2], sheet.left = numbers[3];
  }
  if (asked.has("gaps")) {
    const auto numbers = numbersIn(asked, "gaps", ',', 2);
    sheet.across = numbers[0], sheet.down = numbers[1];
  }
  if (asked.has("skip")) sheet.skip = wholeOf(numbersIn(asked, "skip", ',', 1)[0], "--skip");
  return sheet;
}

/// What the rooms below call an argument, as it is written here.
std::string optionOf(const std::string& argument) {
  if (argument.empty()) return "--print";
  if (argument == "columns" || argument == "rows") return "--labels";
  if (argument == "session" || argument == "series") return "--which";
  for (const char* name : {"margins", "gaps", "skip", "out", "store"})
    if (argument == name) return "--" + argument;
  return argument;
}

// Whoever opened them although a sitting is sealed has had that written down.
void requireOpenPages(store::Store& store, const SessionId& session) {
  const auto series = session::closedBy(store, session);
  if (series && session::areClosed(session::sittingsNow(store, *series))) throw Problem(Trouble::pagesClosed, "session", {{"text", shelf::series(store, *series).title}});
}

Printing wishOf(const Asked& asked) {
  Printing wish;
  wish.what = printedNamed(asked.text("print"), "--print");
  if (asked.has("size")) wish.size = sizeNamed(asked.text("size"), "--size");
  if (asked.has("for")) {
    const std::string whom = asked.text("for");
    if (whom != "maker" && whom != "room") throw Problem(Trouble::notAChoice, "--for", {{"text", whom}, {"choices", "maker, room"}});
    wish.whom = whom == "maker" ? report::For::maker : report::For::room;
  }
  wish.labels = labelsOf(asked);
  return wish;
}

}  // namespace

int printCommand(const QStringList& arguments, Clock& clock, Chance& chance, std::ostream& err) {
  const words::Voice voice;
  const auto refuse = [&](const std::string& argument, std::string sentence) {
    for (char& each : sentence)
      if (static_cast<unsigned char>(each) < 0x20) each = ' ';
    err << "oddglass: " << argument << ": " << sentence << std::endl;
    return 2;
  };
  try {
    const Asked asked(arguments);
    const Printing wish = wishOf(asked);
    const std::filesystem::path out = asked.text("out"), file = asked.has("store") ? std::filesystem::path(asked.text("store")) : store::usualFile();
    // Opened to write it would be made.
    if (!std::filesystem::exists(file)) throw Problem(Trouble::storeMissing, "--store", {{"file", file.string()}});
    const auto store = store::Store::open(file, accessFor(wish), clock, chance);
    if (wish.what == Printed::series) {
      printSeries(*store, voice, shelf::seriesNamed(*store, asked.text("which")), wish.size, out);
      return 0;
    }
    if (wish.what == Printed::tags) {
      printTags(*store, voice, shelf::seriesNamed(*store, asked.text("which")), wish, out);
      return 0;
    }
    const SessionId session = session::sessionNamed(*store, asked.text("which"));
    if (wish.what == Printed::report) requireOpenPages(*store, session);
    printInto(*store, clock, voice, session, wish, out);
    return 0;
  } catch (const Problem& problem) {
    return refuse(optionOf(problem.argument()), words::sentence(voice, problem));
  } catch (const std::exception& error) {
    return refuse("--print", words::sentence(voice, Problem(Trouble::storeFailed, "store", {{"text", error.what()}})));
  }
}

}  // namespace oddglass::ui
