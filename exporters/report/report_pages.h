// Pages of a report: parts, one after the other, and in each of them texts, tables and drawings one under the
// other. A part begins on the page where the last one ended, where it has room.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/set/draft.h"

#include <string>
#include <variant>
#include <vector>

namespace roundlay::sheets {

/// A part that a page shows, with how many pages it has in all.
struct PartOfReport {
    std::string title, anchor; ///< of its first page ":1" is added, and so on
    std::size_t pages = 0;
};

class ReportPages {
  public:
    /// Upright A4 or Letter, of the family of the paper that is stated. `what`: the whole, as each page tells
    /// it: "Report on the house as it was found".
    ReportPages(const Draft &draft, std::string what);

    /// What is added next belongs to this part.
    void begin_part(const std::string &title, const std::string &anchor);

    const Words &words() const { return words_; }
    Rect room() const { return room_; } ///< of a whole page, under its head

    void add(const Table &table);
    void add(Block block);                            ///< on a new page where the last one has no room for it
    void add_side_by_side(std::vector<Block> blocks); ///< in rows
    void add_text(const std::string &text, bool bold = false);
    /// What is added from now on stays on one page, if it has room on one and the page before is not left
    /// nearly empty for it.
    void hold();
    void release();

    std::vector<Sheet> finished() const;

  private:
    struct UsedPage {
        std::vector<Item> items;
        std::vector<std::size_t> parts; ///< in `parts_`, that stand on it
    };
    using Held = std::variant<Table, Block>;

    void begin_page();
    double left() const { return pages_.empty() ? 0 : y_ - room_.y0; }
    double used() const { return pages_.empty() ? 0 : room_.y1 - y_; }
    double height_of(const Held &held) const;
    double title_height() const;
    /// What follows begins on a new page, unless so much is left under the part's title.
    void need(double height);
    void open_part();
    void put(std::vector<Item> items);
    void place(Block block);
    void place(const Table &table);
    LaidTable laid(const Table &table) const;
    void head(std::vector<Item> &items, const UsedPage &page) const;
    std::string title_of(const PartOfReport &of, std::size_t number) const;

    const Draft &draft_;
    std::string what_;
    Words words_;
    PaperSize size_;
    Rect frame_, room_;
    double y_ = 0; ///< down to where the last page is used
    std::vector<PartOfReport> parts_;
    std::vector<UsedPage> pages_;
    std::vector<Held> held_;
    bool holds_ = false, opened_ = true; ///< the last part's title stands on a page
};

} // namespace roundlay::sheets
