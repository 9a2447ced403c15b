// Houses that are drawn at random, surveyed by the layout itself, and put together again from the survey
// alone.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"
#include "kernel/measured/opening_numbers.h"
#include "tests/measured/support/surveyor.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>

using namespace roundlay;
using roundlay::test::drawn;
using roundlay::test::House;
using roundlay::test::jittered;
using roundlay::test::noted;
using roundlay::test::roughly;
using roundlay::test::Surveyor;

namespace {

/// How far two sections lie apart at the shoulders, at most.
double apart(const House &a, const House &b) {
    double most = 0;
    for (const auto w : a.plan.walls.indices())
        for (const Course &c : a.courses.logs[w]) {
            const Course &other = in_round(b.courses.logs[w], c.round);
            for (const LogEnd end : {LogEnd::left, LogEnd::right}) {
                const double x = a.shoulder(w, c.round, end);
                for (const double off :
                     {c.high(x) - c.low(x) - other.high(x) + other.low(x), c.width(x) - other.width(x)})
                    most = std::max(most, std::abs(off));
            }
        }
    return most;
}

/// Heights are told from the lowest log, wherever that lay.
double raised(const House &a, const House &b) {
    const auto first = *a.plan.walls.indices().begin();
    return a.courses.logs[first].front().datum.low - b.courses.logs[first].front().datum.low;
}

double lies_apart(const House &a, const House &b) {
    const double up = raised(a, b);
    double most = 0;
    for (const auto w : a.plan.walls.indices())
        for (const Course &c : a.courses.logs[w])
            for (const double x : {c.x_datum, c.x_far})
                most = std::max(most, std::abs(c.low(x) - in_round(b.courses.logs[w], c.round).low(x) - up));
    return most;
}

double seams_apart(const House &a, const House &b) {
    const double up = raised(a, b);
    double most = 0;
    for (const auto w : a.plan.walls.indices())
        for (std::size_t m = 0; m < a.corners.notches[w].size(); ++m)
            for (std::size_t r = 0; r < a.corners.notches[w][m].size(); ++r) {
                const auto &one = a.corners.notches[w][m][r].top, &other = b.corners.notches[w][m][r].top;
                RC_ASSERT(one.has_value() == other.has_value());
                if (!one) continue;
                const Vec2 at = a.plan.corners[a.plan.walls[w].meetings[m].corner].centre;

                for (const double dx : {-150.0, 150.0})
                    for (const double dy : {-150.0, 150.0})
                        most = std::max(most, std::abs(one->height_at(at.x + dx, at.y + dy) -
                                                       other->height_at(at.x + dx, at.y + dy) - up));
            }
    return most;
}

/// The underside of the lowest log, at a shoulder.
double lowest(const House &house) {
    double least = HUGE_VAL;
    for (const auto w : house.plan.walls.indices())
        for (const LogEnd end : {LogEnd::left, LogEnd::right})
            least = std::min(least, house.courses.logs[w].front().low(house.shoulder(w, 1, end)));
    return least;
}

/// Openings that were measured whole, along their walls.
double openings_apart(const House &a, const House &b) {
    double most = 0;
    for (std::size_t i = 0; i < a.shell.openings.size(); ++i) {
        const Opening &one = a.shell.openings[i], &other = b.shell.openings[i];
        for (const double off :
             {one.from_left.mm() - other.from_left.mm(), one.width.mm() - other.width.mm(),
              one.height.mm() - other.height.mm(), one.sill.mm() - other.sill.mm() - raised(a, b)})
            most = std::max(most, std::abs(off));
    }
    return most;
}

/// An edge of an opening as it stands, as it was rebuilt, and whether it was measured itself.
struct Edge {
    double was = 0, now = 0;
    bool measured = false;
};

/// Each measured edge lies within what its number is off, and one beside a measured size within both.
void check_edges(const Edge &one, const Edge &other, bool size_measured, double slack) {
    constexpr double off = 2 + 1e-6;
    if (one.measured) RC_ASSERT(std::abs(one.was - one.now) < off + slack);
    if (other.measured) RC_ASSERT(std::abs(other.was - other.now) < off + slack);
    if ((one.measured || other.measured) && (size_measured || (one.measured && other.measured)))
        RC_ASSERT(std::abs(other.was - one.was - other.now + one.now) < 2 * off);
}

void check_opening(const House &house, const House &rebuilt, const RecordedOpening &opening) {
    const std::size_t i = openings_called(house.shell, opening).at(0);
    const Opening &was = house.shell.openings[i], &now = rebuilt.shell.openings[i];
    const auto w = *wall_named(house.plan, was.wall);
    const bool from_left = opening.zero == house.plan.corners[house.plan.walls[w].start_corner].name;
    const Jambs read = jambs_of(opening);
    const bool left = (from_left ? read.near : read.far).has_value(),
               right = (from_left ? read.far : read.near).has_value();
    check_edges({was.from_left.mm(), now.from_left.mm(), left},
                {(was.from_left + was.width).mm(), (now.from_left + now.width).mm(), right},
                opening.width.is_taken(), 0);
    // Over the lowest log: its level and its height, and what nobody knows where that was not levelled.
    constexpr double lowest_off = 2 + 2 + 2 * told_from + 20;
    const double up = lowest(house) - lowest(rebuilt);
    check_edges({was.sill.mm() - up, now.sill.mm(), opening.sill.is_taken()},
                {(was.sill + was.height).mm() - up, (now.sill + now.height).mm(), opening.head.is_taken()},
                opening.height.is_taken(), lowest_off);
}

/// Heights and widths that were read come out as read.
void check_measured(const House &house, const House &rebuilt, const FoundLog &log, bool lifted) {
    const auto w = *wall_named(rebuilt.plan, log.place.wall);
    const Course &now = in_round(rebuilt.courses.logs[w], *log.place.round);
    const auto same = [](const NotedLength &read, double is) {
        if (read.value) RC_ASSERT(std::abs(read.value->mm() - is) < 1e-6);
    };
    for (const FoundEnd &end : log.ends) {
        const LogEnd at = end.corner == log.ends[0].corner ? LogEnd::left : LogEnd::right;
        const double x = rebuilt.shoulder(w, now.round, at);
        same(end.height, now.high(x) - now.low(x));
        same(end.width, now.width(x));
        // Nor does a log drift away as they are piled up, where it was levelled: by two millimetres of its
        // level, two of its height, four of the first log's, what it is lifted by so as not to lie in
        // another, and what nobody knows where the lowest log was not levelled.
        constexpr double drift = 2 + 2 + 4 + 2 * told_from + 20;
        const Course &was = in_round(house.courses.logs[w], now.round);
        if (end.height.value && end.level.value && !lifted)
            RC_ASSERT(std::abs(was.low(x) - now.low(x) - lowest(house) + lowest(rebuilt)) < drift);
    }
}

constexpr const char *over_its_level = "log-over-its-level";

/// Under it lies one that was not measured there and is proposed too high.
bool is_told_lifted(const Findings &findings, const FoundPlace &place) {
    return std::ranges::any_of(findings, [&](const Finding &finding) {
        const auto *wall = first_of<about::Wall>(finding.about);
        const auto *round = first_of<about::Round>(finding.about);
        return finding.code == over_its_level && wall && round && wall->name == place.wall &&
               round->number == place.round;
    });
}

/// Whether half logs stand between the walls just where the rules leave them no tail: nobody measures a tail
/// that is not there, so that the rules say so.
bool is_without_tails_by_rule(const House &house) {
    Shell ruled = house.shell;
    for (OwnLog &log : ruled.own_logs)
        log.tails.clear();
    const House other(ruled);
    if (!other.stands) return false;
    for (const auto w : house.plan.walls.indices())
        for (std::size_t m = 0; m < house.corners.notches[w].size(); ++m)
            for (std::size_t r = 0; r < house.corners.notches[w][m].size(); ++r)
                if (house.corners.notches[w][m][r].butts != other.corners.notches[w][m][r].butts)
                    return false;
    return true;
}

Shell any_hewn_shell() {
    Shell shell = *rc::gen::arbitrary<bool>() ? test::any_shell() : test::any_family_shell();
    RC_PRE(!is_scoped(shell));
    shell.steps.clear();
    shell.own_logs.clear(); // each is drawn anew
    return shell;
}

} // namespace

