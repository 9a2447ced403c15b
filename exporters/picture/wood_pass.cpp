#include "exporters/picture/wood_pass.h"

#include "exporters/picture/ground.h"
#include "exporters/picture/section.h"

#include <limits>

namespace roundlay {
namespace {

const char *const face_vertex = R"(
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec4 tint; // alpha, of 255: 128 where it is end grain, and 64 where it is marked
layout(location = 3) in uint id;
uniform mat4 clip_from_stored;
uniform vec3 eye, sight;   // stored coordinates; unit
uniform bool perspective;
uniform float pixel;       // mm that a pixel shows: everywhere, or at distance 1 in perspective
uniform float step_back;   // pixels
uniform vec3 sun;
uniform vec3 fill;
uniform uint hovered;
#ifdef PICK
flat out uint piece;
#else
out vec3 shade;
flat out float marked;
#endif
#ifdef SECTION
uniform vec4 section;
flat out vec3 flat_tint;
#endif
// Faces step back by their own slant, so that edges on them are never half covered. The library's own offset
// goes by single triangles and leaves marks where one is a sliver.
vec3 stepped_back() {
    vec3 ray = perspective ? normalize(position - eye) : sight;
    float size = perspective ? pixel * dot(position - eye, sight) : pixel;
    float facing = max(abs(dot(normal, ray)), 0.06);
    return position + step_back * size * (0.3 + sqrt(1.0 - min(facing * facing, 1.0)) / facing) * ray;
}

void main() {
    gl_Position = clip_from_stored * vec4(stepped_back(), 1);
    // Squares and roots stand for the screen's curve: light adds up as light.
    float end_grain = step(0.4, tint.a);
    vec3 base = tint.rgb * tint.rgb * mix(vec3(1), vec3(0.74, 0.64, 0.58), end_grain);
    if (id == hovered) base = mix(base, vec3(1.0, 0.83, 0.5), 0.45);
    float sky = 0.5 + 0.5 * normal.z;
    vec3 light = mix(vec3(0.26, 0.23, 0.21), vec3(0.50, 0.53, 0.58), sky);
    light += vec3(0.72, 0.68, 0.60) * max(dot(normal, sun), 0.0);
    light += vec3(0.20, 0.21, 0.23) * max(dot(normal, fill), 0.0);
#ifdef PICK
    piece = id;
#else
    shade = sqrt(base * light);
    marked = step(0.15, tint.a - 0.5 * end_grain);
#endif
#ifdef SECTION
    gl_ClipDistance[0] = section.w - dot(section.xyz, position);
    flat_tint = tint.rgb * 0.80;
#endif
}
)";

const char *const face_fragment = R"(
#ifdef PICK
flat in uint piece;
out uint found;
#else
in vec3 shade;
flat in float marked;
uniform float stripe_pixels;
uniform float below; // rows of the picture under what is drawn now
out vec4 colour;
#endif
#ifdef SECTION
uniform float hatch_pixels;
flat in vec3 flat_tint;
#endif
void main() {
#ifdef PICK
    found = piece;
#else
    float stripe = step(0.7, fract((gl_FragCoord.x - (gl_FragCoord.y + below)) / stripe_pixels));
    colour = vec4(mix(shade, 0.35 * shade, marked * stripe), 1);
#ifdef SECTION
    // The inside of the wood is seen only through the cut, so it is coloured as the cut.
    float hatch = step(0.85, fract((gl_FragCoord.x + (gl_FragCoord.y + below)) / hatch_pixels));
    if (!gl_FrontFacing) colour = vec4(flat_tint * (1.0 - 0.3 * hatch), 1);
#endif
#endif
}
)";

const char *const edge_vertex = R"(
layout(location = 0) in vec3 position;
uniform mat4 clip_from_stored;
#ifdef SECTION
uniform vec4 section;
#endif
void main() {
    gl_Position = clip_from_stored * vec4(position, 1);
#ifdef SECTION
    gl_ClipDistance[0] = section.w - dot(section.xyz, position);
#endif
}
)";

const char *const edge_fragment = R"(
out vec4 colour;
void main() { colour = vec4(0.20, 0.14, 0.09, 0.85); }
)";

const char *const seal_vertex = R"(
uniform mat4 clip_from_stored;
uniform vec3 middle, along, across;
void main() {
    vec2 corner = vec2(gl_VertexID & 1, gl_VertexID >> 1) * 2.0 - 1.0;
    gl_Position = clip_from_stored * vec4(middle + corner.x * along + corner.y * across, 1);
}
)";

const char *const seal_fragment = R"(
void main() {}
)";

constexpr GLuint no_piece = std::numeric_limits<GLuint>::max();

