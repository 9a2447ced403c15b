#include "exporters/sheets/form/corner_rows.h"

#include "exporters/sheets/drawing/text.h"
#include "kernel/layout/cuts/asked.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double tag_width = 34;

/// Which of the log's ends lies in the corner.
std::optional<End> end_in(const Piece &piece, const std::string &corner) {
    const auto lies = [&](const PieceEnd &end) {
        return end.at == corner && (end.kind == EndKind::corner || end.kind == EndKind::butt);
    };
    if (lies(piece.datum)) return End::datum;
    if (lies(piece.far)) return End::far;
    return {};
}

bool runs_through(const Piece &piece, const std::string &corner) {
    return std::ranges::any_of(piece.cuts, [&](const Cut &cut) { return corner_of(cut) == corner; });
}

const FormLog *log_of(const std::vector<FormLog> &logs, Index<Piece> piece) {
    for (const FormLog &log : logs)
        if (std::ranges::count(log.pieces, piece) > 0) return &log;
    return nullptr;
}

std::optional<FoundEnd> found_end(const FormLog &log, Index<Piece> piece, End end) {
    for (const FormEnd &e : log.ends)
        if (e.piece == piece && e.of_plan == end) return e.found;
    return {};
}

struct Columns {
    double tails[4], overhang, gap, joint;
};

Columns columns_of(const Rect &room) {
    Columns c{};
    double x = room.x0 + tag_width;
    for (double &tail : c.tails)
        tail = x, x += size_width;
    c.overhang = x;
    c.gap = x + size_width;
    c.joint = x + 2 * size_width;
    return c;
}

Rect box_at(double x, const Rect &room) {
    return {x, room.y1 - box_height, x + size_width, room.y1};
}

void draw_tail(FormPen &pen, const Rect &room, const CornerRow &row) {
    const Columns c = columns_of(room);
    const FoundEnd *found = row.found ? &*row.found : nullptr;
    const auto box = [&](int column, const char *letter, NotedLength FoundEnd::*number,
                         const TailPlace *place) {
        const auto rule = place ? std::optional(place->tall()) : std::nullopt;
        pen.box(box_at(c.tails[column], room), size_box, letter,
                known(found ? &(found->*number) : nullptr, rule, pen.words()));
    };
    const ProposedTail *tail = row.proposed.tail ? &*row.proposed.tail : nullptr;
    box(0, "n", &FoundEnd::shoulder_outside, tail ? &tail->shoulder_outside : nullptr);
    box(1, "p", &FoundEnd::end_outside, tail ? &tail->end_outside : nullptr);
    box(2, "q", &FoundEnd::shoulder_inside, tail ? &tail->shoulder_inside : nullptr);
    box(3, "r", &FoundEnd::end_inside, tail ? &tail->end_inside : nullptr);
}

bool has_noted_tail(const CornerRow &row) {
    return row.found && (row.found->shoulder_outside.is_taken() || row.found->shoulder_inside.is_taken() ||
                         row.found->end_outside.is_taken() || row.found->end_inside.is_taken());
}

/// Four heights of a tail, or why there are none; of a log that runs on its size there.
void draw_first_boxes(FormPen &pen, const Rect &room, const CornerRow &row) {
    const Columns c = columns_of(room);
    const Vec2 words_at{c.tails[0] + 1, room.y1 - box_height / 2 - print_line / 2};
    const double four = 4 * size_width - 2;
    if (!row.end && row.has_stations)
        return pen.print(words_at, four,
                         pen.words().say("runs on: its measures stand on the form of its wall"));
    if (!row.end) {
        pen.box(box_at(c.tails[0], room), size_box, "y", {"", pen.words().length(row.proposed.height)});
        pen.box(box_at(c.tails[1], room), size_box, "z", {"", pen.words().length(row.proposed.width)});
        pen.print({c.tails[2] + 1, words_at.y}, 2 * size_width - 2,
                  pen.words().say("runs on past the corner"));
        return;
    }
    if (row.proposed.shape == EndShape::tail || has_noted_tail(row)) return draw_tail(pen, room, row);
    pen.print(words_at, four,
              row.proposed.shape == EndShape::round
                  ? pen.words().say("no tail: its notch is scribed to the log below")
                  : pen.words().say("no tail: it ends square"));
}

} // namespace

