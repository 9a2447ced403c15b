#include "exporters/picture/camera.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <numbers>

using namespace roundlay;

namespace {

constexpr double rounding = 1e-9;

Vec3 corner(const Box3 &box, int i) {
    return {i & 1 ? box.high.x : box.low.x, i & 2 ? box.high.y : box.low.y, i & 4 ? box.high.z : box.low.z};
}

/// Where a point lands in the picture: -1..1 across and up, and in depth.
Vec3 seen(const Camera &camera, double aspect, DepthRange range, Vec3 p) {
    const auto q = transformed(projection_matrix(camera, aspect, range) * view_matrix(camera), p);
    return {q[0] / q[3], q[1] / q[3], q[2] / q[3]};
}

const View all_views[] = {View::south,      View::east,       View::north,      View::west,      View::plan,
                          View::south_east, View::north_east, View::north_west, View::south_west};

} // namespace

TEST_CASE("Every standard view shows the whole box and fills the picture, under both projections") {
    CHECK(rc::check([] {
        const auto size = [] { return static_cast<double>(*rc::gen::inRange(200, 20000)); };
        const auto place = [] { return static_cast<double>(*rc::gen::inRange(-9000, 9000)); };
        const Vec3 low{place(), place(), place()};
        const Box3 box{low, low + Vec3{size(), size(), size()}};
        const double aspect = *rc::gen::inRange(4, 40) / 10.0;
        const View view = *rc::gen::elementOf(std::vector<View>(std::begin(all_views), std::end(all_views)));
        const auto projection = *rc::gen::element(Projection::parallel, Projection::perspective);
        const Camera camera = looking_at(box, view, aspect, projection);
        const DepthRange range = depth_range(camera, box);
        double widest = 0;
        for (int i = 0; i < 8; ++i) {
            const Vec3 p = seen(camera, aspect, range, corner(box, i));
            RC_ASSERT(std::abs(p.x) <= 1 && std::abs(p.y) <= 1 && std::abs(p.z) <= 1);
            widest = std::max({widest, std::abs(p.x), std::abs(p.y)});
        }
        RC_ASSERT(widest > 0.85);
    }));
}

TEST_CASE("The target is in the middle, and a length at the target is as long as view_height says") {
    for (const auto projection : {Projection::parallel, Projection::perspective}) {
        Camera camera;
        camera.eye = {3000, -4000, 5000};
        camera.target = {100, 200, 300};
        camera.view_height = 4000;
        camera.projection = projection;
        const Matrix4 view = view_matrix(camera);
        const Vec3 up{view(1, 0), view(1, 1), view(1, 2)}, right{view(0, 0), view(0, 1), view(0, 2)};
        const DepthRange range{1000, 20000};
        CHECK(length(seen(camera, 1.5, range, camera.target) -
                     Vec3{0, 0, seen(camera, 1.5, range, camera.target).z}) < rounding);
        CHECK(seen(camera, 1.5, range, camera.target + 2000 * up).y == Approx(1));
        CHECK(seen(camera, 1.5, range, camera.target + 3000 * right).x == Approx(1));
        CHECK(pixel_size(camera, camera.target, 1000) == Approx(4));
    }
}

TEST_CASE("Elevations show the side they are named after, upright") {
    const Box3 box{{0, 0, 0}, {8000, 6000, 3000}};
    struct Case {
        View view;
        Vec3 to_eye, right;
    };
    for (const Case &c : {Case{View::south, {0, -1, 0}, {1, 0, 0}}, Case{View::east, {1, 0, 0}, {0, 1, 0}},
                          Case{View::north, {0, 1, 0}, {-1, 0, 0}}, Case{View::west, {-1, 0, 0}, {0, -1, 0}},
                          Case{View::plan, {0, 0, 1}, {1, 0, 0}}}) {
        const Camera camera = looking_at(box, c.view, 1.6);
        CHECK(length(unit(camera.eye - camera.target) - c.to_eye) < rounding);
        const Matrix4 view = view_matrix(camera);
        CHECK(length(Vec3{view(0, 0), view(0, 1), view(0, 2)} - c.right) < rounding);
    }
}

TEST_CASE("Perspective shows what is nearer larger") {
    const Box3 box{{0, 0, 0}, {8000, 6000, 3000}};
    const Camera camera = looking_at(box, View::south, 1.6, Projection::perspective);
    CHECK(pixel_size(camera, {4000, 0, 1500}, 1000) < pixel_size(camera, {4000, 6000, 1500}, 1000));
    const Camera flat = looking_at(box, View::south, 1.6);
    CHECK(pixel_size(flat, {4000, 0, 1500}, 1000) == pixel_size(flat, {4000, 6000, 1500}, 1000));
}

TEST_CASE("Orbiting keeps target and distance and never tips over") {
    Camera camera =
        looking_at({{0, 0, 0}, {8000, 6000, 3000}}, View::south_east, 1.6, Projection::perspective);
    const double distance = length(camera.eye - camera.target);
    const Vec3 target = camera.target;
    const Camera quarter = orbited(camera, std::numbers::pi / 2, 0);
    const Vec3 before = camera.eye - target, after = quarter.eye - target;
    CHECK(length(after - Vec3{-before.y, before.x, before.z}) < 1e-6);
    for (int i = 0; i < 100; ++i) {
        camera = orbited(camera, 0.1, i < 50 ? 0.1 : -0.1);
        CHECK(length(camera.eye - camera.target) == Approx(distance));
        CHECK(camera.target == target);
        CHECK(camera.up == Vec3{0, 0, 1});
        const Matrix4 view = view_matrix(camera);
        CHECK(view(1, 2) > 0); // up in the picture is still up
    }
}

TEST_CASE("Orbiting from the plan turns as if the plan's lower border were nearest") {
    const Camera plan = looking_at({{0, 0, 0}, {8000, 6000, 3000}}, View::plan, 1.6);
    const Camera tipped = orbited(plan, 0, -std::numbers::pi / 2);
    const Vec3 back = unit(tipped.eye - tipped.target);
    CHECK(back.y == Approx(-1));
    CHECK(std::abs(back.x) < 1e-6);
}

TEST_CASE("An empty box still has a camera") {
    for (const View view : all_views) {
        const Camera camera = looking_at({}, view, 1.6, Projection::perspective);
        CHECK(std::isfinite(length(camera.eye)));
        CHECK(camera.view_height > 0);
        CHECK(length(camera.eye - camera.target) > 0);
    }
}
