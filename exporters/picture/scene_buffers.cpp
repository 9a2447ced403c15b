#include "exporters/picture/scene_buffers.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace roundlay {
namespace {

/// A corner in the world.
struct Corner {
    std::array<float, 3> position;
    std::array<std::int8_t, 4> normal;
};

/// What a corner looks like: apart from its place, so that colours change without moving anything.
struct Paint {
    std::array<std::uint8_t, 4> tint; ///< colour, and kind_of()
    std::uint32_t id;
};

/// Bit 7: end grain; bit 6: marked.
std::uint8_t kind_of(bool end_grain, bool marked) {
    return static_cast<std::uint8_t>((end_grain ? 128 : 0) + (marked ? 64 : 0));
}

using Point = std::array<float, 3>;

Point stored(Vec3 p) {
    return {static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z)};
}

Vec3 vec(const Point &p) {
    return {p[0], p[1], p[2]};
}

std::int8_t byte(double unit_value) {
    return static_cast<std::int8_t>(std::lround(127 * std::clamp(unit_value, -1.0, 1.0)));
}

bool same_frame(const Frame &a, const Frame &b) {
    return a.origin == b.origin && a.x == b.x && a.y == b.y && a.z == b.z;
}

const SceneModel &model_in(const Scene &scene, std::size_t i) {
    return *scene.models[scene.instances[i].model];
}

/// Corners or points of all levels together.
template <typename T> std::size_t count_in(const SceneModel &model, std::vector<T> ShadedMesh::*part) {
    std::size_t count = 0;
    for (const ShadedMesh &level : model.levels)
        count += (level.*part).size();
    return count;
}

/// Indices are written through GL_COPY_WRITE_BUFFER: the binding for elements belongs to a vertex array.
template <typename T>
void replace(GLenum through, const gl::Handle &buffer, std::uint32_t first, const std::vector<T> &data) {
    glBindBuffer(through, buffer.id());
    glBufferSubData(through, static_cast<GLintptr>(first * sizeof(T)),
                    static_cast<GLsizeiptr>(data.size() * sizeof(T)), data.data());
}

void reserve(GLenum through, const gl::Handle &buffer, std::size_t bytes) {
    glBindBuffer(through, buffer.id());
    glBufferData(through, static_cast<GLsizeiptr>(bytes), nullptr, GL_STATIC_DRAW);
}

void attribute(GLuint at, GLint size, GLenum type, GLboolean normalised, std::size_t stride,
               std::size_t offset) {
    glEnableVertexAttribArray(at);
    glVertexAttribPointer(at, size, type, normalised, static_cast<GLsizei>(stride),
                          reinterpret_cast<const void *>(offset));
}

} // namespace

void DrawList::add(std::uint32_t first, std::uint32_t count) {
    if (count == 0) return;
    counts.push_back(static_cast<GLsizei>(count));
    offsets.push_back(reinterpret_cast<const void *>(std::size_t{first} * sizeof(std::uint32_t)));
}

void DrawList::draw(GLenum primitive) const {
    if (counts.empty()) return;
    glMultiDrawElements(primitive, counts.data(), GL_UNSIGNED_INT, offsets.data(),
                        static_cast<GLsizei>(counts.size()));
}

SceneBuffers::SceneBuffers()
    : corners_(gl::make_buffer()), looks_(gl::make_buffer()), points_(gl::make_buffer()),
      face_indices_(gl::make_buffer()), edge_indices_(gl::make_buffer()), faces_(gl::make_vertex_array()),
      edges_(gl::make_vertex_array()) {
    glBindVertexArray(faces_.id());
    glBindBuffer(GL_ARRAY_BUFFER, corners_.id());
    attribute(0, 3, GL_FLOAT, GL_FALSE, sizeof(Corner), offsetof(Corner, position));
    attribute(1, 4, GL_BYTE, GL_TRUE, sizeof(Corner), offsetof(Corner, normal));
    glBindBuffer(GL_ARRAY_BUFFER, looks_.id());
    attribute(2, 4, GL_UNSIGNED_BYTE, GL_TRUE, sizeof(Paint), offsetof(Paint, tint));
    glEnableVertexAttribArray(3);
    glVertexAttribIPointer(3, 1, GL_UNSIGNED_INT, sizeof(Paint),
                           reinterpret_cast<const void *>(offsetof(Paint, id)));
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, face_indices_.id());
    glBindVertexArray(edges_.id());
    glBindBuffer(GL_ARRAY_BUFFER, points_.id());
    attribute(0, 3, GL_FLOAT, GL_FALSE, sizeof(Point), 0);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, edge_indices_.id());
    glBindVertexArray(0);
}

const SceneModel &SceneBuffers::model_of(std::size_t i) const {
    return model_in(scene_, i);
}

