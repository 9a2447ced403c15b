// Ambient darkening from the depth of a picture. Private to this room.
//
// M. McGuire, M. Mara, D. Luebke, "Scalable Ambient Obscurance", High Performance Graphics 2012: what stands
// in front of a point within a radius takes light from it. Two radii are used: a gap's and a room's.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/picture/gl.h"

namespace roundlay {

class AmbientPass {
  public:
    AmbientPass();

    struct Input {
        const gl::Handle *depth = nullptr; ///< texture of the rows that are drawn at once
        gl::Size depth_size, size; ///< depth_size: of all rows; size: of the result, a whole part of it
        Camera camera;
        DepthRange range;
        int samples = 12; ///< for each radius
    };

    /// Takes what the depth texture holds: rows of the whole from `below` on, `rows` of them, both as the
    /// depth counts them and whole pixels of the result. Changes framebuffer and viewport.
    void measure(const Input &input, int below, int rows, const gl::Handle &empty_vertex_array);

    /// Works out the darkening when all rows are measured. The result is a texture of input.size, red = the
    /// light that is left, 0..1.
    const gl::Handle &draw(const Input &input, const gl::Handle &empty_vertex_array);

  private:
    struct Stage {
        gl::Handle texture, into;
    };
    void resize(gl::Size size);
    void run(const gl::Handle &from, const Stage &to, const gl::Handle &empty_vertex_array);
    void set_measure(const Input &input, int below) const;
    void set_gather(const Input &input) const;

    gl::Program measure_, gather_, blur_;
    gl::Size size_;
    Stage away_, gathered_, blurred_;
};

} // namespace roundlay
