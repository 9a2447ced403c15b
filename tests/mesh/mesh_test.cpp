#include "exporters/mesh/mesh.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/mesh/hewn_by_hand.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <chrono>
#include <set>

using namespace roundlay;

namespace {

constexpr double rounding = 1e-9; // relative: volumes are sums of a few hundred products of doubles

double analytic_volume(const Body &body, int sides) {
    Body solid = body;
    solid.bores.clear();
    double sum = by_hand::area(by_hand::log_outlines()) * 200;
    for (const Bore &bore : body.bores)
        sum -= prism_volume(bore, sides);
    return sum;
}

Vec3 geometric_normal(const Mesh &mesh, const MeshTriangle &t) {
    const auto [a, b, c] = t.corners;
    return cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
}

} // namespace

TEST_CASE("A box without bores is twelve triangles and twelve edges") {
    const Mesh mesh = mesh_of(by_hand::body({by_hand::rectangle(0, 0, 3000, 220)}, 200));
    CHECK(mesh.triangles.size() == 12);
    CHECK(mesh.edges.size() == 12);
    CHECK(mesh.points.size() == 8);
    CHECK(is_closed(mesh));
    CHECK(volume(mesh) == Approx(3000.0 * 220 * 200).epsilon(rounding));
}

TEST_CASE("The mesh of a log with tails, a cut, a slot and bores is closed for any number of sides") {
    const Body body = by_hand::log_with_two_tails();
    for (const int sides : {3, 4, 5, 8, 12, 24, 31, 64, 360}) {
        CAPTURE(sides);
        const Mesh mesh = mesh_of(body, {sides});
        CHECK(is_closed(mesh));
        CHECK(volume(mesh) == Approx(analytic_volume(body, sides)).epsilon(rounding));
    }
}

TEST_CASE("The volume of the mesh nears the volume of the body as the sides grow") {
    const Body body = by_hand::log_with_two_tails();
    double last = 1;
    for (const int sides : {6, 12, 24, 48, 96, 192}) {
        const double error = (volume(mesh_of(body, {sides})) - body.volume) / body.volume;
        CHECK(error > 0);          // the prisms lie inside the cylinders, so less wood is taken out
        CHECK(error < last / 3.5); // a prism's error falls with the square of its sides: four times each step
        last = error;
    }
    CHECK(last < 1e-5);
}

TEST_CASE("Bores can be left out of a mesh") {
    const Mesh mesh = mesh_of(by_hand::log_with_two_tails(), {0});
    CHECK(is_closed(mesh));
    CHECK(volume(mesh) == Approx(by_hand::area(by_hand::log_outlines()) * 200).epsilon(rounding));
}

TEST_CASE("Every triangle looks the way its surface says") {
    const Mesh mesh = mesh_of(by_hand::log_with_two_tails());
    for (const MeshTriangle &t : mesh.triangles) {
        const Vec3 normal = geometric_normal(mesh, t);
        REQUIRE(length(normal) > 0);
        for (const int corner : t.corners) {
            const double along = dot(unit(normal), normal_at(mesh.surfaces[t.surface], mesh.points[corner]));
            CHECK(along > 0.97); // a wall of 24 flats bends by 7.5 degrees from its true normal at a corner
        }
    }
}

TEST_CASE("Drawn edges are sides of triangles, each once") {
    const Mesh mesh = mesh_of(by_hand::log_with_two_tails());
    std::set<std::pair<int, int>> sides, drawn;
    for (const MeshTriangle &t : mesh.triangles)
        for (int i = 0; i < 3; ++i)
            sides.insert(std::minmax(t.corners[i], t.corners[(i + 1) % 3]));
    for (const auto &[a, b] : mesh.edges) {
        CHECK(sides.count(std::minmax(a, b)) == 1);
        CHECK(drawn.insert(std::minmax(a, b)).second);
    }
    // 20 corners of the outlines give 20 edges on each side face and 20 across; 6 bores two circles of 24.
    CHECK(mesh.edges.size() == 60 + 6 * 2 * 24);
}

TEST_CASE("A bore that opens nowhere leaves a closed hollow") {
    const Mesh mesh = mesh_of(
        by_hand::body({by_hand::rectangle(0, 0, 3000, 220)}, 200, {by_hand::bore(500, 100, 50, 150)}));
    CHECK(is_closed(mesh));
    CHECK(volume(mesh) ==
          Approx(3000.0 * 220 * 200 - prism_volume(by_hand::bore(0, 0, 50, 150), 24)).epsilon(rounding));
}

