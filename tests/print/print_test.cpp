// Models to be printed: what they weigh up to, where they lie, and what is refused.
#include "exporters/print/print.h"
#include "exporters/print/print_letters.h"
#include "exporters/print/stl.h"
#include "exporters/print/three_mf.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cstring>
#include <map>
#include <set>

using namespace roundlay;
using namespace roundlay::test;

namespace {

struct Laid {
    Layout layout;
    Bodies bodies;
};

Laid laid_out(const Shell &shell) {
    Laid all{lay_out(shell), {}};
    for (const Model &model : all.layout.models)
        all.bodies.push_back(body_of(all.layout.pieces[model.pieces.front()]));
    return all;
}

const Piece &first_of(const Layout &layout, Index<Model> model) {
    return layout.pieces[layout.models[model].pieces.front()];
}

/// Triangles of a binary STL, corner by corner as the numbers stand in it.
std::vector<std::array<std::array<float, 3>, 3>> triangles_in(const std::string &stl) {
    std::uint32_t count = 0;
    std::memcpy(&count, stl.data() + 80, sizeof count);
    REQUIRE(stl.size() == 84 + 50 * std::size_t{count});
    std::vector<std::array<std::array<float, 3>, 3>> all(count);
    for (std::size_t i = 0; i < count; ++i)
        std::memcpy(&all[i], stl.data() + 84 + 50 * i + 12, 36);
    return all;
}

/// Each side of a triangle is used exactly once in each direction, by the corners as they stand in the file.
bool is_watertight(const std::vector<std::array<std::array<float, 3>, 3>> &triangles) {
    std::map<std::pair<std::array<float, 3>, std::array<float, 3>>, int> sides;
    for (const auto &triangle : triangles)
        for (int i = 0; i < 3; ++i)
            ++sides[{triangle[i], triangle[(i + 1) % 3]}];
    return std::ranges::all_of(sides, [&](const auto &side) {
        const auto back = sides.find({side.first.second, side.first.first});
        return back != sides.end() && back->second == side.second;
    });
}

double volume_of(const std::vector<std::array<std::array<float, 3>, 3>> &triangles) {
    double six = 0;
    for (const auto &[a, b, c] : triangles)
        six += dot(Vec3{a[0], a[1], a[2]}, cross(Vec3{b[0], b[1], b[2]}, Vec3{c[0], c[1], c[2]}));
    return six / 6;
}

std::string refused(const Laid &all, const PrintOptions &options) {
    const auto made = print_job(all.layout, all.bodies, options);
    REQUIRE(std::holds_alternative<PrintProblems>(made));
    std::string texts;
    for (const Said &problem : std::get<PrintProblems>(made))
        texts += std::string(problem.text) + "\n";
    return texts;
}

PrintJob printed(const Laid &all, const PrintOptions &options) {
    const auto made = print_job(all.layout, all.bodies, options);
    REQUIRE(std::holds_alternative<PrintJob>(made));
    return std::get<PrintJob>(made);
}

} // namespace

TEST_CASE("at full size an STL holds the wood of its body, closed") {
    for (const Shell &shell : {plain_shell(), floored()}) {
        const Laid all = laid_out(shell);
        for (const Index<Model> model : all.layout.models.indices()) {
            const Body &body = all.bodies[model];
            INFO(first_of(all.layout, model).tag);
            const Mesh mesh = mesh_of(body);
            const auto triangles = triangles_in(write_stl({mesh}));
            CHECK(is_watertight(triangles));
            double wood = volume(body.hewn);
            for (const Bore &bore : body.bores)
                wood -= prism_volume(bore, 24);
            if (body.bores_clear) CHECK(volume(mesh) == Approx(wood).epsilon(1e-9));
            CHECK(volume_of(triangles) == Approx(volume(mesh)).epsilon(1e-6));
        }
    }
}

TEST_CASE("eased by nothing a piece is as it was") {
    CHECK(rc::check("any shell", [] {
        const Laid all = laid_out(any_fitted_shell());
        for (const Index<Model> model : all.bodies.indices()) {
            const Body same = eased(first_of(all.layout, model), 0, false);
            RC_ASSERT(std::abs(same.volume - volume(all.bodies[model].hewn)) <= 1e-9 * same.volume);
        }
    }));
}

