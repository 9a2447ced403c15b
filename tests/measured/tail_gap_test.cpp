// Room that was measured under a tail: it stays open between old logs, and new wood fills it.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "tests/measured/support/noted.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::noted;

namespace {

constexpr double room = 9;

/// Both ends of round 3 of wall A as they were measured; heights of the wood alone.
Record measured(std::optional<double> gap) {
    Record record;
    FoundLog log;
    log.tag = "old 3", log.place = {"A", 3, {}};
    for (const char *corner : {"DA", "AB"}) {
        FoundEnd end;
        end.corner = corner;
        end.shoulder_outside = noted(150), end.shoulder_inside = noted(150);
        end.end_outside = noted(170), end.end_inside = noted(170);
        if (gap) end.gap = noted(*gap);
        log.ends.push_back(end);
    }
    record.logs = {log};
    return record;
}

const Piece &log_in(const Layout &layout, const std::string &tag) {
    const auto piece = std::ranges::find(layout.pieces, tag, &Piece::tag);
    REQUIRE(piece != layout.pieces.end());
    return *piece;
}

const SeamCut &seam(const Piece &piece, const std::string &corner, Side side) {
    for (const Cut &cut : piece.cuts)
        if (const auto *seam = std::get_if<SeamCut>(&cut);
            seam && seam->corner == corner && seam->side == side)
            return *seam;
    FAIL("no seam");
    throw;
}

/// Of the tail at that corner, in its middle.
double thick(const Piece &piece, const std::string &corner) {
    const SeamCut &top = seam(piece, corner, Side::top), &under = seam(piece, corner, Side::under);
    const double x = (top.x_from + top.x_to) / 2, y = piece.blank.width / 2;
    return top.seam.height_at(x, y) - under.seam.height_at(x, y);
}

/// Over the top of the tail below, in the middle of the corner; the lower log's tag by its cut's name.
double open_under(const Layout &layout, const Piece &piece, const std::string &corner) {
    const SeamCut &under = seam(piece, corner, Side::under);
    const Piece &below = log_in(layout, under.other);
    const Plane top = to_world(seam(below, corner, Side::top).seam, below.frame);
    const Plane own = to_world(under.seam, piece.frame);
    const Vec3 at = piece.frame.to_world({(under.x_from + under.x_to) / 2, piece.blank.width / 2, 0});
    return own.height_at(at.x, at.y) - top.height_at(at.x, at.y);
}

Layout rebuilt(const Shell &stated, const Record &record) {
    const MeasuredShell made = measured_shell(stated, record);
    const Layout layout = lay_out(made.shell);
    REQUIRE_FALSE(has_errors(layout.findings));
    CHECK(overlaps(layout, bodies_of(layout)).empty());
    return layout;
}

} // namespace

TEST_CASE("Room under a tail stays open between old logs, and the tail keeps the height that was measured") {
    const Shell stated = test::plain_shell();
    const Layout tight = rebuilt(stated, measured({})), open = rebuilt(stated, measured(room));
    for (const char *corner : {"DA", "AB"}) {
        const Piece &log = log_in(open, "A-03-1");
        CHECK(thick(log, corner) == Approx(160).epsilon(1e-9)); // the mean of 150, 150, 170 and 170
        CHECK(thick(log_in(tight, "A-03-1"), corner) == Approx(160).epsilon(1e-9));
        CHECK(open_under(open, log, corner) == Approx(room).epsilon(1e-9));
        CHECK(open_under(tight, log_in(tight, "A-03-1"), corner) == Approx(0).margin(1e-9));
    }
}

TEST_CASE("A new log between old ones fills the room under it and over it") {
    Shell stated = test::plain_shell();
    OwnLog own;
    own.wall = "A", own.round = 3, own.fabric = Fabric::replacement;
    stated.own_logs = {own};
    const Layout layout = rebuilt(stated, measured(room));
    for (const char *corner : {"DA", "AB"}) {
        const Piece &log = log_in(layout, "A-03-1");
        CHECK(thick(log, corner) == Approx(160 + room).epsilon(1e-9));
        CHECK(open_under(layout, log, corner) == Approx(0).margin(1e-9));
    }
}

TEST_CASE("A gap alone is in the model as well, and a stated one lays the tail so") {
    Record record = measured(room);
    for (FoundEnd &end : record.logs.front().ends)
        end.shoulder_outside = end.shoulder_inside = end.end_outside = end.end_inside = {};
    const Layout layout = rebuilt(test::plain_shell(), record);
    for (const char *corner : {"DA", "AB"})
        CHECK(open_under(layout, log_in(layout, "A-03-1"), corner) == Approx(room).epsilon(1e-9));
}

TEST_CASE("A log's species as it was found is in the model, and not that of wood that comes in its place") {
    Shell stated = test::plain_shell();
    Record record = measured({});
    record.logs.front().species = "white oak";
    CHECK(log_in(rebuilt(stated, record), "A-03-1").species == "white oak");
    OwnLog own;
    own.wall = "A", own.round = 3, own.fabric = Fabric::replacement;
    stated.own_logs = {own};
    CHECK(log_in(rebuilt(stated, record), "A-03-1").species.empty());
}
