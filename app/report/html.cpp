#include "report/html.h"

#include "figures/svg.h"
#include "report/pictures.h"
#include "words/report.h"

namespace oddglass::report {
namespace {

using figures::escaped;

constexpr double pictureWidth = 640;

constexpr const char* style = R"(
body{font:16px/1.35 Inter,sans-serif;color:#1d2127;background:#fff;max-width:860px;margin:40px auto;padding:0 20px}
h1{font-size:34px;line-height:1.15;margin:0 0 4px}.verdict{display:flex;gap:16px}.verdict svg{flex:none}
h2{font-size:20px;margin:36px 0 8px;border-top:1px solid #ddd8cd;padding-top:16px}h3{font-size:16px;margin:24px 0 4px}
.quiet{color:#59616b}.lead{font-size:19px}.first{border:2px solid #7a2f5b;border-radius:8px;padding:8px 12px}
table{border-collapse:collapse;font-size:14px;margin:8px 0}th,td{text-align:left;vertical-align:top;padding:3px 12px 3px 0;border-bottom:1px solid #ddd8cd}
p,td,h1{overflow-wrap:anywhere}svg{max-width:100%;height:auto}.wide{overflow-x:auto}
@media print{body{margin:0}.maker{break-before:page}h2,h3{break-after:avoid}}
)";

std::string element(const std::string& name, const std::string& text, const std::string& kind = {}) {
  if (text.empty()) return {};
  return '<' + name + (kind.empty() ? std::string() : " class=\"" + kind + '"') + '>' + escaped(text) + "</" + name + ">\n";
}

std::string tableOf(const figures::Table& table) {
  std::string out = "<div class=\"wide\"><table><thead><tr>";
  for (const std::string& header : table.headers) out += "<th scope=\"col\">" + escaped(header) + "</th>";
  out += "</tr></thead><tbody>\n";
  for (const auto& row : table.rows) {
    out += "<tr>";
    for (const std::string& cell : row) out += "<td>" + escaped(cell) + "</td>";
    out += "</tr>\n";
  }
  return out + "</tbody></table></div>\n";
}

std::string drawnFigures(const std::vector<Drawing>& drawings, const words::ReportWords& text) {
  std::string out;
  for (const Drawing& layOut : drawings) {
    const figures::Figure figure = layOut(pictureWidth, figures::roomFor);
    out += figures::svg(figure) + "<details><summary>" + escaped(text.picture) + "</summary>" + tableOf(figure.table) + "</details>\n";
  }
  return out;
}

std::string sections(const std::vector<Section>& all, const std::string& heading, const words::ReportWords& text) {
  std::string out;
  for (const Section& section : all) {
    out += element(heading, section.heading);
    for (const std::string& line : section.lines) out += element("p", line);
    if (section.table) out += tableOf(*section.table);
    out += drawnFigures(section.drawings, text);
  }
  return out;
}

// Closed until it is opened.
std::string onRequest(const Section& section, const words::ReportWords& text) {
  std::string out = "<details><summary>" + escaped(section.heading) + "</summary>\n";
  for (const std::string& line : section.lines) out += element("p", line);
  return out + drawnFigures(section.drawings, text) + "</details>\n";
}

// `document` holds the figures; none belong to one of several pairs.
std::string verdict(const words::CameOut& out, const words::ReportWords& text, const std::string& heading, const Document* document = nullptr) {
  std::string html;
  for (const std::string& line : out.first) html += element("p", line, "first");
  html += '<' + heading + " class=\"verdict\">" + figures::svg(verdictMark(out.shape, out.word)) + "<span>" + escaped(out.headline) + "</span></" + heading + ">\n";
  html += element("p", out.under, "lead quiet") + element("p", out.count, "lead");
  for (const words::CameOut& pair : out.pairs) html += verdict(pair, text, "h2");
  if (out.interval) {
    html += drawnFigures({drawingOf(picture(*out.interval), figures::intervalFigure)}, text);
  }
  if (document) html += drawnFigures(document->lead, text);
  if (!out.interval || out.range != out.interval->sentence) html += element("p", out.range);  // the picture says it already
  for (const std::string* line : {&out.notSaid, &out.missed, &out.weaker, &out.howKnew, &out.sureness}) html += element("p", *line);
  for (std::size_t i = 0; i < out.sections.size(); ++i) {
    const words::OutSection& section = out.sections[i];
    const bool isDrawn = document && i < document->drawings.size() && !document->drawings[i].empty();
    html += element("h2", section.heading);
    if (isDrawn) html += drawnFigures(document->drawings[i], text);
    for (const std::string& line : section.lines) html += element("p", line);
    if (!isDrawn && !section.rows.empty()) html += tableOf({section.headers, section.rows});
  }
  if (document && document->onRequest) html += onRequest(*document->onRequest, text);
  for (const std::string& line : out.beside) html += element("p", line);
  for (const std::string& line : out.cautions) html += element("p", line);
  for (const std::string* line : {&out.next, &out.promise, &out.decision}) html += element("p", *line);
  if (!out.deviations.empty()) {
    html += element("h2", text.deviationsHeading);
    for (const std::string& line : out.deviations) html += element("p", line);
  }
  return html;
}

}  // namespace

std::string html(const words::Voice& voice, const Document& document) {
  const words::ReportWords text = words::reportWords(voice);
  std::string out = "<!DOCTYPE html>\n<html lang=\"" + escaped(document.language) + "\">\n<head>\n<meta charset=\"utf-8\"/>\n";
  out += "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src &#39;none&#39;; style-src &#39;unsafe-inline&#39;\"/>\n";
  out += "<meta name=\"viewport\" content=\"width=device-width\"/>\n";
  out += "<title>" + escaped(document.title) + "</title>\n<style>" + style + "</style>\n</head>\n<body>\n<main>\n";
  out += element("p", document.title, "quiet") + element("p", document.out.what, "quiet");
  out += verdict(document.out, text, "h1", &document);
  out += sections(document.room, "h2", text);
  out += element("p", document.out.method, "quiet") + element("p", document.date, "quiet");
  if (!document.makerHeading.empty()) out += "<div class=\"maker\">\n" + element("h2", document.makerHeading) + sections(document.maker, "h3", text) + "</div>\n";
  return out + "</main>\n</body>\n</html>\n";
}

}  // namespace oddglass::report
