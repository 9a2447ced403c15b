#include "tests/router/support/simulator.h"

#include "tests/router/support/board.h"

#include <algorithm>
#include <cmath>

namespace router_test {

namespace {

constexpr double within = 0.05; // mm: the promise
constexpr double apart = 0.4;   // mm between the points at which an outline is looked at

Point minus(Point a, Point b) {
    return {a.x - b.x, a.y - b.y};
}

double from_segment(Point a, Point b, Point p) {
    const Point d = minus(b, a), q = minus(p, a);
    const double square = d.x * d.x + d.y * d.y;
    const double t = square > 0 ? std::clamp((q.x * d.x + q.y * d.y) / square, 0.0, 1.0) : 0;
    return std::hypot(q.x - t * d.x, q.y - t * d.y);
}

double turn(Point a, Point b, Point c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

double between_segments(Point a, Point b, Point c, Point d) {
    if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) return 0;
    return std::min(
        {from_segment(a, b, c), from_segment(a, b, d), from_segment(c, d, a), from_segment(c, d, b)});
}

bool inside(const std::vector<Point> &ring, Point p) {
    bool in = false;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i], b = ring[(i + 1) % ring.size()];
        if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
    }
    return in;
}

double to_outline(const std::vector<Point> &ring, Point p) {
    double least = INFINITY;
    for (std::size_t i = 0; i < ring.size(); ++i)
        least = std::min(least, from_segment(ring[i], ring[(i + 1) % ring.size()], p));
    return least;
}

class Judge {
  public:
    Judge(const Setting &setting, const std::vector<KnownCorner> &corners) : s_(setting), corners_(corners) {}

    void moves(const std::vector<Bit> &bits) {
        double deepest = 0;
        for (const Bit &bit : bits) {
            const double low = std::min(bit.za, bit.zb);
            deepest = std::min(deepest, low);
            if (low < -s_.thickness - s_.through - 0.0006)
                fault(bit, "deeper than the board and what is stated");
            if (bit.rapid && (bit.a.x != bit.b.x || bit.a.y != bit.b.y) && low < s_.safe_height - 0.0006)
                fault(bit, "a rapid move below the safe height");
            if (bit.rapid && std::min(bit.za, bit.zb) < 0 && bit.zb < bit.za)
                fault(bit, "a rapid move down into the board");
            if (!bit.rapid && low < 0 && !bit.turning) fault(bit, "cuts while the spindle stands");
            if (!bit.rapid && bit.feed > s_.feed + 1e-6) fault(bit, "faster than stated");
            if (!bit.rapid && bit.zb < bit.za && bit.feed > s_.plunge + 1e-6)
                fault(bit, "goes down faster than stated");
        }
        if (deepest > -s_.thickness) faults_.push_back("the board is not cut through");
    }

    void gouges(const std::vector<Bit> &bits, const Wanted &wanted) {
        const auto &ring = wanted.outline;
        for (const Bit &bit : bits) {
            if (std::min(bit.za, bit.zb) >= 0 || is_of_mark(bit, wanted) || is_in_hole(bit, wanted)) continue;
            bool wood = inside(ring, bit.a) || inside(ring, bit.b);
            for (std::size_t i = 0; i < ring.size() && !wood; ++i)
                wood = between_segments(bit.a, bit.b, ring[i], ring[(i + 1) % ring.size()]) <
                       s_.tool / 2 - within;
            if (wood) return fault(bit, "cuts into " + wanted.name);
        }
    }

