#include "exporters/building/ifc_about.h"

namespace roundlay::building {

namespace {

constexpr double mm2_per_m2 = 1e6, mm3_per_m3 = 1e9;

struct Spelling {
    const char *entity;
    double unit; ///< of the file, in that of the value
};

Spelling spelling_of(Measured what) {
    switch (what) {
    case Measured::area:
        return {"IFCQUANTITYAREA", mm2_per_m2};
    case Measured::volume:
        return {"IFCQUANTITYVOLUME", mm3_per_m3};
    case Measured::weight:
        return {"IFCQUANTITYWEIGHT", 1};
    case Measured::length:
        break;
    }
    return {"IFCQUANTITYLENGTH", 1};
}

/// As one property differs from another.
std::string key_of(const Property &property) {
    std::string key = property.name + '\n' + std::string(property.type) + '\n';
    std::visit(
        [&](const auto &value) {
            if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::string>)
                key += value;
            else
                part21::append_real(key, static_cast<double>(value));
        },
        property.value);
    return key;
}

/// Labels and identifiers have a greatest length, texts have none.
std::string fitting(const Property &property, const std::string &words) {
    return property.type == "IFCTEXT" ? words : label_of(words).value_or("");
}

} // namespace

void IfcAbout::tell(const About &about, Ref thing, const std::string &what) {
    for (const PropertySet &set : about.properties) {
        if (set.properties.empty()) continue;
        std::vector<Ref> properties;
        for (const Property &each : set.properties)
            properties.push_back(property(each));
        const std::string key = what + '\n' + set.name;
        define(text_.rooted("IFCPROPERTYSET", key, set.name, "", properties), thing, key);
    }
    if (about.quantities.quantities.empty()) return;
    std::vector<Ref> quantities;
    for (const Quantity &each : about.quantities.quantities)
        quantities.push_back(quantity(each));
    const std::string key = what + '\n' + about.quantities.name;
    define(text_.rooted("IFCELEMENTQUANTITY", key, about.quantities.name, "", Unset{}, quantities), thing,
           key);
}

void IfcAbout::define(Ref set, Ref thing, const std::string &what) {
    text_.rooted("IFCRELDEFINESBYPROPERTIES", what + "\nof", "", "", std::vector{thing}, set);
}

Ref IfcAbout::property(const Property &property) {
    const auto known = properties_.find(key_of(property));
    if (known != properties_.end()) return known->second;
    const Ref made = std::visit([&](const auto &each) { return value(property, each); }, property.value);
    properties_.emplace(key_of(property), made);
    return made;
}

template <typename Value> Ref IfcAbout::value(const Property &property, const Value &value) {
    if constexpr (std::is_same_v<Value, std::string>) {
        const auto words = part21::typed(property.type, fitting(property, value));
        if (!property.list.empty()) {
            const Ref list = list_of(property.list);
            return text_.add("IFCPROPERTYENUMERATEDVALUE", property.name, Unset{}, std::vector{words}, list);
        }
        return text_.add("IFCPROPERTYSINGLEVALUE", property.name, Unset{}, words, Unset{});
    } else {
        return text_.add("IFCPROPERTYSINGLEVALUE", property.name, Unset{},
                         part21::typed(property.type, value), Unset{});
    }
}

/// The standard's words for what stands and what is to come; there is no other list.
Ref IfcAbout::list_of(std::string_view name) {
    const auto [entry, is_new] = lists_.try_emplace(name);
    if (!is_new) return entry->second;
    std::vector<part21::TypedValue<std::string>> words;
    for (const char *word : {"NEW", "EXISTING", "DEMOLISH", "TEMPORARY", "OTHER", "NOTKNOWN", "UNSET"})
        words.push_back(part21::typed("IFCLABEL", std::string(word)));
    entry->second = text_.add("IFCPROPERTYENUMERATION", name, words, Unset{});
    return entry->second;
}

Ref IfcAbout::quantity(const Quantity &quantity) {
    const auto [entity, unit] = spelling_of(quantity.what);
    return text_.add(entity, quantity.name, label_of(quantity.note), Unset{}, quantity.value / unit, Unset{});
}

Ref IfcAbout::material(const Material &wood) {
    const Ref made = text_.add("IFCMATERIAL", wood.name, Unset{}, "wood");
    if (wood.high <= 0) return made;
    const std::string_view density = "IFCMASSDENSITYMEASURE";
    const std::vector<Ref> properties{
        text_.add("IFCPROPERTYBOUNDEDVALUE", "MassDensity", Unset{}, part21::typed(density, wood.high),
                  part21::typed(density, wood.low), Unset{}, Unset{}),
        text_.add("IFCPROPERTYSINGLEVALUE", "Basis", Unset{}, part21::typed("IFCTEXT", wood.basis), Unset{})};
    text_.add("IFCMATERIALPROPERTIES", "Roundlay_Wood", Unset{}, properties, made);
    return made;
}

} // namespace roundlay::building
