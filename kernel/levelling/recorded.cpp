#include "kernel/levelling/recorded.h"

#include "kernel/csv/csv_report.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/hewn_faces.h"
#include "kernel/layout/text.h"
#include "kernel/measure/character.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace roundlay {

namespace {

std::optional<Length> as_length(const std::optional<double> &mm) {
    return mm ? std::optional(Length::mm(*mm)) : std::nullopt;
}

/// The wall's own spelling of its name.
std::optional<std::string> wall_called(const Shell &shell, const std::string &name) {
    for (const Wall &wall : shell.walls)
        if (lower_case(wall.name) == lower_case(name)) return wall.name;
    for (const Partition &wall : shell.partitions)
        if (lower_case(wall.name) == lower_case(name)) return wall.name;
    return {};
}

std::string all_walls(const Shell &shell) {
    std::string text;
    for (const Wall &wall : shell.walls)
        text += (text.empty() ? "" : ", ") + wall.name;
    for (const Partition &wall : shell.partitions)
        text += ", " + wall.name;
    return text;
}

int pieces_in(const Layout &layout, const std::string &wall, int round) {
    return static_cast<int>(std::ranges::count_if(layout.pieces, [&](const Piece &p) {
        return is_log(p) && p.round == round && layout.walls[p.wall].name == wall;
    }));
}

int rounds_of(const Layout &layout, const std::string &wall) {
    int most = 0;
    for (const Piece &p : layout.pieces)
        if (!p.timber && layout.walls[p.wall].name == wall) most = std::max(most, p.round);
    return most;
}

/// Does the shell have such a log, and can it be as it was measured?
class Checks {
  public:
    Checks(const Shell &shell, CsvReport &report) : shell_(shell), layout_(lay_out(shell)), report_(report) {}

    void check(RecordedLog &row) {
        const auto wall = wall_called(shell_, row.wall);
        if (!wall)
            return report_.problem(row.line, "wall " + row.wall,
                                   "there is no wall \"" + row.wall + "\"; the walls are " +
                                       all_walls(shell_));
        row.wall = *wall;
        check_sizes(row);
        if (!layout_.pieces.empty()) check_place(row); // else the shell itself is told what is wrong with it
    }

  private:
    void check_place(const RecordedLog &row) {
        const int rounds = rounds_of(layout_, row.wall), pieces = pieces_in(layout_, row.wall, row.round);
        if (row.round > rounds)
            return report_.problem(row.line, "round " + row.wall,
                                   "wall " + row.wall + " has " + std::to_string(rounds) +
                                       " logs, one on another; there is no round " +
                                       std::to_string(row.round));
        if (row.piece.value_or(1) > pieces)
            report_.problem(row.line, "piece " + row.wall,
                            "wall " + row.wall + ", round " + std::to_string(row.round) + " has " +
                                std::to_string(pieces) + (pieces == 1 ? " piece" : " pieces") +
                                "; there is no piece " + std::to_string(*row.piece));
    }

    void check_sizes(const RecordedLog &row) {
        if (shell_.notch.kind == NotchKind::saddle && (row.left_height || row.left_width))
            return report_.problem(
                row.line, "saddle",
                "logs scoped over one another are even cylinders; give their diameter in place of heights "
                "and widths");
        const double wall = thickness_of(row.wall),
                     width = std::max(row.left_width.value_or(0), row.right_width.value_or(0));
        if (width > wall)
            report_.problem(row.line, "wide " + row.wall,
                            "the log is " + say(shell_, width) + " wide, more than wall " + row.wall + "'s " +
                                say(shell_, wall) +
                                "; state that wall's thickness as that of its widest log");
    }

    double thickness_of(const std::string &name) const {
        for (const Wall &wall : shell_.walls)
            if (wall.name == name) return wall.thickness.value_or(shell_.thickness).mm();
        for (const Partition &wall : shell_.partitions)
            if (wall.name == name) return wall.thickness.value_or(shell_.thickness).mm();
        return 0;
    }

