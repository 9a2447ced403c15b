#include "kernel/layout/pegs.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/steps.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace roundlay {

namespace {

/// Takes (from, to) out of a list of spans.
std::vector<Span> without(const std::vector<Span> &spans, double from, double to) {
    std::vector<Span> rest;
    for (const Span &s : spans) {
        if (to <= s.from || from >= s.to) {
            rest.push_back(s);
            continue;
        }
        if (from >= s.from) rest.push_back({s.from, from});
        if (to <= s.to) rest.push_back({to, s.to});
    }
    return rest;
}

std::optional<double> nearest(const std::vector<Span> &spans, double x) {
    std::optional<double> best;
    for (const Span &s : spans) {
        const double here = std::clamp(x, s.from, s.to);
        if (!best || std::abs(here - x) < std::abs(*best - x)) best = here;
    }
    return best;
}

/// Where the pegs would stand if nothing were in their way: evenly over the reach, a locked corner counting
/// as a place of its own; every second joint moved so that pegs do not stand over one another.
std::vector<double> wished(const Joint &joint, const PegRule &rule) {
    const double shift = rule.between.mm();
    const double reach = joint.reach.length();
    const int corners = int(joint.locked_left) + int(joint.locked_right);
    const double widest = std::max(rule.spacing.mm() - shift, shift);
    int bays = std::max(1, static_cast<int>(std::ceil(reach / widest - tolerance::weld)));
    bays = std::max(bays, joint.fewest + corners - 1);
    std::vector<double> places;
    for (int i = joint.locked_left ? 1 : 0; i <= bays - (joint.locked_right ? 1 : 0); ++i) {
        double x = joint.reach.from + reach * i / bays;
        const bool at_left = i == 0, at_right = i == bays;
        if (at_left) x += joint.shifted ? shift : 0;
        else if (at_right) x -= joint.shifted ? shift : 0;
        else x += joint.shifted ? shift / 2 : -shift / 2;
        places.push_back(x);
    }
    return places;
}

std::vector<double> take_nearest(std::vector<Span> free, const std::vector<double> &wishes, double between) {
    std::vector<double> places;
    for (const double wish : wishes) {
        const std::optional<double> x = nearest(free, wish);
        if (!x) continue;
        places.push_back(*x);
        free = without(free, *x - between, *x + between);
    }
    std::sort(places.begin(), places.end());
    return places;
}

/// As many as fit from the left: no other way fits more.
std::vector<double> pack(const std::vector<Span> &free, double between) {
    std::vector<double> places;
    double from = -std::numeric_limits<double>::max();
    for (const Span &s : free)
        for (double x = std::max(s.from, from); x <= s.to; x += between) {
            places.push_back(x);
            from = x + between;
        }
    return places;
}

} // namespace

std::vector<double> place_pegs(const Joint &joint, const PegRule &rule, const std::vector<double> &taken) {
    const double between = rule.between.mm();
    std::vector<Span> free = joint.allowed;
    for (const double x : taken) free = without(free, x - between, x + between);
    std::vector<double> places = take_nearest(free, wished(joint, rule), between);
    if (static_cast<int>(places.size()) >= joint.fewest) return places;
    std::vector<double> packed = pack(free, between);
    if (packed.size() <= places.size()) return places;
    packed.resize(std::min(packed.size(), static_cast<std::size_t>(joint.fewest)));
    return packed;
}

namespace {

class WallPegs {
  public:
    WallPegs(const Shell &shell, Layout &layout, int wall, const std::vector<CourseSpans> &courses)
        : shell_(shell), layout_(layout), rule_(shell.pegs), index_(wall), wall_(layout.walls[static_cast<std::size_t>(wall)]),
          courses_(courses) {}

    bool lay_out() {
        for (std::size_t k = 0; k + 1 < courses_.size(); ++k)
            for (const PieceSpan &upper : courses_[k + 1]) peg_down(upper, courses_[k], k % 2 == 1);
        return good_;
    }

  private:
    void peg_down(const PieceSpan &upper, const CourseSpans &below, bool shifted) {
        for (const PieceSpan &lower : below) {
            if (std::min(upper.span.to, lower.span.to) - std::max(upper.span.from, lower.span.from) <=
                tolerance::clear)
                continue;
            note_neighbours(upper, lower);
            if (rule_.wanted) peg_joint(upper, lower, shifted);
        }
        number_pegs(upper);
    }

    void note_neighbours(const PieceSpan &upper, const PieceSpan &lower) {
        Piece &u = piece(upper), &l = piece(lower);
        u.below.push_back(l.tag);
        l.above.push_back(u.tag);
    }

