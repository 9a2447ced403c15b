// What lies under a pixel: the piece that is seen there, and nothing hidden.
#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"
#include "tests/picture/studio.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("Picking gives the piece that is seen, and the place on it") {
    House house;
    Studio &studio = showing(house);
    const Camera south = looking_at(bounds(house.scene), View::south, aspect);
    int found = 0;
    for (const Piece &piece : house.layout.pieces) {
        if (house.layout.walls[piece.wall].name != "A" || piece.number != 1) continue;
        const Vec3 middle = piece.frame.to_world({600, 0, piece.blank.height / 2});
        CAPTURE(piece.tag);
        const auto [x, y] = pixel_of(south, house.scene, middle);
        const auto picked = studio.renderer().pick(south, Look{}, width, height, x, y);
        REQUIRE(picked);
        CHECK(house.layout.pieces[Index<Piece>(picked->id)].tag == piece.tag);
        const double pixel = pixel_size(south, middle, height);
        CHECK(length(picked->point - middle) < 2 * pixel);
        CHECK(std::abs(picked->point.y - middle.y) < 1); // on the face itself
        ++found;
    }
    CHECK(found == house.layout.rounds);
    CHECK_FALSE(studio.renderer().pick(south, Look{}, width, height, 0, 0));
    CHECK_FALSE(studio.renderer().pick(south, Look{}, width, height, -1, 5));
    CHECK_FALSE(studio.renderer().pick(south, Look{}, width, height, width, 5));
}

TEST_CASE("Picking agrees with the picture everywhere") {
    House house;
    Studio &studio = showing(house);
    Look look = hard_edged();
    for (const auto projection : {Projection::parallel, Projection::perspective}) {
        const Camera camera = looking_at(bounds(house.scene), View::north_west, aspect, projection);
        studio.draw(camera, look);
        int differs = 0, wood = 0;
        for (int y = 3; y < height; y += 7) {
            for (int x = 3; x < width; x += 7) {
                const bool picked = studio.renderer().pick(camera, look, width, height, x, y).has_value();
                wood += picked ? 1 : 0;
                differs += picked != studio.wood_at(x, y) ? 1 : 0;
            }
        }
        CHECK(wood > 300);
        CHECK(differs <= 4); // a pixel on an outline may go either way
    }
}

TEST_CASE("What is hidden is neither drawn nor picked, and comes back") {
    House house;
    Studio &studio = showing(house);
    studio.draw(house.corner, plain());
    const auto whole = studio.pixels();
    const int wood = studio.count_wood();
    studio.renderer().show(scene_of(house.layout, house.models, {0, 10}));
    studio.draw(house.corner, plain());
    CHECK(studio.count_wood() < wood / 2);
    CHECK(studio.count_wood() > 0);
    studio.renderer().show(scene_of(house.layout, house.models, {0, 0}));
    studio.draw(house.corner, plain());
    CHECK(studio.count_wood() == 0);
    CHECK_FALSE(studio.renderer().pick(house.corner, plain(), width, height, width / 2, height / 2));
    studio.renderer().show(house.scene);
    studio.draw(house.corner, plain());
    CHECK((studio.pixels() == whole));
}
