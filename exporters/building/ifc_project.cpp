#include "exporters/building/ifc_project.h"

namespace roundlay::building {

namespace {

/// How exact the file says points are, mm: far more than they are off, far less than a saw sees.
constexpr double stated_accuracy = 1e-5;

/// Nobody, where the document names neither: then nothing is said of owners.
void add_owner(IfcText &text, const Project &project, std::int64_t seconds) {
    if (project.creator.empty() && project.owner.empty()) return;
    const Unset none;
    const std::string nobody = "not stated";
    const Ref person = text.add("IFCPERSON", none, label_of(project.creator).value_or(nobody), none, none,
                                none, none, none, none);
    const Ref owner =
        text.add("IFCORGANIZATION", none, label_of(project.owner).value_or(nobody), none, none, none);
    const Ref both = text.add("IFCPERSONANDORGANIZATION", person, owner, none);
    const Ref maker = text.add("IFCORGANIZATION", none, "roundlay", none, none, none);
    const Ref program = text.add("IFCAPPLICATION", maker, ROUNDLAY_VERSION, "roundlay", "roundlay");
    text.owned_by(text.add("IFCOWNERHISTORY", both, program, none, none, none, none, none, seconds));
}

Ref si_unit(IfcText &text, const char *what, std::optional<Enumeration> prefix, const char *name) {
    return text.add("IFCSIUNIT", Derived{}, Enumeration{what}, prefix, Enumeration{name});
}

Ref add_units(IfcText &text) {
    const auto milli = Enumeration{"MILLI"}, kilo = Enumeration{"KILO"};
    const Ref mass = si_unit(text, "MASSUNIT", kilo, "GRAM");
    const Ref metre = si_unit(text, "LENGTHUNIT", std::nullopt, "METRE");
    const std::vector<Ref> by{text.add("IFCDERIVEDUNITELEMENT", mass, 1),
                              text.add("IFCDERIVEDUNITELEMENT", metre, -3)};
    const Ref density = text.add("IFCDERIVEDUNIT", by, Enumeration{"MASSDENSITYUNIT"}, Unset{});
    return text.add("IFCUNITASSIGNMENT",
                    std::vector{si_unit(text, "LENGTHUNIT", milli, "METRE"),
                                si_unit(text, "AREAUNIT", std::nullopt, "SQUARE_METRE"),
                                si_unit(text, "VOLUMEUNIT", std::nullopt, "CUBIC_METRE"),
                                si_unit(text, "PLANEANGLEUNIT", std::nullopt, "RADIAN"), mass, density});
}

Ref add_context(IfcText &text, const char *name, Ref model) {
    const Unset none;
    const Derived as_the_model;
    return text.add("IFCGEOMETRICREPRESENTATIONSUBCONTEXT", name, "Model", as_the_model, as_the_model,
                    as_the_model, as_the_model, model, none, Enumeration{"MODEL_VIEW"}, none);
}

} // namespace

IfcProject add_project(IfcText &text, const House &house, std::int64_t seconds) {
    const Unset none;
    add_owner(text, house.project, seconds);
    const Ref units = add_units(text), origin = text.placement({});
    const Ref model =
        text.add("IFCGEOMETRICREPRESENTATIONCONTEXT", none, "Model", 3, stated_accuracy, origin, none);
    const Ref body = add_context(text, "Body", model), box = add_context(text, "Box", model);
    const Ref project =
        text.rooted("IFCPROJECT", "project", house.name, "", none, none, none, std::vector{model}, units);
    return {project, {body, box}};
}

} // namespace roundlay::building
