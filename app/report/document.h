#pragma once

#include "figures/figure.h"
#include "insight/findings.h"
#include "report/drawing.h"
#include "words/came_out.h"
#include "words/maker.h"
#include "words/voice.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::report {

/// Whom the report is for: everybody in the room, or the maker too.
enum class For { room, maker };

/// A heading with its sentences and at most one table, or figures, each with its own table behind it. Plain text; whoever writes it out makes it safe.
struct Section {
  std::string heading;
  std::vector<std::string> lines;
  std::optional<figures::Table> table;
  std::vector<Drawing> drawings{};
};

/// A report before it is HTML or paper: the verdict, what a test report holds, and the maker's part, which is empty for the room.
/// Nothing before the maker's part names or numbers a person.
struct Document {
  std::string language;
  std::string title;                ///< of the session
  std::string date;                 ///< "Sealed on 2026-03-14, opened on 2026-03-15."
  words::CameOut out;
  std::vector<Drawing> lead{};                   ///< of a score sheet: the drinks beside the reference
  std::vector<std::vector<Drawing>> drawings{};  ///< of a score sheet: for each of `out.sections`; they stand in place of its table
  std::optional<Section> onRequest{};            ///< shown to those who ask for it
  std::vector<Section> room;
  std::string makerHeading;         ///< empty for the room
  std::vector<Section> maker;
};

/// The report of a revealed (or broken) session. It reads the plan as it was sealed, and nothing of today's shelf.
/// Problem stillSealed, naming the session, in any other state.
Document document(const words::Voice& voice, const RevealedSession& session, const insight::Findings& findings, For whom);

/// Throws Problem stillSealed unless the key is open.
void requireOpen(const RevealedSession& session);

}  // namespace oddglass::report
