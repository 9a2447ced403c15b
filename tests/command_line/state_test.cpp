// States of a house, as a person asks for them.
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <set>

using namespace roundlay;
using namespace roundlay::test;
using Json = nlohmann::json;
namespace fs = std::filesystem;

namespace {

/// The hut in three states; two names are as long as one another, so that files can be held side by side.
std::string hut() {
    std::string text = small_document();
    const std::string shell = "[shell]\n";
    text.insert(text.find(shell) + shell.size(), "state = \"found\"\n");
    return text + "\n[[state]]\nname = \"other\"\n\n[[state]]\nname = \"lower\"\n[state.rounds]\ncount = 3\n"
                  "[[state.opening]]\nname = \"window\"\ngone = true\n";
}

/// With another name of the state, also where it stands in the identity of a part.
std::string of_other(std::string text) {
    for (const auto &[words, others] : {std::pair("found", "other"), std::pair("FOUND", "OTHER")})
        for (std::size_t at = 0; (at = text.find(words, at)) != std::string::npos;)
            text.replace(at, std::string_view(words).size(), others);
    return text;
}

struct Home {
    TemporaryFolder folder;
    Home() { put(folder / "hut.roundlay", hut()); }
    /// On one day, for STEP files say when they were written.
    Ran at(const Words &words) const {
        return run(words,
                   {.environment = {{"SOURCE_DATE_EPOCH", "1700000000"}}, .folder = folder.path().string()});
    }
};

} // namespace

TEST_CASE("check, list and survey take a state by its name, and say which one they show") {
    const Home home;
    const Ran own = home.at({"check", "hut.roundlay"}),
              lower = home.at({"check", "hut.roundlay", "--state", "lower"});
    CHECK(own.code == 0);
    CHECK_THAT(own.out, ContainsSubstring("hut.roundlay (found): 4 walls, 4 rounds"));
    CHECK_THAT(lower.out, ContainsSubstring("hut.roundlay (lower): 4 walls, 3 rounds"));
    const Json json = Json::parse(home.at({"check", "hut.roundlay", "--state", "lower", "--json"}).out);
    CHECK(json["shell"]["state"] == "lower");
    CHECK(json["shell"]["name"] == "Bench hut");
    CHECK(json["states"].size() == 3);
    CHECK(json["states"][0]["on"].is_null());
    CHECK(json["states"][2]["on"] == "found");

    const Ran list = home.at({"list", "hut.roundlay", "--state", "lower"});
    CHECK(list.out.starts_with("State: lower\n\n"));
    CHECK(home.at({"list", "hut.roundlay", "--language", "fr"}).out.starts_with("\u00c9tat : found\n\n"));
    const Ran csv = home.at({"list", "hut.roundlay", "pieces", "--csv", "--state", "lower"});
    CHECK_THAT(csv.out, ContainsSubstring(",state\r\n") && ContainsSubstring(",lower\r\n"));
    CHECK(csv.out.find("A-04-1") == std::string::npos);
    for (const auto &row : Json::parse(home.at({"list", "hut.roundlay", "pegs", "--json"}).out))
        CHECK(row["state"] == "found");
    CHECK_THAT(home.at({"survey", "hut.roundlay", "--blank", "--state", "lower"}).out,
               !ContainsSubstring("A-04-1") && ContainsSubstring("A-03-1"));
}

TEST_CASE("a wrong name of a state is told with those that there are") {
    const Home home;
    for (const Words &words :
         {Words{"check", "hut.roundlay"}, Words{"list", "hut.roundlay"},
          Words{"export", "hut.roundlay", "--to", "out"}, Words{"picture", "hut.roundlay", "--to", "hut.png"},
          Words{"survey", "hut.roundlay"}}) {
        Words wrong = words;
        wrong.insert(wrong.end(), {"--state", "lowered"});
        const Ran ran = home.at(wrong);
        INFO(words[0]);
        CHECK(ran.code == 3);
        CHECK_THAT(
            ran.out + ran.err,
            ContainsSubstring("there is no state \"lowered\" (did you mean \"lower\"?); expected one of "
                              "the states \"found\", \"other\", \"lower\""));
    }
    CHECK_FALSE(fs::exists(home.folder / "out"));
}

