#include "kernel/layout/pieces/pieces.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/own_sizes.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/pieces/breaks.h"
#include "kernel/layout/pieces/log_notes.h"
#include "kernel/layout/pieces/opening_boxes.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iterator>

namespace roundlay {

namespace {

std::string tag_of(const std::string &wall, int round, int number) {
    char text[32];
    std::snprintf(text, sizeof text, "-%02d-%d", round, number);
    return wall + text;
}

/// What pieces are cut by.
struct LogsBefore {
    const Plan &plan;
    const Foundation &foundation;
    const Courses &courses;
    const Corners &corners;
    AllParts parts;
};

/// Builds the pieces of one course of one wall.
class CourseCutter {
  public:
    CourseCutter(const Shell &shell, const LogsBefore &before, Index<WallPlace> wall, std::size_t course,
                 Found<Pieces> &made)
        : shell_(shell), plan_(before.plan), foundation_(before.foundation), courses_(before.courses.logs),
          notches_(before.corners.notches), parts_(before.parts), made_(made), wall_(wall),
          place_(plan_.walls[wall]), index_(course), course_(courses_[wall][course]) {
        for (std::size_t m = 0; m < place_.meetings.size(); ++m)
            reaches_.push_back(reach_of(shell, plan_, wall, course_.round, m));
        scribe_ = own_scribe_of(shell, place_.name, course_.round);
    }

    CourseSpans cut() {
        const auto &[cuts, breaks] = parts_[wall_][index_];
        CourseSpans spans;
        const std::size_t last = reaches_.size() - 1;
        const CornerReach &first_reach = reaches_.front(), &last_reach = reaches_.back();
        const Span log{notch(0).butts ? first_reach.shoulder : first_reach.tip,
                       notch(last).butts ? last_reach.shoulder : last_reach.tip};
        for (const Stretch &s : stretches_between(log, breaks))
            spans.push_back(piece(s.span, s.left, s.right, cuts));
        return spans;
    }

  private:
    const EndNotch &notch(std::size_t meeting) const { return notches_[wall_][meeting][index_]; }
    std::size_t meeting_at_end(End end) const { return meeting_at(place_, end); }
    const std::string &corner_name(std::size_t meeting) const {
        return plan_.corners[place_.meetings[meeting].corner].name;
    }

    /// How an end lies across the log: 0 at jambs and square corners.
    double skew_of(const Break *at, End end) const {
        if (at) return at->opening || at->first_step ? 0 : place_.meetings[at->meeting].skew;
        return reaches_[meeting_at_end(end)].skew;
    }

    /// The blank of a stretch of the log, in the wall's frame: what encloses it.
    Box3 box_of(const Span &span, const Break *left, const Break *right) const {
        const double middle = place_.thickness / 2;
        double from = span.from, to = span.to;
        for (int i = 0; i < 5; ++i) { // at a slanting end the log goes on widening past its middle
            from = span.from - std::abs(skew_of(left, End::datum)) * course_.width(from) / 2;
            to = span.to + std::abs(skew_of(right, End::far)) * course_.width(to) / 2;
        }
        const double half = std::max(course_.width(from), course_.width(to)) / 2;
        const double low = stands_on(span) ? floor_under(foundation_, wall_, span.from, span.to)
                                           : std::min(course_.low(from), course_.low(to)) - course_.lip;
        return {{from, middle - half, low},
                {to, middle + half, std::max(course_.high(from), course_.high(to)) + course_.crown}};
    }

    /// Does a step of the foundation carry the whole stretch, higher than its log would lie otherwise?
    bool stands_on(const Span &span) const {
        const double floor = floor_under(foundation_, wall_, span.from, span.to);
        return floor > std::min(course_.low(span.from), course_.low(span.to)) - course_.lip &&
               floor >= std::max(course_.low(span.from), course_.low(span.to)) - course_.lip;
    }

