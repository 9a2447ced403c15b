#include "exporters/sheets/form/log_card.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/form/card_measures.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr std::size_t least_zones = 2;

} // namespace

std::string card_letters(const Words &words) {
    return words.say(
        "a height and b width of the log, at its shoulder or where it ends at an opening; c length "
        "over all; d length between its shoulders; e places along the log, from the end that is "
        "ticked; f height of the log where a jamb meets it; g level of its top at each end over the "
        "level plane, + up, - down; h gap to the log under it, at mid-length; i bow, and the face that it "
        "bows out to; k wind, how far an edge at one end stands out of the plane of the other; of pegs that "
        "do not hold: m missing, b broken, s sawn. What a frame or another log hides stays empty until it is "
        "open.");
}

LogCard::LogCard(const Draft &draft, const Record &record, const Words &words, const FormLog &log,
                 bool inside_out)
    : draft_(draft), record_(record), words_(words), log_(log),
      zones_(log.found.zones), shown_{log.ends[0], log.ends[1]} {
    if (inside_out) std::swap(shown_[0], shown_[1]);
    set_noted_stations();
    set_stations(inside_out);
}

LogCard::LogCard(const Draft &draft, const Record &record, const Words &words)
    : draft_(draft), record_(record), words_(words), blank_(true) {}

/// The end that places are measured from: as noted, else the first on the sheet.
std::string LogCard::zero_name() const {
    return log_.found.zero.empty() ? shown_[0].name : log_.found.zero;
}

/// From the log's zero; nothing where nobody knows which end of the plan's log that is.
std::optional<double> LogCard::place_in_log(Index<Piece> piece, double from_datum) const {
    const std::string zero = zero_name();
    const bool one_piece = log_.pieces.size() == 1;
    for (const FormEnd &end : log_.ends) {
        if (zero.empty() || end.name != zero || !end.of_plan || !one_piece) continue;
        const double length = draft_.layout.pieces[piece].blank.length;
        return *end.of_plan == End::far ? length - from_datum : from_datum;
    }
    return {};
}

void LogCard::set_noted_stations() {
    for (const FoundStation &station : log_.found.stations)
        stations_.push_back(
            {words_.say("measured place"), known(station.at, {}, words_), known(station.height, {}, words_)});
}

std::string LogCard::towards(std::size_t opening, const Piece &piece, bool near_datum) const {
    const WallPlace &wall = draft_.layout.walls[piece.wall];
    const std::string &corner = draft_.layout.corners[near_datum ? wall.start_corner : wall.end_corner].name;
    return words_.say("%1, jamb towards %2", words_.name(name_of(draft_.shell, opening)),
                      words_.name(corner_name(record_, draft_.layout, corner)));
}

/// Jambs that nobody has measured it at; where somebody has measured on it, that is theirs to say.
void LogCard::set_stations(bool inside_out) {
    if (!stations_.empty()) return;
    for (const Index<Piece> i : log_.pieces) {
        const Piece &piece = draft_.layout.pieces[i];
        std::vector<JambPlace> jambs = jamb_places(draft_.shell, draft_.layout, piece);
        if (inside_out) std::ranges::reverse(jambs);
        for (const JambPlace &jamb : jambs)
            stations_.push_back({towards(jamb.opening, piece, jamb.near_datum),
                                 known(nullptr, place_in_log(i, jamb.at), words_),
                                 known(nullptr, jamb.height, words_)});
    }
}

std::size_t LogCard::zone_rows() const {
    return goes_on_ ? zones_.size() : std::max(least_zones, zones_.size() + spare_);
}

std::size_t LogCard::station_rows(double width) const {
    const auto in_a_row = static_cast<std::size_t>((width - tag_width) / (place_width + size_width));
    return (stations_.size() + in_a_row - 1) / in_a_row;
}

double LogCard::height(double width) const {
    const double lines = static_cast<double>((goes_on_ ? 0 : 3) + station_rows(width)) * line_height;
    const double more = static_cast<double>(long_tag(width).size()) * print_line +
                        (has_unnamed_end() && !goes_on_ ? print_line + box_height : 0);
    return more + lines + zone_label + static_cast<double>(zone_rows()) * box_height + between_cards;
}

