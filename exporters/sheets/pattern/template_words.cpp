#include "exporters/sheets/pattern/template_words.h"

#include "exporters/sheets/drawing/clash.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/listed.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/one_to_one/full_size.h"
#include "kernel/geometry/ring.h"

#include <algorithm>
#include <optional>

namespace roundlay::sheets {
namespace {

constexpr double within_sheet = 2;       ///< mm that words keep off the sheet's borders
constexpr std::size_t heading_lines = 2; ///< its name and where it belongs
constexpr double step = 1.5;             ///< mm: how finely places are looked for

struct Lettered {
    std::string words;
    double height;
};

Rect common(const Rect &a, const Rect &b) {
    return {std::max(a.x0, b.x0), std::max(a.y0, b.y0), std::min(a.x1, b.x1), std::min(a.y1, b.y1)};
}

std::vector<Lettered> lines_of(const PrintedShape &shape, const Words &words, double width,
                               double name_height) {
    const Pattern &pattern = shape.pattern;
    std::vector<Lettered> lines{{shape.face.name, name_height},
                                {pattern.where, name_height > 3.5 ? 3.5 : least_lettering}};
    if (!shape.as_it_is.empty())
        for (const std::string &line :
             wrapped(words.say("also %1", listed(shape.as_it_is)), width, least_lettering))
            lines.push_back({line, least_lettering});
    if (!shape.turned_over.empty())
        for (const std::string &line :
             wrapped(words.say("turned over %1", listed(shape.turned_over)), width, least_lettering))
            lines.push_back({line, least_lettering});
    const std::size_t count = pattern.tags.size();
    const std::string tags = listed(pattern.tags);
    const std::string pieces =
        count == 1 ? words.say("%1 piece: %2", count, tags) : words.say("%1 pieces: %2", count, tags);
    for (const std::string &line : wrapped(pieces, width, least_lettering))
        lines.push_back({line, least_lettering});
    return lines;
}

Text text_of(const Lettered &line, Vec2 at) {
    Text text = lettered(line.words, at, line.height, line.height > 3, Role::note);
    text.upright = Upright::middle;
    return text;
}

/// Where a sheet beside this one makes it bear ticks along its borders.
std::vector<Rect> ticks_of(const Rect &sheet, const std::vector<Rect> &sheets) {
    constexpr double hair = 0.3;
    std::vector<Rect> all;
    const auto upright = [&](double x) {
        all.push_back({x - hair, sheet.y0, x + hair, sheet.y0 + tile_tick});
        all.push_back({x - hair, sheet.y1 - tile_tick, x + hair, sheet.y1});
    };
    const auto level = [&](double y) {
        all.push_back({sheet.x0, y - hair, sheet.x0 + tile_tick, y + hair});
        all.push_back({sheet.x1 - tile_tick, y - hair, sheet.x1, y + hair});
    };
    for (const Rect &other : sheets) {
        if (other.x0 < sheet.x0) upright(sheet.x0 + tile_overlap);
        if (other.x0 > sheet.x0) upright(sheet.x1 - tile_overlap);
        if (other.y0 > sheet.y0) level(sheet.y1 - tile_overlap);
        if (other.y0 < sheet.y0) level(sheet.y0 + tile_overlap);
    }
    return all;
}

class Placer {
  public:
    Placer(const Board &board, const PatternFace &face, const std::vector<Rect> &sheets, const Rect &window)
        : board_(board), ring_(face.outline), sheets_(sheets), window_(window) {}

    /// As many of the lines as find room under one another, in their order.
    std::vector<Text> placed(const std::vector<Lettered> &lines, double left) const {
        std::vector<Text> texts;
        double y = window_.y1;
        for (const Lettered &line : lines) {
            std::optional<Text> text;
            for (y -= line.height / 2; !text && y - line.height / 2 > window_.y0; y -= text ? 0 : step)
                text = fitting(line, {left, y});
            if (!text) break;
            texts.push_back(*text);
            y = text->at.y - 1.2 * line.height;
        }
        return texts;
    }

    bool is_free(const Rect &box) const {
        const Vec2 corners[] = {{box.x0, box.y0}, {box.x1, box.y0}, {box.x1, box.y1}, {box.x0, box.y1}};
        return window_.holds(box) && board_.is_free(box, true) && !is_on_a_tick(box) &&
               std::all_of(std::begin(corners), std::end(corners),
                           [&](Vec2 p) { return is_inside(ring_, p); });
    }

