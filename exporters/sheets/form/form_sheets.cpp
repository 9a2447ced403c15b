#include "exporters/sheets/form/form_sheets.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/plain_sheets.h"
#include "exporters/sheets/frame/title_block.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double inner = 3;        ///< between the frame and what is on the form
constexpr double title_line = 6.5; ///< of the head
constexpr double title_height = 4.5;
constexpr double head_height = title_line + print_line + box_height + 2.5;
constexpr double foot_air = 1.5;

std::string foot_words(const Words &words, const std::string &letters) {
    return letters + " " +
           words.say("Small figures under a box are proposed by the plan, nobody has measured them: measure, "
                     "or leave the box empty. ≠: two measures differ, take it again.");
}

} // namespace

PaperSize form_paper(const Draft &draft) {
    return turned(office_paper_for(draft.shell, draft.options));
}

FormSheets::FormSheets(const Draft &draft, const Record &record, FormHead head)
    : draft_(draft), record_(record), words_(draft.words()), head_(std::move(head)), size_(form_paper(draft)),
      frame_(drawing_area(size_)), room_(frame_.grown(-inner)) {
    room_.y1 -= head_height;
    const auto lines = wrapped(foot_words(words_, head_.letters), room_.width(), least_lettering);
    room_.y0 += static_cast<double>(lines.size()) * print_line + foot_air;
}

void FormSheets::begin_sheet() {
    pages_.emplace_back();
    y_ = room_.y1;
}

double FormSheets::left() const {
    return pages_.empty() ? 0 : y_ - room_.y0;
}

Rect FormSheets::strip(double height, const Heading &heading, double heading_height) {
    constexpr double rounding = 1e-6;
    if (left() < height - rounding) {
        begin_sheet();
        if (heading) {
            FormPen pen = this->pen();
            heading(pen, {room_.x0, y_ - heading_height, room_.x1, y_});
            y_ -= heading_height;
        }
    }
    y_ -= height;
    return {room_.x0, y_, room_.x1, y_ + height};
}

std::string FormSheets::shell_name() const {
    return draft_.shell.name.empty() ? words_.say("Log shell") : draft_.shell.name;
}

/// In which unit the sheet is kept, as far as the record says; a person ticks what it does not.
void FormSheets::notation(FormPen &pen, double x, double y) const {
    const Notation &n = record_.notation;
    const auto unit = [&](const char *name, NoteUnit u) { return FormPen::Tick{name, n.unit == u}; };
    const auto part = [&](const char *name, int d) { return FormPen::Tick{name, n.denominator == d}; };
    const std::vector<std::vector<FormPen::Tick>> units{
        {unit("mm", NoteUnit::mm), unit("cm", NoteUnit::cm), unit("m", NoteUnit::m)},
        {unit("in", NoteUnit::inch), unit("ft", NoteUnit::foot)}},
        parts{{part("1/4", 4), part("1/8", 8)}, {part("1/16", 16)}},
        fields{{{words_.say("feet.inches"), n.two_fields == TwoFields::feet_and_inches}},
               {{words_.say("decimal feet"), n.two_fields == TwoFields::decimal_feet}}};
    struct Group {
        std::string label;
        const std::vector<std::vector<FormPen::Tick>> &rows;
    };
    for (const Group &group :
         {Group{words_.say("numbers are in"), units}, Group{words_.say("the 1 of 3.10.1 is"), parts},
          Group{words_.say("3.10 is"), fields}}) {
        const double width =
            std::max(FormPen::width_of(group.rows), text_width(group.label, least_lettering) + 2.5);
        pen.print({x, y + box_height}, width, group.label);
        pen.ticks({x, y, x + width, y + box_height}, group.rows);
        x += width;
    }
}

void FormSheets::head(std::vector<Item> &items, std::size_t number) const {
    FormPen pen(items, words_);
    const Rect top{frame_.x0 + inner, frame_.y1 - inner, frame_.x1 - inner, frame_.y1 - inner};
    const std::string sheet = head_.number + "-" + std::to_string(number) + "  (" + std::to_string(number) +
                              " / " + std::to_string(pages_.size()) + ")";
    const std::string called = words_.say("sheet %1", sheet);
    const double base = top.y1 - title_height;
    Text right = lettered(called, {top.x1, base}, 3.5, true, Role::title);
    right.across = Across::right;
    items.emplace_back(right);
    const double room = top.width() - text_width(called, 3.5, true) - 5;
    const std::string title = shortened(head_.title, room, title_height, true);
    items.emplace_back(lettered(title, {top.x0, base}, title_height, true, Role::title));
    const double used = text_width(title, title_height, true) + 4;
    std::string what = head_.seen.empty() ? shell_name() : head_.seen + ", " + shell_name();
    what = shortened(what, room - used, 3.5);
    if (!what.empty()) items.emplace_back(lettered(what, {top.x0 + used, base}, 3.5, false, Role::title));

    const double y = top.y1 - title_line - print_line - box_height;
    const double by = 46, on = 30, plane = 30;
    double x = top.x0;
    pen.print({x, y + box_height}, by, words_.say("measured by"));
    pen.box({x, y, x + by, y + box_height}, words_box, "", {record_.by, ""});
    x += by;
    pen.print({x + 1, y + box_height}, on, words_.say("on the day"));
    pen.box({x, y, x + on, y + box_height}, words_box, "", {record_.on, ""});
    x += on;
    pen.print({x + 1, y + box_height}, plane, words_.say("level plane"));
    pen.box({x, y, x + plane, y + box_height}, words_box, "",
            {record_.planes.size() == 1 ? record_.planes.front().name : "", ""});
    notation(pen, x + plane + 3, y);
    pen.line({frame_.x0, y - 1.2}, {frame_.x1, y - 1.2}, Line::strong);
}

void FormSheets::foot(FormPen &pen) const {
    pen.paragraph({room_.x0, room_.y0 - foot_air}, room_.width(), foot_words(words_, head_.letters));
}

std::vector<Sheet> FormSheets::finished() const {
    const auto draw = [this](std::vector<Item> &items, std::size_t number) {
        head(items, number);
        FormPen pen(items, words_);
        foot(pen);
    };
    return plainly_framed(pages_, size_,
                          {words_.say("Field form, %1", head_.title), head_.chapter, head_.anchor, draw},
                          words_);
}

} // namespace roundlay::sheets
