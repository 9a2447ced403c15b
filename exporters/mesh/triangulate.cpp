// A sweep from left to right. Between two borders of the region that the sweep position cuts there is one
// strip; each strip carries one chain of corners that still wait for their triangles (two chains between a
// corner where two strips have met and the next corner that sees it). Which strip a corner belongs to is
// known from the loops themselves, so the only question asked of the coordinates is in which strip a hole
// starts. The order of corners is by x, then y, then index: equal coordinates, common in hewn wood, need no
// care.
#include "exporters/mesh/triangulate.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <stdexcept>

namespace roundlay {
namespace {

using Triangle = std::array<int, 3>;
enum class Border { low, high };

double turn(Vec2 a, Vec2 b, Vec2 c) {
    return cross(b - a, c - a);
}

/// A part of the region that is monotone in x, filled as its corners arrive from left to right.
class Chain {
  public:
    explicit Chain(int first) : waiting_{first} {}

    int last() const { return waiting_.back(); }
    Border border() const { return border_; }

    void add(int corner, Border border, std::span<const Vec2> points, std::vector<Triangle> &out) {
        if (border != border_ && waiting_.size() > 1) {
            fan(corner, out);
            waiting_ = {waiting_.back()};
        } else if (border == border_) {
            clip_ears(corner, points, out);
        }
        waiting_.push_back(corner);
        border_ = border;
    }

    /// The corner closes the part: everything that waits is seen from it.
    void close(int corner, std::vector<Triangle> &out) { fan(corner, out); }

  private:
    void emit(int a, int b, int c, std::vector<Triangle> &out) const {
        if (border_ == Border::low)
            out.push_back({a, b, c});
        else
            out.push_back({b, a, c});
    }

    void fan(int corner, std::vector<Triangle> &out) {
        // Seen from the far side the chain's own side is mirrored: a low chain has the corner above it.
        for (std::size_t i = 0; i + 1 < waiting_.size(); ++i)
            emit(waiting_[i], waiting_[i + 1], corner, out);
    }

    void clip_ears(int corner, std::span<const Vec2> points, std::vector<Triangle> &out) {
        while (waiting_.size() > 1) {
            const int middle = waiting_.back(), first = waiting_[waiting_.size() - 2];
            const double bend = turn(points[first], points[middle], points[corner]);
            if (border_ == Border::low ? bend <= 0 : bend >= 0) return;
            emit(first, middle, corner, out);
            waiting_.pop_back();
        }
    }

    std::vector<int> waiting_;
    Border border_ = Border::low;
};

/// Between two borders. A border is named by the corner where its loop edge starts: a low border runs from
/// left to right, a high one from right to left.
struct Strip {
    int low_edge, high_edge;
    Chain chain;              ///< all of the strip, or its lower part while `upper` stands
    std::vector<Chain> upper; ///< none or one
};

class Sweep {
  public:
    Sweep(std::span<const Vec2> points, std::span<const int> loop_sizes) : points_(points) {
        next_.reserve(points.size());
        previous_.reserve(points.size());
        int first = 0;
        for (const int size : loop_sizes) {
            for (int i = 0; i < size; ++i) {
                next_.push_back(first + (i + 1) % size);
                previous_.push_back(first + (i + size - 1) % size);
            }
            first += size;
        }
        triangles_.reserve(points.size() + 2 * loop_sizes.size());
    }

    std::vector<Triangle> run() {
        std::vector<int> order(points_.size());
        std::iota(order.begin(), order.end(), 0);
        std::sort(order.begin(), order.end(), [this](int a, int b) { return before(a, b); });
        for (const int corner : order)
            visit(corner);
        return std::move(triangles_);
    }

  private:
    bool before(int a, int b) const {
        const Vec2 p = points_[a], q = points_[b];
        if (p.x != q.x) return p.x < q.x;
        if (p.y != q.y) return p.y < q.y;
        return a < b;
    }

    void visit(int v) {
        const bool comes_from_left = before(previous_[v], v), goes_right = before(v, next_[v]);
        if (comes_from_left && goes_right)
            pass_low(v);
        else if (!comes_from_left && !goes_right)
            pass_high(v);
        else if (!comes_from_left)
            opens_region(v) ? start(v) : split(v);
        else
            end_or_merge(v);
    }

    /// The region fills the smaller angle at v, not the larger one.
    bool opens_region(int v) const { return turn(points_[previous_[v]], points_[v], points_[next_[v]]) > 0; }

