#include "exporters/lists/list_cells.h"

namespace roundlay {

std::string said(const CutList &list, double mm) {
    LengthStyle style;
    style.system = list.units;
    return print_length(Length::mm(mm), style);
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
