#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
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
    CHECK(json["logs"].size() == read.shell->own_logs.size());
    CHECK(json["summary"]["after_largest_mm"] <= json["summary"]["before_largest_mm"]);
    CHECK(json["summary"]["stands_highest_mm"] >= json["summary"]["stands_lowest_mm"]);
    const auto checked = nlohmann::json::parse(run({"check", "level.roundlay", "--json"}, at).out);
    CHECK(checked["shell"]["stands_highest_mm"].get<double>() ==
          Approx(json["summary"]["stands_highest_mm"].get<double>()).margin(0.06));
    CHECK_THAT(ran.out,
               ContainsSubstring("With these logs the shell stands ") && ContainsSubstring("by its rounds)"));
    CHECK(run({"level", "hut.roundlay", "--pile", "yard.csv", "--to", "level.roundlay"}, at).code == 4);
}

// With the most level of these logs the sill of a window comes to lie a hair over a seam: the round under it
// is not parted any more, and nothing can be stated of its third piece.
TEST_CASE("level finds logs with which a shell can be built, though others lie more level") {
    const std::string folder = std::string(ROUNDLAY_ROOT) + "/tests/command_line/documents/";
    const TemporaryFolder home;
    const std::string to = (home / "level.roundlay").string();
    const Ran ran = run(
        {"level", folder + "sill-on-a-seam.roundlay", "--pile", folder + "pile-on-a-seam.csv", "--to", to});
    CHECK(ran.code == 0);
    CHECK_THAT(ran.out, ContainsSubstring("The most level arrangement") &&
                            ContainsSubstring("cannot be laid") && !ContainsSubstring("error: "));
    CHECK(run({"check", to}).code == 0);
}

TEST_CASE("level writes no document that cannot be built") {
    const std::string folder = std::string(ROUNDLAY_ROOT) + "/tests/command_line/documents/";
    const TemporaryFolder home;
    std::string pile = "mark,length,butt_height,tip_height\n";
    for (int i = 0; i < 120; ++i) // all alike: no other arrangement helps
        pile += "L" + std::to_string(i) + ",31 ft,9 1/4 in,9 1/4 in\n";
    put(home / "pile.csv", pile);
    const std::string to = (home / "level.roundlay").string();
    const Ran ran = run(
        {"level", folder + "sill-on-a-seam.roundlay", "--pile", (home / "pile.csv").string(), "--to", to});
    CHECK(ran.code == 1);
    CHECK_THAT(ran.err, ContainsSubstring("level.roundlay is not written"));
    CHECK_THAT(ran.out, ContainsSubstring("error: "));
    CHECK_FALSE(std::filesystem::exists(to));
}

TEST_CASE("level says what a pile lacks, and where its file is wrong") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "few.csv", pile_of(5));
    put(home / "wrong.csv", "mark,length,butt_height,tip_height\nx,5 m,9,8 in\n");
    const RunOptions at = {.folder = home.path().string()};
    const Ran few = run({"level", "hut.roundlay", "--pile", "few.csv"}, at);
    CHECK(few.code == 1);
    CHECK_THAT(few.err, ContainsSubstring("few.csv: the pile has 5 logs and the shell needs 18; missing: "));
    const Ran wrong = run({"level", "hut.roundlay", "--pile", "wrong.csv"}, at);
    CHECK(wrong.code == 3);
    CHECK_THAT(wrong.err, ContainsSubstring("wrong.csv:2: error: butt_height \"9\" has no unit"));
    CHECK(run({"level", "hut.roundlay", "--pile", "none.csv"}, at).code == 3);
}