/// The picture's one pixel, spread over the whole target.
Matrix4 through_pixel(Matrix4 clip, gl::Size size, int x, int y) {
    const double across = 2 * (x + 0.5) / size.width - 1, up = 1 - 2 * (y + 0.5) / size.height;
    for (int column = 0; column < 4; ++column) {
        clip(0, column) = size.width * (clip(0, column) - across * clip(3, column));
        clip(1, column) = size.height * (clip(1, column) - up * clip(3, column));
    }
    return clip;
}

Vec3 world_point(const PictureFrame &frame, const SceneBuffers &scene, float depth) {
    const auto p = transformed(inverse(frame.clip_from_stored), {0, 0, 2.0 * depth - 1});
    return scene.origin() + (1 / p[3]) * Vec3{p[0], p[1], p[2]};
}

} // namespace

WoodPass::WoodPass()
    : faces_(face_vertex, face_fragment), cut_faces_(face_vertex, face_fragment, "#define SECTION\n"),
      edges_(edge_vertex, edge_fragment), cut_edges_(edge_vertex, edge_fragment, "#define SECTION\n"),
      ids_(face_vertex, face_fragment, "#define PICK\n"),
      cut_ids_(face_vertex, face_fragment, "#define PICK\n#define SECTION\n"),
      seal_(seal_vertex, seal_fragment), nothing_(gl::make_vertex_array()), outline_(gl::make_vertex_array()),
      outline_points_(gl::make_buffer()), id_(gl::make_texture({1, 1}, GL_R32UI, GL_NEAREST)),
      id_depth_(gl::make_texture({1, 1}, GL_DEPTH_COMPONENT24, GL_NEAREST)),
      into_id_(gl::make_framebuffer()) {
    glBindFramebuffer(GL_FRAMEBUFFER, into_id_.id());
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, id_.id(), 0);
    glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, id_depth_.id(), 0);
}

const gl::Program &WoodPass::program(const gl::Program &whole, const gl::Program &cut,
                                     const PictureFrame &frame, const SceneBuffers &scene) const {
    const gl::Program &used = frame.look.section ? cut : whole;
    used.use();
    set_uniform(used.at("clip_from_stored"), frame.clip_from_stored);
    if (!frame.look.section) return used;
    constexpr double hatch = 9; // pixels of the picture from line to line
    set_section(used.at("section"), frame.look.section, scene.origin());
    glUniform1f(used.at("hatch_pixels"), static_cast<float>(hatch * frame.look.supersample));
    return used;
}

void WoodPass::draw_faces(const PictureFrame &frame, const SceneBuffers &scene, const DrawList &faces) const {
    constexpr double stripe = 8;      // pixels of a screen from one to the next
    constexpr double fill_turn = 2.0; // radians from the sun: no two sides of a wall are lit alike
    const double azimuth = frame.look.light_azimuth;
    const gl::Program &used = program(faces_, cut_faces_, frame, scene);
    const bool perspective = frame.camera.projection == Projection::perspective;
    const Vec3 line = frame.camera.target - frame.camera.eye;
    set_uniform(used.at("eye"), frame.camera.eye - scene.origin());
    set_uniform(used.at("sight"), unit(line));
    glUniform1i(used.at("perspective"), perspective);
    glUniform1f(used.at("pixel"), static_cast<float>(frame.camera.view_height / frame.size.height /
                                                     (perspective ? length(line) : 1)));
    glUniform1f(used.at("step_back"), 1.0f);
    set_uniform(used.at("sun"), sun_direction(azimuth));
    set_uniform(used.at("fill"), unit({std::cos(azimuth + fill_turn), std::sin(azimuth + fill_turn), 0.3}));
    glUniform1ui(used.at("hovered"), static_cast<GLuint>(frame.look.hovered));
    glUniform1f(used.at("below"), static_cast<float>(frame.below));
    glUniform1f(used.at("stripe_pixels"),
                static_cast<float>(stripe * frame.look.edge_width * frame.look.supersample));
    glEnable(GL_CULL_FACE);
    scene.bind_faces();
    if (frame.look.section) draw_insides(faces);
    glUniform1f(used.at("step_back"), 1.25f);
    faces.draw(GL_TRIANGLES);
    glDisable(GL_CULL_FACE);
    glDisable(GL_CLIP_DISTANCE0);
    if (frame.look.section) seal(frame, scene);
}

/// Marks in the stencil where the inside of the wood is what is seen. Where two pieces touch, the inside of
/// the nearer one lies on the outside of the other: insides step back less, so that they win.
void WoodPass::draw_insides(const DrawList &faces) const {
    glEnable(GL_CLIP_DISTANCE0);
    glEnable(GL_STENCIL_TEST);
    glStencilFuncSeparate(GL_FRONT, GL_ALWAYS, 0, 1);
    glStencilFuncSeparate(GL_BACK, GL_ALWAYS, 1, 1);
    glStencilOp(GL_KEEP, GL_KEEP, GL_REPLACE);
    glCullFace(GL_FRONT);
    faces.draw(GL_TRIANGLES);
    glCullFace(GL_BACK);
}