TEST_CASE("A house that is measured exactly comes out as it stands") {
    int compared = 0, openings = 0;
    CHECK(rc::check([&] {
        const Shell base = any_hewn_shell();
        const House stated(base);
        if (!stated.stands) return;
        const House house(jittered(base, stated));
        if (!house.stands || !is_without_tails_by_rule(house)) return;
        ++compared;
        const MeasuredShell measured = measured_shell(base, Surveyor(house, noted).record());
        RC_LOG() << test::words(measured.findings);
        RC_ASSERT(measured.findings.empty());
        const House rebuilt(measured.shell);
        RC_ASSERT(rebuilt.stands);
        RC_ASSERT(apart(house, rebuilt) < 1e-6);
        RC_ASSERT(lies_apart(house, rebuilt) < 1e-6);
        RC_ASSERT(seams_apart(house, rebuilt) < 1e-6);
        RC_ASSERT(openings_apart(house, rebuilt) < 1e-6);
        openings += static_cast<int>(house.shell.openings.size());
    }));
    CHECK(compared >= 20); // the others cannot be built
    CHECK(openings >= 10);
}

TEST_CASE("A house that is measured roughly, and in part, comes out within what the measures are off") {
    int built = 0, tried = 0;
    CHECK(rc::check([&] {
        const Shell base = any_hewn_shell();
        const House stated(base);
        if (!stated.stands) return;
        const House house(jittered(base, stated));
        if (!house.stands) return;
        ++tried;
        const Record record = Surveyor(house, roughly).record();
        const MeasuredShell measured = measured_shell(base, record);
        RC_LOG() << test::words(measured.findings);
        for (const Finding &finding : measured.findings) // none of two millimetres
            RC_ASSERT(finding.code == "tail-measured-in-part" || finding.code == "wall-as-thick-as-logs" ||
                      finding.code == over_its_level);
        const House rebuilt(measured.shell);
        RC_ASSERT(stand(rebuilt.plan, rebuilt.courses));
        for (const FoundLog &log : record.logs)
            check_measured(house, rebuilt, log, is_told_lifted(measured.findings, log.place));
        for (const RecordedOpening &opening : record.openings)
            check_opening(house, rebuilt, opening);
        const Layout layout = lay_out_to_try(measured.shell);
        if (has_errors(layout.findings)) return; // tails that the noise leaves too thin, openings over seams
        ++built;
        RC_ASSERT(overlaps(layout, bodies_of(layout)).empty());
    }));
    INFO(built << " of " << tried);
    CHECK(built * 10 > tried * 7);
}

