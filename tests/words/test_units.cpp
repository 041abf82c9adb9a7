#include "domain/problem.h"
#include "words/problems.h"
#include "words/serving.h"
#include "words/units.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <utility>

using namespace oddglass;
using namespace oddglass::words;
using Catch::Matchers::WithinAbs;

namespace {

Voice in(VolumeUnit volume, GravityUnit gravity = GravityUnit::specific, const char* decimal = ".") {
  Voice voice;
  voice.units = {volume, TemperatureUnit::celsius, gravity};
  voice.decimal = decimal;
  voice.group = decimal == std::string(",") ? "." : ",";
  return voice;
}

}  // namespace

TEST_CASE("a fluid ounce holds what the tables say, and it is said whose ounce it is") {
  // NIST SP 811, appendix B.8: fluid ounce (US) 29.57353 mL, British 28.41306 mL, each rounded to seven figures.
  CHECK_THAT(mlInOunce(VolumeUnit::usFluidOunce), WithinAbs(29.57353, 0.000005));
  CHECK_THAT(mlInOunce(VolumeUnit::imperialFluidOunce), WithinAbs(28.41306, 0.000005));
  // An imperial pint is 20 imperial ounces and 568.26 mL; a US pint 16 US ounces and 473.18 mL (NIST Handbook 44, appendix C).
  CHECK(volume(in(VolumeUnit::imperialFluidOunce), 568) == "20 imperial fl oz");
  CHECK(volume(in(VolumeUnit::usFluidOunce), 473) == "16 US fl oz");
  // What stands on bottles sold in the United States (27 CFR 4.72 and its table of equivalents; from memory).
  CHECK(volume(in(VolumeUnit::usFluidOunce), 750) == "25.4 US fl oz");
  CHECK(volume(in(VolumeUnit::usFluidOunce), 355) == "12 US fl oz");
  CHECK(volume(in(VolumeUnit::usFluidOunce, GravityUnit::specific, ","), 750) == "25,4 US fl oz");
  CHECK(volumeTyped(in(VolumeUnit::usFluidOunce), 750) == "25.36");  // a field says it finely enough to be read back
  CHECK(volume(Voice{}, 2160) == "2,160 mL");
}

TEST_CASE("an amount that is shown in a field is read back as the same millilitres") {
  for (const VolumeUnit unit : {VolumeUnit::millilitre, VolumeUnit::usFluidOunce, VolumeUnit::imperialFluidOunce})
    for (const char* mark : {".", ","}) {
      const Voice voice = in(unit, GravityUnit::specific, mark);
      int wrong = 0;
      for (int ml = 1; ml <= 100000; ml += ml < 2000 ? 1 : 97) wrong += readVolume(voice, volumeTyped(voice, ml)) != ml;
      CHECK(wrong == 0);
      for (int by : {-1, 1}) CHECK((volumeStepped(voice, 30, by) - 30) * by > 0);
    }
  CHECK(volumeTyped(in(VolumeUnit::usFluidOunce), 15) == "0.5");
  CHECK(readVolume(in(VolumeUnit::usFluidOunce), "0,75") == 22);  // 22.18
  for (const char* typed : {"", "a", "1e3", "99999999999"}) CHECK_FALSE(readVolume(in(VolumeUnit::usFluidOunce), typed));
  CHECK_FALSE(readVolume(Voice{}, "15.5"));
}

TEST_CASE("a gravity in degrees Plato is read back as the same gravity, also below water") {
  const Voice plato = in(VolumeUnit::millilitre, GravityUnit::plato);
  // Near the points of the ASBC table: 10 degrees Plato are 1.0400, 12 are 1.0484, 20 are 1.0830 (from memory), and water has none.
  for (const auto& [degrees, sg] : {std::pair{"10", 10400}, {"12", 10484}, {"20", 10830}, {"0", 10000}}) {
    INFO(degrees);
    CHECK(std::abs(*readGravity(plato, degrees) - sg) <= 2);
  }
  CHECK(gravity(plato, 10484) == "12.0 °P");
  CHECK(gravity(Voice{}, 10500) == "1.050");
  CHECK(gravity(Voice{}, 10485) == "1.0485");
  int wrong = 0;
  for (int sg = 9500; sg <= 13000; ++sg) wrong += readGravity(plato, gravityTyped(plato, sg)) != sg;
  CHECK(wrong == 0);
  CHECK(gravity(plato, 9900).starts_with("−2.6"));  // a dry mead, negative as the hydrometer's scale has it
  // What the store refuses is refused in either unit.
  CHECK(*readGravity(plato, "80") > 13000);
  CHECK(*readGravity(plato, "-20") < 9500);
  CHECK_FALSE(readGravity(plato, "twelve"));
}

TEST_CASE("a problem names its ends in the unit in which it was typed") {
  const Problem problem(Trouble::outOfRange, "cup_ml", {{"text", "300"}, {"low", "5"}, {"high", "200"}});
  CHECK(sentence(in(VolumeUnit::usFluidOunce), problem).find("0.17 US fl oz to 6.75 US fl oz") != std::string::npos);
  CHECK(sentence(Voice{}, problem).find("300 lies outside 5 to 200") != std::string::npos);
  const Problem gravityProblem(Trouble::outOfRange, "og", {{"text", "1.4"}, {"low", "0.95"}, {"high", "1.3"}});
  CHECK(sentence(in(VolumeUnit::millilitre, GravityUnit::plato), gravityProblem).find(" °P to ") != std::string::npos);
}

TEST_CASE("a temperature is told in whole degrees of the reader's scale") {
  Voice voice;
  CHECK(temperature(voice, 12) == "12 °C");
  voice.units.temperature = TemperatureUnit::fahrenheit;
  // NIST SP 811, appendix B.8: t in F = 1.8 t in C + 32.
  CHECK(temperature(voice, 12) == "54 °F");
  CHECK(temperature(voice, -18) == "0 °F");
  CHECK(temperature(voice, 100) == "212 °F");
}

// 9/5 and 32 by the definition of the degree Fahrenheit (NIST SP 811, appendix B).
TEST_CASE("a temperature in a field reads back as the same whole degrees Celsius, in both units") {
  words::Voice celsius, fahrenheit;
  fahrenheit.units.temperature = words::TemperatureUnit::fahrenheit;
  for (int degrees = coldestServed; degrees <= warmestServed; ++degrees) {
    CHECK(words::readTemperature(celsius, words::temperatureTyped(celsius, degrees)) == degrees);
    CHECK(words::readTemperature(fahrenheit, words::temperatureTyped(fahrenheit, degrees)) == degrees);
  }
  CHECK(words::temperatureTyped(fahrenheit, 10) == "50");
  CHECK(words::readTemperature(fahrenheit, "54") == 12);
  CHECK(words::readTemperature(celsius, "-5") == -5);
  CHECK_FALSE(words::readTemperature(celsius, "cold"));
  CHECK_FALSE(words::readTemperature(celsius, "1e9"));
}

TEST_CASE("what is on record of the serving is told, and what is not is named") {
  const words::Voice voice;
  CHECK(words::servedLines(voice, {}).empty());
  CHECK(words::notRecordedLine(voice, {}) == "Not recorded: vessel, temperature, swallowing or spitting, place, light and bottle numbers.");
  const Serving serving{"dark cups", 12, Mouthful::asTheyLike};
  CHECK(words::servedLines(voice, serving) == std::vector<std::string>{"Vessel: dark cups.", "Temperature of the drinks: 12 °C.", "Every mouthful: as each one likes."});
  CHECK(words::notRecordedLine(voice, serving) == "Not recorded: place, light and bottle numbers.");
}
