#include "words/sheet_maker.h"

#include "words/lots.h"
#include "words/mark.h"
#include "words/numbers.h"
#include "words/sheet_drivers.h"
#include "words/sheet_out.h"

#include <algorithm>

namespace oddglass::words {
namespace {

using insight::SheetFindings;

std::string shownName(const RevealedSession& session, Place place) {
  const auto found = std::ranges::find(session.people, place, &ShownPerson::place);
  return found == session.people.end() ? std::string() : found->shown;
}

OutSection makersBeside(const Voice& voice, const RevealedSession& session, const SheetFindings& findings) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "The makers beside the panel")), {},
                     {say(voice, QT_TRANSLATE_NOOP("words", "Who")), say(voice, QT_TRANSLATE_NOOP("words", "Question"))}, {}};
  for (Slot lot : findings.lots) section.headers.push_back(lotNamed(voice, session.plan, lot));
  for (const insight::PointsLine& line : findings.points) {
    const std::string what = questionName(voice, line.kind, line.part, line.word);
    for (const insight::MakerPoints& maker : findings.makers) {
      if (maker.item != line.item) continue;
      std::vector<std::string> own{shownName(session, maker.place), what}, panel{say(voice, QT_TRANSLATE_NOOP("words", "the panel")), what};
      for (std::size_t i = 0; i < findings.lots.size(); ++i) {
        own.push_back(maker.lots[i] ? points(voice, line.kind, *maker.lots[i]) : "–");
        panel.push_back(line.lots[i].mean ? points(voice, line.kind, *line.lots[i].mean) : "–");
      }
      section.rows.push_back(std::move(own));
      section.rows.push_back(std::move(panel));
    }
  }
  return section;
}

// Everything written about the cups. Those who asked to be only in the sums stand without a name; all lines are in the order of their letters, so that
// no order of places shows.
OutSection remarks(const Voice& voice, const RevealedSession& session) {
  OutSection section{say(voice, QT_TRANSLATE_NOOP("words", "What was written")), {}, {}, {}};
  for (const PanelFlight& flight : session.panel) {
    const auto person = std::ranges::find(session.people, flight.place, &ShownPerson::place);
    const bool isNamed = person != session.people.end() && person->as != ShownAs::loose;
    for (const SheetReply& reply : flight.replies) {
      if (reply.words.empty()) continue;
      const auto slot = reply.cup ? flight.poured.at(static_cast<std::size_t>(reply.cup->value - 1)) : std::nullopt;
      const Values values{{"words", quoted(voice, reply.words)}, {"drink", slot ? lotNamed(voice, session.plan, *slot) : std::string()}, {"who", isNamed ? person->shown : std::string()}};
      if (slot && isNamed) section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{words} about {drink} ({who})"), values));
      else if (slot) section.lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "{words} about {drink}"), values));
      else section.lines.push_back(isNamed ? say(voice, QT_TRANSLATE_NOOP("words", "{words} ({who})"), values) : values.at("words"));
    }
  }
  std::ranges::sort(section.lines);
  return section;
}

}  // namespace

std::vector<OutSection> sheetMakerSections(const Voice& voice, const RevealedSession& session, const SheetFindings& findings) {
  std::vector<OutSection> sections;
  if (const std::string manner = mannerLine(voice, findings); !manner.empty())
    sections.push_back({say(voice, QT_TRANSLATE_NOOP("words", "The table")), {manner}, {}, {}});
  if (findings.table.control && !sections.empty())
    sections.back().lines.push_back(say(voice, QT_TRANSLATE_NOOP("words", "The cup that was flawed or thinned on purpose was liked {gap} points less than the others."),
                                        {{"gap", decimal(voice, -*findings.table.control, 1)}}));
  if (OutSection drivers = driversSection(voice, findings.drivers, findings.alphaPm); !drivers.lines.empty() && !findings.why) sections.push_back(std::move(drivers));
  if (!findings.makers.empty()) sections.push_back(makersBeside(voice, session, findings));
  if (OutSection written = remarks(voice, session); !written.lines.empty()) sections.push_back(std::move(written));
  OutSection said{say(voice, QT_TRANSLATE_NOOP("words", "What was said aloud")), {}, {}, {}};
  for (const SaidAloud& each : session.said)
    if (!each.words.empty()) said.lines.push_back(quoted(voice, each.words));
  if (!said.lines.empty()) sections.push_back(std::move(said));
  return sections;
}

}  // namespace oddglass::words
