#include "kernel/layout/corners/notch.h"

#include "kernel/shell/notch_kinds.h"

namespace roundlay {

TailTop tail_top(const NotchRule &rule) {
    if (rule.kind == NotchKind::stated) return {rule.along.ratio(), rule.across.ratio()};
    const KindOfNotch &kind = kind_of(rule.kind);
    const double s = rule.slope.ratio();
    return {kind.along * s, kind.across * s};
}

Plane seam_plane(const TailTop &top, Vec3 middle, Vec3 along, Vec3 across) {
    const double c = dot(along, across), k = 1 / (1 - c * c);
    const Vec3 gradient =
        k * (top.along - c * top.across) * along + k * (top.across - c * top.along) * across;
    const double z_at_world_origin = middle.z - gradient.x * middle.x - gradient.y * middle.y;
    return plane_over(z_at_world_origin, gradient.x, gradient.y);
}

double lock(const TailTop &own, const TailTop &other) {
    return own.along - other.across;
}

} // namespace roundlay
