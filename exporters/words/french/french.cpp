#include "exporters/words/french/french.h"

#include <array>

namespace roundlay {

std::span<const std::span<const Entry>> french_tables() {
    static const std::array tables = {
        french_of_book(), french_of_cut_sheets(), french_of_cuts(), french_of_document(),
        french_of_drawings(), french_of_exports(), french_of_fastenings(), french_of_floors(),
        french_of_forms(), french_of_lists(), french_of_machines(), french_of_machining(),
