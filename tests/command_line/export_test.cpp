#include "exporters/files/sha256.h"
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>
#include <sys/stat.h>

#include <set>
#include <thread>

using namespace roundlay;
using namespace roundlay::test;
using Json = nlohmann::json;
namespace fs = std::filesystem;

namespace {

constexpr std::size_t list_files = 10; ///< of the small shell; beside them lies the manifest

/// Everything below the folder that is no folder, by its path from there.
std::set<std::string> files_in(const fs::path &folder) {
    std::set<std::string> files;
    for (const auto &entry : fs::recursive_directory_iterator(folder))
        if (!entry.is_directory()) files.insert(fs::relative(entry.path(), folder).string());
    return files;
}

struct Home {
    TemporaryFolder folder;
    Home() { put(folder / "hut.roundlay", small_document()); }
    Ran export_with(Words more, RunOptions options = {}) const {
        Words words = {"export", "hut.roundlay", "--to", "out"};
        words.insert(words.end(), more.begin(), more.end());
        options.folder = folder.path().string();
        return run(words, options);
    }
    fs::path out() const { return folder / "out"; }
};

} // namespace

TEST_CASE("export writes everything and the manifest lists it with its bytes and digests") {
    const Home home;
    const Ran ran = home.export_with({});
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    CHECK(ran.out.empty());
    CHECK(ran.err.empty()); // nobody sits at a terminal
    const Json manifest = Json::parse(text_of(home.out() / "manifest.json"));
    CHECK(manifest["shell"] == "Bench hut");
    CHECK(manifest["document"]["file"] == "hut.roundlay");
    CHECK(manifest["document"]["sha256"] == sha256_hex(small_document()));
    std::set<std::string> listed = {"manifest.json"};
    for (const Json &file : manifest["files"]) {
        const std::string name = file["file"], bytes = text_of(home.out() / name);
        CHECK(file["bytes"] == bytes.size());
        CHECK(file["sha256"] == sha256_hex(bytes));
        CHECK_FALSE(file["what"].get<std::string>().empty());
        listed.insert(name);
    }
    CHECK(listed == files_in(home.out()));
    for (const char *name : {"picture.png",
                             "shell.step",
                             "pieces/A-01-1.step",
                             "cut-list.csv",
                             "pieces.csv",
                             "pegs.csv",
                             "operations.csv",
                             "operation-sheets.pdf",
                             "operations/A-01-1.json",
                             "operations/operations.schema.json",
                             "order-list.csv",
                             "totals.csv",
                             "lists.xlsx",
                             "shell.glb",
                             "cut-sheets.pdf",
                             "bench-set.pdf",
                             "drawings.pdf",
                             "story-poles.pdf",
                             "schedules.pdf",
                             "templates.pdf",
                             "templates.dxf",
                             "templates/T1.dxf",
                             "tags.pdf",
                             "packing-list.pdf",
                             "book.pdf",
                             "yard.html"})
        CHECK(listed.contains(name));
}

TEST_CASE("the same document gives the same bytes") {
    const Home one, other;
    const RunOptions at = {.environment = {{"SOURCE_DATE_EPOCH", "1700000000"}}};
    REQUIRE(one.export_with({}, at).code == 0);
    REQUIRE(other.export_with({"--json"}, at).code == 0);
    REQUIRE(files_in(one.out()) == files_in(other.out()));
    for (const std::string &name : files_in(one.out())) {
        INFO(name);
        CHECK(text_of(one.out() / name) == text_of(other.out() / name));
    }
}

TEST_CASE("a house for the architect is made where it is asked for, in the person's language") {
    const Home home;
    const RunOptions at = {.environment = {{"SOURCE_DATE_EPOCH", "1780000000"}}};
    REQUIRE(home.export_with({"--only", "ifc", "--language", "fr"}, at).code == 0);
    const std::string ifc = text_of(home.out() / "shell.ifc");
    CHECK_THAT(ifc, ContainsSubstring("FILE_SCHEMA(('IFC4'));") && ContainsSubstring("'mur A'") &&
                        ContainsSubstring("'A-01-1'"));
    REQUIRE(home.export_with({"--only", "ifc", "--language", "fr"}, at).code == 0);
    CHECK(text_of(home.out() / "shell.ifc") == ifc);
}

