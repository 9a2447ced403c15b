// Paper at full size: bars by which a print is checked, and drawings laid over several sheets.
#pragma once

#include "exporters/sheets/drawing/block.h"
#include "exporters/sheets/drawing/words.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

struct FullSizeWords {
    std::string title; ///< what the sheets show
    std::string chapter;
    std::string anchor;
    std::string footer;                      ///< name of the shell, date, revision
    Words words = Words(UnitSystem::metric); ///< by which the rest is said
};

/// Room for what is drawn at full size on a sheet of that size: inside the frame, the bars and the footer.
Rect full_size_area(PaperSize size);

/// A sheet with frame, check bars of 100 mm and 4 in in both directions, and the footer with `label`.
Sheet full_size_sheet(PaperSize size, const FullSizeWords &words, const std::string &label);

/// The block at full size over as many sheets as it needs, in rows from above. Sheets overlap by
/// `tile_overlap`; ticks mark where they are cut or laid over one another. Sheets with no line are left out.
std::vector<Sheet> tiled(const Block &block, PaperSize size, const FullSizeWords &words);

/// The parts of the block that those sheets show, in their order; those of sheets that are left out too.
std::vector<Rect> tile_windows(const Rect &room, PaperSize size);

/// How many sheets the block would take, empty ones included.
int count_of_tiles(const Block &block, PaperSize size);

inline constexpr double tile_overlap = 10; ///< millimetres
inline constexpr double tile_tick = 5;     ///< length of the marks at the borders of a tile

/// The part of an item inside the window; strokes are cut at its border. A text belongs to the windows that
/// hold all of it.
std::vector<Item> clipped(const Item &item, const Rect &window);

} // namespace roundlay::sheets
