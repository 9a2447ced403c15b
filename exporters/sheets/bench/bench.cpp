#include "exporters/sheets/bench/bench.h"

#include "exporters/sheets/cut_sheet/cut_sheet.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

std::vector<Titled> families(const Draft &draft) {
    const Words words = draft.words();
    const Families found = families_of(draft, words);
    std::vector<Titled> all = tail_sheets(draft, found.joints, words);
    for (const Family &family : found.all)
        if (family.is_cut) all.push_back(family_sheet(draft, family, words));
    if (Titled plain = plain_sheet(draft, found.all, words); !plain.pages.empty())
        all.push_back(std::move(plain));
    return all;
}

} // namespace

SheetSet bench_set(const Layout &layout) {
    SheetSet set;
    if (layout.pieces.empty()) return set;
    set.push_back(common_notes_subject());
    set.push_back({"bench set", [](const Draft &d) { return families(d); }});
    for (const auto m : layout.models.indices()) {
        const Piece &first = layout.pieces[layout.models[m].pieces.front()];
        if (stands_by_itself(first)) set.push_back(cut_sheet_subject(layout, m));
    }
    return set;
}

} // namespace roundlay::sheets