    const Shell &shell_;
    Layout layout_;
    CsvReport &report_;
};

struct Ends {
    std::optional<double> left_height, right_height, left_width, right_width;
    bool any() const { return left_height || right_height || left_width || right_width; }
};

/// Where nobody said, the end with the larger section is the butt.
std::optional<LogEnd> butt_of(const std::optional<LogEnd> &said, const Ends &e) {
    if (said || !e.any()) return said;
    const double left = e.left_height.value_or(1) * e.left_width.value_or(1);
    const double right = e.right_height.value_or(1) * e.right_width.value_or(1);
    if (!e.left_height && !e.left_width) return LogEnd::right;
    if (!e.right_height && !e.right_width) return LogEnd::left;
    return left >= right ? LogEnd::left : LogEnd::right;
}

void set_ends(LogSizes &sizes, const std::optional<LogEnd> &said, const Ends &e) {
    sizes.butt = butt_of(said, e);
    const bool turned = sizes.butt == LogEnd::right;
    sizes.butt_height = as_length(turned ? e.right_height : e.left_height);
    sizes.tip_height = as_length(turned ? e.left_height : e.right_height);
    sizes.butt_width = as_length(turned ? e.right_width : e.left_width);
    sizes.tip_width = as_length(turned ? e.left_width : e.right_width);
}

OwnLog words_of(const RecordedLog &row) {
    OwnLog log;
    log.wall = row.wall, log.round = row.round, log.piece = row.piece;
    log.mark = row.mark, log.note = row.note;
    log.bow = as_length(row.bow);
    log.sizes.finish = row.finish;
    log.fabric = row.fabric;
    return log;
}

OwnLog whole_log(const RecordedLog &row) {
    OwnLog log = words_of(row);
    set_ends(log.sizes, row.butt, {row.left_height, row.right_height, row.left_width, row.right_width});
    log.sizes.diameter = as_length(row.diameter);
    return log;
}

/// The round whose logs an opening parts, from the outer ends of its first piece and its last.
OwnLog round_of_pieces(const std::vector<const RecordedLog *> &pieces, int in_round) {
    Ends ends;
    std::optional<LogEnd> butt;
    OwnLog log;
    for (const RecordedLog *row : pieces) {
        log.wall = row->wall, log.round = row->round;
        if (!butt) butt = row->butt;
        if (row->diameter) log.sizes.diameter = as_length(row->diameter);
        if (*row->piece == 1) ends.left_height = row->left_height, ends.left_width = row->left_width;
        if (*row->piece == in_round)
            ends.right_height = row->right_height, ends.right_width = row->right_width;
    }
    set_ends(log.sizes, butt, ends);
    return log;
}

bool says_something(const OwnLog &log) {
    OwnLog nothing;
    nothing.wall = log.wall, nothing.round = log.round, nothing.piece = log.piece;
    return log != nothing;
}

} // namespace

Recorded recorded(const Shell &shell, const std::vector<RecordedLog> &rows) {
    CsvReport report;
    Checks checks(shell, report);
    std::vector<RecordedLog> known = rows;
    for (RecordedLog &row : known)
        checks.check(row);
    Recorded result;
    result.problems = report.problems();
    if (!report.good()) return result;
    const Layout layout = lay_out(shell);
    std::map<std::pair<std::string, int>, std::vector<const RecordedLog *>> parted;
    std::map<std::pair<std::string, int>, bool> whole;
    const auto add = [&](const OwnLog &log, int line) {
        if (says_something(log)) result.logs.push_back(log), result.lines.push_back(line);
    };
    for (const RecordedLog &row : known) {
        if (row.piece)
            parted[{row.wall, row.round}].push_back(&row);
        else
            whole[{row.wall, row.round}] = true, add(whole_log(row), row.line);
    }
    for (const auto &[place, pieces] : parted) {
        if (!whole.contains(place))
            add(round_of_pieces(pieces, pieces_in(layout, place.first, place.second)), pieces.front()->line);
        for (const RecordedLog *row : pieces)
            add(words_of(*row), row->line);
    }
    return result;
}

namespace {

constexpr double measured_to = 3; ///< mm; hewn faces are not even to less. Common practice, no source.

double height_at(const Piece &piece, bool right) {
    const HewnFaces faces = hewn_faces(piece);
    const double x = right ? piece.blank.length : 0;
    return faces.top.at(x) - faces.under.at(x);
}

void compare(const Shell &shell, const Piece &piece, const RecordedLog &row, bool right,
             std::vector<CsvProblem> &found) {
    const auto &measured = right ? row.right_height : row.left_height;
    if (!measured || (right ? piece.far : piece.datum).kind != EndKind::jamb) return;
    const double drawn = height_at(piece, right);
    if (std::abs(drawn - *measured) <= measured_to) return;
    found.push_back({row.line, piece.tag + " was measured " + say(shell, *measured) + " high at its " +
                                   (right ? "right" : "left") + " end, and is drawn " + say(shell, drawn) +
                                   ": logs that an opening parts are drawn as one straight log"});
}

} // namespace

std::vector<CsvProblem> off_the_line(const Shell &shell, const Layout &layout,
                                     const std::vector<RecordedLog> &rows) {
    std::vector<CsvProblem> found;
    for (const RecordedLog &row : rows)
        for (const Piece &p : layout.pieces) {
            if (!is_log(p) || p.round != row.round || p.number != row.piece.value_or(0)) continue;
            if (lower_case(layout.walls[p.wall].name) != lower_case(row.wall)) continue;
            for (const bool right : {false, true})
                compare(shell, p, row, right, found);
        }
    return found;
}

} // namespace roundlay
