#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::string pile_of(int count) {
    std::string csv = "mark,length,butt_height,tip_height\n";
    for (int i = 0; i < count; ++i)
        csv += std::to_string(i) + ",5.2 m," + std::to_string(228 + i * 7 % 11) + " mm,222 mm\n";
    return csv;
}

} // namespace

TEST_CASE("level prints which log lies where and writes a document that holds it") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "yard.csv", pile_of(20));
    const RunOptions at = {.folder = home.path().string()};
    const Ran ran = run({"level", "hut.roundlay", "--pile", "yard.csv", "--to", "level.roundlay"}, at);
    INFO(ran.err);
    CHECK(ran.code == 0);
    CHECK_THAT(ran.out, ContainsSubstring("Logs as they come") && ContainsSubstring("Levelled: largest"));
    const ReadResult read = read_document_file(home / "level.roundlay");
    REQUIRE(read.shell);
    CHECK(read.shell->own_logs.size() == 4 * 4 + 2); // the two walls of half logs have one more
    const auto json =
        nlohmann::json::parse(run({"level", "hut.roundlay", "--pile", "yard.csv", "--json"}, at).out);
    CHECK(json.size() == read.shell->own_logs.size());
    CHECK(run({"level", "hut.roundlay", "--pile", "yard.csv", "--to", "level.roundlay"}, at).code == 4);
}

TEST_CASE("level says what a pile lacks, and where its file is wrong") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "few.csv", pile_of(5));
    put(home / "wrong.csv", "mark,length,butt_height,tip_height\nx,5 m,9,8 in\n");
    const RunOptions at = {.folder = home.path().string()};
    const Ran few = run({"level", "hut.roundlay", "--pile", "few.csv"}, at);
    CHECK(few.code == 1);
    CHECK_THAT(few.err, ContainsSubstring("few.csv: the pile has 5 logs and the shell needs 18"));
    const Ran wrong = run({"level", "hut.roundlay", "--pile", "wrong.csv"}, at);
    CHECK(wrong.code == 3);
    CHECK_THAT(wrong.err, ContainsSubstring("wrong.csv:2: error: butt_height \"9\""));
    CHECK(run({"level", "hut.roundlay", "--pile", "none.csv"}, at).code == 3);
}

TEST_CASE("record states measured logs and says what does not fit") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "logs.csv", "wall,round,left_height,right_height,mark\nA,2,225 mm,230 mm,VI\n");
    const RunOptions at = {.folder = home.path().string()};
    const Ran ran = run({"record", "hut.roundlay", "--logs", "logs.csv"}, at);
    CHECK(ran.code == 0);
    const ReadResult read = read_document(ran.out, "-");
    REQUIRE(read.shell);
    REQUIRE(read.shell->own_logs.size() == 1);
    CHECK(read.shell->own_logs[0].mark == "VI");
    CHECK(read.shell->own_logs[0].sizes.butt == LogEnd::right);
    put(home / "logs.csv", "wall,round,left_height,right_height\nA,77,225 mm,230 mm\n");
    const Ran other = run({"record", "hut.roundlay", "--logs", "logs.csv"}, at);
    CHECK(other.code == 1);
    CHECK_THAT(other.err, ContainsSubstring("wall A, round 77"));
    put(home / "logs.csv", "wall,round,left_height,right_height\nQ,1,225 mm,230 mm\n");
    CHECK_THAT(run({"record", "hut.roundlay", "--logs", "logs.csv"}, at).err,
               ContainsSubstring("no wall \"Q\""));
}
