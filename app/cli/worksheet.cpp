#include "cli/worksheet.h"

#include "exchange/csv.h"

#include <map>

namespace oddglass::cli {
namespace {

using session::PourLine;
using session::PourSheet;

std::string number(int value) { return std::to_string(value); }

bool isOnTable(const PourLine& line) { return line.spare == 0; }

std::string pouringOrder(const PourSheet& sheet) {
  std::string text = "In pouring order\n";
  for (const session::PourStep& step : session::pourSteps(sheet)) {
    text += "  " + (sheet.evenings > 1 ? "Evening " + number(step.evening) + ", round " : "Round ") + number(step.round.value);
    if (session::isInWaves(sheet)) text += ", places " + number(step.first.value) + " to " + number(step.last.value);
    text += ", " + step.name + ':';
    for (const PourLine& line : step.lines) text += ' ' + number(line.code.value);
    text += '\n';
  }
  return text;
}

std::string placeOrder(const PourSheet& sheet) {
  std::string text = "Place by place, from the taster's left to the right\n";
  std::map<std::pair<Place, Round>, std::string> flights;
  for (const PourLine& line : sheet.placeByPlace)
    if (isOnTable(line)) flights[{line.place, line.round}] += "    " + number(line.code.value) + "  " + sheet.nameOf(line.slot) + '\n';
  for (const auto& [flight, cups] : flights) text += "  Place " + number(flight.first.value) + ", round " + number(flight.second.value) + '\n' + cups;
  return text;
}

std::string spares(const PourSheet& sheet) {
  std::string text = "Only for a spilled cup: the code that takes its place\n";
  for (const PourLine& line : sheet.placeByPlace)
    if (!isOnTable(line))
      text += "  Place " + number(line.place.value) + ", round " + number(line.round.value) + ", cup " + number(line.position.value) + (sheet.hasMarked && line.position == Position{1} ? " (marked R)" : "") + ": " + number(line.code.value) + "  " +
              sheet.nameOf(line.slot) + '\n';
  return text;
}

}  // namespace

std::string worksheetText(const PourSheet& sheet) {
  return "For the pourer alone: this sheet is the key. Do not read it aloud, do not taste, take it with you.\n" + sheet.guestTitle + "\nSeal mark: " + sheet.sealMark +
         "\nOpened: " + number(sheet.openings) + "\n" + number(sheet.cupMl) + " mL into each cup.\n\n" + pouringOrder(sheet) + '\n' + placeOrder(sheet) + '\n' + spares(sheet);
}

std::string worksheetCsv(const PourSheet& sheet) {
  std::string text = exchange::csvLine({"place", "round", "position", "spare", "code", "lot"});
  for (const PourLine& line : sheet.placeByPlace)
    text += exchange::csvLine({number(line.place.value), number(line.round.value), number(line.position.value), number(line.spare), number(line.code.value), sheet.nameOf(line.slot)});
  return text;
}

}  // namespace oddglass::cli
