#include "exporters/sheets/cut_sheet/view.h"

#include <stdexcept>

namespace roundlay::sheets {
namespace {

constexpr Vec3 x{1, 0, 0}, y{0, 1, 0}, z{0, 0, 1};

/// An edge along an axis appears sqrt(2/3) long in an isometric projection; the drawing is enlarged by that.
Projection isometric() {
    const double enlarged = std::sqrt(1.5);
    const Vec3 toward = unit({-1, -1, 1});
    const Vec3 across = unit({1, -1, 0});
    const Vec3 up = cross(toward, across);
    return {enlarged * across, enlarged * up, toward};
}

} // namespace

Projection projection_of(View view) {
    switch (view) {
    case View::top:
        return {x, y, z};
    case View::outside:
        return {x, z, -y};
    case View::under:
        return {x, -y, -z};
    case View::inside:
        return {x, -z, y};
    case View::datum_end:
        return {-y, z, -x};
    case View::far_end:
        return {y, z, x};
    case View::isometric:
        return isometric();
    }
    throw std::logic_error("no such view");
}

std::string name_of(View view, const Words &words) {
    switch (view) {
    case View::top:
        return words.say("Top");
    case View::outside:
        return words.say("Outside");
    case View::under:
        return words.say("Under");
    case View::inside:
        return words.say("Inside");
    case View::datum_end:
        return words.say("Datum end");
    case View::far_end:
        return words.say("Far end");
    case View::isometric:
        return words.say("Isometric");
    }
    throw std::logic_error("no such view");
}

} // namespace roundlay::sheets
