#include "exporters/picture/picture.h"
#include "kernel/layout/lay_out.h"
#include "tests/picture/house.h"
#include "tests/support/catch.h"

#include <numbers>

using namespace roundlay;

namespace {

const Picture &require_picture(const Drawn<Picture> &drawn) {
    if (const auto *failure = std::get_if<PictureFailure>(&drawn)) FAIL(failure->message);
    return std::get<Picture>(drawn);
}

} // namespace

TEST_CASE("The same scene gives the same picture twice, down to the byte") {
    const Layout layout = lay_out(test::house(4));
    const Scene scene = scene_of(layout, bodies_of(layout));
    const Camera camera = looking_at(bounds(scene), View::south_east, 1.6, Projection::perspective);
    const auto first = render_picture(scene, camera, 320, 200),
               second = render_picture(scene, camera, 320, 200);
    CHECK(require_picture(first).width == 320);
    CHECK((require_picture(first).pixels == require_picture(second).pixels));
    CHECK((write_png(std::get<Picture>(first)) == write_png(std::get<Picture>(second))));
}

TEST_CASE("A picture drawn some rows at a time is the picture drawn at once") {
    const Layout layout = lay_out(test::house(4));
    const Scene scene = scene_of(layout, bodies_of(layout));
    const Camera camera = looking_at(bounds(scene), View::south_east, 1.6, Projection::perspective);
    for (const auto &section : {std::optional<Plane>(), std::optional(Plane{{1, 0, 0}, 2000})}) {
        Look look = still_look();
        look.section = section;
        look.rows_at_once = 200;
        const auto at_once = render_picture(scene, camera, 320, 200, look);
        const auto &whole = require_picture(at_once).pixels;
        for (const int rows : {1, 7, 64, 199}) {
            look.rows_at_once = rows;
            const auto in_bands = render_picture(scene, camera, 320, 200, look);
            const auto &banded = require_picture(in_bands).pixels;
            REQUIRE(banded.size() == whole.size());
            // Places are rounded a little otherwise: here and there one of sixteen samples changes sides.
            std::size_t other = 0;
            for (std::size_t i = 0; i < whole.size(); ++i)
                other += whole[i] != banded[i] ? 1 : 0;
            INFO(rows << " rows: " << other << " bytes are others");
            CHECK(other < whole.size() / 500);
        }
    }
}

TEST_CASE("An empty scene is a picture of the background") {
    const auto drawn = render_picture({}, looking_at({}, View::south, 1), 64, 64);
    const Picture &picture = require_picture(drawn);
    for (std::size_t i = 0; i < picture.pixels.size(); ++i)
        CHECK(picture.pixels[i] > 200);
}

TEST_CASE("Sizes that no picture has are refused") {
    for (const auto &[width, height] :
         {std::pair{0, 100}, std::pair{100, 0}, std::pair{8193, 10}, std::pair{-5, 5}})
        CHECK_THROWS_AS(render_picture({}, Camera{}, width, height), std::invalid_argument);
}

TEST_CASE("The light comes over the viewer's left shoulder") {
    const Box3 box{{0, 0, 0}, {8000, 6000, 3000}};
    const auto towards = [](double azimuth) { return Vec3{std::cos(azimuth), std::sin(azimuth), 0}; };
    for (const View view : {View::south, View::north_west, View::plan}) {
        const Camera camera = looking_at(box, view, 1.6);
        const Matrix4 m = view_matrix(camera);
        const Vec3 right{m(0, 0), m(0, 1), m(0, 2)};
        CHECK(dot(towards(light_azimuth_for(camera)), right) < -0.5);
    }
}
