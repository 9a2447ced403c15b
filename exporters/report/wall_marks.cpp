#include "exporters/report/wall_marks.h"

#include "exporters/report/found_numbers.h"
#include "exporters/report/marks.h"
#include "exporters/report/parts.h"
#include "kernel/measured/house_numbers.h"
#include "kernel/measured/measured_shell.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

constexpr Band upper{0.62, 1}, lower{0, 0.38}; ///< of a log's face, for zones on its top and under side
constexpr Along everywhere{-1e9, 1e9};

Along span_of(const Layout &layout, const FormLog &log) {
    return {along_of(layout, layout.pieces[log.pieces.front()]).from,
            along_of(layout, layout.pieces[log.pieces.back()]).to};
}

/// Of the whole round that the log is one of.
Along round_of(const Layout &layout, const FormLog &log) {
    const Piece &own = layout.pieces[log.pieces.front()];
    Along all = span_of(layout, log);
    for (const Piece &piece : layout.pieces) {
        if (!is_log(piece) || piece.wall != own.wall || piece.round != own.round) continue;
        const Along part = along_of(layout, piece);
        all = {std::min(all.from, part.from), std::max(all.to, part.to)};
    }
    return all;
}

bool has(const ConditionZone &zone, FoundFace face) {
    return std::ranges::count(zone.faces, face) > 0;
}

void add_zone(std::vector<MarkedArea> &areas, const Record &record, const Layout &layout, const FormLog &log,
              const ConditionZone &zone, WallSide side, const Words &words) {
    const auto along = zone_on_wall(record, layout, log, zone);
    if (!along || zone.what == Soundness::sound) return;
    const MarkOf mark = mark_of(zone.what, words);
    for (const SeenPart &part : parts_seen(zone, side))
        for (const Index<Piece> piece : log.pieces) {
            MarkedArea area;
            area.outline = face_outline(layout, layout.pieces[piece], *along, part.band);
            if (area.outline.empty()) continue;
            area.hatch = part.behind ? Hatch::none : mark.hatch;
            area.words = mark.letter;
            area.edged = true;
            area.hidden = part.behind;
            areas.push_back(std::move(area));
        }
}

std::string tag_with_marks(const FormLog &log) {
    if (!log.recorded) return log.found.tag;
    std::string words = log.found.tag;
    if (counts_of(log.found).contradicted > 0) words += " ≠";
    if (!has_a_size(log.found)) words += " p";
    return words;
}

void add_faces(std::vector<MarkedArea> &areas, const Layout &layout, const FormLog &log,
               const std::string &words, Hatch hatch) {
    for (const Index<Piece> piece : log.pieces)
        areas.push_back(
            {face_outline(layout, layout.pieces[piece], everywhere), hatch, words, false, false, true});
}

} // namespace

std::optional<LogZero> zero_of(const Record &record, const Layout &layout, const FormLog &log) {
    const std::string &zero = log.found.zero;
    if (log.pieces.empty() || zero.empty()) return {};
    const Along whole = span_of(layout, log);
    if (zero == log.ends[0].name) return LogZero{whole.from, true};
    if (zero == log.ends[1].name) return LogZero{whole.to, false};
    const auto end = end_at(record, layout, layout.pieces[log.pieces.front()].wall, zero);
    if (!log.found.place.piece || !end) return {};
    const Along round = round_of(layout, log);
    return *end == LogEnd::left ? LogZero{round.from, true} : LogZero{round.to, false};
}

std::optional<Along> zone_on_wall(const Record &record, const Layout &layout, const FormLog &log,
                                  const ConditionZone &zone) {
    const Along whole = span_of(layout, log);
    if (!zone.from.is_taken() && !zone.to.is_taken()) return whole;
    const auto zero = zero_of(record, layout, log);
    std::vector<double> ends;
    for (const NotedLength *at : {&zone.from, &zone.to}) {
        if (!at->is_taken()) continue;
        if (!zero || !at->value) return {};
        const double x = zero->place(*at);
        if (x < whole.from - tape_tolerance || x > whole.to + tape_tolerance) return {}; // past its log
        ends.push_back(x);
    }
    if (ends.size() == 2) return both(whole, {std::min(ends[0], ends[1]), std::max(ends[0], ends[1])});
    return zone.from.is_taken() == zero->from_left ? Along{ends[0], whole.to} : Along{whole.from, ends[0]};
}

