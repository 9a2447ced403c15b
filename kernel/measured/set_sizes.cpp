#include "kernel/geometry/tolerance.h"
#include "kernel/layout/courses/own_sizes.h"
#include "kernel/layout/courses/round_logs.h"
#include "kernel/measured/rebuild.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

using EndNumber = std::optional<double> EndNumbers::*;

/// A log's heights or widths: the line through its two shoulders. Nothing where neither was measured; level
/// where one was.
std::optional<Line> line_of(const Rebuild &at, Index<WallPlace> wall, int round, EndNumber number) {
    const LogNumbers &log = in_round(at.numbers[wall], round);
    const auto &left = log.end(LogEnd::left).*number, &right = log.end(LogEnd::right).*number;
    if (!left && !right) return {};
    if (!left || !right) return Line{0, left ? *left : *right, 0};
    return through(at.shoulder(wall, round, LogEnd::left), *left, at.shoulder(wall, round, LogEnd::right),
                   *right);
}

std::size_t taken_of(const LogNumbers &log, EndNumber number) {
    return (log.end(LogEnd::left).*number ? 1U : 0U) + (log.end(LogEnd::right).*number ? 1U : 0U);
}

/// Each log of each wall that the record says something of, or not.
template <typename Visit> void each_log(Rebuild &at, Visit visit) {
    for (const auto wall : at.plan.walls.indices())
        for (int round = 1; round <= std::ssize(at.numbers[wall]); ++round)
            visit(wall, round, in_round(at.numbers[wall], round));
}

/// As far as its ends ran when it was measured: one that is to run further makes no wall thicker.
double widest(const Line &line, const Course &course, const LogNumbers &log, const WallPlace &wall) {
    const auto &left = log.end(LogEnd::left).ran_past, &right = log.end(LogEnd::right).ran_past;
    const auto tip = [&](std::size_t meeting, double overhang) {
        return reach_at(wall, meeting, overhang, 0).tip;
    };
    return std::max(
        line.at(left ? std::max(course.x_datum, tip(0, *left)) : course.x_datum),
        line.at(right ? std::min(course.x_far, tip(wall.meetings.size() - 1, *right)) : course.x_far));
}

void set_thickness(Shell &shell, std::size_t wall, double thickness) {
    auto &own = wall < shell.walls.size() ? shell.walls[wall].thickness
                                          : shell.partitions[wall - shell.walls.size()].thickness;
    own = Length::mm(thickness);
}

double widest_of(const Rebuild &at, Index<WallPlace> wall) {
    double most = at.plan.walls[wall].thickness;
    for (int round = 1; round <= std::ssize(at.numbers[wall]); ++round)
        if (const auto line = line_of(at, wall, round, &EndNumbers::width))
            most = std::max(most, widest(*line, at.course(wall, round), in_round(at.numbers[wall], round),
                                         at.plan.walls[wall]));
    return most;
}

/// False where every wall is as thick as its logs.
bool widen_once(Rebuild &at) {
    bool wider = false;
    for (const auto wall : at.plan.walls.indices()) {
        const double most = widest_of(at, wall);
        if (most <= at.plan.walls[wall].thickness + tolerance::weld) continue;
        set_thickness(at.made.shell, wall.at(), most);
        wider = true;
    }
    return wider;
}

/// Logs that were not measured stay as wide as they were stated.
void keep_widths(Rebuild &at, Index<WallPlace> wall, double stated) {
    for (int round = 1; round <= std::ssize(at.numbers[wall]); ++round) {
        const LogSizes by_statement = sizes_of(at.made.shell, at.plan.walls[wall].name, round);
        if (by_statement.diameter) continue; // as wide as its stick
        LogSizes &own = at.own(wall, round).sizes;
        if (!by_statement.butt_width) own.butt_width = Length::mm(stated);
        if (!by_statement.tip_width) own.tip_width = Length::mm(stated);
    }
}

/// Thicker walls move the shoulders of those that cross them, and with them where widths were measured.
void widen(Rebuild &at) {
    constexpr int settles_after = 10;
    const Found<Plan> before = at.plan;
    for (int i = 0; i < settles_after && widen_once(at); ++i)
        if (!at.lay_out_anew()) return;
    for (const auto wall : before.walls.indices())
        if (const double now = at.plan.walls[wall].thickness, was = before.walls[wall].thickness; now > was) {
            keep_widths(at, wall, was);
            if (now <= was + told_from) continue;
            at.tell(
                "wall-as-thick-as-logs", wall_place(before.walls[wall].name),
                said("its widest log comes to %1 by what was measured, more than the %2 stated: the wall is "
                     "made that thick, and logs whose width nobody measured stay as wide as stated",
                     in_mm(now), in_mm(was)));
        }
}

/// Of a face, by the word that it is told with first: "hewn, whitewashed" is hewn.
std::optional<Finish> finish_of(const std::string &face) {
    for (const Finish each : {Finish::hewn, Finish::sawn, Finish::peeled}) {
        const std::string_view word = name_of(each);
        if (face == word || face.starts_with(std::string(word) + ",")) return each;
    }
    return {};
}

