// Mended logs: what stays and what comes are the log, to the last cubic millimetre.
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/mends/section_left.h"
#include "kernel/layout/pieces/piece_shape.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/any_kind.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/tagged.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <set>

using namespace roundlay;
using roundlay::test::tagged;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

struct Laid {
    Shell shell;
    Layout layout;
    Bodies bodies;
    explicit Laid(const Shell &stated) : shell(stated), layout(lay_out(stated)), bodies(bodies_of(layout)) {}
    double volume(Index<Piece> i) const { return bodies[layout.pieces[i].model].volume; }
};

Mend mend_of(const std::string &wall, int round, MendKind kind, LogSide face) {
    Mend mend;
    mend.wall = wall, mend.round = round, mend.kind = kind, mend.face = face;
    return mend;
}

Mend face_mend(const std::string &wall, int round, LogSide face, double from, double to, double depth) {
    Mend mend = mend_of(wall, round, MendKind::face, face);
    mend.from = mm(from), mend.to = mm(to), mend.depth = mm(depth);
    return mend;
}

Mend splice(const std::string &wall, int round, LogSide face, LogEnd end, double to, double lap) {
    Mend mend = mend_of(wall, round, MendKind::splice, face);
    mend.end = end, mend.to = mm(to), mend.lap = mm(lap);
    return mend;
}

/// Of a log and the new wood in it.
double volume_with_mends(const Laid &it, Index<Piece> log) {
    double sum = it.volume(log);
    for (const auto i : it.layout.pieces.after(log))
        if (it.layout.pieces[i].mends == log) sum += it.volume(i);
    return sum;
}

std::set<std::string> tags_of(const Layout &layout) {
    std::set<std::string> tags;
    for (const Piece &piece : layout.pieces)
        tags.insert(piece.tag);
    return tags;
}

/// What a piece says of others is there, and a cut that has its other half is told by both.
void check_neighbours(const Layout &layout) {
    const std::set<std::string> tags = tags_of(layout);
    RC_ASSERT(tags.size() == layout.pieces.size());
    for (const Piece &piece : layout.pieces) {
        for (const auto *list : {&piece.above, &piece.below})
            for (const std::string &tag : *list)
                RC_ASSERT(tags.contains(tag));
        for (const Cut &cut : piece.cuts) {
            const Neighbour met = neighbour_of(cut);
            if (met.what == Met::opening || met.what == Met::step || met.what == Met::nothing) continue;
            RC_ASSERT(tags.contains(std::string(met.name)));
        }
    }
}

bool has_round(const Body &body) {
    return !body.rounds.empty();
}

/// Both parts of every log are its wood; logs without a mend are as they were.
void check_volumes(const Laid &whole, const Laid &mended) {
    for (const auto i : whole.layout.pieces.indices()) {
        const Piece &before = whole.layout.pieces[i];
        const Index<Piece> now = tagged(mended.layout, before.tag);
        const Piece &after = mended.layout.pieces[now];
        if (after.mended.empty()) {
            RC_ASSERT(alike(shape_of_wood(before), shape_of_wood(after)));
            continue;
        }
        const bool round = has_round(whole.bodies[before.model]);
        // Of round surfaces a body's volume is a sum over flats, good to 3e-4; exact solids are held in
        // tests/solid.
        const double was = whole.volume(i), is = volume_with_mends(mended, now);
        if (std::abs(is - was) > (round ? 1e-3 : 1e-6) * was)
            RC_FAIL(before.tag + ": " + std::to_string(was) + " mm3 whole, " + std::to_string(is) +
                    " mm3 in parts");
        RC_ASSERT(mended.volume(now) > 0);
        RC_ASSERT(mended.volume(now) < was);
    }
}

} // namespace