    /// Each point of the outline that a tool can touch has been cut free, all round and, but for the tabs,
    /// through.
    void left(const std::vector<Bit> &bits, const Wanted &wanted) {
        const auto &ring = wanted.outline;
        bool before_first = false, first = true, held = false;
        int tabs = 0;
        double width = 0, narrowest = INFINITY, opening = 0;
        for (std::size_t i = 0; i < ring.size(); ++i) {
            const Point a = ring[i], b = ring[(i + 1) % ring.size()];
            const double along = std::hypot(b.x - a.x, b.y - a.y);
            const int steps = std::max(1, static_cast<int>(along / apart));
            for (int k = 0; k < steps; ++k) {
                const double t = (k + 0.5) / steps;
                const Point p{a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)};
                const Point n{(b.y - a.y) / along, -(b.x - a.x) / along};
                const double reach = to_outline(ring, {p.x + n.x * s_.tool / 2, p.y + n.y * s_.tool / 2});
                bool stays = false;
                if (reach < s_.tool / 2 - 1e-4)
                    check_corner(p, wanted);
                else if (!is_cut(bits, p, s_.tab_height - s_.thickness)) {
                    if (!told_) fault_at(p, wanted.name + " is larger than wanted, or hangs on the board");
                    told_ = true;
                } else
                    stays = !is_cut(bits, p, -s_.thickness);
                if (first) before_first = stays, first = false;
                if (stays && !held) ++tabs, width = 0;
                if (stays) width += along / steps;
                if (!stays && held) {
                    if (tabs == 1 && before_first)
                        opening = width;
                    else
                        narrowest = std::min(narrowest, width);
                }
                held = stays;
            }
        }
        if (held && before_first)
            --tabs, narrowest = std::min(narrowest, width + opening);
        else if (held)
            narrowest = std::min(narrowest, width);
        told_ = false;
        if (tabs < 2 || tabs > s_.tabs)
            faults_.push_back(wanted.name + " is held by " + std::to_string(tabs) + " tabs");
        else if (narrowest < s_.tab_width - 2 * apart)
            faults_.push_back(wanted.name + " has a tab of " + std::to_string(narrowest) + " mm");
    }

    /// Each is cut from end to end, as deep as is stated.
    void marks(const std::vector<Bit> &bits, const Wanted &wanted) {
        for (const auto &[from, to] : wanted.marks)
            for (const double t : {0.0, 0.25, 0.5, 0.75, 1.0}) {
                const Point p{from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)};
                const bool cut = std::ranges::any_of(bits, [&](const Bit &bit) {
                    return !bit.rapid && std::abs(bit.za + s_.scribe) < 0.0006 &&
                           std::abs(bit.zb + s_.scribe) < 0.0006 && from_segment(bit.a, bit.b, p) < within;
                });
                if (!cut) return fault_at(p, wanted.name + " lacks a mark");
            }
    }

    /// Each is cut through to its border, and nothing stands in it.
    void holes(const std::vector<Bit> &bits, const Wanted &wanted) {
        constexpr double turn = 0.02; // radians
        for (const auto &[middle, diameter] : wanted.holes)
            for (double off = diameter / 2 - 1e-6; off > -apart; off -= apart)
                for (double at = 0; at<6.28; at += off> 2 ? turn : 0.3) {
                    const double r = std::max(off, 0.0);
                    const Point p{middle.x + r * std::cos(at), middle.y + r * std::sin(at)};
                    if (!is_cut(bits, p, -s_.thickness))
                        return fault_at(p, wanted.name + " lacks a hole, or something stands in it");
                }
    }

    std::vector<std::string> take() { return std::move(faults_); }

  private:
    /// On its line, and no deeper than marks are.
    bool is_of_mark(const Bit &bit, const Wanted &wanted) const {
        if (std::min(bit.za, bit.zb) < -s_.scribe - 0.0006) return false;
        return std::ranges::any_of(wanted.marks, [&](const auto &mark) {
            return from_segment(mark.first, mark.second, bit.a) < within &&
                   from_segment(mark.first, mark.second, bit.b) < within;
        });
    }

    /// The tool stays within it.
    bool is_in_hole(const Bit &bit, const Wanted &wanted) const {
        return std::ranges::any_of(wanted.holes, [&](const auto &hole) {
            const auto within_it = [&](Point p) {
                return std::hypot(p.x - hole.first.x, p.y - hole.first.y) + s_.tool / 2 <=
                       hole.second / 2 + within;
            };
            return within_it(bit.a) && within_it(bit.b);
        });
    }

    void fault(const Bit &bit, const std::string &what) {
        faults_.push_back("line " + std::to_string(bit.line) + ": " + what);
    }

    void fault_at(Point p, const std::string &what) {
        faults_.push_back("at " + std::to_string(p.x) + " " + std::to_string(p.y) + ": " + what);
    }

    bool is_cut(const std::vector<Bit> &bits, Point p, double depth) const {
        return std::ranges::any_of(bits, [&](const Bit &bit) {
            const bool straight_down = bit.a.x == bit.b.x && bit.a.y == bit.b.y;
            const double z = straight_down ? std::min(bit.za, bit.zb) : std::max(bit.za, bit.zb);
            return z <= depth + 0.0006 && from_segment(bit.a, bit.b, p) <= s_.tool / 2 + within;
        });
    }

    /// What no tool reaches is near to a corner that was told.
    void check_corner(Point p, const Wanted &wanted) {
        const double r = s_.tool / 2;
        const bool told = std::ranges::any_of(corners_, [&](const KnownCorner &corner) {
            const double sine = r / (r + corner.left), reach = r * std::sqrt(1 - sine * sine) / sine;
            return std::hypot(p.x - corner.at.x, p.y - corner.at.y) <= reach + apart + 1;
        });
        // what the tool leaves there may be next to nothing: then nobody needs to be told
        if (!told && !told_) {
            untold_ = p;
            fault_at(p, wanted.name + " has an inner corner that nobody told");
            told_ = true;
        }
    }

    const Setting &s_;
    const std::vector<KnownCorner> &corners_;
    std::vector<std::string> faults_;
    bool told_ = false;
    Point untold_;
};

std::vector<Bit> near_to(const std::vector<Bit> &bits, const Wanted &wanted, double tool) {
    Point low{INFINITY, INFINITY}, high{-INFINITY, -INFINITY};
    for (const Point p : wanted.outline) {
        low = {std::min(low.x, p.x - tool), std::min(low.y, p.y - tool)};
        high = {std::max(high.x, p.x + tool), std::max(high.y, p.y + tool)};
    }
    std::vector<Bit> near;
    for (const Bit &bit : bits)
        if (std::min(bit.za, bit.zb) < 0 && std::max(bit.a.x, bit.b.x) >= low.x &&
            std::min(bit.a.x, bit.b.x) <= high.x && std::max(bit.a.y, bit.b.y) >= low.y &&
            std::min(bit.a.y, bit.b.y) <= high.y)
            near.push_back(bit);
    return near;
}

} // namespace

std::vector<std::string> faults_of(const std::string &program, const Setting &setting,
                                   const std::vector<Wanted> &wanted,
                                   const std::vector<KnownCorner> &corners) {
    const Program read = read_program(program);
    if (!read.faults.empty()) return read.faults;
    Judge judge(setting, corners);
    judge.moves(read.bits);
    for (const Wanted &one : wanted) {
        const std::vector<Bit> near = near_to(read.bits, one, setting.tool);
        judge.gouges(near, one);
        judge.left(near, one);
        judge.marks(near, one);
        judge.holes(near, one);
    }
    std::vector<std::string> faults = judge.take();
    const auto of_board = board_faults(read.bits, setting, wanted);
    faults.insert(faults.end(), of_board.begin(), of_board.end());
    return faults;
}

} // namespace router_test
