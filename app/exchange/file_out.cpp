#include "exchange/file_out.h"

#include "domain/problem.h"

#include <fstream>

namespace oddglass::exchange {

namespace fs = std::filesystem;

void writeWhole(const fs::path& file, std::string_view text) {
  std::error_code error;
  if (file.has_parent_path()) fs::create_directories(file.parent_path(), error);
  if (error) throw Problem(Trouble::storeReadOnly, "out", {{"file", file.parent_path().string()}});
  const fs::path part = file.string() + ".part";
  std::ofstream out(part, std::ios::binary | std::ios::trunc);
  if (!out) throw Problem(Trouble::storeReadOnly, "out", {{"file", file.string()}});
  out.write(text.data(), static_cast<std::streamsize>(text.size()));
  out.close();
  if (!out) {
    fs::remove(part, error);
    throw Problem(Trouble::diskFull, "out", {{"file", file.string()}});
  }
  fs::rename(part, file, error);
  if (!error) return;
  fs::remove(part, error);
  throw Problem(Trouble::storeReadOnly, "out", {{"file", file.string()}});
}

}  // namespace oddglass::exchange
