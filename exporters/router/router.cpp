#include "exporters/router/router.h"

#include "exporters/router/alike.h"
#include "exporters/router/contour.h"
#include "exporters/router/stated.h"
#include "exporters/router/tabs.h"
#include "kernel/geometry/packing.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

LengthAmount fine(double mm) {
    constexpr int decimals = 2;
    return finely_in_mm(mm, decimals);
}

struct Extent {
    Vec2 low, high;
};

Extent extent_of(const std::vector<Vec2> &ring) {
    Extent extent{ring.front(), ring.front()};
    for (const Vec2 p : ring) {
        extent.low = {std::min(extent.low.x, p.x), std::min(extent.low.y, p.y)};
        extent.high = {std::max(extent.high.x, p.x), std::max(extent.high.y, p.y)};
    }
    return extent;
}

bool is_near(Vec2 a, Vec2 b) {
    return std::hypot(a.x - b.x, a.y - b.y) <= same_template_by;
}

/// What is on a template, from its lower left corner.
struct OnTemplate {
    std::vector<RouterMark> marks;
    std::vector<RouterHole> holes;
    bool none() const { return marks.empty() && holes.empty(); }
};

/// The same outline point by point, and the same marks and holes.
bool lies_on(const RouterTemplate &other, const std::vector<Vec2> &ring, Vec2 low, const OnTemplate &on) {
    return std::ranges::equal(other.outline, ring, [&](Vec2 a, Vec2 b) { return is_near(a, b - low); }) &&
           std::ranges::equal(other.marks, on.marks,
                              [](const RouterMark &a, const RouterMark &b) {
                                  return is_near(a.from, b.from) && is_near(a.to, b.to);
                              }) &&
           std::ranges::equal(other.holes, on.holes, [](const RouterHole &a, const RouterHole &b) {
               return is_near(a.middle, b.middle) && std::abs(a.diameter - b.diameter) <= same_as_tool_by;
           });
}

class Maker {
  public:
    Maker(const std::vector<RouterShape> &shapes, RouterOptions complete) : shapes_(shapes) {
        job_.stated = std::move(complete);
    }

    std::variant<RouterJob, RouterProblems> made() {
        for (const RouterShape &shape : shapes_)
            add(shape);
        std::erase_if(job_.templates, [&](RouterTemplate &which) { return !cut(which); });
        if (job_.templates.empty() && problems_.empty()) return std::move(job_.left_out);
        if (problems_.empty()) nest();
        if (!problems_.empty()) return std::move(problems_);
        return std::move(job_);
    }

  private:
    void add(const RouterShape &shape) {
        std::vector<Vec2> ring = tidied_outline(shape.outline);
        if (!is_simple(ring))
            return job_.left_out.push_back(
                said("the outline of %1 crosses itself or has no inside: it cannot be cut out", shape.name));
        const auto [low, high] = extent_of(ring);
        OnTemplate on = on_template(shape, ring, low);
        for (RouterTemplate &other : job_.templates) {
            if (!on.none() || !other.marks.empty() || !other.holes.empty()) {
                // Turned or turned over, its marks would lie elsewhere, or underneath.
                if (!lies_on(other, ring, low, on)) continue;
                return other.uses.push_back({shape.name, false});
            }
            const bool alike = are_alike(other.outline, ring, same_template_by);
            if (!alike && !are_alike(other.outline, turned_over(ring), same_template_by)) continue;
            return other.uses.push_back({shape.name, !alike});
        }
        for (Vec2 &p : ring)
            p = p - low;
        RouterTemplate made;
        made.uses = {{shape.name, false}};
        made.outline = std::move(ring);
        made.size = high - low;
        made.marks = std::move(on.marks);
        made.holes = std::move(on.holes);
        job_.templates.push_back(std::move(made));
    }

    OnTemplate on_template(const RouterShape &shape, const std::vector<Vec2> &ring, Vec2 low) {
        OnTemplate on;
        if (job_.stated.scribe)
            for (const RouterMark &mark : shape.marks)
                on.marks.push_back({mark.from - low, mark.to - low});
        for (const RouterHole &hole : shape.holes)
            if (is_cut(hole, shape, ring)) on.holes.push_back({hole.middle - low, hole.diameter});
        return on;
    }

