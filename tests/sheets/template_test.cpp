// Paper and files at full size: templates, story poles.

#include "exporters/sheets/dxf/dxf.h"
#include "exporters/sheets/one_to_one/full_size.h"
#include "exporters/sheets/pattern/joints.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/sheets/pdf/pdf.h"
#include "exporters/sheets/pole/story_pole.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/run.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>
#include <numeric>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

double area_of(const std::vector<Vec2> &ring) {
    double twice = 0;
    for (std::size_t i = 0; i < ring.size(); ++i)
        twice += cross(ring[i], ring[(i + 1) % ring.size()]);
    return twice / 2;
}

/// Reads with ezdxf (independent of ours), audits, and prints what a machine's operator needs right.
const char *const audit = "/usr/bin/python3 " ROUNDLAY_ROOT "/tests/external/dxf/audit.py %";

bool says(const Ran &ran, const std::string &words) {
    return ran.out.find(words) != std::string::npos;
}

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

/// What the border has of a log's end: the face of an upright plane that lies farthest that way.
struct EndFace {
    double area = 0, width = 0;
};
EndFace end_face(const Polyhedron &wood, End end) {
    const double way = end == End::datum ? -1 : 1;
    const Face *found = nullptr;
    double farthest = -1e9;
    for (const Face &face : wood.faces) {
        if (way * face.plane.normal.x < 0.5 || std::abs(face.plane.normal.z) > 1e-9) continue;
        double reach = -1e9;
        for (const int v : face.loops[0])
            reach = std::max(reach, way * wood.vertices[static_cast<std::size_t>(v)].x);
        if (reach > farthest) farthest = reach, found = &face;
    }
    if (found == nullptr) return {};
    double low = 1e9, high = -1e9;
    for (const int v : found->loops[0]) {
        const Vec3 p = wood.vertices[static_cast<std::size_t>(v)];
        const double along = p.y * found->plane.normal.x - p.x * found->plane.normal.y;
        low = std::min(low, along), high = std::max(high, along);
    }
    return {area(wood, *found), high - low};
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

// The plain shell's tails are worked out by hand: 200 mm of tail, 1:8 both ways, 210 mm high logs.
TEST_CASE("a template's outline is that of its tail") {
    const LaidShell shell = laid(plain_shell());
    const auto joints = distinct_joints(shell.layout);
    const Piece *piece = nullptr; // a full log with seams over and under its tail
    for (const Piece &p : shell.layout.pieces)
        if (p.tag == "A-02-1") piece = &p;
    REQUIRE(piece != nullptr);
    const auto joint = std::find_if(joints.begin(), joints.end(), [](const Joint &j) {
        return j.end == End::datum && std::count(j.tags.begin(), j.tags.end(), "A-02-1") > 0;
    });
    REQUIRE(joint != joints.end());
    const auto ring = outline_of(*joint, true);
    // full height past the shoulder: 60 mm; the tail on the outside face: a trapezium 200 long
    double outer = 0, inner = 0,
           inside = 0; // heights of the tail: at the end, at the shoulder; inside at the end
    for (const JointCut &cut : joint->cuts) {
        outer += cut.side == Side::top ? cut.outside_near : -cut.outside_near;
        inner += cut.side == Side::top ? cut.outside_far : -cut.outside_far;
        inside += cut.side == Side::top ? cut.inside_near : -cut.inside_near;
        CHECK(std::abs(cut.outside_near - cut.outside_far) == Approx(25)); // 1:8 over 200
        CHECK(std::abs(cut.outside_near - cut.inside_near) == Approx(25));
        CHECK(cut.far.outside == Approx(200));
        CHECK(cut.far.inside == Approx(200));
    }
    CHECK(area_of(ring) == Approx(60 * 210 + (outer + inner) / 2 * 200));
    CHECK(area_of(end_outline_of(*joint)) == Approx((outer + inside) / 2 * 200));
    CHECK(inside == Approx(outer + 2 * 25)); // top and underside both slope 1:8 across
}

// A bay turned by 45 degrees: its logs end at half of that to the square, so the end face is wider than the
// wall.
TEST_CASE("the end of a log that is cut at a slant is a template in its true size") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    const LaidShell shell = laid(bay);
    int slanting = 0;
    for (const Joint &joint : distinct_joints(shell.layout)) {
        const double slant = std::abs(joint.starts.outside - joint.starts.inside);
        if (slant < 1) continue;
        CHECK(slant ==
              Approx(joint.width)); // the walls cross at 45 degrees, and ends lie in the other wall's face
        const auto ring = end_outline_of(joint);
        REQUIRE(ring.size() == 4);
        CHECK(length(ring[0] - Vec2{ring[2].x, ring[0].y}) == Approx(std::sqrt(2.0) * joint.width));
        ++slanting;
    }
    CHECK(slanting > 0);
}

