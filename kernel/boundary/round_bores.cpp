#include "kernel/boundary/round_bores.h"

#include "kernel/boundary/bore_border.h"
#include "kernel/boundary/in_plan.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// In plan, flats' borders lie this near to those of their surfaces where bores open.
constexpr double flat_slack = 4;

class RoundBores {
  public:
    RoundBores(const Body &body, const BorderParts &parts) : body_(body), hewn_(body.hewn), parts_(parts) {}

    bool add_to(Boundary &b) const {
        if (!body_.bores.empty() && !body_.bores_apart) return false;
        for (const Bore &bore : body_.bores) {
            const BoreMeeting below = meet(bore, bore.z_from, -1), above = meet(bore, bore.z_to, +1);
            if (!below.clear || !above.clear || (!below.face && !above.face)) return false;
            if (!keeps_clear(bore, below.face, above.face)) return false;
            add_bore(b, bore, below, above);
        }
        return true;
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }
    const Vec3 &vertex(int i) const { return hewn_.vertices[at(i)]; }

    /// Whether the face reaches between two heights.
    bool reaches_between(const Face &face, double low, double high) const {
        double lowest = HUGE_VAL, highest = -HUGE_VAL;
        for (const auto &loop : face.loops)
            for (const int v : loop) {
                lowest = std::min(lowest, vertex(v).z);
                highest = std::max(highest, vertex(v).z);
            }
        return highest > low && lowest < high;
    }

    double to_own_border(const BorderPart &part, Vec2 p) const {
        double least = HUGE_VAL;
        for (const auto &loop : part.loops)
            for (const PartEdgeUse &use : loop) {
                const std::vector<int> &t = parts_.edges[at(use.edge)].through;
                for (std::size_t i = 1; i < t.size(); ++i)
                    least = std::min(least, distance_to_segment(p, {vertex(t[i - 1]).x, vertex(t[i - 1]).y},
                                                                {vertex(t[i]).x, vertex(t[i]).y}));
            }
        return least;
    }

    /// The part whose border a bore's axis goes through at this height, looking up (+1) or down (-1).
    BoreMeeting meet(const Bore &bore, double z, int looking) const {
        const double radius = bore.diameter / 2, near = radius;
        for (std::size_t i = 0; i < parts_.parts.size(); ++i)
            for (const int f : parts_.parts[i].faces) {
                const Face &face = hewn_.faces[at(f)];
                if (looking * face.plane.normal.z <= tolerance::weld) continue;
                if (!place_in_plan(hewn_, face, {bore.x, bore.y}).inside) continue;
                const Surface surface = surface_of(body_, parts_.parts[i]);
                const auto rise = along_to(surface, {bore.x, bore.y, z}, {0, 0, 1}, 0);
                if (!rise || std::abs(*rise) > near) continue;
                return opened(bore, z, i, surface, *rise);
            }
        return {{z, {}, false}, {}, true, {}};
    }

    BoreMeeting opened(const Bore &bore, double z, std::size_t part, const Surface &surface,
                       double rise) const {
        const BorderPart &p = parts_.parts[part];
        const double slack = p.round > 0 ? flat_slack : tolerance::clear;
        BoreMeeting meeting{{z, {}, true}, Index<BoundaryFace>(part), true, {}};
        meeting.clear = std::abs(rise) < 10 * tolerance::weld &&
                        to_own_border(p, {bore.x, bore.y}) > bore.diameter / 2 + slack;
        if (const Plane *plane = std::get_if<Plane>(&surface)) {
            const Vec2 slope{-plane->normal.x / plane->normal.z, -plane->normal.y / plane->normal.z};
            meeting.end = {z + rise, length(slope) * bore.diameter < 1e-9 ? Vec2{} : slope, true};
            return meeting;
        }
        if (meeting.clear) meeting.rim = rim_in(std::get<RoundSurface>(surface), bore, z);
        meeting.clear = meeting.clear && !meeting.rim.poles.empty();
        return meeting;
    }

    /// Nothing else comes near the bore between its ends.
    bool keeps_clear(const Bore &bore, std::optional<Index<BoundaryFace>> below,
                     std::optional<Index<BoundaryFace>> above) const {
        const double keep = bore.diameter / 2 + tolerance::clear + flat_slack;
        for (std::size_t i = 0; i < parts_.parts.size(); ++i)
            for (const int f : parts_.parts[i].faces) {
                const Face &face = hewn_.faces[at(f)];
                const double up = face.plane.normal.z;
                const Index<BoundaryFace> own(i);
                if ((own == below && up < -tolerance::weld) || (own == above && up > tolerance::weld))
                    continue;
                const PlanPlace place = place_in_plan(hewn_, face, {bore.x, bore.y});
                if (!place.inside && place.to_border > keep) continue;
                const double low = below ? bore.z_from : bore.z_from - tolerance::clear;
                const double high = above ? bore.z_to : bore.z_to + tolerance::clear;
                if (reaches_between(face, low, high)) return false;
            }
        return true;
    }

    const Body &body_;
    const Polyhedron &hewn_;
    const BorderParts &parts_;
};

} // namespace

Surface surface_of(const Body &body, const BorderPart &part) {
    if (part.round > 0) return body.rounds[static_cast<std::size_t>(part.round - 1)];
    return body.hewn.faces[static_cast<std::size_t>(part.faces[0])].plane;
}

bool add_bores(Boundary &boundary, const Body &body, const BorderParts &parts) {
    return RoundBores(body, parts).add_to(boundary);
}

} // namespace roundlay
