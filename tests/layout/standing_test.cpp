#include "kernel/layout/courses/standing.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <regex>

using namespace roundlay;

namespace {

Length mm(double v) {
    return Length::mm(v);
}

/// Of the wood itself, in the world: highest and lowest point of the tops of each wall, from the corners of
/// its bodies.
struct Tops {
    double highest = -1e9;
    int logs = 0;
};

std::map<Index<WallPlace>, Tops> tops_of_wood(const Layout &layout) {
    std::map<Index<WallPlace>, Tops> tops;
    const auto bodies = bodies_of(layout);
    for (const Piece &p : layout.pieces) {
        if (p.timber) continue;
        Tops &t = tops[p.wall];
        t.logs = std::max(t.logs, p.round);
        for (const Vec3 v : bodies[p.model].hewn.vertices)
            t.highest = std::max(t.highest, p.frame.to_world(v).z);
    }
    return tops;
}

/// How much the tops of the last logs fall over the widest wall and the overhang past it: the very end of a
/// log whose top is not level may be cut away under the one that crosses it. A wall that is crossed at a
/// slant is up to four times as wide along the log (30 degrees: 1 / sin + 1 / tan = 3.73).
double fall_at_a_corner(const Shell &shell, const Layout &layout, bool slanted) {
    double reach = shell.thickness.mm(), steepest = 0;
    for (const Wall &wall : shell.walls)
        reach = std::max(reach, wall.thickness.value_or(shell.thickness).mm());
    for (const Piece &p : layout.pieces)
        for (const Cut &cut : p.cuts)
            if (const auto *face = std::get_if<FaceCut>(&cut); face && face->face == LogFace::top)
                steepest =
                    std::max(steepest, std::abs(face->plane.height_at(1, 0) - face->plane.height_at(0, 0)));
    return steepest * (slanted ? 4 : 1) * (reach + shell.notch.overhang.mm());
}

void check_stands(const Shell &shell, double band, test::ThrownAway &thrown, bool slanted = false) {
    const Layout layout = lay_out(shell);
    thrown.discard_refused(layout.findings);
    auto tops = tops_of_wood(layout);
    const double within = band + fall_at_a_corner(shell, layout, slanted);
    double all = 0;
    for (const WallStanding &s : standing_of(layout)) {
        RC_ASSERT(std::abs(s.highest - tops[s.wall].highest) <= within);
        RC_ASSERT(s.lowest <= s.highest + 1e-9);
        RC_ASSERT(s.logs == tops[s.wall].logs);
        all = std::max(all, tops[s.wall].highest);
    }
    RC_ASSERT(std::abs(standing_in_all(layout).highest - all) <= within);
}

/// Logs of some walls measured one by one, half logs too.
Shell any_recorded_shell() {
    Shell shell = test::any_shell();
    for (const Wall &wall : shell.walls) {
        const int rounds = *shell.rounds.count;
        for (int round = 1; round <= rounds; ++round) {
            if (*rc::gen::inRange(0, 2) == 0) continue;
            OwnLog own;
            own.wall = wall.name;
            own.round = round;
            own.sizes.butt_height = mm(*rc::gen::inRange(150, 280));
            own.sizes.tip_height = mm(own.sizes.butt_height->mm() - *rc::gen::inRange(0, 30));
            shell.own_logs.push_back(own);
        }
    }
    return shell;
}

const Finding *found(const Layout &layout, const std::string &code) {
    for (const Finding &f : layout.findings)
        if (f.code == code) return &f;
    return nullptr;
}

Shell eight_rounds(double butt, double tip) {
    Shell shell = test::plain_shell();
    shell.rounds.count = 8;
    shell.rounds.pitch = mm(240);
    shell.logs.butt_height = mm(butt), shell.logs.tip_height = mm(tip);
    return shell;
}

} // namespace

TEST_CASE("What is said to stand is what the wood reaches, whatever logs were measured") {
    auto reasons = test::refusals();
    reasons.push_back(
        "tails-do-not-alternate"); // logs are drawn higher and lower than what they take part in
    test::ThrownAway thrown(reasons);
    CHECK(rc::check("random", [&] { check_stands(test::any_shell(), 1e-6, thrown); }));
    CHECK(rc::check("recorded", [&] { check_stands(any_recorded_shell(), 1e-6, thrown); }));
    CHECK(rc::check("tapered", [&] { check_stands(test::any_tapered_shell(), 1e-6, thrown); }));
    CHECK(rc::check("family", [&] { check_stands(test::any_family_shell(), 1e-6, thrown, true); }));
    // the wood of a round log is drawn with flats inside its surface: see round_flats.h
    CHECK(rc::check("round", [&] { check_stands(test::any_saddle_shell(), 3, thrown); }));
    INFO(thrown.words());
    CHECK_FALSE(thrown.too_many());
}

