#include "exporters/sheets/cut_sheet/hidden_lines.h"

#include "exporters/sheets/drawing/rect.h"
#include "kernel/geometry/ring.h"

#include <algorithm>
#include <array>
#include <map>
#include <numbers>
#include <optional>

namespace roundlay::sheets {
namespace {

// Far below what can be seen on paper, far above the noise of doubles over the length of a log.
constexpr double on_line = 1e-6;       ///< mm: a point this near to a line lies on it
constexpr double in_front = 1e-4;      ///< mm: wood must be nearer by this to cover an edge
constexpr double edge_on = 1e-9;       ///< a face turned this little toward the viewer covers nothing
constexpr double least_stretch = 1e-9; ///< as a part of the edge
constexpr int rim_chords = 48;
constexpr double upward = 0.5; ///< of a normal: steeper faces are not bored into

struct Edge {
    Vec3 from, to;
    bool cut_off = false;
};

/// A face that is turned toward the viewer, flattened.
struct Cover {
    const Plane *plane;
    std::vector<std::vector<Vec2>> loops;
    Rect box;
};

/// Holes are loops of their own.
bool inside(const Cover &cover, Vec2 p) {
    bool in = false;
    for (const auto &loop : cover.loops)
        in = in != is_inside(loop, p);
    return in;
}

/// A flattened edge, and where along it others cross it, as parts of its length.
class Splitter {
  public:
    Splitter(Vec2 a, Vec2 b)
        : a_(a), ab_(b - a), len2_(dot(ab_, ab_)), near_(on_line * std::sqrt(len2_)),
          box_(joined(joined(Rect::nothing(), a), b).grown(on_line)) {}

    bool is_far_from(const Rect &box) const { return !box.grown(on_line).overlaps(box_); }

    /// A closed ring: where its strokes cross the edge, and where their ends lie on it.
    void add(const std::vector<Vec2> &ring) {
        if (ring.empty()) return;
        Vec2 c = ring.back();
        double c_off = off(c);
        for (const Vec2 d : ring) {
            const double d_off = off(d);
            if (std::abs(d_off) < near_) at_.push_back(dot(d - a_, ab_) / len2_);
            const bool beside = (c_off > near_ && d_off > near_) || (c_off < -near_ && d_off < -near_);
            if (!beside) add_crossing(c, d);
            c = d;
            c_off = d_off;
        }
    }

    /// 0, 1 and all between them, in order.
    std::vector<double> parts() && {
        std::erase_if(at_, [](double t) { return t < 0 || t > 1; });
        std::sort(at_.begin(), at_.end());
        return std::move(at_);
    }

  private:
    /// How far the point lies off the edge's line, times the edge's length.
    double off(Vec2 p) const { return cross(ab_, p - a_); }

    /// If within both.
    void add_crossing(Vec2 c, Vec2 d) {
        const Vec2 cd = d - c;
        const double turn = cross(ab_, cd);
        if (std::abs(turn) < on_line * on_line) return;
        const double t = cross(c - a_, cd) / turn, s = cross(c - a_, ab_) / turn;
        if (s >= 0 && s <= 1) at_.push_back(t);
    }

    Vec2 a_, ab_;
    double len2_, near_;
    Rect box_;
    std::vector<double> at_{0, 1};
};

class Finder {
  public:
    Finder(const Scene &scene, const Projection &projection) : scene_(scene), projection_(projection) {
        for (const Polyhedron &solid : scene.solids) {
            add_edges(solid);
            for (const Face &face : solid.faces)
                if (dot(face.plane.normal, projection.toward) > edge_on) add_cover(solid, face);
        }
        for (const Bore &bore : scene.bores) {
            rims_.push_back(rim_at(bore, bore.z_from, -1));
            rims_.push_back(rim_at(bore, bore.z_to, 1));
        }
        if (!scene.rims) return;
        for (const Rim &rim : rims_)
            for (int i = 0; i < rim_chords; ++i)
                edges_.push_back({rim.points[static_cast<std::size_t>(i)],
                                  rim.points[static_cast<std::size_t>((i + 1) % rim_chords)], false});
    }

    std::vector<Stretch> run() const {
        std::vector<Stretch> all;
        for (const Edge &edge : edges_)
            add_stretches(all, edge);
        return all;
    }

  private:
    static const Vec3 &vertex(const Polyhedron &solid, int i) {
        return solid.vertices[static_cast<std::size_t>(i)];
    }

    bool on_break(double x) const {
        return std::any_of(scene_.breaks.begin(), scene_.breaks.end(),
                           [&](double at) { return std::abs(at - x) < on_line; });
    }

    /// Every edge belongs to two faces, once in each direction: the ascending one stands for both.
    /// How a flat of a round surface is turned, and which surface it is of, by directed edge.
    struct Flat {
        int round = 0;
        bool toward = false;
    };
    using Flats = std::map<std::pair<int, int>, Flat>;

    Flat flat_of(const Face &face) const {
        return {face.plane.round, dot(face.plane.normal, projection_.toward) > edge_on};
    }

    Flats flats_of(const Polyhedron &solid) const {
        Flats flats;
        for (const Face &face : solid.faces)
            for (const auto &loop : face.loops)
                for (std::size_t i = 0; face.plane.round != 0 && i < loop.size(); ++i)
                    flats[{loop[i], loop[(i + 1) % loop.size()]}] = flat_of(face);
        return flats;
    }

    /// Two flats of one round surface have no edge between them but where it turns away from the viewer.
    bool is_smooth(const Flats &flats, const Face &face, int a, int b) const {
        if (face.plane.round == 0) return false;
        const auto other = flats.find({b, a});
        return other != flats.end() && other->second.round == face.plane.round &&
               other->second.toward == flat_of(face).toward;
    }

