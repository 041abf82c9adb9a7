#include "stats/methods.h"

#include "stats/error.h"

#include <array>
#include <utility>

namespace oddglass::stats {

double guessing(Method method) {
  switch (method) {
    case Method::triangle:
    case Method::tetrad:
    case Method::threeAfc: return 1.0 / 3.0;
    case Method::twoOutOfFive: return 1.0 / 10.0;
    case Method::duoTrio:
    case Method::pair:
    case Method::preference: return 1.0 / 2.0;
  }
  throw BadInput("method", "unknown");
}

Method methodNamed(std::string_view name) {
  static constexpr std::array<std::pair<std::string_view, Method>, 7> names{{{"triangle", Method::triangle},
                                                                             {"duo-trio", Method::duoTrio},
                                                                             {"tetrad", Method::tetrad},
                                                                             {"two-out-of-five", Method::twoOutOfFive},
                                                                             {"pair", Method::pair},
                                                                             {"three-afc", Method::threeAfc},
                                                                             {"preference", Method::preference}}};
  for (const auto& [text, method] : names)
    if (text == name) return method;
  throw BadInput("method", "there is no method called " + std::string(name));
}

}  // namespace oddglass::stats
