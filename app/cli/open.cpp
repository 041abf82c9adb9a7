// `open`: the same drinks scored once more after the reveal, with the labels known.
#include "cli/families.h"
#include "exchange/sheets.h"
#include "words/open_round.h"

namespace oddglass::cli {
void describeOpen(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "open", "After the reveal the same people score the same drinks once more, with the labels known");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto file = command.argument("FILE", "A CSV table with the columns place, lot and value: a lot by its number in the plan or by \"drink, lot\"");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const auto answers = exchange::readOpen(*store, id, file->text());
    session::answerOpenly(*store, desk.clock(), id, answers);
    Answer answer{Json{{"id", id.text}, {"places", Json::array()}}, {}};
    for (const session::OpenAnswers& each : answers) answer.json["places"].push_back(each.place.value);
    answer.lines.push_back(words::openThanks(desk.voice(), static_cast<int>(answers.size())));
    return answer;
  });
}

}  // namespace oddglass::cli
