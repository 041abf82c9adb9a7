#include "cli/estimated.h"
#include "cli/families.h"
#include "domain/day.h"
#include "domain/names.h"
#include "session/about_lots.h"
#include "shelf/references.h"
#include "words/references.h"

namespace oddglass::cli {
namespace {

Json lotJson(const Reference& reference, std::size_t lot, const insight::ReferenceLot& now) {
  const Lot& bottle = reference.lots[lot];
  Json json{{"id", bottle.id.text}, {"name", bottle.name}, {"packaged_on", bottle.packagedOn}, {"best_before", bottle.bestBefore}, {"storage", bottle.storage}, {"source", bottle.source},
            {"age_months", numberOrNull(now.age)}, {"days_past_best_before", numberOrNull(now.daysPast)}, {"bottles", bottle.bottles}, {"held", bottle.held}, {"last_bottle", now.isLast}, {"poured", Json::array()}};
  for (const PouredIn& each : reference.poured)
    if (each.lot == static_cast<int>(lot)) json["poured"].push_back({{"session", each.session.text}, {"title", each.title}, {"held_on", each.heldOn}});
  return json;
}

Json rangeJson(const Reference& reference, const insight::VintageRange& range) {
  const auto end = [&](const insight::VintageMean& mean) { return Json{{"lot", reference.lots[static_cast<std::size_t>(mean.lot)].id.text}, {"mean", mean.mean}, {"people", mean.people}}; };
  return {{"kind", nameOf(range.question.kind)}, {"part", nameOf(range.question.part)}, {"word", range.question.word}, {"low", end(range.low)}, {"high", end(range.high)}, {"lots", range.lots}, {"sessions", range.sessions}};
}

Json referenceJson(const Reference& reference, const insight::ReferenceFindings& found) {
  Json json{{"id", reference.beverage.id.text}, {"name", reference.beverage.name}, {"kind", nameOf(reference.beverage.kind)}, {"lots", Json::array()}, {"range", Json::array()}};
  for (std::size_t lot = 0; lot < reference.lots.size(); ++lot) json["lots"].push_back(lotJson(reference, lot, found.lots[lot]));
  for (const insight::VintageRange& range : found.ranges) json["range"].push_back(rangeJson(reference, range));
  if (found.ranges.empty()) json["why"] = "no two of its lots were scored in one session";
  return json;
}

std::vector<std::string> bookLines(const words::ReferenceBookWords& book) {
  std::vector<std::string> lines{book.headline};
  for (const words::ReferenceWords& reference : book.references) {
    lines.push_back(reference.name);
    for (const words::ReferenceLotWords& lot : reference.lots) {
      lines.push_back("  " + lot.name + ": " + lot.bottles);
      for (const std::string& line : {lot.age, lot.past, lot.kept, lot.poured})
        if (!line.empty()) lines.push_back("    " + line);
    }
    for (const std::string& range : reference.ranges) lines.push_back("  " + range);
  }
  return lines;
}

}  // namespace

void describeReferences(CLI::App& app, Command::Work& chosen) {
  Command command(app, chosen, "references", "Bought drinks: vintages and lots, how old they are, what is left, and how far their vintages lie apart");
  const auto all = command.flag("--all", "Those put away too");
  command.does([=](Desk& desk) -> Answer {
    const auto store = desk.toRead();
    std::vector<Reference> references = shelf::references(*store, *all);
    std::vector<insight::ReferenceFindings> found;
    Json json{{"references", Json::array()}};
    for (Reference& reference : references) {
      session::readPoured(*store, reference);
      found.push_back(insight::referenceOf(reference, dayOf(desk.clock().now())));
      json["references"].push_back(referenceJson(reference, found.back()));
    }
    return {std::move(json), bookLines(words::referenceBookWords(desk.voice(), references, found))};
  });
}

}  // namespace oddglass::cli
