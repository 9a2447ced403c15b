#include "exporters/sheets/form/opening_rows.h"

#include "exporters/sheets/form/key_figure.h"
#include "kernel/layout/openings/openings.h"
#include "kernel/survey/survey.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double name_width = 34, corner_width = 28, air = 1;
constexpr double line_height = print_line + box_height + print_line + 1.2; ///< air to the next label
constexpr double opening_height = 2 * line_height + air;

/// The two rows of one opening.
class OpeningBoxes {
  public:
    OpeningBoxes(FormPen &pen, const FormOpening &opening) : pen_(pen), o_(opening), words_(pen.words()) {}

    void draw(const Rect &room) {
        pen_.print({room.x0, room.y1 - print_line - box_height / 2 - print_line / 2}, name_width - 2,
                   words_.name(o_.found.name), true);
        draw_jambs({room.x0 + name_width, room.y1 - line_height, room.x1, room.y1});
        draw_sizes({room.x0 + name_width, room.y1 - 2 * line_height, room.x1, room.y1 - line_height});
        pen_.line({room.x0, room.y0 + 0.2}, {room.x0 + name_width - 2, room.y0 + 0.2}, Line::dimension);
    }

  private:
    void draw_jambs(const Rect &room) {
        begin(room);
        words_in(corner_width, words_.say("from corner"), words_.name(o_.found.zero));
        place("1", words_.say("near jamb, sill"), o_.found.near_at_sill, near());
        place("2", words_.say("near jamb, head"), o_.found.near_at_head, near());
        place("3", words_.say("far jamb, sill"), o_.found.far_at_sill, far());
        place("4", words_.say("far jamb, head"), o_.found.far_at_head, far());
    }

    void draw_sizes(const Rect &room) {
        begin(room);
        place("5", words_.say("width"), o_.found.width, of_plan(&Opening::width));
        place("6", words_.say("height"), o_.found.height, of_plan(&Opening::height));
        place("7", words_.say("level of the sill"), o_.found.sill, {});
        place("8", words_.say("level of the head"), o_.found.head, {});
        words_in(corner_width, words_.say("plane"), o_.found.plane);
        words_in(room.x1 - x_, words_.say("note"), o_.found.note);
    }

    void begin(const Rect &room) {
        x_ = room.x0, top_ = room.y1 - print_line;
        pen_.print_right({room.x0 - 1, room.y0}, name_width - 2, words_.say("proposed"));
    }
    void place(const char *letter, const std::string &label, const NotedLength &noted,
               const std::optional<double> &by_plan) {
        box(place_width, place_box, letter, label, known(noted, by_plan, words_));
    }
    void words_in(double width, const std::string &label, const std::string &words) {
        box(width, words_box, "", label, {words, ""});
    }
    void box(double width, const char *layer, const char *letter, const std::string &label,
             const Known &known) {
        pen_.print({x_ + 1, top_}, width - 1.5, label);
        pen_.box({x_, top_ - box_height, x_ + width, top_}, layer, letter, known);
        x_ += width;
    }

    std::optional<double> of_plan(Length Opening::*size) const {
        return o_.plan ? std::optional((*o_.plan.*size).mm()) : std::nullopt;
    }
    std::optional<double> left() const { return of_plan(&Opening::from_left); }
    std::optional<double> right() const {
        return o_.plan ? std::optional((o_.plan->from_left + o_.plan->width).mm()) : std::nullopt;
    }
    std::optional<double> from_right(const std::optional<double> &x) const {
        return x ? std::optional(o_.wall_length - *x) : x;
    }
    std::optional<double> near() const { return o_.from_left ? left() : from_right(right()); }
    std::optional<double> far() const { return o_.from_left ? right() : from_right(left()); }

    FormPen &pen_;
    const FormOpening &o_;
    const Words &words_;
    double x_ = 0, top_ = 0;
};

std::optional<Opening> in_plan(const Shell &shell, const RecordedOpening &recorded, const std::string &wall) {
    for (std::size_t i = 0; i < shell.openings.size(); ++i)
        if (name_of(shell, i) == recorded.name && shell.openings[i].wall == wall) return shell.openings[i];
    return {};
}

/// It starts at the left only where its zero is not the corner at the right.
bool is_from_left(const Record &record, const Layout &layout, const WallPlace &wall,
                  const std::string &zero) {
    const std::string &right = layout.corners[wall.end_corner].name;
    return zero != right && zero != corner_name(record, layout, right);
}

void add_key(FormSheets &sheets) {
    const Block key = key_of_opening(sheets.words());
    const Rect room = sheets.strip(key.room.height() + 2 * air);
    for (Item &item : placed(key, {room.x0, room.y0 + air}).items)
        sheets.items().push_back(std::move(item));
}

} // namespace

std::vector<FormOpening> form_openings(const Record &record, const Draft &draft, Index<WallPlace> wall) {
    const WallPlace &place = draft.layout.walls[wall];
    const Record all = with_house_to_measure(record, draft.shell, draft.layout);
    std::vector<FormOpening> openings;
    for (const RecordedOpening &each : all.openings) {
        const auto plan = in_plan(draft.shell, each, place.name);
        if (each.wall != place.name && !(each.wall.empty() && plan)) continue;
        openings.push_back({each, plan, is_from_left(all, draft.layout, place, each.zero), place.length});
    }
    std::ranges::stable_sort(openings, [](const FormOpening &a, const FormOpening &b) {
        return a.plan && (!b.plan || a.plan->from_left < b.plan->from_left);
    });
    return openings;
}

void add_opening_rows(FormSheets &sheets, const std::vector<FormOpening> &openings) {
    if (openings.empty()) return;
    if (sheets.left() < opening_height + key_of_opening(sheets.words()).room.height()) sheets.end_sheet();
    add_key(sheets);
    for (const FormOpening &opening : openings) {
        const Rect room = sheets.strip(opening_height);
        FormPen pen = sheets.pen();
        OpeningBoxes(pen, opening).draw(room);
    }
}

std::string opening_letters(const Words &words) {
    return words.say("Of an opening, on the outside face, along the wall from the corner that is named: 1 to "
                     "its near jamb at "
                     "the sill, 2 at the head, 3 to its far jamb at the sill, 4 at the head; 5 its width and "
                     "6 its height, "
                     "clear; 7 level of its underside and 8 of its top over the level plane, + up, - down.");
}

} // namespace roundlay::sheets
