#include "exporters/picture/renderer.h"

#include "exporters/picture/ambient.h"
#include "exporters/picture/frame.h"
#include "exporters/picture/ground.h"
#include "exporters/picture/targets.h"
#include "exporters/picture/wood_pass.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay {
namespace {

const char *const background_fragment = R"(
uniform vec3 low;
uniform vec3 high;
in vec2 place;
out vec4 colour;
void main() {
    colour = vec4(mix(low, high, smoothstep(0.0, 0.9, place.y)), 1);
}
)";

const char *const fold_fragment = R"(
uniform sampler2D picture;
uniform int scale;          // texels of the picture per pixel, across and up
uniform int below;          // texels of it under those that there are
out vec4 colour;
void main() {
    ivec2 first = ivec2(gl_FragCoord.xy) * scale - ivec2(0, below);
    vec3 sum = vec3(0);
    for (int y = 0; y < scale; ++y)
        for (int x = 0; x < scale; ++x) sum += texelFetch(picture, first + ivec2(x, y), 0).rgb;
    colour = vec4(sum / float(scale * scale), 1);
}
)";

const char *const compose_fragment = R"(
uniform sampler2D picture;
uniform sampler2D ambient;
uniform int coarse;         // pixels per texel of the picture
uniform int ambient_scale;  // pixels per texel of the ambient light, 0 = there is none
in vec2 place;
out vec4 colour;
void main() {
    ivec2 pixel = ivec2(gl_FragCoord.xy);
    vec3 seen = texelFetch(picture, pixel / coarse, 0).rgb;
    float light = ambient_scale == 0 ? 1.0
                : ambient_scale == 1 ? texelFetch(ambient, pixel, 0).r
                                     : texture(ambient, place).r;
    // Shadows keep some of the wood's warmth.
    colour = vec4(seen * mix(vec3(0.10, 0.07, 0.05), vec3(1), light), 1);
}
)";

} // namespace

Look moving_look() {
    Look look;
    look.ambient = Ambient::half;
    look.detail = 3;
    look.shadow_may_lag = true;
    return look;
}

Look hasty_look(int haste) {
    Look look = moving_look();
    if (haste > 0) look.samples = 0;
    if (haste > 1) look.ambient = Ambient::none;
    if (haste > 2) look.coarse = 2;
    return look;
}

namespace {

/// A large picture is drawn some rows at a time: what its samples take would else be many times what it takes
/// itself. A whole number of its pixels.
int rows_at_once(const PictureFrame &frame) {
    constexpr double most_samples = 4e6; // 32 MB of colour and depth
    const int factor = frame.look.supersample, height = frame.size.height;
    if (factor == 1) return height; // what moves on a screen is drawn in one go
    const double samples = static_cast<double>(frame.size.width) * std::max(frame.look.samples, 1);
    const int rows = frame.look.rows_at_once > 0 ? frame.look.rows_at_once * factor
                                                 : static_cast<int>(most_samples / samples) / factor * factor;
    return std::clamp(rows, factor, height);
}

} // namespace

struct Renderer::Parts {
    SceneBuffers scene;
    GroundShadow ground;
    WoodPass wood;
    AmbientPass ambient;
    Targets targets;
    gl::Handle nothing = gl::make_vertex_array();
    gl::Handle folded, into_folded; ///< what was drawn from several pixels, as one
    gl::Size folded_size;
    gl::Program background{everywhere_vertex, background_fragment}, fold{everywhere_vertex, fold_fragment},
        compose{everywhere_vertex, compose_fragment};

    bool shows_ground(const PictureFrame &frame) const;
    PictureFrame frame_for(const Camera &camera, const Look &look, int width, int height) const;
    void draw(const PictureFrame &frame, gl::Size out, unsigned target);
    void draw_band(const PictureFrame &frame);
    void draw_scene(const PictureFrame &frame) const;
    void fold_into(const PictureFrame &frame, int rows, gl::Size out);
    bool has_ambient(const PictureFrame &frame) const;
    AmbientPass::Input ambient_input(const PictureFrame &frame, gl::Size out) const;
    void compose_into(const PictureFrame &frame, gl::Size out, unsigned target);
};

/// The ground is seen from above only.
bool Renderer::Parts::shows_ground(const PictureFrame &frame) const {
    if (!frame.look.ground || scene.empty()) return false;
    const Camera &camera = frame.camera;
    return camera.eye.z > (camera.projection == Projection::parallel ? camera.target.z : scene.box().low.z);
}

PictureFrame Renderer::Parts::frame_for(const Camera &camera, const Look &look, int width, int height) const {
    PictureFrame frame{camera, look, {}, 0, 0, {}, {}, {}};
    frame.look.supersample = std::clamp(look.supersample, 1, 2);
    frame.look.coarse = frame.look.supersample == 1 ? std::clamp(look.coarse, 1, 2) : 1;
    const int part = frame.look.coarse, factor = frame.look.supersample;
    frame.size = {(width + part - 1) / part * factor, (height + part - 1) / part * factor};
    frame.band = rows_at_once(frame);
    frame.range = depth_range(camera, shows_ground(frame) ? GroundShadow::reach(scene.box()) : scene.box());
    frame.clip_from_world =
        projection_matrix(camera, static_cast<double>(width) / height, frame.range) * view_matrix(camera);
    frame.clip_from_stored = shifted(frame.clip_from_world, scene.origin());
    return frame;
}

