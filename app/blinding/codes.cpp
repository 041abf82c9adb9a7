#include "blinding/codes.h"

#include "domain/problem.h"

#include <algorithm>
#include <cstdint>
#include <list>
#include <string>

namespace oddglass::blinding {
namespace {

bool mayStandOnCups(const std::string& digits) {
  auto sorted = digits;
  std::ranges::sort(sorted);
  if (std::ranges::adjacent_find(sorted) != sorted.end()) return false;
  return std::ranges::any_of(digits, [](char d) { return std::string_view("01689").find(d) == std::string_view::npos; });
}

std::vector<Code> listCodes(int digits) {
  const int low = digits == 3 ? 100 : 1000;
  std::vector<Code> all;
  for (int number = low; number < 10 * low; ++number)
    if (mayStandOnCups(std::to_string(number))) all.push_back(Code{number});
  return all;
}

bool fits(Code code, const std::vector<Code>& flight, std::size_t except) {
  for (std::size_t i = 0; i < flight.size(); ++i)
    if (i != except && lookAlike(code, flight[i])) return false;
  return true;
}

constexpr std::size_t none = SIZE_MAX;

}  // namespace

const std::vector<Code>& allCodes(int digits) {
  static const std::vector<Code> three = listCodes(3), four = listCodes(4);
  if (digits == 3) return three;
  if (digits == 4) return four;
  throw Problem(Trouble::outOfRange, "digits", {{"text", std::to_string(digits)}, {"low", "3"}, {"high", "4"}});
}

bool lookAlike(Code a, Code b) {
  auto one = std::to_string(a.value), other = std::to_string(b.value);
  if (one.size() != other.size()) return false;
  int alike = 0;
  for (std::size_t i = 0; i < one.size(); ++i) alike += one[i] == other[i];
  if (alike >= 2) return true;
  std::ranges::sort(one);
  std::ranges::sort(other);
  return one == other;
}

std::vector<std::vector<Code>> drawCodes(int flights, int perFlight, Stream& codes) {
  for (auto [count, argument] : {std::pair{flights, "flights"}, std::pair{perFlight, "per_flight"}})
    if (count < 1) throw Problem(Trouble::outOfRange, argument, {{"text", std::to_string(count)}, {"low", "1"}, {"high", "4440"}});
  const std::int64_t wanted = std::int64_t{flights} * perFlight;
  const auto& pool = allCodes(wanted <= static_cast<std::int64_t>(allCodes(3).size()) ? 3 : 4);
  const Problem tooMany(Trouble::tooManyCups, "cups", {{"have", std::to_string(pool.size())}, {"need", std::to_string(wanted)}});
  if (wanted > static_cast<std::int64_t>(pool.size())) throw tooMany;

  std::vector<Code> shuffled = pool;
  codes.shuffle(shuffled);
  std::list<Code> left(shuffled.begin(), shuffled.end());
  std::vector<std::vector<Code>> drawn;
  for (int f = 0; f < flights; ++f) {
    std::vector<Code> flight;
    while (static_cast<int>(flight.size()) < perFlight) {
      auto next = std::ranges::find_if(left, [&](Code code) { return fits(code, flight, none); });
      if (next != left.end()) {
        flight.push_back(*next);
        left.erase(next);
        continue;
      }
      const bool swapped = [&] {
        for (auto& earlier : drawn)
          for (std::size_t i = 0; i < earlier.size(); ++i) {
            if (!fits(earlier[i], flight, none)) continue;
            auto other = std::ranges::find_if(left, [&](Code code) { return fits(code, earlier, i); });
            if (other == left.end()) continue;
            flight.push_back(earlier[i]);
            earlier[i] = *other;
            left.erase(other);
            return true;
          }
        return false;
      }();
      if (!swapped) throw tooMany;
    }
    drawn.push_back(std::move(flight));
  }
  return drawn;
}

}  // namespace oddglass::blinding
