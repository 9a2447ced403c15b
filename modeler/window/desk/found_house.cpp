#include "modeler/window/desk/found_house.h"

#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "kernel/measured/measured_shell.h"

#include <algorithm>

namespace roundlay::window {

std::shared_ptr<const FoundHouse> found_house(const Document &document, const ReadResult &read) {
    if (!read.shell || read.record.logs.empty() || read.states.empty()) return nullptr;
    const auto measured = std::ranges::find(read.states, true, &HouseState::measured);
    const bool is_stated = measured == read.states.end();
    const bool is_this = read.measured_on ? *read.measured_on == *read.shell
                                          : is_stated && read.shell->state == read.states.front().name;
    if (is_this) return nullptr;
    const std::optional<Shell> shell =
        read.measured_on
            ? read.measured_on
            : read_document(document.text(), document.file(), is_stated ? "" : measured->name).shell;
    if (!shell) return nullptr;
    const Shell drawn = is_stated ? *shell : house_as_found({*shell, read.levelled_on, read.record}).shell;
    FoundHouse house{lay_out(drawn), {}, drawn};
    if (has_errors(house.layout.findings)) return nullptr;
    house.bodies = bodies_of(house.layout);
    return std::make_shared<const FoundHouse>(std::move(house));
}

} // namespace roundlay::window
