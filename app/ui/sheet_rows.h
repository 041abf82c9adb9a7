#pragma once

#include "ui/sheet_model.h"

namespace oddglass::ui {

/// The words of a step.
QString headlineOf(const tasting::SheetStep& step);
QString leadOf(const tasting::SheetStep& step, const tasting::Flight& flight);

/// A question as it stands before the taster, with what they have answered about the step's cup.
QuestionRow questionRow(const SheetItem& item, const tasting::Filling& filling);
/// One more word to tick in a row of them.
void addTick(QuestionRow& row, const SheetItem& item, std::optional<int> value);

/// The answer that an option of a question stands for, counted from 0; on a line the place itself.
int valueOfOption(const SheetItem& item, int option);

/// Why a taster cannot go on: what is still to be answered.
QString openReason(const SheetItem& first, int open);

/// True when the next step is another cup, or the pause before one.
bool nextIsCup(const tasting::Filling& filling);

}  // namespace oddglass::ui
