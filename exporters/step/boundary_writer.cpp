#include "exporters/step/boundary_writer.h"

#include "exporters/part21/placing.h"
#include "kernel/boundary/rim.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

namespace roundlay::step {

using part21::along_axes;
using part21::DataWriter;
using part21::Ref;
using part21::same_direction;
using part21::to_finest;

namespace {

/// Writes each direction once: a piece has few of them and many edges.
class Directions {
  public:
    explicit Directions(DataWriter &data) : data_(data) {}
    Ref direction(Vec3 v) { return entry(v).direction; }
    Ref vector(Vec3 v) {
        Entry &e = entry(v);
        if (e.vector.id == 0) e.vector = data_.add("VECTOR", "", e.direction, 1.0);
        return e.vector;
    }

  private:
    struct Entry {
        Vec3 v;
        Ref direction, vector;
    };
    Entry &entry(Vec3 v) {
        for (Entry &e : known_)
            if (std::max({std::abs(e.v.x - v.x), std::abs(e.v.y - v.y), std::abs(e.v.z - v.z)}) <
                same_direction)
                return e;
        v = along_axes(v);
        known_.push_back({v, data_.add("DIRECTION", "", v), {}});
        return known_.back();
    }
    DataWriter &data_;
    std::vector<Entry> known_;
};

class SolidWriter {
  public:
    SolidWriter(DataWriter &data, const Boundary &boundary) : data_(data), b_(boundary), directions_(data) {}

    Ref write(const std::string &name, const std::vector<std::string> &names) {
        for (const Vec3 &v : b_.vertices) {
            points_.push_back(data_.add("CARTESIAN_POINT", "", to_finest(v)));
            vertices_.push_back(data_.add("VERTEX_POINT", "", points_.back()));
        }
        for (const BoundaryEdge &edge : b_.edges)
            edges_.push_back(write_edge(edge));
        std::vector<Ref> faces;
        for (const BoundaryFace &face : b_.faces)
            faces.push_back(write_face(face, names.empty() ? "" : names[faces.size()]));
        return data_.add("MANIFOLD_SOLID_BREP", name, data_.add("CLOSED_SHELL", "", faces));
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }
    static constexpr Vec3 up{0, 0, 1}, east{1, 0, 0};

    Ref write_edge(const BoundaryEdge &edge) {
        const Ref curve = edge.curve      ? write_curve(b_.curves[*edge.curve])
                          : edge.is_rim() ? write_rim(edge)
                                          : write_line(edge);
        return data_.add("EDGE_CURVE", "", vertices_[at(edge.from)], vertices_[at(edge.to)], curve, true);
    }

    Ref write_line(const BoundaryEdge &edge) {
        const Vec3 along = unit(b_.vertices[at(edge.to)] - b_.vertices[at(edge.from)]);
        return data_.add("LINE", "", points_[at(edge.from)], directions_.vector(along));
    }

    Ref write_curve(const BoundaryCurve &curve) {
        if (curve.arc) {
            const Arc &arc = *curve.arc;
            return data_.add("CIRCLE", "", placement(arc.centre, arc.axis, arc.start), arc.radius);
        }
        const Polynomials &all = curve.polynomials;
        std::vector<Ref> poles;
        for (const Vec3 &pole : all.poles)
            poles.push_back(data_.add("CARTESIAN_POINT", "", to_finest(pole)));
        std::vector<int> times(at(all.parts) + 1, all.degree());
        times.front() = times.back() = all.degree() + 1;
        std::vector<double> knots;
        for (int i = 0; i <= all.parts; ++i)
            knots.push_back(static_cast<double>(i) / all.parts);
        return data_.add("B_SPLINE_CURVE_WITH_KNOTS", "", all.degree(), poles,
                         part21::Enumeration{"UNSPECIFIED"}, false, false, times, knots,
                         part21::Enumeration{"UNSPECIFIED"});
    }

    Ref write_rim(const BoundaryEdge &edge) {
        const Rim rim = rim_of(b_.bores[*edge.bore], edge.upper);
        const Ref place = placement(rim.centre, rim.normal, rim.major);
        if (rim.level) return data_.add("CIRCLE", "", place, rim.semi_major);
        return data_.add("ELLIPSE", "", place, rim.semi_major, rim.semi_minor);
    }

