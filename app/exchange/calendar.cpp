#include "exchange/calendar.h"

#include "domain/day.h"
#include "exchange/file_out.h"
#include "session/sittings.h"
#include "shelf/series.h"

#include <stdexcept>
#include <string_view>

namespace oddglass::exchange {
namespace {

// RFC 5545, 3.3.11.
std::string escaped(std::string_view text) {
  std::string out;
  for (const char c : text) {
    if (c == '\\' || c == ';' || c == ',') out += '\\';
    if (c == '\n') out += "\\n";
    else if (c != '\r') out += c;
  }
  return out;
}

// RFC 5545, 3.1: longer lines go on after a line break and a blank. A letter is never cut in two.
void addCalendarLine(std::string& text, std::string_view line) {
  std::size_t room = 75;
  while (line.size() > room) {
    std::size_t end = room;
    while (end > 0 && (static_cast<unsigned char>(line[end]) & 0xC0) == 0x80) --end;
    text.append(line.substr(0, end)).append("\r\n ");
    line.remove_prefix(end);
    room = 74;
  }
  text.append(line).append("\r\n");
}

std::string compact(std::string_view day) {
  std::string digits;
  for (const char c : day)
    if (c != '-') digits += c;
  return digits;
}

std::string stampOf(Millis at) {
  const Millis seconds = (at % 86'400'000 + 86'400'000) % 86'400'000 / 1000;
  const auto two = [](Millis value) { return (value < 10 ? "0" : "") + std::to_string(value); };
  return compact(dayOf(at)) + 'T' + two(seconds / 3600) + two(seconds / 60 % 60) + two(seconds % 60) + 'Z';
}

}  // namespace

std::string calendarOf(const Series& series, const std::vector<Sitting>& sittings, const std::vector<std::string>& summaries, Millis at) {
  if (summaries.size() != sittings.size()) throw std::invalid_argument("summaries: one for each sitting");
  std::string text;
  const auto line = [&](const std::string& each) { addCalendarLine(text, each); };
  line("BEGIN:VCALENDAR");
  line("VERSION:2.0");
  line("PRODID:-//Oddglass//Oddglass//EN");
  for (std::size_t i = 0; i < sittings.size(); ++i) {
    line("BEGIN:VEVENT");
    line("UID:" + series.id.text + '-' + std::to_string(sittings[i].number) + "@oddglass.invalid");
    line("DTSTAMP:" + stampOf(at));
    line("DTSTART;VALUE=DATE:" + compact(sittings[i].dueOn));
    line("SUMMARY:" + escaped(summaries[i]));
    line("TRANSP:TRANSPARENT");
    line("END:VEVENT");
  }
  line("END:VCALENDAR");
  return text;
}

int writeCalendar(store::Store& store, Clock& clock, const SeriesId& id, const std::function<std::string(const Series&, const Sitting&)>& titleOf, const std::filesystem::path& file) {
  const Series series = shelf::series(store, id);
  const auto now = session::sittingsNow(store, id);
  std::vector<Sitting> coming;
  std::vector<std::string> titles;
  for (std::size_t i = 0; i < series.sittings.size(); ++i) {
    if (!session::isToCome(now[i])) continue;
    coming.push_back(series.sittings[i]);
    titles.push_back(titleOf(series, series.sittings[i]));
  }
  writeWhole(file, calendarOf(series, coming, titles, clock.now()));
  return static_cast<int>(coming.size());
}

}  // namespace oddglass::exchange
