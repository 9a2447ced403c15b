#include "exporters/lists/list_cells.h"

#include "kernel/layout/names_given.h"

namespace roundlay {

Voice voice_of(const Shell &shell, const Layout &layout, Language language) {
    Voice voice({language, shell.units});
    voice.know(names_given(shell, layout));
    return voice;
}

std::string said(const CutList &list, double mm) {
    return list.voice.length(mm);
}

Entry low_weight(const CutList &list, double in_unit) {
    if (!list.weights_known) return std::string();
    return number(shown_low_weight(in_unit), 0);
}

Entry high_weight(const CutList &list, double in_unit) {
    if (!list.weights_known) return std::string();
    return number(shown_high_weight(in_unit), 0);
}

} // namespace roundlay
