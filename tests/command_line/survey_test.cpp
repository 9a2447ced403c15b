// The record of a house as rows: out, filled in, back.
#include "kernel/document/document.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

using namespace roundlay;
using namespace roundlay::test;

namespace {

FoundLog only_log(const std::filesystem::path &document) {
    const Record record = read_document_file(document).record;
    REQUIRE(record.logs.size() == 1);
    return record.logs[0];
}

} // namespace

TEST_CASE("survey gives rows to fill in for every log of the plan") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    const Ran none = run({"survey", "hut.roundlay"}, at);
    CHECK(none.code == 1);
    CHECK_THAT(none.err, ContainsSubstring("no log is recorded") && ContainsSubstring("--blank"));
    const Ran blank = run({"survey", "hut.roundlay", "--blank"}, at);
    CHECK(blank.code == 0);
    CHECK_THAT(blank.out, ContainsSubstring("\nlog,A-01-1,A,1,"));
    CHECK(run({"survey", "hut.roundlay", "--rows", "missing.csv"}, at).code == 3);
}

TEST_CASE("survey takes rows back, and what is wrong does not take the rest with it") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "hut.roundlay", small_document());
    put(home / "filled.csv", "row,tag,wall,round,species,length,corner,height\r\n"
                             "log,A 1,A,1,pine,6.2 m,,\r\n"
                             "end,A 1,,,,,AB,231 mm\r\n"
                             "end,A 1,,,,,DA,231 ells\r\n");
    const Ran taken = run({"survey", "hut.roundlay", "--rows", "filled.csv", "--to", "found.roundlay"}, at);
    CHECK(taken.code == 1);
    CHECK_THAT(taken.err, ContainsSubstring("filled.csv:4: ") && ContainsSubstring("height \"231 ells\""));
    CHECK_THAT(taken.err, ContainsSubstring("3 rows read: log 1, end 2; 1 rows or cells not taken") &&
                              ContainsSubstring("written all the same") &&
                              ContainsSubstring("found.roundlay"));
    const FoundLog log = only_log(home / "found.roundlay");
    CHECK(log.species == "pine");
    CHECK(log.ends.at(0).height.value == Length::mm(231));

    const Ran json = run({"survey", "found.roundlay", "--json"}, at);
    CHECK(nlohmann::json::parse(json.out).at("rows").at(0).at("species") == "pine");
    const Ran french = run({"survey", "found.roundlay", "--language", "fr"}, at);
    CHECK_THAT(french.out, ContainsSubstring("ligne,rep\u00e8re,mur,rang"));
}

TEST_CASE(
    "survey tells where two records of a log differ, and replaces what stands only when it is asked to") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "one.roundlay", small_document() + "\n[[found]]\ntag = \"A 1\"\nspecies = \"pine\"\n");
    put(home / "other.csv", "row,tag,species,what\r\nlog,A 1,spruce,\r\ndecision,A 1,,keep\r\n");
    const Ran differs = run({"survey", "one.roundlay", "--rows", "other.csv", "--to", "both.roundlay"}, at);
    CHECK(differs.code == 1);
    CHECK_THAT(differs.err,
               ContainsSubstring("A 1: species is \"pine\" in the document and \"spruce\" in the rows"));
    CHECK(only_log(home / "both.roundlay").species == "pine");
    CHECK(only_log(home / "both.roundlay").decisions ==
          std::vector{FoundDecision{Decision::keep, "", "", "", {}}});
    const Words replacing = {"survey", "one.roundlay", "--rows",   "other.csv",
                             "--to",   "new.roundlay", "--replace"};
    CHECK(run(replacing, at).code == 0);
    CHECK(only_log(home / "new.roundlay").species == "spruce");
}

TEST_CASE(
    "what speaks against the document is told with the line that it stands in, of ends and of openings") {
    const TemporaryFolder home;
    const RunOptions at = {.folder = home.path().string()};
    put(home / "one.roundlay",
        small_document() + "\n[[found]]\ntag = \"A 1\"\nwall = \"A\"\nround = 1\nend = [{ corner = \"DA\", "
                           "height = \"200 mm\" }, { corner = \"AB\", height = \"205 mm\" }]\n"
                           "[[record.opening]]\nname = \"window\"\nwidth = \"900 mm\"\n");
    put(home / "rows.csv", "row,tag,corner,height,width\r\nend,A 1,DA,210 mm,\r\nend,A 1,AB,9.8 mm,\r\n"
                           "opening,window,,,950 mm\r\n");
    const Ran told = run({"survey", "one.roundlay", "--rows", "rows.csv", "--to", "both.roundlay"}, at);
    INFO(told.err);
    CHECK_THAT(told.err, ContainsSubstring("rows.csv:2: error: A 1, end DA: height is") &&
                             ContainsSubstring("rows.csv:3: error: A 1, end AB: height is") &&
                             ContainsSubstring("rows.csv:4: error: window: width is"));
}
