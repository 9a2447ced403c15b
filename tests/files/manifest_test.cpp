#include "exporters/files/manifest.h"
#include "exporters/files/sha256.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

namespace {

Manifest example() {
    return {"1.2.3",
            "Mill \"cottage\" – Nord",
            "mill.roundlay",
            std::string(64, 'd'),
            {{"shell.step", "the whole shell", "step", 12, std::string(64, 'a')},
             {"pieces/A-01-1.step", "one piece", "step", 3, std::string(64, 'b')}}};
}

OutputFile written(const TemporaryFolder &home, const std::string &name, const std::string &text,
                   const std::string &maker) {
    put(home / name, text);
    return {name, "x", maker, text.size(), sha256_hex(text)};
}

} // namespace

TEST_CASE("a manifest comes back from its text as it was") {
    CHECK(parse_manifest(manifest_json(example())) == example());
    CHECK(manifest_json(example()) == manifest_json(example()));
}

TEST_CASE("a text that is no manifest of ours is none") {
    for (const char *text : {"", "{}", "[]", "{\"program\":\"other\",\"format\":1}", "\xff\xfe binary",
                             "{\"program\":\"roundlay\",\"format\":2,\"files\":[]}",
                             "{\"program\":\"roundlay\",\"format\":1,\"version\":1,\"files\":[]}"})
        CHECK_FALSE(parse_manifest(text));
}

TEST_CASE("a shell's name that is no proper UTF-8 still gives a readable manifest") {
    Manifest manifest = example();
    manifest.shell = "caf\xe9";
    CHECK(parse_manifest(manifest_json(manifest)));
}

TEST_CASE("files of an earlier export are kept, replaced or outdated by their exporter and document") {
    const TemporaryFolder home;
    Manifest earlier = example();
    earlier.files = {written(home, "a.csv", "a", "list"), written(home, "b.step", "b", "step"),
                     written(home, "c.pdf", "c", "sheets")};
    put(home / "c.pdf", "a person changed it");
    earlier.files.push_back({"missing.png", "x", "picture", 1, std::string(64, 'e'), {}});
    earlier.files.push_back({"../outside", "x", "list", 1, std::string(64, 'e'), {}});

    const auto same = earlier_files(home.path(), earlier, earlier, {"list"});
    CHECK(same.replaced == std::vector<OutputFile>{earlier.files[0]});
    CHECK(same.kept == std::vector<OutputFile>{earlier.files[1]});
    CHECK(same.outdated.empty());

    Manifest newer = earlier;
    newer.document_sha256 = std::string(64, 'f');
    const auto other = earlier_files(home.path(), earlier, newer, {"list"});
    CHECK(other.kept.empty());
    OutputFile outdated = earlier.files[1];
    outdated.made_from = earlier.document_sha256;
    CHECK(other.outdated == std::vector<OutputFile>{outdated});

    // Listed on by a manifest of the newer document, it stays known for what it is.
    newer.files = other.outdated;
    const auto read = parse_manifest(manifest_json(newer));
    REQUIRE(read);
    CHECK(earlier_files(home.path(), *read, newer, {"list"}).outdated == newer.files);
    const auto back = earlier_files(home.path(), *read, earlier, {"list"});
    CHECK(back.kept == std::vector<OutputFile>{earlier.files[1]});
}

TEST_CASE("files of another state of the same document are outdated, and come back with that state") {
    const TemporaryFolder home;
    Manifest earlier = example();
    earlier.state = "as found";
    earlier.files = {written(home, "a.csv", "a", "list"), written(home, "b.step", "b", "step")};
    Manifest now = earlier;
    now.state = "as it shall stand";
    CHECK(is_of_another_state(earlier, now));
    CHECK_FALSE(is_of_another_state(earlier, earlier));
    const auto other = earlier_files(home.path(), earlier, now, {"list"});
    CHECK(other.kept.empty());
    REQUIRE(other.outdated.size() == 1);
    now.files = other.outdated;
    const auto read = parse_manifest(manifest_json(now));
    REQUIRE(read);
    CHECK(read->state == "as it shall stand");
    CHECK(earlier_files(home.path(), *read, *read, {"list"}).kept.empty());
    CHECK(earlier_files(home.path(), *read, earlier, {"list"}).kept.size() == 1);
}

TEST_CASE("a person's own files are those that no manifest lists as they are") {
    const TemporaryFolder home;
    Manifest earlier = example();
    earlier.files = {written(home, "kept.csv", "a", "list"), written(home, "changed.csv", "b", "list")};
    put(home / "changed.csv", "c");
    put(home / "mine.csv", "mine");
    put(home / "same.csv", "as wanted");
    std::filesystem::create_symlink("nowhere", home / "link.csv");
    std::vector<OutputFile> wanted;
    for (const char *name : {"kept.csv", "changed.csv", "mine.csv", "new.csv", "link.csv", "manifest.json"})
        wanted.push_back({name, "x", "list", 1, std::string(64, 'e'), {}});
    wanted.push_back({"same.csv", "x", "list", 9, sha256_hex("as wanted"), {}});
    const std::vector<std::string> own = {"changed.csv", "mine.csv", "link.csv"};
    CHECK(own_files(home.path(), {earlier}, wanted) == own);

    Manifest broken_off = earlier; // by a program that was killed half way
    broken_off.files[1].sha256 = sha256_hex("c");
    CHECK(own_files(home.path(), {earlier, broken_off}, wanted) ==
          std::vector<std::string>{"mine.csv", "link.csv"});

    put(home / "manifest.json", "{\"name\": \"another program's\"}");
    CHECK(own_files(home.path(), {earlier}, wanted).back() == "manifest.json");
    put(home / "manifest.json", manifest_json(earlier));
    CHECK(own_files(home.path(), {earlier}, wanted) == own);
}

TEST_CASE("an export is another document's where its file or else its shell is called otherwise") {
    const auto from = [](const char *shell, const char *document, const char *sha) {
        return Manifest{"1", shell, document, sha, {}};
    };
    const Manifest cabin = from("Cabin", "cabin.roundlay", "1");
    CHECK_FALSE(is_of_another_document(cabin, from("Cabin", "cabin.roundlay", "2")));
    CHECK(is_of_another_document(cabin, from("Barn", "barn.roundlay", "2")));
    CHECK(is_of_another_document(cabin, from("Cabin", "barn.roundlay", "2")));
    CHECK_FALSE(is_of_another_document(cabin, from("Barn", "cabin.roundlay", "2"))); // the shell was renamed
    CHECK(is_of_another_document(cabin, from("Barn", "", "2")));
    CHECK_FALSE(is_of_another_document(cabin, from("Barn", "barn.roundlay", "1"))); // the very same text
    CHECK_FALSE(is_of_another_document(cabin, from("Cabin", "", "2")));
    CHECK_FALSE(is_of_another_document(cabin, from("", "", "2")));
    CHECK(is_of_another_document(from("", "cabin.roundlay", "1"), from("", "barn.roundlay", "2")));
}
