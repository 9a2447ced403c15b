#include "kernel/geometry/plane_arrangement.h"

#include "kernel/geometry/boxes_2d.h"
#include "kernel/geometry/polygon_pairs.h"
#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <numbers>
#include <numeric>
#include <tuple>
#include <utility>

namespace roundlay {

namespace {

using Edge = std::pair<int, int>;

/// How far beside an edge a hole is asked for: over the weld, under the thinnest wood.
constexpr double aside = 5 * tolerance::weld;

/// A stretch of a polygon's ring between two points that follow one another.
struct Part {
    Edge edge;
    int polygon = 0;
    int way =
        1; ///< 1: the ring runs from edge.first to edge.second, so the polygon lies left of that; -1: back
};

class Arrangement {
  public:
    Arrangement(std::vector<Vec2> &points, const std::vector<SignedPolygon> &polygons)
        : points_(points), polygons_(polygons) {
        for (const SignedPolygon &polygon : polygons) {
            boxes_.emplace_back();
            for (const int i : polygon.ring)
                boxes_.back().add(at(i));
        }
        strips_ = Strips(boxes_);
    }

    std::vector<BorderRegion> regions() {
        collect_edges();
        split_at_crossings();
        split_at_points();
        std::vector<BorderRegion> all;
        const std::vector<Sides> sides = sides_of_edges();
        for (const int sign : {1, -1}) {
            const auto loops = trace(border_edges(sides, sign));
            nest(loops, sign, all);
        }
        return all;
    }

  private:
    Vec2 at(int i) const { return points_[static_cast<std::size_t>(i)]; }

    void collect_edges() {
        for (const SignedPolygon &polygon : polygons_)
            for (std::size_t i = 0; i < polygon.ring.size(); ++i) {
                const int a = polygon.ring[i], b = polygon.ring[(i + 1) % polygon.ring.size()];
                edges_.push_back(std::minmax(a, b));
            }
        drop_doubles();
        std::vector<char> known(points_.size(), 0);
        for (const Edge &e : edges_)
            for (const int i : {e.first, e.second})
                if (!std::exchange(known[static_cast<std::size_t>(i)], 1)) used_.push_back(i);
    }

    void drop_doubles() {
        std::sort(edges_.begin(), edges_.end());
        edges_.erase(std::unique(edges_.begin(), edges_.end()), edges_.end());
    }

    void split_at_crossings() {
        if (polygons_.size() < 2) return;
        std::vector<Box2> boxes(edges_.size());
        for (std::size_t i = 0; i < edges_.size(); ++i) {
            boxes[i].add(at(edges_[i].first));
            boxes[i].add(at(edges_[i].second));
        }
        for (const auto &[i, j] : pairs_that_meet(boxes))
            add_crossing(edges_[i], edges_[j]);
    }

    void add_crossing(const Edge &e, const Edge &f) {
        const Vec2 a = at(e.first), d = at(e.second) - a, c = at(f.first), g = at(f.second) - c;
        const double turn = cross(d, g);
        const double le = length(d), lf = length(g);
        if (std::abs(turn) < tolerance::weld * std::max(le, lf)) return;
        const double s = cross(c - a, g) / turn, t = cross(c - a, d) / turn;
        const double es = tolerance::weld / le, et = tolerance::weld / lf;
        if (s <= es || s >= 1 - es || t <= et || t >= 1 - et) return;
        add_point(a + s * d);
    }

    void add_point(Vec2 p) {
        for (const int i : used_)
            if (length(at(i) - p) < tolerance::weld) return;
        used_.push_back(static_cast<int>(points_.size()));
        points_.push_back(p);
    }

    /// Each polygon's ring, cut at every point that lies on it: which polygon lies on which side of a part is
    /// known from there, not asked for beside it, where sharp corners and short parts would tell the wrong
    /// one.
    void split_at_points() {
        std::sort(used_.begin(), used_.end(), [&](int i, int j) { return at(i).x < at(j).x; });
        std::vector<std::vector<int>> stops(edges_.size());
        for (std::size_t i = 0; i < edges_.size(); ++i)
            stops[i] = stops_on(edges_[i]);
        parts_.reserve(edges_.size() * 4);
        for (std::size_t i = 0; i < polygons_.size(); ++i) {
            const std::vector<int> &ring = polygons_[i].ring;
            for (std::size_t k = 0; k < ring.size(); ++k) {
                const Edge way{ring[k], ring[(k + 1) % ring.size()]},
                    edge = std::minmax(way.first, way.second);
                const auto at = std::lower_bound(edges_.begin(), edges_.end(), edge) - edges_.begin();
                add_parts(static_cast<int>(i), way == edge, stops[static_cast<std::size_t>(at)]);
            }
        }
        std::sort(parts_.begin(), parts_.end(), [](const Part &a, const Part &b) {
            return std::tie(a.edge, a.polygon) < std::tie(b.edge, b.polygon);
        });
    }