TEST_CASE("Bores that run into each other, a slope or a border are carved all the same") {
    // A wedge-topped stick, 3000 x 200, 220 high at x = 0 and 120 at x = 3000.
    const Plane slope = plane_over(220, -100.0 / 3000, 0);
    Body body;
    body.cells = {clipped(box_cell({{0, 0, 0}, {3000, 200, 220}}), slope)};
    body.hewn = border_of(body.cells);
    body.bores = {by_hand::bore(500, 100, -50, 400), by_hand::bore(520, 100, 20, 100),
                  by_hand::bore(2000, 0, -50, 400)};
    body.bores_clear = false;
    const int sides = 12;
    const Mesh mesh = mesh_of(body, {sides});
    CHECK(is_closed(mesh));
    // A prism under a plane is its base times the plane's height over its axis. The second bore lies partly
    // in the first: what the two prisms share is worked out by clipping; the third is half outside the wood.
    const auto base = [](double height) { return prism_volume(by_hand::bore(0, 0, 0, height), sides); };
    Cell prism = box_cell({{400, 0, 20}, {600, 200, 100}});
    const auto clip_to = [&](double x) {
        for (int i = 0; i < sides; ++i) {
            const double angle = 2 * std::numbers::pi * (i + 0.5) / sides;
            const Vec3 n{std::cos(angle), std::sin(angle), 0};
            prism = clipped(prism, {n, dot(n, {x, 100, 0}) + 16 * std::cos(std::numbers::pi / sides)});
        }
    };
    clip_to(500);
    clip_to(520);
    const double gone =
        base(slope.height_at(500, 0)) + base(80) - volume(prism) + base(slope.height_at(2000, 0)) / 2;
    CHECK(volume(mesh) == Approx(3000.0 * 200 * 170 - gone).epsilon(rounding));
    // Upright true edges: the stick's four corners, and where the third bore breaks through the side.
    int upright = 0;
    for (const auto &[a, b] : mesh.edges) {
        const Vec3 p = mesh.points[a], q = mesh.points[b];
        const bool of_first_two =
            length(Vec2{p.x - 510, p.y - 100}) < 40; // those cross: their meet is an edge
        if (!of_first_two && length(Vec2{p.x - q.x, p.y - q.y}) < 1e-6) upright += 1;
    }
    CHECK(upright == 6);
}

TEST_CASE("Numbers of sides that make no prism are refused") {
    for (const int sides : {-1, 1, 2, 361})
        CHECK_THROWS_AS(mesh_of(Body{}, {sides}), std::invalid_argument);
}

TEST_CASE("A mesh with a triangle missing, doubled or turned is not closed") {
    const Mesh whole = mesh_of(by_hand::log_with_two_tails());
    Mesh missing = whole, doubled = whole, turned = whole;
    missing.triangles.pop_back();
    doubled.triangles.push_back(whole.triangles.front());
    std::swap(turned.triangles[5].corners[0], turned.triangles[5].corners[1]);
    CHECK_FALSE(is_closed(missing));
    CHECK_FALSE(is_closed(doubled));
    CHECK_FALSE(is_closed(turned));
    CHECK_FALSE(is_closed(Mesh{}));
}

TEST_CASE("Random boards with rows of bores are closed and hold the right volume") {
    const bool held = rc::check([] {
        const int columns = *rc::gen::inRange(1, 12), rows = *rc::gen::inRange(1, 4);
        const int sides = *rc::gen::inRange(3, 40);
        std::vector<Bore> bores;
        for (int i = 0; i < columns; ++i) {
            for (int j = 0; j < rows; ++j) {
                const double low = *rc::gen::elementOf(std::vector<double>{0, 0, 37, 110});
                const double high = *rc::gen::elementOf(std::vector<double>{220, 220, 151, 180});
                bores.push_back(
                    by_hand::bore(60.0 + 100 * i, 60.0 + 100 * j, low, high, *rc::gen::inRange(5, 99)));
            }
        }
        const double length = 100.0 * columns + 20, width = 100.0 * rows + 20;
        const Mesh mesh =
            mesh_of(by_hand::body({by_hand::rectangle(0, 0, length, 220)}, width, bores), {sides});
        double expected = length * width * 220;
        for (const Bore &bore : bores)
            expected -= prism_volume(bore, sides);
        RC_ASSERT(is_closed(mesh));
        RC_ASSERT(std::abs(volume(mesh) - expected) <= rounding * expected);
    });
    CHECK(held);
}

