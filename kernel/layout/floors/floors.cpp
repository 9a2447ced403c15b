#include "kernel/layout/floors/floors.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/floors/footprint.h"
#include "kernel/layout/floors/over_top.h"
#include "kernel/layout/floors/planned_timbers.h"
#include "kernel/layout/floors/pocket_wood.h"
#include "kernel/layout/floors/timber_piece.h"
#include "kernel/layout/floors/timber_tags.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/pieces/opening_boxes.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// Less wood than this under a pocket splits off. Common practice, no source.
constexpr double least_under = 50;

/// Nor does less beside it stay up under a load, toward a notch or the log's end. Common practice, no source.
constexpr double least_beside = 50;

/// A pocket that leaves less than this beside a bore on the wall's middle line is in the way of pegs.
constexpr double beside_bore = 10;

/// Wood thinner than this over a pocket goes with it: no one leaves such a skin, and it would keep the timber
/// from being lowered in.
constexpr double least_skin = 1;

using TimberIndex = Index<PlannedTimber>;

class FloorBuilder {
  public:
    FloorBuilder(const Shell &shell, const Plan &house, const Heights &heights, const Pieces &logs,
                 const FloorPlan &plan, Found<Floors> &made)
        : shell_(shell), house_(house), heights_(heights), logs_(logs), floor_(made.floors.size()),
          plan_(plan), made_(made), tags_(tags_of(plan)) {}

    void build() {
        laid_at_ = Indexed<double, PlannedTimber>(plan_.timbers.size());
        first_ = made_.timbers.next();
        for (const auto i : plan_.timbers.indices()) {
            const PlannedTimber &t = plan_.timbers[i];
            Piece piece = piece_of(t, plan_, carriers_of(i));
            piece.tag = tags_[i];
            piece.number = i.number() + 1;
            const Floor &stated = shell_.floors[floor_];
            piece.species = stated.species;
            piece.fabric = stated.fabric.value_or(Fabric::newly_cut);
            piece.timber = made_.timbers.push_back(timber_of(t));
            made_.pieces.push_back(std::move(piece));
        }
        for (const auto i : plan_.timbers.indices())
            for (const End end : {End::datum, End::far})
                seat_end(i, end);
        for (const auto i : plan_.timbers.indices())
            if (good_) check_way(i);
        set_order();
    }

  private:
    /// Log ends that run on indoors, past an inside corner or a crossing, can stand in the way of a timber.
    void check_way(TimberIndex i) {
        const PlannedTimber &t = plan_.timbers[i];
        const Piece &p = piece(i);
        const double before = t.past(t.datum),
                     behind = t.past(t.far); // where one side is in the wall already
        Footprint own{p.frame, t.clear() - before - behind, p.blank.width, p.frame.origin.z,
                      p.frame.origin.z + p.blank.height};
        own.frame.origin = p.frame.to_world({t.datum.along() + 2 * before, 0, 0});
        for (const Piece &log : logs_.pieces) {
            const double foot = log.frame.origin.z;
            if (!in_each_others_way(
                    own, {log.frame, log.blank.length, log.blank.width, foot, foot + log.blank.height},
                    tolerance::thinnest))
                continue;
            refuse_way(i, log.tag);
            return;
        }
    }

    const TimberEnd &end_of(TimberIndex i, End end) const {
        return end == End::datum ? plan_.timbers[i].datum : plan_.timbers[i].far;
    }
    Piece &piece(TimberIndex i) { return made_.pieces[first_.at() + i.at()]; }
    const WallPlace &wall(Index<WallPlace> index) const { return house_.walls[index]; }
    Said spoken_wall(Index<WallPlace> index) const { return said_of(about::Wall{wall(index).name}); }

