#include "exporters/sheets/form/form.h"

#include "exporters/sheets/form/forms.h"

namespace roundlay::sheets {

SheetSet form_set(const Layout &layout, const std::shared_ptr<const Record> &record) {
    SheetSet set;
    set.push_back({"form of the house", [record](const Draft &d) { return house_form(d, *record); }});
    for (const auto wall : layout.walls.indices())
        set.push_back({"form of wall " + std::to_string(wall.number() + 1),
                       [record, wall](const Draft &d) { return wall_form(d, *record, wall); }});
    for (const auto corner : layout.corners.indices())
        set.push_back({"form of corner " + std::to_string(corner.number() + 1),
                       [record, corner](const Draft &d) { return corner_form(d, *record, corner); }});
    for (const auto floor : layout.floors.indices())
        set.push_back({"form of floor " + std::to_string(floor.number() + 1),
                       [record, floor](const Draft &d) { return floor_form(d, *record, floor); }});
    set.push_back(
        {"form of logs elsewhere", [record](const Draft &d) { return elsewhere_form(d, *record); }});
    return set;
}

} // namespace roundlay::sheets
