// The frame of a sheet, its filing margin and its title block.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/pages.h"
#include "exporters/words/speech.h"

#include <string>

namespace roundlay::sheets {

enum class Angle { third, first };

/// Fields of ISO 7200 (second-hand). What is empty stays a blank field to be filled by hand.
struct TitleFields {
    std::string owner; ///< legal owner of the drawing
    std::string shell; ///< name of the shell, beside the field's name of the title
    std::string title;
    std::string supplement;    ///< under the title
    std::string document_type; ///< e.g. "Cut sheet"
    std::string number;        ///< identification number
    std::string revision;
    std::string date; ///< of issue, as it shall be printed
    std::string creator;
    std::string approved;
    Language language = Language::english; ///< of the sheets, and of their title block
    std::string scale;                     ///< "1:10"; empty where there is none
    Angle angle = Angle::third;
    bool symbol = true; ///< the projection symbol; left out where nothing is projected
    std::string note;   ///< one line above the block: units and what else holds for the whole sheet
};

/// ISO 5457 (from memory; older texts, second-hand, differ): 20 mm filing margin on the left, 10 mm
/// elsewhere.
Rect drawing_area(PaperSize size);

/// Room of the title block: 180 mm wide, in the drawing area's lower right corner (ISO 7200, from memory).
Rect title_block_area(PaperSize size);

/// A sheet with frame, centring marks and title block, "sheet i of n".
Sheet framed_sheet(PaperSize size, const TitleFields &fields, int number, int of);

/// The projection symbol of ISO 5456-2 (from memory), its lower left corner at the origin, 2 x `height` high.
Block projection_symbol(Angle angle, double height);

} // namespace roundlay::sheets
