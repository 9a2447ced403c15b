#include "exporters/sheets/plan/round_plan.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/shell_view/scenes.h"
#include "exporters/sheets/shell_view/shell_scales.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double least_drawn = 0.9; ///< a peg smaller than this on paper is drawn this large
constexpr double slanting = 0.01; ///< sine: a log that is nearer to level or upright on paper does not slant
constexpr double cross_arm = 1.3; ///< of the centre lines beyond the peg

struct RoundWanted {
    const Layout &layout;
    const SeenShell &seen;
    const Words &words;
    int round;
    double scale;
    double lettering;
};

struct RoundBlock {
    Block block;
    bool complete = true; ///< every tag found room
};

class RoundDrawer {
  public:
    explicit RoundDrawer(const RoundWanted &wanted) : w_(wanted) {}

    RoundBlock draw() {
        for (const Stretch &s : w_.seen.edges)
            board_.add(Path{{w_.scale * s.from, w_.scale * s.to}, false, Line::visible, ""});
        add_pegs();
        bool complete = true;
        for (const Piece &piece : w_.layout.pieces)
            if (piece.round == w_.round) complete = add_tag(piece) && complete;
        add_lengths();
        const Rect drawn = bounds(board_.items());
        for (Item &item : north_arrow({drawn.x1 + 8, drawn.y1 - 22}))
            board_.add(std::move(item));
        return {{bounds(board_.items()), board_.finished()}, complete};
    }

  private:
    Vec2 paper(Vec3 p) const { return {p.x * w_.scale, p.y * w_.scale}; }

    /// Pegs that are driven through this round's logs.
    void add_pegs() {
        for (const Peg &peg : w_.layout.pegs) {
            if (w_.layout.pieces.at(static_cast<std::size_t>(peg.upper)).round != w_.round) continue;
            const Vec2 c = paper(peg.top);
            const double r = std::max(peg.diameter * w_.scale, least_drawn) / 2, arm = r + cross_arm;
            board_.add(Circle{c, r, Line::strong, ""});
            board_.add(Path{{{c.x - arm, c.y}, {c.x + arm, c.y}}, false, Line::dimension, ""});
            board_.add(Path{{{c.x, c.y - arm}, {c.x, c.y + arm}}, false, Line::dimension, ""});
        }
    }

    /// With an arrow toward the tip. Reads from below or from the right.
    Text tag_text(const Piece &piece) const {
        const double turn = reading_turn({piece.frame.x.x, piece.frame.x.y});
        const double reads = turn == 90 ? piece.frame.x.y : piece.frame.x.x; // the log's x along the text
        const bool tip_follows = piece.butt_at_datum == (reads > 0);
        Text text;
        text.words = tip_follows ? piece.tag + " \u2192" : "\u2190 " + piece.tag;
        text.height = w_.lettering;
        text.turn = turn == 90 ? 90 : 0; // level beside walls that slant
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.role = Role::mark;
        return text;
    }

    bool add_tag(const Piece &piece) {
        const Blank &blank = piece.blank;
        const Text text = tag_text(piece);
        const double half = text_width(text.words, text.height) / 2 / w_.scale; // of wood
        const Rect box = box_of(text); // how far it reaches toward its log
        const double reach =
            (std::abs(piece.frame.y.x) * box.width() + std::abs(piece.frame.y.y) * box.height()) / 2;
        const bool slants = std::min(std::abs(piece.frame.x.x), std::abs(piece.frame.x.y)) > slanting;
        std::vector<Vec2> within, beside;
        for (int i = 0; i <= 16; ++i) {
            const double part = 0.5 + (i % 2 == 0 ? 0.028 : -0.028) * i;
            const double x = part * blank.length;
            const bool fits = x - half > 0 && x + half < blank.length;
            if (fits && !slants) within.push_back(paper(piece.frame.to_world({x, blank.width / 2, 0})));
            for (const double away : {2.6, 4.2}) { // inward of the wall, where the plan is empty
                const double y = blank.width + (away + reach) / w_.scale;
                beside.push_back(paper(piece.frame.to_world({x, y, 0})));
            }
        }
        const bool room = blank.width * w_.scale > text.height + 0.8;
        return (room && board_.put(text, within, 0.25)) || board_.put(text, beside, 0.3);
    }

    void add_lengths() {
        const auto corners = outside_corners(w_.layout);
        for (std::size_t i = 0; i < corners.size(); ++i) {
            const Vec2 from = w_.scale * corners[i], to = w_.scale * corners[(i + 1) % corners.size()];
            add_wall_length(board_, from, to, w_.words.length(w_.layout.walls[i].length), 2.5);
        }
    }

    const RoundWanted &w_;
    Board board_;
};

struct Chosen {
    Block block;
    const Scale *scale = nullptr;
};

/// The largest scale at which the plan fits and every tag has room; else the largest that fits.
std::optional<Chosen> best_plan(const Layout &layout, const SeenShell &seen, const Words &words, int round,
                                const Rect &area, double highest) {
    std::optional<Chosen> fits;
    for (const Scale &scale : shell_scales(words.system()))
        for (const double lettering : {3.5, 2.5}) {
            RoundBlock made = RoundDrawer({layout, seen, words, round, scale.ratio, lettering}).draw();
            if (made.block.room.width() > area.width() || made.block.room.height() > highest) continue;
            if (made.complete) return Chosen{std::move(made.block), &scale};
            if (!fits) fits = Chosen{std::move(made.block), &scale};
        }
    return fits;
}

} // namespace

std::vector<Sheet> round_plans(const Shell &shell, const Layout &layout, const std::vector<Body> &bodies,
                               const SheetOptions &options) {
    std::vector<Sheet> sheets;
    const PaperSize size = paper_for(shell, options);
    const Words words(shell.units, options.denominator);
    const Rect area = inner_area(size);
    const double highest = area.height() - title_block_area(size).height();
    int last = 0;
    for (const Piece &piece : layout.pieces)
        last = std::max(last, piece.round);
    for (int round = 1; round <= last; ++round) {
        const SeenShell seen = seen_round(layout, bodies, round);
        const auto plan = best_plan(layout, seen, words, round, area, highest);
        if (!plan) continue;
        std::vector<Page> pages{empty_page(size)};
        pages.back().put(plan->block);
        put_on(pages, size,
               note_block("Arrows at the tags point from butt to tip. Circles are pegs driven through these "
                          "logs. Wall lengths are over the outside faces.",
                          62));
        TitleFields fields = options.fields;
        fields.title = "Round " + std::to_string(round);
        fields.supplement = "plan of its logs from above";
        fields.document_type = "Round plan";
        fields.number = "R-" + std::to_string(round);
        fields.scale = plan->scale->words;
        fields.symbol = false;
        fields.note = words.unit_note();
        fields.shell = layout.name;
        const std::string name = "Round " + std::to_string(round);
        for (Sheet &sheet : framed(pages, size, fields, {name, "round:" + std::to_string(round), "Rounds"}))
            sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