std::optional<LogCard> LogCard::part_off(const Rect &room) {
    if (height(room.width()) <= room.height()) return {};
    LogCard rest = *this;
    rest.goes_on_ = true;
    rest.zones_.clear(), rest.stations_.clear();
    while (height(room.width()) > room.height() && !zones_.empty()) {
        rest.zones_.insert(rest.zones_.begin(), zones_.back());
        zones_.pop_back(), spare_ = 0;
    }
    while (height(room.width()) > room.height() && !stations_.empty()) {
        rest.stations_.insert(rest.stations_.begin(), stations_.back());
        stations_.pop_back();
    }
    return rest;
}

void LogCard::draw(FormPen &pen, const Rect &room) const {
    const double x = room.x0 + tag_width;
    pen.line({room.x0, room.y0}, {room.x1, room.y0}, Line::strong);
    double y = draw_long_tag(pen, room);
    draw_tag(pen, {room.x0, room.y0, room.x1, y + between_cards / 2});
    if (!goes_on_ && has_unnamed_end()) y = draw_names(pen, x, y);
    if (!goes_on_) y = draw_sizes(pen, x, y, room.x1);
    if (!goes_on_) y = draw_shape(pen, x, y, room.x1);
    y = draw_stations(pen, x, y, room.x1);
    if (!goes_on_) y = draw_looks(pen, x, y, room.x1);
    draw_zones(pen, x, y, room.x1);
}

/// What does not fit beside the boxes stands over them, whole.
std::vector<std::string> LogCard::long_tag(double width) const {
    if (wrapped(log_.found.tag, tag_width - 2, least_lettering, true).size() < 3) return {};
    return wrapped(words_.say("tag: %1", log_.found.tag), width, least_lettering, true);
}

double LogCard::draw_long_tag(FormPen &pen, const Rect &room) const {
    double y = room.y1 - between_cards / 2;
    for (const std::string &line : long_tag(room.width()))
        pen.print({room.x0, y -= print_line}, room.width(), line, true);
    return y;
}

/// Where nobody says yet where the ends lie.
double LogCard::draw_names(FormPen &pen, double x, double y) const {
    const double top = y - print_line, low = top - box_height;
    for (const int end : {0, 1}) {
        const std::string label =
            end == 0 ? words_.say("corner of one end") : words_.say("corner of the other end");
        pen.print({x + 1, top}, 2 * size_width - 2, label, true);
        pen.box({x, low, x + 2 * size_width, top}, words_box, "", {shown_[end].name, ""});
        x += 2 * size_width;
    }
    return low;
}

/// Its tag as large as it fits, and which round it lies in.
void LogCard::draw_tag(FormPen &pen, const Rect &room) const {
    const double width = tag_width - 2;
    double y = room.y1 - between_cards / 2 - print_line;
    pen.print({room.x0, y}, width,
              goes_on_                  ? words_.say("more of")
              : blank_ || log_.recorded ? words_.say("tag")
                                        : words_.say("tag, proposed"));
    if (blank_) {
        pen.box({room.x0, y - box_height, room.x0 + width, y}, words_box, "");
        pen.print({room.x0, y -= box_height + print_line}, width, words_.say("round"));
        pen.box({room.x0, y - box_height, room.x0 + width, y}, words_box, "");
        return;
    }
    const bool large = text_width(log_.found.tag, 4.5, true) <= width;
    if (large) {
        y -= 6.5;
        pen.large({room.x0, y}, log_.found.tag);
    } else if (long_tag(width).empty()) {
        y -= pen.paragraph({room.x0, y}, width, log_.found.tag, true);
    } else {
        pen.print({room.x0, y -= print_line}, width, log_.found.tag, true);
    }
    const double names = has_unnamed_end() && !goes_on_ ? print_line + box_height : 0;
    const double first = room.y1 - between_cards / 2 - names - line_height; // under the first row of boxes
    if (log_.found.place.round)
        pen.print({room.x0, std::min(first, y) - print_line}, width,
                  words_.say("round %1", *log_.found.place.round));
    if (!goes_on_ && !log_.pieces.empty())
        pen.print_right({room.x0 + tag_width - 1, first}, width, words_.say("proposed"));
}

