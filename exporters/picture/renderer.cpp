#include "exporters/picture/renderer.h"

#include "exporters/picture/ambient.h"
#include "exporters/picture/gl.h"
#include "exporters/picture/ground.h"
#include "exporters/picture/scene_buffers.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay {
namespace {

const char *const face_vertex = R"(
layout(location = 0) in vec3 position;
layout(location = 1) in vec3 normal;
layout(location = 2) in vec3 tint;
layout(location = 3) in uint id;
uniform mat4 clip_from_stored;
uniform vec3 sun;
uniform vec3 fill;
uniform uint hovered;
out vec3 shade;
#ifdef SECTION
uniform vec4 section;
out float section_side;
flat out vec3 flat_tint;
#endif
void main() {
    gl_Position = clip_from_stored * vec4(position, 1);
    // Squares and roots stand for the screen's curve: light adds up as light.
    vec3 base = tint * tint;
    if (id == hovered) base = mix(base, vec3(1.0, 0.83, 0.5), 0.45);
    float sky = 0.5 + 0.5 * normal.z;
    vec3 light = mix(vec3(0.26, 0.23, 0.21), vec3(0.50, 0.53, 0.58), sky);
    light += vec3(0.72, 0.68, 0.60) * max(dot(normal, sun), 0.0);
    light += vec3(0.20, 0.21, 0.23) * max(dot(normal, fill), 0.0);
    shade = sqrt(base * light);
#ifdef SECTION
    gl_ClipDistance[0] = -(dot(section.xyz, position) - section.w);
    flat_tint = sqrt(base) * 0.78;
#endif
}
)";

const char *const face_fragment = R"(
in vec3 shade;
#ifdef SECTION
uniform mat4 clip_from_stored;
uniform mat4 stored_from_clip;
uniform vec4 section;
uniform vec2 picture;
flat in vec3 flat_tint;
#endif
out vec4 colour;
void main() {
    colour = vec4(shade, 1);
#ifdef SECTION
    gl_FragDepth = gl_FragCoord.z;
    if (!gl_FrontFacing) {
        // The inside of the wood is seen only through the cut: what is drawn there lies on the section plane.
        vec2 ndc = 2.0 * gl_FragCoord.xy / picture - 1.0;
        vec4 a = stored_from_clip * vec4(ndc, -1, 1), b = stored_from_clip * vec4(ndc, 1, 1);
        vec3 from = a.xyz / a.w, to = b.xyz / b.w;
        float t = (section.w - dot(section.xyz, from)) / dot(section.xyz, to - from);
        vec4 on_plane = clip_from_stored * vec4(mix(from, to, t), 1);
        gl_FragDepth = 0.5 + 0.5 * on_plane.z / on_plane.w;
        float hatch = step(0.82, fract((gl_FragCoord.x + gl_FragCoord.y) / 9.0));
        colour = vec4(flat_tint * (1.0 - 0.28 * hatch), 1);
    }
#endif
}
)";

const char *const edge_vertex = R"(
layout(location = 0) in vec3 position;
uniform mat4 clip_from_stored;
uniform float pull;
#ifdef SECTION
uniform vec4 section;
#endif
void main() {
    gl_Position = clip_from_stored * vec4(position, 1);
    gl_Position.z -= pull * gl_Position.w;
#ifdef SECTION
    gl_ClipDistance[0] = -(dot(section.xyz, position) - section.w);
#endif
}
)";

const char *const edge_fragment = R"(
out vec4 colour;
void main() { colour = vec4(0.20, 0.14, 0.09, 0.85); }
)";

const char *const everywhere_vertex = R"(
out vec2 place;
void main() {
    vec2 corner = vec2(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0);
    place = 0.5 + 0.5 * corner;
    gl_Position = vec4(corner, 1, 1);
}
)";

const char *const background_fragment = R"(
in vec2 place;
out vec4 colour;
void main() { colour = vec4(mix(vec3(0.905, 0.898, 0.882), vec3(0.972, 0.974, 0.976), smoothstep(0.0, 0.9, place.y)), 1); }
)";

