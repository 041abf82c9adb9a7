#include "ui/sheet_rows.h"

#include "ui/cups.h"
#include "ui/voice.h"
#include "words/paper.h"
#include "words/sheet_asked.h"

#include <QCoreApplication>

#include <algorithm>

namespace oddglass::ui {
namespace {

using tasting::Filling;
using tasting::SheetStep;
using tasting::SheetStepKind;

/// The words of these rows, for the tools that look for sentences.
struct SheetWords {
  Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

void fillCups(QuestionRow& row, const SheetItem& item, const Filling& filling) {
  for (Code cup : filling.cups()) {
    row.options << codeText(cup);
    row.marks << filling.value(item.item, cup).value_or(item.kind == ItemKind::split ? 0 : -1);
  }
}

}  // namespace

QString headlineOf(const SheetStep& step) {
  switch (step.kind) {
    case SheetStepKind::pause: return SheetWords::tr("A pause. A sip of water.");
    case SheetStepKind::swallow: return SheetWords::tr("Wait for what comes late.");
    case SheetStepKind::together:
    case SheetStepKind::cup: break;
  }
  return shown(words::partHeadline(voice(), step.part));
}

QString leadOf(const SheetStep& step, const tasting::Flight& flight) {
  switch (step.kind) {
    case SheetStepKind::pause:
      return flight.cleanser.empty() ? SheetWords::tr("Then comes the cup on its right.") : SheetWords::tr("Take what everybody takes: %1. Then comes the next cup.").arg(shown(flight.cleanser));
    case SheetStepKind::swallow: return SheetWords::tr("Some things show only after swallowing. Do not drink anything meanwhile.");
    case SheetStepKind::together:
    case SheetStepKind::cup: break;
  }
  return shown(words::partLead(voice(), step.part));
}

QuestionRow questionRow(const SheetItem& item, const Filling& filling) {
  const Code cup = item.perCup && item.part != Part::last ? filling.code() : Code{};
  const auto value = filling.value(item.item, cup);
  QuestionRow row;
  row.item = item.item.value;
  row.label = shown(words::askedLabel(voice(), item));
  row.low = item.low.value_or(0);
  row.high = item.high.value_or(0);
  row.text = shown(filling.text(item.item, cup));
  const auto ends = words::scaleEnds(voice(), item.kind);
  row.lowEnd = shown(ends.low);
  row.highEnd = shown(ends.high);
  switch (item.kind) {
    case ItemKind::line:
    case ItemKind::magnitude:
      row.form = QStringLiteral("line");
      row.current = value.value_or(-1);
      if (item.kind == ItemKind::magnitude)
        for (const words::ScaleMark& mark : words::magnitudeMarks(voice())) {
          row.options << shown(mark.word);
          row.marks << mark.at;
        }
      if (value) row.readOut = shown(words::scaleReadOut(voice(), item.kind, *value));
      break;
    case ItemKind::check:
      row.form = QStringLiteral("ticks");
      row.label = shown(words::ticksLabel(voice()));
      addTick(row, item, value);
      break;
    case ItemKind::rank:
    case ItemKind::split:
      row.form = item.kind == ItemKind::rank ? QStringLiteral("rank") : QStringLiteral("points");
      fillCups(row, item, filling);
      if (item.kind == ItemKind::split) row.readOut = SheetWords::tr("%1 points left").arg(filling.pointsLeft(item.item));
      break;
    case ItemKind::worst:
      row.form = QStringLiteral("worst");
      row.pass = SheetWords::tr("I looked and found none");
      break;
    case ItemKind::words:
    case ItemKind::changeOne: row.form = QStringLiteral("words"); break;
    default:
      row.form = QStringLiteral("choice");
      row.options = shownAll(words::answerWords(voice(), item.kind));
      row.current = value ? *value - row.low : -1;
      break;
  }
  if (!item.required && row.form == QStringLiteral("choice")) row.pass = shown(words::passWords(voice(), item));
  return row;
}

void addTick(QuestionRow& row, const SheetItem& item, std::optional<int> value) {
  row.options << shown(item.word);
  row.marks << value.value_or(0);
}

int valueOfOption(const SheetItem& item, int option) {
  return item.kind == ItemKind::line || item.kind == ItemKind::magnitude ? option : option + item.low.value_or(0);
}

QString openReason(const SheetItem& first, int open) {
  const QString what = shown(words::askedLabel(voice(), first));
  return open == 1 ? SheetWords::tr("One thing is left: %1").arg(what) : SheetWords::tr("%1 things are left; the first: %2").arg(open).arg(what);
}

bool nextIsCup(const Filling& filling) {
  const auto& steps = filling.steps();
  const auto at = std::ranges::find(steps, filling.step()) - steps.begin();
  if (at + 1 >= static_cast<std::ptrdiff_t>(steps.size())) return false;
  const SheetStep& next = steps[static_cast<std::size_t>(at) + 1];
  return next.kind == SheetStepKind::pause || (next.kind == SheetStepKind::cup && next.part != Part::late);
}

}  // namespace oddglass::ui
