#include "kernel/layout/fastenings/pegs.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/fastenings/peg_room.h"
#include "kernel/layout/fastenings/peg_words.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace roundlay {

namespace {

constexpr double far_away = std::numeric_limits<double>::max();

std::vector<Span> moved(std::vector<Span> spans, double by) {
    for (Span &s : spans)
        s = {s.from + by, s.to + by};
    return spans;
}

/// Where a piece is bored, along it, and how wide.
struct Bored {
    double x = 0, diameter = 0;
};
using BoresOfPieces = Indexed<std::vector<Bored>, Piece>;

class WallPegs {
  public:
    WallPegs(const Shell &shell, const Plan &plan, const Foundation &foundation, const Pieces &logs,
             const std::vector<CourseSpans> &courses, Index<WallPlace> wall, BoresOfPieces &bored,
             Found<Pegs> &made)
        : shell_(shell), foundation_(foundation), logs_(logs), rule_(shell.pegs), index_(wall),
          wall_(plan.walls[wall]), courses_(courses), bored_(bored), made_(made) {}

    void lay_out() {
        for (std::size_t k = 0; k + 1 < courses_.size(); ++k) {
            over_ = course_in(k + 2);
            under_ = k > 0 ? course_in(k - 1) : nullptr;
            for (const PieceSpan &upper : courses_[k + 1])
                peg_down(upper, courses_[k], k % 2 == 1);
        }
        note_few();
    }

  private:
    const Course *course_in(std::size_t k) const {
        return k < courses_.size() && !courses_[k].empty() ? &courses_[k].front().course : nullptr;
    }

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
        made_.meetings.push_back({upper.piece, lower.piece});
    }

    const Piece &piece(const PieceSpan &s) const { return logs_.pieces[s.piece]; }

    Joint joint_of(const PieceSpan &upper, const PieceSpan &lower, bool shifted) {
        Joint j;
        j.shifted = shifted;
        const std::vector<Span> clear = clear_of_ends(upper, lower);
        j.allowed = clear_of_bores(upper, lower, clear);
        j.locked_left = upper.locked_left && lower.corner_left;
        j.locked_right = upper.locked_right && lower.corner_right;
        j.reach = {std::max(upper.shoulders.from, lower.shoulders.from),
                   std::min(upper.shoulders.to, lower.shoulders.to)};
        if (j.locked_left)
            j.reach.from = wall_.meetings.front().x;
        else if (!clear.empty())
            j.reach.from = clear.front().from;
        if (j.locked_right)
            j.reach.to = wall_.meetings.back().x;
        else if (!clear.empty())
            j.reach.to = clear.back().to;
        j.fewest = std::clamp(staggered_in(clear), 1, asked(j));
        return j;
    }

    /// Pegs that a log should have on its bearer, beside its locked corners.
    int asked(const Joint &j) const { return std::max(1, rule_.fewest - corners_of(j)); }

    /// How many a joint can hold so that the next one, staggered, holds as many: more here would leave too
    /// few there.
    int staggered_in(const std::vector<Span> &clear) const {
        double places = 0;
        for (const Span &s : clear)
            places += std::floor(s.length() / rule_.between.mm() + tolerance::weld) + 1;
        return static_cast<int>(std::min(places / 2, 1000.0));
    }

    static int corners_of(const Joint &j) { return int(j.locked_left) + int(j.locked_right); }

    /// Where a piece may be bored for pegs: clear of its ends and of what was cut from it.
    std::vector<Span> within(const PieceSpan &s, std::vector<Span> taken_below,
                             std::vector<Span> taken_above) const {
        const double keep = rule_.end_distance.mm();
        std::vector<Span> free{{s.shoulders.from + keep, s.shoulders.to - keep}};
        if (s.shoulders.length() < 2 * keep) free.clear();
        for (const auto *taken : {&taken_below, &taken_above})
            for (const Span &t : *taken)
                free = without(free, t.from - keep, t.to + keep);
        return free;
    }

    static double underside(const Course &c, double x) { return c.low(x) + c.hollow; }
    static double top(const Course &c, double x) { return c.high(x); }

    /// The bore runs down the whole upper piece and into the lower one, there where a draw moves it to.
    std::vector<Span> clear_of_ends(const PieceSpan &upper, const PieceSpan &lower) {
        std::vector<Span> above = within(upper, upper.taken_below, upper.taken_above);
        std::vector<Span> below = within(lower, in_the_way_below(lower), lower.taken_above);
        if (over_) above = clear_of_openings(shell_, wall_.name, *over_, underside, std::move(above));
        if (under_ && rule_.depth_below >= 1) // its foot comes out underneath
            below = clear_of_openings(shell_, wall_.name, *under_, top, std::move(below));
        return common(above, drawn_back(upper, below));
    }

    std::vector<Span> clear_of_bores(const PieceSpan &upper, const PieceSpan &lower, std::vector<Span> free) {
        for (const auto &[x, keep] : bores_in(upper))
            free = without(free, x - keep, x + keep);
        std::vector<Span> below{{-far_away, far_away}};
        for (const auto &[x, keep] : bores_in(lower))
            below = without(below, x - keep, x + keep);
        return common(free, drawn_back(upper, below));
    }

