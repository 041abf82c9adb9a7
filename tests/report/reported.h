#pragma once

#include "report/document.h"
#include "report/html.h"
#include "report/json.h"

#include <nlohmann/json.hpp>

#include <string>

namespace report_test {

/// A session's report as HTML and as JSON, in English.
inline std::string htmlOf(const oddglass::RevealedSession& session, oddglass::report::For whom = oddglass::report::For::maker) {
  const oddglass::words::Voice voice;
  return oddglass::report::html(voice, oddglass::report::document(voice, session, oddglass::insight::findingsOf(session), whom));
}
inline nlohmann::json jsonOf(const oddglass::RevealedSession& session, oddglass::report::For whom = oddglass::report::For::maker) {
  return nlohmann::json::parse(oddglass::report::json(oddglass::words::Voice{}, session, oddglass::insight::findingsOf(session), whom));
}

}  // namespace report_test
