#include "exporters/sheets/cut_sheet/face_views.h"

#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/cut_sheet/wood.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <stdexcept>

namespace roundlay::sheets {
namespace {

constexpr double caption_column = 25; ///< the least room left of the faces
constexpr double mark_column = 21;    ///< the least room right of them
constexpr double beside_mark = 4.5;   ///< for the word along the outer side of an end view
constexpr double end_caption = 20;    ///< for the name over an end view
constexpr double captions_over_outside = 14;
constexpr std::size_t most_breaks = 4;
constexpr double between_rows = 7;
constexpr double line_over_numbers = 1.5;

/// Room beside a cut for the number of its height.
double beside_cut(const SeenPiece &piece, const Words &words, double lettering) {
    return text_width(words.length(piece.features.piece->blank.height), lettering) + 6;
}

using Sayings = std::vector<std::string> (*)(const Words &words);

std::vector<std::string> end_captions(const Words &words) {
    return {name_of(View::datum_end, words), name_of(View::far_end, words)};
}

std::vector<std::string> face_captions(const Words &words) {
    return {name_of(View::top, words),   name_of(View::outside, words),
            name_of(View::under, words), name_of(View::inside, words),
            words.say("Right"),          words.say("Left")};
}

std::vector<std::string> side_marks(const Words &words) {
    return {words.say("outside"), words.say("right")};
}

double widest(const std::vector<std::string> &all, double lettering, bool bold) {
    double most = 0;
    for (const std::string &words : all)
        most = std::max(most, text_width(words, lettering, bold));
    return most;
}

/// The rooms are those of English: by how much more the longest of such words takes in this language.
double longer(Sayings said, const Words &words, double lettering, bool bold) {
    static const Words english(UnitSystem::metric);
    return std::max(0.0, widest(said(words), lettering, bold) - widest(said(english), lettering, bold));
}

double end_caption_in(const Words &words) {
    return end_caption + longer(end_captions, words, 2.5, true);
}

double caption_column_in(const Words &words) {
    return caption_column + longer(face_captions, words, 3.5, true);
}

double mark_column_in(const Words &words) {
    return mark_column + longer(side_marks, words, 2.5, false);
}

/// Running dimensions over or under the outside face.
struct Strip {
    std::vector<Station> stations;
    std::vector<std::string> numbers;
    RunningLine line;

