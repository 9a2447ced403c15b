#include "exporters/lists/level_table.h"

#include "kernel/layout/courses/standing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay {

namespace {

LengthStyle style_of(UnitSystem units) {
    LengthStyle style;
    style.system = units;
    style.feet = false;
    return style;
}

std::string say(double mm, UnitSystem units) {
    return print_length(Length::mm(mm), style_of(units));
}

/// Above level or under it.
std::string say_error(double mm, UnitSystem units) {
    const std::string size = say(std::abs(mm), units);
    return size == say(0, units) ? size : (mm < 0 ? "-" : "+") + size;
}

/// Which of the round's pieces are cut from it; nothing where the round is one log.
std::string pieces_of(const LogPlace &place) {
    if (place.pieces == 1) return "";
    const std::string first = std::to_string(place.first_piece);
    return place.first_piece == place.last_piece ? first : first + " to " + std::to_string(place.last_piece);
}

std::vector<Entry> row(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                       const Levelled &l, std::size_t i) {
    const LogPlace &place = l.places[i];
    const Seat &seat = l.after.seats[i];
    const PileLog &log = pile[static_cast<std::size_t>(seat.log)];
    const auto wall = static_cast<std::size_t>(place.wall);
    std::vector<Entry> entries = {
        layout.walls[wall].name,
        number(place.round, 0),
        pieces_of(place),
        log.mark,
        std::string(seat.butt == LogEnd::left ? "left" : "right"),
        say(log.butt_height, units),
        say(tip_height_at(log, place.length), units),
    };
    for (const Arrangement *all : {&l.before, &l.after})
        for (const auto &[top, error] : {std::pair(place.left_top, all->errors[i].left),
                                         std::pair(place.right_top, all->errors[i].right)}) {
            constexpr int decimals = 1;
            const bool none = top < 0; // an end beside an opening has no top to be level
            entries.push_back(none ? std::string() : say_error(error, units));
            entries.push_back(none ? Entry(std::string()) : Entry(number(error, decimals)));
        }
    return entries;
}

} // namespace

Table level_table(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                  const Levelled &levelled) {
    Table table;
    table.columns = {{"wall", "Wall"},         {"round", "Round"},
                     {"pieces", "Pieces"},     {"mark", "Log"},
                     {"butt", "Butt"},         {"butt_height", "At butt"},
                     {"tip_height", "At tip"}, {"before_left", "Before, left"},
                     {"before_left_mm", ""},   {"before_right", "right"},
                     {"before_right_mm", ""},  {"after_left", "After, left"},
                     {"after_left_mm", ""},    {"after_right", "right"},
                     {"after_right_mm", ""}};
    for (std::size_t i = 0; i < levelled.places.size(); ++i)
        table.rows.push_back(row(layout, units, pile, levelled, i));
    return table;
}

namespace {

/// Root mean square over all ends that add to a top.
double typical(const Levelled &l, double squares) {
    int ends = 0;
    for (const LogPlace &place : l.places)
        ends += (place.left_top >= 0) + (place.right_top >= 0);
    return std::sqrt(squares / std::max(ends, 1));
}

/// What was given up for wood beside openings, or that nothing was found to be given up for.
std::string sliver_words(const Levelled &l, UnitSystem units) {
    const auto places = [](int count) { return std::to_string(count) + (count == 1 ? " place" : " places"); };
    const std::string none = "none that was tried leaves fewer and is as level";
    if (l.most_level && l.parted_otherwise)
        return "The most level arrangement, largest " + say(l.most_level->worst, units) + ", typical " +
               say(typical(l, l.most_level->squares), units) +
               ", cannot be laid: its logs are so high that openings would part other rounds than these were "
               "chosen for.\n";
    if (l.most_level)
        return "The most level arrangement, largest " + say(l.most_level->worst, units) + ", typical " +
               say(typical(l, l.most_level->squares), units) +
               ", would leave a sliver of a log beside an "
               "opening in " +
               places(l.slivers_of_most_level) + "; this one in " +
               (l.slivers ? std::to_string(l.slivers) + ": " + none : "none") + ".\n";
    if (l.slivers == 0) return "";
    return "It leaves a sliver of a log beside an opening in " + places(l.slivers) + "; " + none + ".\n";
}

std::string bound_words(const Levelled &l, UnitSystem units) {
    if (l.proven && !l.most_level) return "; no other arrangement in these places is better.\n";
    return "; none can be under " + say(l.least_worst, units) + ", or typically under " +
           say(typical(l, l.least_squares), units) + ".\n";
}

} // namespace

std::string level_words(const Levelled &l, const Layout &standing, UnitSystem units) {
    return "Level is " + say(l.log_height, units) +
           " a log, the mean of the pile. Errors are of a wall's top at its "
           "ends, + above level.\n"
           "Logs as they come: largest error " +
           say(l.before.worst, units) + ", typical (root mean square) " +
           say(typical(l, l.before.squares), units) + ".\n" + "Levelled: largest " +
           say(l.after.worst, units) + ", typical " + say(typical(l, l.after.squares), units) +
           bound_words(l, units) + sliver_words(l, units) +
           (std::ranges::any_of(l.places, [](const LogPlace &p) { return p.pieces > 1; })
                ? "Which rounds beside openings are one log and which several was settled by lengths alone: "
                  "other ways were "
                  "not levelled.\n"
                : "") +
           "With these logs the shell stands " + height_words(standing, units) + ".\n";
}

Table level_summary(const Levelled &l, const Layout &standing) {
    constexpr int decimals = 1;
    const WallStanding stands = standing_in_all(standing);
    Table table;
    std::vector<Entry> row;
    const auto add = [&](const char *key, Entry value) {
        table.columns.push_back({key, ""});
        row.push_back(std::move(value));
    };
    add("log_height_mm", number(l.log_height, decimals));
    add("before_largest_mm", number(l.before.worst, decimals));
    add("before_typical_mm", number(typical(l, l.before.squares), decimals));
    add("after_largest_mm", number(l.after.worst, decimals));
    add("after_typical_mm", number(typical(l, l.after.squares), decimals));
    add("least_largest_mm", number(l.least_worst, decimals));
    const Arrangement &most_level = l.most_level ? *l.most_level : l.after;
    add("least_typical_mm", number(typical(l, l.proven ? most_level.squares : l.least_squares), decimals));
    add("proven", std::string(l.proven && !l.most_level ? "yes" : "no"));
    add("slivers_beside_openings", number(l.slivers, 0));
    add("most_level_slivers", number(l.slivers_of_most_level, 0));
    add("most_level_largest_mm", number(most_level.worst, decimals));
    add("most_level_typical_mm", number(typical(l, most_level.squares), decimals));
    add("stands_lowest_mm", number(stands.lowest, decimals));
    add("stands_highest_mm", number(stands.highest, decimals));
    add("height_by_rounds_mm", number(standing.height, decimals));
    table.rows.push_back(std::move(row));
    return table;
}

} // namespace roundlay
