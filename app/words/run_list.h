#pragma once

#include "planning/run_list.h"
#include "words/voice.h"

#include <string>
#include <vector>

namespace oddglass::words {

/// The run of an evening, to be read by whoever hosts it and by everybody else: no lot, no person.
struct RunPage {
  std::string title;
  std::string beforeHeading;
  std::vector<std::string> before;          ///< what is made ready on the days before
  struct Evening {
    std::string heading;                    ///< empty where there is one evening
    std::vector<std::string> headers;       ///< minutes, what
    std::vector<std::vector<std::string>> rows;
  };
  std::vector<Evening> evenings;
  std::string pace;                         ///< where the minutes come from
  std::string law;
};

/// `cups` and `spares`: labels to cut, and those of them that are kept for spilled cups.
RunPage runPage(const Voice& voice, const std::vector<std::vector<planning::RunStep>>& evenings, bool isSheet, int cupMl, int cups, int spares);

}  // namespace oddglass::words
