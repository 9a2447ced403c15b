// A scene in the graphics library's memory. Private to this room.
//
// Every piece is laid down in world coordinates, so that a whole picture is one draw call whatever the number
// of pieces: on a software driver calls cost more than the memory.
#pragma once

#include "exporters/picture/camera.h"
#include "exporters/picture/gl.h"
#include "exporters/picture/scene.h"

#include <cstdint>
#include <vector>

namespace roundlay {

/// Ranges of an index buffer to draw in one call.
struct DrawList {
    std::vector<GLsizei> counts;
    std::vector<const void *> offsets;
    void add(std::uint32_t first, std::uint32_t count);
    void draw(GLenum primitive) const;
};

struct DrawLists {
    DrawList faces, edges;
};

class SceneBuffers {
  public:
    SceneBuffers();

    /// True when anything that casts a shadow has changed.
    bool show(const Scene &scene);

    /// World coordinates are stored from here, so that single precision is enough.
    Vec3 origin() const { return origin_; }
    const Box3 &box() const { return box_; } ///< of what is visible
    const Scene &scene() const { return scene_; }
    bool empty() const { return visible_ == 0; }

    /// What of the scene lies inside the clip volume, from front to back, as fine as `detail` asks.
    DrawLists visible_in(const Matrix4 &clip_from_world, const Camera &camera, int picture_height,
                         double detail) const;
    /// Everything visible without bores: for shadows.
    DrawList coarse() const;

    void bind_faces() const { glBindVertexArray(faces_.id()); }
    void bind_edges() const { glBindVertexArray(edges_.id()); }

  private:
    struct Room {
        std::uint32_t first = 0;
        std::uint32_t size = 0; ///< more than a piece needs: it may grow when it is edited
    };
    struct Span {
        Room room;
        std::uint32_t count = 0;
    };
    struct Placed {
        std::array<Span, 3> faces, edges; ///< in the index buffers, by level
        Room corners, points;             ///< in the vertex buffers, all levels
        Vec3 middle, half;                ///< world box
    };

    const SceneModel &model_of(std::size_t i) const;
    bool has_room_for(const Scene &scene) const;
    static bool outside(const Placed &placed, const Matrix4 &clip_from_world);
    void upload_all(const Scene &scene);
    void make_room();
    void index(std::size_t i);
    void place(std::size_t i);
    void paint(std::size_t i);
    void measure();
    std::size_t level_for(std::size_t i, double pixel, double detail) const;

    Scene scene_;
    std::vector<Placed> placed_;
    Vec3 origin_;
    Box3 box_;
    std::size_t visible_ = 0;
    gl::Handle corners_, looks_, points_, face_indices_, edge_indices_;
    gl::Handle faces_, edges_;
};

} // namespace roundlay
