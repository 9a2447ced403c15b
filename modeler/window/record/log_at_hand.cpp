#include "modeler/window/record/log_at_hand.h"

#include "exporters/sheets/form/proposed.h"
#include "modeler/window/desk/words.h"

#include <algorithm>

namespace roundlay::window {

namespace {

LogAtHand at_hand(const sheets::FormLog &log, const std::string &wall) {
    LogAtHand made{log.found, log.recorded, wall, log.pieces, {}};
    for (const int end : {0, 1})
        made.ends[end].name = log.ends[end].name;
    return made;
}

End other_end(int end) {
    return end == 0 ? End::datum : End::far;
}

} // namespace

std::vector<LogAtHand> logs_at_hand(const Record &record, const Layout &layout) {
    const sheets::FormLogs all = sheets::form_logs(record, layout);
    std::vector<LogAtHand> logs;
    for (const auto wall : layout.walls.indices())
        for (const sheets::FormLog &log : all.walls[wall])
            logs.push_back(at_hand(log, layout.walls[wall].name));
    for (const sheets::FormLog &log : all.timbers)
        logs.push_back(at_hand(
            log, layout.floors[layout.timbers[*layout.pieces[log.pieces.front()].timber].floor].name));
    for (const sheets::FormLog &log : all.elsewhere)
        logs.push_back(at_hand(log, {}));
    return logs;
}

/// The pieces lie from the left to the right: the first one's datum end is the log's, the last one's far end.
void propose(LogAtHand &log, const Layout &layout, UnitSystem units) {
    if (log.pieces.empty()) return;
    for (const int end : {0, 1}) {
        const Piece &piece = layout.pieces[end == 0 ? log.pieces.front() : log.pieces.back()];
        const sheets::ProposedEnd by_plan = sheets::proposed_end(layout, piece, other_end(end));
        auto &proposed = log.ends[end].proposed;
        const auto put = [&](const char *name, double mm) { proposed[name] = length_text(mm, units); };
        put("height", by_plan.height);
        put("width", by_plan.width);
        if (by_plan.overhang) put("overhang", *by_plan.overhang);
        if (!by_plan.tail) continue;
        put("shoulder_outside", by_plan.tail->shoulder_outside.tall());
        put("shoulder_inside", by_plan.tail->shoulder_inside.tall());
        put("end_outside", by_plan.tail->end_outside.tall());
        put("end_inside", by_plan.tail->end_inside.tall());
    }
}

std::optional<std::size_t> log_of_piece(const std::vector<LogAtHand> &logs, Index<Piece> piece) {
    for (std::size_t i = 0; i < logs.size(); ++i)
        if (std::ranges::find(logs[i].pieces, piece) != logs[i].pieces.end()) return i;
    return {};
}

std::optional<std::size_t> log_tagged(const std::vector<LogAtHand> &logs, const std::string &tag) {
    for (std::size_t i = 0; i < logs.size(); ++i)
        if (logs[i].found.tag == tag) return i;
    return {};
}

} // namespace roundlay::window
