#include "domain/chance.h"

#include <chrono>

namespace oddglass {

Millis SystemClock::now() {
  using namespace std::chrono;
  return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

}  // namespace oddglass
