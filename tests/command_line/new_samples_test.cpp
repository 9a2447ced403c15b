// The samples behind # in a new document.
#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <sstream>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// The samples with their # taken away: each begins behind an empty line and a comment.
std::vector<std::string> samples_of(const std::string &text) {
    std::vector<std::string> samples;
    std::istringstream lines(text);
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        const bool sample = line.size() > 1 && line[0] == '#' && line[1] != ' ';
        if (sample && !inside) samples.emplace_back();
        if (sample) samples.back() += line.substr(1) + "\n";
        inside = sample;
    }
    return samples;
}

} // namespace

TEST_CASE("each sample that new writes behind # is valid for its shell, alone and with the others") {
    for (const Words &words : std::vector<Words>{{},
                                                 {"--shape", "L", "--width", "40ft", "--depth", "30ft"},
                                                 {"--shape", "U", "--notch", "half"},
                                                 {"--shape", "T", "--notch", "square", "--rounds", "9"},
                                                 {"--notch", "saddle"},
                                                 {"--width", "3 m", "--depth", "3 m", "--rounds", "5"}}) {
        Words all = {"new", "-"};
        all.insert(all.end(), words.begin(), words.end());
        const std::string text = run(all).out;
        const std::vector<std::string> samples = samples_of(text);
        INFO(text);
        CHECK(samples.size() >= 1); // a door fits everywhere
        std::string together = text;
        for (const std::string &sample : samples) {
            const Ran alone = run({"check", "-"}, {.input = text + sample});
            CHECK_THAT(alone.out, ContainsSubstring("0 errors, 0 warnings"));
            together += sample;
        }
        CHECK_THAT(run({"check", "-"}, {.input = together}).out, ContainsSubstring("0 errors, 0 warnings"));
    }
    const std::string plain = run({"new"}).out;
    CHECK(samples_of(plain).size() == 3);
    for (const char *header : {"#[[opening]]", "#[[partition]]", "#[[floor]]"})
        CHECK_THAT(plain, ContainsSubstring(header));
}

TEST_CASE("a new document has its sample floor in the shell's own units, loads as well") {
    const Ran feet = run({"new", "-", "--width", "30ft", "--depth", "22ft"});
    CHECK_THAT(feet.out, ContainsSubstring("live_load = \"40 psf\"") &&
                             ContainsSubstring("dead_load = \"10 psf\"") && !ContainsSubstring("\" kPa") &&
                             !ContainsSubstring("load = 1.9"));
    const Ran metres = run({"new", "-", "--width", "9m", "--depth", "7m"});
    CHECK_THAT(metres.out, ContainsSubstring("live_load = ") && !ContainsSubstring("psf\""));
}
