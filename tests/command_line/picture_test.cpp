#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// Width and height from the header chunk of a PNG (PNG specification, 11.2.2).
std::pair<unsigned, unsigned> size_of_png(const std::string &bytes) {
    REQUIRE(bytes.size() > 24);
    REQUIRE(bytes.substr(0, 8) == "\x89PNG\r\n\x1a\n");
    const auto number = [&](std::size_t at) {
        unsigned n = 0;
        for (std::size_t i = at; i < at + 4; ++i)
            n = n << 8 | static_cast<unsigned char>(bytes[i]);
        return n;
    };
    return {number(16), number(20)};
}

} // namespace

TEST_CASE("a picture has the size that was asked for, in a file and in a pipe") {
    const TemporaryFolder home;
    const std::string png = (home / "hut.png").string();
    const Ran file =
        run({"picture", "-", "--to", png, "--size", "320x200", "--json"}, {.input = small_document()});
    INFO(file.err);
    REQUIRE(file.code == 0);
    CHECK(size_of_png(text_of(png)) == std::pair(320u, 200u));
    const auto json = nlohmann::json::parse(file.out);
    CHECK(json["width"] == 320);
    CHECK(json["bytes"] == text_of(png).size());
    const Ran pipe = run({"picture", "-", "--to", "-", "--size", "320x200"}, {.input = small_document()});
    CHECK(pipe.code == 0);
    CHECK(pipe.out == text_of(png));
}

TEST_CASE("views and projection change the picture") {
    std::vector<std::string> seen;
    for (const Words &more :
         std::vector<Words>{{}, {"--view", "south"}, {"--view", "plan"}, {"--parallel"}}) {
        Words words = {"picture", "-", "--to", "-", "--size", "200x150"};
        words.insert(words.end(), more.begin(), more.end());
        const Ran ran = run(words, {.input = small_document()});
        REQUIRE(ran.code == 0);
        CHECK(std::find(seen.begin(), seen.end(), ran.out) == seen.end());
        seen.push_back(ran.out);
    }
}

TEST_CASE("no picture is 5, no place for it is 4, and nothing is left behind") {
    const TemporaryFolder home;
    const std::string png = (home / "hut.png").string();
    const Ran blind = run({"picture", "-", "--to", png},
                          {.input = small_document(),
                           .environment = {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json"}}});
    CHECK(blind.code == 5);
    CHECK_FALSE(blind.err.empty());
    const Ran nowhere = run({"picture", "-", "--to", (home / "no/hut.png").string(), "--size", "20x20"},
                            {.input = small_document()});
    CHECK(nowhere.code == 4);
    CHECK_THAT(nowhere.err, ContainsSubstring("no such file or folder"));
    CHECK(run({"picture", "-", "--to", png}, {.input = wrong_document()}).code == 1);
    CHECK(count_entries(home.path()) == 0);
}

TEST_CASE("a picture replaces a picture of before, and what else is there only with --force") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    const auto draw = [&](const std::string &to, const Words &more) {
        Words words = {"picture", "hut.roundlay", "--to", to, "--size", "40x30"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, {.folder = home.path().string()});
    };
    CHECK(draw("a.png", {}).code == 0);
    CHECK(draw("a.png", {"--view", "plan"}).code == 0);
    put(home / "photo.png", "\x89PNG\r\n\x1a\n a photograph");
    for (const std::string own : {"photo.png", "hut.roundlay"}) {
        const std::string before = text_of(home / own);
        const Ran refused = draw(own, {});
        CHECK(refused.code == 4);
        CHECK_THAT(refused.err, ContainsSubstring(own) && ContainsSubstring("--force"));
        CHECK(text_of(home / own) == before);
    }
    CHECK(draw("photo.png", {"--force"}).code == 0);
    CHECK(size_of_png(text_of(home / "photo.png")) == std::pair(40u, 30u));
}
