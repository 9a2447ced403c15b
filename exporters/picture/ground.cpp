#include "exporters/picture/ground.h"

#include <algorithm>
#include <numbers>
#include <vector>

namespace roundlay {
namespace {

constexpr gl::Size texture_size{1024, 1024};
constexpr double sun_elevation = 48 * std::numbers::pi / 180;

const char *const cast_vertex = R"(
layout(location = 0) in vec3 position;
uniform mat4 ground_from_stored;
void main() { gl_Position = ground_from_stored * vec4(position, 1); }
)";

const char *const cast_fragment = R"(
uniform float weight;
out vec4 amount;
void main() { amount = vec4(weight); }
)";

const char *const everywhere_vertex = R"(
void main() {
    vec2 corner = vec2(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0);
    gl_Position = vec4(corner, 0, 1);
}
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
out vec2 place;
void main() {
    place = vec2(gl_VertexID & 1, gl_VertexID >> 1);
    gl_Position = clip_from_stored * vec4(mix(low.xy, high.xy, place), low.z, 1);
}
)";

const char *const lay_fragment = R"(
uniform sampler2D shadow;
in vec2 place;
out vec4 colour;
void main() {
    float amount = texture(shadow, place).r;
    colour = vec4(0.16, 0.15, 0.17, 0.62 * amount);
}
)";

struct Lamp {
    Vec3 direction;
    double weight;
};

Vec3 direction(double azimuth, double elevation) {
    return {std::cos(elevation) * std::cos(azimuth), std::cos(elevation) * std::sin(azimuth),
            std::sin(elevation)};
}

/// A sun with some width and the whole sky. Weights are whole parts of 255, so that their sum is exact.
std::vector<Lamp> lamps(double azimuth) {
    constexpr int sun_parts = 16, sky_parts = 32;
    constexpr double sun_width = 0.05;           // radians: much wider than the real one, for a calm border
    constexpr double golden = 2.399963229728653; // the golden angle: an even spiral
    std::vector<Lamp> all;
    for (int i = 0; i < sun_parts; ++i) {
        const double r = sun_width * std::sqrt((i + 0.5) / sun_parts), turn = golden * i;
        all.push_back({direction(azimuth + r * std::cos(turn) / std::cos(sun_elevation),
                                 sun_elevation + r * std::sin(turn)),
                       9.0 / 255});
    }
    for (int i = 0; i < sky_parts; ++i) {
        // Even over what a level plane receives, above 20 degrees so that shadows stay near.
        const double sine = 0.34 + 0.66 * std::sqrt((i + 0.5) / sky_parts);
        all.push_back({direction(golden * i, std::asin(sine)), 3.0 / 255});
    }
    return all;
}

} // namespace

Vec3 sun_direction(double azimuth) {
    return direction(azimuth, sun_elevation);
}

GroundShadow::GroundShadow()
    : cast_(cast_vertex, cast_fragment), soften_(everywhere_vertex, soften_fragment),
      lay_(lay_vertex, lay_fragment), shadow_(gl::make_texture(texture_size, GL_R8, GL_LINEAR)),
      spare_(gl::make_texture(texture_size, GL_R8, GL_LINEAR)),
      depth_(gl::make_multisample_renderbuffer(texture_size, GL_DEPTH_COMPONENT24, 0)),
      into_shadow_(gl::make_framebuffer()), into_spare_(gl::make_framebuffer()),
      quad_(gl::make_vertex_array()) {
    glBindFramebuffer(GL_FRAMEBUFFER, into_shadow_.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, shadow_.id(), 0);
    glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, depth_.id());
    glBindFramebuffer(GL_FRAMEBUFFER, into_spare_.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, spare_.id(), 0);
}

