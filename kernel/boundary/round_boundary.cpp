// The border of a body with round surfaces: read off its flats, put on its exact surfaces.
#include "kernel/boundary/border_parts.h"
#include "kernel/boundary/boundary.h"
#include "kernel/boundary/round_bores.h"
#include "kernel/boundary/within_wood.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double whole_turn = 2 * std::numbers::pi;

/// Corners lie at most this many radii off their place among the flats: a flat is 0.5 % off its surface, but
/// surfaces meet at slight angles, those of tapered logs most of all.
constexpr double furthest_off = 20;

/// A gap in the angles of a face's flats wider than one flat: there the surface is open.
constexpr double widest_flat = 1.05 * whole_turn / round_flats;

bool lies_on(Vec3 p, Vec3 a, Vec3 b, double near) {
    const Vec3 run = b - a;
    const double t = std::clamp(dot(p - a, run) / dot(run, run), 0.0, 1.0);
    return length(p - (a + t * run)) < near;
}

/// A corner on a straight edge that it is not an end of: the flats, which are a hair off their surfaces, show
/// two loops where the exact ones meet.
bool touches_itself(const Boundary &b) {
    constexpr double near = 100 * tolerance::weld;
    const int vertices = count_of(b.vertices);
    const auto at = [&](int v) { return b.vertices[static_cast<std::size_t>(v)]; };
    return std::any_of(b.edges.begin(), b.edges.end(), [&](const BoundaryEdge &edge) {
        if (!edge.is_line()) return false;
        for (int v = 0; v < vertices; ++v)
            if (v != edge.from && v != edge.to && lies_on(at(v), at(edge.from), at(edge.to), near))
                return true;
        return false;
    });
}

class RoundBorder {
  public:
    RoundBorder(const Body &body, const BorderParts &parts) : body_(body), hewn_(body.hewn), parts_(parts) {}

    std::optional<Boundary> take() {
        if (!over_axes() || !add_corners() || !add_edges() || touches_itself(b_) || !add_faces())
            return std::nullopt;
        if (!lies_within_wood(b_, body_) || !add_bores(b_, body_, parts_)) return std::nullopt;
        return std::move(b_);
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }
    const Vec3 &vertex(int i) const { return hewn_.vertices[at(i)]; }
    const RoundSurface &round(int number) const { return body_.rounds[at(number - 1)]; }

    Surface surface_of(int part) const { return roundlay::surface_of(body_, parts_.parts[at(part)]); }

    /// Below its axis the sides of a scope are planes.
    bool over_axes() const {
        for (const BorderPart &p : parts_.parts) {
            if (p.round == 0 || !round(p.round).hollow) continue;
            const RoundSurface &r = round(p.round);
            for (const int f : p.faces)
                for (const auto &loop : hewn_.faces[at(f)].loops)
                    for (const int v : loop)
                        if (vertex(v).z < r.at.z - tolerance::thinnest) return false;
        }
        return true;
    }

    bool add_corners() {
        corner_.assign(hewn_.vertices.size(), std::nullopt);
        for (std::size_t v = 0; v < hewn_.vertices.size(); ++v) {
            if (parts_.at_vertex[v].size() < 3) continue;
            std::vector<Surface> surfaces;
            double radius = 1;
            for (const int p : parts_.at_vertex[v]) {
                surfaces.push_back(surface_of(p));
                if (const auto *r = std::get_if<RoundSurface>(&surfaces.back()))
                    radius = std::max(radius, r->radius);
            }
            const auto corner = corner_of(surfaces, hewn_.vertices[v], furthest_off * radius);
            if (!corner) return false;
            corner_[v] = count_of(b_.vertices);
            b_.vertices.push_back(*corner);
        }
        return true;
    }

    bool add_edges() {
        for (const PartEdge &edge : parts_.edges) {
            std::vector<Vec3> way;
            for (const int v : edge.through)
                way.push_back(vertex(v));
            const int from = *corner_[at(edge.through.front())], to = *corner_[at(edge.through.back())];
            way.front() = b_.vertices[at(from)];
            way.back() = b_.vertices[at(to)];
            const Vec3 run = way.back() - way.front();
            // Corners that changed places: the flats show a face that is not there.
            if (length(run) < 100 * tolerance::weld ||
                dot(run, vertex(edge.through.back()) - vertex(edge.through.front())) <= 0)
                return false;
            const auto curves = curve_between(surface_of(edge.left), surface_of(edge.right), way);
            if (!curves) return false;
            add_curves(*curves, from, to);
        }
        return true;
    }