    void add_edges(const Polyhedron &solid) {
        const Flats turned = flats_of(solid);
        for (const Face &face : solid.faces)
            for (const auto &loop : face.loops)
                for (std::size_t i = 0; i < loop.size(); ++i) {
                    const int a = loop[i], b = loop[(i + 1) % loop.size()];
                    if (a > b || is_smooth(turned, face, a, b)) continue;
                    const Vec3 from = vertex(solid, a), to = vertex(solid, b);
                    edges_.push_back({from, to, on_break(from.x) && on_break(to.x)});
                }
    }

    void add_cover(const Polyhedron &solid, const Face &face) {
        Cover cover{&face.plane, {}, Rect::nothing()};
        for (const auto &loop : face.loops) {
            cover.loops.emplace_back();
            for (const int i : loop) {
                cover.loops.back().push_back(projection_.flat(vertex(solid, i)));
                cover.box = joined(cover.box, cover.loops.back().back());
            }
        }
        covers_.push_back(std::move(cover));
    }

    /// One end of a bore: in the face it opens in, which may slant, else level at its blind end.
    struct Rim {
        std::vector<Vec3> points;
        std::vector<Vec2> flat;
        Rect box = Rect::nothing(); ///< of the flattened points
    };

    /// The outermost face over the bore's axis that its end reaches; `up` is the way it opens, 1 or -1.
    const Plane *face_at(const Bore &bore, double z, double up) const {
        const Plane *best = nullptr;
        const auto height = [&](const Plane &p) { return up * p.height_at(bore.x, bore.y); };
        for (const Polyhedron &solid : scene_.solids)
            for (const Face &face : solid.faces) {
                if (up * face.plane.normal.z < upward || height(face.plane) > up * z + on_line) continue;
                if (!holds(solid, face, {bore.x, bore.y})) continue;
                if (best == nullptr || height(face.plane) > height(*best)) best = &face.plane;
            }
        return best;
    }

    /// Whether the point lies in the face as seen from above.
    static bool holds(const Polyhedron &solid, const Face &face, Vec2 p) {
        Cover cover{&face.plane, {}, Rect::nothing()};
        for (const auto &loop : face.loops) {
            cover.loops.emplace_back();
            for (const int i : loop)
                cover.loops.back().push_back({vertex(solid, i).x, vertex(solid, i).y});
        }
        return inside(cover, p);
    }

    Rim rim_at(const Bore &bore, double z, double up) const {
        const Plane *face = face_at(bore, z, up);
        Rim rim;
        for (int i = 0; i < rim_chords; ++i) {
            const double a = 2 * std::numbers::pi * i / rim_chords;
            const double x = bore.x + bore.diameter / 2 * std::cos(a),
                         y = bore.y + bore.diameter / 2 * std::sin(a);
            rim.points.push_back({x, y, face != nullptr ? face->height_at(x, y) : z});
            rim.flat.push_back(projection_.flat(rim.points.back()));
            rim.box = joined(rim.box, rim.flat.back());
        }
        return rim;
    }

    void add_stretches(std::vector<Stretch> &all, const Edge &edge) const {
        const Vec2 a = projection_.flat(edge.from), b = projection_.flat(edge.to);
        if (length(b - a) < on_line) return; // seen end on
        std::vector<double> at = splits(a, b);
        for (std::size_t i = 1; i < at.size(); ++i) {
            if (at[i] - at[i - 1] < least_stretch) continue;
            const double middle = (at[i - 1] + at[i]) / 2;
            const bool hidden = is_covered(edge.from + middle * (edge.to - edge.from));
            all.push_back({a + at[i - 1] * (b - a), a + at[i] * (b - a),
                           hidden ? Seen::hidden : Seen::visible, edge.cut_off});
        }
    }

    /// 0, 1 and every part between them where something may begin or end to cover the edge. The openings of
    /// a bore are covers too, or rather holes in covers.
    std::vector<double> splits(Vec2 a, Vec2 b) const {
        Splitter splitter(a, b);
        for (const Cover &cover : covers_)
            for (const auto &loop : cover.loops)
                splitter.add(loop);
        for (const Rim &rim : rims_)
            if (!splitter.is_far_from(rim.box)) splitter.add(rim.flat);
        return std::move(splitter).parts();
    }

    bool is_covered(Vec3 p) const {
        const Vec2 flat = projection_.flat(p);
        for (const Cover &cover : covers_) {
            const Rect &box = cover.box;
            if (flat.x < box.x0 || flat.x > box.x1 || flat.y < box.y0 || flat.y > box.y1) continue;
            const double away = -cover.plane->distance(p) / dot(cover.plane->normal, projection_.toward);
            if (away < in_front || !inside(cover, flat)) continue;
            if (!through_bore(p + away * projection_.toward)) return true;
        }
        return false;
    }

    bool through_bore(Vec3 p) const {
        return std::any_of(scene_.bores.begin(), scene_.bores.end(), [&](const Bore &bore) {
            const bool across = std::hypot(p.x - bore.x, p.y - bore.y) < bore.diameter / 2 * chord_reach;
            return across && p.z > bore.z_from - on_line && p.z < bore.z_to + on_line;
        });
    }

    /// Rims are drawn as chords: a hair more than their middles reach counts as within.
    static constexpr double chord_reach = 1.0001;

    const Scene &scene_;
    const Projection &projection_;
    std::vector<Edge> edges_;
    std::vector<Cover> covers_;
    std::vector<Rim> rims_;
};

} // namespace

std::vector<Stretch> edges_seen(const Scene &scene, const Projection &projection) {
    return Finder(scene, projection).run();
}

} // namespace roundlay::sheets
