#include "exporters/report/report_pages.h"

#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/plain_sheets.h"
#include "exporters/sheets/frame/title_block.h"

#include <algorithm>
#include <utility>

namespace roundlay::sheets {

namespace {

constexpr double inner = 3, head_height = 14, between = 4, line_height = 4.4;
constexpr double title_lettering = 4.5, title_room = 9, over_title = 3; ///< of a part within a page
constexpr double rounding = 1e-6;
constexpr double nearly_empty = 1.0 / 3; ///< of a page: less is not left behind
constexpr std::size_t fewest_rows = 2;   ///< that a table is begun for

} // namespace

ReportPages::ReportPages(const Draft &draft, std::string what)
    : draft_(draft), what_(std::move(what)), words_(draft.words()),
      size_(office_paper_for(draft.shell, draft.options)), frame_(drawing_area(size_)),
      room_(frame_.grown(-inner)) {
    room_.y1 -= head_height;
}

void ReportPages::begin_part(const std::string &title, const std::string &anchor) {
    parts_.push_back({title, anchor});
    opened_ = false;
}

void ReportPages::begin_page() {
    pages_.emplace_back();
    y_ = room_.y1;
}

double ReportPages::title_height() const {
    return opened_ || used() < rounding ? 0 : over_title + title_room;
}

void ReportPages::need(double height) {
    if (left() < std::min(height + title_height(), room_.height()) - rounding) begin_page();
}

/// Its title stands in the head of a page that begins with it, else where it begins.
void ReportPages::open_part() {
    UsedPage &page = pages_.back();
    const std::size_t part = parts_.size() - 1;
    if (page.parts.empty() || page.parts.back() != part) page.parts.push_back(part), ++parts_.back().pages;
    if (opened_) return;
    opened_ = true;
    if (used() < rounding) return;
    const double foot = y_ - over_title - title_lettering, line = foot - 2;
    page.items.emplace_back(
        lettered(parts_.back().title, {room_.x0, foot}, title_lettering, true, Role::title));
    page.items.emplace_back(Path{{{room_.x0, line}, {room_.x1, line}}, false, Line::visible, ""});
    y_ -= over_title + title_room;
}

void ReportPages::put(std::vector<Item> items) {
    for (Item &item : items)
        pages_.back().items.push_back(std::move(item));
}

void ReportPages::place(Block block) {
    const double height = block.room.height();
    need(height);
    open_part();
    put(placed(std::move(block), {room_.x0, y_ - height}).items);
    y_ -= height + between;
}

LaidTable ReportPages::laid(const Table &table) const {
    return LaidTable(narrowed(table, room_.width()), room_.height());
}

void ReportPages::place(const Table &table) {
    const LaidTable lines = laid(table);
    for (std::size_t done = 0; done < lines.rows();) {
        const std::size_t fewest = std::min(fewest_rows, lines.rows() - done);
        need(lines.height(done, done + fewest));
        const std::size_t fit = std::max<std::size_t>(lines.rows_that_fit(done, left() - title_height()), 1);
        place(lines.drawn(done, done + fit));
        done += fit;
    }
}

void ReportPages::add(Block block) {
    if (holds_)
        held_.emplace_back(std::move(block));
    else
        place(std::move(block));
}

void ReportPages::add(const Table &table) {
    if (holds_)
        held_.emplace_back(table);
    else
        place(table);
}

void ReportPages::add_side_by_side(std::vector<Block> blocks) {
    for (std::size_t first = 0; first < blocks.size();) {
        Block row;
        double x = 0, height = 0;
        std::size_t last = first;
        while (last < blocks.size() && (last == first || x + blocks[last].room.width() <= room_.width()))
            x += blocks[last].room.width() + between, height = std::max(height, blocks[last].room.height()),
                                                      ++last;
        for (x = 0; first < last; ++first) {
            const double wide = blocks[first].room.width(), tall = blocks[first].room.height();
            for (Item &item : placed(std::move(blocks[first]), {x, -tall}).items)
                row.items.push_back(std::move(item));
            x += wide + between;
        }
        row.room = {0, -height, room_.width(), 0};
        add(std::move(row));
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
    block.room = {0, y - between / 2, room_.width(), 0};
    add(std::move(block));
}

void ReportPages::hold() {
    holds_ = true;
}

double ReportPages::height_of(const Held &held) const {
    if (const auto *block = std::get_if<Block>(&held)) return block->room.height();
    const LaidTable lines = laid(std::get<Table>(held));
    return lines.height(0, lines.rows());
}

void ReportPages::release() {
    holds_ = false;
    double all = 0;
    for (const Held &held : held_)
        all += height_of(held) + between;
    all -= between;
    if (all <= room_.height() && used() >= nearly_empty * room_.height()) need(all);
    for (Held &held : std::exchange(held_, {}))
        std::visit([this](auto &what) { place(std::move(what)); }, held);
}

void ReportPages::head(std::vector<Item> &items, const UsedPage &page) const {
    const double top = frame_.y1 - inner;
    const auto add = [&](const std::string &text, double y, double height, bool bold) {
        const auto lines = wrapped(text, room_.width(), height, bold);
        items.emplace_back(lettered(lines.size() > 1 ? lines.front() + " …" : lines.front(), {room_.x0, y},
                                    height, bold, Role::title));
    };
    add(parts_[page.parts.front()].title, top - title_lettering, title_lettering, true);
    const std::string house = called(draft_.shell).empty() ? words_.say("Log shell") : called(draft_.shell);
    const std::string of = words_.say("%1: %2", what_, house), &date = draft_.options.fields.date;
    add(date.empty() ? of : words_.say("%1, %2", of, date), top - 10, least_lettering, false);
    items.emplace_back(Path{{{frame_.x0, top - 12}, {frame_.x1, top - 12}}, false, Line::strong, ""});
}

/// As its bookmark: "Logs", or "Logs, 2 of 3".
std::string ReportPages::title_of(const PartOfReport &of, std::size_t number) const {
    return of.pages > 1 ? of.title + words_.say(", %1 of %2", number, of.pages) : of.title;
}

std::vector<Sheet> ReportPages::finished() const {
    std::vector<std::vector<Item>> items;
    for (const UsedPage &page : pages_)
        items.push_back(page.items);
    std::vector<Sheet> sheets = plainly_framed(
        items, size_,
        {"", "", "", [this](std::vector<Item> &into, std::size_t number) { head(into, pages_[number - 1]); }},
        words_);
    std::vector<std::size_t> shown(parts_.size(), 0);
    for (std::size_t i = 0; i < sheets.size(); ++i)
        for (const std::size_t part : pages_[i].parts) {
            const std::string title = title_of(parts_[part], ++shown[part]);
            if (part != pages_[i].parts.front()) {
                sheets[i].title += "; " + title;
                continue;
            }
            sheets[i].subject = sheets[i].title = title;
            sheets[i].anchor = parts_[part].anchor + ":" + std::to_string(shown[part]);
        }
    return sheets;
}

} // namespace roundlay::sheets
