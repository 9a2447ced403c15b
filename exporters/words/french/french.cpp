#include "exporters/words/french/french.h"

#include <array>

namespace roundlay {

std::span<const std::span<const Entry>> french_tables() {
    static const std::array tables = {
        french_of_book(),     french_of_cut_sheets(), french_of_cuts(),       french_of_document(),
        french_of_drawings(), french_of_exports(),    french_of_fastenings(), french_of_floors(),
        french_of_forms(),    french_of_lists(),      french_of_machines(),   french_of_machining(),
        french_of_measured(), french_of_mends(),      french_of_openings(),   french_of_options(),
        french_of_page(),     french_of_paper(),      french_of_plan(),       french_of_program(),
        french_of_raising(),  french_of_record(),     french_of_report(),     french_of_review(),
        french_of_rounds(),   french_of_router(),     french_of_schedules(),  french_of_steps(),
        french_of_things(),   french_of_trade(),      french_of_woods()};
    return tables;
}

} // namespace roundlay