void GroundShadow::update(const SceneBuffers &scene, double light_azimuth,
                          const gl::Handle &empty_vertex_array) {
    if (fresh_ && azimuth_ == light_azimuth) return;
    const Box3 &box = scene.box();
    const double reach =
        1.2 * (box.high.z - box.low.z) + 500; // mm: shadows do not run farther under this sun
    low_ = box.low - scene.origin() - Vec3{reach, reach, 0};
    high_ = Vec3{box.high.x, box.high.y, box.low.z} - scene.origin() + Vec3{reach, reach, 0};
    glViewport(0, 0, texture_size.width, texture_size.height);
    cast(scene, light_azimuth);
    soften(empty_vertex_array);
    azimuth_ = light_azimuth;
    fresh_ = true;
}

void GroundShadow::cast(const SceneBuffers &scene, double light_azimuth) {
    glBindFramebuffer(GL_FRAMEBUFFER, into_shadow_.id());
    glClearColor(0, 0, 0, 0);
    glClear(GL_COLOR_BUFFER_BIT);
    glEnable(GL_BLEND);
    glBlendFunc(GL_ONE, GL_ONE);
    // All wood falls on one depth: the first drawn keeps the rest out, so each lamp counts once.
    glEnable(GL_DEPTH_TEST);
    cast_.use();
    scene.bind_faces();
    const DrawList list = scene.coarse();
    for (const Lamp &lamp : lamps(light_azimuth)) {
        const double sx = 2 / (high_.x - low_.x), sy = 2 / (high_.y - low_.y);
        const double kx = lamp.direction.x / lamp.direction.z, ky = lamp.direction.y / lamp.direction.z;
        Matrix4 m;
        m(0, 0) = sx;
        m(0, 2) = -sx * kx;
        m(0, 3) = sx * (kx * low_.z - low_.x) - 1;
        m(1, 1) = sy;
        m(1, 2) = -sy * ky;
        m(1, 3) = sy * (ky * low_.z - low_.y) - 1;
        m(3, 3) = 1;
        std::array<float, 16> single{};
        std::transform(m.m.begin(), m.m.end(), single.begin(),
                       [](double v) { return static_cast<float>(v); });
        glUniformMatrix4fv(cast_.at("ground_from_stored"), 1, GL_FALSE, single.data());
        glUniform1f(cast_.at("weight"), static_cast<float>(lamp.weight));
        glClear(GL_DEPTH_BUFFER_BIT);
        list.draw(GL_TRIANGLES);
    }
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_BLEND);
}

void GroundShadow::soften(const gl::Handle &empty_vertex_array) {
    soften_.use();
    glActiveTexture(GL_TEXTURE0);
    glUniform1i(soften_.at("shadow"), 0);
    glBindFramebuffer(GL_FRAMEBUFFER, into_spare_.id());
    glBindTexture(GL_TEXTURE_2D, shadow_.id());
    glUniform2i(soften_.at("along"), 1, 0);
    gl::draw_everywhere(empty_vertex_array);
    glBindFramebuffer(GL_FRAMEBUFFER, into_shadow_.id());
    glBindTexture(GL_TEXTURE_2D, spare_.id());
    glUniform2i(soften_.at("along"), 0, 1);
    gl::draw_everywhere(empty_vertex_array);
}

void GroundShadow::draw(const Matrix4 &clip_from_stored) const {
    lay_.use();
    std::array<float, 16> single{};
    std::transform(clip_from_stored.m.begin(), clip_from_stored.m.end(), single.begin(),
                   [](double v) { return static_cast<float>(v); });
    glUniformMatrix4fv(lay_.at("clip_from_stored"), 1, GL_FALSE, single.data());
    glUniform3f(lay_.at("low"), static_cast<float>(low_.x), static_cast<float>(low_.y),
                static_cast<float>(low_.z));
    glUniform3f(lay_.at("high"), static_cast<float>(high_.x), static_cast<float>(high_.y),
                static_cast<float>(high_.z));
    glUniform1i(lay_.at("shadow"), 0);
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, shadow_.id());
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glBindVertexArray(quad_.id());
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glDisable(GL_BLEND);
}

} // namespace roundlay