    void add_parts(int polygon, bool along, const std::vector<int> &stops) {
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            const Edge edge = std::minmax(stops[k], stops[k + 1]);
            parts_.push_back({edge, polygon, (edge.first == stops[k]) == along ? 1 : -1});
        }
    }

    /// The points on an edge, its ends included, from its first one on.
    std::vector<int> stops_on(const Edge &e) const {
        const Vec2 a = at(e.first), d = at(e.second) - a;
        const double l = length(d);
        std::vector<std::pair<double, int>> between;
        Box2 box;
        box.add(a);
        box.add(a + d);
        auto stop = std::lower_bound(used_.begin(), used_.end(), box.low.x - tolerance::weld,
                                     [&](int i, double x) { return at(i).x < x; });
        for (; stop != used_.end() && at(*stop).x <= box.high.x + tolerance::weld; ++stop) {
            const int i = *stop;
            if (!box.holds(at(i), tolerance::weld)) continue;
            const Vec2 v = at(i) - a;
            const double along = dot(v, d) / l;
            if (along <= tolerance::weld || along >= l - tolerance::weld) continue;
            if (std::abs(cross(v, d)) / l < tolerance::weld) between.emplace_back(along, i);
        }
        std::sort(between.begin(), between.end());
        std::vector<int> stops{e.first};
        for (const auto &[along, i] : between)
            stops.push_back(i);
        stops.push_back(e.second);
        return stops;
    }

    bool covers(const SignedPolygon &polygon, Vec2 p) const {
        for (std::size_t i = 0; i < polygon.ring.size(); ++i) {
            const Vec2 a = at(polygon.ring[i]), b = at(polygon.ring[(i + 1) % polygon.ring.size()]);
            if (cross(b - a, p - a) < 0) return false;
        }
        return true;
    }

    using Parts = std::vector<Part>::const_iterator;

    /// What covers both sides of an edge: the polygons that have it not in their rings, and lie over its
    /// middle.
    int cover_of(const Edge &edge, Parts from, Parts to) const {
        const Vec2 middle = 0.5 * (at(edge.first) + at(edge.second));
        int sum = 0;
        for (const std::size_t i : strips_.near(middle)) {
            if (!boxes_[i].holds(middle, 0)) continue;
            const bool own =
                std::any_of(from, to, [&](const Part &p) { return p.polygon == static_cast<int>(i); });
            if (!own && covers(polygons_[i], middle)) sum += polygons_[i].sign;
        }
        return sum;
    }

    /// How often the two sides of an edge are covered.
    struct Sides {
        Edge edge;
        int left = 0, right = 0;
    };

    std::vector<Sides> sides_of_edges() const {
        std::vector<Sides> all;
        all.reserve(parts_.size());
        for (auto from = parts_.begin(); from != parts_.end();) {
            const auto to =
                std::find_if(from, parts_.end(), [&](const Part &p) { return p.edge != from->edge; });
            const int both = cover_of(from->edge, from, to);
            Sides sides{from->edge, both, both};
            while (from != to) { // a ring that goes both ways here has no area on either side
                int way = 0;
                const int polygon = from->polygon, sign = polygons_[static_cast<std::size_t>(polygon)].sign;
                for (; from != to && from->polygon == polygon; ++from)
                    way += from->way;
                if (way > 0) sides.left += sign;
                if (way < 0) sides.right += sign;
            }
            all.push_back(sides);
        }
        return all;
    }

    /// Directed edges with border of this sign on their left and none on their right.
    static std::vector<Edge> border_edges(const std::vector<Sides> &sides, int sign) {
        std::vector<Edge> found;
        for (const auto &[edge, left, right] : sides) {
            const bool on_left = left * sign > 0, on_right = right * sign > 0;
            if (on_left && !on_right) found.push_back(edge);
            if (on_right && !on_left) found.emplace_back(edge.second, edge.first);
        }
        return found;
    }