TEST_CASE("a state that cannot be read is told by a check, and hinders nobody who lists another") {
    const Home home;
    put(home.folder / "broken.roundlay",
        hut() + "\n[[state]]\nname = \"broken\"\n[[state.opening]]\nname = \"nowhere\"\ngone = true\n");
    const Ran check = home.at({"check", "broken.roundlay"});
    CHECK(check.code == 3);
    CHECK_THAT(check.out, ContainsSubstring(": warning: state \"broken\" takes away opening \"nowhere\""));
    CHECK_THAT(check.err, ContainsSubstring("the state \"broken\" cannot be read"));
    CHECK(home.at({"check", "broken.roundlay", "--state", "lower"}).code == 0);
    CHECK(home.at({"list", "broken.roundlay"}).code == 0);
    CHECK(home.at({"list", "broken.roundlay", "--state", "broken"}).code == 3);
}

TEST_CASE("a state that changes nothing exports what its base does but for its name") {
    const Home home;
    const std::string only = "--only=step,list,mesh";
    REQUIRE(home.at({"export", "hut.roundlay", "--to", "own", only}).code == 0);
    REQUIRE(home.at({"export", "hut.roundlay", "--to", "other", only, "--state", "other"}).code == 0);
    std::set<std::string> names;
    for (const auto &entry : fs::recursive_directory_iterator(home.folder / "own"))
        if (entry.is_regular_file()) names.insert(fs::relative(entry.path(), home.folder / "own").string());
    CHECK(names.size() > 10);
    for (const std::string &name : names) {
        INFO(name);
        const std::string own = text_of(home.folder / "own" / name),
                          other = text_of(home.folder / "other" / name);
        if (name != "manifest.json" && name != "lists.xlsx")
            CHECK(of_other(own) == of_other(other)); // packed
    }
    const Json manifest = Json::parse(text_of(home.folder / "other/manifest.json"));
    CHECK(manifest["state"] == "other");
    CHECK(manifest["shell"] == "Bench hut");
    CHECK_THAT(text_of(home.folder / "other/shell.step"), ContainsSubstring("Bench hut (other)"));

    // Another state is not put over it unasked.
    const Ran over = home.at({"export", "hut.roundlay", "--to", "own", only, "--state", "lower"});
    CHECK(over.code == 4);
    CHECK_THAT(over.err, ContainsSubstring("were made from another state of the house, \"found\""));
    CHECK(home.at({"export", "hut.roundlay", "--to", "own", only, "--state", "lower", "--force"}).code == 0);
    CHECK(Json::parse(text_of(home.folder / "own/manifest.json"))["state"] == "lower");
}

TEST_CASE("level states no logs in a state that is not the document's own shell") {
    const Home home;
    put(home.folder / "pile.csv", "mark,length,butt_height,tip_height\n1,5 m,210 mm,200 mm\n");
    const Ran ran =
        home.at({"level", "hut.roundlay", "--pile", "pile.csv", "--state", "lower", "--to", "new.roundlay"});
    CHECK(ran.code == 2);
    CHECK_THAT(ran.err, ContainsSubstring("--to states the logs in the document's own shell"));
    CHECK_FALSE(fs::exists(home.folder / "new.roundlay"));
}

