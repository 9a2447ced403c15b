// Templates on paper: true size, check bars, tiles, names.
#include "exporters/sheets/one_to_one/full_size.h"
#include "exporters/sheets/pattern/shapes.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/pdf/pdf.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>
#include <set>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

/// First and last dark pixel of a row or column of the page between two places.
struct Span {
    int first = -1, last = -1;
    double length() const { return last - first; }
};

Span dark_span(const GreyImage &image, bool along_x, int at, int from, int to) {
    Span span;
    for (int i = from; i < to; ++i)
        if (along_x ? image.dark(i, at) : image.dark(at, i)) {
            if (span.first < 0) span.first = i;
            span.last = i;
        }
    return span;
}

double covered(const std::vector<Item> &items) {
    double sum = 0;
    for (const Item &item : items)
        if (const Path *path = std::get_if<Path>(&item); path && path->line == Line::visible)
            for (std::size_t i = 0; i + 1 < path->points.size() + (path->closed ? 1 : 0); ++i)
                sum += length(path->points[(i + 1) % path->points.size()] - path->points[i]);
    return sum;
}

} // namespace

TEST_CASE("a template on paper has its true size, and so have its check bars") {
    const LaidShell shell = laid(plain_shell());
    const auto sheets = template_sheets(shell.shell, shell.layout, full_options());
    const auto with_end = std::find_if(sheets.begin(), sheets.end(), [](const Sheet &s) {
        return s.title.find(" end") != std::string::npos;
    });
    REQUIRE(with_end != sheets.end());
    Book book;
    book.created = 0;
    book.sheets = {*with_end};
    const std::string pdf = write_pdf(book);
    const double dots = 300 / 25.4; // pixels in a millimetre
    const auto image = page_image(pdf, 1, 300);
    CHECK(image.width == Approx(with_end->size.width * dots).margin(1));
    for (const Item &item : with_end->items) {
        const Path *path = std::get_if<Path>(&item);
        if (path == nullptr || path->points.size() != 2 || path->line != Line::dimension) continue;
        const Vec2 a = path->points[0], b = path->points[1];
        const double drawn = length(b - a);
        const bool bar = std::abs(drawn - 100) < 1e-9 || std::abs(drawn - 101.6) < 1e-9;
        if (!bar) continue;
        const bool lies = std::abs(a.y - b.y) < 1e-9;
        const auto px = [&](double mm) { return static_cast<int>(std::lround(mm * dots)); };
        const int across = lies ? px(with_end->size.height - a.y) : px(a.x);
        const int from = lies ? px(a.x) - 12 : px(with_end->size.height - b.y) - 12;
        const Span span = dark_span(image, lies, across, from, from + px(drawn) + 24);
        INFO(drawn << (lies ? " lying" : " standing"));
        CHECK(span.length() / dots == Approx(drawn).margin(0.3)); // and a line's width
    }
}

// The L-shaped house's third template is for 57 pieces and larger than a sheet.
TEST_CASE("templates laid over several sheets name every piece that they are for") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        const auto sheets = template_sheets(shell.shell, shell.layout, full_options());
        CHECK(all_clashes(sheets) == "");
        for (const PrintedShape &printed : printed_shapes(patterns_of(shell.layout))) {
            const PatternFace &face = printed.face;
            std::string words;
            for (const Sheet &sheet : sheets)
                for (const Item &item : sheet.items)
                    if (const Text *text = std::get_if<Text>(&item); text && sheet.title == face.name)
                        words += text->words + " ";
            INFO(name << ", " << face.name << ": " << words);
            const std::vector<std::string> &tags = printed.pattern.tags;
            const std::size_t all = tags.size();
            const bool cut_short = words.find("and more, see the list of templates") != std::string::npos;
            CHECK((cut_short || words.find(std::to_string(all) + (all == 1 ? " piece: " : " pieces: ")) !=
                                    std::string::npos));
            std::size_t named = 0;
            for (const std::string &tag : tags)
                named += words.find(tag) != std::string::npos ? 1U : 0U;
            CHECK((named == all || cut_short));
        }
    }
}

TEST_CASE("each face of each template is on paper once, as it is or turned over") {
    for (const std::string &name : all_demo_names) {
        const LaidShell shell = demo(name);
        const std::vector<Pattern> patterns = patterns_of(shell.layout);
        std::multiset<std::string> served;
        for (const PrintedShape &shape : printed_shapes(patterns)) {
            served.insert(shape.face.name);
            served.insert(shape.as_it_is.begin(), shape.as_it_is.end());
            served.insert(shape.turned_over.begin(), shape.turned_over.end());
        }
        for (const Pattern &pattern : patterns)
            for (const PatternFace &face : pattern.faces)
                CHECK(served.count(face.name) == 1);
    }
    // By hand: the far tail of a log is the mirror picture of its datum tail, face by face.
    Shell plain = plain_shell();
    const std::vector<Pattern> patterns = patterns_of(laid(plain).layout);
    const std::vector<PrintedShape> shapes = printed_shapes(patterns);
    CHECK(shapes.size() * 2 <= patterns.size() * 3);
    const auto turned =
        std::ranges::count_if(shapes, [](const PrintedShape &s) { return !s.turned_over.empty(); });
    CHECK(turned > 0);
}

TEST_CASE("tiles laid over one another by their ticks are the whole template") {
    Block block;
    block.room = {0, 0, 500, 420};
    block.items.emplace_back(Path{{{3, 3}, {480, 40}, {497, 410}, {20, 390}}, true, Line::visible, ""});
    const auto tiles = tiled(block, size_of(Paper::a4), {"T", "T", "t", "f"});
    REQUIRE(tiles.size() > 3);
    const Rect area = full_size_area(size_of(Paper::a4));
    CHECK(all_clashes(tiles) == "");
    // each stroke of the whole is on the tiles, and twice only within the overlaps
    double on_tiles = 0;
    for (const Sheet &tile : tiles)
        on_tiles += covered(tile.items);
    const double whole = covered(block.items);
    CHECK(on_tiles > whole);
    CHECK(on_tiles < whole * (1 + 3 * tile_overlap / area.width()) + 8 * tile_overlap);
}
