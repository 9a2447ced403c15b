// One picture in the making. Private to this room.
#pragma once

#include "exporters/picture/gl.h"
#include "exporters/picture/renderer.h"

namespace roundlay {

struct PictureFrame {
    Camera camera;
    Look look;
    gl::Size size; ///< drawn pixels: the picture's times look.supersample
    int band = 0;  ///< rows of them that are drawn at once
    int below = 0; ///< rows under those that are being drawn now
    DepthRange range;
    Matrix4 clip_from_world, clip_from_stored; ///< stored: world less SceneBuffers::origin()
};

/// Vertex shader of passes over the whole target: makes one large triangle from nothing and gives `place`,
/// 0..1 across and up.
extern const char *const everywhere_vertex;

/// The same transform for points given relative to `origin`.
Matrix4 shifted(const Matrix4 &from_world, Vec3 origin);

/// Of a matrix that has one.
Matrix4 inverse(Matrix4 matrix);

void set_uniform(GLint at, const Matrix4 &matrix);
void set_uniform(GLint at, Vec3 v);
/// The plane in stored coordinates, as (normal, offset); all zero where there is none.
void set_section(GLint at, const std::optional<Plane> &section, Vec3 origin);

} // namespace roundlay
