#include "words/give_aways.h"

#include "words/mark.h"

namespace oddglass::words {
namespace {

std::string mending(const Voice& voice, GiveAway check) {
  switch (check) {
    case GiveAway::colour: return say(voice, QT_TRANSLATE_NOOP("words", "Dark or opaque cups, or so little light that the colour does not show."));
    case GiveAway::haze: return say(voice, QT_TRANSLATE_NOOP("words", "Chill the bottles upright for 24 to 72 hours, pour off what is clear, and take dark cups."));
    case GiveAway::foam: return say(voice, QT_TRANSLATE_NOOP("words", "A lid on every cup, or time for the foam to fall before the cups are carried in."));
    case GiveAway::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "Fizz cannot be hidden in the mouth: degas all of them alike, or match them. Open bottles under pressure slowly, over a sink."));
    case GiveAway::temperature: return say(voice, QT_TRANSLATE_NOOP("words", "Let all bottles stand together until they are alike: one temperature for all cups."));
    case GiveAway::level: return say(voice, QT_TRANSLATE_NOOP("words", "Pour every cup by measure, to one line."));
    case GiveAway::sediment: return say(voice, QT_TRANSLATE_NOOP("words", "Chill the bottles upright for 24 to 72 hours, and leave the last 1 to 2 cm in the bottle."));
    case GiveAway::vessel: return say(voice, QT_TRANSLATE_NOOP("words", "One kind of cup for all, washed alike, with the code in one spot."));
    case GiveAway::hadBefore: break;
  }
  return {};
}

std::string mended(const Voice& voice, GiveAway check) {
  switch (check) {
    case GiveAway::colour: return say(voice, QT_TRANSLATE_NOOP("words", "colour (dark cups or little light)"));
    case GiveAway::haze: return say(voice, QT_TRANSLATE_NOOP("words", "haze (chilled upright, poured off clear, dark cups)"));
    case GiveAway::foam: return say(voice, QT_TRANSLATE_NOOP("words", "foam (lids, or time for it to fall)"));
    case GiveAway::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "fizz (all degassed alike, or matched)"));
    case GiveAway::temperature: return say(voice, QT_TRANSLATE_NOOP("words", "temperature (brought to one)"));
    case GiveAway::level: return say(voice, QT_TRANSLATE_NOOP("words", "level (poured by measure)"));
    case GiveAway::sediment: return say(voice, QT_TRANSLATE_NOOP("words", "sediment (left in the bottle)"));
    case GiveAway::vessel: return say(voice, QT_TRANSLATE_NOOP("words", "vessel (cups of one kind)"));
    case GiveAway::hadBefore: break;
  }
  return {};
}

std::string noun(const Voice& voice, GiveAway check) {
  switch (check) {
    case GiveAway::colour: return say(voice, QT_TRANSLATE_NOOP("words", "colour"));
    case GiveAway::haze: return say(voice, QT_TRANSLATE_NOOP("words", "haze"));
    case GiveAway::foam: return say(voice, QT_TRANSLATE_NOOP("words", "foam"));
    case GiveAway::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "fizz"));
    case GiveAway::temperature: return say(voice, QT_TRANSLATE_NOOP("words", "temperature"));
    case GiveAway::level: return say(voice, QT_TRANSLATE_NOOP("words", "level in the cup"));
    case GiveAway::sediment: return say(voice, QT_TRANSLATE_NOOP("words", "sediment"));
    case GiveAway::vessel: return say(voice, QT_TRANSLATE_NOOP("words", "vessel"));
    case GiveAway::hadBefore: return say(voice, QT_TRANSLATE_NOOP("words", "had before"));
  }
  return {};
}

}  // namespace

std::string checkName(const Voice& voice, GiveAway check) { return capitalised(noun(voice, check)); }

std::string checkHint(const Voice& voice, GiveAway check) {
  switch (check) {
    case GiveAway::colour: return say(voice, QT_TRANSLATE_NOOP("words", "Hold two cups to the light."));
    case GiveAway::haze: return say(voice, QT_TRANSLATE_NOOP("words", "Is one cloudier than the other?"));
    case GiveAway::foam: return say(voice, QT_TRANSLATE_NOOP("words", "Does one pour with more of it, or keep it longer?"));
    case GiveAway::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "Does one hiss, bead or prickle more?"));
    case GiveAway::temperature: return say(voice, QT_TRANSLATE_NOOP("words", "Did all of them stand in one place, for as long?"));
    case GiveAway::level: return say(voice, QT_TRANSLATE_NOOP("words", "Will every cup be filled to one line?"));
    case GiveAway::sediment: return say(voice, QT_TRANSLATE_NOOP("words", "Is there something on the bottom of a bottle?"));
    case GiveAway::vessel: return say(voice, QT_TRANSLATE_NOOP("words", "Are the cups of one kind, and unmarked?"));
    case GiveAway::hadBefore: return say(voice, QT_TRANSLATE_NOOP("words", "Has anybody at the table drunk one of them before?"));
  }
  return {};
}

