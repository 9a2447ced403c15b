// Draws the pieces themselves: faces, edges, and which piece lies under a pixel. Private to this room.
#pragma once

#include "exporters/picture/frame.h"
#include "exporters/picture/scene_buffers.h"

#include <optional>

namespace roundlay {

class WoodPass {
  public:
    WoodPass();

    /// Into the bound framebuffer, over what is nearer only.
    void draw_faces(const PictureFrame &frame, const SceneBuffers &scene, const DrawList &faces) const;
    void draw_edges(const PictureFrame &frame, const SceneBuffers &scene, const DrawList &edges) const;

    /// Draws the one pixel into a target of its own. Changes framebuffer and viewport.
    std::optional<Picked> pick(const PictureFrame &frame, const SceneBuffers &scene, int x, int y) const;

  private:
    const gl::Program &program(const gl::Program &whole, const gl::Program &cut, const PictureFrame &frame,
                               const SceneBuffers &scene) const;

    void draw_insides(const DrawList &faces) const;
    void draw_outline(const PictureFrame &frame, const SceneBuffers &scene) const;
    void seal(const PictureFrame &frame, const SceneBuffers &scene) const;

    gl::Program faces_, cut_faces_, edges_, cut_edges_, ids_, cut_ids_, seal_;
    gl::Handle nothing_, outline_, outline_points_;
    gl::Handle id_, id_depth_, into_id_;
};

} // namespace roundlay