// Where walls are not square an end is cut where the log is already thinner, or not yet: against the exact
// border.
TEST_CASE("the end templates of tapered logs are as wide as their ends, at slanting corners too") {
    Shell bay = plain_shell();
    bay.walls = bay_plan(Length::mm(9000), Length::mm(6000), Length::mm(3000), Length::mm(1800),
                         Length::mm(2000), 45);
    bay.logs.butt_height = Length::mm(216);
    bay.logs.tip_height = Length::mm(204);
    bay.logs.tip_width = Length::mm(150);
    const LaidShell shell = laid(bay);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int slanting = 0, square = 0;
    for (const Joint &joint : distinct_joints(shell.layout)) {
        const auto ring = end_outline_of(joint);
        if (ring.empty() || joint.within) continue;
        const Piece *piece = nullptr;
        for (const Piece &p : shell.layout.pieces)
            if (p.tag == joint.tags.front()) piece = &p;
        REQUIRE(piece != nullptr);
        INFO(joint.name << " of " << piece->tag);
        const EndFace end = end_face(shell.bodies[piece->model].hewn, joint.end);
        CHECK(area_of(ring) == Approx(end.area).epsilon(1e-6));
        CHECK(length(ring[0] - Vec2{ring[2].x, ring[0].y}) == Approx(end.width).margin(1e-4));
        ++(std::abs(joint.starts.outside - joint.starts.inside) > 1 ? slanting : square);
    }
    CHECK(slanting > 4);
    CHECK(square > 4);
}

// By hand: a joist 100 wide at its butt and 80 at its tip narrows by a fifth; its template is as wide as it
// is there.
TEST_CASE("templates of tapering joists and of pockets in tapering logs follow the faces as hewn") {
    Shell house = plain_shell();
    house.rounds.count = 8;
    house.logs.tip_width = Length::mm(150);
    Floor floor;
    floor.name = "G", floor.from = "A", floor.to = "C";
    floor.level = Length::mm(690);
    floor.joist = {Length::mm(100), Length::mm(160)};
    floor.tip_width = Length::mm(80);
    floor.bearing = Length::mm(75);
    floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(1.0 / 5);
    house.floors = {floor};
    const LaidShell shell = laid(house);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int ends = 0, pockets = 0;
    for (const Pattern &pattern : patterns_of(shell.layout)) {
        if (pattern.stands) continue;
        const auto &ring = pattern.faces.at(0).outline;
        for (const Piece &piece : shell.layout.pieces) {
            if (piece.tag != pattern.tags.front()) continue;
            const Features features = features_of(piece);
            const auto deepest =
                std::max_element(ring.begin(), ring.end(), [](Vec2 a, Vec2 b) { return a.x < b.x; });
            if (pattern.where.starts_with("pocket")) {
                ++pockets;
                const auto same = [&](const Pocket &p) {
                    return std::abs(p.depth - deepest->x) < 0.01 &&
                           std::abs(p.width_at_face - pattern.width) < 0.01;
                };
                CHECK(std::any_of(features.pockets.begin(), features.pockets.end(), same));
                continue;
            }
            ++ends;
            const auto wide = [&](double x) { return features.innermost(x) - features.outermost(x); };
            const double from_datum = wide(deepest->x), from_far = wide(piece.blank.length - deepest->x);
            const double at_edge = 2 * std::abs(deepest->y);
            CHECK(std::min(std::abs(at_edge - from_datum), std::abs(at_edge - from_far)) < 0.01);
        }
    }
    CHECK(ends >= 2); // butt and tip
    CHECK(pockets >= 2);
}

