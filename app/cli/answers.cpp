#include "cli/families.h"
#include "exchange/sheets.h"
#include "tasting/hand_in.h"
#include "words/history.h"

namespace oddglass::cli {

void describeAnswer(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "answer", "Hands in answers; what is printed is locked and on disk");
  const auto which = command.argument("SESSION", "The beginning of its id");
  const auto file = command.argument("FILE", "A CSV table with the columns place, round, item, code, value: all of it or nothing");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    const auto store = desk.toWrite();
    const SessionId id = sessionOf(*store, *which);
    const std::vector<tasting::HandIn> all = exchange::readAnswers(*store, id, file->text());
    const std::vector<tasting::Receipt> receipts = tasting::handInAll(*store, desk.clock(), desk.chance(), id, all);
    Json list = Json::array();
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < receipts.size(); ++i) {
      list.push_back({{"place", all[i].place.value}, {"round", all[i].round.value}, {"seq", receipts[i].seq().value}, {"at", receipts[i].at()}, {"was_there", receipts[i].wasThere()}});
      lines.push_back(words::eventLine(desk.voice(), {receipts[i].seq(), receipts[i].at(), Event::answered, all[i].place, all[i].round}));
    }
    return {Json{{"id", id.text}, {"answered", receipts.size()}, {"receipts", std::move(list)}}, std::move(lines)};
  });
}

}  // namespace oddglass::cli
