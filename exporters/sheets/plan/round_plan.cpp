#include "exporters/sheets/plan/round_plan.h"

#include "exporters/sheets/drawing/columns.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/plan/plan_frame.h"
#include "exporters/sheets/plan/round_measures.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/shell_view/bore_symbols.h"
#include "exporters/sheets/shell_view/scenes.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double clear_of_lines = 1.4; ///< over and under a tag in its log, else they strike it through
constexpr double slanting = 0.01; ///< sine: a log that is nearer to level or upright on paper does not slant

struct RoundWanted {
    const Shell &shell;
    const Layout &layout;
    const SeenShell &seen;
    const Words &words;
    int round;
    double scale;
    double lettering;
};

struct RoundBlock {
    SharedBlock block;
    std::vector<std::string> without;    ///< tags and marks that found no room
    std::vector<std::string> unmeasured; ///< measures that found none
};

class RoundDrawer {
  public:
    explicit RoundDrawer(const RoundWanted &wanted) : w_(wanted) {}

    RoundBlock draw() {
        for (const Stretch &s : w_.seen.edges)
            board_.add(Path{{w_.scale * s.from, w_.scale * s.to}, false, Line::visible, ""});
        add_pegs();
        add_bores();
        for (const Piece &piece : w_.layout.pieces)
            if (piece.round == w_.round && !add_tag(piece)) without_.push_back(piece.tag);
        const auto unmeasured = add_measures(board_, {w_.shell, w_.layout, w_.words, w_.round, w_.scale});
        const Rect drawn = bounds(board_.items());
        for (Item &item : north_arrow({drawn.x1 + 8, drawn.y1 - 22}))
            board_.add(std::move(item));
        add_caption({drawn.x0, drawn.y1 + 3});
        Block block{bounds(board_.items()), {}};
        block.items = std::move(board_).finished();
        return {std::make_shared<const Block>(std::move(block)), without_, unmeasured};
    }

  private:
    Vec2 paper(Vec3 p) const { return {p.x * w_.scale, p.y * w_.scale}; }

    /// Pegs that are driven through this round's logs.
    void add_pegs() {
        for (const Peg &peg : w_.layout.pegs) {
            if (w_.layout.pieces.at(peg.upper).round != w_.round) continue;
            for (Item &item : bore_symbol(std::nullopt, paper(peg.top), peg.diameter * w_.scale))
                board_.add(std::move(item));
        }
    }

    /// What a person placed in this round's logs.
    void add_bores() {
        struct Here {
            const PlacedBore *bore;
            Vec2 at;
            double diameter;
        };
        std::vector<Here> here;
        const std::vector<PlacedBore> all = named_bores(w_.shell, w_.layout, w_.words);
        for (const PlacedBore &bore : all)
            for (const BoredLog &log : bore.logs) {
                if (w_.layout.pieces.at(log.piece).round != w_.round) continue;
                const StatedBore &stated = w_.shell.bores[bore.stated];
                here.push_back({&bore, paper(log.foot), stated.diameter.mm() * w_.scale});
                for (Item &item : bore_symbol(stated.use, here.back().at, here.back().diameter))
                    board_.add(std::move(item));
            }
        for (const Here &h : here)
            if (!put_bore_mark(board_, h.bore->mark, h.at, h.diameter)) without_.push_back(h.bore->mark);
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
        const bool room = blank.width * w_.scale > text.height + clear_of_lines;
        return (room && board_.put(text, within, 0.25)) || board_.put(text, beside, 0.3);
    }

    void add_caption(Vec2 at) {
        Text text;
        text.words = w_.words.say("Round %1", w_.round);
        text.at = at;
        text.height = 3.5;
        text.bold = true;
        text.role = Role::caption;
        board_.add(text);
    }

    const RoundWanted &w_;
    Board board_;
    std::vector<std::string> without_;
};

/// All rounds at one scale.
struct Plans {
    std::vector<RoundBlock> rounds;
    bool complete = true; ///< every tag found room
};

Table note(const Words &words) {
    return note_table(
        words,
        words.say("Arrows at the tags point from butt to tip. Circles are pegs driven through "
                  "these logs; a disc is a rod, a hexagon a bolt, a circle crossed out wiring, a "
                  "dashed one a hole as found. Wall lengths are over the outside faces.") +
            words.say(
                " Outside, jambs are from the circle at the wall's left corner; inside are clear lengths "
                "between the walls."),
        62);
}

SharedBlock drawn_note(const Words &words) {
    return std::make_shared<const Block>(LaidTable(note(words)).drawn());
}

/// A sheet in the making, and its rounds.
struct RoundPage {
    Page page;
    int first = 0, last = 0;

    /// Puts the plan there if the note finds room beside it too.
    bool put(const SharedBlock &plan, int round, const SharedBlock &note) {
        Page tried = page;
        if (!tried.put(plan) || !Page(tried).put(note)) return false;
        page = std::move(tried);
        first = first == 0 ? round : first;
        last = round;
        return true;
    }
};