/// Whether every piece that has another model than before fits where that one is.
bool SceneBuffers::has_room_for(const Scene &scene) const {
    if (placed_.empty() || scene.instances.size() != placed_.size()) return false;
    for (std::size_t i = 0; i < placed_.size(); ++i) {
        const SceneModel &model = model_in(scene, i);
        if (&model == &model_of(i)) continue;
        const Placed &p = placed_[i];
        if (count_in(model, &ShadedMesh::corners) > p.corners.size ||
            count_in(model, &ShadedMesh::points) > p.points.size)
            return false;
        for (std::size_t level = 0; level < model.levels.size(); ++level)
            if (model.levels[level].triangles.size() > p.faces[level].room.size ||
                model.levels[level].edges.size() > p.edges[level].room.size)
                return false;
    }
    return true;
}

bool SceneBuffers::show(const Scene &scene) {
    if (!has_room_for(scene)) {
        upload_all(scene);
        return true;
    }
    bool moved = false;
    const Scene before = std::exchange(scene_, scene);
    for (std::size_t i = 0; i < placed_.size(); ++i) {
        const Instance &was = before.instances[i], &now = scene_.instances[i];
        const bool remade = &model_in(before, i) != &model_of(i);
        const bool stands_elsewhere = remade || !same_frame(was.frame, now.frame);
        if (remade) index(i);
        if (stands_elsewhere) place(i);
        if (remade || was.colour != now.colour || was.id != now.id || was.marked != now.marked) paint(i);
        moved = moved || stands_elsewhere || was.visible != now.visible;
    }
    if (moved) measure();
    return moved;
}

void SceneBuffers::upload_all(const Scene &scene) {
    scene_ = scene;
    const Box3 all = bounds(scene);
    origin_ = 0.5 * (all.low + all.high);
    make_room();
    for (std::size_t i = 0; i < placed_.size(); ++i) {
        index(i);
        place(i);
        paint(i);
    }
    measure();
}

/// Lays all pieces one after another, each with some room to grow, and remembers where each begins.
void SceneBuffers::make_room() {
    placed_.assign(scene_.instances.size(), {});
    std::uint32_t corners = 0, points = 0, faces = 0, edges = 0;
    const auto take = [](Room &room, std::uint32_t &end, std::size_t count) {
        room = {end, static_cast<std::uint32_t>(count + count / 4)};
        end += room.size;
    };
    for (std::size_t i = 0; i < placed_.size(); ++i) {
        const SceneModel &model = model_of(i);
        take(placed_[i].corners, corners, count_in(model, &ShadedMesh::corners));
        take(placed_[i].points, points, count_in(model, &ShadedMesh::points));
        for (std::size_t level = 0; level < model.levels.size(); ++level) {
            take(placed_[i].faces[level].room, faces, model.levels[level].triangles.size());
            take(placed_[i].edges[level].room, edges, model.levels[level].edges.size());
        }
    }
    reserve(GL_ARRAY_BUFFER, corners_, corners * sizeof(Corner));
    reserve(GL_ARRAY_BUFFER, looks_, corners * sizeof(Paint));
    reserve(GL_ARRAY_BUFFER, points_, points * sizeof(Point));
    reserve(GL_COPY_WRITE_BUFFER, face_indices_, faces * sizeof(std::uint32_t));
    reserve(GL_COPY_WRITE_BUFFER, edge_indices_, edges * sizeof(std::uint32_t));
}

/// Which corners make its triangles and which points its edges.
void SceneBuffers::index(std::size_t i) {
    const SceneModel &model = model_of(i);
    Placed &placed = placed_[i];
    std::uint32_t corner = placed.corners.first, point = placed.points.first;
    const auto put = [](const gl::Handle &buffer, Span &span, std::vector<std::uint32_t> indices,
                        std::uint32_t base) {
        for (std::uint32_t &index : indices)
            index += base;
        span.count = static_cast<std::uint32_t>(indices.size());
        replace(GL_COPY_WRITE_BUFFER, buffer, span.room.first, indices);
    };
    for (std::size_t level = 0; level < model.levels.size(); ++level) {
        put(face_indices_, placed.faces[level], model.levels[level].triangles, corner);
        put(edge_indices_, placed.edges[level], model.levels[level].edges, point);
        corner += static_cast<std::uint32_t>(model.levels[level].corners.size());
        point += static_cast<std::uint32_t>(model.levels[level].points.size());
    }
}