/// Beside what a row proposes.
void LogCard::draw_proposed(FormPen &pen, double x, double low) const {
    pen.print_right({x - 1, low - print_line}, tag_width - 2, words_.say("proposed"));
}

std::string LogCard::end_name(int i) const {
    if (!has_unnamed_end()) return words_.name(shown_[i].name);
    return i == 0 ? words_.say("one end") : words_.say("other end");
}

/// Names that are too long beside a square to tick are told once, over the boxes of their end.
bool LogCard::has_long_name() const {
    constexpr double room = 13;
    return !has_unnamed_end() && std::ranges::any_of(shown_, [&](const FormEnd &end) {
        return text_width(words_.name(end.name), least_lettering) > room;
    });
}

std::string LogCard::short_name(int i) const {
    if (has_unnamed_end()) return i == 0 ? words_.say("one") : words_.say("other");
    return has_long_name() ? std::to_string(i + 1) : end_name(i);
}

std::string LogCard::end_label(int i) const {
    const std::string label = whole_end_label(i);
    return has_long_name() ? words_.say("%1: %2", i + 1, label) : label;
}

std::string LogCard::whole_end_label(int i) const {
    if (has_unnamed_end()) return end_name(i);
    const FormEnd &end = shown_[i];
    if (end.piece && end.of_plan) {
        const Piece &piece = draft_.layout.pieces[*end.piece];
        const EndKind kind = (*end.of_plan == End::datum ? piece.datum : piece.far).kind;
        if (kind == EndKind::jamb || kind == EndKind::step)
            return words_.say("its end at %1", words_.name(end.name));
    }
    return words_.say("its end in %1", words_.name(end.name));
}

void LogCard::draw_end(FormPen &pen, double x, double y, int i) const {
    const FormEnd &end = shown_[i];
    std::optional<double> height, width;
    if (end.piece && end.of_plan) {
        const ProposedEnd p = proposed_end(draft_.layout, draft_.layout.pieces[*end.piece], *end.of_plan);
        height = p.height, width = p.width;
    }
    const FoundEnd *found = end.found ? &*end.found : nullptr;
    pen.print({x + 1, y - print_line}, 2 * size_width - 2, end_label(i), true);
    const double top = y - print_line, low = top - box_height;
    pen.box({x, low, x + size_width, top}, size_box, "a",
            known(found ? &found->height : nullptr, height, words_));
    pen.box({x + size_width, low, x + 2 * size_width, top}, size_box, "b",
            known(found ? &found->width : nullptr, width, words_));
}

/// Which of its two ends, by their names.
void LogCard::draw_choice(FormPen &pen, const Rect &room, const std::string &label,
                          const std::string &chosen) const {
    pen.print({room.x0, room.y1}, room.width(), label);
    std::vector<std::vector<FormPen::Tick>> rows;
    for (const int i : {0, 1})
        rows.push_back({{short_name(i), !chosen.empty() && chosen == shown_[i].name}});
    pen.ticks(room, rows);
}

double LogCard::draw_sizes(FormPen &pen, double x, double y, double right) const {
    const double top = y - print_line, low = top - box_height;
    for (const int end : {0, 1}) {
        draw_end(pen, x, y, end);
        x += 2 * size_width;
    }
    std::optional<double> over_all, between;
    if (log_.pieces.size() == 1) {
        const Piece &piece = draft_.layout.pieces[log_.pieces.front()];
        over_all = piece.blank.length;
        between = piece.far.shoulder - piece.datum.shoulder;
    }
    pen.print({x + 1, top}, place_width - 1, words_.say("over all"));
    pen.box({x, low, x + place_width, top}, place_box, "c", known(log_.found.length, over_all, words_));
    x += place_width;
    pen.print({x + 1, top}, place_width - 1, words_.say("shoulders"));
    pen.box({x, low, x + place_width, top}, place_box, "d",
            known(log_.found.between_shoulders, between, words_));
    x += place_width + 1.5;
    const double half = (right - x) / 2;
    draw_choice(pen, {x, low, x + half - 0.5, top}, words_.say("thick end"), log_.found.butt);
    draw_choice(pen, {x + half, low, right, top}, words_.say("e from"), log_.found.zero);
    return y - line_height;
}

} // namespace roundlay::sheets
