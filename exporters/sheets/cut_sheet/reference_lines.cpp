#include "exporters/sheets/cut_sheet/reference_lines.h"

#include "exporters/sheets/cut_sheet/features.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double inch = mm_per_inch;
constexpr double share = 0.25;  ///< of the wood's height that stays on either side of a level line
constexpr double clear_by = 25; ///< mm between the end line and whatever is cut
constexpr std::array end_mm{500.0, 400.0, 600.0, 300.0, 800.0, 1000.0, 1200.0, 1500.0, 2000.0, 200.0};
constexpr std::array end_inches{20.0, 16.0, 24.0, 12.0, 30.0, 36.0, 48.0, 60.0, 80.0, 8.0};

double rounded(double mm, double step) {
    return std::round(mm / step) * step;
}

/// Whether the line leaves enough wood over and under it at that place.
bool is_in_the_wood(const HewnFaces &faces, const HewnFace &line, double x) {
    const double low = faces.lowest(x), high = faces.highest(x), air = share * (high - low);
    return line.at(x) > low + air && line.at(x) < high - air;
}

bool is_in_the_wood(const HewnFaces &faces, const HewnFace &line) {
    return is_in_the_wood(faces, line, 0) && is_in_the_wood(faces, line, faces.blank.length);
}

HewnFace through(double datum, double far, double length) {
    return {datum, (far - datum) / length};
}

struct Blocked {
    double from = 0, to = 0;
};

void block(std::vector<Blocked> &all, const SawLine &from, const SawLine &to) {
    all.push_back({std::min(from.outside, from.inside), std::max(to.outside, to.inside)});
}

/// All stretches of the log in which something is cut. A groove along the log leaves the line on its other
/// faces.
std::vector<Blocked> blocked(const Features &f) {
    const auto &[notches, boxes, scopes, pegs, pockets, tails, mends] = f.parts();
    std::vector<Blocked> all;
    for (const Notch &n : notches)
        block(all, n.from, n.to);
    for (const BoxPart &b : boxes)
        all.push_back({b.x_from, b.x_to});
    for (const Scope &s : scopes)
        if (s.cut->use == ScopeUse::saddle) all.push_back({s.x_from, s.x_to});
    for (const PegHole &p : pegs)
        all.push_back({p.bore->x - p.bore->diameter / 2, p.bore->x + p.bore->diameter / 2});
    for (const Pocket &p : pockets) {
        const double half = std::max(p.width_at_face / 2, p.cut->half_at_back);
        all.push_back({p.cut->x - half, p.cut->x + half});
    }
    for (const TailedEnd &t : tails) {
        const double length = f.blank.length;
        all.push_back(t.end == End::datum ? Blocked{0, t.length} : Blocked{length - t.length, length});
    }
    for (const MendPart &m : mends)
        all.push_back({m.x_from, m.x_to});
    block(all, {0, 0}, f.datum_end);
    block(all, f.far_end, {f.blank.length, f.blank.length});
    return all;
}

} // namespace

LevelLine level_line_of(const HewnFaces &faces, UnitSystem units) {
    const double length = faces.blank.length;
    if (const RoundCut *r = faces.round) {
        const HewnFace axis =
            through(r->from.z, r->from.z + (r->to.z - r->from.z) * length / (r->to.x - r->from.x), length);
        if (is_in_the_wood(faces, axis)) return {LevelRuns::axis, axis};
    }
    const bool metric = units == UnitSystem::metric;
    for (const double step : {metric ? 10.0 : inch / 2, metric ? 1.0 : inch / 16}) {
        const HewnFace level{rounded(faces.blank.height / 2, step), 0};
        if (is_in_the_wood(faces, level)) return {LevelRuns::level, level};
    }
    const auto middle = [&](double x) { return (faces.lowest(x) + faces.highest(x)) / 2; };
    return {LevelRuns::in_between, through(middle(0), middle(length), length)};
}

std::optional<double> end_line_of(const Features &features, UnitSystem units) {
    const std::vector<Blocked> all = blocked(features);
    for (std::size_t i = 0; i < end_mm.size(); ++i) {
        const double at = units == UnitSystem::metric ? end_mm[i] : end_inches[i] * inch;
        const bool clear = std::ranges::none_of(
            all, [&](const Blocked &b) { return at > b.from - clear_by && at < b.to + clear_by; });
        if (clear && at < features.blank.length - clear_by) return at;
    }
    return std::nullopt;
}

} // namespace roundlay::sheets
