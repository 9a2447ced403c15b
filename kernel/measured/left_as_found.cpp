#include "kernel/layout/lay_out.h"
#include "kernel/layout/piece_places.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/measured/found_piece.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/left_of_openings.h"
#include "kernel/measured/measured_shell.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// What is stated of the round, or with `piece` of one of the logs that openings part it into. Of two
/// statements the later one counts.
OwnLog stated_of(const Shell &shell, const FoundPlace &place, std::optional<int> piece) {
    for (auto log = shell.own_logs.rbegin(); log != shell.own_logs.rend(); ++log)
        if (log->wall == place.wall && log->round == place.round && log->piece == piece) return *log;
    return {};
}

const Wall *wall_of(const Shell &shell, const std::string &name) {
    const auto wall = std::ranges::find(shell.walls, name, &Wall::name);
    return wall == shell.walls.end() ? nullptr : &*wall;
}

bool stands_otherwise(const Shell &below, const Shell &now, const std::string &name) {
    const Wall *was = wall_of(below, name), *is = wall_of(now, name);
    return was && is ? !(*was == *is) : was != is;
}

/// Takes numbers out of what was found of one log where it is stated otherwise now.
class Leaving {
  public:
    /// `overhang`: of ends that state none.
    Leaving(FoundLog &log, const OwnLog &was, const OwnLog &is, Length overhang)
        : log_(log), was_(was), is_(is), by_rule_(overhang) {}

    /// `left` and `right`: its ends at corners, where the record has them. `butt`: where that was found.
    void numbers(FoundEnd *left, FoundEnd *right, std::optional<LogEnd> butt) {
        const LogSizes &was = was_.sizes, &is = is_.sizes;
        if (is.butt && *is.butt != was.butt.value_or(butt.value_or(*is.butt))) turn(left, right);
        if (is.butt_height != was.butt_height || is.tip_height != was.tip_height) heights();
        if (is.butt_width != was.butt_width || is.tip_width != was.tip_width) widths();
        if (is.diameter != was.diameter) heights(), widths();
        if (is_.gap_left != was_.gap_left || is_.gap_right != was_.gap_right) seam();
        if (is_.notch.overhang_left != was_.notch.overhang_left) runs_on(left, was_.notch.overhang_left);
        if (is_.notch.overhang_right != was_.notch.overhang_right) runs_on(right, was_.notch.overhang_right);
        if (!same_notch()) tails();
    }

    void words() {
        if (is_.sizes.butt != was_.sizes.butt) log_.butt.clear();
        if (is_.sizes.finish != was_.sizes.finish) log_.finish = {};
        if (is_.bow != was_.bow) log_.bow = {};
    }

  private:
    bool same_notch() const {
        const LogNotch &was = was_.notch, &is = is_.notch;
        return was.kind == is.kind && was.slope == is.slope && was.along == is.along &&
               was.across == is.across && was_.tails == is_.tails;
    }
    /// How far it ran when it was measured stays known, and counts no more.
    void runs_on(FoundEnd *end, const std::optional<Length> &was) const {
        if (!end) return;
        if (!end->overhang.value) end->overhang.value = was.value_or(by_rule_);
        end->overhang.certainty = Certainty::contradicted;
    }
    /// Its ends change places; its tails there are cut anew, and it comes to lie as the rules lay it.
    void turn(FoundEnd *left, FoundEnd *right) {
        if (left && right) std::swap(left->height, right->height), std::swap(left->width, right->width);
        for (FoundStation &station : log_.stations)
            station.height = station.width = {};
        if (!left || !right) heights(), widths();
        tails(), seam();
        log_.butt.clear();
    }
    void heights() {
        for (FoundEnd &end : log_.ends)
            end.height = end.level = {}; // a log of another height reaches up to another level
        for (FoundStation &station : log_.stations)
            station.height = station.level = {};
    }
    void widths() {
        for (FoundEnd &end : log_.ends)
            end.width = {};
        for (FoundStation &station : log_.stations)
            station.width = {};
    }
    void seam() {
        for (FoundEnd &end : log_.ends)
            end.level = {};
        for (FoundStation &station : log_.stations)
            station.gap_below = {};
    }
    void tails() {
        for (FoundEnd &end : log_.ends)
            end.shoulder_outside = end.shoulder_inside = end.end_outside = end.end_inside = end.gap = {};
    }

    FoundLog &log_;
    const OwnLog &was_, &is_;
    Length by_rule_;
};