    /// Ends at corners that are not square are cut at a slant, through the middle at these two x of the
    /// piece.
    void add_slanted_ends(Piece &p, const Span &ends, const Break *left, const Break *right) const {
        const double middle = p.blank.width / 2;
        if (const double skew = skew_of(left, End::datum); skew != 0) {
            const double k = 1 / std::sqrt(1 + skew * skew);
            p.cuts.emplace_back(
                FaceCut{LogFace::datum_end, {{-k, k * skew, 0}, k * (skew * middle - ends.from)}});
        }
        if (const double skew = skew_of(right, End::far); skew != 0) {
            const double k = 1 / std::sqrt(1 + skew * skew);
            p.cuts.emplace_back(
                FaceCut{LogFace::far_end, {{k, -k * skew, 0}, k * (ends.to - skew * middle)}});
        }
    }

    /// The hewn faces that run at a slant to the blank, each from the two sections of the log.
    void add_faces(Piece &p, const Box3 &box, bool level_under) const {
        const double run = box.high.x - box.low.x;
        const auto rise = [&](auto at) { return (at(box.high.x) - at(box.low.x)) / run; };
        const auto low = [&](double x) { return course_.low(x); };
        const auto high = [&](double x) { return course_.high(x); };
        const auto half = [&](double x) { return course_.width(x) / 2; };
        const auto add = [&](LogFace face, Plane plane) { p.cuts.emplace_back(FaceCut{face, plane}); };
        const double middle = p.blank.width / 2;
        if (const double r = rise(high); r != 0)
            add(LogFace::top, plane_over(high(box.low.x) - box.low.z, r, 0));
        if (const double r = rise(low); r != 0 && !level_under)
            add(LogFace::under, plane_over(low(box.low.x) - box.low.z, r, 0).flipped());
        if (const double r = rise(half); r != 0) {
            const double k = 1 / std::sqrt(1 + r * r);
            add(LogFace::outside, {{-k * r, -k, 0}, k * (half(box.low.x) - middle)});
            add(LogFace::inside, {{-k * r, k, 0}, k * (half(box.low.x) + middle)});
        }
    }

    PieceSpan piece(Span span, const Break *left, const Break *right, const std::vector<OpeningCut> &cuts) {
        Piece p;
        p.wall = wall_;
        p.round = course_.round;
        p.number = ++number_;
        p.tag = tag_of(place_.name, p.round, p.number);
        p.log = course_.kind;
        p.island = left && right && left->opening && right->opening;
        p.frame = place_.frame;
        const Box3 box = box_of(span, left, right);
        p.frame.origin = place_.frame.to_world(box.low);
        const Vec3 size = box.high - box.low;
        p.blank = {size.x, size.y, size.z};
        p.butt_at_datum = course_.butt_at_datum;
        PieceSpan s = span_of(span, left, right);
        s.origin = box.low.x;
        p.datum = end_of(left, End::datum, s);
        p.far = end_of(right, End::far, s);
        if (course_.tapers()) add_faces(p, box, stands_on(span));
        if (const auto stick = wane_of(place_, course_, p)) p.cuts.emplace_back(*stick);
        add_groove(p, s);
        add_slanted_ends(p, {span.from - s.origin, span.to - s.origin}, left, right);
        for (std::size_t m = 0; m < place_.meetings.size(); ++m)
            if (!notch(m).butts && place_.meetings[m].x > span.from && place_.meetings[m].x < span.to)
                add_seams(p, s, m);
        OpeningBoxes boxes(shell_, place_, made_.findings);
        for (const StepPlace *step : steps_under(foundation_, wall_, course_))
            if (step->from < span.to && step->to > span.from && step->rise > box.low.z + tolerance::thinnest)
                boxes.add_step(p, s, *step);
        for (const OpeningCut &c : cuts)
            if (!c.severs && c.span.from < span.to && c.span.to > span.from) boxes.add_opening(p, s, c);
        boxes.add_jamb_grooves(p, left ? left->opening : nullptr, right ? right->opening : nullptr);
        note_own(shell_, place_.name, p);
        s.piece = made_.pieces.push_back(std::move(p));
        return s;
    }