std::string wayOutName(const Voice& voice, WayOut way) {
  switch (way) {
    case WayOut::mend: return say(voice, QT_TRANSLATE_NOOP("words", "Mend it"));
    case WayOut::ask: return say(voice, QT_TRANSLATE_NOOP("words", "Ask that instead"));
    case WayOut::anyMeans: return say(voice, QT_TRANSLATE_NOOP("words", "Go on, by any means"));
  }
  return {};
}

std::string wayOutHint(const Voice& voice, GiveAway check, WayOut way, Method method) {
  switch (way) {
    case WayOut::mend: return mending(voice, check);
    case WayOut::ask:
      return say(voice, method == Method::sheet ? QT_TRANSLATE_NOOP("words", "The sheet then asks how {more} each cup is.")
                                                : QT_TRANSLATE_NOOP("words", "The question then is whether one of them is more {more}. Whoever goes by that answers what was asked."),
                 {{"more", askedWord(voice, check)}});
    case WayOut::anyMeans:
      if (check == GiveAway::hadBefore) return say(voice, QT_TRANSLATE_NOOP("words", "Whoever had it may know it again, and what comes out says so. The other way is to leave that person out."));
      return say(voice, method == Method::sheet ? QT_TRANSLATE_NOOP("words", "What comes out then says that the scores may owe something to it.")
                                                : QT_TRANSLATE_NOOP("words", "The verdict then says: by anything, look and fizz included."));
  }
  return {};
}

std::string askedWord(const Voice& voice, GiveAway check) {
  switch (check) {
    case GiveAway::colour: return say(voice, QT_TRANSLATE_NOOP("words", "dark"));
    case GiveAway::haze: return say(voice, QT_TRANSLATE_NOOP("words", "hazy"));
    case GiveAway::foam: return say(voice, QT_TRANSLATE_NOOP("words", "foamy"));
    case GiveAway::fizz: return say(voice, QT_TRANSLATE_NOOP("words", "fizzy"));
    default: return {};
  }
}

std::vector<std::string> giveAwayLines(const Voice& voice, const std::optional<GiveAways>& giveAways) {
  if (!giveAways) return {};
  std::vector<std::string> hidden, asked, open, lines;
  for (const auto& [check, way] : *giveAways) {
    if (way == WayOut::mend) hidden.push_back(mended(voice, check));
    else if (way == WayOut::ask) asked.push_back(noun(voice, check));
    else if (check != GiveAway::hadBefore) open.push_back(noun(voice, check));
  }
  if (giveAways->empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Before the seal nothing was found that gives the drinks away.")));
  if (!hidden.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "To be mended before pouring, as settled before the seal: {list}."), {{"list", listed(voice, hidden)}}));
  if (!asked.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Asked about rather than hidden: {list}."), {{"list", listed(voice, asked)}}));
  if (!open.empty()) lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Different, and gone on with by any means, as settled before the seal: {list}."), {{"list", listed(voice, open)}}));
  if (giveAways->contains(GiveAway::hadBefore))
    lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "Somebody at the table had one of the drinks before, and may know it again. That was settled before the seal.")));
  return lines;
}

std::vector<std::string> maskingLines(const Voice& voice, const Plan& plan) {
  if (plan.giveAways) return giveAwayLines(voice, plan.giveAways);
  return {say(voice, QT_TRANSLATE_NOOP("words", "It was not put on record before the seal whether anything but the taste gives the drinks away."))};
}

std::string byAnyMeansHeadline(const Voice& voice, std::string headline, Method method) {
  if (headline.ends_with('.')) headline.pop_back();
  return say(voice, method == Method::preference ? QT_TRANSLATE_NOOP("words", "{finding}, look and fizz included.") : QT_TRANSLATE_NOOP("words", "{finding}, by anything, look and fizz included."),
             {{"finding", headline}});
}

}  // namespace oddglass::words