/// The record's end of that log at one end of its wall.
FoundEnd *end_of(const Record &record, const Plan &plan, FoundLog &log, LogEnd where) {
    const auto wall = wall_named(plan, log.place.wall);
    for (FoundEnd &end : log.ends)
        if (wall && end_at(record, plan, *wall, end.corner) == where) return &end;
    return nullptr;
}

void leave_out(const Record &record, const Plan &plan, FoundLog &log, const Shell &below, const Shell &now) {
    const OwnLog was = stated_of(below, log.place, {}), is = stated_of(now, log.place, {});
    const auto wall = wall_named(plan, log.place.wall);
    Leaving whole(log, was, is, below.notch.overhang);
    whole.numbers(end_of(record, plan, log, LogEnd::left), end_of(record, plan, log, LogEnd::right),
                  wall ? end_at(record, plan, *wall, log.butt) : std::nullopt);
    whole.words();
    if (!log.place.piece) return;
    const OwnLog piece_was = stated_of(below, log.place, log.place.piece),
                 piece_is = stated_of(now, log.place, log.place.piece);
    Leaving(log, piece_was, piece_is, below.notch.overhang).words();
}

/// A gap that is stated now was measured on the log below as well.
void leave_out_gaps_above(Record &left, const Shell &below, const Shell &now) {
    for (FoundLog &log : left.logs) {
        if (!log.place.round) continue;
        FoundPlace over = log.place;
        over.round = *over.round + 1;
        const OwnLog was = stated_of(below, over, {}), is = stated_of(now, over, {});
        if (was.gap_left == is.gap_left && was.gap_right == is.gap_right) continue;
        for (FoundStation &station : log.stations)
            station.gap_above = {};
    }
}

std::vector<Opening> openings_in(const Shell &shell, const std::string &wall) {
    std::vector<Opening> all = shell.openings;
    std::erase_if(all, [&](const Opening &opening) { return opening.wall != wall; });
    return all;
}

/// The same end of the same log: at a corner however far it runs on, at an opening there or cut back.
bool end_alike(const PieceEnd &was, const PieceEnd &is, double further_out) {
    constexpr double hair = 1; // mm
    return was.kind == is.kind && was.at == is.at && (was.kind != EndKind::jamb || further_out < hair);
}

/// The number among those of its round now of the piece that this one stays or is cut back to; none where it
/// would have to grow.
std::optional<int> same_piece(const Layout &before, const Layout &now, const Piece &was) {
    const AlongWall old = along_wall(before.walls, was);
    for (const Piece &piece : now.pieces) {
        if (!is_log(piece) || now.walls[piece.wall].name != before.walls[was.wall].name ||
            piece.round != was.round)
            continue;
        const AlongWall is = along_wall(now.walls, piece);
        if (end_alike(was.datum, piece.datum, old.from - is.from) &&
            end_alike(was.far, piece.far, is.to - old.to))
            return piece.number;
    }
    return {};
}

/// Openings that come, go or move part rounds otherwise: a log is counted anew, and one that would have to be
/// longer is no longer the log that was found there.
void count_pieces_anew(Record &left, const Shell &below, const Shell &now) {
    if (below.openings == now.openings) return;
    const Layout was = lay_out_to_try(below), is = lay_out_to_try(now);
    for (FoundLog &log : left.logs) {
        if (!log.place.piece || openings_in(below, log.place.wall) == openings_in(now, log.place.wall))
            continue;
        const Piece *piece = piece_at(was, log.place);
        const auto number = piece ? same_piece(was, is, *piece) : std::nullopt;
        if (number) {
            log.place.piece = number;
            continue;
        }
        log.place.piece.reset(); // its numbers are still those of the round
        log.tag.clear();
    }
}

} // namespace

Record left_as_found(const Record &record, const Shell &below, const Shell &now) {
    Record left = record;
    const auto plan = lay_out_plan(below);
    for (FoundLog &log : left.logs)
        leave_out(record, plan, log, below, now);
    leave_out_gaps_above(left, below, now);
    count_pieces_anew(left, below, now);
    std::erase_if(left.walls,
                  [&](const RecordedWall &wall) { return stands_otherwise(below, now, wall.wall); });
    leave_out_of_openings(left, record, below, now);
    if (below.walls != now.walls) left.diagonals.clear(); // they run through the whole plan
    return left;
}

} // namespace roundlay
