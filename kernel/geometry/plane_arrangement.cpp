#include "kernel/geometry/plane_arrangement.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <numbers>
#include <numeric>
#include <utility>

namespace roundlay {

namespace {

using Edge = std::pair<int, int>;

/// How far beside an edge the cover is asked for: over the weld, under the thinnest wood.
constexpr double aside = 5 * tolerance::weld;

struct Box2 {
    Vec2 low{1e300, 1e300}, high{-1e300, -1e300};
    void add(Vec2 p) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    bool holds(Vec2 p, double room) const {
        return p.x >= low.x - room && p.x <= high.x + room && p.y >= low.y - room && p.y <= high.y + room;
    }
    bool meets(const Box2 &other) const {
        return low.x <= other.high.x && other.low.x <= high.x && low.y <= other.high.y && other.low.y <= high.y;
    }
};

/// Finds which of many boxes may hold a point, by strips across the axis along which they lie apart best.
class Strips {
  public:
    explicit Strips(const std::vector<Box2> &boxes) {
        if (boxes.empty()) return;
        Box2 all;
        Vec2 extents;
        for (const Box2 &b : boxes) {
            all.add(b.low);
            all.add(b.high);
            extents = extents + (b.high - b.low);
        }
        const Vec2 size = all.high - all.low;
        along_x_ = extents.x * size.y < extents.y * size.x;
        const double range = along_x_ ? size.x : size.y;
        const std::size_t count = std::max<std::size_t>(1, boxes.size() / 4);
        low_ = along_x_ ? all.low.x : all.low.y;
        per_mm_ = range > 0 ? static_cast<double>(count) / range : 0;
        strips_.resize(count);
        for (std::size_t i = 0; i < boxes.size(); ++i)
            for (std::size_t k = strip_of(boxes[i].low); k <= strip_of(boxes[i].high); ++k) strips_[k].push_back(i);
    }

    const std::vector<std::size_t> &near(Vec2 p) const { return strips_[strip_of(p)]; }

  private:
    std::size_t strip_of(Vec2 p) const {
        const double at = ((along_x_ ? p.x : p.y) - low_) * per_mm_, last = static_cast<double>(strips_.size()) - 1;
        return static_cast<std::size_t>(std::clamp(at, 0.0, last));
    }

    bool along_x_ = true;
    double low_ = 0, per_mm_ = 0;
    std::vector<std::vector<std::size_t>> strips_;
};

class Arrangement {
  public:
    Arrangement(std::vector<Vec2> &points, const std::vector<SignedPolygon> &polygons)
        : points_(points), polygons_(polygons) {
        for (const SignedPolygon &polygon : polygons) {
            boxes_.emplace_back();
            for (const int i : polygon.ring) boxes_.back().add(at(i));
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
        for (const auto &[i, j] : pairs_that_meet(boxes)) add_crossing(edges_[i], edges_[j]);
    }

    /// Swept along x; in the order of the edges.
    static std::vector<std::pair<std::size_t, std::size_t>> pairs_that_meet(const std::vector<Box2> &boxes) {
        std::vector<std::size_t> order(boxes.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return boxes[a].low.x < boxes[b].low.x; });
        std::vector<std::pair<std::size_t, std::size_t>> pairs;
        for (std::size_t i = 0; i < order.size(); ++i)
            for (std::size_t j = i + 1; j < order.size() && boxes[order[j]].low.x <= boxes[order[i]].high.x; ++j)
                if (boxes[order[i]].meets(boxes[order[j]])) pairs.push_back(std::minmax(order[i], order[j]));
        std::sort(pairs.begin(), pairs.end());
        return pairs;
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

    void split_at_points() {
        std::vector<Edge> parts;
        parts.reserve(edges_.size() * 2);
        std::sort(used_.begin(), used_.end(), [&](int i, int j) { return at(i).x < at(j).x; });
        for (const Edge &e : edges_) split_edge(e, parts);
        edges_ = std::move(parts);
        drop_doubles();
    }

    void split_edge(const Edge &e, std::vector<Edge> &parts) {
        const Vec2 a = at(e.first), d = at(e.second) - a;
        const double l = length(d);
        std::vector<std::pair<double, int>> stops;
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
            if (std::abs(cross(v, d)) / l < tolerance::weld) stops.emplace_back(along, i);
        }
        std::sort(stops.begin(), stops.end());
        int from = e.first;
        for (const auto &[along, i] : stops) {
            parts.push_back(std::minmax(from, i));
            from = i;
        }
        parts.push_back(std::minmax(from, e.second));
    }

    bool covers(const SignedPolygon &polygon, Vec2 p) const {
        for (std::size_t i = 0; i < polygon.ring.size(); ++i) {
            const Vec2 a = at(polygon.ring[i]), b = at(polygon.ring[(i + 1) % polygon.ring.size()]);
            if (cross(b - a, p - a) < 0) return false;
        }
        return true;
    }

    int cover(Vec2 p) const {
        int sum = 0;
        for (const std::size_t i : strips_.near(p))
            if (boxes_[i].holds(p, 0) && covers(polygons_[i], p)) sum += polygons_[i].sign;
        return sum;
    }

    /// How often the two sides of an edge are covered.
    struct Sides {
        int left = 0, right = 0;
    };