const char *const compose_fragment = R"(
uniform sampler2D picture;
uniform sampler2D ambient;
uniform int scale;          // texels of the picture per pixel, across and up
uniform int ambient_scale;  // pixels per texel of the ambient light
in vec2 place;
out vec4 colour;
void main() {
    ivec2 pixel = ivec2(gl_FragCoord.xy);
    vec3 sum = vec3(0);
    for (int y = 0; y < scale; ++y)
        for (int x = 0; x < scale; ++x) sum += texelFetch(picture, pixel * scale + ivec2(x, y), 0).rgb;
    sum /= float(scale * scale);
    float light = ambient_scale == 0 ? 1.0
                : ambient_scale == 1 ? texelFetch(ambient, pixel, 0).r
                                     : texture(ambient, place).r;
    // Shadows keep some of the wood's warmth.
    colour = vec4(sum * mix(vec3(0.10, 0.07, 0.05), vec3(1), light), 1);
}
)";

std::array<float, 16> single(const Matrix4 &m) {
    std::array<float, 16> out{};
    std::transform(m.m.begin(), m.m.end(), out.begin(), [](double v) { return static_cast<float>(v); });
    return out;
}

void set(GLint at, const Matrix4 &m) {
    glUniformMatrix4fv(at, 1, GL_FALSE, single(m).data());
}

void set(GLint at, Vec3 v) {
    glUniform3f(at, static_cast<float>(v.x), static_cast<float>(v.y), static_cast<float>(v.z));
}

Matrix4 shifted(const Matrix4 &from_world, Vec3 origin) {
    Matrix4 m = from_world;
    const auto moved = transformed(from_world, origin);
    for (int row = 0; row < 4; ++row)
        m(row, 3) = moved[static_cast<std::size_t>(row)];
    return m;
}

/// Gauss-Jordan with the largest pivot of a column.
Matrix4 inverse(Matrix4 a) {
    Matrix4 out;
    for (int i = 0; i < 4; ++i)
        out(i, i) = 1;
    for (int column = 0; column < 4; ++column) {
        int pivot = column;
        for (int row = column + 1; row < 4; ++row)
            if (std::abs(a(row, column)) > std::abs(a(pivot, column))) pivot = row;
        for (int k = 0; k < 4; ++k) {
            std::swap(a(column, k), a(pivot, k));
            std::swap(out(column, k), out(pivot, k));
        }
        const double by = 1 / a(column, column);
        for (int k = 0; k < 4; ++k) {
            a(column, k) *= by;
            out(column, k) *= by;
        }
        for (int row = 0; row < 4; ++row) {
            if (row == column) continue;
            const double times = a(row, column);
            for (int k = 0; k < 4; ++k) {
                a(row, k) -= times * a(column, k);
                out(row, k) -= times * out(column, k);
            }
        }
    }
    return out;
}

/// The targets a picture goes through, made anew when its size changes.
struct Targets {
    gl::Size size;
    int samples = -1;
    gl::Handle colour_many, depth_many, into_many; ///< several samples per texel
    gl::Handle colour, depth, into_one;

