#pragma once
#include "figures/figure.h"

#include <QColor>
#include <QString>

class QPainter;

namespace oddglass::print {

/// The colours of a figure by role. The defaults are for paper.
struct Colours {
  QColor ink{"#1d2127"}, muted{"#59616b"}, hair{"#ddd8cd"}, accent{"#2e4a62"}, soft{"#e7edf2"};
};

/// The typeface of figures on the screen and on paper: Inter where it is installed, else DejaVu Sans.
QString figureFamily();

/// Paints the figure at the painter's origin, in points of the figure's own box. Colours and type are set; the painter's state is put back.
void paintFigure(QPainter& painter, const figures::Figure& figure, const Colours& colours = {});

/// How wide a text is in the typeface of figures, in points.
figures::Measure figureMeasure();

}  // namespace oddglass::print
