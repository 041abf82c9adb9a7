#pragma once

#include <QSizeF>

namespace oddglass::print {

/// The two sheets that home printers take.
enum class PaperSize { a4, letter };

/// Width and height in points (1/72 inch), upright: A4 is 210 by 297 mm (ISO 216), Letter 8.5 by 11 inches (ANSI/ASME Y14.1).
QSizeF pointsOf(PaperSize size);

/// Millimetres in points.
constexpr double points(double millimetres) { return millimetres * 72 / 25.4; }

}  // namespace oddglass::print