    /// Where the upper hole may be, of where the lower one may be.
    std::vector<Span> drawn_back(const PieceSpan &upper, const std::vector<Span> &lower) const {
        const double draw = rule_.draw.mm(), middle = middle_of(upper);
        if (draw == 0) return lower;
        std::vector<Span> all = common(moved(lower, draw), {{-far_away, middle}});
        for (const Span &s : common(moved(lower, -draw), {{middle, far_away}}))
            all.push_back(s);
        return all;
    }

    /// What openings took from the underside of a lower piece, less what pegs end well over.
    std::vector<Span> in_the_way_below(const PieceSpan &lower) {
        std::vector<Span> left;
        for (const Span &t : lower.taken_below)
            if (!pegs_end_over(rule_, piece(lower), lower, t, over_foundation(piece(lower))))
                left.push_back(t);
        return left;
    }

    double over_foundation(const Piece &log) const { return log.frame.origin.z - wall_.frame.origin.z; }

    void peg_joint(const PieceSpan &upper, const PieceSpan &lower, bool shifted) {
        const Joint joint = joint_of(upper, lower, shifted);
        const std::vector<double> xs = place_pegs(joint, rule_, {});
        if (!slight(upper, lower)) judge(upper, lower, joint, xs);
        for (const double x : xs)
            add_peg(upper, lower, x);
    }

    /// Only a ledge of the upper piece rests on this lower one: it is held elsewhere.
    bool slight(const PieceSpan &upper, const PieceSpan &lower) const {
        const double common =
            std::min(upper.span.to, lower.span.to) - std::max(upper.span.from, lower.span.from);
        return common < std::min(upper.span.length(), lower.span.length()) / 2;
    }

    /// Where a piece is bored already, and how far a peg's bore keeps from there.
    std::vector<std::pair<double, double>> bores_in(const PieceSpan &s) {
        std::vector<std::pair<double, double>> all;
        for (const auto &[x, diameter] : bored_[s.piece])
            all.emplace_back(x + s.origin, std::max(rule_.between.mm(), (diameter + rule_.diameter.mm()) / 2 +
                                                                            2 * tolerance::clear));
        return all;
    }

    static double middle_of(const PieceSpan &upper) { return (upper.span.from + upper.span.to) / 2; }

    /// A draw-bore's hole in the lower log lies nearer to the upper log's nearer end.
    double drawn(const PieceSpan &upper, double x) const {
        const double draw = rule_.draw.mm();
        return x < middle_of(upper) ? x - draw : x + draw;
    }

    void add_peg(const PieceSpan &upper, const PieceSpan &lower, double x) {
        const Index<Peg> index = made_.pegs.next();
        const Course &over = upper.course, &under = lower.course;
        const double under_foot =
            std::max(under.low(x), floor_under(foundation_, index_, x, x)); // on a step less of it is left
        const double depth = std::min(rule_.depth_below, 1.0) * (under.high(x) - under_foot);
        const bool through = rule_.depth_below >= 1;
        const double below = drawn(upper, x); // where the lower hole is
        const double top = over.high(x) + over.crown, under_top = under.high(below) + under.crown;
        const double foot = over.scoped
                                ? std::max(over.low(x) - over.lip, under.high(x) + under.crown + over.scribe)
                                : over.low(x);
        const bool on_round = under.lip > 0; // its underside is scoped over the crown of the next one down
        const double end = !through   ? under_top - depth
                           : on_round ? under_top - depth + under.scribe
                                      : std::max(under.low(below), under_foot);
        add_bore(upper, bore(piece(upper), x, foot, top, index, true));
        add_bore(lower, bore(piece(lower), below, end, under_top, index, through));
        Peg peg;
        peg.upper = upper.piece;
        peg.lower = lower.piece;
        peg.top = wall_.frame.to_world({x, wall_.thickness / 2, top});
        peg.diameter = rule_.diameter.mm();
        peg.length = top - under_top + depth;
        made_.pegs.push_back(peg);
        mine_.push_back(index);
    }

    void add_bore(const PieceSpan &s, const Bore &bore) {
        made_.bores.push_back({s.piece, bore});
        bored_[s.piece].push_back({bore.x, bore.diameter});
    }

    /// From wall x and heights over the foundation to the piece's own frame.
    Bore bore(const Piece &p, double x, double low, double high, Index<Peg> peg, bool through) const {
        const Vec3 foot = p.frame.to_local(wall_.frame.to_world({x, wall_.thickness / 2, low}));
        return {foot.x, foot.y, foot.z,  foot.z + high - low, rule_.diameter.mm(),
                peg,    true,   through, std::nullopt};
    }

    void number_pegs(const PieceSpan &upper) {
        for (std::size_t i = 0; i < mine_.size(); ++i)
            made_.pegs[mine_[i]].name = piece(upper).tag + "/" + std::to_string(i + 1);
        mine_.clear();
    }

