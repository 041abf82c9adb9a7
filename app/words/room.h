#pragma once

#include "insight/room.h"
#include "words/came_out.h"
#include "words/voice.h"

#include <optional>
#include <string>
#include <vector>

namespace oddglass::words {

/// Rows shown of a long list, the newest.
constexpr std::size_t mostRoomRows = 30;

/// One tasting in the picture: the person beside the room.
struct LeanRow {
  std::string label;               ///< its day and the drink
  std::optional<double> lean;      ///< points; above 0 kinder
  std::optional<double> low, high;
  bool isKinder = false, isHarder = false;  ///< its interval leaves out 0
  std::string word, count, readOut, why;
};

struct LeanPicture {
  std::string title, zero, harder, kinder, sentence;
  double reach = 1;                ///< the scale goes as far both ways, in points
  std::vector<LeanRow> rows;       ///< by day, the newest `mostRoomRows`
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> table;
};

/// What was written against how often it came, a fifth of the scale a row.
struct CurveRow {
  std::string label, word, count, readOut;
  double share = 0, low = 0, high = 1;  ///< 0..1
};
struct CurvePicture {
  std::string title, never, always;
  std::vector<CurveRow> rows;
  std::vector<std::string> headers;
  std::vector<std::vector<std::string>> table;
};

/// The page *You and the room*, for one person alone: how far they lean to their own, then how their expectations hold. Empty texts have nothing to say.
struct RoomPage {
  Shape shape = Shape::dash;
  std::string headline;
  std::string lead;
  std::vector<std::string> lines;  ///< what the headline rests on
  std::optional<LeanPicture> picture;
  OutSection label;                ///< what knowing the labels did, newest first
  OutSection expected;             ///< what was written and what came of it, newest first
  std::optional<CurvePicture> curve;  ///< from 20 on
};
RoomPage roomPage(const Voice& voice, const OwnTastings& tastings, const insight::RoomFindings& findings);

/// What stands there while nobody is marked as the brewer.
std::string nobodysRoom(const Voice& voice);

/// Parts of the page.
std::string leanHeadline(const Voice& voice, const insight::Lean& lean);
std::optional<LeanPicture> leanPicture(const Voice& voice, const OwnTastings& tastings, const insight::Lean& lean);
OutSection labelSection(const Voice& voice, const OwnTastings& tastings, const insight::Label& label);
OutSection expectedSection(const Voice& voice, const OwnTastings& tastings, const insight::RoomFindings& findings);
std::optional<CurvePicture> curvePicture(const Voice& voice, const insight::RoomFindings& findings);

}  // namespace oddglass::words
