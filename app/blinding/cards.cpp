#include "blinding/cards.h"

#include <numeric>

namespace oddglass::blinding {

std::vector<std::size_t> dealtCards(int places, std::size_t kinds, Stream& orders) {
  std::vector<std::size_t> dealt;
  while (static_cast<int>(dealt.size()) < places) {
    std::vector<std::size_t> cards(kinds);
    std::iota(cards.begin(), cards.end(), std::size_t{0});
    orders.shuffle(cards);
    for (std::size_t card : cards)
      if (static_cast<int>(dealt.size()) < places) dealt.push_back(card);
  }
  return dealt;
}

}  // namespace oddglass::blinding
