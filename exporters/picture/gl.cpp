#include "exporters/picture/gl.h"

#include <stdexcept>

namespace roundlay::gl {
namespace {

Handle compiled(GLenum kind, const std::string &text, const std::string &defines) {
    Handle shader(glCreateShader(kind), [](GLuint id) { glDeleteShader(id); });
    const std::string whole = "#version 330 core\n" + defines + text;
    const char *const start = whole.c_str();
    glShaderSource(shader.id(), 1, &start, nullptr);
    glCompileShader(shader.id());
    GLint good = GL_FALSE;
    glGetShaderiv(shader.id(), GL_COMPILE_STATUS, &good);
    if (good == GL_TRUE) return shader;
    std::string words(2048, '\0');
    GLsizei used = 0;
    glGetShaderInfoLog(shader.id(), static_cast<GLsizei>(words.size()), &used, words.data());
    words.resize(static_cast<std::size_t>(used));
    throw std::runtime_error("a shader does not compile: " + words);
}

} // namespace

Handle make_buffer() {
    GLuint id = 0;
    glGenBuffers(1, &id);
    return {id, [](GLuint old) { glDeleteBuffers(1, &old); }};
}

Handle make_vertex_array() {
    GLuint id = 0;
    glGenVertexArrays(1, &id);
    return {id, [](GLuint old) { glDeleteVertexArrays(1, &old); }};
}

Handle make_framebuffer() {
    GLuint id = 0;
    glGenFramebuffers(1, &id);
    return {id, [](GLuint old) { glDeleteFramebuffers(1, &old); }};
}

Handle make_texture(Size size, GLenum format, GLenum filter) {
    GLuint id = 0;
    glGenTextures(1, &id);
    Handle texture(id, [](GLuint old) { glDeleteTextures(1, &old); });
    // What no pixels are handed over in; it has to fit the format all the same.
    const auto [parts, type] =
        format == GL_DEPTH24_STENCIL8    ? std::pair{GL_DEPTH_STENCIL, GL_UNSIGNED_INT_24_8}
        : format == GL_DEPTH_COMPONENT24 ? std::pair{GL_DEPTH_COMPONENT, GL_UNSIGNED_INT}
        : format == GL_R32UI             ? std::pair{GL_RED_INTEGER, GL_UNSIGNED_INT}
                                         : std::pair{GL_RGBA, GL_UNSIGNED_BYTE};
    glBindTexture(GL_TEXTURE_2D, id);
    glTexImage2D(GL_TEXTURE_2D, 0, static_cast<GLint>(format), size.width, size.height, 0, parts, type,
                 nullptr);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAX_LEVEL, 0);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, static_cast<GLint>(filter));
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, static_cast<GLint>(filter));
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    return texture;
}

Handle make_multisample_renderbuffer(Size size, GLenum format, int samples) {
    GLuint id = 0;
    glGenRenderbuffers(1, &id);
    Handle buffer(id, [](GLuint old) { glDeleteRenderbuffers(1, &old); });
    glBindRenderbuffer(GL_RENDERBUFFER, id);
    glRenderbufferStorageMultisample(GL_RENDERBUFFER, samples, format, size.width, size.height);
    return buffer;
}

Program::Program(const std::string &vertex, const std::string &fragment, const std::string &defines)
    : handle_(glCreateProgram(), [](GLuint id) { glDeleteProgram(id); }) {
    const Handle first = compiled(GL_VERTEX_SHADER, vertex, defines);
    const Handle second = compiled(GL_FRAGMENT_SHADER, fragment, defines);
    glAttachShader(handle_.id(), first.id());
    glAttachShader(handle_.id(), second.id());
    glLinkProgram(handle_.id());
    glDetachShader(handle_.id(), first.id());
    glDetachShader(handle_.id(), second.id());
    GLint good = GL_FALSE;
    glGetProgramiv(handle_.id(), GL_LINK_STATUS, &good);
    if (good != GL_TRUE) throw std::runtime_error("a shader program does not link");
}

void reset_state() {
    for (const GLenum what : {GL_BLEND, GL_CULL_FACE, GL_DEPTH_TEST, GL_SCISSOR_TEST, GL_STENCIL_TEST,
                              GL_POLYGON_OFFSET_FILL, GL_CLIP_DISTANCE0, GL_FRAMEBUFFER_SRGB})
        glDisable(what);
    glEnable(GL_MULTISAMPLE);
    glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDepthMask(GL_TRUE);
    glStencilMask(1);
    glDepthFunc(GL_LESS);
    glClearDepth(1);
    glClearStencil(0);
    glFrontFace(GL_CCW);
    glCullFace(GL_BACK);
    glPolygonMode(GL_FRONT_AND_BACK, GL_FILL);
    glPixelStorei(GL_PACK_ALIGNMENT, 1);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
    glBindBuffer(GL_PIXEL_PACK_BUFFER, 0);
    glBindBuffer(GL_PIXEL_UNPACK_BUFFER, 0);
}

void draw_everywhere(const Handle &empty_vertex_array) {
    glBindVertexArray(empty_vertex_array.id());
    glDrawArrays(GL_TRIANGLES, 0, 3);
}

} // namespace roundlay::gl