TEST_CASE("Every piece of any shell that can be built has a closed mesh of the right volume") {
    CHECK(rc::check([] {
        const Layout layout =
            lay_out(*rc::gen::arbitrary<bool>() ? test::any_shell() : test::any_family_shell());
        const int sides = *rc::gen::inRange(3, 32);
        for (const Model &model : layout.models) {
            const Body body = body_of(layout.pieces[model.pieces.front()]);
            const Mesh mesh = mesh_of(body, {sides});
            RC_ASSERT(is_closed(mesh));
            if (!body.bores_clear) continue;
            double expected = volume(body.hewn);
            for (const Bore &bore : body.bores)
                expected -= prism_volume(bore, sides);
            RC_ASSERT(std::abs(volume(mesh) - expected) <= rounding * expected);
        }
    }));
}

TEST_CASE("Round logs have closed meshes, shaded as their surfaces and without edges between flats") {
    const Layout layout = lay_out(test::round_shell());
    REQUIRE_FALSE(layout.pieces.empty());
    for (const Model &model : layout.models) {
        const Body body = body_of(layout.pieces[model.pieces.front()]);
        const Mesh mesh = mesh_of(body);
        CHECK(is_closed(mesh));
        const RoundSurface &stick = body.rounds.at(0);
        std::size_t round = 0;
        for (const MeshTriangle &t : mesh.triangles) {
            const Surface &surface = mesh.surfaces[static_cast<std::size_t>(t.surface)];
            if (!surface.flat_of || surface.flat_of->hollow) continue;
            ++round;
            for (const int corner : t.corners) { // outward from the axis
                const Vec3 p = mesh.points[static_cast<std::size_t>(corner)];
                CHECK(dot(normal_at(surface, p), p - stick.at) > 0.99 * stick.radius);
            }
        }
        CHECK(round > 15);     // half logs have half the flats
        std::size_t sides = 0; // of all flats of the stick, drawn one by one
        for (const Face &face : body.hewn.faces)
            sides += face.plane.round > 0 ? face.loops[0].size() : 0;
        CHECK(mesh.edges.size() < sides + 24 * 2 * body.bores.size());
    }
}

TEST_CASE("Random round and waned logs have closed meshes, with their bores in them") {
    test::ThrownAway thrown(test::refusals());
    int meshed = 0;
    CHECK(rc::check([&] {
        const Layout layout =
            lay_out(*rc::gen::element(0, 1) == 0 ? test::any_saddle_shell() : test::any_waned_shell());
        thrown.discard_refused(layout.findings);
        for (const auto m : Indices<Model>(std::min<std::size_t>(layout.models.size(), 4))) {
            const Body body = body_of(layout.pieces[layout.models[m].pieces.front()]);
            const Mesh mesh = mesh_of(body, {12});
            RC_ASSERT(is_closed(mesh));
            double least = volume(body.hewn);
            for (const Bore &bore : body.bores)
                least -= prism_volume(bore, 12);
            const double wood = volume(mesh), off = 1e-9 * wood;
            RC_ASSERT(wood >= least - off); // a bore's ends lie partly outside round wood
            RC_ASSERT(wood <= volume(body.hewn) + off);
            ++meshed;
        }
    }));
    CHECK(meshed >= 30);
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("A piece is meshed within a millisecond", "[timing]") {
    const Body body = by_hand::log_with_two_tails();
    constexpr int repeats = 200;
    std::size_t triangles = 0;
    const auto start = std::chrono::steady_clock::now();
    for (int i = 0; i < repeats; ++i)
        triangles += mesh_of(body).triangles.size();
    const std::chrono::duration<double, std::micro> spent = std::chrono::steady_clock::now() - start;
    WARN("one piece, " << triangles / repeats << " triangles: " << spent.count() / repeats << " us");
    CHECK(spent.count() / repeats < 1000); // the aim is a tenth of that, which a busy machine would miss
}