namespace {

/// One number of it, or what it is told from, made wrong; the code that this is told with.
std::string spoiled(RecordedOpening &opening) {
    const auto more = [](NotedLength &number) { number = noted(number.value->mm() + drawn(30, 200)); };
    switch (*rc::gen::inRange(0, 6)) {
    case 0:
        more(opening.width);
        return "opening-measured-twice";
    case 1:
        more(opening.height);
        return "opening-measured-twice";
    case 2:
        more(opening.near_at_head);
        return "jamb-leans";
    case 3:
        opening.zero = "nowhere";
        return "opening-not-placed";
    case 4:
        opening.plane = "none";
        return "opening-not-placed";
    default:
        opening.name = "another";
        return "opening-not-in-plan";
    }
}

} // namespace

TEST_CASE("Every contradiction that is planted in the numbers of an opening is told, and no other") {
    int planted = 0;
    CHECK(rc::check([&] {
        const Shell base = any_hewn_shell();
        const House stated(base);
        if (!stated.stands || base.openings.empty()) return;
        const House house(jittered(base, stated));
        if (!house.stands || !is_without_tails_by_rule(house)) return;
        Record record = Surveyor(house, noted).record();
        record.planes = {{"L1", {}, "", ""}}; // levels that name none mean it
        const std::size_t at = *rc::gen::inRange<std::size_t>(0, record.openings.size());
        const std::string code = spoiled(record.openings[at]);
        const MeasuredShell measured = measured_shell(base, record);
        RC_LOG() << test::words(measured.findings);
        RC_ASSERT(measured.findings.size() >= 1u);
        for (const Finding &finding : measured.findings) // a jamb that leans no more fits its width
            RC_ASSERT(finding.code == code ||
                      (code == "jamb-leans" && finding.code == "opening-measured-twice"));
        ++planted;
    }));
    CHECK(planted >= 10);
}
