#include "kernel/review/fresh_logs.h"

#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/text.h"
#include "kernel/trade/settling.h"

#include <algorithm>
#include <map>

namespace roundlay {

namespace {

bool is_old(const Piece &piece) {
    return is_log(piece) && (piece.fabric == Fabric::kept || piece.fabric == Fabric::patched);
}

struct FreshLog {
    double height = 0, top = 0;
};

/// By round: of logs that openings part the highest.
std::map<int, FreshLog> fresh_logs_of(const Layout &layout, Index<WallPlace> wall) {
    std::map<int, FreshLog> all;
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece) || piece.wall != wall || piece.fabric != Fabric::replacement) continue;
        const HewnFaces faces = hewn_faces(piece);
        const double x = piece.blank.length / 2;
        FreshLog &log = all[piece.round];
        log.height = std::max(log.height, faces.highest(x) - faces.lowest(x));
        log.top = std::max(log.top, piece.frame.origin.z + faces.highest(x));
    }
    return all;
}

double top_of(const Layout &layout, Index<WallPlace> wall) {
    double top = 0;
    for (const Piece &piece : layout.pieces)
        if (is_log(piece) && piece.wall == wall)
            top = std::max(top, piece.frame.origin.z + piece.blank.height);
    return top;
}

void tell(const std::string &wall, int round, const FreshLog &log, double over, double together,
          Findings &findings) {
    const SettlingRule &rule = settling_rule(SettlingRuleName::four_percent);
    findings.push_back(
        {Weight::warning, "fresh-log-sinks", round_place(wall, round),
         said("a fresh log of %1 in old dry wood sinks alone, by some %2, and %3 of wall over it; all fresh "
              "logs "
              "up to here sink by %4 (%5; %6, %7)",
              in_mm(log.height), in_mm(log.height * rule.part), in_mm(over), in_mm(together),
              phrase(rule.quoted), phrase(rule.origin.source), phrase(words(rule.origin.mark))),
         said(
             "take wood as dry as the old, or leave room over openings, at posts and at the ends of the log"),
         "wood.moisture"});
}

} // namespace

/// One moisture cannot be true of old wood and of new.
void tell_weighed_green(const Shell &shell, const Layout &layout, Findings &findings) {
    const auto comes = [](const Piece &piece) { return piece.fabric == Fabric::replacement || piece.mends; };
    if (!shell.wood.moisture || std::ranges::none_of(layout.pieces, comes)) return;
    findings.push_back(
        {Weight::note,
         "new-wood-weighed-green",
         {about::All::logs},
         said("the stated moisture is taken for the old wood alone: what is new in the house is "
              "weighed green, which is heavier; weigh before lifting"),
         {},
         "wood.moisture"});
}

void review_fresh_logs(const Shell &shell, const Layout &layout, Findings &findings) {
    tell_weighed_green(shell, layout, findings);
    if (shell.wood.moisture && *shell.wood.moisture <= seasoned_moisture) return;
    for (const auto w : layout.walls.indices()) {
        const bool old = std::ranges::any_of(
            layout.pieces, [&](const Piece &piece) { return is_old(piece) && piece.wall == w; });
        if (!old) continue;
        const double top = top_of(layout, w), part = settling_rule(SettlingRuleName::four_percent).part;
        double together = 0;
        for (const auto &[round, log] : fresh_logs_of(layout, w)) {
            together += part * log.height;
            tell(layout.walls[w].name, round, log, std::max(0.0, top - log.top), together, findings);
        }
    }
}

} // namespace roundlay
