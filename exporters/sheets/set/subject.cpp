#include "exporters/sheets/set/subject.h"

namespace roundlay::sheets {

std::vector<Sheet> composed(const Subject &subject, const Draft &draft) {
    Composition composition = subject.compose(draft);
    if (auto *bare = std::get_if<std::vector<Sheet>>(&composition)) return std::move(*bare);
    std::vector<Sheet> all;
    for (const Titled &titled : std::get<std::vector<Titled>>(composition))
        for (Sheet &sheet : framed(titled, draft.size(), draft.options, draft.layout.name))
            all.push_back(std::move(sheet));
    return all;
}

std::vector<Sheet> composed(const SheetSet &set, const Draft &draft) {
    std::vector<Sheet> all;
    for (const Subject &subject : set)
        for (Sheet &sheet : composed(subject, draft))
            all.push_back(std::move(sheet));
    return all;
}

} // namespace roundlay::sheets
