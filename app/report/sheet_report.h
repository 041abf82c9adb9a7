#pragma once

#include "insight/sheet_findings.h"
#include "report/document.h"

#include <string>

namespace oddglass::report {

/// The report of a revealed (or broken) score sheet, as for every other method: see document.h and json.h.
Document document(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, For whom);
std::string json(const words::Voice& voice, const RevealedSession& session, const insight::SheetFindings& findings, For whom);

/// The report of any session, by its own findings.
Document documentOf(const words::Voice& voice, const RevealedSession& session, For whom);
std::string jsonOf(const words::Voice& voice, const RevealedSession& session, For whom);

}  // namespace oddglass::report
