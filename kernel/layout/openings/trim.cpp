// What is cut for frames: grooves in jambs, sills that fall outward.
#include "kernel/geometry/tolerance.h"
#include "kernel/layout/no_wood.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

/// A groove for a spline, at most. Common practice, no source.
constexpr double deepest_groove = 100;

/// Where a trim is cut, and which statement to point at.
struct TrimPlace {
    About place;
    std::string spline_width, spline_depth, sill_slope;
    double thickness = 0, log_height = 0; ///< of the thinnest and the lowest wall there
};

Finding does_not_fit(Weight weight, const TrimPlace &at, const std::string &subject, Said what,
                     std::optional<Said> advice = {}) {
    return {weight, "trim-does-not-fit", at.place, std::move(what), std::move(advice), subject};
}

/// What a groove so wide leaves of the jambs.
std::optional<Finding> check_groove_width(double width, const TrimPlace &at) {
    if (width <= at.thickness / 2) return {};
    if (width <= at.thickness - 2 * no_wood)
        return does_not_fit(Weight::warning, at, at.spline_width,
                            said("a groove %1 wide leaves less than half of jambs %2 thick", in_mm(width),
                                 in_mm(at.thickness)));
    return does_not_fit(
        Weight::error, at, at.spline_width,
        said("a groove %1 wide leaves too little of jambs %2 thick", in_mm(width), in_mm(at.thickness)),
        said("half of that at most"));
}

std::optional<Finding> check_groove_depth(const Shell &shell, double depth, const TrimPlace &at) {
    if (depth <= deepest_groove) return {};
    return does_not_fit(Weight::error, at, at.spline_depth,
                        said("a groove %1 deep is more than a spline needs", in_mm(depth)),
                        at_most(shell, deepest_groove));
}

std::optional<Finding> check_sill_slope(double ratio, const TrimPlace &at) {
    const double drop = ratio * at.thickness;
    if (drop <= tolerance::thinnest || drop <= at.log_height - least_left_over) return {};
    return does_not_fit(Weight::error, at, at.sill_slope,
                        said("sills that fall %1 through the wall cut their logs in two", in_mm(drop)));
}

/// Up to the first that cannot be cut.
void check_trim_at(const Shell &shell, const Trim &trim, const TrimPlace &at, Findings &findings) {
    for (const auto &found : {check_groove_width(trim.spline_width.mm(), at),
                              check_groove_depth(shell, trim.spline_depth.mm(), at),
                              check_sill_slope(trim.sill_slope.ratio(), at)}) {
        if (!found) continue;
        findings.push_back(*found);
        if (found->weight == Weight::error) return;
    }
}

/// In a wall whose logs are so high.
TrimPlace place_of_trim(const Shell &shell, const WallPlace &wall, double log_height, std::size_t opening) {
    const OwnTrim &own = shell.openings[opening].trim;
    const auto from = [&](bool stated, const std::string &key) {
        return stated ? subject("opening", opening, key) : "trim." + key;
    };
    return {opening_place(shell, opening),
            from(own.spline_width.has_value(), "spline_width"),
            from(own.spline_depth.has_value(), "spline_depth"),
            from(own.sill_slope.has_value(), "sill_slope"),
            wall.thickness,
            log_height};
}

} // namespace

Findings check_trim(const Shell &shell, const Plan &plan, const Heights &heights) {
    Findings findings;
    const auto log_height = [&](Index<WallPlace> wall) {
        return heights.heights.empty() ? HUGE_VAL : heights.heights[wall].log_height;
    };
    TrimPlace all{{about::All::openings}, "trim.spline_width",          "trim.spline_depth",
                  "trim.sill_slope",      plan.walls.front().thickness, log_height(Index<WallPlace>(0))};
    for (const auto w : plan.walls.indices()) {
        all.thickness = std::min(all.thickness, plan.walls[w].thickness);
        all.log_height = std::min(all.log_height, log_height(w));
    }
    if (!shell.openings.empty()) check_trim_at(shell, shell.trim, all, findings);
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto wall = wall_named(plan, o.wall);
        if (!wall || o.trim == OwnTrim{}) continue;
        check_trim_at(shell, trim_of(shell, o), place_of_trim(shell, plan.walls[*wall], log_height(*wall), i),
                      findings);
    }
    return findings;
}

namespace {

/// The highest log that ends under a stretch of a wall, in millimetres; none where the foundation is there.
std::optional<double> top_under(const std::vector<Course> &courses, const Span &span, double height) {
    std::optional<double> top;
    for (const Course &course : courses) {
        const double high = std::max(course.high(span.from), course.high(span.to));
        if (high <= height + tolerance::thinnest) top = std::max(top.value_or(high), high);
    }
    return top;
}

bool falls(const std::vector<OpeningCut> &cuts, std::size_t opening) {
    return std::ranges::any_of(cuts, [&](const OpeningCut &c) { return c.opening == opening && c.fall > 0; });
}

/// A sill that would fall by `drop`, over a log that ends so much lower.
Finding stays_level(const Shell &shell, std::size_t opening, double drop, double over_log) {
    return {Weight::note,
            "sill-stays-level",
            opening_place(shell, opening),
            said("its sill is not cut to the slope stated for sills, which falls %1 "
                 "through the wall: the log under it ends %2 lower",
                 in_mm(drop), in_mm(over_log)),
            {},
            subject("opening", opening, "sill")};
}

} // namespace

Findings note_level_sills(const Shell &shell, const Plan &plan, const Foundation &foundation,
                          const Courses &courses) {
    Findings findings;
    for (std::size_t i = 0; i < shell.openings.size(); ++i) {
        const Opening &o = shell.openings[i];
        const auto wall = wall_named(plan, o.wall);
        const double fall = trim_of(shell, o).sill_slope.ratio();
        if (o.kind != OpeningKind::window || fall <= 0 || !wall) continue;
        const auto &logs = courses.logs[*wall];
        if (std::ranges::any_of(
                logs, [&](const Course &c) { return falls(cuts_of(shell, plan, foundation, *wall, c), i); }))
            continue;
        const auto top = top_under(logs, {o.from_left.mm(), (o.from_left + o.width).mm()}, o.sill.mm());
        if (!top) continue;
        findings.push_back(stays_level(shell, i, fall * plan.walls[*wall].thickness, o.sill.mm() - *top));
    }
    return findings;
}

} // namespace roundlay
