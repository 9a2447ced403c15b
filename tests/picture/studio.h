// A renderer with what it last drew, and a house to draw.
#pragma once

#include "exporters/picture/context.h"
#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"
#include "kernel/layout/lay_out.h"
#include "tests/picture/house.h"
#include "tests/support/catch.h"

#include <set>

namespace roundlay::test {

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
inline Studio &the_studio() {
    static Studio studio;
    return studio;
}

struct House {
    Layout layout = lay_out(test::house(10));
    SceneModels models = models_of(bodies_of(layout));
    Scene scene = scene_of(layout, models);
    Camera corner = looking_at(bounds(scene), View::south_east, aspect);
};

/// The studio, with that house in it.
inline Studio &showing(const House &house) {
    the_studio().renderer().show(house.scene);
    return the_studio();
}

/// The pixel a world point is drawn in.
inline std::pair<int, int> pixel_of(const Camera &camera, const Scene &scene, Vec3 p) {
    const auto q = transformed(
        projection_matrix(camera, aspect, depth_range(camera, bounds(scene))) * view_matrix(camera), p);
    return {static_cast<int>((0.5 + 0.5 * q[0] / q[3]) * width),
            static_cast<int>((0.5 - 0.5 * q[1] / q[3]) * height)};
}

/// Without what softens or adds.
inline Look plain() {
    Look look;
    look.ambient = Ambient::none;
    look.ground = false;
    return look;
}

/// The same with each pixel of one piece alone.
inline Look hard_edged() {
    Look look = plain();
    look.samples = 0;
    look.edges = false;
    return look;
}

} // namespace roundlay::test
