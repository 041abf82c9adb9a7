#pragma once

#include "words/voice.h"

#include <optional>

namespace oddglass::words {

/// A whole number with the reader's thousands: "1,000".
std::string whole(const Voice& voice, long long value);

/// A number with a fixed count of decimals, 0 to 9, rounded half away from zero as the digits of the double say: "3.6".
std::string decimal(const Voice& voice, double value, int places);

/// A strength from 1/100 % by volume: 1250 is "12.5 %".
std::string strength(const Voice& voice, int hundredths);

/// A number as somebody typed it, with a comma or a point before the fraction, either minus, blanks around it allowed; nothing when it is none.
std::optional<double> readNumber(std::string_view text);
/// A whole number as typed, nothing when it is none.
std::optional<long long> readWhole(std::string_view text);

/// "one" to "twelve" in words, digits above: for headlines.
std::string spelled(const Voice& voice, int count);

/// How often something of a probability happens, 0..1: "about 4 times in 1,000". Neither "never" nor "always" nor 0 comes out of it:
/// below 1 in 1,000 it is "less than once in 1,000", above 99 in 100 "more than 99 times in 100".
std::string timesIn(const Voice& voice, double probability);

/// A probability, 0..1, in the words people use, rounded down so that it promises no more than it holds: "about half the time", "more than 8
/// times in 10". Below 1 in 20 "less than once in 20".
std::string roughlyOften(const Voice& voice, double probability);
/// The other side of `roughlyOften`: how often it would be missed, when it is found with this probability: "about two times in three".
std::string roughlyMissed(const Voice& voice, double probability);

/// A share of people, 0..1, as one end of a range, rounded outwards: "none" only for 0, "all" only for 1, else "hardly any", "about 3 in 10",
/// "about half", "nearly all".
enum class End { low, high };
std::string shareEnd(const Voice& voice, double share, End end);
/// "from none to about half".
std::string shareRange(const Voice& voice, double low, double high);
/// A limit in 1/1000 of people: 300 is "3 in 10", 250 "1 in 4", 333 "333 in 1,000".
std::string shareLimit(const Voice& voice, int perMille);

/// The same as a share of times: 300 is "3 times in 10", 500 "half the time", 100 "once in 10".
std::string timesLimit(const Voice& voice, int perMille);
/// "twice", "three times"; for two and more.
std::string howOften(const Voice& voice, int times);

/// A risk that was set, in 1/1000: 50 is "5 times in 100", 10 "once in 100", 5 "5 times in 1,000".
std::string risk(const Voice& voice, int perMille);

/// "1 person", "5 people" and so on for what the program counts.
std::string people(const Voice& voice, int count);
std::string tastings(const Voice& voice, int count);
std::string rounds(const Voice& voice, int count);
std::string cups(const Voice& voice, int count);
std::string bottles(const Voice& voice, int count);
std::string minutes(const Voice& voice, int count);
std::string places(const Voice& voice, int count);

}  // namespace oddglass::words
