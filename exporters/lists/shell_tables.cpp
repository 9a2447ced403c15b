#include "exporters/lists/shell_tables.h"

#include "exporters/lists/list_cells.h"
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

constexpr int tenths = 1, stress_decimals = 3;

std::string tag_of(const Layout &layout, std::optional<Index<Piece>> piece) {
    return piece ? layout.pieces[*piece].tag : "";
}

std::string spans_of(const Voice &voice, const Layout &layout, const Timber &timber) {
    std::string text;
    for (const double span : clear_spans(layout, timber))
        text += (text.empty() ? "" : "; ") + voice.length(span);
    return text;
}

std::string bearings_of(const Voice &voice, const Layout &layout, const Timber &timber) {
    return voice.length(bearing_of(layout, timber, End::datum).length) + "; " +
           voice.length(bearing_of(layout, timber, End::far).length);
}

std::string points_of(const Voice &voice, const TimberScreen &s) {
    const bool metric = voice.system() == UnitSystem::metric;
    std::string text;
    for (const PointLoad &p : s.points)
        text +=
            (text.empty() ? "" : "; ") +
            (metric ? voice.say("%1 N at %2", number(p.force, 0).digits, in_mm(p.at))
                    : voice.say("%1 lb at %2", number(p.force / newtons_per_pound, 0).digits, in_mm(p.at)));
    return text;
}

constexpr int in_decimals = 3;

std::vector<Column> screen_columns(const Voice &voice) {
    const bool m = voice.system() == UnitSystem::metric;
    return {{"live_n_per_mm", m ? voice.say("live N/mm") : ""},
            {"total_n_per_mm", ""},
            {"live_lb_per_ft", m ? "" : voice.say("live lb/ft")},
            {"total_lb_per_ft", ""},
            {"from_other_timbers", ""},
            {"screened_span_mm", ""},
            {"live_deflection_mm", m ? voice.say("bends mm") : ""},
            {"live_deflection_in", m ? "" : voice.say("bends in")},
            {"span_over_deflection", voice.say("span/")},
            {"bending_mpa", m ? voice.say("bending MPa") : ""},
            {"shear_mpa", m ? voice.say("shear MPa") : ""},
            {"bearing_mpa", m ? voice.say("bearing MPa") : ""},
            {"bending_psi", m ? "" : voice.say("bending psi")},
            {"shear_psi", m ? "" : voice.say("shear psi")},
            {"bearing_psi", m ? "" : voice.say("bearing psi")},
            {"allowable", voice.say("allowable")},
            {"pulls_up_n", m ? voice.say("pulls up N") : ""},
            {"pulls_up_lb", m ? "" : voice.say("pulls up lb")}};
}

double most_lift(const TimberScreen &s) {
    return s.lifts.empty() ? 0 : std::ranges::max(s.lifts);
}

/// What stands in those columns, empty where there is no screen.
std::vector<Entry> screened(const Voice &voice, const TimberScreen *s) {
    if (!s) return std::vector<Entry>(screen_columns(voice).size(), Entry(std::string()));
    return {number(s->live, stress_decimals),
            number(s->total, stress_decimals),
            number(s->live / n_per_mm_per_plf, 1),
            number(s->total / n_per_mm_per_plf, 1),
            points_of(voice, *s),
            number(s->span, tenths),
            number(s->deflection, tenths),
            number(s->deflection / mm_per_inch, in_decimals),
            number(s->span / s->deflection, 0),
            number(s->bending, stress_decimals),
            number(s->shear, stress_decimals),
            number(s->bearing, stress_decimals),
            number(s->bending / mpa_per_psi, 0),
            number(s->shear / mpa_per_psi, 0),
            number(s->bearing / mpa_per_psi, 0),
            voice.word(no_allowable),
            number(std::ceil(most_lift(*s)), 0),
            number(std::ceil(most_lift(*s) / newtons_per_pound), 0)};
}

std::vector<Column> opening_columns(const Voice &voice) {
    return {{"opening", voice.say("opening")},
            {"kind", voice.say("kind")},
            {"wall", voice.say("wall")},
            {"from_left", voice.say("from left")},
            {"sill", voice.say("sill")},
            {"width", voice.say("width")},
            {"height", voice.say("height")},
            {"settle_space", voice.say("settle space")},
            {"frame_height_left", voice.say("left for the frame")},
            {"settle_basis", ""},
            {"header", voice.say("header")},
            {"header_past_left", voice.say("past left")},
            {"header_past_right", voice.say("past right")},
            {"sill_log", voice.say("sill log")}};
}