TEST_CASE("compare tells piece by piece what two states differ in, in words, as CSV and as JSON") {
    const Home home;
    const Ran text = home.at({"compare", "hut.roundlay", "--to", "lower"});
    INFO(text.out + text.err);
    CHECK(text.code == 0);
    CHECK(text.out.starts_with("From found to lower: "));
    CHECK_THAT(text.out, ContainsSubstring("\ngone") && ContainsSubstring("A-04-1"));
    const Json json = Json::parse(home.at({"compare", "hut.roundlay", "--to", "lower", "--json"}).out);
    CHECK(json["from"] == "found");
    CHECK(json["to"] == "lower");
    int rows = 0;
    for (const auto &[what, count] : json["counts"].items())
        if (what != "unchanged") rows += count.get<int>();
    CHECK(rows == static_cast<int>(json["pieces"].size()));
    CHECK(json["counts"]["gone"].get<int>() > 0);
    const Ran csv = home.at({"compare", "hut.roundlay", "--from", "lower", "--to", "found", "--csv"});
    CHECK(csv.out.starts_with("change,before,after,length_before,"));
    CHECK_THAT(csv.out, ContainsSubstring("\r\nnew,,A-04-1,"));
    CHECK_THAT(home.at({"compare", "hut.roundlay", "--to", "lower", "--language", "fr"}).out,
               ContainsSubstring("De found \u00e0 lower : ") && ContainsSubstring("disparue"));

    const Ran same = run({"compare", "-", "--from", "found", "--to", "other"}, {.input = hut()});
    CHECK(same.code == 0);
    CHECK_THAT(same.out, ContainsSubstring(" unchanged.\n") && !ContainsSubstring(","));
    CHECK(home.at({"compare", "hut.roundlay", "--to", "nowhere"}).code == 3);
    CHECK(home.at({"compare", "hut.roundlay", "--to", "lower", "--csv", "--json"}).code == 2);
}

TEST_CASE("how much old wood stays is not told where the house as it was found cannot be laid out: it is "
          "said why") {
    const Home home;
    put(home.folder / "hut.roundlay",
        hut() + "\n[[state]]\nname = \"as found\"\nmeasured = true\n[[state.opening]]\nname = \"window\"\n"
                "width = \"9 m\"\n\n[[found]]\ntag = \"N 1\"\nwall = \"A\"\nround = 1\n"
                "decision = [{ what = \"keep\" }]\n");
    const Ran fabric = home.at({"list", "hut.roundlay", "--state", "other", "fabric"});
    INFO(fabric.out + fabric.err);
    CHECK(fabric.code == 1);
    CHECK(fabric.out.empty());
    CHECK_THAT(fabric.err, ContainsSubstring(": error: ") &&
                               ContainsSubstring("the house as it was found (as found) cannot be laid "
                                                 "out, so that no figure of its wood is known"));
    CHECK(home.at({"list", "hut.roundlay", "--state", "other", "decisions"}).code == 0);
}

TEST_CASE("decisions about found logs are listed, summed up, and told where they cannot be") {
    const Home home;
    put(home.folder / "hut.roundlay",
        hut() +
            "\n[[found]]\ntag = \"N 1\"\nwall = \"A\"\nround = 1\ndecision = [{ what = \"keep\", by = \"R. "
            "Hale\", on = "
            "\"3 May\", why = \"sound\" }]\n[[found]]\ntag = \"N 4\"\nwall = \"A\"\nround = 4\ndecision = [\n"
            "{ what = \"leave out\" },\n{ what = \"mend\" },\n]\n");
    const Ran decisions = home.at({"list", "hut.roundlay", "decisions", "--csv"});
    INFO(decisions.out + decisions.err);
    CHECK(decisions.code == 0);
    CHECK_THAT(decisions.out, ContainsSubstring("N 1,A,1,,,keep,,,,R. Hale,3 May,sound,,A-01-1,found\r\n") &&
                                  ContainsSubstring("N 4,A,4,,,mend,") &&
                                  ContainsSubstring(",leave out,A-04-1,"));
    const Ran fabric = home.at({"list", "hut.roundlay", "fabric"});
    CHECK_THAT(fabric.out, ContainsSubstring("stays: keep, mend, turn, use elsewhere") &&
                               ContainsSubstring("stayed by decision 1 of each log") &&
                               ContainsSubstring("verdict on what should stay"));
    const Json sums = Json::parse(home.at({"list", "hut.roundlay", "fabric", "--json"}).out);
    CHECK(sums.back()["logs"] == 2);
    CHECK(sums.back()["percent_of_volume"] == 100);
    CHECK_THAT(home.at({"list", "hut.roundlay", "fabric", "--language", "fr"}).out,
               ContainsSubstring("aucun verdict"));

    CHECK(home.at({"check", "hut.roundlay"}).out.find("is to lie") == std::string::npos);
    const Ran lower = home.at({"check", "hut.roundlay", "--state", "lower"});
    CHECK_THAT(lower.out,
               ContainsSubstring(": warning: log N 4 is to lie in wall A, round 4, and the shell has no such "
                                 "log: decide otherwise, or mend the place"));
    CHECK_THAT(home.at({"list", "hut.roundlay", "--state", "lower"}).err,
               ContainsSubstring("log N 4 is to lie"));

    // As it was written before there were words for it.
    put(home.folder / "old.roundlay",
        small_document() + "\n[[found]]\ntag = \"N 1\"\ndecision = \"keep it\"\n");
    const Ran old = home.at({"check", "old.roundlay"});
    CHECK(old.code == 3);
    CHECK_THAT(old.out, ContainsSubstring(
                            "\"decision\" cannot be a text; expected two brackets on each side, once for "
                            "each: [[found.decision]]"));
}

