#include "exporters/files/output_folder.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>
#include <barrier>
#include <thread>
#include <vector>

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

namespace {

/// How one writer fared; the message is empty where its files lie in place.
struct Fared {
    std::string message;
};

/// What an export does: opens, writes two files that belong together, puts them in place, or gives up.
Fared write_pair(const fs::path &path, const std::string &text, bool gives_up) {
    auto opened = OutputFolder::open(path);
    if (auto *error = std::get_if<FileError>(&opened)) return {error->message};
    auto &out = std::get<OutputFolder>(opened);
    for (const char *name : {"deep/one.csv", "two.csv"})
        if (auto error = out.add(name, text, "x")) return {error->message};
    if (gives_up) return {"gave up"};
    if (auto error = out.commit()) return {error->message};
    return {};
}

/// Writers that begin in one moment, each into one of the folders in turn; the last `quitters` of them give
/// up.
std::vector<Fared> at_once(std::size_t writers, const std::vector<fs::path> &folders, std::size_t quitters) {
    std::barrier start(static_cast<std::ptrdiff_t>(writers));
    std::vector<Fared> fared(writers);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < writers; ++i)
        threads.emplace_back([&, i] {
            start.arrive_and_wait();
            fared[i] = write_pair(folders[i % folders.size()], std::to_string(i), i + quitters >= writers);
        });
    for (std::thread &thread : threads)
        thread.join();
    return fared;
}

void check_told(const std::vector<Fared> &fared) {
    for (const Fared &one : fared)
        if (!one.message.empty() && one.message != "gave up")
            CHECK_THAT(one.message, ContainsSubstring("another export is writing there"));
}

} // namespace

TEST_CASE("many writers of one new folder: each writes whole or is told that another writes") {
    const TemporaryFolder home;
    const fs::path out = home / "new/out";
    for (int i = 0; i < 400; ++i) {
        fs::remove_all(home / "new");
        const auto fared = at_once(4, {out}, 0);
        check_told(fared);
        REQUIRE(std::any_of(fared.begin(), fared.end(), [](const Fared &f) { return f.message.empty(); }));
        REQUIRE(text_of(out / "two.csv") == text_of(out / "deep/one.csv"));
        REQUIRE(count_entries(home.path()) == 5); // new, out, deep, two files: nothing hidden
    }
}

TEST_CASE("writers that give up take no folder away under others") {
    const TemporaryFolder home;
    const fs::path top = home / "new";
    for (int i = 0; i < 400; ++i) {
        fs::remove_all(top);
        // A folder, one below it, and one that is also a folder of the first one's files.
        const auto fared = at_once(6, {top, top / "out", top / "deep"}, 3);
        check_told(fared);
        for (const fs::path &one : {top, top / "out", top / "deep"})
            REQUIRE(text_of(one / "two.csv") == text_of(one / "deep/one.csv"));
    }
}
