#pragma once

#include "stats/methods.h"

#include <catch2/catch.hpp>

#include <map>
#include <string>

/// The method that a check case means; the cases use the names of the literature.
inline oddglass::stats::Method methodOfCase(const std::string& name) {
  using oddglass::stats::Method;
  static const std::map<std::string, Method> names{{"triangle", Method::triangle},
                                                   {"duo-trio", Method::duoTrio},
                                                   {"tetrad", Method::tetrad},
                                                   {"2-AFC", Method::pair},
                                                   {"paired_one_sided", Method::pair},
                                                   {"paired_one_sided/duo-trio", Method::pair},
                                                   {"3-AFC", Method::threeAfc},
                                                   {"two-out-of-five", Method::twoOutOfFive},
                                                   {"paired_two_sided", Method::preference}};
  INFO("case of an unknown method: " << name);
  REQUIRE(names.contains(name));
  return names.at(name);
}
