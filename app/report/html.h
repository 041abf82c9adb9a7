#pragma once

#include "report/document.h"

namespace oddglass::report {

/// The report as one HTML file that is also well-formed XML: figures inline, tables behind them, nothing fetched and no script.
/// Every text is escaped. The same document gives the same bytes.
std::string html(const words::Voice& voice, const Document& document);

}  // namespace oddglass::report
