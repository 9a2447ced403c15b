#include "exporters/step/property_writer.h"

namespace roundlay::step {

using part21::Ref;
using part21::Typed;

namespace {
constexpr const char *attribute_kind = "user defined attribute";
} // namespace

void PropertyWriter::add_attributes(const Attributes &attributes, Ref owner, Ref context) {
    for (const Attribute &each : attributes) {
        const Ref general = general_property(each.name);
        const Ref property = data_.add("PROPERTY_DEFINITION", each.name, attribute_kind, owner);
        data_.add("GENERAL_PROPERTY_ASSOCIATION", attribute_kind, "", general, property);
        const Ref item = data_.add("DESCRIPTIVE_REPRESENTATION_ITEM", each.name, each.value);
        const Ref representation = data_.add("REPRESENTATION", "", std::vector{item}, context);
        data_.add("PROPERTY_DEFINITION_REPRESENTATION", property, representation);
    }
}

void PropertyWriter::add_validation(const Measures &measures, Ref shape, Ref context) {
    add_measured("surface area", "surface area measure", "AREA_MEASURE", measures.area, 2, shape, context);
    add_measured("volume", "volume measure", "VOLUME_MEASURE", measures.volume, 3, shape, context);
    represent("centroid", data_.add("CARTESIAN_POINT", "centre point", measures.centroid), shape, context);
}

void PropertyWriter::add_children(std::size_t count, Ref shape, Ref context) {
    const char *name = "number of children";
    const Ref item =
        data_.add("VALUE_REPRESENTATION_ITEM", name, Typed{"COUNT_MEASURE", static_cast<double>(count)});
    represent(name, item, shape, context, "assembly validation property");
}

Ref PropertyWriter::general_property(const std::string &name) {
    const auto [entry, is_new] = general_.try_emplace(name);
    if (is_new) entry->second = data_.add("GENERAL_PROPERTY", "", name, attribute_kind);
    return entry->second;
}

Ref PropertyWriter::unit_to_the(int power) {
    const auto [entry, is_new] = powers_.try_emplace(power);
    if (is_new) {
        const Ref element = data_.add("DERIVED_UNIT_ELEMENT", length_, static_cast<double>(power));
        entry->second = data_.add("DERIVED_UNIT", std::vector{element});
    }
    return entry->second;
}

void PropertyWriter::add_measured(const char *name, const char *item, const char *type, double value,
                                  int power, Ref shape, Ref context) {
    const Ref unit = unit_to_the(power);
    represent(name, data_.add("MEASURE_REPRESENTATION_ITEM", item, Typed{type, value}, unit), shape, context);
}

void PropertyWriter::represent(const char *name, Ref item, Ref shape, Ref context, const char *kind) {
    const Ref property = data_.add("PROPERTY_DEFINITION", kind, name, shape);
    const Ref representation = data_.add("REPRESENTATION", name, std::vector{item}, context);
    data_.add("PROPERTY_DEFINITION_REPRESENTATION", property, representation);
}

} // namespace roundlay::step
