// Ticking off what is done, piece by piece.
#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::vector<Done> done_in(const std::filesystem::path &document) {
    return read_document_file(document).record.done;
}

} // namespace

TEST_CASE("tick notes several pieces at once, keeps all else and tells how far they are") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", "# mine\n" + small_document());
    const Ran ran = run({"tick", "hut.roundlay", "up", "A-01-1", "C-01-1", "--by", "B", "--on", "2 May",
                         "--to", "up.roundlay"},
                        at);
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    CHECK_THAT(ran.err, ContainsSubstring("Up: 2 of ") && ContainsSubstring("May go up now: ") &&
                            ContainsSubstring("Left: "));
    const auto done = done_in(home / "up.roundlay");
    REQUIRE(done.size() == 1);
    CHECK(done[0] == Done{Deed::up, {"A-01-1", "C-01-1"}, "", "B", "2 May", ""});
    const Ran printed = run({"tick", "hut.roundlay", "up", "A-01-1"}, at);
    CHECK_THAT(printed.out, ContainsSubstring("# mine\n") && ContainsSubstring("pieces = [\"A-01-1\"]"));
    CHECK(run({"tick", "hut.roundlay", "up", "A-01-1", "--to", "up.roundlay"}, at).code == 4); // it is there
}

TEST_CASE("ticks are taken back, and a tick that is there already is told") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    REQUIRE(run({"tick", "hut.roundlay", "cut", "A", "--to", "cut.roundlay"}, at).code == 0);
    CHECK(done_in(home / "cut.roundlay").at(0).pieces.size() >= 4);
    const Ran again = run({"tick", "cut.roundlay", "cut", "A-01-1"}, at);
    CHECK(again.code == 0);
    CHECK_THAT(again.err, ContainsSubstring("A-01-1 is ticked already as cut"));
    const Ran back = run({"tick", "cut.roundlay", "cut", "A", "--take-back", "--to", "back.roundlay"}, at);
    CHECK(back.code == 0);
    CHECK(done_in(home / "back.roundlay").empty());
    CHECK_THAT(run({"tick", "hut.roundlay", "cut", "A-01-1", "--take-back"}, at).err,
               ContainsSubstring("A-01-1 is not ticked as cut"));
}

TEST_CASE("a tick that cannot be is a warning with piece and reason, and written all the same") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    const Ran air = run({"tick", "hut.roundlay", "up", "A-03-1", "--to", "air.roundlay"}, at);
    CHECK(air.code == 0);
    CHECK_THAT(air.err, ContainsSubstring("A-03-1 is ticked as up, and what it rests on is not"));
    CHECK(done_in(home / "air.roundlay").size() == 1);
    const Ran checked = run({"check", "air.roundlay"}, at);
    CHECK(checked.code == 0);
    CHECK_THAT(checked.out, ContainsSubstring("air.roundlay:") && ContainsSubstring("It would stand on air"));
    const Ran pegged = run({"tick", "hut.roundlay", "pegged", "A-03-1"}, at);
    CHECK_THAT(pegged.err, ContainsSubstring("A-03-1 is ticked as pegged and not as up"));
    const Ran french = run({"tick", "hut.roundlay", "up", "A-03-1", "--language", "fr"}, at);
    CHECK_THAT(french.err, ContainsSubstring("Elle serait en l"));
}

TEST_CASE("what tick cannot do ends with one message and writes nothing") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    put(home / "wrong.roundlay", wrong_document());
    const Ran unknown = run({"tick", "hut.roundlay", "up", "A-01-1", "A-01-9", "--to", "x.roundlay"}, at);
    CHECK(unknown.code == 2);
    CHECK_THAT(unknown.err, ContainsSubstring("there is no piece \"A-01-9\" in this shell"));
    const Ran word = run({"tick", "hut.roundlay", "upp", "A-01-1"}, at);
    CHECK(word.code == 2);
    CHECK_THAT(word.err, ContainsSubstring("did you mean \"up\"?"));
    CHECK(run({"tick", "hut.roundlay", "up"}, at).code == 2);
    CHECK(run({"tick", "wrong.roundlay", "up", "A-01-1"}, at).code == 1);
    CHECK(run({"tick", "missing.roundlay", "up", "A-01-1"}, at).code == 3);
    const Ran bell =
        run({"tick", "hut.roundlay", "up", "A-01-1", "--on", "2\x07May", "--to", "x.roundlay"}, at);
    CHECK(bell.code == 3);
    CHECK_FALSE(std::filesystem::exists(home / "x.roundlay"));
}

TEST_CASE("a piece that is gone after an edit is told, and its tick stays") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay",
        small_document() + "\n[[done]]\nwhat = \"up\"\npieces = [\"A-01-1\", \"A-88-1\"]\n");
    const Ran ran = run({"tick", "hut.roundlay", "up", "C-01-1", "--to", "more.roundlay"}, at);
    CHECK(ran.code == 0);
    CHECK_THAT(ran.err, ContainsSubstring("the shell has no piece A-88-1"));
    CHECK(done_in(home / "more.roundlay").at(0).pieces ==
          std::vector<std::string>{"A-01-1", "A-88-1", "C-01-1"});
}

TEST_CASE("the list of the raise tells what is up, what may go up and what is left") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document() +
                                   "\n[[done]]\nwhat = \"up\"\npieces = [\"A-01-1\", \"C-01-1\"]\n"
                                   "on = \"2 May\"\n");
    const Ran text = run({"list", "hut.roundlay", "raising"}, at);
    CHECK(text.code == 0);
    CHECK_THAT(text.out, ContainsSubstring("Up: 2 of ") && ContainsSubstring("May go up now: "));
    const Ran csv = run({"list", "hut.roundlay", "raising", "--csv"}, at);
    CHECK_THAT(csv.out, ContainsSubstring(",turn,waits_for,shut_in_by,pegs_first,cut,checked,up,pegged,") &&
                            ContainsSubstring("2 May"));
    const Ran down = run({"list", "hut.roundlay", "taking-down"}, at);
    CHECK_THAT(down.out, ContainsSubstring("Down: 0 of ") && ContainsSubstring("May come down now: "));
}
