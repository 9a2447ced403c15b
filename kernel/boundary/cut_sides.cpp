#include "kernel/boundary/cut_sides.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/cuts/region.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double same_direction = 1e-7; ///< of unit vectors

bool same_way(Vec3 a, Vec3 b) {
    return length(a - b) < same_direction;
}

/// By the plane of its region: what part of that cut it is. Planes of a region look out of what is taken.
struct PartOfCut {
    const Plane &side;

    bool along() const { return std::abs(side.normal.x) > 0.5; }
    bool level() const { return std::abs(side.normal.z) > 0.5; }

    FacePart operator()(const FaceCut &cut) const { return part_of(cut.face); }
    FacePart operator()(const SeamCut &cut) const {
        return same_way(side.normal, -cut.seam.normal) ? FacePart::seam : FacePart::shoulder;
    }
    FacePart operator()(const BoxCut &cut) const {
        switch (cut.use) {
        case BoxUse::groove:
            return along() ? FacePart::bottom : level() ? FacePart::end : FacePart::side;
        case BoxUse::seat:
        case BoxUse::step:
            return along() ? FacePart::end : level() ? FacePart::seat : FacePart::side;
        case BoxUse::sill:
        case BoxUse::header:
        case BoxUse::through:
            break;
        }
        if (!level()) return along() ? FacePart::jamb : FacePart::side;
        return side.normal.z < 0 ? FacePart::sill : FacePart::head;
    }
    FacePart operator()(const PocketCut &cut) const {
        if (same_way(side.normal, -cut.bed.normal)) return FacePart::bed;
        if (level()) return FacePart::ceiling;
        return std::abs(side.normal.x) > same_direction ? FacePart::side : FacePart::back;
    }
    FacePart operator()(const CheekCut &cut) const {
        return same_way(side.normal, -cut.plane.normal) ? FacePart::cheek : FacePart::end;
    }
    FacePart operator()(const MendCut &cut) const {
        if (same_way(side.normal, -cut.bed.normal)) return FacePart::bed;
        return along() ? FacePart::end : FacePart::side;
    }
};

template <typename PlaneCut>
std::vector<CutSide> named(const std::vector<Plane> &region, const PlaneCut &cut) {
    std::vector<CutSide> sides;
    for (const Plane &plane : region)
        sides.push_back({plane, PartOfCut{plane}(cut)});
    return sides;
}

Vec3 across(const ScopeCut &cut) {
    return unit(cross(Vec3{0, 0, 1}, cut.along));
}

/// Its plane sides stand straight over its edges.
std::vector<CutSide> sides_of_scope(const ScopeCut &cut, const Blank &blank) {
    std::vector<CutSide> sides;
    for (const Vec3 &n : {across(cut), -across(cut)})
        sides.push_back({{n, dot(n, cut.at) + cut.half_width()}, FacePart::cheek});
    if (cut.use != ScopeUse::groove) return sides;
    if (cut.x_from > tolerance::thinnest) sides.push_back({{{-1, 0, 0}, -cut.x_from}, FacePart::end});
    if (cut.x_to < blank.length - tolerance::thinnest)
        sides.push_back({{{1, 0, 0}, cut.x_to}, FacePart::end});
    return sides;
}

} // namespace

FacePart part_of(LogFace face) {
    switch (face) {
    case LogFace::top:
        return FacePart::top;
    case LogFace::under:
        return FacePart::under;
    case LogFace::outside:
        return FacePart::outside;
    case LogFace::inside:
        return FacePart::inside;
    case LogFace::datum_end:
        return FacePart::datum_end;
    case LogFace::far_end:
        break;
    }
    return FacePart::far_end;
}

std::vector<CutSide> sides_of(const Cut &cut, const Blank &blank) {
    using Sides = std::vector<CutSide>;
    return match(
        cut, [&](const FaceCut &face) { return named(region_of(face), face); },
        [&](const SeamCut &seam) { return named(region_of(seam, blank), seam); },
        [&](const BoxCut &box) { return named(region_of(box), box); },
        [&](const PocketCut &pocket) { return named(region_of(pocket, blank), pocket); },
        [&](const CheekCut &cheek) { return named(region_of(cheek, blank), cheek); },
        [&](const MendCut &mend) { return named(region_of(mend, blank), mend); },
        [&](const ScopeCut &scope) { return sides_of_scope(scope, blank); },
        [](const RoundCut &) { return Sides{}; }, [](const Bore &) { return Sides{}; });
}

double scoped_to(const ScopeCut &cut, Vec3 place) {
    const double off = dot(place - cut.at, across(cut));
    return cut.at.z + std::sqrt(std::max(0.0, cut.radius * cut.radius - off * off));
}

} // namespace roundlay