TEST_CASE("Random mends part random logs into two closed bodies that are the log and share no wood") {
    test::ThrownAway thrown(test::refusals());
    test::MendsDrawn told;
    int logs = 0;
    CHECK(rc::check([&] {
        const Shell shell = test::any_kind_of_shell();
        const Laid whole(shell);
        thrown.discard_refused(whole.layout.findings);
        const Laid mended(test::with_any_mends(shell, whole.layout, 4, told));
        RC_ASSERT_FALSE(has_errors(mended.layout.findings));
        check_volumes(whole, mended);
        check_neighbours(mended.layout);
        for (const Body &body : mended.bodies)
            RC_ASSERT(is_closed(body.hewn));
        RC_ASSERT(overlaps(mended.layout, mended.bodies).size() ==
                  overlaps(whole.layout, whole.bodies).size());
        RC_ASSERT(blocked_on_the_way_down(mended.layout, mended.bodies).size() <=
                  blocked_on_the_way_down(whole.layout, whole.bodies).size());
        for (const Piece &piece : mended.layout.pieces)
            logs += piece.mends ? 1 : 0;
    }));
    std::printf("%d mends drawn, %d made, %d pieces of new wood\n", told.drawn, told.kept, logs);
    for (const auto &[code, count] : told.refused)
        std::printf("  refused: %s %d\n", code.c_str(), count);
    CHECK(told.kept * 2 > told.drawn);
    for (const auto &[code, count] : told.refused)
        CHECK(code.starts_with("mend"));
}

TEST_CASE("A half-sole takes what it says, and its log keeps its tag and place") {
    Shell shell = test::plain_shell();
    const Laid whole(shell);
    shell.mends = {face_mend("A", 3, LogSide::under, 1000, 2200, 50)};
    const Laid mended(shell);
    const Index<Piece> log = tagged(mended.layout, "A-03-1"), sole = tagged(mended.layout, "A-03-1-M1");
    const Piece &piece = mended.layout.pieces[sole];
    CHECK(piece.blank.length == Approx(1200).epsilon(1e-12));
    CHECK(piece.blank.width == Approx(200).epsilon(1e-12));
    CHECK(piece.blank.height == Approx(50).epsilon(1e-12));
    CHECK(piece.fabric == Fabric::replacement);
    CHECK(mended.layout.pieces[log].raise == piece.raise);
    const double bores = [&] {
        double sum = 0;
        for (const Cut &cut : piece.cuts)
            if (const Bore *bore = bore_of(cut))
                sum += M_PI / 4 * bore->diameter * bore->diameter * (bore->z_to - bore->z_from);
        return sum;
    }();
    CHECK(mended.volume(sole) == Approx(1200.0 * 200 * 50 - bores).epsilon(1e-9));
    CHECK(mended.volume(log) + mended.volume(sole) ==
          Approx(whole.volume(tagged(whole.layout, "A-03-1"))).epsilon(1e-12));
}

TEST_CASE("A spliced end takes the tail along, and the crossing logs name it") {
    Shell shell = test::plain_shell();
    shell.mends = {splice("A", 3, LogSide::top, LogEnd::left, 700, 600)};
    const Laid mended(shell);
    const Piece &log = mended.layout.pieces[tagged(mended.layout, "A-03-1")],
                &end = mended.layout.pieces[tagged(mended.layout, "A-03-1-M1")];
    CHECK(log.datum.kind == EndKind::lap);
    CHECK(log.datum.at == "A-03-1-M1");
    CHECK(end.datum.kind == EndKind::corner);
    CHECK(end.far.kind == EndKind::lap);
    CHECK(end.blank.length == Approx(1300).epsilon(1e-12));
    int named = 0;
    for (const Piece &piece : mended.layout.pieces)
        for (const Cut &cut : piece.cuts)
            if (neighbour_of(cut).what == Met::crossing_log && neighbour_of(cut).name == end.tag) ++named;
    CHECK(named == 2); // over and under its tail
    CHECK(overlaps(mended.layout, mended.bodies).empty());
    CHECK(blocked_on_the_way_down(mended.layout, mended.bodies).empty());
}

