#include "exporters/files/output_folder.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

namespace {

OutputFolder opened(const fs::path &path) {
    auto folder = OutputFolder::open(path);
    REQUIRE(std::holds_alternative<OutputFolder>(folder));
    return std::get<OutputFolder>(std::move(folder));
}

/// Another program that opens the folder, does this, and is killed.
void kill_after(const TemporaryFolder &home, void (*deed)(OutputFolder &)) {
    const pid_t child = ::fork();
    if (child == 0) {
        auto out = OutputFolder::open(home.path());
        deed(std::get<OutputFolder>(out));
        ::raise(SIGKILL);
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    REQUIRE(WIFSIGNALED(status));
}

} // namespace

TEST_CASE("outputs appear with the commit and not before") {
    const TemporaryFolder home;
    {
        OutputFolder out = opened(home / "deep/er/out");
        out.set_maker("list");
        REQUIRE_FALSE(out.add("cut-list.csv", "tag\r\n", "cut list"));
        REQUIRE_FALSE(out.add("pieces/A-01-1.step", "ISO", "one piece"));
        CHECK_FALSE(fs::exists(home / "deep/er/out/cut-list.csv"));
        REQUIRE_FALSE(out.commit());
        CHECK(out.files().size() == 2);
        CHECK(out.files()[0].maker == "list");
        CHECK(out.files()[0].bytes == 5);
    }
    CHECK(text_of(home / "deep/er/out/cut-list.csv") == "tag\r\n");
    CHECK(text_of(home / "deep/er/out/pieces/A-01-1.step") == "ISO");
    CHECK(count_entries(home.path()) == 6); // three folders, pieces, two files: nothing hidden
}

TEST_CASE("an output folder that is not committed leaves everything as it was") {
    const TemporaryFolder home;
    put(home / "old.csv", "old");
    {
        OutputFolder out = opened(home.path());
        REQUIRE_FALSE(out.add("old.csv", "new", "x"));
        REQUIRE_FALSE(out.add("pieces/a", "new", "x"));
    }
    CHECK(text_of(home / "old.csv") == "old");
    CHECK(count_entries(home.path()) == 1);
    { OutputFolder out = opened(home / "a/b/c"); }
    CHECK(count_entries(home.path()) == 1); // folders that were made are gone too
}

TEST_CASE("outputs that are there already are replaced, and foreign files stay") {
    const TemporaryFolder home;
    put(home / "cut-list.csv", "old");
    put(home / "notes.txt", "mine");
    OutputFolder out = opened(home.path());
    REQUIRE_FALSE(out.add("cut-list.csv", "new", "x"));
    REQUIRE_FALSE(out.commit());
    CHECK(text_of(home / "cut-list.csv") == "new");
    CHECK(text_of(home / "notes.txt") == "mine");
}

TEST_CASE("a commit that fails half way puts back what it had replaced") {
    const TemporaryFolder home;
    put(home / "a.csv", "old a");
    put(home / "gone.csv", "old gone");
    fs::create_directory(home / "z.csv"); // in the way of the last file
    {
        OutputFolder out = opened(home.path());
        REQUIRE_FALSE(out.add("a.csv", "new a", "x"));
        REQUIRE_FALSE(out.add("pieces/b.step", "new b", "x"));
        REQUIRE_FALSE(out.add("z.csv", "new z", "x"));
        out.drop("gone.csv");
        const auto error = out.commit();
        REQUIRE(error);
        CHECK_THAT(error->message, ContainsSubstring("a folder of that name stands in the way") &&
                                       ContainsSubstring("z.csv"));
    }
    CHECK(text_of(home / "a.csv") == "old a");
    CHECK(text_of(home / "gone.csv") == "old gone");
    CHECK(count_entries(home.path()) == 3);
}

TEST_CASE("dropped files go with the commit, missing ones are fine") {
    const TemporaryFolder home;
    put(home / "gone.csv", "old");
    {
        OutputFolder out = opened(home.path());
        out.drop("gone.csv");
        out.drop("never-was.csv");
        out.drop("no/folder.csv");
        CHECK(fs::exists(home / "gone.csv"));
        REQUIRE_FALSE(out.commit());
    }
    CHECK(count_entries(home.path()) == 0);
}

TEST_CASE("a file in the way of a folder is one sentence") {
    const TemporaryFolder home;
    put(home / "out", "a file");
    CHECK_THAT(std::get<FileError>(OutputFolder::open(home / "out")).message,
               ContainsSubstring("is a file, not a folder"));
    CHECK_THAT(std::get<FileError>(OutputFolder::open(home / "out/below")).message,
               ContainsSubstring("is a file, not a folder"));
    put(home / "pieces", "a file");
    {
        OutputFolder out = opened(home.path());
        REQUIRE_FALSE(out.add("pieces/a.step", "x", "x"));
        const auto error = out.commit();
        REQUIRE(error);
        CHECK_THAT(error->message,
                   ContainsSubstring("is a file, not a folder") && ContainsSubstring("pieces"));
    }
    CHECK(count_entries(home.path()) == 2);
}

TEST_CASE("a folder one may not write to is one sentence") {
    const TemporaryFolder home;
    constexpr uid_t nobody = 65534;
    const bool root = ::geteuid() == 0; // rights do not bind root: step down for this test
    ::chmod(home.path().c_str(), 0555);
    if (root) REQUIRE(::seteuid(nobody) == 0);
    const auto here = OutputFolder::open(home.path());
    const auto below = OutputFolder::open(home / "out");
    if (root) REQUIRE(::seteuid(0) == 0);
    ::chmod(home.path().c_str(), 0755);
    REQUIRE(std::holds_alternative<FileError>(here));
    REQUIRE(std::holds_alternative<FileError>(below));
    CHECK_THAT(std::get<FileError>(here).message, ContainsSubstring("you may not write there"));
    CHECK_THAT(std::get<FileError>(below).message, ContainsSubstring("you may not write there"));
    CHECK(count_entries(home.path()) == 0);
}

TEST_CASE("what a killed program left behind, its lock too, is cleared by the next") {
    const TemporaryFolder home;
    kill_after(home, [](OutputFolder &out) { (void)out.add("half.step", "half", "x"); });
    CHECK(count_entries(home.path()) == 3); // hidden folder, new, half.step
    {
        OutputFolder next = opened(home.path());
        REQUIRE_FALSE(next.add("a", "a", "x"));
        REQUIRE_FALSE(next.commit());
    }
    CHECK(count_entries(home.path()) == 1);
}

TEST_CASE("what a killed program was putting in place is known to the next until one has succeeded") {
    const TemporaryFolder home;
    kill_after(home, [](OutputFolder &out) {
        (void)out.add("a.csv", "a", "x");
        (void)out.add("manifest.json", "{}", "x");
    });
    { CHECK(opened(home.path()).left_behind("manifest.json") == std::vector<std::string>{"{}"}); }
    {
        OutputFolder next = opened(home.path());
        CHECK(next.left_behind("manifest.json") == std::vector<std::string>{"{}"});
        CHECK(next.left_behind("b.csv").empty());
        REQUIRE_FALSE(next.commit());
    }
    CHECK(count_entries(home.path()) == 0);
}

TEST_CASE("a second writer is refused while the first is at work, and finds its folder afterwards") {
    const TemporaryFolder home;
    {
        OutputFolder first = opened(home / "out");
        REQUIRE_FALSE(first.add("a", "a", "x"));
        const auto second = OutputFolder::open(home / "out");
        REQUIRE(std::holds_alternative<FileError>(second));
        CHECK_THAT(std::get<FileError>(second).message,
                   ContainsSubstring("another export is writing there") &&
                       ContainsSubstring((home / "out").string()));
        OutputFolder elsewhere = opened(home / "other");
        REQUIRE_FALSE(first.commit());
    }
    CHECK(text_of(home / "out/a") == "a");
    CHECK(count_entries(home.path()) == 2); // out, a
    (void)opened(home / "out");
}

TEST_CASE("names that leave the folder or come twice are the program's own mistake") {
    const TemporaryFolder home;
    OutputFolder out = opened(home.path());
    for (const char *name : {"", "/etc/passwd", "../up", "a/../../up", "a//../b", "./a", "a/"})
        CHECK_THROWS_AS(out.add(name, "x", "x"), std::logic_error);
    REQUIRE_FALSE(out.add("a", "x", "x"));
    CHECK_THROWS_AS(out.add("a", "x", "x"), std::logic_error);
}
