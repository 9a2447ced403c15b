// The sheets of one field form: a head with who, when and how it counts, room for rows below it, and at its
// foot what its letters mean.
#pragma once

#include "exporters/sheets/form/form_pen.h"
#include "exporters/sheets/set/draft.h"
#include "kernel/record/record.h"

#include <algorithm>
#include <string>
#include <vector>

namespace roundlay::sheets {

struct FormHead {
    std::string title;  ///< "Wall A"
    std::string seen;   ///< "read from outside"; may be empty
    std::string number; ///< "F-A": sheets are F-A-1, F-A-2, which the record can call them by
    std::string chapter, anchor;
    std::string letters; ///< what the letters in the boxes mean, in one paragraph
};

class FormSheets {
  public:
    FormSheets(const Draft &draft, const Record &record, FormHead head);

    const Words &words() const { return words_; }
    Rect room() const { return room_; } ///< of a whole sheet, between head and foot

    /// The next strip of that height over the whole width, on a new sheet where the last one has no room;
    /// under `heading`, drawn once at the top of each sheet (nullptr: none).
    using Heading = std::function<void(FormPen &pen, const Rect &room)>;
    Rect strip(double height, const Heading &heading = {}, double heading_height = 0);
    /// Height that is left on the last sheet.
    double left() const;
    /// What follows begins under that, where it fits.
    void use_down_to(double y) { y_ = std::max(room_.y0, y); }
    /// What follows begins on a new sheet.
    void end_sheet() { y_ = room_.y0; }

    std::vector<Item> &items() { return pages_.back(); } ///< of the last sheet
    FormPen pen() { return {pages_.back(), words_}; }

    std::vector<Sheet> finished() const;

  private:
    void begin_sheet();
    void head(std::vector<Item> &items, std::size_t number) const;
    void notation(FormPen &pen, double x, double y) const;
    void foot(FormPen &pen) const;
    std::string shell_name() const;

    const Draft &draft_;
    const Record &record_;
    Words words_;
    FormHead head_;
    PaperSize size_;
    Rect frame_, room_;
    double y_ = 0; ///< down to where the last sheet is used
    std::vector<std::vector<Item>> pages_;
};

/// Landscape A4 or Letter: rows of boxes are wide.
PaperSize form_paper(const Draft &draft);

} // namespace roundlay::sheets
