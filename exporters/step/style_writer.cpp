#include "exporters/step/style_writer.h"

namespace roundlay::step {

using part21::Ref;

Ref StyleWriter::surface_style(const Colour &colour) {
    for (const auto &[known, style] : known_)
        if (known == colour) return style;
    const auto part = [](int channel) { return channel / 255.0; };
    const Ref rgb = data_.add("COLOUR_RGB", "", part(colour.r), part(colour.g), part(colour.b));
    const Ref fill = data_.add("FILL_AREA_STYLE_COLOUR", "", rgb);
    const Ref area = data_.add("FILL_AREA_STYLE", "", std::vector{fill});
    const Ref surface = data_.add("SURFACE_STYLE_FILL_AREA", area);
    const Ref side = data_.add("SURFACE_SIDE_STYLE", "", std::vector{surface});
    known_.emplace_back(colour, data_.add("SURFACE_STYLE_USAGE", part21::Enumeration{"BOTH"}, side));
    return known_.back().second;
}

void StyleWriter::add(const Colour &colour, Ref solid, Ref context, const std::vector<UseColour> &uses) {
    const Ref own = data_.add("PRESENTATION_STYLE_ASSIGNMENT", std::vector{surface_style(colour)});
    const Ref styled = data_.add("STYLED_ITEM", "colour", std::vector{own}, solid);
    std::vector<Ref> all{styled};
    for (const UseColour &use : uses) {
        const Ref style =
            data_.add("PRESENTATION_STYLE_BY_CONTEXT", std::vector{surface_style(use.colour)}, use.shape);
        all.push_back(
            data_.add("OVER_RIDING_STYLED_ITEM", "colour of one use", std::vector{style}, solid, styled));
    }
    data_.add("MECHANICAL_DESIGN_GEOMETRIC_PRESENTATION_REPRESENTATION", "", all, context);
}

} // namespace roundlay::step
