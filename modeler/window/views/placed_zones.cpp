#include "modeler/window/views/placed_zones.h"

#include "exporters/report/wall_marks.h"
#include "modeler/window/views/record_marks.h"

#include <algorithm>

namespace roundlay::window {

namespace {

bool is_old(const Piece &piece) {
    return piece.fabric != Fabric::replacement && !piece.mends;
}

void add_log(PlacedZones &all, const Record &record, const Layout &layout, const sheets::FormLog &log) {
    std::vector<ConditionZone> nowhere;
    for (const ConditionZone &zone : log.found.zones) {
        const auto along = sheets::zone_on_wall(record, layout, log, zone);
        if (!along) nowhere.push_back(zone);
        for (const Index<Piece> i : log.pieces) {
            const Piece &piece = layout.pieces[i];
            if (!along || !is_old(piece)) continue;
            const sheets::Along part = sheets::both(sheets::along_of(layout, piece), *along);
            if (!part.empty()) all.zones.push_back({i, zone, part});
        }
    }
    const std::size_t mark = condition_mark(log.found, nowhere);
    for (const Index<Piece> i : log.pieces)
        if (is_old(layout.pieces[i])) all.whole[i] = std::max(all.whole[i], mark);
}

} // namespace

PlacedZones placed_zones(const ExportJob &job) {
    PlacedZones all{{}, Indexed<std::size_t, Piece>(job.layout.pieces.size())};
    const sheets::FormLogs logs = sheets::form_logs(*job.record, job.layout);
    for (const std::vector<sheets::FormLog> &wall : logs.walls)
        for (const sheets::FormLog &log : wall)
            if (log.recorded) add_log(all, *job.record, job.layout, log);
    std::ranges::stable_sort(all.zones, {},
                             [](const PlacedZone &each) { return condition_mark(each.zone.what); });
    return all;
}

} // namespace roundlay::window
