// The shell's shadow on the ground. Private to this room.
//
// It does not depend on the camera: it is drawn once into a texture, from many places of the sun and the sky,
// and costs one quad per picture afterwards.
#pragma once

#include "exporters/picture/scene_buffers.h"

namespace roundlay {

class GroundShadow {
  public:
    GroundShadow();

    /// Forgets the shadow: the scene has changed.
    void outdate() { fresh_ = false; }

    /// Draws the shadow texture if it is out of date. Changes framebuffer and viewport.
    void update(const SceneBuffers &scene, double light_azimuth, const gl::Handle &empty_vertex_array);

    /// Lays the shadow under the shell, over what is in the framebuffer. Blends; writes depth.
    void draw(const Matrix4 &clip_from_stored) const;

  private:
    void cast(const SceneBuffers &scene, double light_azimuth);
    void soften(const gl::Handle &empty_vertex_array);

    gl::Program cast_, soften_, lay_;
    gl::Handle shadow_, spare_, depth_, into_shadow_, into_spare_, quad_;
    bool fresh_ = false;
    double azimuth_ = 0;
    Vec3 low_, high_; ///< stored coordinates of the texture's corners, at the ground's height
};

/// Toward the sun, unit.
Vec3 sun_direction(double azimuth);

} // namespace roundlay
