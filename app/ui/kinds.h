#pragma once
#include "domain/shelf.h"

#include <QString>

namespace oddglass::ui {

/// Words of the shelf in the language of the window.
QString kindWord(Kind kind);
QString allergenWord(Allergen allergen);
QString noteWord(NoteKind kind);
/// "mead, 12.5 %, made here"
QString drinkLine(const Beverage& drink);
/// A gravity in the reader's unit, or a strength, as it is typed into a form: "1.050", "12.5"; empty for nothing.
QString gravityText(std::optional<int> tenThousandths);
QString strengthText(std::optional<int> hundredths);
/// What was typed, as the whole number that is stored. Empty text gives nothing; throws Problem notANumber naming `argument`.
std::optional<int> typedScaled(const QString& text, int scale, const char* argument);
/// An amount that was typed in the reader's unit, in millilitres. Throws Problem empty or notANumber naming `argument`.
int typedVolume(const QString& text, const char* argument);
/// A gravity that was typed in the reader's unit, in 1/10000. Empty text gives nothing; throws Problem notANumber naming `argument`.
std::optional<int> typedGravity(const QString& text, const char* argument);
/// A whole number that must be there. Throws Problem empty or notANumber naming `argument`.
int typedWhole(const QString& text, const char* argument);
/// The same, within its ends. Throws Problem notANumber or outOfRange naming `argument`.
int typedBetween(const QString& text, int low, int high, const char* argument);

}  // namespace oddglass::ui
