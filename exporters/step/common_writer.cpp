#include "exporters/step/common_writer.h"

namespace roundlay::step {

using part21::Derived;
using part21::Enumeration;
using part21::Ref;
using part21::Typed;
using part21::Unset;

namespace {

/// How exact the file says it is, mm: vertices lie on their faces far closer than this.
constexpr double stated_accuracy = 1e-5;

Ref add_angle_unit(part21::DataWriter &data) {
    return data.complex()
        .part("NAMED_UNIT", Derived{})
        .part("PLANE_ANGLE_UNIT")
        .part("SI_UNIT", Unset{}, Enumeration{"RADIAN"})
        .end();
}

Ref add_solid_angle_unit(part21::DataWriter &data) {
    return data.complex()
        .part("NAMED_UNIT", Derived{})
        .part("SI_UNIT", Unset{}, Enumeration{"STERADIAN"})
        .part("SOLID_ANGLE_UNIT")
        .end();
}

Ref add_millimetre(part21::DataWriter &data) {
    return data.complex()
        .part("LENGTH_UNIT")
        .part("NAMED_UNIT", Derived{})
        .part("SI_UNIT", Enumeration{"MILLI"}, Enumeration{"METRE"})
        .end();
}

} // namespace

Commons add_commons(part21::DataWriter &data) {
    Commons made;
    const Ref application =
        data.add("APPLICATION_CONTEXT", "core data for automotive mechanical design processes");
    data.add("APPLICATION_PROTOCOL_DEFINITION", "international standard", "automotive_design", 2000,
             application);
    made.product_context = data.add("PRODUCT_CONTEXT", "", application, "mechanical");
    made.definition_context =
        data.add("PRODUCT_DEFINITION_CONTEXT", "part definition", application, "design");
    made.millimetre = add_millimetre(data);
    made.radian = add_angle_unit(data);
    made.steradian = add_solid_angle_unit(data);
    made.accuracy =
        data.add("UNCERTAINTY_MEASURE_WITH_UNIT", Typed{"LENGTH_MEASURE", stated_accuracy}, made.millimetre,
                 "distance_accuracy_value", "how close vertices lie to their faces");
    return made;
}

Ref add_context(part21::DataWriter &data, const Commons &commons, const std::string &id) {
    return data.complex()
        .part("GEOMETRIC_REPRESENTATION_CONTEXT", 3)
        .part("GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT", std::vector{commons.accuracy})
        .part("GLOBAL_UNIT_ASSIGNED_CONTEXT",
              std::vector{commons.millimetre, commons.radian, commons.steradian})
        .part("REPRESENTATION_CONTEXT", id, "millimetres")
        .end();
}

} // namespace roundlay::step
