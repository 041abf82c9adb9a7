#include "figures/interval.h"
#include "figures/svg.h"
#include "figures/well_formed.h"

#include <catch2/catch.hpp>

using namespace oddglass::figures;
using oddglass::tests::whatIsWrong;

namespace {

Figure hostile(const std::string& words) {
  IntervalPicture p;
  p.low = 0.1;
  p.high = 0.6;
  p.point = 0.3;
  p.title = p.none = p.half = p.all = p.range = p.sentence = words;
  return intervalFigure(p, 640);
}

}  // namespace

TEST_CASE("hostile words do not break the SVG") {
  for (const std::string words : {"<script>alert(1)</script>", "\"/><x", "a & b", "it's", "]]>", "\xFF\xFE", "\x01\x02", "&amp;", "\xED\xA0\x80", "\xF0\x9F\x8D\xBA"}) {
    const std::string text = svg(hostile(words));
    INFO(text);
    CHECK(whatIsWrong(text) == "");
    CHECK(text.find("<script") == std::string::npos);
  }
}

TEST_CASE("the well-formed check can fail") {
  CHECK(whatIsWrong("<a><b></a></b>") != "");
  CHECK(whatIsWrong("<a>&nothing;</a>") != "");
  CHECK(whatIsWrong("<a b=c/>") != "");
  CHECK(whatIsWrong("<a>") != "");
}

TEST_CASE("text is escaped, and only forbidden characters are dropped") {
  CHECK(escaped("a<b>&\"'c") == "a&lt;b&gt;&amp;&quot;&#39;c");
  CHECK(escaped("M\xC3\xA9l \xE2\x82\xAC \xF0\x9F\x8D\xBA") == "M\xC3\xA9l \xE2\x82\xAC \xF0\x9F\x8D\xBA");
  CHECK(escaped(std::string("a\0b", 3)) == "ab");       // XML 1.0, production 2: no NUL
  CHECK(escaped("a\xEF\xBF\xBF" "b") == "ab");          // nor U+FFFF
  CHECK(escaped("a\xC0\x80" "b") == "ab");              // not well-formed UTF-8
  CHECK(escaped("a\xE2\x82") == "a");
}

TEST_CASE("a figure always gives the bytes it gave before") {
  const std::string once = svg(hostile("words"));
  CHECK(once == svg(hostile("words")));
  CHECK(once.find("<title>words</title>") != std::string::npos);
  CHECK(once.find("<desc>words</desc>") != std::string::npos);
  CHECK(once.find("viewBox=\"0 0 640 ") != std::string::npos);
}

TEST_CASE("numbers in the SVG are short and have a point") {
  Figure figure{100, 50, "t", "s", {}, {}};
  figure.marks.push_back({Disc{1.0 / 3, -0.001, 2.5}, Role::accent, {}});
  figure.marks.push_back({Ring{100, 20, 4, 2}, Role::muted, "read"});
  const std::string text = svg(figure);
  CHECK(text.find("cx=\"0.33\" cy=\"0\" r=\"2.5\"") != std::string::npos);
  CHECK(text.find("<circle cx=\"100\"") != std::string::npos);
  CHECK(text.find("<title>read</title></circle>") != std::string::npos);
}

TEST_CASE("a dashed line and a turned ellipse keep their dashes and their turn") {
  Figure figure{100, 50, "t", "s", {}, {}};
  figure.marks.push_back({Line{1, 2, 3, 4, 1, true}, Role::ink, {}});
  figure.marks.push_back({Line{5, 2, 3, 4, 1}, Role::ink, {}});
  figure.marks.push_back({Ellipse{50, 25, 20, 10, -30, 1}, Role::accent, "around"});
  const std::string text = svg(figure);
  CHECK(whatIsWrong(text) == "");
  CHECK(text.find("stroke-dasharray=\"4\"") != std::string::npos);
  CHECK(text.find("stroke-dasharray") == text.rfind("stroke-dasharray"));
  CHECK(text.find("rx=\"20\" ry=\"10\" transform=\"rotate(-30 50 25)\" fill=\"none\"") != std::string::npos);
  CHECK(text.find("<title>around</title></ellipse>") != std::string::npos);
}