    void resize(gl::Size wanted, int wanted_samples) {
        if (wanted == size && wanted_samples == samples) return;
        size = wanted;
        samples = wanted_samples;
        colour = gl::make_texture(size, GL_RGBA8, GL_NEAREST);
        depth = gl::make_texture(size, GL_DEPTH_COMPONENT24, GL_NEAREST);
        into_one = gl::make_framebuffer();
        glBindFramebuffer(GL_FRAMEBUFFER, into_one.id());
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_TEXTURE_2D, colour.id(), 0);
        glFramebufferTexture2D(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_TEXTURE_2D, depth.id(), 0);
        if (samples == 0) return;
        colour_many = gl::make_multisample_renderbuffer(size, GL_RGBA8, samples);
        depth_many = gl::make_multisample_renderbuffer(size, GL_DEPTH_COMPONENT24, samples);
        into_many = gl::make_framebuffer();
        glBindFramebuffer(GL_FRAMEBUFFER, into_many.id());
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_COLOR_ATTACHMENT0, GL_RENDERBUFFER, colour_many.id());
        glFramebufferRenderbuffer(GL_FRAMEBUFFER, GL_DEPTH_ATTACHMENT, GL_RENDERBUFFER, depth_many.id());
        if (glCheckFramebufferStatus(GL_FRAMEBUFFER) != GL_FRAMEBUFFER_COMPLETE)
            throw std::runtime_error("the graphics driver refuses a picture of this size");
    }

    void bind() const { glBindFramebuffer(GL_FRAMEBUFFER, samples == 0 ? into_one.id() : into_many.id()); }

    void resolve() const {
        if (samples == 0) return;
        glBindFramebuffer(GL_READ_FRAMEBUFFER, into_many.id());
        glBindFramebuffer(GL_DRAW_FRAMEBUFFER, into_one.id());
        glBlitFramebuffer(0, 0, size.width, size.height, 0, 0, size.width, size.height,
                          GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT, GL_NEAREST);
    }
};

} // namespace

struct Renderer::Parts {
    SceneBuffers scene;
    GroundShadow ground;
    AmbientPass ambient;
    Targets targets;
    gl::Handle nothing = gl::make_vertex_array();
    gl::Program faces{face_vertex, face_fragment}, cut_faces{face_vertex, face_fragment, "#define SECTION\n"},
        edges{edge_vertex, edge_fragment}, cut_edges{edge_vertex, edge_fragment, "#define SECTION\n"},
        background{everywhere_vertex, background_fragment}, compose{everywhere_vertex, compose_fragment};

    struct Frame {
        Camera camera;
        const Look &look;
        gl::Size size;
        DepthRange range;
        Matrix4 clip_from_world, clip_from_stored;
    };

    void draw_background() const {
        background.use();
        gl::draw_everywhere(nothing);
    }

    void section_uniforms(const gl::Program &program, const Frame &frame) const {
        const Plane &plane = *frame.look.section;
        glUniform4f(program.at("section"), static_cast<float>(plane.normal.x),
                    static_cast<float>(plane.normal.y), static_cast<float>(plane.normal.z),
                    static_cast<float>(plane.offset - dot(plane.normal, scene.origin())));
        set(program.at("stored_from_clip"), inverse(frame.clip_from_stored));
        glUniform2f(program.at("picture"), static_cast<float>(frame.size.width),
                    static_cast<float>(frame.size.height));
    }

    void draw_faces(const Frame &frame, const DrawList &list) const {
        const bool cut = frame.look.section.has_value();
        const gl::Program &program = cut ? cut_faces : faces;
        program.use();
        set(program.at("clip_from_stored"), frame.clip_from_stored);
        set(program.at("sun"), sun_direction(frame.look.light_azimuth));
        set(program.at("fill"), unit(Vec3{std::cos(frame.look.light_azimuth + 2.0),
                                          std::sin(frame.look.light_azimuth + 2.0), 0.3}));
        glUniform1ui(program.at("hovered"), static_cast<GLuint>(frame.look.hovered));
        if (cut)
            section_uniforms(program, frame);
        else
            glEnable(GL_CULL_FACE);
        // Faces step back by their own slant, so that edges on them are never half covered.
        glEnable(GL_POLYGON_OFFSET_FILL);
        glPolygonOffset(1.25f, 2.0f);
        scene.bind_faces();
        list.draw(GL_TRIANGLES);
        glDisable(GL_POLYGON_OFFSET_FILL);
        glDisable(GL_CULL_FACE);
    }

    void draw_edges(const Frame &frame, const DrawList &list) const {
        const bool cut = frame.look.section.has_value();
        const gl::Program &program = cut ? cut_edges : edges;
        program.use();
        set(program.at("clip_from_stored"), frame.clip_from_stored);
        glUniform1f(program.at("pull"), 2e-6f);
        if (cut) section_uniforms(program, frame);
        glEnable(GL_BLEND);
        glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
        glDepthMask(GL_FALSE);
        glLineWidth(static_cast<float>(frame.look.edge_width * frame.look.supersample));
        scene.bind_edges();
        list.draw(GL_LINES);
        glLineWidth(1);
        glDepthMask(GL_TRUE);
        glDisable(GL_BLEND);
    }

