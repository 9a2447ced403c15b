#include "exporters/lists/shell_tables.h"

#include "kernel/layout/courses/courses.h"
#include "kernel/layout/floors/bearing.h"
#include "kernel/layout/plan/plan.h"
#include "kernel/measure/load.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/opening_facts.h"
#include "kernel/trade/settling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr int mm_decimals = 1, stress_decimals = 3;

std::string said(const Shell &shell, double mm) {
    LengthStyle style;
    style.system = shell.units;
    return print_length(Length::mm(mm), style);
}

std::string tag_of(const Layout &layout, int piece) {
    return piece < 0 ? "" : layout.pieces[static_cast<std::size_t>(piece)].tag;
}

std::string spans_of(const Shell &shell, const Layout &layout, const Timber &timber) {
    std::string text;
    for (const double span : clear_spans(layout, timber))
        text += (text.empty() ? "" : "; ") + said(shell, span);
    return text;
}

std::string points_of(const Shell &shell, const TimberScreen &s) {
    const bool metric = shell.units == UnitSystem::metric;
    std::string text;
    for (const PointLoad &p : s.points)
        text += (text.empty() ? "" : "; ") +
                number(metric ? p.force : p.force / newtons_per_pound, 0).digits + (metric ? " N" : " lb") +
                " at " + said(shell, p.at);
    return text;
}

constexpr int in_decimals = 3;

const std::vector<Column> &screen_columns(bool metric) {
    const auto columns = [](bool m) {
        return std::vector<Column>{{"live_n_per_mm", m ? "live N/mm" : ""},
                                   {"total_n_per_mm", ""},
                                   {"live_lb_per_ft", m ? "" : "live lb/ft"},
                                   {"total_lb_per_ft", ""},
                                   {"from_other_timbers", ""},
                                   {"screened_span_mm", ""},
                                   {"live_deflection_mm", m ? "bends mm" : ""},
                                   {"live_deflection_in", m ? "" : "bends in"},
                                   {"span_over_deflection", "span/"},
                                   {"bending_mpa", m ? "bending MPa" : ""},
                                   {"shear_mpa", m ? "shear MPa" : ""},
                                   {"bearing_mpa", m ? "bearing MPa" : ""},
                                   {"bending_psi", m ? "" : "bending psi"},
                                   {"shear_psi", m ? "" : "shear psi"},
                                   {"bearing_psi", m ? "" : "bearing psi"},
                                   {"allowable", "allowable"},
                                   {"pulls_up_n", m ? "pulls up N" : ""},
                                   {"pulls_up_lb", m ? "" : "pulls up lb"}};
    };
    static const std::vector<Column> in_metric = columns(true), in_imperial = columns(false);
    return metric ? in_metric : in_imperial;
}

double most_lift(const TimberScreen &s) {
    return s.lifts.empty() ? 0 : std::ranges::max(s.lifts);
}

/// What stands in those columns, empty where there is no screen.
std::vector<Entry> screened(const Shell &shell, const TimberScreen *s) {
    if (!s) return std::vector<Entry>(screen_columns(true).size(), Entry(std::string()));
    return {number(s->live, stress_decimals),
            number(s->total, stress_decimals),
            number(s->live / n_per_mm_per_plf, 1),
            number(s->total / n_per_mm_per_plf, 1),
            points_of(shell, *s),
            number(s->span, mm_decimals),
            number(s->deflection, mm_decimals),
            number(s->deflection / mm_per_inch, in_decimals),
            number(s->span / s->deflection, 0),
            number(s->bending, stress_decimals),
            number(s->shear, stress_decimals),
            number(s->bearing, stress_decimals),
            number(s->bending / mpa_per_psi, 0),
            number(s->shear / mpa_per_psi, 0),
            number(s->bearing / mpa_per_psi, 0),
            std::string(no_allowable),
            number(std::ceil(most_lift(*s)), 0),
            number(std::ceil(most_lift(*s) / newtons_per_pound), 0)};
}

} // namespace