TEST_CASE("tailed joists and their pockets have templates from above") {
    Shell house = plain_shell();
    house.rounds.count = 8;
    Floor floor;
    floor.name = "G";
    floor.from = "A";
    floor.to = "C";
    floor.level = Length::mm(690);
    floor.joist = {Length::mm(100), Length::mm(160)};
    floor.bearing = Length::mm(75);
    floor.pocket = PocketKind::tailed;
    floor.tail = Slope::rise_per_run(1.0 / 5);
    house.floors = {floor};
    const LaidShell shell = laid(house);
    REQUIRE_FALSE(shell.layout.pieces.empty());
    int ends = 0, pockets = 0;
    for (const Pattern &pattern : patterns_of(shell.layout)) {
        if (pattern.stands) continue;
        const auto &ring = pattern.faces.at(0).outline;
        const bool pocket = pattern.where.starts_with("pocket");
        pocket ? ++pockets : ++ends;
        INFO(pattern.where);
        // the end is as wide as the joist and narrows by 15 mm on either side over 75 mm
        const double tail = 75 * (100 + 70) / 2.0;
        CHECK(area_of(ring) == Approx(pocket ? tail : tail + 60 * 100).epsilon(0.02));
        CHECK(pattern.tags.size() >= 2);
    }
    CHECK(ends == 1);
    CHECK(pockets == 1);
}

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
        for (const Pattern &pattern : patterns_of(shell.layout))
            for (const PatternFace &face : pattern.faces) {
                std::string words;
                for (const Sheet &sheet : sheets)
                    for (const Item &item : sheet.items)
                        if (const Text *text = std::get_if<Text>(&item); text && sheet.title == face.name)
                            words += text->words + " ";
                INFO(name << ", " << face.name << ": " << words);
                const std::size_t all = pattern.tags.size();
                CHECK(words.find(std::to_string(all) + (all == 1 ? " piece: " : " pieces: ")) !=
                      std::string::npos);
                const bool cut_short = words.find("and more, see the list of templates") != std::string::npos;
                std::size_t named = 0;
                for (const std::string &tag : pattern.tags)
                    named += words.find(tag) != std::string::npos ? 1U : 0U;
                CHECK((named == all || cut_short));
                const Rect box = bounds(Item(Path{face.outline, true, Line::visible, ""}));
                if (box.width() > 200 && box.height() > 180) CHECK(named == all);
            }
    }
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

// Logs of equal height lie half a pitch apart in the two walls of a corner, so seams do too.
TEST_CASE("a story pole has every seam and every log of its corner") {
    Shell plain = plain_shell();
    plain.notch.kind = NotchKind::square_lap;
    const LaidShell shell = laid(plain);
    for (const CornerPlace &corner : shell.layout.corners) {
        std::vector<double> seams, logs;
        for (const PoleMark &mark : pole_marks(shell.layout, corner))
            (mark.seam ? seams : logs).push_back(mark.z);
        REQUIRE(seams.size() >= 6);
        for (std::size_t i = 2; i + 1 < seams.size(); ++i)
            CHECK(seams[i] - seams[i - 1] == Approx(115));
        CHECK(std::is_sorted(logs.begin(), logs.end()));
        CHECK(logs.back() == Approx(4 * 230 - 20));
    }
    const auto sheets = full_size_poles(shell.shell, shell.layout, full_options());
    CHECK(all_clashes(sheets) == "");
    REQUIRE_FALSE(sheets.empty());
}
