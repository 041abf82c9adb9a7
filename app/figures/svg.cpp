#include "figures/svg.h"

#include <array>
#include <charconv>
#include <cmath>

namespace oddglass::figures {
namespace {

std::string number(double value) {
  std::array<char, 64> digits{};
  const double rounded = std::round(value * 100) / 100 + 0.0;
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), rounded, std::chars_format::fixed, 2).ptr;
  std::string text(digits.data(), end);
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

std::string with(std::string_view name, double value) { return ' ' + std::string(name) + "=\"" + number(value) + '"'; }
std::string with(std::string_view name, std::string_view value) { return ' ' + std::string(name) + "=\"" + escaped(value) + '"'; }

const std::string& colour(const Inks& inks, Role role) {
  switch (role) {
    case Role::ink: return inks.ink;
    case Role::muted: return inks.muted;
    case Role::hair: return inks.hair;
    case Role::accent: return inks.accent;
    case Role::soft: return inks.soft;
  }
  return inks.ink;
}

std::string_view anchorName(Anchor anchor) {
  switch (anchor) {
    case Anchor::start: return "start";
    case Anchor::middle: return "middle";
    case Anchor::end: return "end";
  }
  return "start";
}

/// Writes one shape up to its closing tag; `inside` is what stands within it.
struct Writer {
  const Inks& inks;
  Role role;
  std::string inside;

  std::string closed(std::string tag, std::string_view name) const {
    return inside.empty() ? tag + "/>" : tag + '>' + inside + "</" + std::string(name) + '>';
  }
  std::string operator()(const Line& l) const {
    std::string tag = "<line" + with("x1", l.x1) + with("y1", l.y1) + with("x2", l.x2) + with("y2", l.y2) +
                      with("stroke", colour(inks, role)) + with("stroke-width", l.stroke);
    if (l.dashed) tag += with("stroke-dasharray", dash);
    return closed(tag, "line");
  }
  std::string operator()(const Rect& r) const {
    std::string tag = "<rect" + with("x", r.x) + with("y", r.y) + with("width", r.width) + with("height", r.height) +
                      with("rx", r.radius) + with("fill", colour(inks, role));
    if (r.outlined) tag += with("stroke", colour(inks, r.outline)) + with("stroke-width", 1);
    return closed(tag, "rect");
  }
  std::string operator()(const Disc& d) const {
    return closed("<circle" + with("cx", d.x) + with("cy", d.y) + with("r", d.radius) + with("fill", colour(inks, role)), "circle");
  }
  std::string operator()(const Ring& r) const {
    return closed("<circle" + with("cx", r.x) + with("cy", r.y) + with("r", r.radius) + with("fill", "none") +
                      with("stroke", colour(inks, role)) + with("stroke-width", r.stroke), "circle");
  }
  std::string operator()(const Ellipse& e) const {
    return closed("<ellipse" + with("cx", e.x) + with("cy", e.y) + with("rx", e.rx) + with("ry", e.ry) +
                      with("transform", "rotate(" + number(e.turn) + ' ' + number(e.x) + ' ' + number(e.y) + ')') + with("fill", "none") +
                      with("stroke", colour(inks, role)) + with("stroke-width", e.stroke), "ellipse");
  }
  std::string operator()(const Text& t) const {
    return "<text" + with("x", t.x) + with("y", t.y) + with("font-size", t.size) + with("text-anchor", anchorName(t.anchor)) +
           with("fill", colour(inks, role)) + '>' + inside + escaped(t.text) + "</text>";
  }
};

/// How many bytes a character of well-formed UTF-8 takes at `at`, or 0 where it is not well formed or XML forbids it.
std::size_t allowedAt(std::string_view text, std::size_t at) {
  const auto byte = [&](std::size_t i) { return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : 0U; };
  const auto follows = [&](std::size_t i) { return (byte(i) & 0xC0U) == 0x80U; };
  const unsigned first = byte(0);
  if (first < 0x80) return first >= 0x20 && first != 0x7F ? 1 : first == '\t' || first == '\n' || first == '\r' ? 1 : 0;
  if (first >= 0xC2 && first <= 0xDF) return follows(1) ? 2 : 0;
  if (first >= 0xE0 && first <= 0xEF) {
    if (!follows(1) || !follows(2)) return 0;
    const unsigned point = (first & 0xFU) << 12 | (byte(1) & 0x3FU) << 6 | (byte(2) & 0x3FU);
    return point < 0x800 || (point >= 0xD800 && point <= 0xDFFF) || point >= 0xFFFE ? 0 : 3;
  }
  if (first >= 0xF0 && first <= 0xF4) {
    if (!follows(1) || !follows(2) || !follows(3)) return 0;
    const unsigned point = (first & 0x7U) << 18 | (byte(1) & 0x3FU) << 12 | (byte(2) & 0x3FU) << 6 | (byte(3) & 0x3FU);
    return point < 0x10000 || point > 0x10FFFF ? 0 : 4;
  }
  return 0;
}

}  // namespace

std::string escaped(std::string_view text) {
  std::string out;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t bytes = allowedAt(text, at);
    if (bytes == 0) {
      ++at;
      continue;
    }
    switch (text[at]) {
      case '&': out += "&amp;"; break;
      case '<': out += "&lt;"; break;
      case '>': out += "&gt;"; break;
      case '"': out += "&quot;"; break;
      case '\'': out += "&#39;"; break;
      default: out += text.substr(at, bytes);
    }
    at += bytes;
  }
  return out;
}

std::string svg(const Figure& figure, const Inks& inks) {
  std::string out = "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"" + with("width", figure.width) + with("height", figure.height) +
                    " viewBox=\"0 0 " + number(figure.width) + ' ' + number(figure.height) + '"' + with("font-family", inks.family) + ">\n";
  out += "<title>" + escaped(figure.title) + "</title>\n<desc>" + escaped(figure.sentence) + "</desc>\n";
  for (const Mark& mark : figure.marks) {
    const std::string inside = mark.readOut.empty() ? "" : "<title>" + escaped(mark.readOut) + "</title>";
    out += std::visit(Writer{inks, mark.role, inside}, mark.shape) + '\n';
  }
  return out + "</svg>\n";
}

}  // namespace oddglass::figures