TEST_CASE("--json holds what is wrong with a CSV file, with its line") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    put(home / "torn.roundlay", "roundlay = 1\n[shell\n");
    put(home / "columns.csv", "mark,length\nx,5 m\n");
    put(home / "walls.csv", "wall,round,bow\nA,1,9 mm\nZ,1,9 mm\n");
    put(home / "text.csv", "wall,round,bow\nA,1,bent\n");
    put(home / "thin.csv", "wall,round,left_height,right_height\nA,2,25 mm,25 mm\n");
    const struct {
        Words words;
        int code;
        std::string file, says;
        int line;
    } cases[] = {
        {{"level", "hut.roundlay", "--pile", "columns.csv"},
         3,
         "columns.csv",
         "the column \"butt_height\" is missing",
         1},
        {{"record", "hut.roundlay", "--logs", "walls.csv", "--to", "x"},
         1,
         "walls.csv",
         "there is no wall \"Z\"",
         3},
        {{"record", "hut.roundlay", "--logs", "text.csv", "--to", "x"}, 3, "text.csv", "is no length", 2},
    };
    for (const auto &c : cases) {
        Words words = c.words;
        words.emplace_back("--json");
        const Ran ran = run(words, at);
        INFO(ran.out << ran.err);
        CHECK(ran.code == c.code);
        const auto json = nlohmann::json::parse(ran.out);
        REQUIRE_FALSE(json["errors"].empty());
        REQUIRE_FALSE(json["problems"].empty());
        const auto first = json["problems"][0];
        CHECK(first["file"] == c.file);
        CHECK(first["line"] == c.line);
        CHECK_THAT(first["message"].get<std::string>(), ContainsSubstring(c.says));
        CHECK(json["errors"][0] ==
              c.file + ":" + std::to_string(c.line) + ": " + first["message"].get<std::string>());
        CHECK_THAT(ran.err, ContainsSubstring(":" + std::to_string(c.line) + ": error: "));
    }
    const Ran thin = run({"record", "hut.roundlay", "--logs", "thin.csv", "--to", "x", "--json"}, at);
    CHECK(thin.code == 1); // written, and found not to alternate
    CHECK_THAT(nlohmann::json::parse(thin.out)["errors"].at(0).get<std::string>(),
               ContainsSubstring("25 mm high"));
    const Ran torn = run({"record", "torn.roundlay", "--logs", "walls.csv", "--json"}, at);
    CHECK(torn.code == 3);
    CHECK_FALSE(nlohmann::json::parse(torn.out)["problems"].empty());
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
    CHECK_THAT(other.err,
               ContainsSubstring("logs.csv:2: error: wall A has 4 logs") && ContainsSubstring("no round 77"));
    put(home / "logs.csv", "wall,round,left_height,right_height\nQ,1,225 mm,230 mm\n");
    const Ran nowhere = run({"record", "hut.roundlay", "--logs", "logs.csv", "--to", "nowhere.roundlay"}, at);
    CHECK(nowhere.code == 1);
    CHECK_THAT(nowhere.err, ContainsSubstring("logs.csv:2: error: there is no wall \"Q\"") &&
                                !ContainsSubstring("nowhere.roundlay"));
    CHECK_FALSE(std::filesystem::exists(home / "nowhere.roundlay"));
}

TEST_CASE("record tells what is wrong in the file and what the shell does not have in one go") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "logs.csv", "wall,round,left_height,right_height\nA,1,two hands,230 mm\nQ,1,225 mm,230 mm\n");
    const Ran ran = run({"record", "hut.roundlay", "--logs", "logs.csv"}, {.folder = home.path()});
    CHECK(ran.code == 3);
    CHECK(ran.out.empty());
    CHECK_THAT(ran.err, ContainsSubstring("logs.csv:2: error: ") && ContainsSubstring("two hands") &&
                            ContainsSubstring("logs.csv:3: error: there is no wall \"Q\""));
}

TEST_CASE("record takes all columns, and tells what it leaves out and what lies off the line") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    put(home / "logs.csv",
        "Wall;Round;Left height (mm);Right height (mm);Bow (mm);Mark;Fabric;Finish;Notes;Girth\r\n"
        "b;1;150,5;149;8;I;kept;hewn;\"a rotten end; outside\";900\r\n");
    const RunOptions at = {.folder = home.path().string()};
    const Ran ran = run({"record", "hut.roundlay", "--logs", "logs.csv"}, at);
    INFO(ran.err);
    CHECK(ran.code == 0);
    CHECK_THAT(ran.err,
               ContainsSubstring(
                   "logs.csv:1: warning: left out, as they are not known here: the columns \"Girth\""));
    const ReadResult read = read_document(ran.out, "-");
    REQUIRE(read.shell);
    REQUIRE(read.shell->own_logs.size() == 1);
    const OwnLog &log = read.shell->own_logs[0];
    CHECK(log.wall == "B");
    CHECK(log.sizes.butt_height == Length::mm(150.5));
    CHECK(log.bow == Length::mm(8));
    CHECK(log.fabric == Fabric::kept);
    CHECK(log.note == "a rotten end; outside");
    put(home / "as.roundlay", ran.out);
    const auto pieces = nlohmann::json::parse(run({"list", "as.roundlay", "pieces", "--json"}, at).out);
    int noted = 0;
    for (const auto &piece : pieces)
        noted += piece["note"] == "a rotten end; outside";
    CHECK(noted == 1);
}

TEST_CASE("level refuses logs that are scoped over one another before it reads a pile") {
    const TemporaryFolder home;
    put(home / "round.roundlay", write_document(round_shell()));
    const RunOptions at = {.folder = home.path().string()};
    const Ran ran = run({"level", "round.roundlay", "--pile", "none.csv", "--to", "out.roundlay"}, at);
    CHECK(ran.code == 1);
    CHECK_THAT(ran.err, ContainsSubstring("there is nothing to level"));
    CHECK_FALSE(std::filesystem::exists(home / "out.roundlay"));
}

