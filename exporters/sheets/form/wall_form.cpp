#include "exporters/sheets/elevation/sides.h"
#include "exporters/sheets/form/forms.h"
#include "exporters/sheets/form/key_figure.h"
#include "exporters/sheets/form/log_card.h"
#include "exporters/sheets/form/opening_rows.h"
#include "exporters/sheets/form/sketch.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

WallSide read_from(const Record &record, const std::string &wall) {
    for (const RecordedWall &recorded : record.walls)
        if (recorded.wall == wall && recorded.read_from == ReadFrom::inside) return WallSide::inside;
    return WallSide::outside;
}

/// The sketch on as few sheets as give every log its tag.
struct SketchSheets {
    std::vector<Page> pages;
    std::vector<std::string> without_tag;
};

/// With what it takes of further cards.
void add_card(FormSheets &sheets, LogCard card) {
    const auto rest = card.part_off(sheets.room());
    const Rect room = sheets.strip(card.height(sheets.room().width()));
    FormPen pen = sheets.pen();
    card.draw(pen, room);
    if (rest) add_card(sheets, *rest);
}

class WallForm {
  public:
    WallForm(const Draft &draft, const Record &record, Index<WallPlace> wall)
        : draft_(draft), record_(record), wall_(wall),
          side_(read_from(record, draft.layout.walls[wall].name)),
          logs_(form_logs(record, draft.layout).walls[wall]),
          seen_(seen_wall(draft.layout, draft.bodies, wall, side_)),
          openings_(form_openings(record, draft, wall)), sheets_(draft, record, head()) {}

    std::vector<Sheet> draw() {
        add_sketch();
        for (const FormLog &log : logs_)
            add_card(sheets_, LogCard(draft_, record_, sheets_.words(), log, side_ == WallSide::inside));
        add_opening_rows(sheets_, openings_);
        add_spare_cards();
        return sheets_.finished();
    }

  private:
    FormHead head() const {
        const Words words = draft_.words();
        const std::string &name = draft_.layout.walls[wall_].name;
        return {words.say("Wall %1", name),
                seen_from(draft_.layout, wall_, side_ == WallSide::outside, words),
                "F-" + name,
                words.say("Field forms"),
                "form-wall:" + name,
                card_letters(words) + (openings_.empty() ? "" : " " + opening_letters(words))};
    }

    /// For logs that the plan does not show: at least one, and as many as have room.
    void add_spare_cards() {
        const LogCard spare(draft_, record_, sheets_.words());
        do
            add_card(sheets_, spare);
        while (sheets_.left() >= spare.height(sheets_.room().width()));
    }

    void add_sketch() {
        SketchSheets drawn = sketched();
        const Words &words = sheets_.words();
        if (!drawn.without_tag.empty()) {
            const LaidTable table(narrowed(
                left_over_table(words, words.say("Logs too small here for their tags, from left to right"),
                                drawn.without_tag),
                sheets_.room().width()));
            put(drawn.pages, std::make_shared<const Block>(table.drawn()));
        }
        const auto key = key_of_wall();
        const bool key_beside = key && drawn.pages.back().put(key);
        for (const Page &page : drawn.pages) {
            sheets_.strip(sheets_.room().height());
            for (Item &item : page.items())
                sheets_.items().push_back(std::move(item));
        }
        if (!key || key_beside)
            add_first_cards_under_sketch();
        else
            sheets_.end_sheet();
        if (key && !key_beside) add_key(*key);
    }

    void add_first_cards_under_sketch() {
        constexpr double under_sketch = 3;
        const double low = bounds(sheets_.items()).y0 - under_sketch;
        sheets_.use_down_to(low);
        if (sheets_.left() <= 0) return;
        FormPen pen = sheets_.pen();
        pen.line({sheets_.room().x0, low}, {sheets_.room().x1, low}, Line::strong);
    }

    SharedBlock key_of_wall() const {
        const auto piece = longest();
        return piece ? std::make_shared<const Block>(key_of_log(draft_, *piece, side_)) : nullptr;
    }

    /// Over the first cards.
    void add_key(const Block &key) {
        const Rect room = sheets_.strip(key.room.height());
        for (Item &item : placed(key, {room.x0, room.y0}).items)
            sheets_.items().push_back(std::move(item));
        FormPen pen = sheets_.pen();
        pen.line({room.x0, room.y0}, {room.x1, room.y0}, Line::strong);
    }

