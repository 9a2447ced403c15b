// Replacements between logs as they were found: their seams are those of the logs around them, less the
// scribe.
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/piece_shape.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "tests/measured/support/noted.h"
#include "tests/support/any_parts.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdio>

using namespace roundlay;
using roundlay::test::noted;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

double drawn(double low, double high) {
    return *rc::gen::inRange(int(low * 10), int(high * 10) + 1) / 10.0;
}

/// A jittered log: heights, widths, gaps and the tops of its tails.
OwnLog jittered(const Layout &layout, const Piece &piece) {
    OwnLog log;
    log.wall = layout.walls[piece.wall].name, log.round = piece.round;
    const double high = layout.heights[piece.wall].log_height, thick = layout.walls[piece.wall].thickness;
    const bool half = piece.log != LogKind::full;
    if (!half) {
        log.sizes.butt_height = mm(high + drawn(-6, 6));
        log.sizes.tip_height = mm(high + drawn(-6, 6));
    }
    log.sizes.butt_width = mm(thick - drawn(0, 8));
    log.sizes.tip_width = mm(thick - drawn(0, 8));
    log.fabric = Fabric::kept;
    if (piece.round > 1)
        for (const LogEnd end : {LogEnd::left, LogEnd::right})
            if (test::sometimes(2))
                log.tails.push_back({end, Slope::rise_per_run(drawn(0, 1.5) / 10),
                                     Slope::rise_per_run(drawn(-1.5, 0) / 10), std::nullopt});
    return log;
}

Shell jittered_shell() {
    Shell shell = test::any_shell();
    shell.openings.clear();
    shell.own_logs.clear();
    const Layout even = lay_out_to_try(shell);
    for (const Piece &piece : even.pieces)
        shell.own_logs.push_back(jittered(even, piece));
    return shell;
}

/// The cut of the neighbour at that corner that is made for this piece.
const SeamCut *other_half(const Layout &layout, const SeamCut &seam, const std::string &tag, Frame &frame) {
    for (const Piece &piece : layout.pieces) {
        if (piece.tag != seam.other) continue;
        for (const Cut &cut : piece.cuts)
            if (const SeamCut *half = std::get_if<SeamCut>(&cut);
                half && half->other == tag && half->corner == seam.corner) {
                frame = piece.frame;
                return half;
            }
    }
    return nullptr;
}

/// How many seams lie just so far apart; fails where one does not.
int check_gaps(const Layout &layout, const Piece &piece, double scribe) {
    int seams = 0;
    for (const Cut &cut : piece.cuts) {
        const SeamCut *seam = std::get_if<SeamCut>(&cut);
        if (!seam || seam->other.empty()) continue;
        Frame frame;
        const SeamCut *half = other_half(layout, *seam, piece.tag, frame);
        RC_ASSERT(half != nullptr);
        const Plane here = to_world(seam->seam, piece.frame), there = to_world(half->seam, frame);
        RC_ASSERT(std::abs(dot(here.normal, there.normal) + 1) < 1e-12);
        const double gap = -(here.offset + there.offset);
        if (std::abs(gap - scribe) > 1e-6)
            RC_FAIL(piece.tag + ": a gap of " + std::to_string(gap) + " where the scribe is " +
                    std::to_string(scribe));
        ++seams;
    }
    return seams;
}

} // namespace

TEST_CASE("Replacements between jittered neighbours share no wood with them and keep the stated scribe") {
    test::ThrownAway thrown(test::refusals());
    int replaced = 0, seams = 0;
    CHECK(rc::check([&] {
        const Shell found = jittered_shell();
        const Layout before = lay_out(found);
        thrown.discard_refused(before.findings);
        Shell shell = found;
        const double scribe = drawn(0, 4);
        const auto which = static_cast<std::size_t>(test::between(0, int(shell.own_logs.size()) - 1));
        shell.own_logs[which].fabric = Fabric::replacement;
        shell.own_logs[which].scribe = mm(scribe);
        const Layout after = lay_out(shell);
        thrown.discard_refused(after.findings);
        RC_ASSERT(overlaps(after, bodies_of(after)).empty());
        RC_ASSERT(before.pieces.size() == after.pieces.size());
        for (const auto i : after.pieces.indices()) {
            const Piece &piece = after.pieces[i];
            if (piece.fabric == Fabric::replacement)
                seams += check_gaps(after, piece, scribe), ++replaced;
            else
                RC_ASSERT(alike(shape_of_wood(before.pieces[i]), shape_of_wood(piece)));
        }
    }));
    std::printf("%d replacements, %d seams; %s\n", replaced, seams, thrown.words().c_str());
    CHECK(seams > 50);
}

TEST_CASE("A log that is stated as a replacement keeps what was measured of its seams, and its section "
          "unless stated") {
    const Shell below = test::plain_shell();
    Record record;
    FoundLog log;
    log.tag = "old 2";
    log.place = {"A", 2, {}};
    FoundEnd left;
    left.corner = "DA";
    left.height = noted(205), left.width = noted(190), left.gap = noted(12),
    left.shoulder_outside = noted(150);
    log.ends = {left};
    record.logs = {log};
    Shell now = below;
    OwnLog own;
    own.wall = "A", own.round = 2, own.fabric = Fabric::replacement;
    now.own_logs = {own};
    const FoundLog kept = left_as_found(record, below, now).logs.at(0);
    CHECK(kept.ends[0].height.is_taken());
    CHECK(kept.ends[0].shoulder_outside.is_taken());
    CHECK(kept.ends[0].gap.is_taken());
    now.own_logs[0].sizes.butt_height = mm(215);
    const FoundLog sized = left_as_found(record, below, now).logs.at(0);
    CHECK_FALSE(sized.ends[0].height.is_taken());
    CHECK(sized.ends[0].shoulder_outside.is_taken());
    CHECK(sized.ends[0].gap.is_taken());
}
