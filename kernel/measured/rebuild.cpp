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
    return true;
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

MeasuredShell measured_shell(const Shell &stated, const Record &record) {
    MeasuredShell made;
    made.shell = stated;
    Rebuild at{record, made, {}, {}, {}};
    if (!at.lay_out_anew()) made.findings.push_back(no_plan());
    for (const auto step : {set_walls, set_plan, set_floors, set_sizes, set_seams, set_openings, set_tails}) {
        if (has_errors(made.findings)) break;
        step(at);
        if (at.lay_out_anew()) continue;
        tell_all(made.findings, at.plan.findings);
        tell_all(made.findings, at.courses.findings);
    }
    if (!has_errors(made.findings)) hold_against(at);
    return made;
}

} // namespace roundlay