Table opening_table(const Shell &shell, const Layout &layout) {
    Table table{{{"opening", "opening"},
                 {"kind", "kind"},
                 {"wall", "wall"},
                 {"from_left", "from left"},
                 {"sill", "sill"},
                 {"width", "width"},
                 {"height", "height"},
                 {"settle_space", "settle space"},
                 {"frame_height_left", "left for the frame"},
                 {"settle_basis", ""},
                 {"header", "header"},
                 {"header_past_left", "past left"},
                 {"header_past_right", "past right"},
                 {"sill_log", "sill log"}},
                {}};
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const Opening &o = shell.openings[i];
        const OpeningFacts &f = facts[i];
        table.rows.push_back({f.name, std::string(o.kind == OpeningKind::door ? "door" : "window"), o.wall,
                              said(shell, o.from_left.mm()), said(shell, o.sill.mm()),
                              said(shell, o.width.mm()), said(shell, o.height.mm()),
                              said(shell, f.settle_space),
                              said(shell, std::max(0.0, o.height.mm() - f.settle_space)),
                              f.settle_basis + ". " + std::string(settling_caution), tag_of(layout, f.header),
                              said(shell, f.runs_left), said(shell, f.runs_right), tag_of(layout, f.sill)});
    }
    return table;
}

Table floor_table(const Shell &shell, const Layout &layout) {
    Table table{{{"tag", "tag"},
                 {"kind", "kind"},
                 {"floor", "floor"},
                 {"from_left", "from left"},
                 {"from_wall", "from wall"},
                 {"clear_spans", "clear spans"},
                 {"bearings", "bearings"}},
                {}};
    const auto &columns = screen_columns(shell.units == UnitSystem::metric);
    table.columns.insert(table.columns.end(), columns.begin(), columns.end());
    table.columns.push_back({"basis", ""});
    const FloorScreen screen = screen_floors(shell, layout);
    for (std::size_t i = 0; i < layout.timbers.size(); ++i) {
        const Timber &t = layout.timbers[i];
        const auto found =
            std::find_if(screen.timbers.begin(), screen.timbers.end(),
                         [&](const TimberScreen &s) { return s.timber == static_cast<int>(i); });
        const bool has = found != screen.timbers.end();
        std::vector<Entry> row{tag_of(layout, t.piece),
                               std::string(name_of(t.use)),
                               layout.floors[static_cast<std::size_t>(t.floor)].name,
                               said(shell, t.from.x),
                               said(shell, t.from.y),
                               spans_of(shell, layout, t),
                               said(shell, bearing_of(layout, t, End::datum).length) + "; " +
                                   said(shell, bearing_of(layout, t, End::far).length)};
        for (Entry &entry : screened(shell, has ? &*found : nullptr))
            row.push_back(std::move(entry));
        row.emplace_back(
            has ? screen.basis
                : std::string("not screened: no live_load is stated, or the species is not known"));
        table.rows.push_back(std::move(row));
    }
    return table;
}

Table seam_table(const Shell &shell) {
    Table table{{{"wall", "wall"},
                 {"round", "round"},
                 {"under_left", "under face, left"},
                 {"top_left", "top, left"},
                 {"under_right", "under face, right"},
                 {"top_right", "top, right"},
                 {"under_left_mm", ""},
                 {"top_left_mm", ""},
                 {"under_right_mm", ""},
                 {"top_right_mm", ""}},
                {}};
    Layout layout;
    lay_out_plan(shell, layout);
    const auto courses =
        layout.walls.empty() ? std::vector<std::vector<Course>>() : lay_out_courses(shell, layout);
    constexpr int mm_exactly = 4;
    for (std::size_t wall = 0; wall < courses.size(); ++wall)
        for (const Course &c : courses[wall]) {
            std::vector<Entry> row{layout.walls[wall].name, number(c.round, 0)};
            const double heights[] = {c.datum.low + c.hollow, c.datum.high + c.crown, c.far.low + c.hollow,
                                      c.far.high + c.crown};
            for (const double height : heights)
                row.emplace_back(said(shell, height));
            for (const double height : heights)
                row.emplace_back(number(height, mm_exactly));
            table.rows.push_back(std::move(row));
        }
    return table;
}

} // namespace roundlay