    Piece &piece(const PieceSpan &s) { return layout_.pieces[static_cast<std::size_t>(s.piece)]; }

    Joint joint_of(const PieceSpan &upper, const PieceSpan &lower, bool shifted) const {
        const double keep = rule_.end_distance.mm();
        Joint j;
        j.shifted = shifted;
        const Span both{std::max(upper.shoulders.from, lower.shoulders.from),
                        std::min(upper.shoulders.to, lower.shoulders.to)};
        j.allowed = {{both.from + keep, both.to - keep}};
        if (both.length() < 2 * keep) j.allowed.clear();
        // The bore runs down the whole upper piece and into the lower: it keeps clear of what openings took.
        for (const auto *taken : {&upper.taken_below, &upper.taken_above, &lower.taken_above, &lower.taken_below})
            for (const Span &t : *taken) j.allowed = without(j.allowed, t.from - keep, t.to + keep);
        j.locked_left = upper.locked_left && lower.corner_left;
        j.locked_right = upper.locked_right && lower.corner_right;
        j.reach = both;
        if (!j.allowed.empty()) {
            if (!j.locked_left) j.reach.from = j.allowed.front().from;
            if (!j.locked_right) j.reach.to = j.allowed.back().to;
        }
        const int corners = int(j.locked_left) + int(j.locked_right);
        j.fewest = corners == 0 ? 2 : std::max(1, rule_.fewest - corners);
        if (corners == 1 && both.length() < short_joint()) j.fewest = 1;
        return j;
    }

    /// A short end between a corner and a jamb is held by the corner and one peg.
    double short_joint() const { return 2 * rule_.end_distance.mm() + 6 * rule_.between.mm(); }

    void peg_joint(const PieceSpan &upper, const PieceSpan &lower, bool shifted) {
        const Joint joint = joint_of(upper, lower, shifted);
        std::vector<double> taken = bores_in(lower, false);
        for (const double x : bores_in(upper, true)) taken.push_back(x);
        const std::vector<double> xs = place_pegs(joint, rule_, taken);
        if (static_cast<int>(xs.size()) < joint.fewest && !slight(upper, lower)) refuse(upper, lower, joint, xs.size());
        for (const double x : xs) add_peg(upper, lower, x);
    }

    /// Only a ledge of the upper piece rests on this lower one: it is held elsewhere.
    bool slight(const PieceSpan &upper, const PieceSpan &lower) const {
        const double common =
            std::min(upper.span.to, lower.span.to) - std::max(upper.span.from, lower.span.from);
        return common < std::min(upper.span.length(), lower.span.length()) / 2;
    }

    /// Where a piece is bored already; of an upper one only what a person stated, since its pegs below are still to come.
    std::vector<double> bores_in(const PieceSpan &s, bool stated_only) {
        std::vector<double> xs;
        for (const Cut &cut : piece(s).cuts)
            if (const Bore *bore = std::get_if<Bore>(&cut); bore && (bore->use || !stated_only))
                xs.push_back(bore->x + s.origin);
        return xs;
    }

    /// A draw-bore's hole in the lower log lies nearer to the upper log's nearer end.
    double drawn(const PieceSpan &upper, double x) const {
        const double draw = rule_.draw.mm();
        return x < (upper.span.from + upper.span.to) / 2 ? x - draw : x + draw;
    }

    void add_peg(const PieceSpan &upper, const PieceSpan &lower, double x) {
        Piece &u = piece(upper), &l = piece(lower);
        const int index = static_cast<int>(layout_.pegs.size());
        const Course &over = *upper.course, &under = *lower.course;
        const double under_foot = std::max(under.low(x), floor_under(layout_, index_, x, x)); // on a step less of it is left
        const double depth = std::min(rule_.depth_below, 1.0) * (under.high(x) - under_foot);
        const bool through = rule_.depth_below >= 1;
        const double below = drawn(upper, x); // where the lower hole is
        const double top = over.high(x) + over.crown, under_top = under.high(below) + under.crown;
        const double foot =
            over.scoped ? std::max(over.low(x) - over.lip, under.high(x) + under.crown + over.scribe) : over.low(x);
        const bool on_round = under.lip > 0; // its underside is scoped over the crown of the next one down
        const double end = !through ? under_top - depth : on_round ? under_top - depth + under.scribe
                                                                       : std::max(under.low(below), under_foot);
        u.cuts.emplace_back(bore(u, x, foot, top, index, true));
        l.cuts.emplace_back(bore(l, below, end, under_top, index, through));
        Peg peg;
        peg.upper = upper.piece;
        peg.lower = lower.piece;
        peg.top = wall_.frame.to_world({x, wall_.thickness / 2, top});
        peg.diameter = rule_.diameter.mm();
        peg.length = top - under_top + depth;
        layout_.pegs.push_back(peg);
        mine_.push_back(index);
    }

