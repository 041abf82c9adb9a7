#pragma once

#include "words/voice.h"

#include <optional>

namespace oddglass::words {

/// An amount of millilitres in the reader's unit: "15 mL", "0.5 US fl oz", "25.4 US fl oz". Below ten ounces it has as many decimals as it takes to read the same whole
/// millilitres back, above at most one.
std::string volume(const Voice& voice, long long ml);
/// The name of that unit: "mL", "US fl oz", "imperial fl oz".
std::string volumeUnit(const Voice& voice);
/// The same amount without its unit and without thousands, as it stands in a field; it reads back as the same millilitres.
std::string volumeTyped(const Voice& voice, int ml);
/// What was typed into such a field, in whole millilitres; nothing when it is no number or beyond a million of them.
std::optional<int> readVolume(const Voice& voice, std::string_view typed);
/// The next amount up or down, by +1 or -1: 5 mL, or the next quarter of an ounce.
int volumeStepped(const Voice& voice, int ml, int by);
/// One fluid ounce in millilitres. US: 1/128 of a gallon of 231 cubic inches, 29.5735295625 (NIST Handbook 44, appendix C). Imperial: 1/160 of
/// a gallon of 4.54609 litres, 28.4130625 (Weights and Measures Act 1985, schedule 1).
double mlInOunce(VolumeUnit ounce);

/// A gravity from 1/10000: 10500 is "1.050", or "12.4 °P". Degrees Plato after the cubic of `planning/gravity`.
std::string gravity(const Voice& voice, int tenThousandths);
/// How far a gravity is above another, both in 1/10000: "0.010", or "2.5 °P".
std::string gravityBetween(const Voice& voice, int higher, int lower);
/// "SG" or "°P".
std::string gravityUnit(const Voice& voice);
/// A gravity without its unit, as it stands in a field; it reads back as the same 1/10000.
std::string gravityTyped(const Voice& voice, int tenThousandths);
/// What was typed into such a field, in 1/10000; nothing when it is no number. Degrees Plato outside the cubic's range go on in a straight line, so
/// that what is out of range stays so.
std::optional<int> readGravity(const Voice& voice, std::string_view typed);

/// A temperature from whole degrees Celsius: "12 °C", "54 °F".
std::string temperature(const Voice& voice, int celsius);
/// "°C" or "°F".
std::string temperatureUnit(const Voice& voice);
/// A temperature without its unit, as it stands in a field; it reads back as the same whole degrees Celsius.
std::string temperatureTyped(const Voice& voice, int celsius);
/// What was typed into such a field, to whole degrees Celsius; nothing when it is no number or beyond a thousand of them.
std::optional<int> readTemperature(const Voice& voice, std::string_view typed);

}  // namespace oddglass::words