    void pass_low(int v) {
        Strip &strip = strips_[with_low(previous_[v])];
        if (!strip.upper.empty()) {
            strip.chain.close(v, triangles_);
            strip.chain = std::move(strip.upper.front());
            strip.upper.clear();
        }
        strip.chain.add(v, Border::low, points_, triangles_);
        strip.low_edge = v;
    }

    void pass_high(int v) {
        Strip &strip = strips_[with_high(v)];
        if (!strip.upper.empty()) {
            strip.upper.front().close(v, triangles_);
            strip.upper.clear();
        }
        strip.chain.add(v, Border::high, points_, triangles_);
        strip.high_edge = previous_[v];
    }

    void start(int v) { strips_.push_back({v, previous_[v], Chain(v), {}}); }

    /// Two borders end at v. Those of one strip end it; those of two strips make them one.
    void end_or_merge(int v) {
        const std::size_t above = with_low(previous_[v]), below = with_high(v);
        above == below ? end(above, v) : merge(above, v);
    }

    void end(std::size_t at, int v) {
        strips_[at].chain.close(v, triangles_);
        if (!strips_[at].upper.empty()) strips_[at].upper.front().close(v, triangles_);
        remove(at);
    }

    /// A hole, or a notch in the border, starts at v: the strip parts in two.
    void split(int v) {
        Strip &whole = strips_[around(v)];
        Chain above = taken_above(whole);
        above.add(v, Border::low, points_, triangles_);
        whole.chain.add(v, Border::high, points_, triangles_);
        Strip upper{v, whole.high_edge, std::move(above), {}};
        whole.high_edge = previous_[v];
        strips_.push_back(std::move(upper));
    }

    /// What waits above the line from the strip's last corner to a corner right of it. What waits on a low
    /// border lies above that line, what waits on a high one below it.
    Chain taken_above(Strip &whole) {
        Chain fresh(whole.chain.last());
        if (!whole.upper.empty()) {
            fresh = std::move(whole.upper.front());
            whole.upper.clear();
        } else if (whole.chain.border() == Border::low) {
            std::swap(fresh, whole.chain);
        }
        return fresh;
    }

    /// Two strips meet at v: they stay two chains until a later corner sees v.
    void merge(std::size_t above_at, int v) {
        Strip above = std::move(strips_[above_at]);
        remove(above_at);
        Strip &below = strips_[with_high(v)];
        if (!below.upper.empty()) {
            below.upper.front().close(v, triangles_);
            below.upper.clear();
        }
        if (!above.upper.empty()) {
            above.chain.close(v, triangles_);
            above.chain = std::move(above.upper.front());
        }
        below.chain.add(v, Border::high, points_, triangles_);
        above.chain.add(v, Border::low, points_, triangles_);
        below.upper.push_back(std::move(above.chain));
        below.high_edge = above.high_edge;
    }

    std::size_t with_low(int edge) const {
        return position([edge](const Strip &s) { return s.low_edge == edge; });
    }
    std::size_t with_high(int edge) const {
        return position([edge](const Strip &s) { return s.high_edge == edge; });
    }
    template <typename Test> std::size_t position(Test test) const {
        const auto found = std::find_if(strips_.begin(), strips_.end(), test);
        if (found == strips_.end()) refuse();
        return static_cast<std::size_t>(found - strips_.begin());
    }

    [[noreturn]] static void refuse() {
        throw std::logic_error("triangulated: loops cross or run the wrong way");
    }

    /// The strip v lies in: the one whose borders it keeps farthest from.
    std::size_t around(int v) const {
        if (strips_.empty()) refuse();
        std::size_t best = 0;
        double best_room = -std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < strips_.size(); ++i) {
            const double room = std::min(left_of(strips_[i].low_edge, v), left_of(strips_[i].high_edge, v));
            if (room > best_room) {
                best_room = room;
                best = i;
            }
        }
        return best;
    }

    /// Distance of v from the line of a loop edge, positive on the region's side.
    double left_of(int edge, int v) const {
        const Vec2 a = points_[edge], b = points_[next_[edge]];
        return turn(a, b, points_[v]) / length(b - a);
    }

    void remove(std::size_t at) { strips_.erase(strips_.begin() + static_cast<std::ptrdiff_t>(at)); }

    std::span<const Vec2> points_;
    std::vector<int> next_, previous_;
    std::vector<Strip> strips_;
    std::vector<Triangle> triangles_;
};

} // namespace

std::vector<Triangle> triangulated(std::span<const Vec2> points, std::span<const int> loop_sizes) {
    return Sweep(points, loop_sizes).run();
}

} // namespace roundlay