TEST_CASE("--only selects, and the manifest keeps what an earlier export of the same document made") {
    const Home home;
    REQUIRE(home.export_with({"--only", "list"}).code == 0);
    CHECK(files_in(home.out()).size() == list_files + 1);
    REQUIRE(home.export_with({"--only", "mesh"}).code == 0);
    const Json both = Json::parse(text_of(home.out() / "manifest.json"));
    CHECK(both["files"].size() == list_files + 1);
    REQUIRE(home.export_with({"--without", "picture,sheets,bench,drawings,schedules,templates,tags,book,step,"
                                           "operations,operation-sheets,page"})
                .code == 0);
    CHECK(files_in(home.out()).size() == list_files + 2);
}

TEST_CASE("field forms and a report come where the document has a record, else where they are asked for") {
    const Home home;
    const std::string all_else = "picture,list,sheets,bench,drawings,schedules,templates,tags,book,step,"
                                 "operations,operation-sheets,mesh,page";
    const Ran none = home.export_with({"--without", all_else});
    CHECK(none.code == 2);
    CHECK_THAT(none.err, ContainsSubstring("leaves nothing to export"));
    REQUIRE(
        home.export_with({"--without",
                          "picture,sheets,drawings,schedules,templates,tags,book,step,operations,mesh,page"})
            .code == 0);
    CHECK_FALSE(files_in(home.out()).contains("forms.pdf"));
    REQUIRE(home.export_with({"--only", "forms"}).code == 0);
    CHECK(files_in(home.out()).contains("forms.pdf"));
    fs::remove_all(home.out());
    put(home.folder / "hut.roundlay", small_document() + "\n[record]\nby = \"R. Hale\"\n");
    const Ran ran = home.export_with({"--without", all_else});
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    CHECK(files_in(home.out()) == std::set<std::string>{"decisions.csv", "fabric.csv", "forms.pdf",
                                                        "found-logs.csv", "manifest.json", "report.pdf",
                                                        "report.xlsx", "wood-zones.csv"});
}

TEST_CASE("files of an earlier state of the document go when made anew, and are told of when not") {
    const Home home;
    REQUIRE(home.export_with({"--only", "step,list"}).code == 0);
    const auto before = files_in(home.out());
    put(home.folder / "hut.roundlay", run({"new", "-", "--rounds", "2"}).out);
    const Ran list = home.export_with({"--only", "list"});
    CHECK(list.code == 0);
    CHECK_THAT(list.err, ContainsSubstring("of an earlier state of the document, or of another") &&
                             ContainsSubstring("shell.step"));
    put(home.out() / "pieces/notes.txt", "mine");
    REQUIRE(home.export_with({"--only", "step,list"}).code == 0);
    const Json manifest = Json::parse(text_of(home.out() / "manifest.json"));
    CHECK(files_in(home.out()).size() == manifest["files"].size() + 2); // the manifest and the person's notes
    CHECK(fs::exists(home.out() / "pieces/notes.txt"));
}

TEST_CASE("--json prints the manifest") {
    const Home home;
    const Ran ran = home.export_with({"--only", "list", "--json"});
    CHECK(ran.code == 0);
    CHECK(Json::parse(ran.out)["files"].size() == list_files);
}

TEST_CASE("a shell with errors exports nothing: 1") {
    const Home home;
    put(home.folder / "hut.roundlay", wrong_document());
    const Ran ran = home.export_with({});
    CHECK(ran.code == 1);
    CHECK_THAT(ran.err, ContainsSubstring("hut.roundlay:") && ContainsSubstring("error: "));
    CHECK_FALSE(fs::exists(home.out()));
}