    /// Of its two ends, then of its rests. A wall's log is named once the pocket is cut.
    std::vector<std::string> carriers_of(TimberIndex i) const {
        const PlannedTimber &t = plan_.timbers[i];
        std::vector<std::string> tags;
        for (const TimberEnd *e : {&t.datum, &t.far})
            tags.push_back(e->carrier ? tags_[*e->carrier] : "wall " + wall(e->wall).name);
        for (const double rest : t.rests)
            tags.push_back(tags_[beam_at(plan_, t, rest)]);
        return tags;
    }

    Timber timber_of(const PlannedTimber &t) const {
        Timber timber;
        timber.use = t.use;
        timber.piece = Index<Piece>(logs_.pieces.size() + made_.pieces.size());
        timber.floor = made_.floors.next();
        timber.from = t.from;
        timber.to = t.to;
        timber.load_width = t.load_width;
        timber.bearing_from = t.datum.bearing;
        timber.bearing_to = t.far.bearing;
        timber.hold_from = hold_of(plan_, t, t.datum, 0, first_);
        timber.hold_to = hold_of(plan_, t, t.far, t.whole(), first_);
        std::vector<double> rests = t.rests;
        std::sort(rests.begin(), rests.end());
        double from = 0;
        for (const double rest : rests) {
            timber.rests.push_back(rest_of(plan_, t, rest, first_));
            const double half = timber.rests.back().width / 2;
            timber.spans.push_back(rest - half - from);
            from = rest + half;
        }
        timber.spans.push_back(t.clear() - from);
        return timber;
    }

    About place_of(TimberIndex i) const {
        return {about::Floor{plan_.place.name}, about::Timber{plan_.timbers[i].use, tags_[i]}};
    }

    void refuse(TimberIndex i, const std::string &key, Said what, std::optional<Said> advice = {}) {
        good_ = false;
        const bool is_beam = plan_.timbers[i].use == TimberUse::beam; // it lies where it is stated itself
        made_.findings.push_back({Weight::error, "timber-misses-wall", place_of(i), std::move(what),
                                  std::move(advice), subject("floor", floor_, is_beam ? "beam" : key)});
    }

    void refuse_way(TimberIndex i, const std::string &log) {
        refuse(i, "first", said("%1 reaches into the room and stands in its way", log),
               said("move the joists by the floor's first or spacing"));
    }

    void seat_end(TimberIndex i, End end) {
        const LyingEnd lying = lying_end(plan_.timbers[i], plan_.place, end, plan_.tail);
        const TimberEnd &e = end_of(i, end);
        if (e.carrier) {
            const TimberIndex carrier = *e.carrier;
            piece(carrier).cuts.emplace_back(pocket_for(lying, piece(carrier), tags_[i]));
            laid_at_[i] = std::max(laid_at_[i], laid_at_[carrier]);
            return;
        }
        seat_in_wall(i, end, lying, e.wall);
    }

    void seat_in_wall(TimberIndex i, End end, const LyingEnd &lying, Index<WallPlace> w) {
        const double x = wall(w).frame.to_local(lying.tip).x;
        const double half = std::max(lying.half_at_tip, lying.half_at_face);
        if (!check_place(i, lying, w, {x - half, x + half})) return;
        auto &courses = made_.spans[w];
        const auto bearer = bearer_in(i, lying, w, {x - half, x + half});
        if (!bearer) return;
        for (std::size_t k = *bearer; k < courses.size(); ++k) {
            if (courses[k].empty()) continue;
            const Course &course = courses[k].front().course;
            if (std::min(course.low(x - half), course.low(x + half)) >= lying.top - tolerance::thinnest)
                break;
            PieceSpan *span = span_over(courses[k], {x - half, x + half});
            if (!span) {
                refuse(i, "first",
                       said("its end in %1 comes too near the end of a log of round %2", spoken_wall(w),
                            course.round),
                       said("move the opening or the floor's first joist"));
                return;
            }
            cut_pocket(i, end, lying, *span, {x - half, x + half}, k == *bearer);
        }
    }

