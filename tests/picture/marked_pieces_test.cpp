// Pieces that are moved, recoloured, hovered or marked, and nothing else with them.
#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"
#include "tests/picture/studio.h"
#include "tests/support/catch.h"

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("Moved and recoloured pieces look as if the scene had been made anew") {
    House house;
    Studio &fresh = the_studio();
    Scene scene = scene_of(house.layout, house.models, {0.6, -1});
    scene.instances[3].colour = {20, 200, 40};
    const Camera camera = looking_at(bounds(scene), View::south_west, aspect);
    fresh.renderer().show(house.scene);
    fresh.draw(camera, plain());
    const auto built = fresh.pixels();
    fresh.renderer().show(scene);
    fresh.draw(camera, plain());
    const auto after_change = fresh.pixels();
    Studio another;
    another.renderer().show(scene);
    another.draw(camera, plain());
    CHECK((after_change != built));
    int differ = 0; // the origin of stored coordinates is another, so a rounding may fall the other way
    for (std::size_t i = 0; i < after_change.size(); ++i)
        differ += std::abs(after_change[i] - another.pixels()[i]) > 8;
    CHECK(differ < 40);
}

TEST_CASE("A hovered piece is lighter and nothing else changes") {
    House house;
    Studio &studio = showing(house);
    Look look = plain();
    look.samples = 0;
    studio.draw(house.corner, look);
    const auto before = studio.pixels();
    const auto picked = studio.renderer().pick(house.corner, look, width, height, width / 2, height * 2 / 3);
    REQUIRE(picked);
    look.hovered = picked->id;
    studio.draw(house.corner, look);
    int lighter = 0, darker = 0;
    for (std::size_t i = 0; i < before.size(); i += 4) {
        lighter += studio.pixels()[i] > before[i];
        darker += studio.pixels()[i] < before[i];
    }
    CHECK(lighter > 50);
    CHECK(darker == 0);
}

TEST_CASE("A marked piece wears dark stripes with its own wood between them, and nothing else changes") {
    House house;
    Studio &studio = showing(house);
    Look look = hard_edged();
    studio.draw(house.corner, look);
    const auto before = studio.pixels();
    const auto picked = studio.renderer().pick(house.corner, look, width, height, width / 2, height * 2 / 3);
    REQUIRE(picked);
    const auto with = [&](auto change) {
        Scene scene = house.scene;
        for (Instance &instance : scene.instances)
            if (instance.id == picked->id) change(instance);
        studio.renderer().show(scene);
        studio.draw(house.corner, look);
        return studio.pixels();
    };
    const auto blue = with([](Instance &i) { i.colour = {0, 0, 255}; }); // where the piece is
    const auto striped = with([](Instance &i) { i.marked = true; });
    int piece = 0, darker = 0, wrong = 0;
    for (std::size_t i = 0; i < before.size(); i += 4) {
        const bool is_piece = blue[i] != before[i];
        piece += is_piece;
        darker += striped[i] < before[i];
        wrong += striped[i] > before[i] || (striped[i] != before[i] && !is_piece);
    }
    CHECK(wrong == 0);
    CHECK(darker > piece / 5);
    CHECK(darker < piece / 2);
    CHECK((with([](Instance &) {}) == before));
}
