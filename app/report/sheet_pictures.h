#pragma once

#include "figures/gaps.h"
#include "figures/map.h"
#include "insight/sheet_findings.h"
#include "insight/sheet_map.h"
#include "report/drawing.h"
#include "words/came_out.h"
#include "words/voice.h"

#include <optional>
#include <vector>

namespace oddglass::report {

/// The lines of a score sheet for one lot beside the reference: one row a word, sorted by its gap. Nothing where no line was asked or no reference is there.
std::optional<figures::GapPicture> gapPicture(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, Slot lot);

/// How the lots lie to each other; nothing where there are no two axes, or no verdict can be given at all.
std::optional<figures::MapPicture> mapPicture(const words::Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const insight::SheetMap& map);

/// One question's points: the means of the lots, and every answer. Nothing where nobody answered.
std::vector<Drawing> pointsDrawings(const words::Voice& voice, const Plan& plan, const insight::PointsLine& line);

/// The figure of a section with counts (two where there are more lots than one holds).
std::vector<Drawing> countDrawings(const words::Voice& voice, const Plan& plan, const insight::SheetFindings& findings, const words::OutSection& section);

/// All figures of what came out of a score sheet.
struct SheetDrawings {
  std::vector<Drawing> lead;                   ///< each of the plan's own lots beside the reference
  std::vector<std::vector<Drawing>> sections;  ///< one list for each section of `out`, in its order
};
SheetDrawings sheetDrawings(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, const words::CameOut& out);

}  // namespace oddglass::report
