#include "cli/families.h"
#include "domain/problem.h"
#include "session/erase.h"
#include "shelf/people.h"
#include "store/keep.h"

namespace oddglass::cli {
namespace {

void describeErase(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "erase", "Forgets a person: name and words, or everything of theirs");
  const auto who = command.argument("TASTER", "Name or id");
  const auto words = command.flag("--words", "Name and words");
  const auto everything = command.flag("--everything", "Every answer too");
  const auto sure = command.flag("--yes-cannot-be-undone", "Says it a second time");
  command.does([=](Desk& desk) -> Answer {
    who->text();
    if (*words == *everything) throw Problem(*words ? Trouble::notAChoice : Trouble::empty, "--words", {{"text", "both"}, {"choices", "--words, --everything"}});
    if (!*sure) throw Problem(Trouble::askTwice, "--yes-cannot-be-undone");
    const auto store = desk.toWrite();
    const TasterId id = looksLikeUid(who->text()) ? TasterId{who->text()} : shelf::tasterNamed(*store, who->text()).id;
    const session::Erased erased = session::erase(*store, desk.clock(), desk.chance(), id, *words ? ErasureKind::words : ErasureKind::everything, true);
    Json copies = Json::array();
    for (const auto& file : erased.copies) copies.push_back(file.string());
    return {Json{{"sessions", erased.sessions}, {"copies", std::move(copies)}, {"bytes_gone", erased.bytesGone}}, {}};
  });
}

void describeBackup(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "backup", "Copies the store as it is now");
  const auto out = command.option("--out", "FILE", "A file that is not there yet");
  command.does([=](Desk& desk) -> Answer {
    out->text();
    store::keepCopyAs(*desk.toWrite(), desk.clock(), out->text(), store::BackupReason::asked);
    return {Json{{"file", out->text()}}, {out->text()}};
  });
}

void describeRestore(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "restore", "Puts a backup in the store's place; what stood there is kept as a backup first");
  const auto file = command.argument("FILE", "The backup");
  command.does([=](Desk& desk) -> Answer {
    file->text();
    const auto former = store::restore(desk.storeFile(), file->text(), desk.clock(), desk.chance());
    return {Json{{"store", desk.storeFile().string()}, {"former", former.empty() ? Json() : Json(former.string())}}, {}};
  });
}

}  // namespace

void describeKeeping(CLI::App& app, Command::Work& chosen) {
  describeErase(app, chosen);
  describeBackup(app, chosen);
  describeRestore(app, chosen);
}

}  // namespace oddglass::cli
