// The invariants of every shell, over the whole family of joints: RC_PARAMS=max_success=2000 draws as many.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/wood/interference.h"
#include "tests/layout/sound.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"
#include "tests/support/thrown_away.h"

#include <rapidcheck.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <map>
#include <numbers>
#include <sstream>

using namespace roundlay;
using test::has;
using test::words;

namespace {

const WallPlace &wall(const Layout &layout, Index<WallPlace> index) {
    return layout.walls[index];
}

struct Heights {
    double low = 0, high = 0;
};

/// Lows and highs of a wall's logs, by the rule of start and finish.
std::vector<Heights> logs_of(const Shell &shell, bool starts_full) {
    const double pitch = shell.rounds.pitch->mm(), gap = shell.rounds.gap.mm(), log = pitch - gap;
    const int count = *shell.rounds.count;
    const bool level = shell.rounds.top == TopRule::level;
    std::vector<Heights> logs;
    if (starts_full) {
        for (int k = 0; k < count; ++k)
            logs.push_back({k * pitch, k * pitch + log});
        return logs;
    }
    logs.push_back({0, pitch / 2 - gap});
    for (int k = 0; k < (level ? count - 1 : count); ++k)
        logs.push_back({pitch / 2 + k * pitch, pitch / 2 + k * pitch + log});
    if (level) logs.push_back({(count - 0.5) * pitch, count * pitch - gap});
    return logs;
}

double sine_between(const Layout &layout, const CornerPlace &c) {
    return length(cross(wall(layout, c.ends).frame.x, wall(layout, c.starts).frame.x));
}

/// Where the walls' centre lines run between and beside the columns of wood at their meetings.
double clear_length(const Layout &layout, const WallPlace &w) {
    const auto half = [&](const WallMeeting &m) {
        return wall(layout, m.other).thickness / 2 / sine_between(layout, layout.corners[m.corner]);
    };
    const auto at = [&](const WallMeeting &m) {
        const Vec2 c = layout.corners[m.corner].centre;
        return w.frame.to_local({c.x, c.y, 0}).x;
    };
    double sum =
        at(w.meetings.back()) - at(w.meetings.front()) - half(w.meetings.front()) - half(w.meetings.back());
    for (std::size_t i = 1; i + 1 < w.meetings.size(); ++i)
        sum -= 2 * half(w.meetings[i]);
    return sum;
}

/// Wall volume less openings, gaps and bores, from what was stated and the rules of the corner: log bodies
/// between shoulders, and at every meeting a column of wood from the foundation to the top.
double stated_volume(const Shell &shell, const Layout &layout) {
    double sum = 0;
    for (const WallPlace &w : layout.walls) {
        const double length = clear_length(layout, w);
        for (const Heights &log : logs_of(shell, w.starts_full)) {
            sum += w.thickness * (log.high - log.low) * length;
            for (const Opening &o : shell.openings) {
                if (o.wall != w.name) continue;
                const double low = std::max(log.low, o.sill.mm()),
                             high = std::min(log.high, (o.sill + o.height).mm());
                if (high > low) sum -= w.thickness * o.width.mm() * (high - low);
            }
        }
    }
    const double top = *shell.rounds.count * shell.rounds.pitch->mm() - shell.rounds.gap.mm();
    const double column = shell.rounds.top == TopRule::level ? top : top + shell.rounds.pitch->mm() / 2;
    for (const CornerPlace &c : layout.corners)
        sum += wall(layout, c.ends).thickness * wall(layout, c.starts).thickness / sine_between(layout, c) *
               column;
    for (const Peg &peg : layout.pegs)
        sum -= std::numbers::pi / 4 * peg.diameter * peg.diameter *
               (layout.pieces[peg.upper].blank.height +
                shell.pegs.depth_below * layout.pieces[peg.lower].blank.height);
    return sum;
}

/// What ends run past the crossing wall, as stated for the log, else for its corner, else for the shell.
double overhang_of(const Shell &shell, const Layout &layout, const Piece &p, bool left) {
    const WallPlace &w = wall(layout, p.wall);
    const CornerPlace &c = layout.corners[left ? w.start_corner : w.end_corner];
    const std::string a = wall(layout, c.ends).name, b = wall(layout, c.starts).name;
    double overhang = shell.notch.overhang.mm();
    for (auto own = shell.corners.rbegin(); own != shell.corners.rend(); ++own)
        if ((own->first == a && own->second == b) || (own->first == b && own->second == a))
            overhang = own->notch.overhang.mm();
    for (const OwnLog &own : shell.own_logs) {
        const auto &stated = left ? own.notch.overhang_left : own.notch.overhang_right;
        if (own.wall == w.name && own.round == p.round && stated) overhang = stated->mm();
    }
    return overhang;
}

double overhang_volume(const Shell &shell, const Layout &layout) {
    double sum = 0;
    for (const Piece &p : layout.pieces)
        for (const bool left : {true, false})
            if ((left ? p.datum : p.far).kind == EndKind::corner)
                sum += overhang_of(shell, layout, p, left) * p.blank.width * p.blank.height;
    return sum;
}

/// Enough of a shell to know it again.
std::string sketch(const Shell &shell) {
    std::ostringstream text;
    for (const Wall &w : shell.walls)
        text << w.name << " " << w.heading << " " << w.length.mm() << " t "
             << w.thickness.value_or(shell.thickness).mm() << "\n";
    for (const Partition &p : shell.partitions)
        text << p.name << " from " << p.from << " at " << p.from_left.mm() << " to " << p.to << " heading "
             << p.heading.value_or(-1) << " t " << p.thickness.value_or(shell.thickness).mm() << "\n";
    text << "rounds " << *shell.rounds.count << " pitch " << shell.rounds.pitch->mm() << " gap "
         << shell.rounds.gap.mm() << " first " << shell.rounds.full_first << " overhang "
         << shell.notch.overhang.mm() << " slope " << shell.notch.slope.ratio() << " kind "
         << static_cast<int>(shell.notch.kind) << " shoulder " << shell.notch.shoulder.mm() << " tapers "
         << shell.logs.butt_height.has_value() << " own logs " << shell.own_logs.size() << " openings "
         << shell.openings.size() << "\n";
    for (const CornerNotch &c : shell.corners)
        text << "corner " << c.first << c.second << " kind " << static_cast<int>(c.notch.kind) << " overhang "
             << c.notch.overhang.mm() << "\n";
    const LogSizes &l = shell.logs;
    if (l.butt_height)
        text << "butt " << l.butt_height->mm() << " tip " << l.tip_height->mm() << " wide "
             << l.tip_width->mm() << "\n";
    for (const OwnLog &own : shell.own_logs) {
        text << "log " << own.wall << own.round;
        for (const auto &size : {own.sizes.butt_height, own.notch.overhang_left, own.notch.overhang_right})
            text << " " << (size ? size->mm() : -1);
        text << "\n";
    }
    return text.str();
}

/// What may rightly be refused of a random shell.
const std::vector<std::string> refusals = {
    "tail-too-thin",      "tee-too-near",       "walls-run-together",
    "overhang-hits-wall", "opening-cuts-tee",   "opening-cuts-corner",
    "opening-over-wall",  "openings-too-close", "walls-do-not-alternate",
    "corner-not-square",  "wall-too-short",     "opening-too-wide",
    "tee-off-wall"};

struct Drawn {
    int laid = 0, tees = 0, crossings = 0, slanted = 0, measured = 0, pieces = 0;
    test::ThrownAway thrown{refusals};
};

void count(const Layout &layout, Drawn &drawn) {
    ++drawn.laid;
    drawn.pieces += static_cast<int>(layout.pieces.size());
    const auto some = [&](auto is) { return std::any_of(layout.corners.begin(), layout.corners.end(), is); };
    drawn.tees += some([](const CornerPlace &c) { return c.kind == CornerKind::tee; });
    drawn.crossings += some([](const CornerPlace &c) { return c.kind == CornerKind::crossing; });
    drawn.slanted += some([&](const CornerPlace &c) { return sine_between(layout, c) < 0.999; });
}

void check_one(Drawn &drawn) {
    const Shell shell = test::any_family_shell();
    const Layout layout = lay_out(shell);
    drawn.thrown.discard_refused(layout.findings);
    const Bodies bodies = bodies_of(layout);
    for (const Overlap &o : overlaps(layout, bodies))
        RC_FAIL(layout.pieces[o.a].tag + " and " + layout.pieces[o.b].tag + " share " +
                std::to_string(o.volume) + " mm3\n" + sketch(shell));
    RC_ASSERT(blocked_on_the_way_down(layout, bodies).empty());
    const double sum = test::sound_volume(layout, bodies);
    count(layout, drawn);
    const bool tapered = shell.logs.butt_height.has_value();
    if (has(layout.findings, "seam-outside-wood") || tapered || shell.notch.shoulder.mm() > 0) return;
    const double stated = stated_volume(shell, layout) + overhang_volume(shell, layout);
    if (std::abs(sum / stated - 1) > 1e-9)
        RC_FAIL("pieces " + std::to_string(sum) + " stated " + std::to_string(stated));
    ++drawn.measured;
}

} // namespace

TEST_CASE("Random shells of the whole family keep the invariants", "[family]") {
    Drawn drawn;
    const auto start = std::chrono::steady_clock::now();
    CHECK(rc::check([&] { check_one(drawn); }));
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    std::ostringstream line;
    line << drawn.laid << " shells of " << drawn.pieces << " pieces in " << seconds << " s; " << drawn.tees
         << " with tees, " << drawn.crossings << " with crossings, " << drawn.slanted << " not square, "
         << drawn.measured << " held to the closed volume; " << drawn.thrown.words();
    WARN(line.str());
    CHECK(drawn.laid >= 100);
    CHECK(drawn.thrown.share() < 0.4);
    CHECK(drawn.tees > drawn.laid / 20);
    CHECK(drawn.slanted > drawn.laid / 20);
    CHECK(drawn.measured > drawn.laid / 10);
    constexpr int many = 1000; // crossings are so rare that a hundred shells may have none
    if (drawn.laid >= many) CHECK(drawn.crossings > 0);
}
