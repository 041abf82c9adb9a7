#include "print/score_sheet.h"

#include "print/form.h"
#include "tasting/sheet_steps.h"
#include "words/sheet_asked.h"

#include <algorithm>
#include <numeric>

namespace oddglass::print {
namespace {

using tasting::SheetStep;
using tasting::SheetStepKind;

struct Form {
  Pages& pages;
  const words::Voice& voice;
  const words::TablePaperText& text;
  const tasting::Flight& flight;

  int codedCups() const {
    return static_cast<int>(std::ranges::count(flight.cups, false, &tasting::FlightCup::isMarked));
  }

  /// The coded cups with a box each, for a number.
  void numbers() {
    std::vector<FormCup> cups;
    for (const tasting::FlightCup& cup : flight.cups)
      if (!cup.isMarked) cups.push_back({cup.code.value, words::positionWord(voice, cup.position, static_cast<int>(flight.cups.size())), true});
    cupBoxes(pages, cups);
  }

  void one(const SheetItem& item) {
    const std::string label = words::writtenLabel(voice, item, codedCups());
    switch (item.kind) {
      case ItemKind::line: {
        asked(pages, label, 28);
        const words::Ends ends = words::scaleEnds(voice, item.kind);
        line(pages, ends.low, ends.high);
        break;
      }
      case ItemKind::magnitude: {
        asked(pages, label, points(100) + 30);
        const words::Ends ends = words::scaleEnds(voice, item.kind);
        std::vector<FormMark> marks;
        for (const words::ScaleMark& each : words::magnitudeMarks(voice)) marks.push_back({each.at, each.word});
        uprightLine(pages, ends.low, ends.high, marks);
        break;
      }
      case ItemKind::rank:
      case ItemKind::split:
        asked(pages, label, 80);
        numbers();
        break;
      case ItemKind::worst:
        asked(pages, label, 40);
        writingLines(pages, 1);
        boxes(pages, {text.noneFound});
        break;
      case ItemKind::words:
      case ItemKind::changeOne:
        asked(pages, label, 30);
        writingLines(pages, 1);
        break;
      case ItemKind::distance: {
        asked(pages, label, 20);
        std::vector<std::string> steps(11);
        std::ranges::generate(steps, [step = 0]() mutable { return std::to_string(step++); });
        boxes(pages, steps);
        break;
      }
      default:
        asked(pages, label, 20);
        boxes(pages, words::answerWords(voice, item.kind));
        break;
    }
    if (!item.required && (item.kind == ItemKind::justRight || item.kind == ItemKind::liking || item.kind == ItemKind::behaviour)) boxes(pages, {words::passWords(voice, item)});
  }

  const SheetItem& item(Item number) const { return *std::ranges::find(flight.items, number, &SheetItem::item); }

  /// The questions of a step; all words to tick stand under one label.
  void questions(const SheetStep& step) {
    std::vector<std::string> ticks;
    const auto tickAll = [&](const SheetItem& last) {
      if (ticks.empty()) return;
      asked(pages, words::writtenLabel(voice, last, codedCups()), 20);
      boxes(pages, ticks);
      ticks.clear();
    };
    for (std::size_t i = 0; i < step.items.size(); ++i) {
      const SheetItem& each = item(step.items[i]);
      if (each.kind != ItemKind::check) {
        one(each);
        continue;
      }
      ticks.push_back(each.word);
      if (i + 1 == step.items.size() || item(step.items[i + 1]).kind != ItemKind::check) tickAll(each);
    }
  }

  /// Which cup comes now: its code, large, and where it stands.
  void cup(const SheetStep& step) {
    const tasting::FlightCup& cup = flight.cups.at(static_cast<std::size_t>(*step.cup));
    pages.need(130);
    pages.rule();
    const double y = pages.y();
    double x = pages.left();
    if (cup.code.value > 0) x += pages.code(x, y, std::to_string(cup.code.value), 22) + 12;
    else x += pages.at(x, y, 90, "________", {16, false, QColor(Qt::black)}) + 80;
    const std::string where = words::capitalised(words::positionWord(voice, cup.position, static_cast<int>(flight.cups.size()))) + ". " + words::partHeadline(voice, step.part) + '.';
    pages.at(x, y + 2, pages.left() + pages.width() - x, where, {11, true, Type{}.colour});
    pages.at(x, y + 17, pages.left() + pages.width() - x, words::partLead(voice, step.part), {9, false, quietColour});
    pages.space(36);
  }
};

}  // namespace

void scoreSheet(Pages& pages, const words::Voice& voice, const words::TablePaperText& text, const tasting::Flight& flight, const SessionId& session) {
  Form form{pages, voice, text, flight};
  for (const tasting::FlightCup& cup : flight.cups)
    if (cup.isMarked) pages.paragraph(text.markedCup + " (" + text.mark + "): " + (cup.code.value > 0 ? std::to_string(cup.code.value) : "________"), {11, true, Type{}.colour}, 6);
  for (const SheetStep& step : tasting::sheetSteps(flight, session)) {
    switch (step.kind) {
      case SheetStepKind::pause: pages.paragraph(words::pauseLine(voice, step.seconds, flight.cleanser), {9.5, false, Type{}.colour}, 6); break;
      case SheetStepKind::swallow: pages.paragraph(words::waitLine(voice, step.seconds), {9.5, false, Type{}.colour}, 6); break;
      case SheetStepKind::together:
        pages.rule();
        pages.heading(words::partHeadline(voice, Part::last));
        form.questions(step);
        break;
      case SheetStepKind::cup:
        form.cup(step);
        form.questions(step);
        break;
    }
  }
  pages.paragraph(text.inMillimetres, {8, false, quietColour}, 4);
}

}  // namespace oddglass::print
