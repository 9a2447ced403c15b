// Sheets of one subject or set, drawn on one thread for a test.
#pragma once

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/elevation/elevation.h"
#include "exporters/sheets/plan/round_plan.h"
#include "exporters/sheets/tag/tags.h"

namespace roundlay::test {

inline std::vector<sheets::Sheet> shell_drawings(const Shell &shell, const Layout &layout,
                                                 const Bodies &bodies, const sheets::SheetOptions &options) {
    return sheets::composed(sheets::drawing_set(layout), {shell, layout, bodies, options});
}

inline std::vector<sheets::Sheet> cut_sheets(const Shell &shell, const Layout &layout, const Bodies &bodies,
                                             const sheets::SheetOptions &options) {
    return sheets::composed(sheets::cut_sheet_set(layout), {shell, layout, bodies, options});
}

inline std::vector<sheets::Sheet> wall_elevations(const Shell &shell, const Layout &layout,
                                                  const Bodies &bodies, const sheets::SheetOptions &options) {
    sheets::SheetSet walls;
    for (const auto wall : layout.walls.indices())
        walls.push_back(sheets::wall_subject(layout, wall));
    return sheets::composed(walls, {shell, layout, bodies, options});
}

inline std::vector<sheets::Sheet> packing_list(const Shell &shell, const Layout &layout, const Bodies &bodies,
                                               const sheets::SheetOptions &options) {
    return sheets::composed(sheets::packing_subject(), {shell, layout, bodies, options});
}

inline std::vector<sheets::Sheet> foundation_plan(const Shell &shell, const Layout &layout,
                                                  const sheets::SheetOptions &options) {
    return sheets::composed(sheets::foundation_subject(), {shell, layout, {}, options});
}

} // namespace roundlay::test