    /// Else it is said why not; the template is cut without it.
    bool is_cut(const RouterHole &hole, const RouterShape &shape, const std::vector<Vec2> &ring) {
        constexpr double least_web = 2; // mm of board that hold between a hole and what is cut beside it
        const double tool = *job_.stated.tool;
        if (hole.diameter < tool - same_as_tool_by) {
            job_.left_out.push_back(
                said("the hole of %1 in %2 is narrower than the tool of %3: it is left out, and "
                     "is bored by hand from the sheets",
                     fine(hole.diameter), shape.name, fine(tool)));
            return false;
        }
        bool clear = distance_to(ring, hole.middle) >= hole.diameter / 2 + least_web;
        for (const RouterHole &other : shape.holes)
            clear = clear && (&other == &hole || length(other.middle - hole.middle) >=
                                                     (other.diameter + hole.diameter) / 2 + least_web);
        if (!clear)
            job_.left_out.push_back(
                said("the hole of %1 in %2 leaves less than %3 of board beside it: it is left out, "
                     "and is bored by hand from the sheets",
                     fine(hole.diameter), shape.name, fine(least_web)));
        return clear;
    }

    /// False where it is no template for a router.
    bool cut(RouterTemplate &which) {
        const std::string &name = which.uses.front().name;
        const double tool = *job_.stated.tool;
        const auto way = way_round(which.outline, tool);
        if (!way) return !is_too_narrow(which, name);
        const auto contour = contour_with_tabs(*way, which.outline, job_.stated);
        if (!contour)
            problems_.push_back(
                said("%1 has no room for two tabs %2 wide beside the tool of %3: narrower tabs or a thinner "
                     "tool are needed",
                     name, fine(job_.stated.tab_width), fine(tool)));
        else
            which.contour = *contour;
        which.corners = way->corners;
        return true;
    }

    /// For any tool; else a thinner one is asked for.
    bool is_too_narrow(const RouterTemplate &which, const std::string &name) {
        const double tool = *job_.stated.tool;
        if (const auto fits = thickest_tool(which.outline, tool)) {
            problems_.push_back(
                said("the tool of %1 is thicker than the narrowest inner room of %2: a tool of at most %3 is "
                     "needed",
                     fine(tool), name, fine(*fits)));
            return false;
        }
        job_.left_out.push_back(
            said("%1 has an inner room that no tool of 1 mm or more gets into: it is left "
                 "out, and is cut by hand from the sheets",
                 name));
        return true;
    }

    void nest() {
        const RouterBoardSize &board = *job_.stated.board;
        const double margin = *job_.stated.margin, x = board.length - 2 * margin,
                     y = board.width - 2 * margin;
        std::vector<Footprint> prints;
        for (const RouterTemplate &which : job_.templates)
            prints.push_back({which.size.x, which.size.y});
        const auto found = packed(prints, x, y, *job_.stated.spacing);
        for (std::size_t i = 0; i < found.size(); ++i) {
            if (!found[i]) {
                too_large(job_.templates[i]);
                continue;
            }
            job_.boards.resize(std::max(job_.boards.size(), found[i]->plate + 1));
            job_.boards[found[i]->plate].push_back(
                {i, Vec2{margin + found[i]->x, margin + found[i]->y}, found[i]->turned});
        }
    }

    void too_large(const RouterTemplate &which) {
        const RouterBoardSize &board = *job_.stated.board;
        const double both = 2 * *job_.stated.margin;
        const double along = std::max(which.size.x, which.size.y),
                     across = std::min(which.size.x, which.size.y);
        problems_.push_back(said("the board of %1 by %2 is smaller than %3, which is %4 by %5: with its "
                                 "margins a board of %6 by %7 is needed",
                                 fine(board.length), fine(board.width), which.uses.front().name, fine(along),
                                 fine(across), fine(along + both), fine(across + both)));
    }

    const std::vector<RouterShape> &shapes_;
    RouterJob job_;
    RouterProblems problems_;
};

} // namespace

std::variant<RouterJob, RouterProblems> router_job(const std::vector<RouterShape> &shapes,
                                                   const RouterOptions &options) {
    RouterProblems problems;
    for (const RouterProblem &each : against(options))
        problems.push_back(each.what);
    if (!problems.empty()) return problems;
    return Maker(shapes, completed(options)).made();
}

std::vector<double> rings_of(const RouterHole &hole, double tool) {
    constexpr double share = 0.4; // of the tool from ring to ring: each overlaps the one within it
    const double outermost = (hole.diameter - tool) / 2;
    if (outermost <= same_as_tool_by / 2) return {};
    const int count = static_cast<int>(std::ceil(outermost / (share * tool)));
    std::vector<double> rings;
    for (int ring = 1; ring <= count; ++ring)
        rings.push_back(outermost * ring / count);
    return rings;
}

Vec2 on_board(const RouterJob &job, const RouterPlace &place, Vec2 point) {
    if (!place.turned) return place.at + point;
    return place.at + Vec2{job.templates[place.which].size.y - point.y, point.x};
}

} // namespace roundlay