TEST_CASE("an output that cannot be written is 4, one sentence, and nothing is left behind") {
    const Home home;
    fs::create_directory(home.out());
    put(home.out() / "old.txt", "old");
    ::chmod(home.out().c_str(), 0555);
    const Ran read_only = home.export_with({"--only", "list"}, {.bound_by_rights = true});
    ::chmod(home.out().c_str(), 0755);
    CHECK(read_only.code == 4);
    CHECK_THAT(read_only.err, ContainsSubstring("you may not write there") && ContainsSubstring("out"));
    CHECK(count_entries(home.out()) == 1);

    fs::create_directories(home.out() / "cut-list.csv");
    const Ran clash = home.export_with({"--only", "list"});
    CHECK(clash.code == 4);
    CHECK_THAT(clash.err, ContainsSubstring("a folder of that name stands in the way") &&
                              ContainsSubstring("cut-list.csv"));
    CHECK(count_entries(home.out()) == 2);

    const Ran in_file = run({"export", (home.folder / "hut.roundlay").string(), "--to",
                             (home.folder / "hut.roundlay/out").string(), "--only", "list"});
    CHECK(in_file.code == 4);
    CHECK_THAT(in_file.err, ContainsSubstring("is a file, not a folder"));
}

TEST_CASE("where no picture can be made the rest is written and the code is 5") {
    const Home home;
    // No driver for the graphics library to find.
    const RunOptions blind = {.environment = {{"__EGL_VENDOR_LIBRARY_FILENAMES", "/nonexistent.json"}}};
    const Ran ran = home.export_with({"--only", "picture,list"}, blind);
    CHECK(ran.code == 5);
    CHECK_FALSE(ran.err.empty());
    CHECK(files_in(home.out()).size() == list_files + 1);
    CHECK_FALSE(fs::exists(home.out() / "picture.png"));
}

TEST_CASE("where there are no templates it is said, and the code is 1 where nothing else was asked for") {
    const Home home;
    put(home.folder / "hut.roundlay", run({"new", "-", "--notch", "saddle", "--rounds", "4"}).out);
    const Ran only = home.export_with({"--only", "templates"});
    CHECK(only.code == 1);
    CHECK_THAT(only.err, ContainsSubstring("no templates were made"));
    CHECK_THAT(only.err, ContainsSubstring("round logs are scribed in place"));
    const Ran more = home.export_with({"--only", "templates,list"});
    CHECK(more.code == 0);
    CHECK_THAT(more.err, ContainsSubstring("no templates were made"));
    CHECK(fs::exists(home.out() / "cut-list.csv"));
}

TEST_CASE("a library that cannot do its part is 6 and nothing is written") {
    const Home home;
    const Ran ran =
        home.export_with({"--only", "list,step"}, {.environment = {{"SOURCE_DATE_EPOCH", "yesterday"}}});
    CHECK(ran.code == 6);
    CHECK_THAT(ran.err, ContainsSubstring("SOURCE_DATE_EPOCH"));
    CHECK_FALSE(fs::exists(home.out()));
}

TEST_CASE("Ctrl-C in the middle of an export is 130 and leaves the folder as it was") {
    const Home home;
    put(home.folder / "hut.roundlay", run({"new", "-", "--rounds", "40", "--shape", "cross"}).out);
    fs::create_directory(home.out());
    put(home.out() / "shell.step", "old");
    const Ran ran = home.export_with({"--force"}, {.interrupt_when_there = home.out().string()});
    CHECK(ran.code == 130);
    CHECK_THAT(ran.err, ContainsSubstring("stopped; nothing was written"));
    CHECK(count_entries(home.out()) == 1);
    CHECK(text_of(home.out() / "shell.step") == "old");
}

