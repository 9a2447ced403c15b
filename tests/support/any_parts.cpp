#include "tests/support/any_parts.h"

#include "kernel/shell/notch_kinds.h"

#include <rapidcheck.h>

#include <algorithm>
#include <vector>

namespace roundlay::test {

namespace {

Length mm(double v) {
    return Length::mm(v);
}

} // namespace

double between(int low, int high) {
    return *rc::gen::inRange(low, high + 1);
}

bool sometimes(int one_in) {
    return between(1, one_in) == 1;
}

NotchKind any_tail(bool stated_too) {
    std::vector<NotchKind> kinds;
    for (const KindOfNotch &each : all_kinds_of_notch)
        if (each.slopes != NotchSlopes::none && (stated_too || each.slopes != NotchSlopes::stated))
            kinds.push_back(each.kind);
    return *rc::gen::elementOf(kinds);
}

void add_any_openings(Shell &shell) {
    for (const Wall &wall : shell.walls) {
        const int count = *rc::gen::inRange(0, 4);
        // A wall loses its two corners and a little more at each end; openings stand in equal bays.
        const double margin = 2 * shell.thickness.mm() + 150, room = wall.length.mm() - 2 * margin;
        const double bay = room / std::max(count, 1), island = 500;
        if (bay < island + 400) continue;
        for (int i = 0; i < count; ++i) {
            Opening o;
            o.kind = between(0, 3) == 0 ? OpeningKind::door : OpeningKind::window;
            o.wall = wall.name;
            o.width = mm(between(300, static_cast<int>(std::min(bay - island, 2400.0))));
            o.from_left = mm(margin + i * bay + between(0, static_cast<int>(bay - island - o.width.mm())));
            const double top = *shell.rounds.count * shell.rounds.pitch->mm() - shell.rounds.gap.mm() - 60;
            o.sill = mm(o.kind == OpeningKind::door ? 0 : between(0, static_cast<int>(top * 0.5)));
            o.height = mm(between(100, static_cast<int>(std::max(110.0, top - o.sill.mm() - 1))));
            shell.openings.push_back(o);
        }
    }
}

void add_any_taper(Shell &shell) {
    const double log = shell.rounds.pitch->mm() - shell.rounds.gap.mm(), d = between(0, 12);
    shell.logs.butt_height = mm(log + d);
    shell.logs.tip_height = mm(log - d);
    shell.logs.tip_width =
        shell.thickness - mm(between(20, 50)); // a wall may be 20 mm under the shell's figure
    for (int i = between(0, 3); i > 0; --i) {
        OwnLog own;
        own.wall = (*rc::gen::elementOf(shell.walls)).name;
        own.round = between(1, *shell.rounds.count);
        // a sill of half logs as high as whole ones has its logs beside those that it crosses: no wall to be
        // built
        if (own.round > 1) own.sizes.butt_height = mm(log + between(-5, 8));
        if (between(0, 1) == 0) own.sizes.butt = between(0, 1) == 0 ? LogEnd::left : LogEnd::right;
        shell.own_logs.push_back(own);
    }
}

} // namespace roundlay::test
