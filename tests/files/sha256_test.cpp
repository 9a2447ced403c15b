#include "exporters/files/sha256.h"
#include "tests/support/catch.h"

#include <string>

using roundlay::sha256_hex;

// The examples that NIST publishes for FIPS 180-4 (csrc.nist.gov, "SHA-256", one-block, two-block and the
// long message), and the empty message of its SHA-256 short-message vectors.
TEST_CASE("SHA-256 gives the digests of the published examples") {
    struct Example {
        std::string message, digest;
    };
    const Example examples[] = {
        {"abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"},
        {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
         "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"},
        {std::string(1'000'000, 'a'), "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"},
        {"", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"},
    };
    for (const Example &e : examples)
        CHECK(sha256_hex(e.message) == e.digest);
}

// FIPS 180-4 section 5.1.1: from 56 bytes of rest on, the padding needs a block of its own. The digests
// are those of coreutils' sha256sum.
TEST_CASE("SHA-256 pads rests around the end of a block") {
    CHECK(sha256_hex(std::string(55, 'a')) ==
          "9f4390f8d30c2dd92ec9f095b65e2b9ae9b0a925a5258e241c9f1e910f734318");
    CHECK(sha256_hex(std::string(56, 'a')) ==
          "b35439a4ac6f0948b6d6f9e3c6af0f5f590ce20f1bde7090ef7970686ec6738a");
    CHECK(sha256_hex(std::string(64, 'a')) ==
          "ffe054fe7ae0cb6dc65c3af9b61d5209f439851db43d0ba5997337df154668eb");
}
