#include "kernel/layout/lay_out.h"

#include "kernel/layout/advice/alternation_advice.h"
#include "kernel/layout/advice/beam_advice.h"
#include "kernel/layout/advice/floor_advice.h"
#include "kernel/layout/advice/opening_advice.h"
#include "kernel/layout/advice/sliver_advice.h"
#include "kernel/layout/assembly.h"
#include "kernel/layout/courses/standing.h"
#include "kernel/layout/plan/partition_advice.h"

#include <algorithm>
#include <iterator>

namespace roundlay {

namespace {

/// Where in all findings those begin that advice is tried for.
struct Told {
    std::size_t slivers = 0, floors = 0;
};

bool is_note(const Finding &f) {
    return f.weight == Weight::note;
}

/// What all stages have to say, in their order.
Told tell(const Shell &shell, Stages &s, Layout &layout) {
    const auto append = [&](Findings &findings) {
        const std::size_t first = layout.findings.size();
        std::ranges::move(findings, std::back_inserter(layout.findings));
        return first;
    };
    Findings notes; // of logs at corners: many alike, behind what there is to do, and only where logs stand
    std::ranges::copy_if(s.corners.findings, std::back_inserter(notes), is_note);
    std::erase_if(s.corners.findings, is_note);
    Told told;
    append(s.plan.findings), append(s.courses.findings), append(s.foundation.findings);
    append(s.corners.findings), append(s.openings.findings), append(s.logs_on_steps);
    told.slivers = append(s.slivers.findings);
    append(s.level_sills), append(s.pieces.findings);
    told.floors = append(s.floors.findings);
    append(s.bores.findings), append(s.pegs.findings), append(s.mends);
    for (auto &found : {check_level_top(shell, layout), note_pitch_left_out(shell, layout)})
        if (found) layout.findings.push_back(*found);
    if (!has_errors(layout.findings)) append(notes);
    return told;
}

Layout laid_out(const Shell &shell, bool advises);

/// What a warning says would mend it is tried first, by laying the shell out so.
void advise(const Shell &shell, const Stages &s, const Told &told, Layout &layout) {
    const auto tried = [](const Shell &other) { return laid_out(other, false); };
    const bool stands = all_stand(s);
    advise_on_partitions(shell, layout.findings);
    advise_on_alternation(shell, layout, s.courses, tried);
    if (!stands) advise_on_openings(shell, layout, tried);
    std::vector<FloorMove> moves = s.floors.moves;
    for (FloorMove &move : moves)
        move.finding += told.floors;
    advise_on_floors(shell, layout, moves, tried);
    if (!stands) {
        advise_on_walls_of_floors(shell, layout, tried);
        advise_on_beams(shell, layout, tried);
    }
    std::vector<Sliver> slivers = s.slivers.slivers;
    for (Sliver &sliver : slivers)
        sliver.finding += told.slivers;
    advise_on_slivers(shell, layout, slivers, tried);
}

Layout laid_out(const Shell &shell, bool advises) {
    Stages stages = work_out(shell);
    Layout layout = assembled(shell, stages);
    const Told told = tell(shell, stages, layout);
    if (advises) advise(shell, stages, told, layout);
    return layout;
}

} // namespace

Layout lay_out(const Shell &shell) {
    return laid_out(shell, true);
}

Layout lay_out_to_try(const Shell &shell) {
    return laid_out(shell, false);
}

} // namespace roundlay