    void cut_pocket(TimberIndex i, End end, const LyingEnd &lying, PieceSpan &span, const Span &taken,
                    bool bears) {
        const Piece &log = logs_.pieces[span.piece];
        if (bears) {
            std::string &carrier = end == End::datum ? piece(i).datum.at : piece(i).far.at;
            carrier = log.tag;
            piece(i).below[end == End::datum ? 0 : 1] = log.tag;
            const Course &course = span.course;
            laid_at_[i] = std::max(laid_at_[i], (course.datum.centre + course.far.centre) / 2);
            if (highest_over(course, taken) <= lying.low + tolerance::thinnest)
                return; // it lies on the log's top
            check_bearer(i, lying, course, taken, log);
        }
        check_beside(i, span, taken, log);
        PocketCut pocket = pocket_for(lying, log, tags_[i]);
        if (bears && highest_over(span.course, taken) - lying.top < least_skin)
            pocket.z_top = std::max(pocket.z_top, log.blank.height + past_blank);
        made_.pockets.push_back({span.piece, pocket});
        const double reach = shell_.pegs.diameter.mm() / 2 + beside_bore;
        if (lying.depth > wall(log.wall).thickness / 2 - reach) {
            span.taken_above.push_back(taken);
            span.taken_below.push_back(taken);
        }
    }

    /// Things that a person should decide: thin wood under the pocket, and one that is closed at its top, if
    /// only at one side, where the log is thicker. Over an opening wood that cannot be left carries nothing.
    void check_bearer(TimberIndex i, const LyingEnd &lying, const Course &course, const Span &taken,
                      const Piece &log) {
        const WoodUnder under = wood_under(shell_, wall(log.wall).name, course, taken, lying.low);
        const double over = highest_over(course, taken) - lying.top;
        const Said little = said("its pocket leaves only %1 of %2 under it", in_mm(under.mm), log.tag);
        if (under.over_opening && under.mm < no_wood) {
            made_.moves.push_back({made_.findings.size(), floor_, least_under - under.mm});
            refuse(i, "level", little);
        } else if (under.mm < least_under - tolerance::thinnest)
            ask(i, least_under - under.mm, "thin-wood-under-pocket", little);
        if (over >= least_skin)
            ask(i, over, "pocket-closed",
                said(
                    "its pocket is closed at the top: %1 stands %2 over it, so it cannot be lowered in, only "
                    "slid",
                    log.tag, in_mm(over)));
    }

    /// The wood to either side of the pocket, up to a notch of the log or its end.
    void check_beside(TimberIndex i, const PieceSpan &span, const Span &taken, const Piece &log) {
        const WoodBeside wood = wood_beside(wall(log.wall), span.span, taken);
        if (wood.mm >= least_beside - tolerance::thinnest) return;
        const Said beside =
            !wood.notch_of ? said("its end") : said("the notches of wall %1", wall(*wood.notch_of).name);
        made_.findings.push_back(
            {Weight::warning, "thin-wood-beside-pocket", place_of(i),
             wood.mm < no_wood
                 ? said("its pocket in %1 leaves no wood that stays up to %2", log.tag, beside)
                 : said("its pocket in %1 leaves only %2 of wood up to %3", log.tag, in_mm(wood.mm), beside),
             plan_.timbers[i].use == TimberUse::joist
                 ? std::optional(said("move the joists by the floor's first or spacing"))
                 : std::nullopt,
             subject("floor", floor_, "first")});
    }

    /// Warns of a thing that another level of the floor would mend.
    void ask(TimberIndex i, double by, std::string code, Said what) {
        made_.moves.push_back({made_.findings.size(), floor_, by});
        made_.findings.push_back({Weight::warning,
                                  std::move(code),
                                  place_of(i),
                                  std::move(what),
                                  {},
                                  subject("floor", floor_, "level")});
    }

