#include "exporters/lists/level_table.h"

#include "kernel/layout/courses/standing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace roundlay {

namespace {

Voice voice_for(const Speech &speech) {
    return {speech.language, {.system = speech.units, .feet = false}};
}

/// Above level or under it.
std::string say_error(double mm, const Voice &voice) {
    const std::string size = voice.length(std::abs(mm));
    return size == voice.length(0) ? size : (mm < 0 ? "-" : "+") + size;
}

/// Which of the round's pieces are cut from it; nothing where the round is one log.
std::string pieces_of(const LogPlace &place, const Voice &voice) {
    if (place.pieces == 1) return "";
    const std::string first = std::to_string(place.first_piece);
    return place.first_piece == place.last_piece
               ? first
               : voice.say("%1 to %2", first, std::to_string(place.last_piece));
}

std::vector<Entry> seat_cells(const Layout &layout, const Voice &voice, const LogPlace &place,
                              const PileLog &log, const Seat &seat) {
    return {layout.walls[place.wall].name,
            number(place.round, 0),
            pieces_of(place, voice),
            log.mark,
            seat.butt == LogEnd::left ? voice.say("left") : voice.say("right"),
            voice.length(log.butt_height),
            voice.length(tip_height_at(log, place.length))};
}

std::vector<Entry> row(const Layout &layout, const Voice &voice, const std::vector<PileLog> &pile,
                       const Levelled &l, std::size_t i) {
    const LogPlace &place = l.places[i];
    const Seat &seat = l.after.seats[i];
    std::vector<Entry> entries = seat_cells(layout, voice, place, pile[seat.log.at()], seat);
    for (const Arrangement *all : {&l.before, &l.after})
        for (const auto &[top, error] : {std::pair(place.left_top, all->errors[i].left),
                                         std::pair(place.right_top, all->errors[i].right)}) {
            constexpr int decimals = 1;
            const bool none = !top; // an end beside an opening has no top to be level
            entries.push_back(none ? std::string() : say_error(error, voice));
            entries.push_back(none ? Entry(std::string()) : Entry(number(error, decimals)));
        }
    return entries;
}

std::vector<Column> level_columns(const Voice &voice) {
    return {{"wall", voice.say("Wall")},
            {"round", voice.say("Round")},
            {"pieces", voice.say("Pieces")},
            {"mark", voice.say("Log")},
            {"butt", voice.say("Butt")},
            {"butt_height", voice.say("At butt")},
            {"tip_height", voice.say("At tip")},
            {"before_left", voice.say("Before, left")},
            {"before_left_mm", ""},
            {"before_right", voice.say("right")},
            {"before_right_mm", ""},
            {"after_left", voice.say("After, left")},
            {"after_left_mm", ""},
            {"after_right", voice.say("right")},
            {"after_right_mm", ""}};
}

} // namespace

Table level_table(const Layout &layout, const Speech &speech, const std::vector<PileLog> &pile,
                  const Levelled &levelled) {
    const Voice voice = voice_for(speech);
    Table table{level_columns(voice), {}};
    for (std::size_t i = 0; i < levelled.places.size(); ++i)
        table.rows.push_back(row(layout, voice, pile, levelled, i));
    return table;
}

