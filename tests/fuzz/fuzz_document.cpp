// Entry of libFuzzer.
#include "tests/fuzz/check_document.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size) {
    const std::string bytes(data, data + size);
    if (const auto broken = roundlay::test::broken_promise(bytes)) {
        std::fprintf(stderr, "%s\n", broken->c_str());
        std::abort();
    }
    return 0;
}
