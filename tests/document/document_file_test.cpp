#include "kernel/document/document.h"
#include "kernel/document/edit.h"
#include "kernel/document/limits.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <unistd.h>

#include <filesystem>

using namespace roundlay;
using roundlay::test::put;
using roundlay::test::sample;
using roundlay::test::TemporaryFolder;

namespace fs = std::filesystem;

namespace {

Problem only_problem(const fs::path &path) {
    const ReadResult result = read_document_file(path);
    CHECK_FALSE(result.shell);
    REQUIRE(result.problems.size() == 1);
    CHECK(result.problems.front().file == path.string());
    CHECK(result.problems.front().weight == Weight::error);
    return result.problems.front();
}

} // namespace

TEST_CASE("A document on disk is read as it stands") {
    const TemporaryFolder folder;
    put(folder / "a.roundlay", sample);
    const ReadResult result = read_document_file(folder / "a.roundlay");
    CHECK(result.shell == read_document(sample, "x").shell);
    CHECK(std::get<std::string>(read_document_text(folder / "a.roundlay")) == sample);
    CHECK(std::get<Document>(open_document(folder / "a.roundlay")).text() == sample);
}

TEST_CASE("What cannot be read from disk is one clear problem") {
    const TemporaryFolder folder;
    CHECK(only_problem(folder / "none.roundlay").message == "there is no such file");
    CHECK(only_problem(folder.path()).message == "this is a folder, not a document");
    put(folder / "file", "");
    CHECK(only_problem(folder / "file" / "below").message.rfind("there is no such file", 0) == 0);
    CHECK(only_problem(folder / std::string(300, 'x')).message.rfind("the file cannot be reached: ", 0) == 0);
    CHECK(only_problem(fs::path()).message == "there is no such file");
    put(folder / "nul", std::string("roundlay = 1\n\0", 14));
    CHECK(only_problem(folder / "nul").message == "this is not a text file: byte 0x00 at offset 13");
    CHECK(std::holds_alternative<Problem>(open_document(folder / "none.roundlay")));
}

TEST_CASE("A file that may not be read says so") {
    if (::geteuid() == 0) {
        WARN("running as root, whom no file refuses: not checked");
        return;
    }
    const TemporaryFolder folder;
    put(folder / "closed", sample);
    fs::permissions(folder / "closed", fs::perms::none);
    CHECK(only_problem(folder / "closed").message == "the file cannot be opened: Permission denied");
}

TEST_CASE("A file over the limit is refused without being read whole") {
    const TemporaryFolder folder;
    put(folder / "full", std::string(limits::bytes, '\n'));
    CHECK(read_document_file(folder / "full").problems.front().message == "\"roundlay\" is missing");
    put(folder / "over", std::string(limits::bytes + 1, '\n'));
    CHECK(only_problem(folder / "over").message == "the file is larger than 4 MB (4,000,000 bytes)");
    put(folder / "huge", "");
    fs::resize_file(folder / "huge", 100'000'000); // sparse: no disk is used
    CHECK(only_problem(folder / "huge").message == "the file is larger than 4 MB (4,000,000 bytes)");
    if (fs::exists("/dev/zero"))
        CHECK(only_problem("/dev/zero").message == "the file is larger than 4 MB (4,000,000 bytes)");
}