    PieceEnd end_of(const Break *at, End end, const PieceSpan &s) const {
        const double own_end = (end == End::datum ? s.span.from : s.span.to) - s.origin;
        if (at && at->opening) return {EndKind::jamb, name_of(shell_, at->opening->opening), own_end};
        if (at && at->first_step)
            return {EndKind::step, (end == End::far ? at->first_step : at->last_step)->name, own_end};
        if (at) return {EndKind::butt, corner_name(at->meeting), own_end};
        const std::size_t m = meeting_at_end(end);
        return {notch(m).butts ? EndKind::butt : EndKind::corner, corner_name(m),
                reaches_[m].shoulder - s.origin};
    }

    PieceSpan span_of(Span span, const Break *left, const Break *right) const {
        const std::size_t last = reaches_.size() - 1;
        const double half = place_.thickness / 2;
        PieceSpan s;
        s.span = span;
        s.course = course_;
        const auto groove = [&](const Break *at) {
            return at && at->opening
                       ? trim_of(shell_, shell_.openings[at->opening->opening]).spline_depth.mm()
                       : 0;
        };
        s.shoulders = {(left ? span.from + groove(left) : reaches_[0].shoulder) +
                           std::abs(skew_of(left, End::datum)) * half,
                       (right ? span.to - groove(right) : reaches_[last].shoulder) -
                           std::abs(skew_of(right, End::far)) * half};
        s.corner_left = !left && !notch(0).butts;
        s.corner_right = !right && !notch(last).butts;
        s.locked_left = s.corner_left && notch(0).locked;
        s.locked_right = s.corner_right && notch(last).locked;
        return s;
    }

    /// Along the log over the one below it, as far as that one was there before openings cut it.
    void add_groove(Piece &p, const PieceSpan &s) const {
        if (!course_.scoped || index_ == 0) return;
        const Course &below = courses_[wall_][index_ - 1];
        const double apart = course_.datum.centre - below.datum.centre;
        ScopeCut cut;
        cut.use = ScopeUse::groove;
        cut.radius = below.radius + course_.scribe;
        if (apart >= course_.radius + cut.radius - tolerance::thinnest) return;
        cut.at = {0, p.blank.width / 2, below.datum.centre - p.frame.origin.z};
        cut.along = {1, 0, 0};
        cut.scribe = course_.scribe;
        Span over{-past_blank, p.blank.length + past_blank};
        for (const StepPlace *step : steps_under(foundation_, wall_, below)) { // nothing lies below it there
            if (!leaves_out(*step, below)) continue;
            if (step->from <= s.span.from) over.from = std::max(over.from, step->to - s.origin);
            if (step->to >= s.span.to) over.to = std::min(over.to, step->from - s.origin);
        }
        cut.x_from = over.from;
        cut.x_to = over.to;
        if (over.length() > tolerance::clear) p.cuts.emplace_back(cut);
    }

    /// Over the log of the crossing wall that it lies on.
    void add_saddle(Piece &p, const WallMeeting &meeting, const SeamCut &like, int round) const {
        const WallPlace &other = plan_.walls[meeting.other];
        const Course &below = in_round(courses_[meeting.other], round);
        const Vec2 centre = plan_.corners[meeting.corner].centre;
        ScopeCut cut;
        cut.at = p.frame.to_local({centre.x, centre.y, below.datum.centre});
        cut.along = p.frame.direction_to_local(other.frame.x);
        cut.radius = below.radius + course_.scribe;
        cut.scribe = course_.scribe;
        if (other.thickness / 2 < below.radius - tolerance::thinnest)
            cut.cheeks = other.thickness / 2 + course_.scribe; // its sides are hewn
        cut.end = like.end;
        cut.runs_on = like.runs_on;
        cut.corner = like.corner;
        cut.other = tag_at(meeting, round);
        p.cuts.emplace_back(cut);
    }

