// Owners of OpenGL objects. Private to this room; all need a current context, also to be destroyed.
#pragma once

#include <epoxy/gl.h>

#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace roundlay::gl {

/// One object of the library, released once.
class Handle {
  public:
    using Release = void (*)(GLuint);
    Handle() = default;
    Handle(GLuint id, Release release) : id_(id), release_(release) {}
    Handle(Handle &&other) noexcept : id_(std::exchange(other.id_, 0)), release_(other.release_) {}
    Handle &operator=(Handle &&other) noexcept {
        std::swap(id_, other.id_);
        std::swap(release_, other.release_);
        return *this;
    }
    ~Handle() {
        if (id_ != 0) release_(id_);
    }
    GLuint id() const { return id_; }
    explicit operator bool() const { return id_ != 0; }

  private:
    GLuint id_ = 0;
    Release release_ = nullptr;
};

Handle make_buffer();
Handle make_vertex_array();
Handle make_framebuffer();

struct Size {
    int width = 0, height = 0;
    bool operator==(const Size &) const = default;
};

/// A texture with one level, no wrapping. `format` is sized, e.g. GL_RGBA8.
Handle make_texture(Size size, GLenum format, GLenum filter);
Handle make_multisample_renderbuffer(Size size, GLenum format, int samples);

/// A program of a vertex and a fragment shader. `defines` goes behind the version line of both. Throws
/// std::runtime_error with the driver's words when they do not compile.
class Program {
  public:
    Program() = default;
    Program(const std::string &vertex, const std::string &fragment, const std::string &defines = "");

    void use() const { glUseProgram(handle_.id()); }
    GLint at(const char *uniform) const { return glGetUniformLocation(handle_.id(), uniform); }

  private:
    Handle handle_;
};

/// Brings what others may have changed in the context back to how a fresh one has it.
void reset_state();

/// Draws one triangle that covers the whole target. The vertex array is empty: shaders number the corners.
void draw_everywhere(const Handle &empty_vertex_array);

/// Puts bytes into a buffer, replacing what was there.
template <typename T> void fill(GLenum target, const Handle &buffer, const std::vector<T> &data, GLenum use) {
    glBindBuffer(target, buffer.id());
    glBufferData(target, static_cast<GLsizeiptr>(data.size() * sizeof(T)), data.data(), use);
}

} // namespace roundlay::gl
