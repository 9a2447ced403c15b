// Logs that are to be kept as they are, and that a state cuts anew by what it states of others.
#include "kernel/fabric/fabric.h"
#include "kernel/fabric/standing.h"
#include "kernel/layout/pieces/wood_difference.h"
#include "kernel/record/numbers.h"

#include <algorithm>

namespace roundlay {

namespace {

constexpr double sawn = 1; // mm: nobody cuts a log nearer than that; our choice, no source

/// What no mend of the log itself makes of it.
bool is_cut_anew(const Layout &found, Index<Piece> piece, const Layout &now) {
    const auto standing = standing_as(found, piece, now);
    if (standing.size() != 1) return false; // that openings part it is told by what they do to it
    const Piece &is = now.pieces[standing.front()];
    return is.mended.empty() && wood_difference(found.pieces[piece], is).most() >= sawn;
}

} // namespace

std::optional<DecisionProblem> kept_and_cut_anew(const Record &record, const Layout &now,
                                                 const Layout &found) {
    std::vector<std::size_t> logs;
    std::string tags;
    for (const DecidedLog &decided : decided_logs(record, found)) {
        if (decided.what != Decision::keep ||
            std::ranges::none_of(decided.found_as,
                                 [&](const Index<Piece> piece) { return is_cut_anew(found, piece, now); }))
            continue;
        logs.push_back(decided.log);
        tags += (tags.empty() ? "" : ", ") + record.logs[decided.log].tag;
    }
    if (logs.empty()) return {};
    const std::size_t last = record.logs[logs.front()].decisions.size() - 1;
    return DecisionProblem{
        log_path(logs.front()) + ".decision[" + std::to_string(last) + "]",
        said("%1 {log that is to be kept is|logs that are to be kept are} cut anew in this state, by what it "
             "states of others: %2; compare this state with the one as found, which tells what differs",
             logs.size(), tags)};
}

} // namespace roundlay
