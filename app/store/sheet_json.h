#pragma once

#include "canon/canonical.h"
#include "domain/sheet.h"

namespace oddglass::store {

/// A question of a sheet as JSON; what only a score sheet has stands there only where it says something. The keys are described in
/// demo_sessions/README.md. Reading throws Problem brokenReference naming the key.
canon::Json itemJson(const SheetItem& item);
SheetItem itemFrom(const canon::Json& json);

/// What only a sealed score sheet has.
canon::Json sheetPlanJson(const SheetPlan& sheet);
SheetPlan sheetPlanFrom(const canon::Json& json);

/// What only the draft of a score sheet has.
canon::Json sheetDraftJson(const SheetDraft& sheet);
SheetDraft sheetDraftFrom(const canon::Json& json);

}  // namespace oddglass::store
