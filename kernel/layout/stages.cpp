#include "kernel/layout/stages.h"

#include "kernel/layout/courses/round_logs.h"
#include "kernel/layout/courses/steps.h"
#include "kernel/layout/openings/openings_on_steps.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <iterator>

namespace roundlay {

namespace {

void append(Findings &all, Findings more) {
    std::ranges::move(more, std::back_inserter(all));
}

/// Warnings wait until what went wrong before them is mended.
Findings errors_of(Findings findings) {
    std::erase_if(findings, [](const Finding &f) { return f.weight != Weight::error; });
    return findings;
}

Found<Openings> openings_of(const Shell &shell, const Stages &before) {
    auto all = check_openings(shell, before.plan, before.courses);
    append(all.findings, check_trim(shell, before.plan, before.courses));
    if (!stand(before.courses, before.foundation)) return all;
    auto on_steps = check_openings_on_steps(shell, before.plan, before.foundation, all);
    all.refused = std::move(on_steps.refused);
    append(all.findings, std::move(on_steps.findings));
    return all;
}

/// The shell without what of its openings cannot be cut: what is wrong beside that is wrong all the same.
/// Refused openings keep their places in the list, and their names, high over all walls.
Shell without_misfits(const Shell &shell, const Openings &openings) {
    constexpr double out_of_reach = 1e6; // mm
    Shell next = shell;
    next.trim = {};
    for (std::size_t i = 0; i < next.openings.size(); ++i) {
        next.openings[i].trim = {};
        if (openings.refused[i]) next.openings[i].sill = Length::mm(out_of_reach);
    }
    return next;
}

/// Pieces are called otherwise once all openings are cut.
bool names_one_of(const Indexed<Piece> &pieces, const Finding &finding) {
    return std::ranges::any_of(finding.what.amounts, [&](const Amount &amount) {
        const auto *name = std::get_if<std::string>(&amount.value());
        return name && std::ranges::any_of(pieces, [&](const Piece &p) { return p.tag == *name; });
    });
}

/// What is left to bore of the logs.
const AllSpans &left_of(const Pieces &logs, const Floors &floors) {
    return floors.spans.empty() ? logs.spans : floors.spans;
}

/// Of floors in a shell without its misfits.
void keep_what_is_true(Found<Floors> &floors, const Indexed<Piece> &logs) {
    Findings kept;
    std::vector<FloorMove> moves;
    for (std::size_t i = 0; i < floors.findings.size(); ++i) {
        const Finding &f = floors.findings[i];
        if (f.weight != Weight::error || names_one_of(logs, f)) continue;
        for (const FloorMove &move : floors.moves)
            if (move.finding == i) moves.push_back({kept.size(), move.floor, move.by});
        kept.push_back(f);
    }
    floors.findings = std::move(kept);
    floors.moves = std::move(moves);
}

/// From pieces on in a shell whose openings do not all fit.
void look_past_openings(const Shell &shell, Stages &s) {
    const Shell rest = without_misfits(shell, s.openings);
    const auto logs = lay_out_pieces(rest, s.plan, s.foundation, s.courses, s.corners);
    s.floors = lay_out_floors(rest, s.plan, s.courses, logs);
    s.bores.findings =
        errors_of(lay_out_bores(rest, s.plan, s.foundation, logs, left_of(logs, s.floors)).findings);
    keep_what_is_true(s.floors, logs.pieces);
}

/// Pieces and what is cut into them.
void cut_logs(const Shell &shell, Stages &s) {
    s.logs_on_steps = warn_of_steps(shell, s.plan, s.foundation, s.courses);
    s.slivers = warn_of_slivers(shell, s.plan, s.foundation, s.courses);
    s.level_sills = note_level_sills(shell, s.plan, s.foundation, s.courses);
    s.pieces = lay_out_pieces(shell, s.plan, s.foundation, s.courses, s.corners);
    if (!stand(s.pieces)) return look_past_openings(shell, s);
    s.floors = lay_out_floors(shell, s.plan, s.courses, s.pieces);
    s.bores = lay_out_bores(shell, s.plan, s.foundation, s.pieces, left_of(s.pieces, s.floors));
    if (!stand(s.floors)) s.bores.findings = errors_of(std::move(s.bores.findings));
}

/// Without logs: as far as the walls' places say.
void look_past_logs(const Shell &shell, Stages &s) {
    if (!is_scoped(shell)) s.floors.findings = errors_of(check_floor_plans(shell, s.plan));
    s.bores.findings = errors_of(check_bores(shell, s.plan));
}

/// The shell without its partitions, and without what is stated of them and of their corners.
Shell without_partitions(const Shell &shell) {
    Shell next = shell;
    next.partitions.clear();
    const auto is_gone = [&shell](const std::string &wall) {
        return std::ranges::any_of(shell.partitions, [&](const Partition &p) { return p.name == wall; });
    };
    std::erase_if(next.corners, [&](const CornerNotch &c) { return is_gone(c.first) || is_gone(c.second); });
    std::erase_if(next.own_logs, [&](const OwnLog &log) { return is_gone(log.wall); });
    std::erase_if(next.mends, [&](const Mend &mend) { return is_gone(mend.wall); });
    return next;
}

/// Whether it is about something stated in a partition, or a thing that partitions part or carry.
bool hangs_on_partitions(const Shell &shell, const Finding &finding) {
    const auto stands_in_one = [&](const std::string &wall) {
        return std::ranges::any_of(shell.partitions, [&](const Partition &p) { return p.name == wall; });
    };
    const auto is_of = [&finding](const std::string &list, std::size_t i) {
        return finding.subject.starts_with(subject(list, i, ""));
    };
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (is_of("opening", i)) return stands_in_one(shell.openings[i].wall);
    for (std::size_t i = 0; i < shell.bores.size(); ++i)
        if (is_of("bore", i)) return stands_in_one(shell.bores[i].wall);
    for (std::size_t i = 0; i < shell.floors.size(); ++i)
        if (is_of("floor", i))
            return stands_in_one(shell.floors[i].from) || stands_in_one(shell.floors[i].to) ||
                   finding.code != "floor-over-wall";
    return true;
}

/// Where partitions stand in the way of a plan: what is wrong with openings, floors and bores of the outside
/// walls without them is wrong all the same.
void look_past_partitions(const Shell &shell, Stages &s) {
    const Stages rest = work_out(without_partitions(shell));
    if (!stand(rest.plan)) {
        for (const Finding &f : rest.plan.findings)
            if (std::ranges::find(s.plan.findings, f.code, &Finding::code) == s.plan.findings.end())
                s.plan.findings.push_back(f);
        return;
    }
    const auto take = [&shell](Findings &to, const Findings &from) {
        for (const Finding &f : from)
            if (f.weight == Weight::error && !hangs_on_partitions(shell, f)) to.push_back(f);
    };
    take(s.openings.findings, rest.openings.findings);
    take(s.floors.findings, rest.floors.findings);
    take(s.bores.findings, rest.bores.findings);
}

void peg(const Shell &shell, Stages &s) {
    s.pegs.findings = check_peg_rule(shell);
    if (!all_stand(s)) {
        s.pegs.findings = errors_of(std::move(s.pegs.findings));
        return;
    }
    auto pegs = lay_out_pegs(shell, s.plan, s.foundation, s.pieces, left_of(s.pieces, s.floors), s.bores);
    pegs.findings.insert(pegs.findings.begin(), s.pegs.findings.begin(), s.pegs.findings.end());
    s.pegs = std::move(pegs);
}

} // namespace

Stages work_out(const Shell &shell) {
    Stages s;
    s.plan = lay_out_plan(shell);
    s.courses = lay_out_courses(shell, s.plan);
    if (stand(s.plan, s.courses)) s.foundation = lay_out_steps(shell, s.plan, s.courses);
    const bool based = stand(s.plan, s.courses, s.foundation);
    if (based) s.corners = lay_out_corners(shell, s.plan, s.foundation, s.courses);
    if (stand(s.plan)) s.openings = openings_of(shell, s);
    if (based && stand(s.corners, s.openings))
        cut_logs(shell, s);
    else if (based && stand(s.corners))
        look_past_openings(shell, s);
    else if (stand(s.plan))
        look_past_logs(shell, s);
    else if (!shell.partitions.empty())
        look_past_partitions(shell, s);
    peg(shell, s);
    return s;
}

} // namespace roundlay
