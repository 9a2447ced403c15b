#include "exporters/sheets/drawing/clash.h"

#include "exporters/sheets/drawing/number.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <variant>

namespace roundlay::sheets {
namespace {

// Boxes follow advances, which hold a little air of their own: they may touch by this much.
constexpr double touch = 0.02;
constexpr double apart = 2.5;       ///< between a mark and a note on one line: less reads as one
constexpr double readable_on = 0.5; ///< grey: letters on anything darker cannot be read

struct Placed {
    const Text *text;
    Rect box; ///< shrunk by `touch`
};

struct Stroke {
    Vec2 from, to;
    Line line;
    const Path *leader = nullptr;
};

Line line_of(const Item &item) {
    return std::visit(
        [](const auto &it) {
            if constexpr (requires { it.line; })
                return it.line;
            else
                return Line::dimension;
        },
        item);
}

const Path *leader_in(const Item &item) {
    const Path *path = std::get_if<Path>(&item);
    return path != nullptr && path->leader ? path : nullptr;
}

/// Letters on one line with less between them than parts two words.
bool read_as_one(const Placed &a, const Placed &b) {
    if (a.text->turn != b.text->turn || a.text->turn != 0) return false;
    const double low = std::max(a.box.y0, b.box.y0), high = std::min(a.box.y1, b.box.y1);
    const double between = std::max(a.box.x0, b.box.x0) - std::min(a.box.x1, b.box.x1);
    return high - low > std::min(a.box.height(), b.box.height()) / 2 && between < apart;
}

class Search {
  public:
    explicit Search(const Sheet &sheet) : sheet_(sheet) {
        for (const Item &item : sheet.items) {
            if (const Text *text = std::get_if<Text>(&item))
                texts_.push_back({text, box_of(*text).grown(-touch)});
            for (const auto &[from, to] : strokes_of(item))
                strokes_.push_back({from, to, line_of(item), leader_in(item)});
            if (const Fill *fill = std::get_if<Fill>(&item); fill && fill->grey < readable_on)
                add_borders(*fill);
        }
    }

    std::vector<Clash> run() {
        for (std::size_t i = 0; i < texts_.size(); ++i) {
            alone(texts_[i]);
            for (std::size_t k = i + 1; k < texts_.size(); ++k)
                if (texts_[i].box.overlaps(texts_[k].box))
                    add(Clash::Kind::text_over_text, texts_[i], texts_[k].text->words);
                else if (are_mark_and_note(*texts_[i].text, *texts_[k].text) &&
                         read_as_one(texts_[i], texts_[k]))
                    add(Clash::Kind::mark_beside_note, texts_[i], texts_[k].text->words);
            for (const Stroke &stroke : strokes_)
                if (crosses(texts_[i].box, stroke.from, stroke.to))
                    add(Clash::Kind::text_over_line, texts_[i], name_of(stroke.line));
        }
        leaders();
        lines_on_sheet();
        return std::move(found_);
    }

  private:
    static bool are_mark_and_note(const Text &a, const Text &b) {
        return (a.role == Role::mark && b.role == Role::note) ||
               (a.role == Role::note && b.role == Role::mark);
    }

    void leaders() {
        for (std::size_t i = 0; i < strokes_.size(); ++i)
            for (std::size_t k = i + 1; strokes_[i].leader != nullptr && k < strokes_.size(); ++k)
                if (strokes_[k].leader != nullptr && strokes_[k].leader != strokes_[i].leader &&
                    run_through(strokes_[i].from, strokes_[i].to, strokes_[k].from, strokes_[k].to))
                    found_.push_back({Clash::Kind::leader_through_leader, "", "", strokes_[i].from});
    }

    void add_borders(const Fill &fill) {
        for (const auto &ring : fill.rings)
            for (std::size_t i = 0; i < ring.size(); ++i)
                strokes_.push_back({ring[i], ring[(i + 1) % ring.size()], Line::strong});
    }

    void alone(const Placed &placed) {
        if (placed.text->height < least_lettering) add(Clash::Kind::too_small, placed, "");
        if (placed.text->role == Role::page) return; // belongs into the margin
        if (!sheet_.drawing.empty() && !sheet_.drawing.holds(placed.box))
            add(Clash::Kind::text_off_frame, placed, "frame");
        const Rect &block = sheet_.title_block;
        if (!block.empty() && block.overlaps(placed.box) && !block.holds(placed.box))
            add(Clash::Kind::text_on_block, placed, "title block");
    }

    void lines_on_sheet() {
        const Rect paper{0, 0, sheet_.size.width, sheet_.size.height};
        for (const Stroke &s : strokes_)
            if (!paper.holds(joined(joined(Rect::nothing(), s.from), s.to)))
                found_.push_back({Clash::Kind::line_off_sheet, "", name_of(s.line), s.from});
    }

    void add(Clash::Kind kind, const Placed &placed, const std::string &other) {
        found_.push_back({kind, placed.text->words, other, placed.box.centre()});
    }

    const Sheet &sheet_;
    std::vector<Placed> texts_;
    std::vector<Stroke> strokes_;
    std::vector<Clash> found_;
};

const char *words_for(Clash::Kind kind) {
    switch (kind) {
    case Clash::Kind::text_over_text:
        return "text over text";
    case Clash::Kind::text_over_line:
        return "line through text";
    case Clash::Kind::leader_through_leader:
        return "a leader through a leader";
    case Clash::Kind::mark_beside_note:
        return "a mark beside a note";
    case Clash::Kind::text_off_frame:
        return "text off the frame";
    case Clash::Kind::text_on_block:
        return "text across the title block's border";
    case Clash::Kind::line_off_sheet:
        return "line off the sheet";
    case Clash::Kind::too_small:
        return "lettering too small";
    }
    return "";
}

} // namespace

bool run_through(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
    constexpr double at_end = 1e-6;
    const Vec2 ab = b - a, cd = d - c;
    const auto side = [](Vec2 from, Vec2 way, Vec2 p) { return cross(way, p - from) / length(way); };
    const double ca = side(c, cd, a), cb = side(c, cd, b), ac = side(a, ab, c), ad = side(a, ab, d);
    const auto apart_by = [&](double p, double q) {
        return std::min(p, q) < -at_end && std::max(p, q) > at_end;
    };
    return apart_by(ca, cb) && apart_by(ac, ad);
}

std::vector<Clash> clashes(const Sheet &sheet) {
    return Search(sheet).run();
}

std::string described(const Clash &clash) {
    return std::string(words_for(clash.kind)) + ": '" + clash.text + "' / '" + clash.other + "' at " +
           number_text(clash.at.x, 1) + ", " + number_text(clash.at.y, 1);
}

} // namespace roundlay::sheets