    void add_curves(const std::vector<CurveBetween> &curves, int from, int to) {
        auto &made = made_.emplace_back();
        for (std::size_t i = 0; i < curves.size(); ++i) {
            int end = to;
            if (i + 1 < curves.size()) {
                end = count_of(b_.vertices);
                b_.vertices.push_back(curves[i].to);
            }
            BoundaryEdge edge{from, end};
            if (curves[i].arc || !curves[i].poles.empty())
                edge.curve = b_.curves.push_back({curves[i].arc, {curves[i].poles}});
            made.push_back(count_of(b_.edges));
            b_.edges.push_back(edge);
            from = end;
        }
    }

    bool add_faces() {
        for (const BorderPart &part : parts_.parts) {
            BoundaryFace face;
            if (part.round > 0) {
                const auto open = open_side(part);
                if (!open) return false;
                face.round = b_.rounds.push_back({round(part.round), *open});
            } else
                face.plane = hewn_.faces[at(part.faces[0])].plane;
            for (const auto &loop : part.loops)
                face.loops.push_back(uses_of(loop));
            if (part.round > 0 && !outer_first(part, face)) return false;
            b_.faces.push_back(std::move(face));
        }
        return true;
    }

    /// Unrolled, the loop round a face goes the other way than those round its holes.
    bool outer_first(const BorderPart &part, BoundaryFace &face) const {
        const BoundaryRound &on = b_.rounds.back();
        const double sign = on.surface.hollow ? -1 : 1;
        std::size_t outer = 0, count = 0;
        for (std::size_t i = 0; i < part.loops.size(); ++i)
            if (sign * area_unrolled(on, part.loops[i]) > 0) outer = i, ++count;
        std::swap(face.loops.front(), face.loops[outer]);
        return count == 1;
    }

    double area_unrolled(const BoundaryRound &on, const std::vector<PartEdgeUse> &loop) const {
        std::vector<Vec2> ring;
        const Vec3 along = on.surface.along, over = cross(along, on.across);
        for (const PartEdgeUse &use : loop) {
            std::vector<int> through = parts_.edges[at(use.edge)].through;
            if (!use.forward) std::reverse(through.begin(), through.end());
            for (std::size_t i = 0; i + 1 < through.size(); ++i) {
                const Vec3 v = vertex(through[i]) - on.surface.at;
                const double angle = std::atan2(dot(v, over), dot(v, on.across));
                ring.push_back({angle < 0 ? angle + whole_turn : angle, dot(v, along)});
            }
        }
        double twice = 0;
        for (std::size_t i = 0; i < ring.size(); ++i)
            twice += cross(ring[i], ring[(i + 1) % ring.size()]);
        return twice / 2;
    }

    std::vector<EdgeUse> uses_of(const std::vector<PartEdgeUse> &loop) const {
        std::vector<EdgeUse> uses;
        for (const PartEdgeUse &use : loop) {
            const std::vector<int> &edges = made_[at(use.edge)];
            if (use.forward)
                for (const int e : edges)
                    uses.push_back({e, true});
            else
                for (auto e = edges.rbegin(); e != edges.rend(); ++e)
                    uses.push_back({*e, false});
        }
        return uses;
    }

    /// Square to the axis, into the middle of the widest gap between the face's own angles.
    std::optional<Vec3> open_side(const BorderPart &part) const {
        const RoundSurface &r = round(part.round);
        std::vector<double> angles;
        for (const int f : part.faces)
            for (const auto &loop : hewn_.faces[at(f)].loops)
                for (const int v : loop)
                    angles.push_back(angle_about(r, vertex(v)));
        std::sort(angles.begin(), angles.end());
        double widest = angles.front() + whole_turn - angles.back(), middle = angles.back() + widest / 2;
        for (std::size_t i = 1; i < angles.size(); ++i)
            if (angles[i] - angles[i - 1] > widest) {
                widest = angles[i] - angles[i - 1];
                middle = angles[i - 1] + widest / 2;
            }
        if (widest < widest_flat) return std::nullopt;
        const AxisCross c(r.along);
        return std::cos(middle) * c.across + std::sin(middle) * c.over;
    }

    const Body &body_;
    const Polyhedron &hewn_;
    const BorderParts &parts_;
    Boundary b_;
    std::vector<std::optional<int>> corner_; ///< by vertex of the polyhedron: its index in the boundary
    std::vector<std::vector<int>> made_;     ///< by edge of the parts: edges of the boundary, end to end
};

} // namespace

std::optional<Boundary> round_boundary_of(const Body &body) {
    const auto parts = parts_of(body.hewn);
    return parts ? RoundBorder(body, *parts).take() : std::nullopt;
}

} // namespace roundlay
