#include "cli/families.h"
#include "cli/noticing.h"
#include "domain/problem.h"
#include "domain/text.h"
#include "session/card.h"
#include "shelf/people.h"
#include "shelf/vocabulary.h"
#include "words/card.h"

namespace oddglass::cli {
namespace {

Json cardJson(const CardTastings& tastings, const insight::Card& card) {
  Json json{{"sessions", card.sessions}, {"sheets", card.sheets}, {"samples", card.samples}};
  if (card.isTooFew) {
    json["why"] = "fewer than three opened tastings under their name or nickname";
    return json;
  }
  json["level"] = {{"raw", numberOrNull(card.level)}, {"shrunk", numberOrNull(card.shrunkLevel)}};
  json["spread"] = {{"raw", numberOrNull(card.spread)}, {"shrunk", numberOrNull(card.shrunkSpread)}, {"others", numberOrNull(card.othersSpread)}};
  json["agreement"] = {{"raw", numberOrNull(card.agreement)}, {"shrunk", numberOrNull(card.shrunkAgreement)}};
  json["repeat_sd"] = {{"raw", numberOrNull(card.repeats.sd)}, {"others", numberOrNull(card.othersRepeatSd)}};
  json["repeats"] = repeatsJson(card.repeats);
  if (!card.level) json["why"] = "scores need three score sheets beside two others or more";
  json["noticed"] = Json::array();
  for (const insight::Noticed& each : card.noticed) json["noticed"].push_back(noticedJson(tastings.known, each));
  return json;
}

struct CardOptions {
  std::shared_ptr<Given> who;
  std::shared_ptr<bool> asks, shows, lets, takesBack;
};

// What the person at the machine may see now: nothing, the card as it was when they let it be seen, or all of it.
enum class Seen { nothing, asItWas, today };

Seen seenWith(const CardOptions& options, const std::optional<CardWish>& wish) {
  if (!wish) return Seen::nothing;
  if (*options.shows || *options.lets) return Seen::today;
  return wish->shownAt ? Seen::asItWas : Seen::nothing;
}

void change(Desk& desk, const CardOptions& options, const TasterId& who) {
  if (!*options.asks && !*options.lets && !*options.takesBack) return;
  const auto store = desk.toWrite();
  if (*options.takesBack) session::takeCardBack(*store, who);
  if (*options.asks) session::askForCard(*store, desk.clock(), who);
  if (*options.lets) session::letCardBeSeen(*store, desk.clock(), who);
}

Answer cardAnswer(Desk& desk, const CardOptions& options) {
  const Taster person = [&] {
    const auto store = desk.toRead();
    return looksLikeUid(options.who->text()) ? shelf::taster(*store, {options.who->text()}) : shelf::tasterNamed(*store, options.who->text());
  }();
  change(desk, options, person.id);
  const auto store = desk.toRead();
  const auto wish = session::cardOf(*store, person.id);
  if (*options.shows && !wish) throw Problem(Trouble::unknown, "card", {{"what", "card"}, {"text", person.name}});
  Json json{{"taster", person.id.text}, {"name", person.name}, {"asked_at", wish ? Json(wish->askedAt) : Json(nullptr)}, {"shown_at", wish && wish->shownAt ? Json(*wish->shownAt) : Json(nullptr)}, {"card", nullptr}};
  if (!wish) {
    json["why"] = "no card was asked for";
    return {std::move(json), {words::noCard(desk.voice(), person.name)}};
  }
  const Seen seen = seenWith(options, wish);
  if (seen == Seen::nothing) {
    json["why"] = "it is shown to them first";
    return {std::move(json), {words::cardExists(desk.voice(), person.name, false)}};
  }
  const CardTastings tastings = session::cardTastings(*store, person.id, seen == Seen::asItWas ? wish->shownAt : std::nullopt);
  const insight::Card card = insight::cardOf(tastings, shelf::meaningNow(*store));
  json["card"] = cardJson(tastings, card);
  const words::CardPage page = words::cardPage(desk.voice(), person.name, card);
  Answer answer{std::move(json), {seen == Seen::today ? page.headline : words::cardExists(desk.voice(), person.name, true)}};
  addLines(answer.lines, page.all());
  return answer;
}

}  // namespace

Json repeatsJson(const insight::Repeats& repeats) {
  Json json{{"sessions", repeats.sessions}, {"repeats", repeats.repeats}, {"sd", numberOrNull(repeats.sd)}, {"change", nullptr}};
  if (!repeats.change) {
    json["why"] = repeats.sessions < insight::fewestToChange ? "a change needs three sessions with a repeat" : "no spread among the repeats";
    return json;
  }
  const insight::RepeatChange& change = *repeats.change;
  json["change"] = {{"earlier_repeats", change.earlier}, {"later_repeats", change.later}, {"earlier_sd", change.earlierSd}, {"later_sd", change.laterSd}, {"ratio", change.ratio}, {"low", change.low}, {"high", change.high}};
  return json;
}

void describeCard(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "card", "A person's card: how they taste, for those who ask, shown to them first");
  CardOptions options;
  options.who = command.argument("TASTER", "Name or id of the person");
  options.asks = command.flag("--ask", "They ask for a card");
  options.shows = command.flag("--show", "They sit here themselves, and others look away");
  options.lets = command.flag("--let-be-seen", "They have seen it, and let the brewer see it as it is today");
  options.takesBack = command.flag("--take-back", "They take the wish back, and the leave to show it");
  command.does([=](Desk& desk) { return cardAnswer(desk, options); });
}

}  // namespace oddglass::cli
