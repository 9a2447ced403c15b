#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"
#include "tests/picture/studio.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("A house is drawn where it is: wood inside its outline, background outside") {
    House house;
    Studio &studio = showing(house);
    for (const View view : {View::south, View::west, View::plan}) {
        const Camera camera = looking_at(bounds(house.scene), view, aspect);
        studio.draw(camera, plain());
        const Box3 box = bounds(house.scene);
        const auto [x0, y0] = pixel_of(camera, house.scene, box.low);
        const auto [x1, y1] = pixel_of(camera, house.scene, box.high);
        int outside = 0, inside = 0;
        for (int y = 0; y < height; ++y) {
            for (int x = 0; x < width; ++x) {
                if (!studio.wood_at(x, y)) continue;
                const bool in = x >= std::min(x0, x1) - 1 && x <= std::max(x0, x1) + 1 &&
                                y >= std::min(y0, y1) - 1 && y <= std::max(y0, y1) + 1;
                (in ? inside : outside) += 1;
            }
        }
        CHECK(outside == 0);
        CHECK(inside > (view == View::plan ? 2000 : 8000));
    }
}

TEST_CASE("A full picture has wood, shadow, edges and many tones") {
    House house;
    Studio &studio = showing(house);
    studio.draw(house.corner, Look{});
    CHECK(studio.count_colours() > 1000);
    CHECK(studio.count_wood() > 15000);
    const auto with_all = studio.pixels();
    Look without = Look{};
    without.edges = false;
    studio.draw(house.corner, without);
    CHECK((studio.pixels() != with_all)); // in brackets: no million numbers when it fails
    without = Look{};
    without.ground = false;
    studio.draw(house.corner, without);
    CHECK((studio.pixels() != with_all));
    without = Look{};
    without.ambient = Ambient::half;
    studio.draw(house.corner, without);
    CHECK((studio.pixels() != with_all));
    studio.draw(house.corner, Look{});
    CHECK((studio.pixels() == with_all));
}

TEST_CASE("The gap between two logs is darker than the logs, also where one sees through it") {
    House house;
    Studio &studio = showing(house);
    Camera camera = looking_at(bounds(house.scene), View::south, aspect);
    camera.target = {3600, 0, 3 * 230 + 105}; // wall A between its window and its door
    camera.eye = camera.target + Vec3{0, -20000, 0};
    camera.view_height = 600;
    Look look;
    look.edges = false;
    studio.draw(camera, look);
    const auto brightness = [&](double z) {
        const auto [x, y] = pixel_of(camera, house.scene, {3600, 0, z});
        const auto p = studio.at(x, y);
        return p.r + p.g + p.b;
    };
    const double log = brightness(3 * 230 + 105), above = brightness(4 * 230 + 105),
                 gap = brightness(4 * 230 - 10);
    CHECK(gap < 0.5 * log);
    CHECK(gap < 0.5 * above);
}

TEST_CASE("A section takes the near side away and shows the cut on its plane") {
    House house;
    Studio &studio = showing(house);
    Look look = plain();
    look.section = Plane{{0, 0, 1}, 500};
    const Camera plan = looking_at(bounds(house.scene), View::plan, aspect);
    studio.draw(plan, look);
    // In the middle of wall A's thickness, clear of its door: cut wood at the section's height.
    const auto [x, y] = pixel_of(plan, house.scene, {3600, 100, 500});
    CHECK(studio.wood_at(x, y));
    const auto picked = studio.renderer().pick(plan, look, width, height, x, y);
    REQUIRE(picked);
    CHECK(house.layout.pieces[Index<Piece>(picked->id)].round == 3);
    const auto [dx, dy] =
        pixel_of(plan, house.scene, {6100, 100, 500}); // in the doorway: the sill log far below
    const auto below = studio.renderer().pick(plan, look, width, height, dx, dy);
    REQUIRE(below);
    CHECK(house.layout.pieces[Index<Piece>(below->id)].round == 1);
    look.section = Plane{{0, 0, 1}, -1};
    studio.draw(plan, look);
    CHECK(studio.count_wood() == 0);
}

TEST_CASE("Bores too small to be seen are left out without a trace beyond their own pixels") {
    House house;
    Studio &studio = showing(house);
    Look fine = plain(), coarse = plain();
    fine.detail = 0;
    coarse.detail = 1e6;
    studio.draw(house.corner, fine);
    const auto with = studio.pixels();
    studio.draw(house.corner, coarse);
    int differ = 0;
    for (std::size_t i = 0; i < with.size(); i += 4)
        differ += std::abs(with[i] - studio.pixels()[i]) > 4;
    CHECK(differ > 0);
    CHECK(differ < 200);
}