TEST_CASE("Half logs are halves of the logs that are stated, so that all walls end level") {
    // By hand: eight logs of 280 to 260 mm are 8 x 270 + 7 x 20 = 2300. A half log is (280 - 20) / 2 = 130
    // and (260 - 20) / 2 = 120: 2 x 125 + 7 x 270 + 8 x 20 = 2300.
    const Layout layout = lay_out(eight_rounds(280, 260));
    const WallStanding all = standing_in_all(layout);
    CHECK(all.highest == Approx(2300).margin(1e-6));
    CHECK(all.lowest == Approx(2300).margin(1e-6));
    CHECK(all.logs == 9);
    CHECK(layout.height == Approx(1920));
    CHECK(found(layout, "top-not-level") == nullptr);
    CHECK(test::english(height_words(layout, UnitSystem::metric)) == "2300 mm high (1920 mm by its rounds)");
    CHECK(test::english(round_words(layout)) == "8 rounds (9 logs in walls B and D)");
}

TEST_CASE("A top that is to be level and is not is told, with both heights") {
    Shell shell = eight_rounds(220, 220);
    CHECK(found(lay_out(shell), "top-not-level") == nullptr);
    OwnLog thick;
    thick.wall = "C", thick.round = 4;
    thick.sizes.butt_height = thick.sizes.tip_height = mm(260);
    shell.own_logs = {thick};
    const Layout layout = lay_out(shell);
    const Finding *told = found(layout, "top-not-level");
    REQUIRE(told);
    CHECK(told->weight == Weight::warning);
    CHECK(test::message(*told).find("ends 40 mm out of it: wall C reaches 1940 mm, wall A only 1900 mm") !=
          std::string::npos);
    shell.own_logs[0].sizes.butt_height = shell.own_logs[0].sizes.tip_height = mm(224);
    CHECK(found(lay_out(shell), "top-not-level")->weight == Weight::note);
    shell.rounds.top = TopRule::staggered;
    CHECK(found(lay_out(shell), "top-not-level") == nullptr);
}

TEST_CASE("What stands is said without the gap over the last log") {
    Shell shell = test::plain_shell(); // 4 rounds of 230 mm with a gap of 20
    CHECK(test::english(height_words(lay_out(shell), UnitSystem::metric)) ==
          "900 mm high (920 mm by its rounds)");
    shell.rounds.gap = Length();
    CHECK(test::english(height_words(lay_out(shell), UnitSystem::metric)) == "920 mm high");
    shell.rounds.top = TopRule::staggered;
    CHECK(test::english(height_words(lay_out(shell), UnitSystem::metric)) ==
          "920 mm to 1035 mm high (920 mm by its rounds)");
}

namespace {

std::vector<const Finding *> slivers(const Layout &layout) {
    std::vector<const Finding *> all;
    for (const Finding &f : layout.findings)
        if (f.code == "thin-wood-at-opening") all.push_back(&f);
    return all;
}

/// Does what the message says, read from its words alone.
Shell as_advised(Shell shell, const Finding &f) {
    std::smatch said;
    const std::regex words(
        "; (raise|lower) its (sill|top) by (.+?)( and (take|add) as much (off|to) its height)?$");
    const std::string told = test::message(f, shell.units);
    if (!std::regex_search(told, said, words)) RC_FAIL("no advice in: " + told);
    const auto by = std::get<Length>(parse_length(said[3].str()));
    const Length up = said[1] == "raise" ? by : -by;
    Opening &o =
        shell.openings[static_cast<std::size_t>(std::stoi(f.subject.substr(f.subject.find('[') + 1)))];
    if (said[2] == "top") o.height = o.height + up;
    if (said[2] == "sill") o.sill = o.sill + up;
    if (said[4].matched) o.height = o.height - up;
    return shell;
}

} // namespace

TEST_CASE("What a message on thin wood says to do mends it and brings nothing else") {
    int advised = 0, not_advised = 0;
    test::ThrownAway thrown(test::refusals());
    CHECK(rc::check([&] {
        Shell shell = test::any_shell();
        shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
        const Layout layout = lay_out(shell);
        thrown.discard_refused(layout.findings);
        std::size_t told = 0;
        for (const Finding *f : slivers(layout)) {
            if (test::message(*f).find("no small change") != std::string::npos || told++ >= 12) {
                ++not_advised;
                continue;
            }
            ++advised;
            const Layout after = lay_out(as_advised(shell, *f));
            RC_ASSERT(!has_errors(after.findings));
            RC_ASSERT(slivers(after).size() < slivers(layout).size());
            for (const Finding *other : slivers(after))
                RC_ASSERT(other->subject != f->subject || test::place(*other) != test::place(*f));
        }
    }));
    CHECK_FALSE(thrown.too_many());
    CHECK(advised > 4 * not_advised); // nearly always there is a way
}

TEST_CASE("Advice on thin wood has a direction and an amount") {
    Shell shell = test::plain_shell(); // logs of 210 mm, gaps of 20
    shell.openings = {test::window("A", 1000, 300, 800, 360)};
    const Layout layout = lay_out(shell);
    const auto told = slivers(layout);
    REQUIRE(told.size() == 1);
    CHECK(test::message(*told[0]) ==
          "window 1 leaves only 10 mm of the log over it, where at least 50 mm should stay; raise "
          "its top by 10 mm");
    shell.units = UnitSystem::imperial;
    const Layout in_inches = lay_out(shell); // 10 mm are no 16ths: the next one is told that reaches the seam
    const auto inches = slivers(in_inches);
    REQUIRE(inches.size() == 1);
    CHECK(test::message(*inches[0], UnitSystem::imperial).find("; raise its top by 7/16\"") !=
          std::string::npos);
}
