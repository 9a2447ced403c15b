// The shell's shadow on the ground. Private to this room.
//
// It does not depend on the camera: it is drawn once into textures, from many places of the sun and the sky,
// and costs one quad per picture afterwards.
#pragma once

#include "exporters/picture/scene_buffers.h"
#include "kernel/geometry/plane.h"

#include <optional>

namespace roundlay {

class GroundShadow {
  public:
    GroundShadow();

    /// Forgets the shadow: the scene has changed.
    void outdate() { fresh_ = false; }

    /// Draws the shadow textures if they are out of date. Changes framebuffer and viewport.
    void update(const SceneBuffers &scene, double light_azimuth, const std::optional<Plane> &section,
                const gl::Handle &empty_vertex_array);

    /// Lays the shadow under the shell, over what is in the framebuffer. Blends; writes depth.
    void draw(const Matrix4 &clip_from_world) const;

    /// Whether there is a shadow to draw, were it of an earlier scene.
    bool is_cast() const { return cast_once_; }

    /// The scene's box and the ground round it that a shadow can fall on.
    static Box3 reach(const Box3 &scene);

  private:
    /// What one kind of light leaves dark.
    struct Layer {
        explicit Layer(gl::Size wanted);
        gl::Size size;
        gl::Handle shadow, spare, depth, into_shadow, into_spare;
    };
    using Directions = std::vector<Vec3>; ///< toward the light, each as bright as the next
    static Directions sun(double azimuth);
    static Directions sky();
    static bool same(const std::optional<Plane> &a, const std::optional<Plane> &b);

    void update_sky(const SceneBuffers &scene, const gl::Handle &empty_vertex_array) const;
    void fill_boxes(const SceneBuffers &scene) const;
    void begin_casting(const Layer &layer, const SceneBuffers &scene) const;
    template <typename Draw> void cast(const Directions &lights, Draw draw) const;
    void soften(const Layer &layer, const gl::Handle &empty_vertex_array) const;
    Matrix4 fallen_along(Vec3 light) const;

    gl::Program cast_, soften_, lay_;
    Layer sun_, sky_;
    gl::Handle quad_, boxes_, box_corners_, box_indices_;
    bool fresh_ = false, cast_once_ = false;
    double azimuth_ = 0;
    std::optional<Plane> section_;
    Vec3 origin_;     ///< world: of the stored coordinates when the shadow was cast
    Vec3 low_, high_; ///< stored coordinates of the textures' corners; z of low_ is the ground's
};

/// Toward the sun, unit.
Vec3 sun_direction(double azimuth);

} // namespace roundlay
