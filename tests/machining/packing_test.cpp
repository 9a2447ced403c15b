// How a log is packed so that its x lies level, on faces that earlier set-ups have hewn.
#include "exporters/machining/operations.h"
#include "exporters/machining/raw_stock.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>
#include <cmath>

using namespace roundlay;

namespace {

/// Logs 200 mm wide at the butt and 160 at the tip, with tails that are cut from both sides.
Shell tapering() {
    Shell shell = test::plain_shell();
    shell.logs.butt_width = Length::mm(200), shell.logs.tip_width = Length::mm(160);
    shell.notch.kind = NotchKind::full_dovetail;
    shell.notch.slope = Slope::rise_per_run(1.0 / 8);
    shell.pegs.wanted = true;
    return shell;
}

/// How much further out the face is at the far end than at the datum end, seen along the way it looks.
double stands_out(const machining::Operation &hewn, Vec3 way, double length) {
    const Vec3 out = -hewn.sides.front().plane.normal;
    return -out.x / dot(out, way) * length;
}

} // namespace

TEST_CASE("A log that lies on a face that was hewn to a taper is packed by that taper") {
    const Layout layout = lay_out(tapering());
    REQUIRE_FALSE(layout.pieces.empty());
    const Bodies bodies = bodies_of(layout);
    double most = 0;
    for (const auto m : layout.models.indices()) {
        const machining::OperationList list = machining::operations_of(layout, m, bodies[m]);
        for (std::size_t s = 1; s < list.setups.size(); ++s)
            for (const machining::Operation &each : list.operations) {
                const bool before = each.setup > 0 && each.setup <= static_cast<int>(s);
                if (each.kind != machining::OperationKind::plane || !before) continue;
                const Vec3 way = machining::outward(list.setups[s].down);
                if (dot(-each.sides.front().plane.normal, way) < 0.9) continue;
                INFO(list.tag);
                const double length = list.stock.stock.size.length;
                // What stands out at the far end lifts it: so much goes under the datum end.
                CHECK(list.setups[s].packing == Approx(-stands_out(each, way, length)).margin(0.01));
                most = std::max(most, std::abs(list.setups[s].packing));
            }
    }
    CHECK(most == Approx((200.0 - 160) / 2).margin(1)); // half on either face, over its whole length
}