TEST_CASE("where two pieces meet, the clearance stands between them") {
    const double in = 1.5;
    int seams = 0;
    for (const Shell &shell : {plain_shell(), floored()}) {
        const Laid all = laid_out(shell);
        for (const Piece &piece : all.layout.pieces) {
            const Polyhedron before = body_of(piece).hewn, after = eased(piece, in, false).hewn;
            REQUIRE(is_closed(after));
            // Each face that is left is one of the piece's own, moved in by that: so of two that shared a
            // plane each has gone back from it.
            for (const Face &face : after.faces) {
                const bool known = std::ranges::any_of(before.faces, [&](const Face &own) {
                    return dot(own.plane.normal, face.plane.normal) > 1 - 1e-9 &&
                           std::abs(own.plane.offset - in - face.plane.offset) < 1e-6;
                });
                INFO(piece.tag);
                CHECK(known);
                ++seams;
            }
        }
    }
    CHECK(seams > 100);
}

TEST_CASE("every piece is on a plate once, on the bed and clear of the others; joints go together") {
    const Laid all = laid_out(floored());
    const PrintOptions options{.scale = 40, .bed_x = 200, .bed_y = 180, .clearance = 0.2, .nozzle = 0.2};
    const PrintJob job = printed(all, options);
    std::multiset<std::string> tags;
    std::size_t pins = 0;
    for (const PrintPlate &plate : job.plates) {
        std::vector<Box3> taken;
        for (const PrintPlace &place : plate) {
            const Box3 box = bounds(placed_mesh(job, place));
            INFO(place.name);
            CHECK(std::abs(box.low.z) < 1e-9);
            CHECK((box.low.x >= -1e-9 && box.low.y >= -1e-9 && box.high.x <= 200 + 1e-9 &&
                   box.high.y <= 180 + 1e-9));
            for (const Box3 &other : taken)
                CHECK((box.low.x >= other.high.x + 2.9 || other.low.x >= box.high.x + 2.9 ||
                       box.low.y >= other.high.y + 2.9 || other.low.y >= box.high.y + 2.9));
            taken.push_back(box);
            if (job.parts[place.part].tags.empty())
                ++pins;
            else
                tags.insert(place.name);
        }
    }
    CHECK(tags.size() == all.layout.pieces.size());
    for (const Piece &piece : all.layout.pieces)
        CHECK(tags.count(piece.tag) == 1);
    CHECK(pins == all.layout.pegs.size());
    for (const PrintPart &part : job.parts) {
        INFO(part.name);
        CHECK(is_closed(part.mesh));
        CHECK(is_watertight(triangles_in(write_stl({part.mesh}))));
        CHECK(volume(part.mesh) > 0);
    }
}

TEST_CASE("without pegs there are neither pins nor their holes") {
    const Laid all = laid_out(plain_shell());
    const PrintJob pins = printed(all, {.scale = 30, .clearance = 0.1, .nozzle = 0.2, .tags = false});
    const PrintJob none = printed(
        all, {.scale = 30, .clearance = 0.1, .nozzle = 0.2, .pegs = PrintedPegs::none, .tags = false});
    const PrintJob holes = printed(
        all, {.scale = 30, .clearance = 0.1, .nozzle = 0.2, .pegs = PrintedPegs::holes, .tags = false});
    CHECK(none.parts.size() == all.layout.models.size());
    CHECK(holes.parts.size() == all.layout.models.size());
    CHECK(pins.parts.size() > all.layout.models.size());
    double with = 0, without = 0;
    for (std::size_t i = 0; i < none.parts.size(); ++i)
        with += volume(holes.parts[i].mesh), without += volume(none.parts[i].mesh);
    CHECK(with < without);
}

