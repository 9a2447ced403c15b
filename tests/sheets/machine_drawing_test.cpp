// Drawings for a machine, held to an audit that shares no code with them; story poles.
#include "exporters/sheets/dxf/dxf.h"
#include "exporters/sheets/pattern/templates.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// Reads with ezdxf (independent of ours), audits, and prints what a machine's operator needs right.
const char *const audit = "/usr/bin/python3 " ROUNDLAY_ROOT "/tests/external/dxf/audit.py %";

bool says(const Ran &ran, const std::string &words) {
    return ran.out.find(words) != std::string::npos;
}

} // namespace

TEST_CASE("the drawing for a machine needs no mending: closed outlines, no duplicates, millimetres") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        const auto patterns = patterns_of(shell.layout);
        const Ran ran = run_on(write_dxf(template_drawing(patterns)), audit, ".dxf");
        INFO(name << "\n" << ran.out);
        REQUIRE(ran.code == 0);
        CHECK(says(ran, "errors 0 fixes 0 insunits 4"));
        CHECK(says(ran, "duplicates 0"));
        double area = 0;
        std::size_t outlines = 0;
        for (const Pattern &pattern : patterns)
            for (const PatternFace &face : pattern.faces)
                area += area_of(face.outline), ++outlines;
        const std::string n = std::to_string(outlines);
        CHECK(says(ran, "outlines " + n + " closed " + n));
        CHECK(says(ran, "bar 100.0"));
        const double read = std::stod(ran.out.substr(ran.out.find("area ") + 5));
        CHECK(read == Approx(area).margin(0.01 * static_cast<double>(outlines)));
    }
}

TEST_CASE("true circles, arcs, greys and every kind of line pass the audit too") {
    Sheet sheet;
    sheet.size = {200, 200};
    for (const Line line : all_lines)
        sheet.items.emplace_back(
            Path{{{0, 10.0 * static_cast<int>(line)}, {50, 10.0 * static_cast<int>(line)}}, false, line, ""});
    sheet.items.emplace_back(Circle{{100, 100}, 16, Line::visible, "BORE-THROUGH"});
    sheet.items.emplace_back(Arc{{50, 100}, 10, 0, 90, Line::visible});
    sheet.items.emplace_back(Fill{{{{10, 120}, {20, 120}, {20, 130}}}, 0.5});
    Text text;
    text.words = "\u00D7 50 %% 100 % \xE5\x8C\x97";
    text.at = {10, 150};
    sheet.items.emplace_back(text);
    const Ran ran = run_on(write_dxf(sheet), audit, ".dxf");
    INFO(ran.out);
    CHECK(ran.code == 0);
    CHECK(says(ran, "errors 0 fixes 0 insunits 4"));
    CHECK(says(ran, "circles 1"));
    CHECK(says(ran, "ARC CIRCLE HATCH LINE TEXT"));
    CHECK(write_dxf(sheet) == write_dxf(sheet));
}
