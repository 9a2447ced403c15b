#include "exporters/picture/ambient.h"

#include "exporters/picture/frame.h"

#include <cmath>

namespace roundlay {
namespace {

const char *const gather_fragment = R"(
uniform sampler2D depth;
uniform ivec2 depth_size;
uniform int scale;          // depth texels per pixel of the result
uniform vec2 reach;         // near and far distance from the eye
uniform vec2 half_view;     // half of what the picture shows: mm (parallel) or at distance 1 (perspective)
uniform bool perspective;
uniform int samples;
out vec4 light;

const float nothing = 1e8; // mm: where there is only background

vec3 place(ivec2 texel) {
    texel = clamp(texel, ivec2(0), depth_size - 1);
    float d = texelFetch(depth, texel, 0).r;
    vec2 flat_place = (2.0 * (vec2(texel) + 0.5) / vec2(depth_size) - 1.0) * half_view;
    if (d >= 1.0) return vec3(flat_place * (perspective ? nothing : 1.0), -nothing);
    if (perspective) {
        float z = reach.x * reach.y / (reach.y - d * (reach.y - reach.x));
        return vec3(flat_place * z, -z);
    }
    return vec3(flat_place, -(reach.x + d * (reach.y - reach.x)));
}

float gathered(ivec2 here, vec3 p, vec3 normal, float turn, float radius, float bias) {
    float texels = radius / (2.0 * half_view.y * (perspective ? -p.z : 1.0)) * float(depth_size.y);
    texels = clamp(texels, 3.0 * float(scale), 0.35 * float(depth_size.y));
    float sum = 0.0, square = radius * radius;
    for (int i = 0; i < samples; ++i) {
        float part = (float(i) + 0.5) / float(samples);
        float angle = turn + float(i) * 2.399963;
        ivec2 there = here + ivec2(round(part * texels * vec2(cos(angle), sin(angle))));
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
    float texel = 2.0 * half_view.y * (perspective ? -p.z : 1.0) / float(depth_size.y);
    float most = 0.0;
    for (int i = 0; i < 3; ++i) {
        int texels = int(round(max((14.0 + 15.0 * float(i)) / texel, (1.0 + 0.5 * float(i)) * float(scale))));
        for (int k = 0; k < 2; ++k) {
            ivec2 there = k == 0 ? ivec2(0, texels) : ivec2(texels, 0);
            float ahead = in_front(place(here + there), p, normal), behind = in_front(place(here - there), p, normal);
            most = max(most, min(ahead, behind));
        }
    }
    return most;
}

void main() {
    ivec2 here = ivec2(gl_FragCoord.xy) * scale + scale / 2;
    vec3 p = place(here);
    if (texelFetch(depth, here, 0).r >= 1.0) {
        light = vec4(1.0 - 0.80 * sunken(here, p, vec3(0)));
        return;
    }
    // The nearer neighbour on each axis lies on the same face.
    vec3 left = p - place(here - ivec2(1, 0)), right = place(here + ivec2(1, 0)) - p;
    vec3 down = p - place(here - ivec2(0, 1)), up = place(here + ivec2(0, 1)) - p;
    vec3 along = abs(left.z) < abs(right.z) ? left : right;
    vec3 across = abs(down.z) < abs(up.z) ? down : up;
    vec3 normal = normalize(cross(along, across));
    // Sixteen turns in a block of four by four; the blur has the same size and takes the pattern out again.
    ivec2 cell = ivec2(gl_FragCoord.xy) & 3;
    float turn = float((cell.x * 5 + cell.y * 3 + ((cell.x * cell.y) & 3) * 7) & 15) * 0.392699;
    float near = gathered(here, p, normal, turn, 170.0, 4.0);
    float wide = gathered(here, p, normal, turn, 1500.0, 25.0);
    light = vec4(clamp(1.0 - 2.2 * near - 1.3 * wide, 0.0, 1.0) * (1.0 - 0.80 * sunken(here, p, normal)));
}
)";

const char *const blur_fragment = R"(
uniform sampler2D light_seen;
uniform sampler2D depth;
uniform int scale;
uniform vec2 reach;
uniform bool perspective;
out vec4 light;

float distance_at(ivec2 pixel) {
    float d = texelFetch(depth, pixel * scale + scale / 2, 0).r;
    if (perspective) return reach.x * reach.y / (reach.y - d * (reach.y - reach.x));
    return reach.x + d * (reach.y - reach.x);
}

void main() {
    ivec2 here = ivec2(gl_FragCoord.xy), last = textureSize(light_seen, 0) - 1;
    float centre = distance_at(here), sum = 0.0, weights = 0.0;
    for (int y = -2; y < 2; ++y) {
        for (int x = -2; x < 2; ++x) {
            ivec2 there = clamp(here + ivec2(x, y), ivec2(0), last);
            float weight = 1.0 / (1.0 + abs(distance_at(there) - centre) * 0.02);
            sum += weight * texelFetch(light_seen, there, 0).r;
            weights += weight;
        }
    }
    light = vec4(sum / weights);
}
)";

} // namespace

AmbientPass::AmbientPass()
    : gather_(everywhere_vertex, gather_fragment), blur_(everywhere_vertex, blur_fragment),
      into_light_(gl::make_framebuffer()), into_blurred_(gl::make_framebuffer()) {}

void AmbientPass::resize(gl::Size size) {
    if (size == size_) return;
    size_ = size;
    light_ = gl::make_texture(size, GL_R8, GL_NEAREST);
    blurred_ = gl::make_texture(size, GL_R8, GL_NEAREST);
    for (const auto &[frame, texture] :
         {std::pair{&into_light_, &light_}, std::pair{&into_blurred_, &blurred_}}) {
        glBindFramebuffer(GL_FRAMEBUFFER, frame->id());
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, texture->id(), 0);
    }
}

const gl::Handle &AmbientPass::draw(const Input &input, const gl::Handle &empty_vertex_array) {
    resize(input.size);
    const bool perspective = input.camera.projection == Projection::perspective;
    const double aspect = static_cast<double>(input.depth_size.width) / input.depth_size.height;
    const double half =
        input.camera.view_height / 2 / (perspective ? length(input.camera.eye - input.camera.target) : 1);
    const auto common = [&](const gl::Program &program) {
        program.use();
        glUniform1i(program.at("scale"), input.depth_size.width / input.size.width);
        glUniform2f(program.at("reach"), static_cast<float>(input.range.near),
                    static_cast<float>(input.range.far));
        glUniform1i(program.at("perspective"), perspective);
    };
    glViewport(0, 0, input.size.width, input.size.height);
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, input.depth->id());
    common(gather_);
    glUniform1i(gather_.at("depth"), 0);
    glUniform2i(gather_.at("depth_size"), input.depth_size.width, input.depth_size.height);
    glUniform2f(gather_.at("half_view"), static_cast<float>(half * aspect), static_cast<float>(half));
    glUniform1i(gather_.at("samples"), input.samples);
    glBindFramebuffer(GL_FRAMEBUFFER, into_light_.id());
    gl::draw_everywhere(empty_vertex_array);
    common(blur_);
    glUniform1i(blur_.at("depth"), 0);
    glUniform1i(blur_.at("light_seen"), 1);
    glActiveTexture(GL_TEXTURE1);
    glBindTexture(GL_TEXTURE_2D, light_.id());
    glBindFramebuffer(GL_FRAMEBUFFER, into_blurred_.id());
    gl::draw_everywhere(empty_vertex_array);
    glActiveTexture(GL_TEXTURE0);
    return blurred_;
}

} // namespace roundlay
