#pragma once

#include "insight/card.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// A card, read by the person whom it is about: kind, in counts and points, without a rank or a mark.
struct CardPage {
  std::string headline;            ///< to hand over: "This is for Ada. Others look away."
  std::string lead;
  std::vector<std::string> scores;   ///< how they use the scale
  std::vector<std::string> noticed;  ///< what they have shown to notice
  std::string limits;              ///< what a card does not say
  std::vector<std::string> all() const;  ///< every sentence in reading order, without the headline
};
CardPage cardPage(const Voice& voice, const std::string& name, const insight::Card& card);

/// What repeats say of how steady one is, and how that changed; empty without a repeat.
std::vector<std::string> repeatLines(const Voice& voice, const insight::Repeats& repeats);

/// What others may know of a card before it was shown to its person: that there is one.
std::string cardExists(const Voice& voice, const std::string& name, bool isShown);

/// Where nobody asked for one: how a card comes about.
std::string noCard(const Voice& voice, const std::string& name);

/// What is asked of the person: may the brewer see it too?
std::string cardLeave(const Voice& voice);

}  // namespace oddglass::words
