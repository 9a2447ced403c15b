// What a person chooses for all sheets of a set.
#pragma once

#include "exporters/sheets/drawing/pages.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/frame/title_block.h"
#include "exporters/sheets/tag/label_stock.h"
#include "kernel/layout/wood/body.h"
#include "kernel/progress/ticked.h"
#include "kernel/shell/shell.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// What a piece weighs and how that is known; worked out elsewhere.
struct WeightNote {
    double low_kg = 0, high_kg = 0;
    std::string basis;                          ///< what it rests on, in sentences
    double blank_low_kg = 0, blank_high_kg = 0; ///< of the squared blank; 0: none, or not known
    double log_low_kg = 0, log_high_kg = 0;     ///< of the round log
    /// Stands beside every weight.
    std::string caution =
        "An estimate from average values of the wood, no lift plan: single logs are heavier or lighter, and "
        "rain and snow add. Weigh before lifting near a limit; local rules and a licensed professional "
        "decide.";
};

/// What the record of a house says of a piece; worded elsewhere, in the sheets' language.
struct FoundNote {
    std::vector<std::string> phrases; ///< what can hurt first
    std::string pegs;                 ///< how many were found, missing, broken or sawn
    bool is_empty() const { return phrases.empty() && pegs.empty(); }
    std::string words() const; ///< all phrases in one line
};

/// Pieces that a sheet is of; nothing: all.
using OnlyPieces = std::optional<std::vector<Index<Piece>>>;

/// These, or all of the layout.
std::vector<Index<Piece>> pieces_of(const Layout &layout, const OnlyPieces &only);

struct SheetOptions {
    std::optional<Paper> paper; ///< not stated = A3 for metric, Tabloid for feet and inches
    std::optional<LabelStock>
        labels;                 ///< that tags are printed on; not stated = eight to a sheet, to be cut apart
    bool turned = false;        ///< the paper's other way round
    Angle angle = Angle::third; ///< which decides the order of the faces and where the ends stand
    TitleFields fields;         ///< owner, creator, approved, date, revision, language: the rest is filled in
    int denominator = 16;       ///< smallest part of an inch
    std::function<std::optional<WeightNote>(const Piece &, const Body &)>
        weight;                                        ///< empty = no weight is shown
    Indexed<std::vector<std::string>, Model> warnings; ///< each one phrase; empty = none is shown
    Indexed<FoundNote, Piece> found;                   ///< empty = no house was recorded
    Ticked ticked;                                     ///< empty = nothing is done yet
    /// Of each piece which of its cuts are still to be made, nothing where that is not known of an old log;
    /// empty = it is known of none.
    Indexed<std::optional<std::vector<bool>>, Piece> to_make;

    /// Of that piece; null where nothing is said of it.
    const FoundNote *found_of(Index<Piece> piece) const;
};

PaperSize paper_for(const Shell &shell, const SheetOptions &options);

/// What comes out of an office printer: A4 or Letter, of the family of the stated paper, or of the shell's
/// units.
PaperSize office_paper_for(const Shell &shell, const SheetOptions &options);

/// Which speak the sheets' language, in the shell's units.
Words words_for(const Shell &shell, const Layout &layout, const SheetOptions &options);

/// Room for drawing inside the frame.
Rect inner_area(PaperSize size);

/// An empty page of that size with its title block's room taken.
Page empty_page(PaperSize size);

/// Puts the block on the last page, or on a new one. False where it is larger than an empty page.
bool put_on(std::vector<Page> &pages, PaperSize size, const SharedBlock &block);

} // namespace roundlay::sheets