    double depth() const { return numbers.empty() ? 0 : depth_of(numbers, line); }
};

Strip strip_of(const ViewsWanted &wanted, bool upper) {
    Strip strip;
    const double length = wanted.piece->features.piece->blank.length;
    for (const Station &s : stations_of(wanted.piece->features))
        if (s.from_top == upper && s.x >= wanted.from && s.x <= wanted.to) strip.stations.push_back(s);
    if (!upper && wanted.renamed) // told by their middles
        for (const Scope &s : wanted.piece->features.scopes)
            if (s.cut->use == ScopeUse::saddle) strip.stations.push_back({s.middle.outside, false});
    std::ranges::sort(strip.stations, {}, &Station::x);
    std::erase_if(strip.stations,
                  [&](const Station &s) { return shown_as(wanted, wanted.words->length(s.x)).empty(); });
    if (!upper && strip.stations.empty()) return strip;
    if (wanted.from <= 0) strip.stations.insert(strip.stations.begin(), Station{0, upper});
    if (upper && wanted.to >= length) strip.stations.push_back({length, true});
    for (const Station &s : strip.stations)
        strip.numbers.push_back(s.x == 0 ? wanted.words->length(0)
                                         : shown_as(wanted, wanted.words->length(s.x)));
    strip.line.side = upper ? Toward::up : Toward::down;
    strip.line.distance = room_for_cut_numbers(wanted.piece->features) + line_over_numbers;
    strip.line.lettering = wanted.lettering;
    return strip;
}

void add_strip(FaceBoard &face, Strip strip) {
    const Rect &outline = face.row(View::outside).outline;
    strip.line.edge = strip.line.side == Toward::up ? outline.y1 : outline.y0;
    if (!face.shows_datum) strip.line.start = face.left - 3;
    std::vector<Mark> marks;
    for (std::size_t i = 0; i < strip.stations.size(); ++i)
        marks.push_back({face.x(strip.stations[i].x), strip.numbers[i], strip.stations[i].x == 0});
    add_running_dimensions(face.board, marks, strip.line);
}

std::optional<FaceBoard> empty_board(const ViewsWanted &wanted) {
    const Blank &blank = wanted.piece->features.piece->blank;
    const bool datum = wanted.from <= 0, far = wanted.to >= blank.length;
    const double caption = end_caption_in(*wanted.words);
    const double end = std::max(blank.width * wanted.scale, caption) + beside_end_view + beside_mark;
    const double left =
        std::max(caption_column_in(*wanted.words), datum ? end + room_for_end_levels(wanted, End::datum) : 0);
    const double widths =
        far && log_width(wanted.piece->features, End::far) ? room_for_end_levels(wanted, End::far) : 0;
    const double right = std::max(mark_column_in(*wanted.words) + widths,
                                  far ? end + room_for_end_levels(wanted, End::far) : 0);
    const double near = beside_cut(*wanted.piece, *wanted.words, wanted.lettering);
    auto ruler = ruler_for({wanted.from, near}, {wanted.to, near},
                           places_shown(*wanted.piece, *wanted.words, wanted.lettering, wanted.scale),
                           wanted.scale, wanted.width - left - right, most_breaks);
    if (!ruler) return std::nullopt;
    FaceBoard face{wanted, std::move(*ruler), {}, {}, left, 0, datum, far, caption};
    return face;
}

void set_rows(FaceBoard &face, double upper, double lower) {
    double y = 0;
    for (const View view : order_of_faces(face.wanted.angle)) {
        FaceRow row = row_for(view, face.blank(), face.wanted.scale);
        if (view == View::outside) y -= upper;
        const double height = (row.high - row.low) * row.scale;
        row.outline = {face.left, y - height, face.right(), y};
        y -= height + (view == View::outside ? std::max(lower, between_rows) : between_rows);
        face.rows.push_back(row);
    }
}

void add_edges(FaceBoard &face) {
    for (const FaceRow &row : face.rows) {
        for (Path &path :
             edges_of(row, face.wanted.piece->faces.at(static_cast<std::size_t>(row.view)), face.ruler))
            face.board.add(std::move(path));
        for (Path &path : break_lines(row, face.ruler, !face.shows_datum, !face.shows_far))
            face.board.add(std::move(path));
    }
}

/// Columns of heights spread where marks lie close, at worst into the next face's.
bool texts_are_apart(const FaceBoard &face) {
    std::vector<Rect> boxes;
    for (const Item &item : face.board.items())
        if (const Text *text = std::get_if<Text>(&item)) boxes.push_back(box_of(*text));
    for (std::size_t i = 0; i < boxes.size(); ++i)
        for (std::size_t k = i + 1; k < boxes.size(); ++k)
            if (boxes[i].overlaps(boxes[k])) return false;
    return true;
}

Block finished(FaceBoard &face) {
    Block block;
    block.items = std::move(face.board).finished();
    block.room = bounds(block.items);
    block.room.x0 = 0;
    return block;
}

} // namespace

const FaceRow &FaceBoard::row(View view) const {
    for (const FaceRow &row : rows)
        if (row.view == view) return row;
    throw std::logic_error("no such row of faces");
}

std::string shown_as(const ViewsWanted &wanted, const std::string &number) {
    if (wanted.renamed == nullptr) return number;
    const auto known = wanted.renamed->find(number);
    return known == wanted.renamed->end() ? "" : known->second;
}

SeenPiece seen_piece(const Piece &piece, const Body &body, UnitSystem units) {
    SeenPiece seen{features_of(piece, units), &body, {}, {}};
    for (const View view : {View::top, View::outside, View::under, View::inside})
        seen.faces.at(static_cast<std::size_t>(view)) = face_lines(view, body, piece.blank);
    const auto end = [&](View view) {
        return tidied(edges_seen(whole_scene(body, view), projection_of(view)));
    };
    seen.ends = {end(View::datum_end), end(View::far_end)};
    return seen;
}

std::vector<Place> places_shown(const SeenPiece &piece, const Words &words, double lettering, double scale) {
    constexpr double beside_bore = 8;
    const double near = beside_cut(piece, words, lettering);
    std::vector<Place> places{{piece.body->centroid.x, beside_bore}};
    for (const WorkedPlace &place : places_of(piece.features))
        places.push_back({place.x, (place.cut ? near : beside_bore) + place.half * scale});
    return places;
}

std::optional<Views> face_views(const ViewsWanted &wanted) {
    auto face = empty_board(wanted);
    if (!face) return std::nullopt;
    const Strip upper = strip_of(wanted, true), lower = strip_of(wanted, false);
    const double least_below = room_for_cut_numbers(wanted.piece->features) + between_rows;
    set_rows(*face, std::max(upper.depth() + 3, captions_over_outside) - between_rows,
             std::max(least_below, lower.depth() + 3));
    add_edges(*face);
    add_reference_lines(*face);
    add_strip(*face, upper);
    if (!lower.numbers.empty()) add_strip(*face, lower);
    add_end_heights(*face);
    add_end_views(*face);
    add_captions(*face);
    if (!add_cut_numbers(*face) || !add_inner_heights(*face) || !add_pegs(*face) || !add_pockets(*face))
        return std::nullopt;
    name_end_line(*face);
    if (wanted.renamed == nullptr) add_balance_point(*face);
    add_up_arrows(*face);
    if (!texts_are_apart(*face)) return std::nullopt;
    return Views{finished(*face), face->ruler};
}

} // namespace roundlay::sheets
