#pragma once

#include "domain/numbers.h"

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace oddglass::words {

/// Gives the text of a marked sentence in the reader's language. The window passes Qt's; without one the English text stands.
using Translate = std::function<std::string(const char* context, const char* source)>;

/// What fills the {places} of a sentence, by name.
using Values = std::map<std::string, std::string>;

/// In which units the reader is told what the store keeps in its own: whole millilitres and 1/10000 of specific gravity.
enum class VolumeUnit { millilitre, usFluidOunce, imperialFluidOunce };
enum class TemperatureUnit { celsius, fahrenheit };
enum class GravityUnit { specific, plato };
struct Units {
  VolumeUnit volume = VolumeUnit::millilitre;
  TemperatureUnit temperature = TemperatureUnit::celsius;
  GravityUnit gravity = GravityUnit::specific;
  bool operator==(const Units&) const = default;
};

/// Everything that depends on the reader: language, how numbers are written, what time it is where they are.
struct Voice {
  Translate translate;
  std::string language = "en"; ///< of the sentences, as in BCP 47
  std::string decimal = ".";  ///< between whole and fraction
  std::string group = ",";    ///< between thousands
  Units units;
  std::function<std::string(Millis)> timeOfDay;  ///< "20:31"; the computer's own time zone where none is given
  std::function<std::string(Millis)> day;        ///< "2026-03-14"; likewise
};

/// The sentence with its {places} filled. What is filled in is never read again, so a name may hold braces. An unknown place stays as written.
std::string say(const Voice& voice, const char* source, const Values& values = {});

/// The sentence for one or for many, {n} filled with the count.
std::string sayCount(const Voice& voice, const char* one, const char* many, long long count, Values values = {});

/// Time of day and day of a moment, as this voice writes them.
std::string timeOfDay(const Voice& voice, Millis at);
std::string day(const Voice& voice, Millis at);

/// "a", "a and b", "a, b and c".
std::string listed(const Voice& voice, const std::vector<std::string>& parts);

/// The text with its first letter a capital, where that is one of A to Z or a letter of western Europe with a mark on it, such as ü; others stay as they are.
std::string capitalised(std::string text);

/// The text in the reader's quotation marks.
std::string quoted(const Voice& voice, std::string_view text);

}  // namespace oddglass::words