    /// A rule of practice that is not kept is told of; the logs can be cut all the same.
    void judge(const PieceSpan &upper, const PieceSpan &lower, const Joint &joint,
               const std::vector<double> &xs) {
        const int fit = count_of(xs), held = fit + corners_of(joint);
        if (fit < asked(joint)) {
            if (fit > 0 && held > 1)
                few_.push_back({piece(upper).tag, piece(lower).tag, held});
            else
                warn_of_too_few(upper, lower, joint, fit);
        }
        const double apart = widest_apart(joint, xs);
        if (fit == 0 || apart <= rule_.spacing.mm() + tolerance::weld) return;
        made_.findings.push_back(
            {Weight::warning,
             "pegs-far-apart",
             round_place(wall_.name, piece(upper).round),
             said("piece %1 on %2 has no place for a peg on a stretch: its fastening places lie up to %3 "
                  "apart, and never more than %4 is asked for",
                  piece(upper).tag, piece(lower).tag, in_mm(apart), in_mm(rule_.spacing.mm())),
             {},
             subject_of(upper, lower)});
    }

    void warn_of_too_few(const PieceSpan &upper, const PieceSpan &lower, const Joint &joint, int fit) {
        made_.findings.push_back({Weight::warning,
                                  "pegs-do-not-fit",
                                  round_place(wall_.name, piece(upper).round),
                                  too_few(piece(upper).tag, piece(lower).tag, asked(joint), fit),
                                  {},
                                  subject_of(upper, lower)});
    }

    /// Joints that a locked corner or a second peg holds are told of together.
    void note_few() {
        if (few_.empty()) return;
        const auto fewest = std::min_element(few_.begin(), few_.end(),
                                             [](const Few &a, const Few &b) { return a.held < b.held; });
        const Said what =
            few_.size() == 1
                ? said("%1 on %2: held in %3 places where %4 are asked for, as there is no room for more",
                       fewest->upper, fewest->lower, fewest->held, rule_.fewest)
                : said("%1 on %2 and %3 more joints of this wall: held in %4 places where %5 are asked for, "
                       "as there is no room for "
                       "more",
                       fewest->upper, fewest->lower, few_.size() - 1, fewest->held, rule_.fewest);
        made_.findings.push_back({Weight::note, "held-in-few-places", wall_place(wall_.name), what,
                                  said("local code decides whether that is enough"),
                                  wall_subject() + "name"});
    }

    std::string wall_subject() const {
        const std::size_t w = index_.at(), outside = shell_.walls.size();
        return w < outside ? subject("wall", w, "") : subject("partition", w - outside, "");
    }

    /// The opening beside the joint, or over or under it; else its wall.
    std::string subject_of(const PieceSpan &upper, const PieceSpan &lower) {
        for (std::size_t i = 0; i < shell_.openings.size(); ++i) {
            const std::string name = name_of(shell_, i);
            for (const PieceSpan *s : {&upper, &lower}) {
                const Piece &p = piece(*s);
                const bool cuts = std::any_of(p.cuts.begin(), p.cuts.end(),
                                              [&](const Cut &cut) { return is_for_opening(cut, name); });
                if (shell_.openings[i].wall == wall_.name && (cuts || p.datum.at == name || p.far.at == name))
                    return subject("opening", i, "from_left");
            }
        }
        for (std::size_t i = 0; over_ && i < shell_.openings.size(); ++i) { // that takes nothing of either
            const Opening &o = shell_.openings[i];
            if (o.wall == wall_.name && o.from_left.mm() < upper.span.to &&
                (o.from_left + o.width).mm() > upper.span.from && cuts_through(o, *over_, underside))
                return subject("opening", i, "from_left");
        }
        return wall_subject() + "name";
    }

    struct Few {
        std::string upper, lower; ///< tags
        int held = 0;             ///< places, locked corners counted
    };

    const Shell &shell_;
    const Foundation &foundation_;
    const Pieces &logs_;
    const PegRule &rule_;
    Index<WallPlace> index_;
    const WallPlace &wall_;
    const std::vector<CourseSpans> &courses_;
    BoresOfPieces &bored_;
    Found<Pegs> &made_;
    const Course *over_ = nullptr, *under_ = nullptr; ///< the next ones over and under the joint's two
    std::vector<Index<Peg>> mine_;
    std::vector<Few> few_;
};

} // namespace

Found<Pegs> lay_out_pegs(const Shell &shell, const Plan &plan, const Foundation &foundation,
                         const Pieces &logs, const AllSpans &spans, const Bores &bores) {
    Found<Pegs> made;
    BoresOfPieces bored(logs.pieces.size());
    for (const auto &[piece, bore] : bores.bores)
        bored[piece].push_back({bore.x, bore.diameter});
    for (const auto w : spans.indices())
        WallPegs(shell, plan, foundation, logs, spans[w], w, bored, made).lay_out();
    return made;
}

} // namespace roundlay