TEST_CASE("A pocket and pegs in the part that is renewed are cut into the new wood") {
    Shell shell = test::floored();
    const Laid whole(shell);
    const Piece &log = whole.layout.pieces[tagged(whole.layout, "A-02-1")];
    double x = 0;
    for (const Cut &cut : log.cuts)
        if (neighbour_of(cut).what == Met::timber && x == 0)
            x = whole.layout.pieces[tagged(whole.layout, std::string(neighbour_of(cut).name))].frame.origin.x;
    REQUIRE(x > 0);
    shell.mends = {face_mend("A", 2, LogSide::inside, 200, 4800, 80)};
    const Laid mended(shell);
    INFO(test::words(mended.layout.findings));
    const Piece &stays = mended.layout.pieces[tagged(mended.layout, "A-02-1")],
                &comes = mended.layout.pieces[tagged(mended.layout, "A-02-1-M1")];
    const auto pockets = [](const Piece &piece) {
        return std::ranges::count_if(piece.cuts,
                                     [](const Cut &cut) { return neighbour_of(cut).what == Met::timber; });
    };
    CHECK(pockets(log) > 2);
    CHECK(pockets(comes) == pockets(log)); // they bear 75 mm deep, within the 80 mm that are renewed
    CHECK(pockets(stays) == 0);
    for (const Timber &timber : mended.layout.timbers) {
        const auto &below = mended.layout.pieces[timber.piece].below;
        CHECK(std::ranges::count(below, "A-02-1-M1") == 1);
    }
}

TEST_CASE("A peg in the wholly new end of a splice is bored into it, right through as it was") {
    const Shell stated = test::plain_shell();
    const Laid whole(stated);
    const Piece &log = whole.layout.pieces[tagged(whole.layout, "A-03-1")];
    double first = log.blank.length;
    for (const Cut &cut : log.cuts)
        if (const Bore *bore = bore_of(cut)) first = std::min(first, bore->x);
    REQUIRE(first < log.blank.length / 2);
    Shell shell = stated;
    shell.mends = {splice("A", 3, LogSide::outside, LogEnd::left, first + 800, 600)};
    const Laid mended(shell);
    INFO(test::words(mended.layout.findings));
    REQUIRE_FALSE(has_errors(mended.layout.findings));
    const auto holes = [&](const char *tag) {
        double length = 0;
        for (const Cut &cut : mended.layout.pieces[tagged(mended.layout, tag)].cuts)
            if (const Bore *bore = bore_of(cut)) length += bore->z_to - bore->z_from;
        return length;
    };
    double before = 0;
    for (const Cut &cut : log.cuts)
        if (const Bore *bore = bore_of(cut)) before += bore->z_to - bore->z_from;
    CHECK(holes("A-03-1-M1") > 0);
    CHECK(holes("A-03-1") + holes("A-03-1-M1") == Approx(before).epsilon(1e-9));
    CHECK(overlaps(mended.layout, mended.bodies).empty());
}

TEST_CASE("What stays of the section is the derived share of it") {
    const auto left = [](const Mend &mend, double thickness, double height) {
        Shell shell = test::plain_shell();
        shell.thickness = mm(thickness);
        shell.rounds.pitch = mm(height + 20);
        shell.mends = {mend};
        const Layout layout = lay_out(shell);
        return sections_left(layout.pieces[tagged(layout, "A-02-1")]).at(0);
    };
    constexpr double inch = 25.4;
    // check-values.csv: RES-FACE, RES-UNDER (8 x 12 in, 2 in lost), LAP-H, LAP-V; all derived.
    const SectionLeft face =
        left(face_mend("A", 2, LogSide::outside, 1000, 2000, 2 * inch), 8 * inch, 12 * inch);
    CHECK(face.area == Approx(0.75).epsilon(1e-9));
    CHECK(face.modulus == Approx(0.75).epsilon(1e-9));
    const SectionLeft under =
        left(face_mend("A", 2, LogSide::under, 1000, 2000, 2 * inch), 8 * inch, 12 * inch);
    CHECK(under.area == Approx(0.8333).epsilon(1e-4));
    CHECK(under.modulus == Approx(0.6944).epsilon(1e-4));
    CHECK(left(splice("A", 2, LogSide::top, LogEnd::left, 800, 600), 200, 300).modulus ==
          Approx(0.25).epsilon(1e-9));
    const SectionLeft upright = left(splice("A", 2, LogSide::outside, LogEnd::left, 800, 250), 200, 300);
    CHECK(upright.modulus == Approx(0.5).epsilon(1e-9));
}

