#pragma once
#include "ui/people_model.h"

namespace oddglass::ui {

/// What the page of the people is read from.
struct PeopleModel::Read {
  std::vector<Taster> people;
  std::vector<CardWish> cards;
  std::vector<std::string> noticed;   ///< word by word, without any person
  std::vector<std::string> better;    ///< of the brewer
};

}  // namespace oddglass::ui
