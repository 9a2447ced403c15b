#include "exporters/picture/context.h"
#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"
#include "kernel/layout/lay_out.h"
#include "tests/picture/house.h"
#include "tests/support/catch.h"

#include <set>

using namespace roundlay;

namespace {

constexpr int width = 400, height = 250;
constexpr double aspect = static_cast<double>(width) / height;

/// A renderer in a context of its own, and what it last drew.
class Studio {
  public:
    Studio() : context_(OffscreenContext::create()), renderer_(made()) {
        colour_ = gl::make_texture({width, height}, GL_RGBA8, GL_NEAREST);
        target_ = gl::make_framebuffer();
        glBindFramebuffer(GL_FRAMEBUFFER, target_.id());
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour_.id(), 0);
    }

    Renderer &renderer() { return *renderer_; }

    void draw(const Camera &camera, const Look &look) {
        renderer_->draw(camera, look, width, height, target_.id());
        pixels_.resize(std::size_t{4} * width * height);
        glReadPixels(0, 0, width, height, GL_RGBA, GL_UNSIGNED_BYTE, pixels_.data());
        CHECK(glGetError() == GL_NO_ERROR);
    }

    struct Pixel {
        int r, g, b;
    };
    /// From the upper left.
    Pixel at(int x, int y) const {
        const std::size_t i = std::size_t{4} * ((height - 1 - y) * width + x);
        return {pixels_[i], pixels_[i + 1], pixels_[i + 2]};
    }
    const std::vector<std::uint8_t> &pixels() const { return pixels_; }

    /// Background and shadow are nearly grey, wood is not.
    bool wood_at(int x, int y) const {
        const Pixel p = at(x, y);
        return p.r - p.b > 24;
    }
    int count_wood() const {
        int count = 0;
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x)
                count += wood_at(x, y) ? 1 : 0;
        return count;
    }
    std::size_t count_colours() const {
        std::set<std::array<int, 3>> colours;
        for (int y = 0; y < height; ++y)
            for (int x = 0; x < width; ++x)
                colours.insert({at(x, y).r, at(x, y).g, at(x, y).b});
        return colours.size();
    }

  private:
    std::unique_ptr<Renderer> made() {
        if (const auto *failure = std::get_if<PictureFailure>(&context_)) FAIL(failure->message);
        auto renderer = Renderer::create();
        if (const auto *failure = std::get_if<PictureFailure>(&renderer)) FAIL(failure->message);
        return std::move(std::get<0>(renderer));
    }

    Drawn<std::unique_ptr<OffscreenContext>> context_;
    std::unique_ptr<Renderer> renderer_;
    gl::Handle colour_, target_;
    std::vector<std::uint8_t> pixels_;
};

/// One for all tests: a driver without a graphics card compiles shaders for half a second each time.
Studio &the_studio() {
    static Studio studio;
    return studio;
}

struct House {
    Layout layout = lay_out(test::house(10));
    SceneModels models = models_of(bodies_of(layout));
    Scene scene = scene_of(layout, models);
    Camera corner = looking_at(bounds(scene), View::south_east, aspect);
};

/// The pixel a world point is drawn in.
std::pair<int, int> pixel_of(const Camera &camera, const Scene &scene, Vec3 p) {
    const auto q = transformed(
        projection_matrix(camera, aspect, depth_range(camera, bounds(scene))) * view_matrix(camera), p);
    return {static_cast<int>((0.5 + 0.5 * q[0] / q[3]) * width),
            static_cast<int>((0.5 - 0.5 * q[1] / q[3]) * height)};
}

Look plain() {
    Look look;
    look.ambient = Ambient::none;
    look.ground = false;
    return look;
}

} // namespace

TEST_CASE("A house is drawn where it is: wood inside its outline, background outside") {
    House house;
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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

TEST_CASE("Picking gives the piece that is seen, and the place on it") {
    House house;
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
    Look look = plain();
    look.samples = 0;
    look.edges = false;
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
    Look look = plain();
    look.samples = 0;
    look.edges = false;
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

TEST_CASE("A section takes the near side away and shows the cut on its plane") {
    House house;
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
    Studio &studio = the_studio();
    studio.renderer().show(house.scene);
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
