#include "exporters/picture/picture.h"

#include "exporters/picture/context.h"
#include "exporters/picture/gl.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace roundlay {
namespace {

constexpr int widest = 8192;
constexpr double most_samples = 140e6; // a little over 1 GB of colour and depth

/// Large pictures are drawn with fewer samples per pixel: they are looked at from farther away, and memory
/// ends.
Look affordable(Look look, int width, int height) {
    const double pixels = static_cast<double>(width) * height;
    const auto samples = [&] {
        return pixels * look.supersample * look.supersample * std::max(look.samples, 1);
    };
    if (samples() > most_samples) look.supersample = 1;
    if (samples() > most_samples) look.samples = 0;
    return look;
}

Picture read_back(int width, int height) {
    Picture picture{width, height, std::vector<std::uint8_t>(std::size_t{3} * width * height)};
    std::vector<std::uint8_t> rows(picture.pixels.size());
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glReadPixels(0, 0, width, height, GL_RGB, GL_UNSIGNED_BYTE, rows.data());
    const std::size_t row = std::size_t{3} * width; // the library counts rows from below
    for (int y = 0; y < height; ++y)
        std::copy_n(rows.begin() + static_cast<std::ptrdiff_t>(row * (height - 1 - y)), row,
                    picture.pixels.begin() + static_cast<std::ptrdiff_t>(row * y));
    return picture;
}

Picture draw_into(Renderer &renderer, const Camera &camera, const Look &look, int width, int height) {
    const gl::Handle colour = gl::make_texture({width, height}, GL_RGBA8, GL_NEAREST);
    const gl::Handle target = gl::make_framebuffer();
    glBindFramebuffer(GL_FRAMEBUFFER, target.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour.id(), 0);
    renderer.draw(camera, look, width, height, target.id());
    return read_back(width, height);
}

} // namespace

Look still_look() {
    Look look;
    look.supersample = 2;
    look.ambient = Ambient::full;
    return look;
}

double light_azimuth_for(const Camera &camera) {
    constexpr double left = 50 * std::numbers::pi / 180;
    const Vec3 back = camera.eye - camera.target;
    const bool from_above = std::hypot(back.x, back.y) < 0.01 * std::abs(back.z);
    const double viewer = from_above ? std::atan2(-camera.up.y, -camera.up.x) : std::atan2(back.y, back.x);
    return viewer - left;
}

Drawn<Picture> render_picture(const Scene &scene, const Camera &camera, int width, int height,
                              const Look &look) {
    if (width < 1 || height < 1 || width > widest || height > widest)
        throw std::invalid_argument("render_picture: a picture has 1 to 8192 pixels each way");
    auto context = OffscreenContext::create();
    if (const auto *failed = std::get_if<PictureFailure>(&context)) return *failed;
    auto renderer = Renderer::create();
    if (const auto *failed = std::get_if<PictureFailure>(&renderer)) return *failed;
    Renderer &drawing = *std::get<0>(renderer);
    try {
        drawing.show(scene);
        return draw_into(drawing, camera, affordable(look, width, height), width, height);
    } catch (const std::runtime_error &e) {
        return PictureFailure{std::string("No picture can be drawn: ") + e.what() +
                              "; ask for a smaller one."};
    }
}

} // namespace roundlay
