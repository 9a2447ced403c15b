#include "exporters/sheets/bench/bench.h"

#include "exporters/sheets/cut_sheet/cut_sheet.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

std::vector<Titled> families(const Draft &draft, const OnlyPieces &only) {
    const Words words = draft.words();
    const Families found = families_of(draft, words, only);
    std::vector<Titled> all = tail_sheets(draft, found.joints, words);
    for (const Family &family : found.all)
        if (family.is_cut) all.push_back(family_sheet(draft, family, words));
    if (Titled plain = plain_sheet(draft, found.all, words); !plain.pages.empty())
        all.push_back(std::move(plain));
    return all;
}

} // namespace

SheetSet bench_set(const Layout &layout, const OnlyPieces &only) {
    SheetSet set;
    if (layout.pieces.empty()) return set;
    set.push_back(common_notes_subject());
    set.push_back({"bench set", [only](const Draft &d) { return families(d, only); }});
    const std::vector<Index<Piece>> pieces = pieces_of(layout, only);
    for (const auto m : layout.models.indices())
        if (std::ranges::any_of(pieces, [&](Index<Piece> i) {
                return layout.pieces[i].model == m && stands_by_itself(layout.pieces[i]);
            }))
            set.push_back(cut_sheet_subject(layout, m));
    return set;
}

} // namespace roundlay::sheets