std::vector<Entry> opening_row(const Layout &layout, const Voice &voice, const Opening &o,
                               const OpeningFacts &f) {
    return {voice.name(f.name),
            o.kind == OpeningKind::door ? voice.say("door") : voice.say("window"),
            o.wall,
            voice.length(o.from_left.mm()),
            voice.length(o.sill.mm()),
            voice.length(o.width.mm()),
            voice.length(o.height.mm()),
            voice.length(f.settle_space),
            voice.length(std::max(0.0, o.height.mm() - f.settle_space)),
            voice.words(f.settle_basis) + ". " + voice.word(settling_caution),
            tag_of(layout, f.header),
            voice.length(f.runs_left),
            voice.length(f.runs_right),
            tag_of(layout, f.sill)};
}

std::vector<Column> timber_columns(const Voice &voice) {
    std::vector<Column> columns{{"tag", voice.say("tag")},
                                {"kind", voice.say("kind")},
                                {"floor", voice.say("floor")},
                                {"from_left", voice.say("from left")},
                                {"from_wall", voice.say("from wall")},
                                {"clear_spans", voice.say("clear spans")},
                                {"bearings", voice.say("bearings")}};
    append(columns, screen_columns(voice));
    columns.push_back({"basis", ""});
    return columns;
}

std::vector<Entry> timber_row(const Layout &layout, const Voice &voice, Index<Timber> i,
                              const FloorScreen &screen) {
    const Timber &t = layout.timbers[i];
    const auto found = std::ranges::find(screen.timbers, i, &TimberScreen::timber);
    const bool has = found != screen.timbers.end();
    std::vector<Entry> row{tag_of(layout, t.piece),      voice.word(name_of(t.use)),
                           layout.floors[t.floor].name,  voice.length(t.from.x),
                           voice.length(t.from.y),       spans_of(voice, layout, t),
                           bearings_of(voice, layout, t)};
    append(row, screened(voice, has ? &*found : nullptr));
    row.emplace_back(has ? voice.words(screen.basis)
                         : voice.say("not screened: no live_load is stated, or the species is not known"));
    return row;
}

std::vector<Column> seam_columns(const Voice &voice) {
    return {{"wall", voice.say("wall")},
            {"round", voice.say("round")},
            {"under_left", voice.say("under face, left")},
            {"top_left", voice.say("top, left")},
            {"under_right", voice.say("under face, right")},
            {"top_right", voice.say("top, right")},
            {"under_left_mm", ""},
            {"top_left_mm", ""},
            {"under_right_mm", ""},
            {"top_right_mm", ""}};
}

std::vector<Entry> seam_row(const Voice &voice, const std::string &wall, const Course &c) {
    constexpr int mm_exactly = 4;
    std::vector<Entry> row{wall, number(c.round, 0)};
    const double heights[] = {c.datum.low + c.hollow, c.datum.high + c.crown, c.far.low + c.hollow,
                              c.far.high + c.crown};
    for (const double height : heights)
        row.emplace_back(voice.length(height));
    for (const double height : heights)
        row.emplace_back(number(height, mm_exactly));
    return row;
}

} // namespace

Table opening_table(const Shell &shell, const Layout &layout, Language language) {
    return opening_table(shell, layout, voice_of(shell, layout, language));
}

Table opening_table(const Shell &shell, const Layout &layout, const Voice &voice) {
    Table table{opening_columns(voice), {}};
    const auto facts = opening_facts(shell, layout);
    for (std::size_t i = 0; i < facts.size(); ++i)
        table.rows.push_back(opening_row(layout, voice, shell.openings[i], facts[i]));
    return table;
}

Table floor_table(const Shell &shell, const Layout &layout, Language language) {
    return floor_table(shell, layout, voice_of(shell, layout, language));
}

Table floor_table(const Shell &shell, const Layout &layout, const Voice &voice) {
    Table table{timber_columns(voice), {}};
    const FloorScreen screen = screen_floors(shell, layout);
    for (const auto i : layout.timbers.indices())
        table.rows.push_back(timber_row(layout, voice, i, screen));
    return table;
}

Table seam_table(const Shell &shell, Language language) {
    const Voice voice({language, shell.units});
    Table table{seam_columns(voice), {}};
    const auto plan = lay_out_plan(shell);
    const auto courses = lay_out_courses(shell, plan);
    for (const auto wall : courses.logs.indices())
        for (const Course &c : courses.logs[wall])
            table.rows.push_back(seam_row(voice, plan.walls[wall].name, c));
    return table;
}

} // namespace roundlay