void SceneBuffers::place(std::size_t i) {
    const Frame &frame = scene_.instances[i].frame;
    const SceneModel &model = model_of(i);
    std::vector<Corner> corners;
    std::vector<Point> points;
    for (const ShadedMesh &level : model.levels) {
        for (const ShadedCorner &c : level.corners) {
            const Vec3 n = frame.direction_to_world(vec(c.normal));
            corners.push_back(
                {stored(frame.to_world(vec(c.position)) - origin_), {byte(n.x), byte(n.y), byte(n.z), 0}});
        }
        for (const Point &p : level.points)
            points.push_back(stored(frame.to_world(vec(p)) - origin_));
    }
    replace(GL_ARRAY_BUFFER, corners_, placed_[i].corners.first, corners);
    replace(GL_ARRAY_BUFFER, points_, placed_[i].points.first, points);
    const Vec3 half = 0.5 * (model.box.high - model.box.low);
    const auto reach = [&](double x, double y, double z) {
        return std::abs(x) * half.x + std::abs(y) * half.y + std::abs(z) * half.z;
    };
    placed_[i].middle = frame.to_world(0.5 * (model.box.low + model.box.high));
    placed_[i].half = {reach(frame.x.x, frame.y.x, frame.z.x), reach(frame.x.y, frame.y.y, frame.z.y),
                       reach(frame.x.z, frame.y.z, frame.z.z)};
}

void SceneBuffers::paint(std::size_t i) {
    constexpr float is_end = 0.9f; // of a unit normal along the log: shoulders, jambs and ends, not slopes
    const Instance &instance = scene_.instances[i];
    const SceneModel &model = model_of(i);
    std::vector<Paint> paints;
    for (const ShadedMesh &level : model.levels) {
        for (const ShadedCorner &c : level.corners) {
            const std::uint8_t kind = kind_of(std::abs(c.normal[0]) > is_end, instance.marked);
            paints.push_back({{instance.colour.r, instance.colour.g, instance.colour.b, kind},
                              static_cast<std::uint32_t>(instance.id)});
        }
    }
    replace(GL_ARRAY_BUFFER, looks_, placed_[i].corners.first, paints);
}

void SceneBuffers::measure() {
    box_ = bounds(scene_);
    visible_ = static_cast<std::size_t>(std::count_if(scene_.instances.begin(), scene_.instances.end(),
                                                      [](const Instance &i) { return i.visible; }));
}

std::size_t SceneBuffers::level_for(std::size_t i, double pixel, double detail) const {
    constexpr double fine = 12; // pixels across: beyond this eight sides are seen as such
    const SceneModel &model = model_of(i);
    if (model.widest_bore < detail * pixel) return 2;
    return model.widest_bore < fine * pixel ? 1 : 0;
}

/// A box is outside when, for one side of the clip volume (w + x >= 0 and so on), its most inward corner is.
bool SceneBuffers::outside(const Placed &p, const Matrix4 &clip) {
    for (int axis = 0; axis < 3; ++axis) {
        for (const double sign : {1.0, -1.0}) {
            const Vec3 n{clip(3, 0) + sign * clip(axis, 0), clip(3, 1) + sign * clip(axis, 1),
                         clip(3, 2) + sign * clip(axis, 2)};
            const double reach =
                std::abs(n.x) * p.half.x + std::abs(n.y) * p.half.y + std::abs(n.z) * p.half.z;
            if (dot(n, p.middle) + clip(3, 3) + sign * clip(axis, 3) + reach < 0) return true;
        }
    }
    return false;
}

DrawLists SceneBuffers::visible_in(const Matrix4 &clip, const Camera &camera, int picture_height,
                                   double detail) const {
    struct Seen {
        double depth;
        std::size_t index;
    };
    const Vec3 sight = unit(camera.target - camera.eye);
    std::vector<Seen> seen;
    for (std::size_t i = 0; i < placed_.size(); ++i)
        if (scene_.instances[i].visible && !outside(placed_[i], clip))
            seen.push_back({dot(placed_[i].middle - camera.eye, sight), i});
    std::sort(seen.begin(), seen.end(), [](const Seen &a, const Seen &b) {
        return a.depth != b.depth ? a.depth < b.depth : a.index < b.index;
    });
    DrawLists lists;
    for (const Seen &s : seen) {
        const Placed &p = placed_[s.index];
        const Vec3 nearest = p.middle - length(p.half) * sight;
        const std::size_t level = level_for(s.index, pixel_size(camera, nearest, picture_height), detail);
        lists.faces.add(p.faces[level].room.first, p.faces[level].count);
        lists.edges.add(p.edges[level].room.first, p.edges[level].count);
    }
    return lists;
}

DrawList SceneBuffers::coarse() const {
    DrawList list;
    for (std::size_t i = 0; i < placed_.size(); ++i)
        if (scene_.instances[i].visible) list.add(placed_[i].faces[2].room.first, placed_[i].faces[2].count);
    return list;
}

} // namespace roundlay
