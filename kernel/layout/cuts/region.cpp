#include "kernel/layout/cuts/region.h"

#include "kernel/geometry/tolerance.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace roundlay {

std::vector<Plane> region_of(const FaceCut &cut) {
    return {cut.plane.flipped()};
}

std::vector<Plane> region_of(const SeamCut &cut, const Blank &blank) {
    std::vector<Plane> region;
    const double k = 1 / std::sqrt(1 + cut.skew * cut.skew);
    const auto shoulder = [&](double x) {
        return Plane{{k, -k * cut.skew, 0}, k * (x - cut.skew * blank.width / 2)};
    };
    if (!cut.open_at(End::datum, blank.length)) region.push_back(shoulder(cut.x_from).flipped());
    if (!cut.open_at(End::far, blank.length)) region.push_back(shoulder(cut.x_to));
    region.push_back(cut.seam.flipped());
    return region;
}

std::vector<Plane> region_of(const BoxCut &cut) {
    const Box3 &b = cut.box;
    const Plane floor = plane_over(b.low.z - cut.fall * cut.fall_from, 0, cut.fall).flipped();
    return {
        {{-1, 0, 0}, -b.low.x}, {{1, 0, 0}, b.high.x},  cut.fall == 0 ? Plane{{0, 0, -1}, -b.low.z} : floor,
        {{0, 0, 1}, b.high.z},  {{0, -1, 0}, -b.low.y}, {{0, 1, 0}, b.high.y}};
}

std::vector<Plane> region_of(const PocketCut &cut, const Blank &blank) {
    const double way = cut.y_face > cut.y_back ? 1 : -1;
    std::vector<Plane> region{{{0, -way, 0}, -way * cut.y_back}};
    const double widens = (cut.half_at_face - cut.half_at_back) / (cut.y_face - cut.y_back);
    const double k = 1 / std::sqrt(1 + widens * widens);
    for (const double side : {-1.0, 1.0}) // x = cut.x + side * (half_at_back + widens * (y - y_back))
        region.push_back(
            {{side * k, -k * widens, 0}, k * (side * cut.x + cut.half_at_back - widens * cut.y_back)});
    if (cut.z_top < blank.height - tolerance::thinnest) region.push_back({{0, 0, 1}, cut.z_top});
    const double half = std::max(cut.half_at_back, cut.half_at_face);
    double highest = -std::numeric_limits<double>::max();
    for (const double x : {cut.x - half, cut.x + half})
        for (const double y : {cut.y_back, cut.y_face})
            highest = std::max(highest, cut.bed.height_at(x, y));
    if (highest > tolerance::thinnest) region.push_back(cut.bed.flipped());
    return region;
}

std::vector<Plane> region_of(const CheekCut &cut, const Blank &blank) {
    std::vector<Plane> region{cut.plane.flipped()};
    if (cut.x_from > tolerance::thinnest) region.push_back({{-1, 0, 0}, -cut.x_from});
    if (cut.x_to < blank.length - tolerance::thinnest) region.push_back({{1, 0, 0}, cut.x_to});
    return region;
}

std::vector<Plane> region_of(const MendCut &cut, const Blank &blank) {
    const bool side = cut.face == LogFace::outside || cut.face == LogFace::inside;
    const Vec3 across = side ? Vec3{0, 0, 1} : Vec3{0, 1, 0};
    const double whole = side ? blank.height : blank.width;
    std::vector<Plane> region{cut.bed.flipped()};
    if (cut.x_from > tolerance::thinnest) region.push_back({{-1, 0, 0}, -cut.x_from});
    if (cut.x_to < blank.length - tolerance::thinnest) region.push_back({{1, 0, 0}, cut.x_to});
    if (cut.low > tolerance::thinnest) region.push_back({-across, -cut.low});
    if (cut.high < whole - tolerance::thinnest) region.push_back({across, cut.high});
    return region;
}

} // namespace roundlay