std::vector<CornerRow> corner_rows(const Layout &layout, const FormLogs &logs, Index<CornerPlace> corner) {
    const std::string &name = layout.corners[corner].name;
    std::vector<CornerRow> rows;
    for (const auto i : layout.pieces.indices()) {
        const Piece &piece = layout.pieces[i];
        if (piece.timber) continue;
        const auto end = end_in(piece, name);
        if (!end && !runs_through(piece, name)) continue;
        const FormLog *log = log_of(logs.walls[piece.wall], i);
        CornerRow row{log ? log->found.tag : piece.tag, log && log->recorded, i, end, false, {}, {}};
        if (log && end) row.found = found_end(*log, i, *end);
        row.has_stations = log && !log->found.stations.empty();
        row.proposed = end ? proposed_end(layout, piece, *end) : proposed_at(layout, piece, corner);
        rows.push_back(std::move(row));
    }
    // A half log and the log that crosses over it stand on one foundation: only the raise tells which lies
    // below.
    std::ranges::stable_sort(rows, {}, [&](const CornerRow &row) { return layout.pieces[row.piece].raise; });
    return rows;
}

void draw_corner_heading(FormPen &pen, const Rect &room) {
    const Columns c = columns_of(room);
    const Words &words = pen.words();
    const double upper = room.y1 - print_line, lower = upper - print_line;
    const auto two_lines = [&](double x, double width, const std::string &first, const std::string &second) {
        pen.print({x + 1, upper}, width - 1.5, first, true);
        pen.print({x + 1, lower}, width - 1.5, second);
    };
    two_lines(room.x0 - 1, tag_width, words.say("tag"), words.say("from below up"));
    two_lines(c.tails[0], 2 * size_width, words.say("tail, outside face"), words.say("shoulder, end"));
    two_lines(c.tails[2], 2 * size_width, words.say("tail, inside face"), words.say("shoulder, end"));
    two_lines(c.overhang, size_width, words.say("overhang"), "");
    two_lines(c.gap, size_width, words.say("gap"), words.say("under it"));
    two_lines(c.joint, room.x1 - c.joint, words.say("joint, note"), words.say("how water leaves it"));
}

double corner_row_height(const Words &words, const CornerRow &row, double width) {
    constexpr double air = 0.6;
    const auto over = FormPen::lines_over(words, row.tag, tag_width - 2, width);
    return box_height + print_line + air + static_cast<double>(over) * print_line;
}

void draw_corner_row(FormPen &pen, const Rect &whole, const CornerRow &row) {
    const Rect room = pen.tag(whole, tag_width - 2, row.tag);
    const Columns c = columns_of(room);
    const Words &words = pen.words();
    const double low = room.y1 - box_height;
    pen.print_right({room.x0 + tag_width - 1, low - print_line}, tag_width - 2, words.say("proposed"));
    draw_first_boxes(pen, room, row);
    if (row.end) {
        const FoundEnd *found = row.found ? &*row.found : nullptr;
        pen.box(box_at(c.overhang, room), size_box, "s",
                known(found ? &found->overhang : nullptr, row.proposed.overhang, words));
    }
    pen.box(box_at(c.gap, room), size_box, "t", known(row.found ? &row.found->gap : nullptr, {}, words));
    std::string joint = row.found ? row.found->joint : "";
    if (row.found && !row.found->note.empty()) joint += (joint.empty() ? "" : "; ") + row.found->note;
    pen.box({c.joint, low, room.x1, room.y1}, words_box, "", {joint, ""});
    pen.line({room.x0, room.y0 + 0.2}, {room.x0 + tag_width - 2, room.y0 + 0.2}, Line::dimension);
}

void draw_arris_boxes(FormPen &pen, const Rect &room, const RecordedCorner *k, const std::string &first,
                      const std::string &second) {
    const Words &words = pen.words();
    const double top = room.y1 - print_line, low = top - box_height;
    double x = room.x0;
    const auto box = [&](double width, const char *layer, const char *letter, const std::string &label,
                         const Known &known) {
        pen.print({x + 1, top}, width - 1.5, label);
        pen.box({x, low, x + width, top}, layer, letter, known);
        x += width;
    };
    box(36, size_box, "u", words.say("over the plane"), known(k ? &k->level : nullptr, {}, words));
    box(36, words_box, "", words.say("which plane"), {k ? k->plane : "", ""});
    box(32, size_box, "v", words.say("lean, wall %1", first), known(k ? &k->lean_first : nullptr, {}, words));
    box(32, size_box, "w", words.say("lean, wall %1", second),
        known(k ? &k->lean_second : nullptr, {}, words));
    box(36, place_box, "x", words.say("over the height"), known(k ? &k->lean_over : nullptr, {}, words));
    box(room.x1 - x, words_box, "", words.say("note"), {k ? k->note : "", ""});
}

} // namespace roundlay::sheets
