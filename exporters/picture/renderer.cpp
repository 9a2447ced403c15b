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

const char *const compose_fragment = R"(
uniform sampler2D picture;
uniform sampler2D ambient;
uniform int scale;          // texels of the picture per pixel, across and up
uniform int coarse;         // pixels per texel, where they are more
uniform int ambient_scale;  // pixels per texel of the ambient light, 0 = there is none
in vec2 place;
out vec4 colour;
void main() {
    ivec2 pixel = ivec2(gl_FragCoord.xy);
    vec3 sum = vec3(0);
    for (int y = 0; y < scale; ++y)
        for (int x = 0; x < scale; ++x) sum += texelFetch(picture, pixel / coarse * scale + ivec2(x, y), 0).rgb;
    sum /= float(scale * scale);
    float light = ambient_scale == 0 ? 1.0
                : ambient_scale == 1 ? texelFetch(ambient, pixel, 0).r
                                     : texture(ambient, place).r;
    // Shadows keep some of the wood's warmth.
    colour = vec4(sum * mix(vec3(0.10, 0.07, 0.05), vec3(1), light), 1);
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

struct Renderer::Parts {
    SceneBuffers scene;
    GroundShadow ground;
    WoodPass wood;
    AmbientPass ambient;
    Targets targets;
    gl::Handle nothing = gl::make_vertex_array();
    gl::Program background{everywhere_vertex, background_fragment},
        compose{everywhere_vertex, compose_fragment};

    bool shows_ground(const PictureFrame &frame) const;
    PictureFrame frame_for(const Camera &camera, const Look &look, int width, int height) const;
    void draw(const PictureFrame &frame, gl::Size out, unsigned target);
    void draw_scene(const PictureFrame &frame) const;
    void compose_into(const PictureFrame &frame, gl::Size out, unsigned target);
};

/// The ground is seen from above only.
bool Renderer::Parts::shows_ground(const PictureFrame &frame) const {
    if (!frame.look.ground || scene.empty()) return false;
    const Camera &camera = frame.camera;
    return camera.eye.z > (camera.projection == Projection::parallel ? camera.target.z : scene.box().low.z);
}

PictureFrame Renderer::Parts::frame_for(const Camera &camera, const Look &look, int width, int height) const {
    PictureFrame frame{camera, look, {}, {}, {}, {}};
    frame.look.supersample = std::clamp(look.supersample, 1, 2);
    frame.look.coarse = frame.look.supersample == 1 ? std::clamp(look.coarse, 1, 2) : 1;
    const int part = frame.look.coarse, factor = frame.look.supersample;
    frame.size = {(width + part - 1) / part * factor, (height + part - 1) / part * factor};
    frame.range = depth_range(camera, shows_ground(frame) ? GroundShadow::reach(scene.box()) : scene.box());
    frame.clip_from_world =
        projection_matrix(camera, static_cast<double>(width) / height, frame.range) * view_matrix(camera);
    frame.clip_from_stored = shifted(frame.clip_from_world, scene.origin());
    return frame;
}

void Renderer::Parts::draw(const PictureFrame &frame, gl::Size out, unsigned target) {
    gl::reset_state();
    if (shows_ground(frame) && !(frame.look.shadow_may_lag && ground.is_cast()))
        ground.update(scene, frame.look.light_azimuth, frame.look.section, nothing);
    GLint most = 0;
    glGetIntegerv(GL_MAX_SAMPLES, &most);
    targets.resize(frame.size, std::clamp(frame.look.samples, 0, most));
    targets.bind();
    glViewport(0, 0, frame.size.width, frame.size.height);
    glClear(GL_DEPTH_BUFFER_BIT | GL_STENCIL_BUFFER_BIT);
    background.use();
    const auto &low = frame.look.background_low, &high = frame.look.background_high;
    set_uniform(background.at("low"), Vec3{low[0], low[1], low[2]});
    set_uniform(background.at("high"), Vec3{high[0], high[1], high[2]});
    gl::draw_everywhere(nothing);
    if (!scene.empty()) draw_scene(frame);
    targets.resolve();
    compose_into(frame, out, target);
    glBindVertexArray(0);
    glUseProgram(0);
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

void Renderer::Parts::compose_into(const PictureFrame &frame, gl::Size out, unsigned target) {
    const bool half = frame.look.ambient == Ambient::half;
    const int part = scene.empty() || frame.look.ambient == Ambient::none ? 0 : half ? 2 : 1;
    if (part > 0) {
        const gl::Size size{std::max(1, out.width / part), std::max(1, out.height / part)};
        const AmbientPass::Input input{&targets.depth(), frame.size,  size,
                                       frame.camera,     frame.range, half ? 4 : 16};
        const gl::Handle &light = ambient.draw(input, nothing);
        glActiveTexture(GL_TEXTURE1);
        glBindTexture(GL_TEXTURE_2D, light.id());
    }
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, targets.colour().id());
    compose.use();
    glUniform1i(compose.at("picture"), 0);
    glUniform1i(compose.at("ambient"), 1);
    glUniform1i(compose.at("scale"), frame.look.supersample);
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