/// Brings the marked places forward onto the section plane, so that nothing inside the wood shows through and
/// light falls on the cut as on any face.
void WoodPass::seal(const PictureFrame &frame, const SceneBuffers &scene) const {
    const Plane &plane = *frame.look.section;
    const Box3 &box = scene.box();
    const Vec3 centre = 0.5 * (box.low + box.high);
    const Vec3 helper = std::abs(plane.normal.z) < 0.5 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
    const double reach = length(box.high - box.low);
    const Vec3 along = unit(cross(plane.normal, helper));
    seal_.use();
    set_uniform(seal_.at("clip_from_stored"), frame.clip_from_stored);
    set_uniform(seal_.at("middle"), centre - plane.distance(centre) * plane.normal - scene.origin());
    set_uniform(seal_.at("along"), reach * along);
    set_uniform(seal_.at("across"), reach * cross(plane.normal, along));
    glStencilFunc(GL_EQUAL, 1, 1);
    glStencilOp(GL_KEEP, GL_KEEP, GL_KEEP);
    glDepthFunc(GL_ALWAYS);
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1.25f, 2.0f);
    glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    glBindVertexArray(nothing_.id());
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDisable(GL_POLYGON_OFFSET_FILL);
    glDepthFunc(GL_LESS);
    glDisable(GL_STENCIL_TEST);
}

void WoodPass::draw_edges(const PictureFrame &frame, const SceneBuffers &scene, const DrawList &edges) const {
    program(edges_, cut_edges_, frame, scene);
    if (frame.look.section) glEnable(GL_CLIP_DISTANCE0);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glDepthMask(GL_FALSE);
    glLineWidth(static_cast<float>(frame.look.edge_width * frame.look.supersample));
    scene.bind_edges();
    edges.draw(GL_LINES);
    if (frame.look.section) draw_outline(frame, scene);
    glLineWidth(1);
    glDepthMask(GL_TRUE);
    glDisable(GL_BLEND);
    glDisable(GL_CLIP_DISTANCE0);
}

void WoodPass::draw_outline(const PictureFrame &frame, const SceneBuffers &scene) const {
    std::vector<std::array<float, 3>> points;
    for (const auto &line : section_outline(scene.scene(), *frame.look.section))
        for (const Vec3 end : line) {
            const Vec3 p = end - scene.origin();
            points.push_back({static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z)});
        }
    program(edges_, edges_, frame, scene);
    glDisable(GL_CLIP_DISTANCE0);
    glBindVertexArray(outline_.id());
    gl::fill(GL_ARRAY_BUFFER, outline_points_, points, GL_STREAM_DRAW);
    glEnableVertexAttribArray(0);
    glVertexAttribPointer(0, 3, GL_FLOAT, GL_FALSE, 0, nullptr);
    glDrawArrays(GL_LINES, 0, static_cast<GLsizei>(points.size()));
}

std::optional<Picked> WoodPass::pick(const PictureFrame &frame, const SceneBuffers &scene, int x,
                                     int y) const {
    PictureFrame pixel = frame;
    pixel.clip_from_world = through_pixel(frame.clip_from_world, frame.size, x, y);
    pixel.clip_from_stored = through_pixel(frame.clip_from_stored, frame.size, x, y);
    pixel.size = {1, 1};
    const DrawLists lists =
        scene.visible_in(pixel.clip_from_world, frame.camera, frame.size.height, frame.look.detail);
    glBindFramebuffer(GL_FRAMEBUFFER, into_id_.id());
    glViewport(0, 0, 1, 1);
    const float farthest = 1;
    glClearBufferuiv(GL_COLOR, 0, &no_piece);
    glClearBufferfv(GL_DEPTH, 0, &farthest);
    program(ids_, cut_ids_, pixel, scene);
    glEnable(GL_DEPTH_TEST);
    if (frame.look.section) glEnable(GL_CLIP_DISTANCE0);
    scene.bind_faces();
    lists.faces.draw(GL_TRIANGLES);
    glDisable(GL_CLIP_DISTANCE0);
    glDisable(GL_DEPTH_TEST);
    GLuint id = no_piece;
    float depth = farthest;
    glReadPixels(0, 0, 1, 1, GL_RED_INTEGER, GL_UNSIGNED_INT, &id);
    glReadPixels(0, 0, 1, 1, GL_DEPTH_COMPONENT, GL_FLOAT, &depth);
    if (id == no_piece) return std::nullopt;
    return Picked{static_cast<int>(id), world_point(pixel, scene, depth)};
}

} // namespace roundlay