    /// From wall x and heights over the foundation to the piece's own frame.
    Bore bore(const Piece &p, double x, double low, double high, int peg, bool through) const {
        const Vec3 foot = p.frame.to_local(wall_.frame.to_world({x, wall_.thickness / 2, low}));
        return {foot.x, foot.y, foot.z, foot.z + high - low, rule_.diameter.mm(), peg, true, through, std::nullopt};
    }

    void number_pegs(const PieceSpan &upper) {
        for (std::size_t i = 0; i < mine_.size(); ++i)
            layout_.pegs[static_cast<std::size_t>(mine_[i])].name = piece(upper).tag + "/" + std::to_string(i + 1);
        mine_.clear();
    }

    void refuse(const PieceSpan &upper, const PieceSpan &lower, const Joint &joint, std::size_t fit) {
        good_ = false;
        const double common = std::min(upper.shoulders.to, lower.shoulders.to) -
                              std::max(upper.shoulders.from, lower.shoulders.from);
        // Two rows, staggered: each bore keeps `between` from every other one in the lower log.
        const double needed = 2 * rule_.end_distance.mm() + (2 * joint.fewest - 1) * rule_.between.mm();
        layout_.findings.push_back(
            {Weight::error, "pegs-do-not-fit", round_place(wall_.name, piece(upper).round),
             "piece " + piece(upper).tag + " on " + piece(lower).tag + " needs " + std::to_string(joint.fewest) +
                 " pegs, only " + std::to_string(fit) + " fit: the joint is " + say(shell_, common) +
                 " long and " + say(shell_, needed) +
                 " would hold them; move the opening, or state smaller [pegs] end_distance or between",
             "pegs.end_distance"});
    }

    const Shell &shell_;
    Layout &layout_;
    const PegRule &rule_;
    int index_;
    const WallPlace &wall_;
    const std::vector<CourseSpans> &courses_;
    std::vector<int> mine_;
    bool good_ = true;
};

bool check_rule(const Shell &shell, Layout &layout) {
    const PegRule &r = shell.pegs;
    if (!r.wanted) return true;
    const auto refuse = [&](const std::string &message, const std::string &key) {
        layout.findings.push_back({Weight::error, "peg-rule", "pegs", message, "pegs." + key});
        return false;
    };
    double thinnest = layout.walls[0].thickness;
    for (const WallPlace &w : layout.walls) thinnest = std::min(thinnest, w.thickness);
    if (!(r.diameter.mm() > 0) || r.diameter.mm() > thinnest / 2)
        return refuse("a peg of " + say(shell, r.diameter.mm()) + " does not suit walls " + say(shell, thinnest) +
                          " thick; at most half of that can be bored away",
                      "diameter");
    if (r.between.mm() < r.diameter.mm() + 2 * tolerance::clear)
        return refuse("bores " + say(shell, r.between.mm()) + " apart run into one another; keep more than the diameter",
                      "between");
    if (r.end_distance.mm() < r.diameter.mm() / 2 + r.draw.mm() + tolerance::clear)
        return refuse("a bore " + say(shell, r.end_distance.mm()) + " from an end breaks out of it", "end_distance");
    if (r.draw.mm() > r.diameter.mm() / 4)
        return refuse("a draw of " + say(shell, r.draw.mm()) + " would break a peg of " + say(shell, r.diameter.mm()) + "; " +
                          say(shell, r.diameter.mm() / 4) + " at most",
                      "draw");
    if (r.square && (r.square->mm() <= r.diameter.mm() / std::sqrt(2.0) || r.square->mm() >= r.diameter.mm()))
        return refuse("square pegs of " + say(shell, r.square->mm()) + " do not hold in bores of " +
                          say(shell, r.diameter.mm()) + "; their arrises bite where the side is between " +
                          say(shell, r.diameter.mm() / std::sqrt(2.0)) + " and that",
                      "square");
    return true;
}

} // namespace

bool lay_out_pegs(const Shell &shell, Layout &layout, const std::vector<std::vector<CourseSpans>> &spans) {
    if (!check_rule(shell, layout)) return false;
    bool good = true;
    for (std::size_t w = 0; w < spans.size(); ++w)
        good = WallPegs(shell, layout, static_cast<int>(w), spans[w]).lay_out() && good;
    return good;
}

} // namespace roundlay
