#include "exporters/sheets/svg/base64.h"
#include "exporters/sheets/svg/svg.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"

using namespace roundlay::sheets;
using roundlay::test::run_on;

namespace {

Sheet small_sheet() {
    Sheet sheet;
    sheet.size = size_of(Paper::a4);
    sheet.title = "a < b & \"c\"";
    Text text;
    text.at = {30, 100};
    text.words = "5/8\" & <tag> \x01 \xFF";
    sheet.items.emplace_back(text);
    sheet.items.emplace_back(Path{{{20, 20}, {120, 20}, {120, 40}}, true, Line::hidden, ""});
    sheet.items.emplace_back(Arc{{60, 60}, 15, 300, 30, Line::visible});
    return sheet;
}

} // namespace

TEST_CASE("the SVG is well-formed whatever the words are") {
    const auto ran = run_on(write_svg(small_sheet()), "xmllint --noout %", ".svg");
    INFO(ran.out);
    CHECK(ran.code == 0);
}

TEST_CASE("the SVG states millimetres, and the same sheet gives the same bytes") {
    const std::string svg = write_svg(small_sheet());
    CHECK(svg.find("width=\"210mm\" height=\"297mm\" viewBox=\"0 0 210 297\"") != std::string::npos);
    CHECK(svg.find("d=\"M20,277 120,277 120,257Z\"") != std::string::npos);
    CHECK(svg == write_svg(small_sheet()));
}

TEST_CASE("base64 gives the published test vectors") { // RFC 4648 section 10
    CHECK(base64("") == "");
    CHECK(base64("f") == "Zg==");
    CHECK(base64("fo") == "Zm8=");
    CHECK(base64("foo") == "Zm9v");
    CHECK(base64("foob") == "Zm9vYg==");
    CHECK(base64("fooba") == "Zm9vYmE=");
    CHECK(base64("foobar") == "Zm9vYmFy");
}