    /// At a vertex where borders touch, the first edge clockwise from the way back keeps loops simple.
    std::size_t next_edge(const std::vector<Edge> &edges, const std::vector<std::size_t> &leaving,
                          const std::vector<bool> &done, const Edge &from) const {
        const Vec2 back = at(from.first) - at(from.second);
        std::size_t best = edges.size();
        double best_turn = 0;
        auto next = std::lower_bound(leaving.begin(), leaving.end(), from.second,
                                     [&](std::size_t i, int point) { return edges[i].first < point; });
        for (; next != leaving.end() && edges[*next].first == from.second; ++next) {
            const std::size_t i = *next;
            if (done[i]) continue;
            const Vec2 out = at(edges[i].second) - at(edges[i].first);
            double turn = std::atan2(-cross(back, out), dot(back, out));
            if (turn <= 0) turn += 2 * std::numbers::pi;
            if (best == edges.size() || turn < best_turn) {
                best = i;
                best_turn = turn;
            }
        }
        return best;
    }

    std::vector<std::vector<int>> trace(const std::vector<Edge> &edges) const {
        std::vector<std::vector<int>> loops;
        std::vector<bool> done(edges.size(), false);
        std::vector<std::size_t> leaving(edges.size()); // edges by the point they leave, then in order
        std::iota(leaving.begin(), leaving.end(), std::size_t{0});
        std::stable_sort(leaving.begin(), leaving.end(),
                         [&](std::size_t i, std::size_t j) { return edges[i].first < edges[j].first; });
        for (std::size_t start = 0; start < edges.size(); ++start) {
            if (done[start]) continue;
            std::vector<int> loop;
            std::size_t i = start;
            while (i < edges.size() && !done[i]) {
                done[i] = true;
                loop.push_back(edges[i].first);
                if (edges[i].second == edges[start].first) break;
                i = next_edge(edges, leaving, done, edges[i]);
            }
            loops.push_back(std::move(loop));
        }
        return loops;
    }

    /// From its own first corner: far from the plane's origin the last digits of a sliver would be lost.
    double signed_area(const std::vector<int> &loop) const {
        double sum = 0;
        for (std::size_t i = 1; i + 1 < loop.size(); ++i)
            sum += cross(at(loop[i]) - at(loop[0]), at(loop[i + 1]) - at(loop[0]));
        return sum / 2;
    }

    bool inside(const std::vector<int> &loop, Vec2 p) const {
        bool in = false;
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const Vec2 a = at(loop[i]), b = at(loop[(i + 1) % loop.size()]);
            if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
        }
        return in;
    }

    /// A point just outside the wood's border, inside the hole: on the right of the hole's longest edge.
    Vec2 point_of_hole(const std::vector<int> &hole) const {
        std::size_t longest = 0;
        const auto way = [&](std::size_t i) { return at(hole[(i + 1) % hole.size()]) - at(hole[i]); };
        for (std::size_t i = 1; i < hole.size(); ++i)
            if (length(way(i)) > length(way(longest))) longest = i;
        const Vec2 a = at(hole[longest]), d = way(longest);
        return a + 0.5 * d + (aside / length(d)) * Vec2{d.y, -d.x};
    }

    void nest(const std::vector<std::vector<int>> &loops, int sign, std::vector<BorderRegion> &all) const {
        const std::size_t first = all.size();
        for (const auto &loop : loops)
            if (signed_area(loop) > 0) all.push_back({{loop}, sign});
        for (const auto &loop : loops)
            if (signed_area(loop) < 0) add_hole(loop, sign, first, all);
    }

    void add_hole(const std::vector<int> &hole, int sign, std::size_t first,
                  std::vector<BorderRegion> &all) const {
        BorderRegion *home = nullptr;
        for (std::size_t i = first; i < all.size(); ++i) {
            if (!inside(all[i].loops[0], point_of_hole(hole))) continue;
            if (!home || signed_area(all[i].loops[0]) < signed_area(home->loops[0])) home = &all[i];
        }
        if (home)
            home->loops.push_back(hole);
        else
            all.push_back(
                {{hole}, sign}); // a sliver of which the area says nothing: closed it is all the same
    }

    std::vector<Vec2> &points_;
    const std::vector<SignedPolygon> &polygons_;
    std::vector<Box2> boxes_; ///< of the polygons
    Strips strips_{{}};
    std::vector<Edge> edges_; ///< of all rings, each once, in order
    std::vector<Part> parts_; ///< of all rings, cut at every point on them; by edge and polygon
    std::vector<int> used_;
};

} // namespace

std::vector<BorderRegion> add_up(std::vector<Vec2> &points, const std::vector<SignedPolygon> &polygons) {
    if (polygons.size() == 1) return {{{polygons[0].ring}, polygons[0].sign}};
    const std::vector<SignedPolygon> rest = without_pairs(polygons);
    if (rest.empty()) return {};
    if (rest.size() == 1) return {{{rest[0].ring}, rest[0].sign}};
    return Arrangement(points, rest).regions();
}

} // namespace roundlay