    std::vector<Sides> sides_of_edges() const {
        std::vector<Sides> all;
        all.reserve(edges_.size());
        for (const auto &[a, b] : edges_) {
            const Vec2 m = 0.5 * (at(a) + at(b)), d = at(b) - at(a);
            const Vec2 left = (aside / length(d)) * Vec2{-d.y, d.x};
            all.push_back({cover(m + left), cover(m - left)});
        }
        return all;
    }

    /// Directed edges with border of this sign on their left and none on their right.
    std::vector<Edge> border_edges(const std::vector<Sides> &sides, int sign) const {
        std::vector<Edge> found;
        for (std::size_t i = 0; i < edges_.size(); ++i) {
            const auto [a, b] = edges_[i];
            const bool on_left = sides[i].left == sign, on_right = sides[i].right == sign;
            if (on_left && !on_right) found.emplace_back(a, b);
            if (on_right && !on_left) found.emplace_back(b, a);
        }
        return found;
    }

    /// At a vertex where borders touch, the first edge clockwise from the way back keeps loops simple.
    std::size_t next_edge(const std::vector<Edge> &edges, const std::vector<bool> &done, const Edge &from) const {
        const Vec2 back = at(from.first) - at(from.second);
        std::size_t best = edges.size();
        double best_turn = 0;
        for (std::size_t i = 0; i < edges.size(); ++i) {
            if (done[i] || edges[i].first != from.second) continue;
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
        for (std::size_t start = 0; start < edges.size(); ++start) {
            if (done[start]) continue;
            std::vector<int> loop;
            std::size_t i = start;
            while (i < edges.size() && !done[i]) {
                done[i] = true;
                loop.push_back(edges[i].first);
                if (edges[i].second == edges[start].first) break;
                i = next_edge(edges, done, edges[i]);
            }
            loops.push_back(std::move(loop));
        }
        return loops;
    }

    double signed_area(const std::vector<int> &loop) const {
        double sum = 0;
        for (std::size_t i = 0; i < loop.size(); ++i)
            sum += cross(at(loop[i]), at(loop[(i + 1) % loop.size()]));
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

    /// A point just outside the wood's border, inside the hole: on the right of the hole's first edge.
    Vec2 point_of_hole(const std::vector<int> &hole) const {
        const Vec2 a = at(hole[0]), d = at(hole[1]) - a;
        return a + 0.5 * d + (aside / length(d)) * Vec2{d.y, -d.x};
    }

    void nest(const std::vector<std::vector<int>> &loops, int sign, std::vector<BorderRegion> &all) const {
        const std::size_t first = all.size();
        for (const auto &loop : loops)
            if (signed_area(loop) > 0) all.push_back({{loop}, sign});
        for (const auto &loop : loops)
            if (signed_area(loop) < 0) add_hole(loop, first, all);
    }

    void add_hole(const std::vector<int> &hole, std::size_t first, std::vector<BorderRegion> &all) const {
        BorderRegion *home = nullptr;
        for (std::size_t i = first; i < all.size(); ++i) {
            if (!inside(all[i].loops[0], point_of_hole(hole))) continue;
            if (!home || signed_area(all[i].loops[0]) < signed_area(home->loops[0])) home = &all[i];
        }
        if (home) home->loops.push_back(hole);
    }

    std::vector<Vec2> &points_;
    const std::vector<SignedPolygon> &polygons_;
    std::vector<Box2> boxes_; ///< of the polygons
    Strips strips_{{}};
    std::vector<Edge> edges_;
    std::vector<int> used_;
};

} // namespace

namespace {

/// Polygons that lie face to face, corner on corner, are no border: most are such.
std::vector<SignedPolygon> without_pairs(const std::vector<SignedPolygon> &polygons) {
    std::vector<std::pair<std::vector<int>, std::size_t>> sorted;
    for (std::size_t i = 0; i < polygons.size(); ++i) {
        sorted.emplace_back(polygons[i].ring, i);
        std::sort(sorted.back().first.begin(), sorted.back().first.end());
    }
    std::sort(sorted.begin(), sorted.end());
    std::vector<char> paired(polygons.size(), 0);
    for (std::size_t k = 0; k + 1 < sorted.size(); ++k) {
        const std::size_t i = sorted[k].second, j = sorted[k + 1].second;
        if (sorted[k].first != sorted[k + 1].first || polygons[i].sign == polygons[j].sign) continue;
        paired[i] = paired[j] = 1;
        ++k;
    }
    std::vector<SignedPolygon> rest;
    for (std::size_t i = 0; i < polygons.size(); ++i)
        if (!paired[i]) rest.push_back(polygons[i]);
    return rest;
}

} // namespace

std::vector<BorderRegion> add_up(std::vector<Vec2> &points, const std::vector<SignedPolygon> &polygons) {
    if (polygons.size() == 1) return {{{polygons[0].ring}, polygons[0].sign}};
    const std::vector<SignedPolygon> rest = without_pairs(polygons);
    if (rest.empty()) return {};
    if (rest.size() == 1) return {{{rest[0].ring}, rest[0].sign}};
    return Arrangement(points, rest).regions();
}

} // namespace roundlay
