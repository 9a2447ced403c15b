#include "exporters/picture/ambient.h"

#include "exporters/picture/frame.h"

#include <algorithm>
#include <cmath>

namespace roundlay {
namespace {

const char *const measure_fragment = R"(
uniform sampler2D depth;
uniform int scale;          // texels of depth per pixel of the result
uniform int below;          // texels under those that there are
uniform vec2 reach;         // near and far distance from the eye, mm
uniform bool perspective;
out float away;             // mm from the eye along the line of sight
void main() {
    float d = texelFetch(depth, ivec2(gl_FragCoord.xy) * scale + scale / 2 - ivec2(0, below), 0).r;
    away = perspective ? reach.x * reach.y / (reach.y - d * (reach.y - reach.x)) : reach.x + d * (reach.y - reach.x);
    if (d >= 1.0) away = 1e8; // only background
}
)";

const char *const gather_fragment = R"(
uniform sampler2D away;     // mm from the eye
uniform ivec2 size;
uniform vec2 reach;         // near and far distance from the eye, mm
uniform vec2 half_view;     // half of what the picture shows: mm (parallel) or at distance 1 (perspective)
uniform bool perspective;
uniform int samples;        // for each radius
out vec2 light;             // what is left of it, and the distance from the eye, 0..1

const float nothing = 1e8;

vec3 place(ivec2 pixel) {
    pixel = clamp(pixel, ivec2(0), size - 1);
    float z = texelFetch(away, pixel, 0).r;
    vec2 flat_place = (2.0 * (vec2(pixel) + 0.5) / vec2(size) - 1.0) * half_view;
    return vec3(perspective ? flat_place * z : flat_place, -z);
}

float gathered(ivec2 here, vec3 p, vec3 normal, float turn, float radius, float bias) {
    float pixels = radius / (2.0 * half_view.y * (perspective ? -p.z : 1.0)) * float(size.y);
    pixels = clamp(pixels, 3.0, 0.35 * float(size.y));
    float sum = 0.0, square = radius * radius;
    for (int i = 0; i < samples; ++i) {
        float part = (float(i) + 0.5) / float(samples);
        float angle = turn + float(i) * 2.399963;
        ivec2 there = here + ivec2(round(part * pixels * vec2(cos(angle), sin(angle))));
        vec3 v = place(there) - p;
        float vv = dot(v, v), vn = dot(v, normal) - bias;
        float f = max(1.0 - vv / square, 0.0);
        sum += f * f * f * max(vn * inversesqrt(vv + 1.0), 0.0);
    }
    return sum / float(samples);
}

// How far q stands in front of p, 0..1, without counting what goes on in p's own plane.
float in_front(vec3 q, vec3 p, vec3 normal) {
    float off_plane = normal == vec3(0) ? 1.0 : smoothstep(2.0, 5.0, abs(dot(q - p, normal)));
    return off_plane * clamp((q.z - p.z - 3.0) / 40.0, 0.0, 1.0);
}

// How much a place lies behind what is close by on both sides of it: the gap between two logs, whatever is
// seen through it. Openings are too wide to count.
float sunken(ivec2 here, vec3 p, vec3 normal) {
    float pixel = 2.0 * half_view.y * (perspective ? -p.z : 1.0) / float(size.y);
    float most = 0.0;
    for (int i = 0; i < 3; ++i) {
        int pixels = int(round(max((14.0 + 15.0 * float(i)) / pixel, 1.0 + 0.5 * float(i))));
        for (int k = 0; k < 2; ++k) {
            ivec2 there = k == 0 ? ivec2(0, pixels) : ivec2(pixels, 0);
            float ahead = in_front(place(here + there), p, normal), behind = in_front(place(here - there), p, normal);
            most = max(most, min(ahead, behind));
        }
    }
    return most;
}

void main() {
    ivec2 here = ivec2(gl_FragCoord.xy);
    vec3 p = place(here);
    if (p.z == -nothing) {
        light = vec2(1.0 - 0.80 * sunken(here, p, vec3(0)), 1);
        return;
    }
    // The nearer neighbour on each axis lies on the same face.
    vec3 left = p - place(here - ivec2(1, 0)), right = place(here + ivec2(1, 0)) - p;
    vec3 down = p - place(here - ivec2(0, 1)), up = place(here + ivec2(0, 1)) - p;
    vec3 along = abs(left.z) < abs(right.z) ? left : right;
    vec3 across = abs(down.z) < abs(up.z) ? down : up;
    vec3 normal = normalize(cross(along, across));
    // Sixteen turns in a block of four by four; the blur has the same size and takes the pattern out again.
    ivec2 cell = here & 3;
    float turn = float((cell.x * 5 + cell.y * 3 + ((cell.x * cell.y) & 3) * 7) & 15) * 0.392699;
    float near = gathered(here, p, normal, turn, 170.0, 4.0);
    float wide = gathered(here, p, normal, turn, 1500.0, 25.0);
    float open = clamp(1.0 - 2.2 * near - 1.3 * wide, 0.0, 1.0) * (1.0 - 0.80 * sunken(here, p, normal));
    light = vec2(open, (-p.z - reach.x) / (reach.y - reach.x));
}
)";