namespace {

/// The hut as it stands: a sill that was measured, and what was found of the log over it.
std::string measured_hut() {
    return hut() + R"(
[[state]]
name = "measured"
measured = true

[[state]]
name = "mended"
on = "measured"
[[state.log]]
wall = "A"
round = 2
butt_height = "200 mm"
tip_height = "200 mm"

[record]
numbers_in = "mm"

[[found]]
tag = "A-one"
wall = "A"
round = 1
end = [
  { corner = "DA", height = "210" },
  { corner = "AB", height = "218" },
]

[[found]]
tag = "A-two"
wall = "A"
round = 2
zero = "DA"
end = [
  { corner = "DA", height = "190" },
  { corner = "AB", height = "190" },
]
station = [{ at = "1500", gap_below = "31" }]
)";
}

std::string pieces_of(const Home &home, const char *state) {
    return home.at({"list", "hut.roundlay", "pieces", "--csv", "--state", state}).out;
}

} // namespace

TEST_CASE("A measured state has what the record says, and one on it what it states itself") {
    const Home home;
    put(home.folder / "hut.roundlay", measured_hut());
    const Ran found = home.at({"check", "hut.roundlay", "--state", "measured", "--json"});
    INFO(found.out << found.err);
    REQUIRE(found.code == 0);
    CHECK(found.out.find("not known") == std::string::npos);
    const Json json = Json::parse(found.out);
    bool told = false;
    for (const Json &finding : json["findings"])
        told = told || finding["code"] == "as-measured";
    CHECK(told);
    CHECK_THAT(pieces_of(home, "measured"), ContainsSubstring("A-two"));
    CHECK_THAT(pieces_of(home, "measured"), ContainsSubstring("190"));
    const std::string mended = pieces_of(home, "mended");
    CHECK_THAT(mended, ContainsSubstring("A-one"));
    CHECK_THAT(mended, ContainsSubstring("A-two")); // it is that log still ...
    const auto height_in = [&](const char *state) { // ... and what is stated later goes before what was found
        const auto list =
            Json::parse(home.at({"list", "hut.roundlay", "pieces", "--json", "--state", state}).out);
        const auto row =
            std::ranges::find_if(list, [](const Json &piece) { return piece["tag"] == "A-02-1"; });
        return row == list.end() ? 0.0 : (*row)["height_mm"].get<double>();
    };
    CHECK(height_in("measured") == 190);
    CHECK(height_in("mended") == 200);
    CHECK(pieces_of(home, "found").find(",A-one,") == std::string::npos);
}
