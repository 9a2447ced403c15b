// Entry of libFuzzer: the bytes are a document, and what it states goes on through everything that is made of
// it.
#include "kernel/document/document.h"
#include "tests/fuzz/check_document.h"
#include "tests/fuzz/check_shell.h"
#include "tests/fuzz/mutate_document.h"

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <string>

using namespace roundlay;

namespace {

/// Small shells are many shells; and as sheets take a sanitizer seconds, only one shell in so many is drawn.
constexpr std::size_t most_pieces = 60, most_drawn = 10, drawn_of = 32;

test::FuzzDepth depth_for(const std::string &bytes) {
    return {most_pieces, std::hash<std::string>{}(bytes) % drawn_of == 0 ? most_drawn : 0};
}

} // namespace

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t *data, std::size_t size, std::size_t most);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size) {
    const std::string bytes(data, data + size);
    auto broken = test::broken_promise(bytes);
    if (!broken)
        if (const ReadResult read = read_document(bytes, "fuzz"); read.shell)
            broken = test::broken_shell(*read.shell, depth_for(bytes));
    if (broken) {
        std::fprintf(stderr, "%s\n", broken->c_str());
        std::abort();
    }
    return 0;
}

/// Bytes at random seldom leave a document that can be laid out: most strokes change whole lines and values.
extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t *data, std::size_t size, std::size_t most,
                                               unsigned int seed) {
    if (seed % 8 == 0) return LLVMFuzzerMutate(data, size, most);
    const std::string mutated = test::mutated_document(std::string(data, data + size), seed);
    if (mutated.size() > most) return LLVMFuzzerMutate(data, size, most);
    std::copy(mutated.begin(), mutated.end(), data);
    return mutated.size();
}
