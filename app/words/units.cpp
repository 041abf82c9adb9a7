#include "words/units.h"

#include "planning/gravity.h"
#include "words/mark.h"
#include "words/numbers.h"

#include <array>
#include <cmath>

namespace oddglass::words {
namespace {

bool isMetric(const Voice& voice) { return voice.units.volume == VolumeUnit::millilitre; }

struct Written {
  double value;
  int places;
};

/// The roundest amount of ounces that is read back as the same millilitres.
Written ounces(VolumeUnit unit, long long ml) {
  struct Grain {
    double size;
    int places;
  };
  static constexpr std::array grains{Grain{1, 0}, Grain{0.5, 1}, Grain{0.25, 2}, Grain{0.1, 1}, Grain{0.01, 2}};
  const double exact = static_cast<double>(ml) / mlInOunce(unit);
  for (const Grain& grain : grains) {
    const double rounded = std::round(exact / grain.size) * grain.size;
    if (std::llround(rounded * mlInOunce(unit)) == ml) return {rounded, grain.places};
  }
  return {exact, 2};
}

/// Degrees Plato change by 250 for each whole of gravity near water; beyond the cubic's ends this slope goes on.
constexpr double slope = 250, lowest = 0.95, highest = 1.3;

double platoFor(int tenThousandths) {
  const double sg = tenThousandths / 10000.0;
  if (sg < lowest) return planning::platoOf(lowest) - (lowest - sg) * slope;
  if (sg > highest) return planning::platoOf(highest) + (sg - highest) * slope;
  return planning::platoOf(sg);
}

double gravityFor(double plato) {
  const double low = planning::platoOf(lowest), high = planning::platoOf(highest);
  if (plato <= low) return lowest - (low - plato) / slope;
  if (plato >= high) return highest + (plato - high) / slope;
  return planning::gravityOf(plato);
}

std::string degrees(const Voice& voice, double plato, int places) {
  return say(voice, QT_TRANSLATE_NOOP("words", "{number} °P"), {{"number", decimal(voice, plato, places)}});
}

/// For a field: nothing between the thousands.
Voice ungrouped(const Voice& voice) {
  Voice plain = voice;
  plain.group.clear();
  return plain;
}

}  // namespace

double mlInOunce(VolumeUnit ounce) { return ounce == VolumeUnit::imperialFluidOunce ? 28.4130625 : 29.5735295625; }

std::string volumeUnit(const Voice& voice) {
  switch (voice.units.volume) {
    case VolumeUnit::millilitre: break;
    case VolumeUnit::usFluidOunce: return say(voice, QT_TRANSLATE_NOOP("words", "US fl oz"));
    case VolumeUnit::imperialFluidOunce: return say(voice, QT_TRANSLATE_NOOP("words", "imperial fl oz"));
  }
  return say(voice, QT_TRANSLATE_NOOP("words", "mL"));
}

std::string volume(const Voice& voice, long long ml) {
  Written ounce = ounces(voice.units.volume, ml);
  if (ounce.value >= 10 && ounce.places > 0) ounce.places = 1;
  const std::string number = isMetric(voice) ? whole(voice, ml) : decimal(voice, ounce.value, ounce.places);
  return say(voice, QT_TRANSLATE_NOOP("words", "{number} {unit}"), {{"number", number}, {"unit", volumeUnit(voice)}});
}

std::string volumeTyped(const Voice& voice, int ml) {
  if (isMetric(voice)) return std::to_string(ml);
  const Written ounce = ounces(voice.units.volume, ml);
  return decimal(ungrouped(voice), ounce.value, ounce.places);
}

std::optional<int> readVolume(const Voice& voice, std::string_view typed) {
  constexpr double most = 1e6;
  const auto number = isMetric(voice) ? std::optional<double>(readWhole(typed)) : readNumber(typed);
  if (!number) return std::nullopt;
  const double ml = isMetric(voice) ? *number : *number * mlInOunce(voice.units.volume);
  if (std::fabs(ml) > most) return std::nullopt;
  return static_cast<int>(std::lround(ml));
}

int volumeStepped(const Voice& voice, int ml, int by) {
  if (isMetric(voice)) return ml + 5 * by;
  const double ounce = mlInOunce(voice.units.volume);
  return static_cast<int>(std::lround((std::round(ml / ounce * 4) + by) / 4 * ounce));
}

std::string gravity(const Voice& voice, int tenThousandths) {
  if (voice.units.gravity == GravityUnit::plato) return degrees(voice, platoFor(tenThousandths), 1);
  return decimal(voice, tenThousandths / 10000.0, tenThousandths % 10 == 0 ? 3 : 4);
}

std::string gravityBetween(const Voice& voice, int higher, int lower) {
  if (voice.units.gravity == GravityUnit::specific) return decimal(voice, (higher - lower) / 10000.0, 3);
  const double fall = platoFor(higher) - platoFor(lower);
  return degrees(voice, fall, fall < 1 ? 2 : 1);
}

std::string gravityUnit(const Voice& voice) {
  return voice.units.gravity == GravityUnit::plato ? say(voice, QT_TRANSLATE_NOOP("words", "°P")) : say(voice, QT_TRANSLATE_NOOP("words", "SG"));
}

std::string gravityTyped(const Voice& voice, int tenThousandths) {
  if (voice.units.gravity == GravityUnit::specific) return gravity(voice, tenThousandths);
  for (int places = 0; places < 2; ++places) {
    const std::string text = decimal(voice, platoFor(tenThousandths), places);
    if (readGravity(voice, text) == tenThousandths) return text;
  }
  return decimal(voice, platoFor(tenThousandths), 2);
}

std::optional<int> readGravity(const Voice& voice, std::string_view typed) {
  const auto number = readNumber(typed);
  if (!number || std::fabs(*number) > 100000) return std::nullopt;
  return static_cast<int>(std::lround((voice.units.gravity == GravityUnit::plato ? gravityFor(*number) : *number) * 10000));
}

std::string temperatureUnit(const Voice& voice) {
  return voice.units.temperature == TemperatureUnit::fahrenheit ? say(voice, QT_TRANSLATE_NOOP("words", "°F")) : say(voice, QT_TRANSLATE_NOOP("words", "°C"));
}

std::string temperatureTyped(const Voice& voice, int celsius) {
  return std::to_string(voice.units.temperature == TemperatureUnit::fahrenheit ? std::lround(celsius * 1.8 + 32) : celsius);
}

std::optional<int> readTemperature(const Voice& voice, std::string_view typed) {
  const auto number = readNumber(typed);
  if (!number || !(std::abs(*number) <= 1000)) return std::nullopt;
  return static_cast<int>(std::lround(voice.units.temperature == TemperatureUnit::fahrenheit ? (*number - 32) / 1.8 : *number));
}

std::string temperature(const Voice& voice, int celsius) {
  if (voice.units.temperature == TemperatureUnit::fahrenheit)
    return say(voice, QT_TRANSLATE_NOOP("words", "{number} °F"), {{"number", whole(voice, std::lround(celsius * 1.8 + 32))}});
  return say(voice, QT_TRANSLATE_NOOP("words", "{number} °C"), {{"number", whole(voice, celsius)}});
}

}  // namespace oddglass::words