TEST_CASE("check says how high a shell stands beside what its rounds come to") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    const RunOptions at = {.folder = home.path().string()};
    CHECK_THAT(run({"check", "hut.roundlay"}, at).out,
               ContainsSubstring("4 rounds (5 logs in walls B and D)") && ContainsSubstring(" high (") &&
                   ContainsSubstring("by its rounds)"));
}

TEST_CASE("level tells in its own summary what the check finds of the levelled logs") {
    const TemporaryFolder home;
    Shell shell = plain_shell();
    // rounds of 230 mm with 20 mm gaps: the third log of A ends 670 mm up, in the gap over it the window at
    // 690 mm
    shell.openings = {window("A", 2000, 460, 900, 230)};
    put(home / "hut.roundlay", write_document(shell));
    std::string csv = "mark,length,butt_height,tip_height\n";
    for (int i = 0; i < 20; ++i)
        csv += std::to_string(i) + ",5.2 m,217 mm,217 mm\n"; // the third then ends 691 mm up
    put(home / "yard.csv", csv);
    const RunOptions at = {.folder = home.path().string()};
    REQUIRE(run({"check", "hut.roundlay"}, at).err.find("sliver") == std::string::npos);
    const Ran ran = run({"level", "hut.roundlay", "--pile", "yard.csv"}, at);
    INFO(ran.out << ran.err);
    const auto json =
        nlohmann::json::parse(run({"level", "hut.roundlay", "--pile", "yard.csv", "--json"}, at).out);
    REQUIRE_FALSE(json["findings"].empty());
    CHECK_THAT(ran.out, ContainsSubstring("With them the check finds what it does not find without:") &&
                            ContainsSubstring(json["findings"][0]["message"].get<std::string>()) &&
                            ContainsSubstring("Move the sill or the top of such an opening"));
}

TEST_CASE("level advises on openings only where the check found something at one") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", write_document(plain_shell()));
    std::string csv = "mark,length,butt_height,tip_height\n";
    for (int i = 0; i < 60; ++i)
        csv += std::to_string(i) + ",5.2 m," + std::to_string(i < 6 ? 160 : 240) + " mm,150 mm\n";
    put(home / "yard.csv", csv);
    const Ran ran = run({"level", "hut.roundlay", "--pile", "yard.csv"}, {.folder = home.path().string()});
    INFO(ran.out << ran.err);
    CHECK_THAT(ran.out, ContainsSubstring("With them the check finds what it does not find without:") &&
                            !ContainsSubstring("opening"));
}

TEST_CASE("level takes logs that leave no sliver, and says where none that it tried leave none") {
    const TemporaryFolder home;
    Shell shell = plain_shell();
    shell.openings = {window("A", 2000, 460, 900, 230)}; // as above
    put(home / "hut.roundlay", write_document(shell));
    const RunOptions at = {.folder = home.path().string()};
    const auto levelled = [&](const std::vector<std::pair<int, int>> &ends) {
        std::string csv = "mark,length,butt_height,tip_height\n";
        for (std::size_t i = 0; i < ends.size(); ++i)
            csv += std::to_string(i) + ",5.2 m," + std::to_string(ends[i].first) + " mm," +
                   std::to_string(ends[i].second) + " mm\n";
        put(home / "yard.csv", csv);
        return std::pair(
            run({"level", "hut.roundlay", "--pile", "yard.csv"}, at).out,
            nlohmann::json::parse(run({"level", "hut.roundlay", "--pile", "yard.csv", "--json"}, at).out));
    };
    const auto [alike, none] = levelled(std::vector<std::pair<int, int>>(20, {217, 217}));
    CHECK_THAT(alike, ContainsSubstring("It leaves a sliver of a log beside an opening in 1 place; none that "
                                        "was tried leaves fewer and is as level."));
    CHECK(none["summary"]["slivers_beside_openings"] == 1);
    CHECK(none["summary"]["most_level_slivers"] == 1);
    const auto [unlike, some] =
        levelled({{220, 218}, {214, 212}, {222, 220}, {220, 218}, {220, 218}, {222, 222}, {222, 222},
                  {218, 218}, {214, 210}, {218, 214}, {222, 222}, {218, 218}, {214, 210}, {218, 216},
                  {222, 222}, {218, 216}, {218, 214}, {216, 212}, {220, 218}, {222, 220}});
    CHECK_THAT(unlike, ContainsSubstring("The most level arrangement") &&
                           ContainsSubstring("in 1 place; this one in none."));
    CHECK(some["summary"]["slivers_beside_openings"] == 0);
    CHECK(some["summary"]["most_level_slivers"] == 1);
    CHECK(some["findings"].empty());
}
