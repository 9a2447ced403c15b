// Pages of a report: a head, and below it texts, tables and drawings one under the other.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/table.h"
#include "exporters/sheets/set/draft.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct ReportHead {
    std::string title;   ///< of this part
    std::string what;    ///< of the whole: "Report on the house as it stands"
    std::string anchor;  ///< ":1" is added
    std::string chapter; ///< empty: it stands at the top
};

class ReportPages {
  public:
    /// Upright A4 or Letter, of the family of the paper that is stated.
    ReportPages(const Draft &draft, ReportHead head);

    const Words &words() const { return words_; }
    Rect room() const { return room_; } ///< of a whole page, under its head
    double left() const { return pages_.empty() ? 0 : y_ - room_.y0; }

    void add(const Table &table);
    void add(Block block);                            ///< on a new page where the last one has no room for it
    void add_side_by_side(std::vector<Block> blocks); ///< in rows
    void add_text(const std::string &text, bool bold = false);
    void add_heading(const std::string &text);
    /// What follows begins on a new page, unless so much is left.
    void need(double height);

    std::vector<Sheet> finished() const;

  private:
    void begin_page();
    void place(Block block);
    void head(std::vector<Item> &items) const;

    const Draft &draft_;
    ReportHead head_;
    Words words_;
    PaperSize size_;
    Rect frame_, room_;
    double y_ = 0; ///< down to where the last page is used
    std::vector<std::vector<Item>> pages_;
};

} // namespace roundlay::sheets