TEST_CASE("a person's own files are named and spared unless --force is given") {
    const Home home;
    fs::create_directory(home.out());
    put(home.out() / "totals.csv", "mine");
    ::chmod((home.out() / "totals.csv").c_str(), 0444);
    const Ran refused = home.export_with({"--only", "list"});
    CHECK(refused.code == 4);
    CHECK_THAT(refused.err, ContainsSubstring("totals.csv") && ContainsSubstring("--force"));
    CHECK(text_of(home.out() / "totals.csv") == "mine");
    CHECK(count_entries(home.out()) == 1);
    REQUIRE(home.export_with({"--only", "list", "--force"}).code == 0);
    CHECK(text_of(home.out() / "totals.csv") != "mine");
    CHECK(home.export_with({"--only", "list"}).code == 0); // the export's own, as they were left
    put(home.out() / "pieces.csv", "as I changed it");
    const Ran changed = home.export_with({"--only", "list"});
    CHECK(changed.code == 4);
    CHECK_THAT(changed.err, ContainsSubstring("pieces.csv") && !ContainsSubstring("totals.csv"));
    CHECK(home.export_with({"--only", "mesh"}).code == 0); // not in the way of that one
}

TEST_CASE("the files of another document's export are only replaced with --force") {
    const Home home;
    REQUIRE(home.export_with({"--only", "list"}).code == 0);
    const auto before = files_in(home.out());
    const std::string manifest = text_of(home.out() / "manifest.json");
    put(home.folder / "barn.roundlay", run({"new", "-", "--rounds", "9"}).out);
    const auto export_barn = [&](std::vector<std::string> more) {
        std::vector<std::string> words{"export", "barn.roundlay", "--to", "out", "--only", "list"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words, {.folder = home.folder.path().string()});
    };
    const Ran refused = export_barn({});
    CHECK(refused.code == 4);
    CHECK_THAT(refused.err, ContainsSubstring("made from another document, hut.roundlay") &&
                                ContainsSubstring("nothing was written") &&
                                ContainsSubstring("with --force"));
    CHECK(files_in(home.out()) == before);
    CHECK(text_of(home.out() / "manifest.json") == manifest);
    CHECK(export_barn({"--force"}).code == 0);
    CHECK(export_barn({}).code == 0); // its own now
    CHECK(home.export_with({"--only", "list"}).code == 4);
    // Another state of the same one is no other, nor is one whose name is not known, as from a pipe.
    put(home.folder / "barn.roundlay", run({"new", "-", "--rounds", "8"}).out);
    CHECK(export_barn({}).code == 0);
}

TEST_CASE("two exports into one folder: one does it whole, the other says why not") {
    const Home home;
    put(home.folder / "hut.roundlay", run({"new", "-"}).out);
    put(home.folder / "other.roundlay", run({"new", "-", "--rounds", "9"}).out);
    for (int i = 0; i < 8; ++i) {
        fs::remove_all(home.out());
        Ran second;
        std::thread beside([&] {
            second = run({"export", "other.roundlay", "--to", "out", "--only", "step,list", "--force"},
                         {.folder = home.folder.path().string()});
        });
        const Ran first = home.export_with({"--only", "step,list", "--force"});
        beside.join();
        for (const Ran *ran : {&first, static_cast<const Ran *>(&second)})
            if (ran->code != 0) {
                CHECK(ran->code == 4);
                CHECK_THAT(ran->err, ContainsSubstring("another export is writing there"));
            }
        CHECK((first.code == 0 || second.code == 0));
        const Json manifest = Json::parse(text_of(home.out() / "manifest.json"));
        for (const Json &file : manifest["files"])
            CHECK(file["sha256"] == sha256_hex(text_of(home.out() / file["file"].get<std::string>())));
        CHECK(files_in(home.out()).size() == manifest["files"].size() + 1);
    }
}

TEST_CASE("a folder cannot go to the standard output") {
    const Home home;
    const Ran ran = run({"export", "hut.roundlay", "--to", "-"}, {.folder = home.folder.path().string()});
    CHECK(ran.code == 2);
    CHECK_THAT(ran.err, ContainsSubstring("a folder of files"));
    CHECK_FALSE(fs::exists(home.folder / "-"));
}

TEST_CASE("what is said to be written is what was written now") {
    const Home home;
    REQUIRE(home.export_with({"--only", "step,list"}).code == 0);
    CHECK_THAT(home.export_with({"--only", "list"}, {.err_is_terminal = true}).err,
               ContainsSubstring("wrote " + std::to_string(list_files + 1) + " files, ")); // and the manifest
}
