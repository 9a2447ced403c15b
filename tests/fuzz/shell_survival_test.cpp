#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "tests/fuzz/check_shell.h"
#include "tests/fuzz/mutate_document.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// Six walls' worth of work at most: what is asked here is whether it holds, not how long it takes.
constexpr FuzzDepth shallow{120, 25};

const std::string plain = "roundlay = 1\n[shell]\nthickness = \"200 mm\"\n"
                          "[[wall]]\nname = \"A\"\ntoward = \"east\"\nlength = \"6 m\"\n"
                          "[[wall]]\nname = \"B\"\ntoward = \"north\"\nlength = \"5 m\"\n"
                          "[[wall]]\nname = \"C\"\ntoward = \"west\"\nlength = \"6 m\"\n"
                          "[[wall]]\nname = \"D\"\ntoward = \"south\"\nlength = \"5 m\"\n"
                          "[rounds]\npitch = \"220 mm\"\ncount = 6\n";

} // namespace

TEST_CASE(
    "What mutated documents state is laid out, cut, reviewed, listed and drawn, or refused with words") {
    int stated = 0, laid_out = 0;
    for (unsigned seed = 0; seed < 400; ++seed) {
        const std::string text = mutated_document(plain, seed);
        const ReadResult read = read_document(text, "mutated");
        if (!read.shell) continue;
        ++stated;
        laid_out += !lay_out(*read.shell).pieces.empty();
        INFO("seed " << seed << "\n" << text);
        CHECK(broken_shell(*read.shell, shallow).value_or("") == "");
    }
    INFO(stated << " of 400 were shells, " << laid_out << " of them could be laid out");
    CHECK(stated > 60); // else it is the reader alone that is tried
    CHECK(laid_out > 25);
}