TEST_CASE("A mend that cannot be is told at its statement, and nothing is laid out") {
    const auto code_of = [](const Mend &mend, const Shell &base = test::plain_shell()) {
        Shell shell = base;
        shell.mends = {mend};
        const Layout layout = lay_out(shell);
        for (const Finding &f : layout.findings)
            if (f.weight == Weight::error) {
                CHECK(f.subject.starts_with("mend[0]."));
                CHECK(layout.pieces.empty());
                return f.code;
            }
        return std::string("none");
    };
    const Mend good = face_mend("A", 3, LogSide::under, 1000, 2200, 50);
    CHECK(code_of(good) == "none");
    Mend mend = good;
    mend.round = 30;
    CHECK(code_of(mend) == "mend-nowhere");
    mend = good, mend.wall.clear();
    CHECK(code_of(mend) == "mend-nowhere");
    mend = good, mend.mark = "nobody wrote that";
    CHECK(code_of(mend) == "mend-nowhere");
    mend = good, mend.depth.reset();
    CHECK(code_of(mend) == "mend-unstated");
    mend = splice("A", 3, LogSide::top, LogEnd::left, 700, 600), mend.lap.reset();
    CHECK(code_of(mend) == "mend-unstated");
    mend = good, mend.to = mm(1005);
    CHECK(code_of(mend) == "mend-backwards");
    mend = good, mend.to = mm(9000);
    CHECK(code_of(mend) == "mend-past-end");
    CHECK(code_of(splice("A", 3, LogSide::top, LogEnd::left, 4000, 3000)) == "mend-past-end");
    mend = good, mend.depth = mm(300);
    CHECK(code_of(mend) == "mend-too-deep");
    mend = good, mend.kind = MendKind::let_in, mend.low = mm(150), mend.high = mm(100);
    CHECK(code_of(mend) == "mend-backwards");
    mend = good, mend.face = LogSide::outside, mend.depth = mm(100); // the pegs stand in the middle of 200
    CHECK(code_of(mend) == "mend-splits-bore");
    Shell windowed = test::plain_shell();
    windowed.openings = {test::window("A", 1500, 230, 800, 460)};
    CHECK(code_of(good, windowed) == "mend-nowhere"); // two logs lie in that round
    mend = good, mend.piece = 2, mend.from = mm(200), mend.to = mm(900);
    CHECK(code_of(mend, windowed) == "none");
    Shell twice = test::plain_shell();
    twice.mends = {good, good};
    const Layout layout = lay_out(twice);
    CHECK(std::ranges::count(layout.findings, std::string("mends-meet"), &Finding::code) == 1);
}

TEST_CASE("A mend past the middle of a log is warned of, with who says so") {
    Shell shell = test::plain_shell();
    shell.mends = {face_mend("A", 3, LogSide::under, 1000, 2200, 120)};
    const Layout layout = lay_out(shell);
    CHECK(std::ranges::count(layout.findings, std::string("mend-past-heart"), &Finding::code) == 1);
    CHECK_FALSE(layout.pieces.empty());
}

TEST_CASE("A log is named by the mark that is written on it") {
    Shell shell = test::plain_shell();
    OwnLog own;
    own.wall = "C", own.round = 2, own.mark = "N 7";
    shell.own_logs.push_back(own);
    Mend mend = face_mend("", 1, LogSide::under, 1000, 2200, 50);
    mend.round.reset(), mend.mark = "N 7";
    shell.mends = {mend};
    const Layout layout = lay_out(shell);
    INFO(test::words(layout.findings));
    CHECK(layout.pieces[tagged(layout, "C-02-1-M1")].mends == tagged(layout, "C-02-1"));
}