const char *const blur_fragment = R"(
uniform sampler2D gathered;
uniform float deep;         // mm from near to far
out vec4 light;
void main() {
    ivec2 here = ivec2(gl_FragCoord.xy), last = textureSize(gathered, 0) - 1;
    float centre = texelFetch(gathered, here, 0).g, sum = 0.0, weights = 0.0;
    for (int y = -2; y < 2; ++y) {
        for (int x = -2; x < 2; ++x) {
            vec2 there = texelFetch(gathered, clamp(here + ivec2(x, y), ivec2(0), last), 0).rg;
            float weight = 1.0 / (1.0 + abs(there.g - centre) * deep * 0.02);
            sum += weight * there.r;
            weights += weight;
        }
    }
    light = vec4(sum / weights);
}
)";

} // namespace

AmbientPass::AmbientPass()
    : measure_(everywhere_vertex, measure_fragment), gather_(everywhere_vertex, gather_fragment),
      blur_(everywhere_vertex, blur_fragment) {
    for (Stage *stage : {&away_, &gathered_, &blurred_})
        stage->into = gl::make_framebuffer();
}

void AmbientPass::resize(gl::Size size) {
    if (size == size_) return;
    size_ = size;
    for (const auto &[stage, format] :
         {std::pair{&away_, GL_R32F}, std::pair{&gathered_, GL_RG16}, std::pair{&blurred_, GL_R8}}) {
        stage->texture = gl::make_texture(size, format, stage == &blurred_ ? GL_LINEAR : GL_NEAREST);
        glBindFramebuffer(GL_FRAMEBUFFER, stage->into.id());
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, stage->texture.id(), 0);
    }
}

void AmbientPass::run(const gl::Handle &from, const Stage &to, const gl::Handle &empty_vertex_array) {
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, from.id());
    glBindFramebuffer(GL_FRAMEBUFFER, to.into.id());
    gl::draw_everywhere(empty_vertex_array);
}

void AmbientPass::measure(const Input &input, int below, int rows, const gl::Handle &empty_vertex_array) {
    resize(input.size);
    const int scale = input.depth_size.width / input.size.width;
    glViewport(0, below / scale, input.size.width,
               std::min(input.size.height, (below + rows) / scale) - below / scale);
    set_measure(input, below);
    run(*input.depth, away_, empty_vertex_array);
}

const gl::Handle &AmbientPass::draw(const Input &input, const gl::Handle &empty_vertex_array) {
    glViewport(0, 0, input.size.width, input.size.height);
    set_gather(input);
    run(away_.texture, gathered_, empty_vertex_array);
    blur_.use();
    glUniform1i(blur_.at("gathered"), 0);
    glUniform1f(blur_.at("deep"), static_cast<float>(input.range.far - input.range.near));
    run(gathered_.texture, blurred_, empty_vertex_array);
    return blurred_.texture;
}

void AmbientPass::set_measure(const Input &input, int below) const {
    measure_.use();
    glUniform1i(measure_.at("below"), below);
    glUniform1i(measure_.at("depth"), 0);
    glUniform1i(measure_.at("scale"), input.depth_size.width / input.size.width);
    glUniform2f(measure_.at("reach"), static_cast<float>(input.range.near),
                static_cast<float>(input.range.far));
    glUniform1i(measure_.at("perspective"), input.camera.projection == Projection::perspective);
}

void AmbientPass::set_gather(const Input &input) const {
    const bool perspective = input.camera.projection == Projection::perspective;
    const double aspect = static_cast<double>(input.size.width) / input.size.height;
    const double to_target = length(input.camera.eye - input.camera.target);
    const double half = input.camera.view_height / 2 / (perspective ? to_target : 1);
    gather_.use();
    glUniform1i(gather_.at("away"), 0);
    glUniform2i(gather_.at("size"), input.size.width, input.size.height);
    glUniform2f(gather_.at("reach"), static_cast<float>(input.range.near),
                static_cast<float>(input.range.far));
    glUniform2f(gather_.at("half_view"), static_cast<float>(half * aspect), static_cast<float>(half));
    glUniform1i(gather_.at("perspective"), perspective);
    glUniform1i(gather_.at("samples"), input.samples);
}

} // namespace roundlay
