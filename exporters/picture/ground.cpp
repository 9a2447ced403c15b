#include "exporters/picture/ground.h"

#include "exporters/picture/frame.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <numbers>

namespace roundlay {
namespace {

constexpr gl::Size sun_size{1024, 1024}; // a border that is seen as one
constexpr gl::Size sky_size{256, 256};   // all borders soft
constexpr double sun_elevation = 48 * std::numbers::pi / 180;
constexpr double golden_angle = 2.399963229728653; // turns by it lie evenly, however many there are

const char *const cast_vertex = R"(
layout(location = 0) in vec3 position;
uniform mat4 ground_from_stored;
uniform vec4 section;
void main() {
    gl_Position = ground_from_stored * vec4(position, 1);
    gl_ClipDistance[0] = section.w - dot(section.xyz, position);
}
)";

const char *const cast_fragment = R"(
uniform float weight;
out vec4 amount;
void main() { amount = vec4(weight); }
)";

const char *const soften_fragment = R"(
uniform sampler2D shadow;
uniform ivec2 along;
out vec4 amount;
const float weights[7] = float[](0.199, 0.176, 0.121, 0.065, 0.027, 0.009, 0.0025);
void main() {
    ivec2 here = ivec2(gl_FragCoord.xy), last = textureSize(shadow, 0) - 1;
    float sum = weights[0] * texelFetch(shadow, here, 0).r;
    for (int i = 1; i < 7; ++i) {
        sum += weights[i] * texelFetch(shadow, clamp(here + i * along, ivec2(0), last), 0).r;
        sum += weights[i] * texelFetch(shadow, clamp(here - i * along, ivec2(0), last), 0).r;
    }
    amount = vec4(sum);
}
)";

const char *const lay_vertex = R"(
uniform mat4 clip_from_stored;
uniform vec3 low, high;
out vec2 spot;
void main() {
    spot = vec2(gl_VertexID & 1, gl_VertexID >> 1);
    gl_Position = clip_from_stored * vec4(mix(low.xy, high.xy, spot), low.z, 1);
}
)";

const char *const lay_fragment = R"(
uniform sampler2D sun, sky;
in vec2 spot;
out vec4 colour;
void main() {
    vec2 from_border = min(spot, 1.0 - spot);
    float fade = smoothstep(0.0, 0.12, min(from_border.x, from_border.y));
    float amount = 0.30 * texture(sun, spot).r + 0.42 * texture(sky, spot).r;
    colour = vec4(0.16, 0.15, 0.17, fade * amount);
}
)";

Vec3 direction(double azimuth, double elevation) {
    return {std::cos(elevation) * std::cos(azimuth), std::cos(elevation) * std::sin(azimuth),
            std::sin(elevation)};
}

} // namespace

Vec3 sun_direction(double azimuth) {
    return direction(azimuth, sun_elevation);
}

/// A sun far wider than the real one, for a calm border.
GroundShadow::Directions GroundShadow::sun(double azimuth) {
    constexpr int count = 11;
    constexpr double width = 0.045; // radians
    Directions lights;
    for (int i = 0; i < count; ++i) {
        const double r = width * std::sqrt((i + 0.5) / count), turn = golden_angle * i;
        lights.push_back(direction(azimuth + r * std::cos(turn) / std::cos(sun_elevation),
                                   sun_elevation + r * std::sin(turn)));
    }
    return lights;
}

/// Even over what a level plane receives, above 20 degrees so that shadows stay near.
GroundShadow::Directions GroundShadow::sky() {
    constexpr int count = 51;
    constexpr double lowest_sine = 0.34;
    Directions lights;
    for (int i = 0; i < count; ++i) {
        const double even = std::sqrt((i + 0.5) / count);
        lights.push_back(direction(golden_angle * i, std::asin(lowest_sine + (1 - lowest_sine) * even)));
    }
    return lights;
}

