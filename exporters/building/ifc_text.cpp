#include "exporters/building/ifc_text.h"

namespace roundlay::building {

std::optional<std::string> label_of(const std::string &words) {
    constexpr std::size_t longest = 255; // IfcLabel, IfcIdentifier
    if (words.empty()) return std::nullopt;
    return part21::shortened(words, longest);
}

/// Two things may be called the same; their identifiers may not be.
std::string IfcText::guid(const std::string &what) {
    std::string made = guid_of(house_, what);
    for (int again = 2; !given_.insert(made).second; ++again)
        made = guid_of(house_, what + '\n' + std::to_string(again));
    return made;
}

Ref IfcText::direction(Vec3 unit) {
    const Vec3 v = part21::along_axes(unit);
    const auto [entry, is_new] = directions_.try_emplace({v.x, v.y, v.z});
    if (is_new) entry->second = data_.add("IFCDIRECTION", v);
    return entry->second;
}

Ref IfcText::placement(const Frame &frame) {
    constexpr Vec3 up{0, 0, 1}, east{1, 0, 0};
    const Ref origin = point(frame.origin);
    const Vec3 z = part21::along_axes(frame.z), x = part21::along_axes(frame.x);
    if (z == up && x == east) return data_.add("IFCAXIS2PLACEMENT3D", origin, Unset{}, Unset{});
    const Ref axis = direction(z);
    return data_.add("IFCAXIS2PLACEMENT3D", origin, axis, direction(x));
}

Ref IfcText::local_placement(std::optional<Ref> within, const Frame &frame) {
    const Ref place = placement(frame);
    return data_.add("IFCLOCALPLACEMENT", within, place);
}

} // namespace roundlay::building
