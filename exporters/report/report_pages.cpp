#include "exporters/report/report_pages.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/plain_sheets.h"
#include "exporters/sheets/frame/title_block.h"

#include <algorithm>

namespace roundlay::sheets {

namespace {

constexpr double inner = 3, head_height = 14, between = 4, line_height = 4.4;
constexpr double rounding = 1e-6;

} // namespace

ReportPages::ReportPages(const Draft &draft, ReportHead head)
    : draft_(draft), head_(std::move(head)), words_(draft.words()),
      size_(office_paper_for(draft.shell, draft.options)), frame_(drawing_area(size_)),
      room_(frame_.grown(-inner)) {
    room_.y1 -= head_height;
}

void ReportPages::begin_page() {
    pages_.emplace_back();
    y_ = room_.y1;
}

void ReportPages::need(double height) {
    if (left() < std::min(height, room_.height()) - rounding) begin_page();
}

void ReportPages::place(Block block) {
    const double height = block.room.height();
    for (Item &item : placed(std::move(block), {room_.x0, y_ - height}).items)
        pages_.back().push_back(std::move(item));
    y_ -= height + between;
}

void ReportPages::add(Block block) {
    need(block.room.height());
    place(std::move(block));
}

void ReportPages::add_side_by_side(std::vector<Block> blocks) {
    for (std::size_t first = 0; first < blocks.size();) {
        double x = 0, height = 0;
        std::size_t last = first;
        while (last < blocks.size() && (last == first || x + blocks[last].room.width() <= room_.width()))
            x += blocks[last].room.width() + between, height = std::max(height, blocks[last].room.height()),
                                                      ++last;
        need(height);
        x = room_.x0;
        for (; first < last; ++first) {
            const double wide = blocks[first].room.width(), tall = blocks[first].room.height();
            for (Item &item : placed(std::move(blocks[first]), {x, y_ - tall}).items)
                pages_.back().push_back(std::move(item));
            x += wide + between;
        }
        y_ -= height + between;
    }
}

void ReportPages::add(const Table &table) {
    constexpr std::size_t fewest = 2; // rows that a table is begun for
    const LaidTable laid(narrowed(table, room_.width()), room_.height());
    for (std::size_t done = 0; done < laid.rows();) {
        std::size_t fit = laid.rows_that_fit(done, left());
        if (fit < std::min(fewest, laid.rows() - done)) begin_page(), fit = laid.rows_that_fit(done, left());
        fit = std::max<std::size_t>(fit, 1);
        place(laid.drawn(done, done + fit));
        done += fit;
    }
}

void ReportPages::add_text(const std::string &text, bool bold) {
    Block block;
    double y = 0;
    for (const std::string &line : wrapped(text, room_.width(), least_lettering, bold)) {
        y -= line_height;
        if (!line.empty())
            block.items.emplace_back(lettered(line, {0, y + 1}, least_lettering, bold, Role::note));
    }
    block.room = {0, y, room_.width(), 0};
    need(block.room.height());
    place(std::move(block));
    y_ += between / 2;
}

void ReportPages::add_heading(const std::string &text) {
    constexpr double height = 3.5, under = 30; // a heading is not left alone at the foot of a page
    need(under);
    Block block;
    block.items.emplace_back(lettered(text, {0, -height - 1}, height, true, Role::title));
    block.room = {0, -height - 2, room_.width(), 0};
    place(std::move(block));
    y_ += between / 2;
}

void ReportPages::head(std::vector<Item> &items) const {
    const double top = frame_.y1 - inner;
    const auto add = [&](const std::string &text, double y, double height, bool bold) {
        const auto lines = wrapped(text, room_.width(), height, bold);
        items.emplace_back(lettered(lines.size() > 1 ? lines.front() + " …" : lines.front(), {room_.x0, y},
                                    height, bold, Role::title));
    };
    add(head_.title, top - 4.5, 4.5, true);
    const std::string house = called(draft_.shell).empty() ? words_.say("Log shell") : called(draft_.shell);
    const std::string of = words_.say("%1: %2", head_.what, house), &date = draft_.options.fields.date;
    add(date.empty() ? of : words_.say("%1, %2", of, date), top - 10, least_lettering, false);
    items.emplace_back(Path{{{frame_.x0, top - 12}, {frame_.x1, top - 12}}, false, Line::strong, ""});
}

std::vector<Sheet> ReportPages::finished() const {
    return plainly_framed(pages_, size_,
                          {head_.title, head_.chapter, head_.anchor,
                           [this](std::vector<Item> &items, std::size_t) { head(items); }},
                          words_);
}

} // namespace roundlay::sheets