bool GroundShadow::same(const std::optional<Plane> &a, const std::optional<Plane> &b) {
    if (!a || !b) return a.has_value() == b.has_value();
    return a->normal == b->normal && a->offset == b->offset;
}

GroundShadow::Layer::Layer(gl::Size wanted)
    : size(wanted), shadow(gl::make_texture(size, GL_R16, GL_LINEAR)),
      spare(gl::make_texture(size, GL_R16, GL_LINEAR)),
      depth(gl::make_multisample_renderbuffer(size, GL_DEPTH_COMPONENT24, 0)),
      into_shadow(gl::make_framebuffer()), into_spare(gl::make_framebuffer()) {
    glBindFramebuffer(GL_FRAMEBUFFER, into_shadow.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, shadow.id(), 0);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, depth.id());
    glBindFramebuffer(GL_FRAMEBUFFER, into_spare.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, spare.id(), 0);
}

GroundShadow::GroundShadow()
    : cast_(cast_vertex, cast_fragment), soften_(everywhere_vertex, soften_fragment),
      lay_(lay_vertex, lay_fragment), sun_(sun_size), sky_(sky_size), quad_(gl::make_vertex_array()),
      boxes_(gl::make_vertex_array()), box_corners_(gl::make_buffer()), box_indices_(gl::make_buffer()) {}

Box3 GroundShadow::reach(const Box3 &scene) {
    const double far = 1.3 * (scene.high.z - scene.low.z) + 600; // mm; what falls farther is faint and faded
    return {scene.low - Vec3{far, far, 0}, scene.high + Vec3{far, far, 0}};
}

void GroundShadow::update(const SceneBuffers &scene, double light_azimuth,
                          const std::optional<Plane> &section, const gl::Handle &empty_vertex_array) {
    fresh_ = fresh_ && same(section_, section);
    if (fresh_ && azimuth_ == light_azimuth) return;
    section_ = section;
    const Box3 box = reach(scene.box());
    origin_ = scene.origin();
    low_ = box.low - origin_;
    high_ = box.high - origin_;
    begin_casting(sun_, scene);
    scene.bind_faces();
    cast(sun(light_azimuth), [list = scene.coarse()] { list.draw(GL_TRIANGLES); });
    soften(sun_, empty_vertex_array);
    if (!fresh_) update_sky(scene, empty_vertex_array);
    azimuth_ = light_azimuth;
    fresh_ = cast_once_ = true;
}

void GroundShadow::update_sky(const SceneBuffers &scene, const gl::Handle &empty_vertex_array) const {
    fill_boxes(scene);
    begin_casting(sky_, scene);
    glBindVertexArray(boxes_.id());
    const auto visible = std::count_if(scene.scene().instances.begin(), scene.scene().instances.end(),
                                       [](const Instance &i) { return i.visible; });
    cast(sky(), [count = static_cast<GLsizei>(36 * visible)] {
        glDrawElements(GL_TRIANGLES, count, GL_UNSIGNED_INT, nullptr);
    });
    soften(sky_, empty_vertex_array);
}

/// Where a point falls on the ground, as the texture's clip space. Depth is the same for all.
Matrix4 GroundShadow::fallen_along(Vec3 light) const {
    const double sx = 2 / (high_.x - low_.x), sy = 2 / (high_.y - low_.y);
    const double kx = light.x / light.z, ky = light.y / light.z;
    Matrix4 m;
    m(0, 0) = sx;
    m(0, 2) = -sx * kx;
    m(0, 3) = sx * (kx * low_.z - low_.x) - 1;
    m(1, 1) = sy;
    m(1, 2) = -sy * ky;
    m(1, 3) = sy * (ky * low_.z - low_.y) - 1;
    m(3, 3) = 1;
    return m;
}