TEST_CASE("tags are pressed into undersides where the nozzle can make them, and the solids stay closed") {
    for (const Shell &shell : {plain_shell(), floored()}) {
        const Laid all = laid_out(shell);
        const PrintOptions with{.scale = 20, .bed_x = 400, .bed_y = 400, .clearance = 0.1, .nozzle = 0.4};
        PrintOptions without = with;
        without.tags = false;
        const PrintJob tagged = printed(all, with), bare = printed(all, without);
        std::map<std::string, const PrintPart *> plain;
        for (const PrintPart &part : bare.parts)
            for (const std::string &tag : part.tags)
                plain[tag] = &part;
        std::size_t pressed = 0;
        for (const PrintPart &part : tagged.parts) {
            INFO(part.name);
            CHECK(is_closed(part.mesh));
            CHECK(is_watertight(triangles_in(write_stl({part.mesh}))));
            if (part.tags.empty() || tagged.untagged.contains(part.tags.front())) continue;
            REQUIRE(part.tags.size() == 1);
            ++pressed;
            const Mesh &before = plain.at(part.name)->mesh;
            const double gone = volume(before) - volume(part.mesh);
            CHECK(gone > 0);
            // Each letter has 7 to 20 dots, each as deep as it is told to be and no thinner than the nozzle.
            const auto letters = static_cast<double>(part.name.size());
            CHECK(gone >= letters * 3 * 0.4 * 0.4 * 0.3);
            CHECK(gone <= letters * 24 * 1.0 * 1.0 * 0.6);
            CHECK(bounds(part.mesh).high.z == Approx(bounds(before).high.z)); // from below alone
            CHECK(bounds(part.mesh).high.x == Approx(bounds(before).high.x));
        }
        CHECK(pressed + tagged.untagged.size() == all.layout.pieces.size());
        CHECK(pressed > all.layout.pieces.size() / 2);
    }
}

TEST_CASE("a tag is left out with a word where no letter of it can be printed") {
    const Laid round = laid_out(round_shell());
    const PrintJob job =
        printed(round, {.scale = 20, .bed_x = 400, .bed_y = 400, .clearance = 0.1, .nozzle = 0.4});
    CHECK_FALSE(job.untagged.empty());
    for (const auto &[tag, why] : job.untagged)
        CHECK(why.text == "no level place under it takes letters that its nozzle prints");
    Laid odd = laid_out(plain_shell());
    for (Piece &piece : odd.layout.pieces)
        piece.tag = "É" + piece.tag;
    for (const auto &[tag, why] :
         printed(odd, {.scale = 20, .bed_x = 400, .bed_y = 400, .clearance = 0.1, .nozzle = 0.4}).untagged)
        CHECK(why.text == "its tag has letters that are not printed");
}

TEST_CASE("letters of dots never meet in a corner alone") {
    for (char letter = ' '; letter <= '~'; ++letter) {
        const auto boxes = dotted(std::string(1, letter) + "8");
        if (!boxes) continue;
        bool on[12][8] = {};
        for (const DotBox &box : *boxes)
            for (int x = box.x0; x < box.x1; ++x)
                for (int y = box.y0; y < box.y1; ++y) {
                    CHECK_FALSE(on[x][y]); // in one box only
                    on[x][y] = true;
                }
        for (int x = 0; x < 11; ++x)
            for (int y = 0; y < 7; ++y)
                CHECK_FALSE((on[x][y] == on[x + 1][y + 1] && on[x + 1][y] == on[x][y + 1] &&
                             on[x][y] != on[x + 1][y]));
    }
    std::set<std::string> looks; // no two letters look alike
    for (const char letter : std::string("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./+_")) {
        std::string look(35, '.');
        const auto boxes = dotted(std::string(1, letter));
        REQUIRE(boxes);
        for (const DotBox &box : *boxes)
            for (int x = box.x0; x < box.x1; ++x)
                for (int y = box.y0; y < box.y1; ++y)
                    look[static_cast<std::size_t>(y * 5 + x)] = '#';
        CHECK(looks.insert(look).second);
    }
}

TEST_CASE("what cannot be printed is refused, and what is needed is said") {
    const Laid all = laid_out(plain_shell());
    CHECK_THAT(refused(all, {.scale = 100}), ContainsSubstring("thinner than the nozzle"));
    CHECK_THAT(refused(all, {.scale = 2}), ContainsSubstring("a larger bed"));
    CHECK_THAT(refused(all, {.scale = 600, .nozzle = 0.4, .pegs = PrintedPegs::none}),
               ContainsSubstring("less than two lines"));
    CHECK_THROWS_AS(print_job(all.layout, all.bodies, {.scale = 0}), std::invalid_argument);
    CHECK_THROWS_AS(print_job(all.layout, all.bodies, {.clearance = -1}), std::invalid_argument);
}

TEST_CASE("the same shell gives the same bytes") {
    const Laid all = laid_out(plain_shell());
    const PrintOptions options{.scale = 30, .clearance = 0.1, .nozzle = 0.2};
    const PrintJob one = printed(all, options), other = printed(all, options);
    CHECK(write_3mf(one, one.plates.front(), "A \"<&\"") ==
          write_3mf(other, other.plates.front(), "A \"<&\""));
}
