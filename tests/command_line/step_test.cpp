// STEP files otherwise than usual, as a person asks for them.
#include "tests/command_line/exporting.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("STEP files are written in the schema and the unit that are asked for, with their stock") {
    const ExportingHome home;
    const Ran ran = home.export_with({"--only", "step", "--step-schema", "ap242", "--step-unit", "in",
                                      "--step-stock", "--step-colours", "wood"});
    INFO(ran.err);
    REQUIRE(ran.code == 0);
    const std::string piece = text_of(home.folder / "out/pieces/A-01-1.step");
    CHECK_THAT(piece, ContainsSubstring("AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF") &&
                          ContainsSubstring("CONVERSION_BASED_UNIT('INCH'") &&
                          ContainsSubstring("MANIFOLD_SOLID_BREP('A-01-1 stock'"));
    CHECK_THAT(text_of(home.folder / "out/manifest.json"), ContainsSubstring("AP242, inches"));
    for (const Words &wrong :
         {Words{"--step-schema", "ap203"}, Words{"--step-unit", "yd"}, Words{"--step-colours", "age"}})
        CHECK(home.export_with({wrong.front(), wrong.back()}).code == 2);
}