void Renderer::Parts::draw(const PictureFrame &whole, gl::Size out, unsigned target) {
    gl::reset_state();
    if (shows_ground(whole) && !(whole.look.shadow_may_lag && ground.is_cast()))
        ground.update(scene, whole.look.light_azimuth, whole.look.section, nothing);
    GLint most = 0;
    glGetIntegerv(GL_MAX_SAMPLES, &most);
    targets.resize({whole.size.width, whole.band}, std::clamp(whole.look.samples, 0, most));
    PictureFrame frame = whole;
    for (; frame.below < frame.size.height; frame.below += frame.band) {
        const int rows = std::min(frame.band, frame.size.height - frame.below);
        draw_band(frame);
        if (has_ambient(frame)) ambient.measure(ambient_input(frame, out), frame.below, rows, nothing);
        if (frame.look.supersample > 1) fold_into(frame, rows, out);
    }
    compose_into(whole, out, target);
    glBindVertexArray(0);
    glUseProgram(0);
}

/// The rows from frame.below on; what is of others falls outside of the target.
void Renderer::Parts::draw_band(const PictureFrame &frame) {
    targets.bind();
    glViewport(0, -frame.below, frame.size.width, frame.size.height);
    glClear(GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    background.use();
    const auto &low = frame.look.background_low, &high = frame.look.background_high;
    set_uniform(background.at("low"), Vec3{low[0], low[1], low[2]});
    set_uniform(background.at("high"), Vec3{high[0], high[1], high[2]});
    gl::draw_everywhere(nothing);
    if (!scene.empty()) draw_scene(frame);
    targets.resolve();
}

void Renderer::Parts::fold_into(const PictureFrame &frame, int rows, gl::Size out) {
    if (folded_size != out) {
        folded_size = out;
        folded = gl::make_texture(out, GL_RGBA32F, GL_NEAREST); // eighths of a step would be lost in bytes
        into_folded = gl::make_framebuffer();
        glBindFramebuffer(GL_FRAMEBUFFER, into_folded.id());
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, folded.id(), 0);
    }
    const int scale = frame.look.supersample;
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, targets.colour().id());
    fold.use();
    glUniform1i(fold.at("picture"), 0);
    glUniform1i(fold.at("scale"), scale);
    glUniform1i(fold.at("below"), frame.below);
    glBindFramebuffer(GL_FRAMEBUFFER, into_folded.id());
    glViewport(0, frame.below / scale, out.width, rows / scale);
    gl::draw_everywhere(nothing);
}

void Renderer::Parts::draw_scene(const PictureFrame &frame) const {
    const DrawLists lists =
        scene.visible_in(frame.clip_from_world, frame.camera, frame.size.height, frame.look.detail);
    glEnable(GL_DEPTH_TEST);
    wood.draw_faces(frame, scene, lists.faces);
    if (shows_ground(frame)) ground.draw(frame.clip_from_world);
    if (frame.look.edges) wood.draw_edges(frame, scene, lists.edges);
    glDisable(GL_DEPTH_TEST);
}

bool Renderer::Parts::has_ambient(const PictureFrame &frame) const {
    return !scene.empty() && frame.look.ambient != Ambient::none;
}

AmbientPass::Input Renderer::Parts::ambient_input(const PictureFrame &frame, gl::Size out) const {
    const bool half = frame.look.ambient == Ambient::half;
    const int part = half ? 2 : 1;
    const gl::Size size{std::max(1, out.width / part), std::max(1, out.height / part)};
    return {&targets.depth(), frame.size, size, frame.camera, frame.range, half ? 4 : 16};
}

void Renderer::Parts::compose_into(const PictureFrame &frame, gl::Size out, unsigned target) {
    if (has_ambient(frame)) {
        const gl::Handle &light = ambient.draw(ambient_input(frame, out), nothing);
        glActiveTexture(GL_TEXTURE1);
        glBindTexture(GL_TEXTURE_2D, light.id());
    }
    const int part = !has_ambient(frame) ? 0 : frame.look.ambient == Ambient::half ? 2 : 1;
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, (frame.look.supersample > 1 ? folded : targets.colour()).id());
    compose.use();
    glUniform1i(compose.at("picture"), 0);
    glUniform1i(compose.at("ambient"), 1);
    glUniform1i(compose.at("coarse"), frame.look.coarse);
    glUniform1i(compose.at("ambient_scale"), part);
    glBindFramebuffer(GL_FRAMEBUFFER, target);
    glViewport(0, 0, out.width, out.height);
    gl::draw_everywhere(nothing);
}

Renderer::Renderer(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Renderer::~Renderer() = default;

Drawn<std::unique_ptr<Renderer>> Renderer::create() {
    constexpr int least_version = 33;
    if (epoxy_gl_version() < least_version)
        return PictureFailure{
            "No picture can be drawn: the graphics driver offers less than OpenGL 3.3; update it, or "
            "install libgl1-mesa-dri and set LIBGL_ALWAYS_SOFTWARE=1."};
    try {
        return std::unique_ptr<Renderer>(new Renderer(std::make_unique<Parts>()));
    } catch (const std::runtime_error &e) {
        return PictureFailure{std::string("No picture can be drawn: ") + e.what() + "."};
    }
}

void Renderer::show(const Scene &scene) {
    if (parts_->scene.show(scene)) parts_->ground.outdate();
}

void Renderer::draw(const Camera &camera, const Look &look, int width, int height, unsigned target) {
    parts_->draw(parts_->frame_for(camera, look, width, height), {width, height}, target);
}

std::optional<Picked> Renderer::pick(const Camera &camera, const Look &look, int width, int height, int x,
                                     int y) {
    if (parts_->scene.empty() || x < 0 || y < 0 || x >= width || y >= height) return std::nullopt;
    Look plain = look;
    plain.supersample = plain.coarse = 1;
    gl::reset_state();
    return parts_->wood.pick(parts_->frame_for(camera, plain, width, height), parts_->scene, x, y);
}

std::string Renderer::driver() const {
    return reinterpret_cast<const char *>(glGetString(GL_RENDERER));
}

} // namespace roundlay
