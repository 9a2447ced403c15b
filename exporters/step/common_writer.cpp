#include "exporters/step/common_writer.h"

#include "exporters/step/in_unit.h"

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

/// 25.4 mm exactly (international inch).
Ref add_inch(part21::DataWriter &data, Ref millimetre) {
    const Ref exponents = data.add("DIMENSIONAL_EXPONENTS", 1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
    const Ref factor = data.add("LENGTH_MEASURE_WITH_UNIT", Typed{"LENGTH_MEASURE", 25.4}, millimetre);
    return data.complex()
        .part("CONVERSION_BASED_UNIT", "INCH", factor)
        .part("LENGTH_UNIT")
        .part("NAMED_UNIT", exponents)
        .end();
}

Ref add_application(part21::DataWriter &data, StepSchema schema) {
    const bool ap242 = schema == StepSchema::ap242;
    const Ref application =
        data.add("APPLICATION_CONTEXT", ap242 ? "managed model based 3d engineering"
                                              : "core data for automotive mechanical design processes");
    data.add("APPLICATION_PROTOCOL_DEFINITION", "international standard",
             ap242 ? "ap242_managed_model_based_3d_engineering" : "automotive_design", ap242 ? 2020 : 2000,
             application);
    return application;
}

} // namespace

Commons add_commons(part21::DataWriter &data, StepSchema schema, StepUnit unit) {
    const bool inches = unit == StepUnit::inch;
    Commons made;
    made.unit_words = inches ? "inches" : "millimetres";
    const Ref application = add_application(data, schema);
    made.product_context = data.add("PRODUCT_CONTEXT", "", application, "mechanical");
    made.definition_context =
        data.add("PRODUCT_DEFINITION_CONTEXT", "part definition", application, "design");
    made.length = add_millimetre(data);
    if (inches) made.length = add_inch(data, made.length);
    made.radian = add_angle_unit(data);
    made.steradian = add_solid_angle_unit(data);
    made.accuracy = data.add("UNCERTAINTY_MEASURE_WITH_UNIT",
                             Typed{"LENGTH_MEASURE", stated_accuracy * per_millimetre(unit)}, made.length,
                             "distance_accuracy_value", "how close vertices lie to their faces");
    return made;
}

Ref add_context(part21::DataWriter &data, const Commons &commons, const std::string &id) {
    return data.complex()
        .part("GEOMETRIC_REPRESENTATION_CONTEXT", 3)
        .part("GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT", std::vector{commons.accuracy})
        .part("GLOBAL_UNIT_ASSIGNED_CONTEXT", std::vector{commons.length, commons.radian, commons.steradian})
        .part("REPRESENTATION_CONTEXT", id, commons.unit_words)
        .end();
}

} // namespace roundlay::step