/// The sky's light is so soft that a box stands for a piece.
void GroundShadow::fill_boxes(const SceneBuffers &scene) const {
    static constexpr std::array<std::uint32_t, 36> sides{0, 1, 3, 0, 3, 2, 4, 5, 7, 4, 7, 6,
                                                         0, 1, 5, 0, 5, 4, 2, 3, 7, 2, 7, 6,
                                                         0, 2, 6, 0, 6, 4, 1, 3, 7, 1, 7, 5};
    std::vector<std::array<float, 3>> corners;
    std::vector<std::uint32_t> indices;
    for (const Instance &instance : scene.scene().instances) {
        if (!instance.visible) continue;
        const Box3 &box = scene.scene().models[instance.model]->box;
        for (const std::uint32_t side : sides)
            indices.push_back(static_cast<std::uint32_t>(corners.size()) + side);
        for (int i = 0; i < 8; ++i) {
            const Vec3 p =
                instance.frame.to_world({i & 1 ? box.high.x : box.low.x, i & 2 ? box.high.y : box.low.y,
                                         i & 4 ? box.high.z : box.low.z}) -
                scene.origin();
            corners.push_back({static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z)});
        }
    }
    glBindVertexArray(boxes_.id());
    gl::fill(GL_ARRAY_BUFFER, box_corners_, corners, GL_DYNAMIC_DRAW);
    gl::fill(GL_ELEMENT_ARRAY_BUFFER, box_indices_, indices, GL_DYNAMIC_DRAW);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, GL_FALSE, 0, nullptr);
}

void GroundShadow::begin_casting(const Layer &layer, const SceneBuffers &scene) const {
    glBindFramebuffer(GL_FRAMEBUFFER, layer.into_shadow.id());
    glViewport(0, 0, layer.size.width, layer.size.height);
    glClearColor(0, 0, 0, 0);
    glClear(GL_COLOR_BUFFER_BIT);
    cast_.use();
    set_section(cast_.at("section"), section_, scene.origin());
}

template <typename Draw> void GroundShadow::cast(const Directions &lights, Draw draw) const {
    if (section_) glEnable(GL_CLIP_DISTANCE0);
    glEnable(GL_BLEND);
    glBlendFunc(GL_ONE, GL_ONE);
    // All wood falls on one depth: the first drawn keeps the rest out, so each light counts once.
    glEnable(GL_DEPTH_TEST);
    glUniform1f(cast_.at("weight"), 1.0f / static_cast<float>(lights.size()));
    for (const Vec3 light : lights) {
        set_uniform(cast_.at("ground_from_stored"), fallen_along(light));
        glClear(GL_DEPTH_BUFFER_BIT);
        draw();
    }
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_BLEND);
    glDisable(GL_CLIP_DISTANCE0);
}

void GroundShadow::soften(const Layer &layer, const gl::Handle &empty_vertex_array) const {
    soften_.use();
    glActiveTexture(GL_TEXTURE0);
    glUniform1i(soften_.at("shadow"), 0);
    glBindFramebuffer(GL_FRAMEBUFFER, layer.into_spare.id());
    glBindTexture(GL_TEXTURE_2D, layer.shadow.id());
    glUniform2i(soften_.at("along"), 1, 0);
    gl::draw_everywhere(empty_vertex_array);
    glBindFramebuffer(GL_FRAMEBUFFER, layer.into_shadow.id());
    glBindTexture(GL_TEXTURE_2D, layer.spare.id());
    glUniform2i(soften_.at("along"), 0, 1);
    gl::draw_everywhere(empty_vertex_array);
}

void GroundShadow::draw(const Matrix4 &clip_from_world) const {
    lay_.use();
    set_uniform(lay_.at("clip_from_stored"), shifted(clip_from_world, origin_));
    set_uniform(lay_.at("low"), low_);
    set_uniform(lay_.at("high"), high_);
    glUniform1i(lay_.at("sun"), 0);
    glUniform1i(lay_.at("sky"), 1);
    glActiveTexture(GL_TEXTURE1);
    glBindTexture(GL_TEXTURE_2D, sky_.shadow.id());
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, sun_.shadow.id());
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glBindVertexArray(quad_.id());
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glDisable(GL_BLEND);
}

} // namespace roundlay