std::optional<Finish> finish_of(const FaceFinish &finish) {
    const auto outside = finish_of(finish.outside);
    return outside && outside == finish_of(finish.inside) ? outside : std::nullopt;
}

/// One that bows to a side stands out of the wall's face: no gap over it closes or opens.
bool bows_up_or_down(const FoundLog &log) {
    return !log.bow_to || *log.bow_to == FoundFace::top || *log.bow_to == FoundFace::under;
}

/// What is written on one of the logs that openings part a round into. New wood bears no old mark, nor does
/// what is not the log any more that was found (left_as_found).
void mark(Rebuild &at, Index<WallPlace> wall, int round, const FoundLog &log) {
    if (log.tag.empty() || is_new_wood(at.own(wall, round))) return;
    OwnLog &own = log.place.piece ? at.own_piece(wall, round, *log.place.piece) : at.own(wall, round);
    if (is_new_wood(own)) return;
    if (own.mark.empty()) own.mark = log.tag;
    if (!own.fabric && !is_gone(log)) own.fabric = Fabric::kept;
}

/// New wood that comes in its place need not be of the species that was found.
void set_species(Rebuild &at, Index<WallPlace> wall, int round, const FoundLog &log) {
    if (log.species.empty() || is_new_wood(at.own(wall, round))) return;
    OwnLog &own = log.place.piece ? at.own_piece(wall, round, *log.place.piece) : at.own(wall, round);
    if (own.species.empty() && !is_new_wood(own)) own.species = log.species;
}

void set_words(Rebuild &at, Index<WallPlace> wall, int round, const LogNumbers &numbers) {
    for (const FoundLog *log : numbers.logs) {
        mark(at, wall, round, *log);
        OwnLog &own = at.own(wall, round);
        if (const auto butt = end_at(at.record, at.plan, wall, log->butt)) own.sizes.butt = butt;
        if (const auto finish = finish_of(log->finish)) own.sizes.finish = finish;
        set_species(at, wall, round, *log);
        if (const auto bow = taken(log->bow);
            bow && bows_up_or_down(*log) && !is_new_wood(own)) // of the log that was found
            own.bow = Length::mm(*bow), ++at.made.taken;
    }
}

/// At its butt and its tip, which lie past the shoulders that it was measured at.
struct TwoSizes {
    Length butt, tip;
};
TwoSizes at_ends(const Line &line, const Course &course, bool butt_left) {
    const Length left = Length::mm(line.at(course.x_datum)), right = Length::mm(line.at(course.x_far));
    return butt_left ? TwoSizes{left, right} : TwoSizes{right, left};
}

bool is_butt_left(const OwnLog &own, const Course &course) {
    return own.sizes.butt ? *own.sizes.butt == LogEnd::left : course.butt_at_datum;
}

void tell_bent(Rebuild &at, Index<WallPlace> wall, int round, const Line &height, const LogNumbers &numbers) {
    const StationNumbers *worst = nullptr;
    const auto off = [&](const StationNumbers &s) { return std::abs(*s.height - height.at(s.x)); };
    for (const StationNumbers &station : numbers.stations)
        if (station.height && off(station) > told_from && (!worst || off(station) > off(*worst)))
            worst = &station;
    if (!worst) return;
    at.tell(
        "log-not-straight", round_place(at.plan.walls[wall].name, round),
        said(
            "between its ends it was measured %1 high where a straight log is %2: the model has the straight "
            "one",
            in_mm(*worst->height), in_mm(height.at(worst->x))));
}

/// A slip of the tape, a number typed in another unit, or a log that lies in another place than the record
/// says: taken as it was measured, and told by its tag. Beside it the plan's number there, before anything
/// measured is put over it.
class FarOff {
  public:
    FarOff(Rebuild &at, Index<WallPlace> wall, int round) : at_(at), wall_(wall), round_(round) {}

    void tell(const LogNumbers &numbers) {
        for (const FoundLog *log : numbers.logs) {
            for (const FoundEnd &end : log->ends)
                if (const auto side = end_at(at_.record, at_.plan, wall_, end.corner))
                    tell_end(*log, end, at_.shoulder(wall_, round_, *side));
            for (const FoundStation &station : log->stations)
                if (const auto width = taken(station.width); width && is_far(*width, plan_width()))
                    tell_so(
                        "width-far-off",
                        said("log %1: between its ends it was measured %2 wide, and the plan has %3 there",
                             log->tag, in_mm(*width), in_mm(plan_width())));
        }
        for (const StationNumbers &station : numbers.stations)
            if (const double plan = plan_height(station.x); station.height && is_far(*station.height, plan))
                tell_so("height-far-off",
                        said("log %1: between its ends it was measured %2 high, and the plan has %3 there",
                             station.tag, in_mm(*station.height), in_mm(plan)));
    }

  private:
    static bool is_far(double measured, double plan) {
        constexpr double least = 0.6, most = 1.6; // of what the plan has: our choice, no source
        return measured < least * plan || measured > most * plan;
    }

