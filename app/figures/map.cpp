#include "figures/map.h"

#include "figures/key.h"
#include "figures/layout.h"
#include "figures/map_frame.h"
#include "figures/scale.h"
#include "figures/whisker.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace oddglass::figures {
namespace {

void requireNumber(const char* name, double value) {
  if (!std::isfinite(value)) throw std::invalid_argument(std::string(name) + ": not a number");
}

void checkMap(const MapPicture& picture) {
  requireWords("xName", picture.xName);
  requireWords("yName", picture.yName);
  requireWords("count", picture.count);
  for (const MapPoint& point : picture.points) {
    requireWords("label", point.label);
    requireNumber("x", point.x);
    requireNumber("y", point.y);
    if (!point.ellipse) continue;
    requireNumber("turn", point.ellipse->turn);
    for (const double half : {point.ellipse->rx, point.ellipse->ry})
      if (!(half >= 0) || !std::isfinite(half)) throw std::invalid_argument("ellipse: not a number from 0 up");
  }
}

struct Block {
  std::vector<std::string> lines;
  double width = 0;
  double height() const { return blockHeight(lines.size()); }
};

std::vector<Block> blocksOf(const std::vector<std::string>& texts, double room, const Measure& measure) {
  std::vector<Block> blocks;
  for (const std::string& text : texts) {
    Block block{wrapped(text, room, measure), 0};
    for (const std::string& line : block.lines) block.width = std::max(block.width, measure(line, smallType));
    blocks.push_back(std::move(block));
  }
  return blocks;
}

/// A place for each block beside its point, or none where there is no room.
std::vector<std::optional<Place>> placesOf(const MapPicture& picture, const MapFrame& frame, const std::vector<Block>& blocks, double furthest) {
  constexpr double clear = 4;  // of the lines at the sides
  const Area inside{frame.box.left + clear, frame.box.top, frame.box.right, frame.box.bottom - clear};
  std::vector<Area> taken;
  for (const MapPoint& point : picture.points) {
    const double x = frame.x(point.x), y = frame.y(point.y);
    taken.push_back({x - shapeReach, y - shapeReach, x + shapeReach, y + shapeReach});
  }
  std::vector<std::optional<Place>> places;
  for (std::size_t i = 0; i < blocks.size(); ++i) {
    places.push_back(freePlace(frame.x(picture.points[i].x), frame.y(picture.points[i].y), blocks[i].width, blocks[i].height(), furthest, inside, taken));
    if (places.back()) taken.push_back(places.back()->area);
  }
  return places;
}

void addNameBlock(Figure& figure, const Block& block, const Place& place, double pointX, double pointY) {
  const Area& area = place.area;
  if (!place.isNear)
    figure.marks.push_back({Line{pointX, pointY, std::clamp(pointX, area.left, area.right), std::clamp(pointY, area.top, area.bottom), 1}, Role::muted, {}});
  const double x = place.anchor == Anchor::start ? area.left : place.anchor == Anchor::end ? area.right : (area.left + area.right) / 2;
  double baseline = area.top + smallType;
  for (const std::string& line : block.lines) {
    figure.marks.push_back({Text{x, baseline, smallType, place.anchor, line}, Role::ink, {}});
    baseline += lineHeight;
  }
}

/// Names beside the points where each finds room, else numbers. True when they are numbers.
bool addNames(Figure& figure, const MapPicture& picture, const MapFrame& frame, const Measure& measure) {
  constexpr double near = 34;
  std::vector<std::string> names, numbers;
  for (const MapPoint& point : picture.points) {
    names.push_back(point.label);
    numbers.push_back(std::to_string(numbers.size() + 1));
  }
  std::vector<Block> blocks = blocksOf(names, 0.4 * figure.width, measure);
  auto places = placesOf(picture, frame, blocks, near);
  const bool crowded = std::any_of(places.begin(), places.end(), [](const auto& place) { return !place; });
  if (crowded) {
    blocks = blocksOf(numbers, figure.width, measure);
    places = placesOf(picture, frame, blocks, figure.width);
  }
  for (std::size_t i = 0; i < blocks.size(); ++i)
    if (places[i]) addNameBlock(figure, blocks[i], *places[i], frame.x(picture.points[i].x), frame.y(picture.points[i].y));
  return crowded;
}

}  // namespace

Figure mapFigure(const MapPicture& picture, double width, const Measure& measure) {
  requireWidth(width);
  checkMap(picture);
  Figure figure{width, 0, picture.title, picture.sentence, {}, picture.table};
  double y = addLines(figure, picture.title, smallType, width, Role::muted, measure) + lineHeight;
  y = addLines(figure, picture.count, y, width, Role::muted, measure) + lineHeight + 6;
  y = addLines(figure, picture.yName, y, width, Role::muted, measure) + 8;
  const MapFrame frame = mapFrame(picture.points, y, width);
  const Area& box = frame.box;
  figure.marks.push_back({Line{box.left + 0.5, box.top, box.left + 0.5, box.bottom, 1}, Role::muted, picture.yName});
  figure.marks.push_back({Line{box.left, box.bottom, box.right, box.bottom, 1}, Role::muted, picture.xName});
  for (const MapPoint& point : picture.points)
    if (const auto& ellipse = point.ellipse)
      figure.marks.push_back({Ellipse{frame.x(point.x), frame.y(point.y), ellipse->rx * frame.unit, ellipse->ry * frame.unit, -ellipse->turn, 1}, Role::muted, ellipse->readOut});
  const bool numbered = addNames(figure, picture, frame, measure);
  for (const MapPoint& point : picture.points) addShape(figure, point.isOpen ? Shape::ring : Shape::disc, frame.x(point.x), frame.y(point.y), point.readOut);

  y = box.bottom + smallType + 6;
  y = addLabels(figure, {{width, picture.xName, Role::muted}}, y, width, measure);
  if (numbered) {
    std::vector<KeyEntry> entries;
    for (std::size_t i = 0; i < picture.points.size(); ++i)
      entries.push_back({{{Text{0, 5, smallType, Anchor::start, std::to_string(i + 1)}, Role::ink, {}}}, picture.points[i].label});
    y = addKey(figure, entries, y + lineHeight + 6, width, measure);
  }
  if (!picture.note.empty()) y = addLines(figure, picture.note, y + lineHeight + 6, width, Role::muted, measure);
  figure.height = y + 6;
  return figure;
}

}  // namespace oddglass::figures
