// Exports of some pieces alone.
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <set>

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

namespace {

std::set<std::string> files_in(const fs::path &folder) {
    std::set<std::string> files;
    for (const auto &entry : fs::recursive_directory_iterator(folder))
        if (!entry.is_directory()) files.insert(fs::relative(entry.path(), folder).string());
    return files;
}

/// All old but A-02 and the joists of the floor; C-01 has a new face.
std::string old_hut() {
    std::string text = small_document();
    for (const char *wall : {"A", "B", "C", "D"})
        for (int round = 1; round <= (wall[0] == 'B' || wall[0] == 'D' ? 5 : 4); ++round)
            if (wall[0] != 'A' || round != 2)
                text += "\n[[log]]\nwall = \"" + std::string(wall) + "\"\nround = " + std::to_string(round) +
                        "\nfabric = \"kept\"\n";
    return text + "\n[[mend]]\nwall = \"C\"\nround = 1\nkind = \"face\"\nfrom = \"500 mm\"\nto = \"900 mm\"\n"
                  "depth = \"40 mm\"\n";
}

struct Home {
    TemporaryFolder folder;
    explicit Home(const std::string &text) { put(folder / "hut.roundlay", text); }
    Ran export_with(Words more) const {
        Words words = {"export", "hut.roundlay", "--to", "out"};
        words.insert(words.end(), more.begin(), more.end());
        RunOptions options;
        options.folder = folder.path().string();
        return run(words, options);
    }
    fs::path out() const { return folder / "out"; }
};

} // namespace

TEST_CASE("export --pieces makes files of some pieces alone, and none that shows the whole shell") {
    const Home home(small_document());
    const Ran ran = home.export_with({"--pieces", "A-02-1"});
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    const auto files = files_in(home.out());
    for (const char *name : {"cut-sheets.pdf", "pieces.csv", "tags.pdf", "pieces/A-02-1.step",
                             "operations/A-02-1.json", "templates.pdf"})
        CHECK(files.contains(name));
    for (const char *name : {"shell.step", "picture.png", "book.pdf", "totals.csv", "pieces/A-01-1.step",
                             "packing-list.pdf", "yard.html"})
        CHECK_FALSE(files.contains(name));
    const std::string list = text_of(home.out() / "pieces.csv");
    CHECK(std::ranges::count(list, '\n') == 2); // its header and one piece
    CHECK_THAT(list, ContainsSubstring("A-02-1"));
}

TEST_CASE("What was made of all pieces stays beside what is made of some") {
    const Home home(small_document());
    REQUIRE(home.export_with({"--only", "step"}).code == 0);
    const auto all = files_in(home.out());
    REQUIRE(home.export_with({"--only", "step", "--pieces", "A-02-1"}).code == 0);
    CHECK(files_in(home.out()) == all);
}

TEST_CASE("New wood, mended logs and logs to be cut are told apart in an old house") {
    const Home home(old_hut());
    const auto pieces_of = [&](const char *which) {
        fs::remove_all(home.out());
        const Ran ran = home.export_with({"--only", "step", "--pieces", which});
        INFO(ran.err);
        REQUIRE(ran.code == 0);
        auto files = files_in(home.out());
        files.erase("manifest.json");
        return files;
    };
    const std::set<std::string> mended{"pieces/C-01-1.step", "pieces/C-01-1-M1.step"};
    CHECK(pieces_of("mended") == mended);
    CHECK(pieces_of("new") ==
          std::set<std::string>{"pieces/A-02-1.step", "pieces/C-01-1-M1.step", "pieces/G-J01.step"});
    CHECK(pieces_of("cut") == std::set<std::string>{"pieces/A-02-1.step", "pieces/C-01-1.step",
                                                    "pieces/C-01-1-M1.step", "pieces/G-J01.step"});
    CHECK(pieces_of("C-01") == mended);
}

TEST_CASE("A piece that there is not, a sort of which there is none, and what shows all are refused") {
    const Home home(small_document());
    const Ran none = home.export_with({"--pieces", "A-02-9"});
    CHECK(none.code == 1);
    CHECK_THAT(none.err, ContainsSubstring("there is no piece \"A-02-9\"; did you mean \"A-02-1\"?"));
    CHECK_THAT(home.export_with({"--pieces", "mended"}).err, ContainsSubstring("no piece of this shell"));
    const Ran all = home.export_with({"--only", "picture", "--pieces", "A-02-1"});
    CHECK(all.code == 2);
    CHECK_THAT(all.err, ContainsSubstring("\"picture\" shows the whole shell"));
    CHECK_FALSE(fs::exists(home.out()));
}