    void tell_end(const FoundLog &log, const FoundEnd &end, double x) {
        const auto height = taken(end.height), width = taken(end.width);
        if (height && is_far(*height, plan_height(x)))
            tell_so("height-far-off",
                    said("log %1: its height at %2 was measured %3, and the plan has %4 there", log.tag,
                         end.corner, in_mm(*height), in_mm(plan_height(x))));
        if (width && is_far(*width, plan_width()))
            tell_so("width-far-off",
                    said("log %1: its width at %2 was measured %3, and the plan has %4 there", log.tag,
                         end.corner, in_mm(*width), in_mm(plan_width())));
    }

    double plan_height(double x) const {
        const Course &course = at_.course(wall_, round_);
        return is_scoped(at_.made.shell) ? plan_width() : course.high(x) - course.low(x);
    }

    /// As stated: where the widest log was measured wider, the wall has been made as wide as that already.
    double plan_width() const {
        const LogSizes &own = at_.own(wall_, round_).sizes;
        if (own.diameter) return own.diameter->mm();
        if (own.butt_width && own.tip_width) return (own.butt_width->mm() + own.tip_width->mm()) / 2;
        return at_.plan.walls[wall_].thickness;
    }

    void tell_so(const char *code, Said what) {
        at_.made.findings.push_back(
            {Weight::warning, code, round_place(at_.plan.walls[wall_].name, round_), std::move(what),
             said("measure it again, and look whether the log lies in this round"), ""});
    }

    Rebuild &at_;
    Index<WallPlace> wall_;
    int round_;
};

void set_diameter(Rebuild &at, Index<WallPlace> wall, int round, const LogNumbers &numbers) {
    FarOff(at, wall, round).tell(numbers);
    double sum = 0, count = 0;
    for (const LogEnd end : both_ends)
        for (const auto &each : {numbers.end(end).height, numbers.end(end).width})
            if (each) sum += *each, ++count;
    if (count == 0) return at.propose(wall, round, LogEnd::left, ProposedNumber::width);
    at.own(wall, round).sizes.diameter = Length::mm(sum / count);
    at.made.taken += static_cast<std::size_t>(count);
}

void propose_section(Rebuild &at, Index<WallPlace> wall, int round, const LogNumbers &numbers) {
    for (const LogEnd end : both_ends) {
        if (!numbers.end(end).height) at.propose(wall, round, end, ProposedNumber::height);
        if (!numbers.end(end).width) at.propose(wall, round, end, ProposedNumber::width);
    }
}

void state_widths(Rebuild &at, Index<WallPlace> wall, int round, const Line &width) {
    const Course &course = at.course(wall, round);
    const Length most = Length::mm(at.plan.walls[wall].thickness);
    OwnLog &own = at.own(wall, round);
    const TwoSizes two = at_ends(width, course, is_butt_left(own, course));
    own.sizes.butt_width = std::min(two.butt, most), own.sizes.tip_width = std::min(two.tip, most);
}

void set_section(Rebuild &at, Index<WallPlace> wall, int round, const LogNumbers &numbers) {
    propose_section(at, wall, round, numbers);
    FarOff(at, wall, round).tell(numbers);
    at.made.taken += taken_of(numbers, &EndNumbers::height) + taken_of(numbers, &EndNumbers::width);
    const auto width = line_of(at, wall, round, &EndNumbers::width);
    if (const auto height = line_of(at, wall, round, &EndNumbers::height)) {
        state_heights(at, wall, round, *height);
        tell_bent(at, wall, round, *height, numbers);
    }
    if (width) state_widths(at, wall, round, *width);
}

} // namespace

void state_heights(Rebuild &at, Index<WallPlace> wall, int round, const Line &height) {
    const Course &course = at.course(wall, round);
    OwnLog &own = at.own(wall, round);
    const TwoSizes two = at_ends(height, course, is_butt_left(own, course));
    own.sizes.butt_height = two.butt, own.sizes.tip_height = two.tip;
}

void set_plan(Rebuild &at) {
    each_log(at, [&](Index<WallPlace> wall, int round, const LogNumbers &numbers) {
        const auto left = numbers.end(LogEnd::left).overhang, right = numbers.end(LogEnd::right).overhang;
        if (left) at.own(wall, round).notch.overhang_left = Length::mm(*left);
        if (right) at.own(wall, round).notch.overhang_right = Length::mm(*right);
        at.made.taken += taken_of(numbers, &EndNumbers::overhang);
    });
    if (!is_scoped(at.made.shell) && at.lay_out_anew()) widen(at);
}

void set_sizes(Rebuild &at) {
    const bool round_logs = is_scoped(at.made.shell);
    each_log(at, [&](Index<WallPlace> wall, int round, const LogNumbers &numbers) {
        if (!numbers.logs.empty()) set_words(at, wall, round, numbers);
        round_logs ? set_diameter(at, wall, round, numbers) : set_section(at, wall, round, numbers);
    });
}

} // namespace roundlay
