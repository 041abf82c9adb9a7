#include "disk.h"
#include "exchange/file_out.h"
#include "fixed.h"
#include "trouble.h"

#include <catch2/catch.hpp>

using namespace oddglass;
using exchange::writeWhole;
using testing::troubleOf;

TEST_CASE("a file is there whole or not at all") {
  testing::Folder folder;
  const auto file = folder / "deep/down.json";
  writeWhole(file, "first");
  CHECK(testing::bytesOfFile(file) == "first");
  {
    testing::SmallDisk full(1000);
    CHECK(troubleOf([&] { writeWhole(file, std::string(100000, 'x')); }) == Trouble::diskFull);
  }
  CHECK(testing::bytesOfFile(file) == "first");
  CHECK(troubleOf([&] { writeWhole(folder / "deep", "x"); }) == Trouble::storeReadOnly);
  CHECK(troubleOf([&] { writeWhole(file / "below.json", "x"); }) == Trouble::storeReadOnly);
  CHECK(testing::everythingIn(folder.path()).size() == 2);  // the folder and the first file, and no part of any other
}
