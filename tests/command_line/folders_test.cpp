// Folders that an export makes above the one that is named.
#include "tests/command_line/exporting.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;
namespace fs = std::filesystem;

TEST_CASE("folders above the one that is named are made and told") {
    const ExportingHome home;
    const Ran one = home.export_with({"--only", "list"});
    CHECK(one.code == 0);
    CHECK_THAT(one.err, !ContainsSubstring("there was no folder"));
    const fs::path deep = home.folder / "exprots" / "may" / "hut";
    const Ran chain = run(
        {"export", (home.folder / "hut.roundlay").string(), "--only", "list", "--to", deep.string() + "/"});
    CHECK(chain.code == 0);
    CHECK_THAT(chain.err, ContainsSubstring("there was no folder \"" + (home.folder / "exprots").string() +
                                            "\": it was made, and in it \"" + deep.string()));
    CHECK(fs::exists(deep / "manifest.json"));
    const Ran again =
        run({"export", (home.folder / "hut.roundlay").string(), "--only", "list", "--to", deep.string()});
    CHECK_THAT(again.err, !ContainsSubstring("there was no folder"));
}
