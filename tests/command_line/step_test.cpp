// STEP files otherwise than usual, as a person asks for them.
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("STEP files are written in the schema and the unit that are asked for, with their stock") {
    const TemporaryFolder folder;
    put(folder / "hut.roundlay", small_document());
    RunOptions options;
    options.folder = folder.path().string();
    const Words asked{"export",       "hut.roundlay",   "--to",  "out",         "--only",
                      "step",         "--step-schema",  "ap242", "--step-unit", "in",
                      "--step-stock", "--step-colours", "wood"};
    const Ran ran = run(asked, options);
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    const std::string piece = text_of(folder / "out/pieces/A-01-1.step");
    CHECK_THAT(piece, ContainsSubstring("AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF") &&
                          ContainsSubstring("CONVERSION_BASED_UNIT('INCH'") &&
                          ContainsSubstring("MANIFOLD_SOLID_BREP('A-01-1 stock'"));
    CHECK_THAT(text_of(folder / "out/manifest.json"), ContainsSubstring("AP242, inches"));
    for (const Words &wrong :
         {Words{"--step-schema", "ap203"}, Words{"--step-unit", "yd"}, Words{"--step-colours", "age"}})
        CHECK(run({"export", "hut.roundlay", "--to", "out", wrong.front(), wrong.back()}, options).code == 2);
}
