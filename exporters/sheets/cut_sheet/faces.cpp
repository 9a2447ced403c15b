// What a log reaches before it is notched, and so what is measured from.
#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

Vec3 axis_at(const RoundCut &round, double x) {
    const double run = round.to.x - round.from.x;
    return run == 0 ? round.from : round.from + (x - round.from.x) / run * (round.to - round.from);
}

} // namespace

double Features::lowest(double x) const {
    const double face = std::max(0.0, under.at(x));
    return round == nullptr ? face : std::max(face, axis_at(*round, x).z - round->radius);
}

double Features::highest(double x) const {
    const double face = std::min(piece->blank.height, top.at(x));
    return round == nullptr ? face : std::min(face, axis_at(*round, x).z + round->radius);
}

double Features::outermost(double x) const {
    const double face = std::max(0.0, outside.at(x));
    return round == nullptr ? face : std::max(face, axis_at(*round, x).y - round->radius);
}

double Features::innermost(double x) const {
    const double face = std::min(piece->blank.width, inside.at(x));
    return round == nullptr ? face : std::min(face, axis_at(*round, x).y + round->radius);
}

bool Features::tapers() const {
    return top.tapers() || under.tapers() || outside.tapers() || inside.tapers();
}

Footing under_footing(const Features &features) {
    const RoundCut *round = features.round;
    if (round != nullptr && round->from.z - round->radius > features.under.at(0) - same_level)
        return Footing::touched;
    return features.under.tapers() ? Footing::hewn : Footing::face;
}

Footing outside_footing(const Features &features) {
    const RoundCut *round = features.round;
    if (round != nullptr && round->from.y - round->radius > features.outside.at(0) - same_level)
        return Footing::touched;
    return features.outside.tapers() ? Footing::hewn : Footing::face;
}

std::vector<Level> log_heights(const Features &features) {
    std::vector<Level> all;
    const auto add = [&](double x, int side) {
        const double z = features.highest(x);
        all.push_back({true, x, z, side, features.height(x, z)});
    };
    add(features.datum_end.outside, -1);
    if (features.top.tapers() || features.under.tapers()) add(features.far_end.outside, 1);
    return all;
}

std::optional<double> log_width(const Features &features, End end) {
    const bool datum = end == End::datum;
    if (!datum && !features.outside.tapers() && !features.inside.tapers()) return {};
    const SawLine &at = datum ? features.datum_end : features.far_end;
    const double x = datum ? std::max(at.outside, at.inside) : std::min(at.outside, at.inside);
    return features.innermost(x) - features.outermost(x);
}

} // namespace roundlay::sheets