Plans plans_at(const Shell &shell, const Layout &layout, const std::vector<SeenShell> &seen,
               const Words &words, const Scale &scale, double lettering) {
    Plans plans;
    for (std::size_t i = 0; i < seen.size(); ++i) {
        RoundBlock made =
            RoundDrawer({shell, layout, seen[i], words, static_cast<int>(i) + 1, scale.ratio, lettering})
                .draw();
        plans.complete = plans.complete && made.without.empty();
        plans.rounds.push_back(std::move(made));
    }
    return plans;
}

bool each_fits(const Plans &plans, PaperSize size, const SharedBlock &note) {
    return std::all_of(plans.rounds.begin(), plans.rounds.end(), [&](const RoundBlock &r) {
        return RoundPage{empty_page(size)}.put(r.block, 1, note);
    });
}

/// The largest scale at which all plans fit and every tag has room; else the largest at which they fit.
Best<Plans> best_plans(const Draft &draft, const std::vector<SeenShell> &seen, const Words &words) {
    Best<Plans> best;
    const SharedBlock note = drawn_note(words);
    const auto draw = [&](const Scale &scale) {
        for (const double lettering : {3.5, 2.5}) {
            if (best.is_perfect()) return;
            Plans made = plans_at(draft.shell, draft.layout, seen, words, scale, lettering);
            const Cost cost{made.complete ? 0U : 1U, 1};
            if (each_fits(made, draft.size(), note)) best.offer(std::move(made), &scale, cost);
        }
    };
    try_scales(shell_scales(words.system()), draw, [&](const Scale &) { return best.is_perfect(); });
    return best;
}

std::vector<RoundPage> pages_of(const Plans &plans, PaperSize size, const SharedBlock &note) {
    std::vector<RoundPage> pages;
    for (std::size_t i = 0; i < plans.rounds.size(); ++i) {
        const int round = static_cast<int>(i) + 1;
        if (!pages.empty() && pages.back().put(plans.rounds[i].block, round, note)) continue;
        pages.push_back({empty_page(size)});
        pages.back().put(plans.rounds[i].block, round, note);
    }
    for (RoundPage &p : pages)
        p.page.put(note);
    return pages;
}

std::vector<std::string> without_room(const RoundPage &page, const Plans &plans,
                                      std::vector<std::string> RoundBlock::*what) {
    std::vector<std::string> all;
    for (int round = page.first; round <= page.last; ++round)
        for (const std::string &one : plans.rounds[static_cast<std::size_t>(round - 1)].*what)
            if (std::ranges::count(all, one) == 0) all.push_back(one);
    return all;
}

Table measures_table(const Words &words, const std::vector<std::string> &measures) {
    Table table = table_called(words, words.say("Measures that found no room here"));
    table.columns = {flush_left("", 150)};
    for (const std::string &measure : measures)
        table.rows.push_back({measure});
    return table;
}

Titled titled_rounds(const RoundPage &rounds, const Best<Plans> &best, PaperSize size, const Words &words) {
    const std::string first = std::to_string(rounds.first), last = std::to_string(rounds.last);
    const bool one = rounds.first == rounds.last;
    const std::string title = one ? words.say("Round %1", first) : words.say("Rounds %1 to %2", first, last);
    std::vector<Page> pages{rounds.page};
    const Plans &plans = best.drawing();
    if (const auto without = without_room(rounds, plans, &RoundBlock::without); !without.empty())
        put_on(pages, size, left_over_table(words, words.say("Tags that found no room here"), without));
    if (const auto without = without_room(rounds, plans, &RoundBlock::unmeasured); !without.empty())
        put_on(pages, size, measures_table(words, without));
    return {std::move(pages),
            {title,
             one ? words.say("plan of its logs from above") : words.say("plans of their logs from above"),
             words.say("Round plan"), one ? "R-" + first : words.say("%1 to %2", "R-" + first, "R-" + last),
             said_scale(best.scale(), words), false, words.unit_note()},
            {title, "round:" + first, words.say("Rounds")}};
}

std::vector<SeenShell> seen_rounds(const Draft &draft) {
    int last = 0;
    for (const Piece &piece : draft.layout.pieces)
        last = std::max(last, piece.round);
    std::vector<SeenShell> seen;
    for (int round = 1; round <= last; ++round)
        seen.push_back(seen_round(draft.layout, draft.bodies, round));
    return seen;
}

std::vector<Titled> rounds(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const Best<Plans> best = best_plans(draft, seen_rounds(draft), words);
    if (best.is_empty())
        return {{pages_not_drawn(size, words, words.say("A round")),
                 {words.say("Rounds"), "", words.say("Round plan"), "R-1", said_scale(nullptr, words), false,
                  words.unit_note()},
                 {words.say("Rounds"), "round:1", words.say("Rounds")}}};
    std::vector<Titled> all;
    for (const RoundPage &page : pages_of(best.drawing(), size, drawn_note(words)))
        all.push_back(titled_rounds(page, best, size, words));
    return all;
}

} // namespace

Subject round_subject() {
    return {"rounds", rounds};
}

} // namespace roundlay::sheets
