#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/lay_out.h"
#include "kernel/measured/found_piece.h"
#include "kernel/measured/opening_numbers.h"
#include "kernel/measured/rebuild.h"
#include "kernel/record/numbers.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

class Holding {
  public:
    explicit Holding(Rebuild &at)
        : at_(at), layout_(lay_out_to_try(unmended(at.made.shell))), zero_(lowest_level(at)) {}

    void all() {
        for (const FoundLog &log : at_.record.logs)
            if (const Piece *piece = piece_at(layout_, log.place); piece && !piece->timber) hold(log, *piece);
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
        if (const auto is = taken(log.length); differ(is, over_all)) tell_over_all(log, piece, *is);
        if (const auto is = taken(log.between_shoulders); differ(is, between))
            tell_length(piece,
                        said("log %1: between its shoulders it was measured %2, in the model that is %3",
                             log.tag, in_mm(*is), in_mm(between)));
        for (const FoundEnd &end : log.ends)
            if (const PieceEnd *jamb = jamb_of(piece, end)) hold_at_jamb(log, piece, end, *jamb);
    }

    static bool differ(const std::optional<double> &measured, double is) {
        return measured && std::abs(*measured - is) > tape_tolerance;
    }

    About place(const Piece &piece) const { return round_place(layout_.walls[piece.wall].name, piece.round); }

    /// Beside an opening that was measured itself one of the two is wrong.
    void tell_over_all(const FoundLog &log, const Piece &piece, double is) {
        const double model = piece.blank.length;
        for (const PieceEnd *end : {&piece.datum, &piece.far})
            if (end->kind == EndKind::jamb && is_measured_opening(end->at))
                return at_.tell(
                    "jamb-and-log-differ", place(piece),
                    said("log %1: up to opening %2 it was measured %3 over all, and as the opening was "
                         "measured it is %4, a difference of %5",
                         log.tag, end->at, in_mm(is), in_mm(model), in_mm(std::abs(is - model))),
                    said("measure the log and the jamb again"));
        tell_length(piece, said("log %1: its length over all was measured %2, in the model it is %3 long",
                                log.tag, in_mm(is), in_mm(model)));
    }

    bool is_measured_opening(const std::string &name) const {
        const auto opening = std::ranges::find(at_.record.openings, name, &RecordedOpening::name);
        return opening != at_.record.openings.end() && is_measured(*opening);
    }

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
    void hold_at_jamb(const FoundLog &log, const Piece &piece, const FoundEnd &end, const PieceEnd &jamb) {
        const Course &course = at_.course(piece.wall, piece.round);
        const WallPlace &wall = layout_.walls[piece.wall];
        const Vec3 at = piece.frame.origin + (&jamb == &piece.datum ? 0 : piece.blank.length) * piece.frame.x;
        const double x = dot(at - wall.frame.origin, wall.frame.x);
        if (const auto is = taken(end.height); is && is_off(*is, course.high(x) - course.low(x), told_from))
            at_.tell("log-not-straight", place(piece),
                     said("log %1: beside opening %2 it was measured %3 high where a straight log is %4: the "
                          "model has the straight one",
                          log.tag, end.corner, in_mm(*is), in_mm(course.high(x) - course.low(x))));
        if (const auto is = taken(end.width); is && is_off(*is, course.width(x), told_from))
            at_.tell("log-not-straight", place(piece),
                     said("log %1: beside opening %2 it was measured %3 wide where a straight log is %4: the "
                          "model has the straight one",
                          log.tag, end.corner, in_mm(*is), in_mm(course.width(x))));
        hold_level(log, piece, end, course.high(x), at_.slant(piece.wall, x));
    }

    /// Its upper edge there, by its own level: that comes of all that lies under it as well.
    void hold_level(const FoundLog &log, const Piece &piece, const FoundEnd &end, double is, double slant) {
        auto level = level_of(at_.record, end.level, end.plane);
        if (level) *level -= slant;
        if (is_scoped(at_.made.shell)) return; // told by their number: they lie by their diameters
        if (!level || !zero_ || !is_off(*level - *zero_, is, 3 * told_from)) return;
        at_.tell("log-not-straight", place(piece),
                 said("log %1: beside opening %2 its upper edge lies %3 over the lowest log by its level, in "
                      "the model that is %4",
                      log.tag, end.corner, in_mm(*level - *zero_), in_mm(is)));
    }

    static bool is_off(double measured, double is, double least) { return std::abs(measured - is) > least; }

    Rebuild &at_;
    Layout layout_;
    std::optional<double> zero_;
};

bool is_measured_timber(const FoundLog &log) {
    return !log.place.timber.empty() &&
           (log.length.is_taken() || std::ranges::any_of(log.ends, [](const FoundEnd &end) {
                return end.height.is_taken() || end.width.is_taken() || end.level.is_taken();
            }));
}

std::size_t count(const Record &record, NotedLength FoundEnd::*number) {
    std::size_t all = 0;
    for (const FoundLog &log : record.logs)
        all += static_cast<std::size_t>(
            std::ranges::count_if(log.ends, [&](const FoundEnd &end) { return (end.*number).is_taken(); }));
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
              said("%1 {lean of a corner is|leans of corners are} recorded and not in the model: its walls "
                   "stand upright",
                   leans));
    const auto timbers = static_cast<std::size_t>(std::ranges::count_if(at.record.logs, is_measured_timber));
    tell_some(
        at, timbers,
        said(
            "%1 {timber of a floor was|timbers of floors were} measured, and what was measured is not in the "
            "model: timbers are as their floor is stated",
            timbers));
    tell_some(at, levels,
              said("%1 {level of a corner is|levels of corners are} recorded and not in the model: it lies "
                   "by the levels of its logs",
                   levels));
    tell_some(
        at, winds,
        said(
            "%1 {wind of a log is|winds of logs are} recorded and not in the model: its logs are not twisted",
            winds));
    if (!is_scoped(at.made.shell)) return;
    const std::size_t of_logs = count(record, &FoundEnd::level);
    tell_some(at, of_logs,
              said("%1 {level of a round log is|levels of round logs are} recorded and not in the model: "
                   "they lie by their diameters",
                   of_logs));
    const std::size_t gaps = count(record, &FoundEnd::gap);
    tell_some(
        at, gaps,
        said("%1 {gap under a notch of a round log is|gaps under notches of round logs are} recorded and "
             "not in the model: they are scribed to one another",
             gaps));
}

} // namespace

void hold_against(Rebuild &at) {
    Holding(at).all();
    tell_not_taken(at);
}

} // namespace roundlay
