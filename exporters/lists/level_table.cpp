#include "exporters/lists/level_table.h"

#include <cmath>

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

std::vector<Entry> row(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                       const Levelled &l, std::size_t i) {
    const LogPlace &place = l.places[i];
    const Seat &seat = l.after.seats[i];
    const PileLog &log = pile[static_cast<std::size_t>(seat.log)];
    const auto wall = static_cast<std::size_t>(place.wall);
    constexpr int decimals = 1;
    return {layout.walls[wall].name,
            number(place.round, 0),
            log.mark,
            std::string(seat.butt == LogEnd::left ? "left" : "right"),
            say(log.butt_height, units),
            say(tip_height_at(log, place.length), units),
            number(l.before.errors[i].left, decimals),
            number(l.before.errors[i].right, decimals),
            number(l.after.errors[i].left, decimals),
            number(l.after.errors[i].right, decimals)};
}

} // namespace

Table level_table(const Layout &layout, UnitSystem units, const std::vector<PileLog> &pile,
                  const Levelled &levelled) {
    Table table;
    table.columns = {{"wall", "Wall"},
                     {"round", "Round"},
                     {"mark", "Log"},
                     {"butt", "Butt"},
                     {"butt_height", "At butt"},
                     {"tip_height", "At tip"},
                     {"before_left_mm", "Before, left mm"},
                     {"before_right_mm", "right mm"},
                     {"after_left_mm", "After, left mm"},
                     {"after_right_mm", "right mm"}};
    for (std::size_t i = 0; i < levelled.places.size(); ++i)
        table.rows.push_back(row(layout, units, pile, levelled, i));
    return table;
}

std::string level_words(const Levelled &l, UnitSystem units) {
    const auto root_mean = [&](double squares) {
        return std::sqrt(squares / (2 * static_cast<double>(l.places.size())));
    };
    return "Level is " + say(l.log_height, units) +
           " a log, the mean of the pile. Errors are of a wall's top at its "
           "ends, + above level.\n"
           "Logs as they come: largest error " +
           say(l.before.worst, units) + ", typical (root mean square) " +
           say(root_mean(l.before.squares), units) + ".\n" + "Levelled: largest " +
           say(l.after.worst, units) + ", typical " + say(root_mean(l.after.squares), units) +
           (l.proven ? "; no other arrangement is better.\n"
                     : "; none can be under " + say(l.least_worst, units) + ", or typically under " +
                           say(root_mean(l.least_squares), units) + ".\n");
}

} // namespace roundlay