std::vector<SeenPart> parts_seen(const ConditionZone &zone, WallSide side) {
    const FoundFace near = side == WallSide::outside ? FoundFace::outside : FoundFace::inside,
                    away = side == WallSide::outside ? FoundFace::inside : FoundFace::outside;
    if (zone.faces.empty() || has(zone, near)) return {{{}}};
    std::vector<SeenPart> parts;
    if (has(zone, FoundFace::top)) parts.push_back({upper});
    if (has(zone, FoundFace::under)) parts.push_back({lower});
    if (parts.empty() && has(zone, away)) parts.push_back({{}, true});
    return parts;
}

std::vector<MarkedArea> decision_areas(const Layout &layout, const std::vector<FormLog> &logs,
                                       const Words &words) {
    std::vector<MarkedArea> areas;
    for (const FormLog &log : logs) {
        const MarkOf mark = mark_of(last_decision(log.found), words);
        if (log.recorded)
            add_faces(areas, layout, log, words.say("%1 %2", log.found.tag, mark.letter), mark.hatch);
        else
            add_faces(areas, layout, log, "(" + log.found.tag + ")", mark_of_unrecorded(words).hatch);
    }
    return areas;
}

std::vector<MarkedArea> mend_areas(const Layout &layout, const std::vector<FormLog> &logs,
                                   const ReportSource &source) {
    std::vector<MarkedArea> areas;
    for (const NewWood &wood : source.mends) {
        const auto log = std::ranges::find(logs, source.record->logs[wood.log].tag,
                                           [](const FormLog &each) { return each.found.tag; });
        if (log == logs.end() || log->pieces.empty()) continue;
        const Along whole = span_of(layout, *log);
        const bool by_left = wood.from_left + wood.to_left <= wood.from_right + wood.to_right;
        const Along part = by_left ? Along{whole.from + wood.from_left, whole.from + wood.to_left}
                                   : Along{whole.to - wood.from_right, whole.to - wood.to_right};
        const bool hidden = wood.mend.kind != MendKind::splice && wood.mend.face == LogSide::inside;
        for (const Index<Piece> piece : log->pieces)
            areas.push_back({face_outline(layout, layout.pieces[piece], part, {wood.low, wood.high}),
                             hidden ? Hatch::none : Hatch::crossed, wood.tag.substr(wood.tag.rfind('-') + 1),
                             true, hidden, false});
    }
    std::erase_if(areas, [](const MarkedArea &area) { return area.outline.empty(); });
    return areas;
}

std::vector<MarkedArea> wood_areas(const Record &record, const Layout &layout,
                                   const std::vector<FormLog> &logs, WallSide side, const Words &words) {
    std::vector<MarkedArea> areas;
    for (const FormLog &log : logs)
        add_faces(areas, layout, log, tag_with_marks(log), Hatch::none);
    for (const FormLog &log : logs)
        for (const ConditionZone &zone : log.found.zones)
            add_zone(areas, record, layout, log, zone, side, words);
    return areas;
}

std::vector<MarkedPoint> found_points(const Record &record, const Layout &layout,
                                      const std::vector<FormLog> &logs) {
    std::vector<MarkedPoint> points;
    const auto add = [&](const FormLog &log, const NotedLength &at, double share, auto symbol) {
        const auto zero = zero_of(record, layout, log);
        if (!zero || !at.value) return;
        const double x = zero->place(at);
        for (const Index<Piece> piece : log.pieces) {
            const Along part = along_of(layout, layout.pieces[piece]);
            if (x < part.from || x > part.to) continue;
            constexpr double wide = 1;
            const auto face = face_outline(layout, layout.pieces[piece], {x - wide, x + wide}, {share, 1});
            if (!face.empty()) points.push_back({{x, face.front().y}, symbol});
        }
    };
    constexpr double in_the_log = 0.75, at_its_top = 0.85;
    for (const FormLog &log : logs) {
        for (const FoundPeg &peg : log.found.pegs)
            add(log, peg.at, in_the_log, [state = peg.state](Vec2 at) { return peg_symbol(state, at); });
        for (const LaterCut &cut : log.found.later_cuts)
            add(log, cut.at, at_its_top, later_cut_symbol);
    }
    return points;
}

bool shows_inside(const std::vector<FormLog> &logs) {
    return std::ranges::any_of(logs, [](const FormLog &log) {
        return std::ranges::any_of(log.found.zones, [](const ConditionZone &zone) {
            return has(zone, FoundFace::inside) && zone.what != Soundness::sound;
        });
    });
}

} // namespace roundlay::sheets