  private:
    bool is_on_a_tick(const Rect &box) const {
        return std::any_of(sheets_.begin(), sheets_.end(), [&](const Rect &sheet) {
            const auto ticks = sheet.holds(box) ? ticks_of(sheet, sheets_) : std::vector<Rect>();
            return std::any_of(ticks.begin(), ticks.end(),
                               [&](const Rect &tick) { return tick.overlaps(box); });
        });
    }

    std::optional<Text> fitting(const Lettered &line, Vec2 at) const {
        const Text text = text_of(line, at);
        if (!is_free(box_of(text).grown(0.4))) return std::nullopt;
        return text;
    }

    const Board &board_;
    const std::vector<Vec2> &ring_;
    const std::vector<Rect> &sheets_;
    Rect window_;
};

bool has_lines(const Board &board, const Rect &window) {
    return std::any_of(board.items().begin(), board.items().end(), [&](const Item &item) {
        const auto strokes = strokes_of(item);
        return std::any_of(strokes.begin(), strokes.end(),
                           [&](const auto &s) { return crosses(window, s.first, s.second); });
    });
}

/// The sheets' windows within the outline, the largest first; only of sheets that show some of it.
std::vector<Rect> rooms_of(const Board &board, const std::vector<Rect> &windows) {
    const Rect box = bounds(board.items());
    std::vector<Rect> all;
    for (const Rect &window : windows)
        if (const Rect room = common(window.grown(-within_sheet), box);
            !room.empty() && has_lines(board, window))
            all.push_back(room);
    std::stable_sort(all.begin(), all.end(), [](const Rect &a, const Rect &b) {
        return a.width() * a.height() > b.width() * b.height();
    });
    return all;
}

/// One way to lay the words out: how wide, from where, and how large their name is.
struct Try {
    Rect room;
    double left = 0, width = 0, name_height = 7;
};

std::vector<Try> tries_in(const std::vector<Rect> &rooms) {
    std::vector<Try> all;
    for (const double height : {7.0, 3.5})
        for (const Rect &room : rooms)
            for (const double width : {0.55, 0.75, 0.4, 0.95, 0.28})
                for (const double left : {0.22, 0.02, 0.4, 0.12, 0.6})
                    if (left + width <= 1)
                        all.push_back({room, room.x0 + left * room.width(), width * room.width(), height});
    return all;
}

/// The lines that found room; where that is not all, cut short so that the last one says so.
std::vector<Text> best_words(const Board &board, const PrintedShape &shape, const Words &words,
                             const std::vector<Rect> &sheets, const std::vector<Try> &tries) {
    std::vector<Text> best;
    std::size_t most = 0;
    for (const Try &way : tries) {
        std::vector<Lettered> lines = lines_of(shape, words, way.width, way.name_height);
        const Placer placer(board, shape.face, sheets, way.room);
        std::vector<Text> texts = placer.placed(lines, way.left);
        if (texts.size() == lines.size()) return texts;
        const Lettered more{words.say("and more, see the list of templates"), least_lettering};
        for (std::size_t n = texts.size(); n > heading_lines && texts.size() != lines.size(); --n) {
            lines.resize(n);
            lines.back() = more;
            texts = placer.placed(lines, way.left);
        }
        std::size_t letters = 0;
        for (const Text &text : texts)
            letters += text.words.size();
        if (letters <= most) continue;
        most = letters;
        best = std::move(texts);
    }
    return best;
}

void add_arrow(Board &board, const PatternFace &face, const std::string &up_word,
               const std::vector<Rect> &sheets, const std::vector<Rect> &rooms) {
    const double word = text_width(up_word, least_lettering);
    for (const Rect &room : rooms)
        for (const double part : {0.2, 0.12, 0.86, 0.06, 0.5})
            for (const double up : {0.5, 0.3, 0.7, 0.1}) {
                const Vec2 foot{room.x0 + room.width() * part, room.y0 + up * room.height() - 10};
                if (!Placer(board, face, sheets, room)
                         .is_free({foot.x - 3, foot.y - 1, foot.x + 3 + word, foot.y + 21}))
                    continue;
                board.add(Path{{foot, foot + Vec2{0, 20}}, false, Line::strong, ""});
                board.add(arrowhead(foot + Vec2{0, 20}, {0, 1}));
                board.add(text_of({up_word, least_lettering}, foot + Vec2{1.5, 8}));
                return;
            }
}

} // namespace

void add_template_words(Board &board, const PrintedShape &shape, const Words &words,
                        const std::vector<Rect> &windows) {
    const std::vector<Rect> rooms = rooms_of(board, windows);
    for (const Text &text : best_words(board, shape, words, windows, tries_in(rooms)))
        board.add(text);
    if (shape.pattern.stands) add_arrow(board, shape.face, words.say("up"), windows, rooms);
}

} // namespace roundlay::sheets