    /// Each once: a bore's wall, its rim and its bottom share one.
    Ref placement(Vec3 origin, Vec3 axis, Vec3 across) {
        const Vec3 at = to_finest(origin);
        const Ref z = directions_.direction(axis), x = directions_.direction(across);
        const auto [entry, is_new] = placements_.try_emplace({at.x, at.y, at.z, z.id, x.id});
        if (is_new)
            entry->second = data_.add("AXIS2_PLACEMENT_3D", "", data_.add("CARTESIAN_POINT", "", at), z, x);
        return entry->second;
    }

    /// Where a cylinder's own normal points into the wood, the last attribute of its face says so.
    Ref write_face(const BoundaryFace &face, const std::string &name) {
        std::vector<Ref> bounds;
        for (const std::vector<EdgeUse> &loop : face.loops)
            bounds.push_back(
                data_.add(bounds.empty() ? "FACE_OUTER_BOUND" : "FACE_BOUND", "", write_loop(loop), true));
        if (face.is_bore_wall())
            return data_.add("ADVANCED_FACE", name, bounds, write_cylinder(b_.bores[*face.bore]), false);
        if (face.is_plane()) return data_.add("ADVANCED_FACE", name, bounds, write_plane(face), true);
        const BoundaryRound &round = b_.rounds[*face.round];
        return data_.add("ADVANCED_FACE", name, bounds, write_cylinder(round), !round.surface.hollow);
    }

    Ref write_loop(const std::vector<EdgeUse> &loop) {
        std::vector<Ref> uses;
        for (const EdgeUse &use : loop)
            uses.push_back(data_.add("ORIENTED_EDGE", "", part21::Derived{}, part21::Derived{},
                                     edges_[at(use.edge)], use.forward));
        return data_.add("EDGE_LOOP", "", uses);
    }

    Ref write_cylinder(const BoundaryBore &bore) {
        return data_.add("CYLINDRICAL_SURFACE", "",
                         placement({bore.axis.x, bore.axis.y, bore.below.z}, up, east), bore.radius);
    }

    Ref write_cylinder(const BoundaryRound &round) {
        const RoundSurface &s = round.surface;
        return data_.add("CYLINDRICAL_SURFACE", "", placement(s.at, s.along, round.across), s.radius);
    }

    Ref write_plane(const BoundaryFace &face) {
        const BoundaryEdge &first = b_.edges[at(face.loops[0][0].edge)];
        if (first.is_rim())
            if (const Rim rim = rim_of(b_.bores[*first.bore], first.upper); rim.level)
                return data_.add("PLANE", "", placement(rim.centre, face.plane.normal, rim.major));
        const Vec3 across =
            first.is_rim()
                ? east
                : unit(in_plane(b_.vertices[at(first.to)] - b_.vertices[at(first.from)], face.plane));
        const Ref place = data_.add("AXIS2_PLACEMENT_3D", "", points_[at(first.from)],
                                    directions_.direction(face.plane.normal), directions_.direction(across));
        return data_.add("PLANE", "", place);
    }

    static Vec3 in_plane(Vec3 v, const Plane &plane) { return v - dot(v, plane.normal) * plane.normal; }

    DataWriter &data_;
    const Boundary &b_;
    Directions directions_;
    std::vector<Ref> points_, vertices_, edges_;
    std::map<std::tuple<double, double, double, int, int>, Ref> placements_;
};

} // namespace

Ref add_solid(DataWriter &data, const Boundary &boundary, const std::string &name,
              const std::vector<std::string> &faces) {
    return SolidWriter(data, boundary).write(name, faces);
}

Ref add_placement(DataWriter &data, const Frame &frame) {
    const Ref origin = data.add("CARTESIAN_POINT", "", to_finest(frame.origin));
    const Ref z = data.add("DIRECTION", "", along_axes(frame.z));
    return data.add("AXIS2_PLACEMENT_3D", "", origin, z, data.add("DIRECTION", "", along_axes(frame.x)));
}

} // namespace roundlay::step
