#include "cli/noticing.h"

#include "cli/families.h"
#include "domain/names.h"
#include "domain/problem.h"
#include "session/card.h"
#include "session/drafts.h"
#include "session/known_differences.h"
#include "session/past.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "words/card.h"
#include "words/noticing.h"

namespace oddglass::cli {
namespace {

Json changeJson(const insight::Noticed& noticed) {
  if (!noticed.change) return nullptr;
  const insight::NoticedChange& change = *noticed.change;
  return {{"method", nameOf(change.method)}, {"sessions", change.sessions}, {"earlier_right", change.earlierRight}, {"earlier_trials", change.earlierTrials},
          {"later_right", change.laterRight}, {"later_trials", change.laterTrials}, {"median", change.median}, {"low", change.low}, {"high", change.high}};
}

// No person stands here: how many tried a word, and how many of them are known to notice it.
void describeNotices(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "notices", "Which tasting words people are known to notice, from known differences, without any person");
  const auto which = command.option("--session", "SESSION", "A plan that is being made: only who is to taste there counts, and it is said which of its words nobody there is known to notice");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const StoreNoticing noticing = noticingIn(*store);
    std::optional<std::vector<TasterId>> people;
    Json json{{"words", Json::array()}, {"unnoticed", nullptr}};
    std::vector<std::string> lines;
    std::string coverage;
    if (which->isGiven()) {
      const session::DraftFacts facts = session::draftFacts(*store, sessionOf(*store, *which));
      people = session::panelOf(facts);
      const auto words = insight::wordsNoticed(noticing.all, people);
      const auto left = insight::unnoticed(noticing.all, *people, insight::wordsOf(facts.draft.sheet.items), noticing.meaning);
      json["unnoticed"] = left;
      coverage = words::coverageLine(desk.voice(), left, !words.empty());
    }
    for (const insight::WordNoticed& word : insight::wordsNoticed(noticing.all, people)) {
      json["words"].push_back({{"word", word.word}, {"people", word.people}, {"known", word.known}});
      lines.push_back(words::wordNoticedLine(desk.voice(), word));
    }
    if (!coverage.empty()) lines.push_back(coverage);
    lines.push_back(words::noticingRule(desk.voice()));
    return {std::move(json), std::move(lines)};
  });
}

// For the brewer about themself; others have their card.
void describeBetter(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "better", "Am I getting better at it? What the brewer has shown to notice, over their sessions with a known difference");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    const auto brewer = shelf::brewer(*store);
    if (!brewer) throw Problem(Trouble::unknown, "taster", {{"what", "taster"}, {"text", "the brewer"}});
    const StoreNoticing noticing = noticingIn(*store);
    Answer answer{{{"taster", brewer->id.text}, {"name", brewer->name}, {"words", Json::array()}}, {}};
    for (const insight::Noticed& each : noticing.all) {
      if (each.who != brewer->id) continue;
      answer.json["words"].push_back(noticedJson(noticing.known, each));
      addLines(answer.lines, words::noticedLines(desk.voice(), each));
      answer.lines.push_back(words::changeLine(desk.voice(), each));
    }
    const insight::Repeats repeats = insight::repeatsOf(session::cardTastings(*store, brewer->id).sheets);
    answer.json["repeats"] = repeatsJson(repeats);
    addLines(answer.lines, words::repeatLines(desk.voice(), repeats));
    if (answer.json["words"].empty() && !repeats.sd) {
      answer.json["why"] = "no tasting of a known difference was opened";
      answer.lines.push_back(words::nothingNoticed(desk.voice()));
    }
    return answer;
  });
}

}  // namespace

StoreNoticing noticingIn(store::Store& store) {
  StoreNoticing noticing{session::knownDifferences(store), {}, {}};
  noticing.meaning = shelf::meaningNow(store);
  noticing.all = insight::noticingOf(noticing.known, noticing.meaning);
  return noticing;
}

Json noticedJson(const KnownDifferences& known, const insight::Noticed& noticed) {
  Json json{{"word", noticed.word}, {"right", noticed.right}, {"trials", noticed.trials}, {"left_out", noticed.leftOut}, {"p_value", numberOrNull(noticed.pValue)},
            {"known", noticed.isKnown}, {"methods", Json::array()}, {"per_session", Json::array()}, {"change", changeJson(noticed)}};
  for (const insight::NoticedBy& by : noticed.methods)
    json["methods"].push_back({{"method", nameOf(by.method)}, {"right", by.right}, {"trials", by.trials}, {"median", by.median}, {"low", by.low}, {"high", by.high}});
  for (const insight::NoticedVisit& visit : noticed.visits)
    json["per_session"].push_back({{"session", known[visit.at].session.id.text}, {"revealed_at", known[visit.at].session.revealedAt}, {"method", nameOf(visit.method)}, {"right", visit.right}, {"trials", visit.trials}});
  if (!noticed.change) json["why"] = "a change needs three sessions by one method";
  return json;
}

void describeNoticing(CLI::App& app, Command::Work& chosen) {
  describeNotices(app, chosen);
  describeBetter(app, chosen);
}

}  // namespace oddglass::cli
