#include "report/entry_line.h"

#include "words/history.h"

namespace oddglass::report {

std::string entryLine(const words::Voice& voice, const session::HistoryLine& line, bool showsWords) {
  words::LogDetails details;
  details.code = line.code;
  details.byCode = line.byCode;
  details.reason = line.reason;
  details.heardBy = line.heardBy;
  details.commitmentHolds = line.commitmentHolds;
  details.missing = line.missing;
  details.goOn = line.goOn;
  details.typedBy = line.typedBy;
  if (showsWords) details.words = line.words;
  details.places = line.places;
  details.clockBack = line.clockBack;
  return words::eventLine(voice, {line.seq, line.at, line.event, line.place, line.round, line.goOn, line.readBy}, details);
}

}  // namespace oddglass::report