    void put(std::vector<Page> &pages, const SharedBlock &block) const {
        if (pages.back().put(block)) return;
        pages.emplace_back(sheets_.room());
        pages.back().put(block);
    }

    /// A log that shows most of what is measured: of the longest whole ones that in the middle, which is
    /// notched above and below.
    std::optional<Index<Piece>> longest() const {
        std::vector<Index<Piece>> whole, all;
        double most = 0;
        for (const auto i : draft_.layout.pieces.indices()) {
            const Piece &piece = draft_.layout.pieces[i];
            if (!is_log_of(piece, wall_) || !is_log(piece)) continue;
            all.push_back(i);
            if (piece.log != LogKind::full || piece.blank.length < most - 1) continue;
            if (piece.blank.length > most + 1) whole.clear();
            most = std::max(most, piece.blank.length);
            whole.push_back(i);
        }
        const auto &from = whole.empty() ? all : whole;
        return from.empty() ? std::nullopt : std::optional(from[from.size() / 2]);
    }

    SketchSheets sketched() const {
        Best<SketchSheets> best;
        const SketchWanted wanted{draft_.shell, draft_.layout,   seen_, logs_,
                                  record_,      sheets_.words(), wall_, side_};
        try_scales(
            shell_scales(draft_.shell.units), [&](const Scale &scale) { offer(best, wanted, scale); },
            [&](const Scale &) { return best.is_perfect(); });
        auto drawn = best.take();
        if (drawn) return *drawn;
        SketchSheets none;
        none.pages.emplace_back(sheets_.room());
        const LaidTable told(
            not_drawn(sheets_.words(), sheets_.words().say("Wall %1", draft_.layout.walls[wall_].name)));
        put(none.pages, std::make_shared<const Block>(told.drawn()));
        return none;
    }

    void offer(Best<SketchSheets> &best, const SketchWanted &wanted, const Scale &scale) const {
        constexpr double beside = 4; // air, and what a break reaches past it
        const WallStretch all = all_of(wanted);
        const double room = (sheets_.room().width() - beside) / scale.ratio;
        const auto count = static_cast<std::size_t>(std::ceil((all.to - all.from) / room - 1e-9));
        if (!best.would_keep({0, count})) return;
        SketchSheets made;
        const double each = (all.to - all.from) / static_cast<double>(count);
        for (std::size_t i = 0; i < count; ++i) {
            const WallStretch stretch{all.from + static_cast<double>(i) * each,
                                      all.from + static_cast<double>(i + 1) * each, i == 0, i + 1 == count};
            Sketch sketch = sketch_of(wanted, stretch, scale, caption(scale));
            made.without_tag.insert(made.without_tag.end(), sketch.without_tag.begin(),
                                    sketch.without_tag.end());
            made.pages.emplace_back(sheets_.room());
            if (!made.pages.back().put(std::move(sketch.block))) return;
        }
        const Cost cost{made.without_tag.size(), count};
        best.offer(std::move(made), &scale, cost);
    }

    std::string caption(const Scale &scale) const {
        return wall_seen(draft_.layout, wall_, side_ == WallSide::outside,
                         said_scale(&scale, sheets_.words()), sheets_.words());
    }

    const Draft &draft_;
    const Record &record_;
    Index<WallPlace> wall_;
    WallSide side_;
    std::vector<FormLog> logs_;
    SeenShell seen_;
    std::vector<FormOpening> openings_;
    FormSheets sheets_;
};

} // namespace

std::vector<Sheet> wall_form(const Draft &draft, const Record &record, Index<WallPlace> wall) {
    return WallForm(draft, record, wall).draw();
}

std::vector<Sheet> elsewhere_form(const Draft &draft, const Record &record) {
    const std::vector<FormLog> logs = form_logs(record, draft.layout).elsewhere;
    if (logs.empty()) return {};
    const Words words = draft.words();
    FormSheets sheets(draft, record,
                      {words.say("Logs that the plan does not have"), "", "F", words.say("Field forms"),
                       "form-elsewhere", card_letters(words)});
    for (const FormLog &log : logs)
        add_card(sheets, LogCard(draft, record, sheets.words(), log, false));
    return sheets.finished();
}

} // namespace roundlay::sheets
