#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/lay_out.h"
#include "kernel/measured/found_piece.h"
#include "kernel/measured/rebuild.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

class Holding {
  public:
    explicit Holding(Rebuild &at) : at_(at), layout_(lay_out_to_try(unmended(at.made.shell))) {}

    void all() {
        for (const FoundLog &log : at_.record.logs)
            if (const Piece *piece = piece_at(layout_, log.place)) hold(log, *piece);
    }

  private:
    /// What was measured is of logs that nobody had taken anything out of.
    static Shell unmended(Shell shell) {
        shell.mends.clear();
        return shell;
    }

    void hold(const FoundLog &log, const Piece &piece) {
        const double over_all = piece.blank.length,
                     between = std::abs(piece.far.shoulder - piece.datum.shoulder);
        if (const auto is = taken(log.length); differ(is, over_all))
            tell_length(piece, said("log %1: its length over all was measured %2, in the model it is %3 long",
                                    log.tag, in_mm(*is), in_mm(over_all)));
        if (const auto is = taken(log.between_shoulders); differ(is, between))
            tell_length(piece,
                        said("log %1: between its shoulders it was measured %2, in the model that is %3",
                             log.tag, in_mm(*is), in_mm(between)));
        for (const FoundEnd &end : log.ends)
            if (const PieceEnd *jamb = jamb_of(piece, end)) hold_height(log, piece, end, *jamb);
    }

    static bool differ(const std::optional<double> &measured, double is) {
        return measured && std::abs(*measured - is) > tape_tolerance;
    }

    About place(const Piece &piece) const { return round_place(layout_.walls[piece.wall].name, piece.round); }

    void tell_length(const Piece &piece, Said what) {
        at_.tell("log-of-another-length", place(piece), std::move(what),
                 said("measure it again, or mend the walls, overhangs and openings of the plan"));
    }

    /// The end that is cut off at an opening, by the opening's name.
    static const PieceEnd *jamb_of(const Piece &piece, const FoundEnd &end) {
        for (const PieceEnd *each : {&piece.datum, &piece.far})
            if (each->kind == EndKind::jamb && each->at == end.corner) return each;
        return nullptr;
    }

    /// Logs are straight from corner to corner: what was measured beside an opening is held against that.
    void hold_height(const FoundLog &log, const Piece &piece, const FoundEnd &end, const PieceEnd &jamb) {
        const auto measured = taken(end.height);
        if (!measured) return;
        const Course &course = at_.course(piece.wall, piece.round);
        const WallPlace &wall = layout_.walls[piece.wall];
        const Vec3 at = piece.frame.origin + (&jamb == &piece.datum ? 0 : piece.blank.length) * piece.frame.x;
        const double x = dot(at - wall.frame.origin, wall.frame.x), is = course.high(x) - course.low(x);
        if (std::abs(*measured - is) <= told_from) return;
        at_.tell(
            "log-not-straight", place(piece),
            said("log %1: beside opening %2 it was measured %3 high where a straight log is %4: the model "
                 "has the straight one",
                 log.tag, end.corner, in_mm(*measured), in_mm(is)));
    }

    Rebuild &at_;
    Layout layout_;
};

std::size_t count(const Record &record, NotedLength FoundEnd::*number) {
    std::size_t all = 0;
    for (const FoundLog &log : record.logs)
        all += static_cast<std::size_t>(
            std::ranges::count_if(log.ends, [&](const FoundEnd &end) { return (end.*number).is_taken(); }));
    return all;
}

/// Under tails whose own heights were not measured: those say where the tail lies together with the gap.
std::size_t gaps_alone(const Record &record) {
    std::size_t all = 0;
    for (const FoundLog &log : record.logs)
        for (const FoundEnd &end : log.ends)
            all += end.gap.is_taken() && !end.shoulder_outside.is_taken() &&
                           !end.shoulder_inside.is_taken() && !end.end_outside.is_taken() &&
                           !end.end_inside.is_taken()
                       ? 1
                       : 0;
    return all;
}

void tell_some(Rebuild &at, std::size_t some, Said what) {
    if (some > 0) at.tell("not-in-the-model", {about::All::logs}, std::move(what));
}

/// What nothing in the model is made of, so that nobody looks for it there.
void tell_not_taken(Rebuild &at) {
    const Record &record = at.record;
    std::size_t leans = 0, levels = 0, winds = 0;
    for (const RecordedCorner &corner : record.corners) {
        leans += (corner.lean_first.is_taken() ? 1 : 0) + (corner.lean_second.is_taken() ? 1 : 0);
        levels += corner.level.is_taken() ? 1 : 0;
    }
    for (const FoundLog &log : record.logs)
        winds += log.wind.is_taken() ? 1 : 0;
    tell_some(at, leans,
              said("%1 leans of corners are recorded and not in the model: its walls stand upright", leans));
    tell_some(
        at, levels,
        said("%1 levels of corners are recorded and not in the model: it lies by the levels of its logs",
             levels));
    tell_some(at, winds,
              said("%1 winds of logs are recorded and not in the model: its logs are not twisted", winds));
    const std::size_t gaps = gaps_alone(record);
    tell_some(at, gaps,
              said("%1 gaps under tails are recorded without the tails' heights and not in the model", gaps));
    if (!is_scoped(at.made.shell)) return;
    const std::size_t of_logs = count(record, &FoundEnd::level);
    tell_some(at, of_logs,
              said("%1 levels of round logs are recorded and not in the model: they lie by their diameters",
                   of_logs));
}

} // namespace

void hold_against(Rebuild &at) {
    Holding(at).all();
    tell_not_taken(at);
}

} // namespace roundlay