namespace {

/// Root mean square over all ends that add to a top.
double typical(const Levelled &l, double squares) {
    int ends = 0;
    for (const LogPlace &place : l.places)
        ends += place.left_top.has_value() + place.right_top.has_value();
    return std::sqrt(squares / std::max(ends, 1));
}

std::string places_in(int count, const Voice &voice) {
    return count == 1 ? voice.say("%1 place", count) : voice.say("%1 places", count);
}

/// What the most level arrangement would have been, and why it was not taken.
std::string given_up_words(const Levelled &l, const Voice &voice) {
    const LengthAmount largest = in_mm(l.most_level->worst), usual = in_mm(typical(l, l.most_level->squares));
    if (l.parted_otherwise)
        return voice.say(
            "The most level arrangement, largest %1, typical %2, cannot be laid: its logs are so high "
            "that openings would part other rounds than these were chosen for.",
            largest, usual);
    const std::string slivers = places_in(l.slivers_of_most_level, voice);
    if (l.slivers == 0)
        return voice.say("The most level arrangement, largest %1, typical %2, would leave a sliver of a log "
                         "beside an opening in %3; this one in none.",
                         largest, usual, slivers);
    return voice.say(
        "The most level arrangement, largest %1, typical %2, would leave a sliver of a log beside "
        "an opening in %3; this one in %4: none that was tried leaves fewer and is as level.",
        largest, usual, slivers, l.slivers);
}

/// What was given up for wood beside openings, or that nothing was found to be given up for.
std::string sliver_words(const Levelled &l, const Voice &voice) {
    if (l.most_level) return given_up_words(l, voice) + "\n";
    if (l.slivers == 0) return "";
    return voice.say("It leaves a sliver of a log beside an opening in %1; none that was "
                     "tried leaves fewer and is as level.",
                     places_in(l.slivers, voice)) +
           "\n";
}

std::string levelled_words(const Levelled &l, const Voice &voice) {
    const LengthAmount largest = in_mm(l.after.worst), usual = in_mm(typical(l, l.after.squares));
    if (l.proven && !l.most_level)
        return voice.say("Levelled: largest %1, typical %2; no other arrangement in these places is better.",
                         largest, usual);
    return voice.say("Levelled: largest %1, typical %2; none can be under %3, or typically under %4.",
                     largest, usual, in_mm(l.least_worst), in_mm(typical(l, l.least_squares)));
}

} // namespace

std::string level_words(const Levelled &l, const Layout &standing, const Speech &speech) {
    const Voice voice = voice_for(speech);
    std::string all = voice.say("Level is %1 a log, the mean of the pile. Errors are of a wall's top at its "
                                "ends, + above level.",
                                in_mm(l.log_height)) +
                      "\n" +
                      voice.say("Logs as they come: largest error %1, typical (root mean square) %2.",
                                in_mm(l.before.worst), in_mm(typical(l, l.before.squares))) +
                      "\n" + levelled_words(l, voice) + "\n" + sliver_words(l, voice);
    if (std::ranges::any_of(l.places, [](const LogPlace &p) { return p.pieces > 1; }))
        all += voice.say("Which rounds beside openings are one log and which several was settled by lengths "
                         "alone: other ways were not levelled.") +
               "\n";
    return all +
           voice.say("With these logs the shell stands %1.",
                     words_of(height_words(standing, speech.units), speech)) +
           "\n";
}

namespace {

/// One row, key by key.
class Summary {
  public:
    void add(const char *key, Entry value) {
        columns_.push_back({key, ""});
        row_.push_back(std::move(value));
    }
    void add_mm(const char *key, double mm) {
        constexpr int decimals = 1;
        add(key, number(mm, decimals));
    }
    Table table() const { return {columns_, {row_}}; }

  private:
    std::vector<Column> columns_;
    std::vector<Entry> row_;
};

} // namespace

Table level_summary(const Levelled &l, const Layout &standing) {
    const WallStanding stands = standing_in_all(standing);
    const Arrangement &most_level = l.most_level ? *l.most_level : l.after;
    Summary all;
    all.add_mm("log_height_mm", l.log_height);
    all.add_mm("before_largest_mm", l.before.worst);
    all.add_mm("before_typical_mm", typical(l, l.before.squares));
    all.add_mm("after_largest_mm", l.after.worst);
    all.add_mm("after_typical_mm", typical(l, l.after.squares));
    all.add_mm("least_largest_mm", l.least_worst);
    all.add_mm("least_typical_mm", typical(l, l.proven ? most_level.squares : l.least_squares));
    all.add("proven", std::string(l.proven && !l.most_level ? "yes" : "no"));
    all.add("slivers_beside_openings", number(l.slivers, 0));
    all.add("most_level_slivers", number(l.slivers_of_most_level, 0));
    all.add_mm("most_level_largest_mm", most_level.worst);
    all.add_mm("most_level_typical_mm", typical(l, most_level.squares));
    all.add_mm("stands_lowest_mm", stands.lowest);
    all.add_mm("stands_highest_mm", stands.highest);
    all.add_mm("height_by_rounds_mm", standing.height);
    return all.table();
}

} // namespace roundlay