    /// Openings and crossing walls in its way.
    bool check_place(TimberIndex i, const LyingEnd &lying, Index<WallPlace> w, const Span &taken) {
        const WallPlace &place = wall(w);
        for (std::size_t o = 0; o < shell_.openings.size(); ++o) {
            const Opening &opening = shell_.openings[o];
            if (opening.wall != place.name || opening.from_left.mm() >= taken.to ||
                (opening.from_left + opening.width).mm() <= taken.from || opening.sill.mm() >= lying.top ||
                (opening.sill + opening.height).mm() <= lying.low)
                continue;
            refuse(i, "first",
                   said("its end in %1 lies in %2", spoken_wall(w), said_of(opening_of(shell_, o))),
                   said("move that, or trim the floor there"));
            return false;
        }
        const auto other = notches_at(place, taken);
        if (!other) return true;
        refuse(i, "first",
               said("its end in %1 lies in the notches of wall %2", spoken_wall(w), wall(*other).name));
        return false;
    }

    /// The log that its underside lies in or on.
    std::optional<std::size_t> bearer_in(TimberIndex i, const LyingEnd &lying, Index<WallPlace> w,
                                         const Span &taken) {
        const double x = (taken.from + taken.to) / 2;
        const auto &[bearer, first, below] = bearer_of(made_.spans[w], taken, lying.low, lying.high);
        if (bearer) return bearer;
        if (!first)
            return refuse(i, "from", said("its end in %1 finds no log there", spoken_wall(w))), std::nullopt;
        const double by = below ? below->high(x) - lying.high : first->low(x) + least_under - lying.low;
        made_.moves.push_back({made_.findings.size(), floor_, by});
        refuse(i, "level",
               !below ? said("its end in %1 lies under the wall's first log", spoken_wall(w))
               : lying.low >= heights_.heights[w].top
                   ? said("its end in %1 lies over the wall's top", spoken_wall(w))
                   : said("its end in %1 has no wood under it: its underside lies at the gap over round %2",
                          spoken_wall(w), below->round));
        return std::nullopt;
    }

    /// Beams, joists, trimmers and trimmed joists follow one another over the logs that they lie in.
    void set_order() {
        constexpr double step = 1e-3;
        double highest = 0;
        for (const double at : laid_at_)
            highest = std::max(highest, at);
        for (const auto i : plan_.timbers.indices()) {
            const TimberUse use = plan_.timbers[i].use;
            double at = use == TimberUse::beam ? laid_at_[i] : highest;
            at += step * (use == TimberUse::beam      ? 1
                          : use == TimberUse::joist   ? 2
                          : use == TimberUse::trimmer ? 3
                                                      : 4);
            made_.timbers[*piece(i).timber].laid_at = at;
        }
    }

    const Shell &shell_;
    const Plan &house_;
    const Heights &heights_;
    const Pieces &logs_;
    std::size_t floor_;
    const FloorPlan &plan_;
    Found<Floors> &made_;
    Indexed<std::string, PlannedTimber> tags_;
    Indexed<double, PlannedTimber> laid_at_; ///< by timber: middle of the highest log that it lies in
    Index<Timber> first_;                    ///< of its own timbers among all floors'
    bool good_ = true;
};

} // namespace

Found<Floors> lay_out_floors(const Shell &shell, const Plan &plan, const Heights &heights,
                             const Pieces &logs) {
    Found<Floors> made;
    if (shell.floors.empty()) return made;
    made.spans = logs.spans;
    for (std::size_t f = 0; f < shell.floors.size(); ++f) {
        const auto floor = plan_floor(shell, plan, f);
        made.findings.insert(made.findings.end(), floor.findings.begin(), floor.findings.end());
        const auto over = over_top(shell, plan, heights, f);
        if (over && stand(floor)) made.moves.push_back({made.findings.size(), f, over->by});
        if (over) made.findings.push_back(over->finding);
        if (!over && stand(floor)) FloorBuilder(shell, plan, heights, logs, floor, made).build();
        made.floors.push_back(floor.place);
    }
    return made;
}

} // namespace roundlay