    void draw_scene(const Frame &frame) const {
        const DrawLists lists =
            scene.visible_in(frame.clip_from_world, frame.camera, frame.size.height, frame.look.detail);
        glEnable(GL_DEPTH_TEST);
        if (frame.look.section) glEnable(GL_CLIP_DISTANCE0);
        draw_faces(frame, lists.faces);
        if (frame.look.ground && frame.camera.eye.z > frame.camera.target.z) {
            glDisable(GL_CLIP_DISTANCE0);
            ground.draw(frame.clip_from_stored);
            if (frame.look.section) glEnable(GL_CLIP_DISTANCE0);
        }
        if (frame.look.edges) draw_edges(frame, lists.edges);
        glDisable(GL_CLIP_DISTANCE0);
        glDisable(GL_DEPTH_TEST);
    }

    void draw_ambient_and_compose(const Frame &frame, gl::Size out, unsigned target) {
        const bool with_ambient = frame.look.ambient != Ambient::none && !scene.empty();
        const int part = frame.look.ambient == Ambient::half && frame.look.supersample == 1 ? 2 : 1;
        compose.use();
        glActiveTexture(GL_TEXTURE1);
        if (with_ambient) {
            const gl::Size ambient_size{out.width / part, out.height / part};
            const gl::Handle &light =
                ambient.draw({&targets.depth, frame.size, ambient_size, frame.camera, frame.range,
                              frame.look.ambient == Ambient::half ? 6 : 16},
                             nothing);
            glActiveTexture(GL_TEXTURE1);
            glBindTexture(GL_TEXTURE_2D, light.id());
        }
        glActiveTexture(GL_TEXTURE0);
        glBindTexture(GL_TEXTURE_2D, targets.colour.id());
        compose.use();
        glUniform1i(compose.at("picture"), 0);
        glUniform1i(compose.at("ambient"), 1);
        glUniform1i(compose.at("scale"), frame.look.supersample);
        glUniform1i(compose.at("ambient_scale"), with_ambient ? part : 0);
        glBindFramebuffer(GL_FRAMEBUFFER, target);
        glViewport(0, 0, out.width, out.height);
        gl::draw_everywhere(nothing);
    }

    void draw(Frame frame, gl::Size out, unsigned target) {
        if (frame.look.ground && !scene.empty()) ground.update(scene, frame.look.light_azimuth, nothing);
        GLint most = 0;
        glGetIntegerv(GL_MAX_SAMPLES, &most);
        targets.resize(frame.size, std::min(frame.look.samples, most));
        targets.bind();
        glViewport(0, 0, frame.size.width, frame.size.height);
        glClear(GL_DEPTH_BUFFER_BIT);
        draw_background();
        if (!scene.empty()) draw_scene(frame);
        targets.resolve();
        draw_ambient_and_compose(frame, out, target);
        glBindVertexArray(0);
        glUseProgram(0);
    }
};

Renderer::Renderer(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Renderer::~Renderer() = default;

Drawn<std::unique_ptr<Renderer>> Renderer::create() {
    constexpr int least_version = 33;
    if (epoxy_gl_version() < least_version)
        return PictureFailure{
            "No picture can be drawn: the graphics driver offers less than OpenGL 3.3; update it or "
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
    const int times = std::clamp(look.supersample, 1, 2);
    const double aspect = static_cast<double>(width) / height;
    const DepthRange range = depth_range(camera, parts_->scene.box());
    const Matrix4 clip = projection_matrix(camera, aspect, range) * view_matrix(camera);
    parts_->draw(
        {camera, look, {width * times, height * times}, range, clip, shifted(clip, parts_->scene.origin())},
        {width, height}, target);
}

std::string Renderer::driver() const {
    return reinterpret_cast<const char *>(glGetString(GL_RENDERER));
}

} // namespace roundlay