    void add_seams(Piece &p, PieceSpan &s, std::size_t m) const {
        const CornerReach &reach = reaches_[m];
        const WallMeeting &meeting = place_.meetings[m];
        const EndNotch &n = notch(m);
        const bool runs_on = m > 0 && m + 1 < reaches_.size();
        const bool left_half = reach.prism_low + reach.prism_high < 2 * s.origin + p.blank.length;
        SeamCut cut;
        cut.end = m == 0 || (runs_on && left_half) ? End::datum : End::far;
        cut.x_from = reach.cut_low - s.origin;
        cut.x_to = reach.cut_high - s.origin;
        cut.corner = corner_name(m);
        cut.skew = reach.skew;
        cut.runs_on = runs_on;
        cut.open = (m == 0 && reach.cut_low <= reach.tip) ||
                   (m + 1 == reaches_.size() && reach.cut_high >= reach.tip);
        cut.proud =
            std::max(0.0, -notch_at(shell_, plan_, meeting.corner, wall_, course_.round).shoulder.mm());
        const double lean = std::abs(reach.skew) * place_.thickness / 2;
        const Span taken{reach.cut_low - lean, reach.cut_high + lean};
        if (n.saddle) add_saddle(p, meeting, cut, *n.below);
        if (runs_on && n.saddle) s.taken_below.push_back(taken);
        if (runs_on && course_.scoped && n.above) s.taken_above.push_back(taken);
        const auto add_seam = [&](Side side, const Plane &seam, int round, std::vector<Span> &taken_there) {
            cut.side = side;
            cut.seam = to_local(seam, p.frame);
            cut.seam.offset -= scribe_;
            cut.other = tag_at(meeting, round);
            p.cuts.emplace_back(cut);
            if (runs_on) taken_there.push_back(taken);
        };
        if (n.under) add_seam(Side::under, *n.under, *n.below, s.taken_below);
        if (n.top) add_seam(Side::top, *n.top, *n.above, s.taken_above);
    }

    /// The piece of the crossing wall's round that reaches this meeting.
    std::string tag_at(const WallMeeting &here, int round) const {
        const WallPlace &other = plan_.walls[here.other];
        const auto there = std::find_if(other.meetings.begin(), other.meetings.end(),
                                        [&](const WallMeeting &m) { return m.corner == here.corner; });
        const Course &log = in_round(courses_[here.other], round);
        const std::vector<Stretch> pieces =
            stretches_between({log.x_datum, log.x_far}, in_round(parts_[here.other], round).breaks);
        int number = 1;
        for (const Stretch &s : pieces)
            number += s.span.to < there->x;
        return tag_of(other.name, round, number);
    }

    const Shell &shell_;
    const Plan &plan_;
    const Foundation &foundation_;
    const Indexed<std::vector<Course>, WallPlace> &courses_;
    const Indexed<WallNotches, WallPlace> &notches_;
    const AllParts &parts_;
    Found<Pieces> &made_;
    Index<WallPlace> wall_;
    const WallPlace &place_;
    std::size_t index_;
    const Course &course_;
    std::vector<CornerReach> reaches_; ///< by meeting
    double scribe_ = 0;                ///< of its seams at corners
    int number_ = 0;
};

} // namespace

Found<Pieces> lay_out_pieces(const Shell &shell, const Plan &plan, const Foundation &foundation,
                             const Courses &courses, const Corners &corners) {
    Found<Pieces> made;
    const LogsBefore before{plan, foundation, courses, corners,
                            parts_of(shell, plan, foundation, courses, corners)};
    made.spans.resize(courses.logs.size());
    for (const auto w : courses.logs.indices())
        for (std::size_t k = 0; k < courses.logs[w].size(); ++k)
            made.spans[w].push_back(CourseCutter(shell, before, w, k, made).cut());
    std::ranges::move(check_own_pieces(shell, plan, made.pieces), std::back_inserter(made.findings));
    return made;
}

} // namespace roundlay
