#pragma once
#include <QObject>
#include "ui/figure_item.h"

namespace oddglass::ui {

/// A part of a page: its heading, what it says, and the picture of it.
struct FigureRow {
  Q_GADGET
  Q_PROPERTY(QString heading MEMBER heading)
  Q_PROPERTY(QString says MEMBER says)
  Q_PROPERTY(oddglass::ui::FigureSource figure READ drawn)

public:
  QString heading, says;  ///< either may be empty; `says`: a sentence a line
  FigureSource figure;
  FigureSource drawn() const { return figure; }
};

}  // namespace oddglass::ui
