#include "kernel/document/document.h"
#include "kernel/document/limits.h"
#include "tests/document/sample.h"
#include "tests/fuzz/check_document.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <chrono>
#include <random>
#include <string>
#include <vector>

using namespace roundlay;
using namespace roundlay::test;

namespace {

using Random = std::mt19937;

std::size_t below(Random &random, std::size_t bound) {
    return bound == 0 ? 0 : random() % bound;
}

const std::vector<std::string> tokens{"\"",
                                      "'",
                                      "\"\"\"",
                                      "'''",
                                      "[",
                                      "]",
                                      "[[",
                                      "]]",
                                      "{",
                                      "}",
                                      "=",
                                      ",",
                                      ".",
                                      "#",
                                      "\n",
                                      "\r\n",
                                      "\r",
                                      "\t",
                                      " ",
                                      "\\",
                                      "\\u0000",
                                      "\\U0010FFFF",
                                      "nan",
                                      "inf",
                                      "-",
                                      "1e999",
                                      "0x",
                                      "9223372036854775808",
                                      "1979-05-27",
                                      "true",
                                      "\"1/0 in\"",
                                      "\"9999999999999999999999 ft\"",
                                      "\u00bd",
                                      "\u2033",
                                      "\xff",
                                      "\xc3",
                                      std::string(1, '\0'),
                                      "[wall]",
                                      "[[rounds]]",
                                      "[[wall]]",
                                      "[[opening]]",
                                      "wall",
                                      "between = [\"A\", \"B\"]",
                                      "kind = \"stated\"",
                                      "a.b.c.d",
                                      "_"};

/// One careless stroke of an editor.
void mutate(Random &random, std::string &text, const std::vector<std::string> &corpus) {
    const std::size_t at = below(random, text.size() + 1), length = below(random, 30);
    switch (below(random, 7)) {
    case 0:
        text.insert(at, tokens[below(random, tokens.size())]);
        break;
    case 1:
        text.erase(at, length);
        break;
    case 2:
        text.insert(at, text.substr(below(random, text.size() + 1), length));
        break;
    case 3:
        if (at < text.size()) text[at] = static_cast<char>(below(random, 256));
        break;
    case 4:
        text.replace(at, std::min(length, text.size() - at), tokens[below(random, tokens.size())]);
        break;
    case 5: {
        const std::string &other = corpus[below(random, corpus.size())];
        text = text.substr(0, at) + other.substr(below(random, other.size() + 1));
        break;
    }
    default:
        text.resize(at);
    }
}

std::vector<std::string> corpus() {
    const std::filesystem::path root = ROUNDLAY_ROOT;
    return {
        sample, text_of(root / "models-demo/one-room.roundlay"), text_of(root / "kernel/document/FORMAT.md"),
        "roundlay = 1\nshell = { thickness = \"8 in\" }\nrounds.count = 5\nrounds.pitch = \"9 in\"\n"
        "wall = [{ name = \"A\", toward = \"east\", length = \"16 ft\" }]\nopening = [{ note = 1 }, { }]\n"};
}

std::string repeated(const std::string &part, std::size_t bytes) {
    std::string text;
    text.reserve(bytes + part.size());
    while (text.size() + part.size() <= bytes)
        text += part;
    return text;
}

std::string counted(const std::string &before, const std::string &behind, std::size_t bytes) {
    std::string text;
    for (int i = 0; text.size() < bytes - before.size() - behind.size() - 10; ++i)
        text += before + std::to_string(i) + behind;
    return text;
}

} // namespace

TEST_CASE("Mutated documents never bring the reader or the editor down") {
    const auto start = corpus();
    for (unsigned seed = 0; seed < 4000; ++seed) {
        Random random(seed);
        std::string text = start[below(random, start.size())];
        for (std::size_t strokes = 1 + below(random, 8); strokes > 0; --strokes)
            mutate(random, text, start);
        const auto broken = broken_promise(text);
        INFO("seed " << seed);
        CHECK(broken.value_or("") == "");
    }
}

TEST_CASE("Random bytes and random tokens never bring the reader or the editor down") {
    for (unsigned seed = 0; seed < 4000; ++seed) {
        Random random(seed);
        std::string text;
        for (std::size_t i = below(random, 200); i > 0; --i)
            text += seed % 2 == 0 ? std::string(1, static_cast<char>(below(random, 256)))
                                  : tokens[below(random, tokens.size())];
        const auto broken = broken_promise(text);
        INFO("seed " << seed);
        CHECK(broken.value_or("") == "");
    }
}

TEST_CASE("The largest documents of every bad shape are done with in reasonable time") {
    const std::size_t most = limits::bytes;
    const std::string shapes[] = {
        repeated("[", most),
        repeated("{", most),
        repeated("a.", most),
        repeated("[a]\n", most),
        repeated("\"", most),
        repeated("'''", most),
        repeated("#", most),
        repeated("# \n", most),
        repeated("\n", most),
        repeated("a", most) + "",
        counted("k", " = 1\n", most),
        counted("k", ".a = 1\n", most),
        counted("[a.b", "]\n", most),
        counted("[[wall]]\nk", " = 1\n", most),
        "a = [" + repeated("1,", most - 10) + "]",
        "a = [" + repeated("[],", most - 10) + "]",
        "a = [" + repeated("{},", most - 10) + "]",
        "a = \"" + repeated("x", most - 10) + "\"",
        "[shell]\nname = \"" + repeated("x", most - 30) + "\"",
        "[shell]\nthickness = \"" + repeated("1", most - 30) + "\"",
        "[shell]\nthickness = \"" + repeated(" ", most - 30) + "\"",
        "\"" + repeated("k", most - 10) + "\" = 1",
        "[\"" + repeated("k", 2'000'000) + "\"]\n" + counted("k", " = 1\n", 1'500'000),
        repeated("a.a.a.a.a.a.a.a", most),
        repeated("a = [[[[[[[[[[[[[[[[", most),
        sample + counted("[[opening]]\nk", " = 1\n", most - 2000),
        counted("a.b", " = 1\n", most),
        counted("a.b.c.d.e.f.g.h", " = 1\n", most),
    };
    for (const std::string &text : shapes) {
        REQUIRE(text.size() <= most);
        const auto begin = std::chrono::steady_clock::now();
        const ReadResult result = read_document(text, "x");
        const std::chrono::duration<double> seconds = std::chrono::steady_clock::now() - begin;
        INFO(text.substr(0, 60) << " ... " << result.problems.size());
        CHECK_FALSE(result.problems.empty());
        CHECK(seconds.count() < 20); // it is well under a second: the bound only tells it from a hang
    }
}
