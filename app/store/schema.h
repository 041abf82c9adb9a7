#pragma once

#include <string>
#include <vector>

namespace oddglass::store {

/// The statements of migration 1.
extern const char* const schema1;

/// The statements of migration 2.
extern const char* const schema2;

/// The statements of migration 3.
extern const char* const schema3;

/// The statements of migration 4.
extern const char* const schema4;

/// The statements of migration 5.
extern const char* const schema5;

/// The statements of migration 6.
extern const char* const schema6;

/// The statements of migration 7.
extern const char* const schema7;

/// Tables whose rows are never changed or deleted.
const std::vector<std::string>& keptTables();

/// Tables whose rows may be erased, but never changed.
const std::vector<std::string>& unchangedTables();

}  // namespace oddglass::store
