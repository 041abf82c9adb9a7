#include "words/voice.h"

#include "words/mark.h"
#include "words/numbers.h"

#include <array>
#include <ctime>

namespace oddglass::words {
namespace {

std::string localTime(Millis at, const char* pattern) {
  const auto seconds = static_cast<std::time_t>(at / 1000);
  std::tm broken{};
  localtime_r(&seconds, &broken);
  std::array<char, 32> text{};
  return {text.data(), std::strftime(text.data(), text.size(), pattern, &broken)};
}

}  // namespace

std::string say(const Voice& voice, const char* source, const Values& values) {
  const std::string sentence = voice.translate ? voice.translate("words", source) : std::string(source);
  std::string out;
  for (std::size_t at = 0; at < sentence.size();) {
    const std::size_t open = sentence.find('{', at);
    const std::size_t close = open == std::string::npos ? open : sentence.find('}', open);
    if (close == std::string::npos) return out + sentence.substr(at);
    out += sentence.substr(at, open - at);
    const auto found = values.find(sentence.substr(open + 1, close - open - 1));
    out += found == values.end() ? sentence.substr(open, close - open + 1) : found->second;
    at = close + 1;
  }
  return out;
}

std::string sayCount(const Voice& voice, const char* one, const char* many, long long count, Values values) {
  values["n"] = whole(voice, count);
  return say(voice, count == 1 ? one : many, values);
}

std::string timeOfDay(const Voice& voice, Millis at) { return voice.timeOfDay ? voice.timeOfDay(at) : localTime(at, "%H:%M"); }

std::string day(const Voice& voice, Millis at) { return voice.day ? voice.day(at) : localTime(at, "%Y-%m-%d"); }

std::string listed(const Voice& voice, const std::vector<std::string>& parts) {
  if (parts.empty()) return {};
  std::string all = parts.front();
  for (std::size_t i = 1; i + 1 < parts.size(); ++i)
    all = say(voice, QT_TRANSLATE_NOOP("words", "{list}, {next}"), {{"list", all}, {"next", parts[i]}});
  if (parts.size() > 1) all = say(voice, QT_TRANSLATE_NOOP("words", "{list} and {last}"), {{"list", all}, {"last", parts.back()}});
  return all;
}

std::string capitalised(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
  // The second half of Latin-1, in UTF-8: small letters stand 32 behind their capitals; the sign of division among them is no letter.
  if (text.size() > 1 && text[0] == '\xC3' && text[1] >= '\xA0' && text[1] <= '\xBE' && text[1] != '\xB7') text[1] = static_cast<char>(text[1] - 32);
  return text;
}

std::string quoted(const Voice& voice, std::string_view text) {
  return say(voice, QT_TRANSLATE_NOOP("words", "“{text}”"), {{"text", std::string(text)}});
}

}  // namespace oddglass::words
