#pragma once

#include "report/document.h"

namespace oddglass::report {

/// The report as JSON: the numbers at full precision, the sentences beside them, null where there is no number. Keys are lower case
/// with underscores and only ever added to. The maker's part is there only for the maker. Problem stillSealed before the reveal.
std::string json(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings, For whom);

}  // namespace oddglass::report
