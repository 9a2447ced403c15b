#include "exporters/files/descriptor.h"
#include "exporters/files/safe_file.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <atomic>
#include <thread>

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

TEST_CASE("a file is written whole and nothing else is left beside it") {
    const TemporaryFolder folder;
    REQUIRE_FALSE(write_file(folder / "a.csv", "one"));
    REQUIRE_FALSE(write_file(folder / "a.csv", "two"));
    CHECK(text_of(folder / "a.csv") == "two");
    CHECK(count_entries(folder.path()) == 1);
}

TEST_CASE("a replaced file keeps its rights and a new one gets the person's") {
    const TemporaryFolder folder;
    put(folder / "old", "x");
    ::chmod((folder / "old").c_str(), 0640);
    REQUIRE_FALSE(write_file(folder / "old", "y"));
    CHECK((fs::status(folder / "old").permissions() & fs::perms::all) == fs::perms(0640));

    const mode_t before = ::umask(027);
    REQUIRE_FALSE(write_file(folder / "new", "y"));
    ::umask(before);
    CHECK((fs::status(folder / "new").permissions() & fs::perms::all) == fs::perms(0640));
}

TEST_CASE("a file that nobody may write is not replaced, though its folder may be written") {
    const TemporaryFolder folder;
    put(folder / "kept", "mine");
    ::chmod((folder / "kept").c_str(), 0444);
    const auto error = write_file(folder / "kept", "yours");
    REQUIRE(error);
    CHECK_THAT(error->message, ContainsSubstring((folder / "kept").string()));
    CHECK(text_of(folder / "kept") == "mine");
    CHECK(count_entries(folder.path()) == 1);
}

TEST_CASE("writing a file does not change the rights of what another thread makes meanwhile") {
    const TemporaryFolder folder;
    const mode_t before = ::umask(077);
    std::atomic<bool> done = false;
    std::thread writer([&] {
        while (!done)
            (void)write_file("/dev/null", "x"); // as often as can be: nothing waits for a disk
    });
    int open_to_all = 0;
    for (int i = 0; i < 60'000; ++i) {
        const fs::path path = folder / "b";
        const Descriptor made(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL, 0666));
        struct stat found = {};
        if (::fstat(made.number(), &found) == 0 && (found.st_mode & 0777) != 0600) ++open_to_all;
        ::unlink(path.c_str());
    }
    done = true;
    writer.join();
    ::umask(before);
    CHECK(open_to_all == 0);
}

TEST_CASE("a link stays a link and the file behind it is replaced") {
    const TemporaryFolder folder;
    put(folder / "real", "x");
    fs::create_symlink("real", folder / "link");
    REQUIRE_FALSE(write_file(folder / "link", "y"));
    CHECK(fs::is_symlink(folder / "link"));
    CHECK(text_of(folder / "real") == "y");
}

TEST_CASE("an existing file is refused where it must not be replaced") {
    const TemporaryFolder folder;
    put(folder / "a", "mine");
    const auto error = write_file(folder / "a", "yours", IfThere::refuse);
    REQUIRE(error);
    CHECK_THAT(error->message,
               ContainsSubstring("stands in the way") && ContainsSubstring((folder / "a").string()));
    CHECK(text_of(folder / "a") == "mine");
    REQUIRE_FALSE(write_file(folder / "b", "yours", IfThere::refuse));
    CHECK(text_of(folder / "b") == "yours");
    CHECK(count_entries(folder.path()) == 2);
}

TEST_CASE("each failure to write is one sentence with the path and the cause") {
    const TemporaryFolder folder;
    put(folder / "file", "x");
    const fs::path in_a_file = folder.path() / "file" / "a";
    const struct {
        fs::path path;
        std::string cause;
    } cases[] = {
        {folder.path(), "a folder of that name stands in the way"},
        {in_a_file, "part of the path is a file"},
        {folder / "nowhere/a", "no such file or folder"},
        {folder / std::string(300, 'n'), "the name is too long"},
        {"/dev/full", "no space is left on the disk"},
    };
    for (const auto &c : cases) {
        const auto error = write_file(c.path, "text");
        REQUIRE(error);
        CHECK(error->path == c.path.string());
        CHECK_THAT(error->message, ContainsSubstring(c.cause) && ContainsSubstring(c.path.string()));
        CHECK(error->message.find('\n') == std::string::npos);
    }
    CHECK(count_entries(folder.path()) == 1);
}

TEST_CASE("reading gives the bytes back and refuses what is too large or missing") {
    const TemporaryFolder folder;
    const std::string bytes = std::string("a\0b\r\n", 5) + std::string(200'000, 'z');
    put(folder / "a", bytes);
    CHECK(std::get<std::string>(read_file(folder / "a", 1'000'000)) == bytes);
    CHECK_THAT(std::get<FileError>(read_file(folder / "a", 1000)).message,
               ContainsSubstring("larger than 1000 bytes"));
    CHECK_THAT(std::get<FileError>(read_file(folder / "b", 1000)).message, ContainsSubstring("no such file"));
    CHECK_THAT(std::get<FileError>(read_file(folder.path(), 1000)).message, ContainsSubstring("cannot read"));
    // Something that never ends.
    CHECK_THAT(std::get<FileError>(read_file("/dev/zero", 1000)).message, ContainsSubstring("larger than"));
}

TEST_CASE("names are made safe for every file system") {
    CHECK(safe_file_name("C-07-2") == "C-07-2");
    CHECK(safe_file_name("../etc/passwd") == "_..-etc-passwd");
    CHECK(safe_file_name("north wall: \"A\"") == "north-wall---A-");
    CHECK(safe_file_name("") == "_");
    CHECK(safe_file_name(".hidden") == "_.hidden");
    CHECK(safe_file_name(std::string(500, 'x')).size() == 100);
}
