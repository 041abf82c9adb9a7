#include "canon/canonical.h"
#include "canon/digest.h"

#include <catch2/catch.hpp>

using namespace oddglass::canon;

TEST_CASE("SHA-256 of the standard's own examples") {
  // FIPS 180-4 examples published by NIST (SHA256.pdf): "abc" and the 448-bit message.
  CHECK(hex(sha256({bytesOf("abc")})) == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  CHECK(hex(sha256({bytesOf("abcdbcdecdefdefgefgh"), bytesOf("fghighijhijkijkljklmklmnlmnomnopnopq")})) ==
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

TEST_CASE("hex goes there and back, and nothing else is taken for it") {
  const auto digest = sha256({bytesOf("x")});
  CHECK(fromHex<32>(hex(digest)) == digest);
  CHECK_FALSE(fromHex<32>(hex(digest).substr(2)));
  CHECK_FALSE(fromHex<16>("0123456789ABCDEF0123456789abcdef"));
}

TEST_CASE("canonical text is sorted, dense and whole") {
  CHECK(canonical(Json::parse(R"({ "b" : [1, 2], "a": {"y": null, "x": "ö\n"} })")) == "{\"a\":{\"x\":\"\xC3\xB6\\n\",\"y\":null},\"b\":[1,2]}");
  CHECK_THROWS_AS(canonical(Json::parse("[1.5]")), std::invalid_argument);
  CHECK_THROWS_AS(canonical(Json{{"a", "\xFF"}}), std::invalid_argument);
}
