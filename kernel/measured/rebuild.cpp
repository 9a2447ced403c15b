#include "kernel/measured/rebuild.h"

#include "kernel/layout/plan/plan.h"

#include <algorithm>

namespace roundlay {

bool Rebuild::lay_out_anew() {
    plan = lay_out_plan(made.shell);
    courses = {};
    if (stand(plan)) courses = lay_out_courses(made.shell, plan);
    if (!stand(plan, courses)) return false;
    numbers = numbers_by_log(record, plan, courses);
    lower_levels();
    return true;
}

/// As they would be read on a foundation that is level.
void Rebuild::lower_levels() {
    if (!level) return;
    for (const auto wall : plan.walls.indices())
        for (std::size_t log = 0; log < numbers[wall].size(); ++log)
            for (const LogEnd end : both_ends)
                if (auto &read = numbers[wall][log].ends[end == LogEnd::left ? 0 : 1].level)
                    *read -= slant(wall, shoulder(wall, static_cast<int>(log) + 1, end));
}

double Rebuild::shoulder(Index<WallPlace> wall, int round, LogEnd end) const {
    const std::size_t meeting = end == LogEnd::left ? 0 : plan.walls[wall].meetings.size() - 1;
    return reach_of(made.shell, plan, wall, round, meeting).shoulder;
}

OwnLog &Rebuild::own(Index<WallPlace> wall, int round) {
    return own_piece(wall, round, {});
}

OwnLog &Rebuild::own_piece(Index<WallPlace> wall, int round, std::optional<int> piece) {
    auto &all = made.shell.own_logs;
    const std::string &name = plan.walls[wall].name;
    for (auto log = all.rbegin(); log != all.rend(); ++log) // of two statements the later one counts
        if (log->wall == name && log->round == round && log->piece == piece) return *log;
    OwnLog log;
    log.wall = name, log.round = round, log.piece = piece;
    all.push_back(log);
    return all.back();
}

bool Rebuild::is_new(Index<WallPlace> wall, int round) const {
    const auto &all = made.shell.own_logs;
    const auto log = std::find_if(all.rbegin(), all.rend(), [&](const OwnLog &own) {
        return own.wall == plan.walls[wall].name && own.round == round && !own.piece;
    });
    return log != all.rend() && is_new_wood(*log);
}

void Rebuild::propose(Index<WallPlace> wall, int round, LogEnd end, ProposedNumber what) {
    made.proposed.push_back({plan.walls[wall].name, round, end, what});
}

void Rebuild::unpropose(Index<WallPlace> wall, int round, LogEnd end, ProposedNumber what) {
    std::erase(made.proposed, Proposed{plan.walls[wall].name, round, end, what});
}

void Rebuild::tell(const char *code, About place, Said what, std::optional<Said> advice) {
    made.findings.push_back({Weight::note, code, std::move(place), std::move(what), std::move(advice), ""});
}

namespace {

void tell_all(Findings &to, const Findings &from) {
    to.insert(to.end(), from.begin(), from.end());
}

Finding no_plan() {
    return {Weight::error,
            "plan-before-record",
            {about::All::plan},
            said("the walls and rounds that the record is put over do not stand"),
            said("mend what the check says of them first"),
            ""};
}

} // namespace

MeasuredShell measured_shell(const Shell &stated, const Record &record, const Settled *level) {
    MeasuredShell made;
    made.shell = stated;
    if (level) tell_all(made.findings, level->findings);
    Rebuild at{record, made, {}, {}, {}, level};
    if (!at.lay_out_anew()) made.findings.push_back(no_plan());
    for (const auto step :
         {set_walls, set_plan, set_floors, set_sizes, set_level, set_seams, set_openings, set_tails}) {
        if (has_errors(made.findings)) break;
        step(at);
        if (at.lay_out_anew()) continue;
        tell_all(made.findings, at.plan.findings);
        tell_all(made.findings, at.courses.findings);
    }
    if (!has_errors(made.findings)) hold_against(at);
    return made;
}

MeasuredShell house_as_asked(const Grounds &on, const Shell &now) {
    const Record left = left_as_found(on.record, on.measured_on, now);
    if (!on.levelled_on) return measured_shell(now, left);
    const Settled level = settled(on.measured_on, *on.levelled_on, on.record);
    return measured_shell(now, left, &level);
}

MeasuredShell house_as_found(const Grounds &on) {
    if (!on.levelled_on) return measured_shell(on.measured_on, on.record);
    const Settled level = settled(on.measured_on, on.measured_on, on.record);
    return measured_shell(on.measured_on, on.record, &level);
}

} // namespace roundlay
