#include "store/together.h"

#include "store/step.h"

namespace oddglass::store {

Together::Together(Store& store) {
  try {
    writing_ = std::make_unique<Writing>(store);
  } catch (const SQLite::Exception& error) {
    rethrow(error);
  }
}

Together::~Together() = default;

void Together::commit() {
  try {
    writing_->commit();
  } catch (const SQLite::Exception& error) {
    rethrow(error);
  }
}

}  // namespace oddglass::store
