// The exact surfaces of a piece, planes and even cylinders: their corners, and the curves that they meet in.
#pragma once

#include "kernel/layout/wood/round_flats.h"

#include <optional>
#include <span>
#include <variant>
#include <vector>

namespace roundlay {

using Surface = std::variant<Plane, RoundSurface>;

/// > 0 on the side that a plane's normal points to; outside a cylinder, wherever the wood is.
double distance(const Surface &surface, Vec3 p);
/// Unit, toward growing distance.
Vec3 gradient(const Surface &surface, Vec3 p);

/// Level and across a cylinder's axis, and square to both: where angles about it start from, and go to first.
struct AxisCross {
    Vec3 across, over;
    explicit AxisCross(Vec3 along);
};

/// Round the axis from AxisCross::across.
double angle_about(const RoundSurface &round, Vec3 p);

/// Where the line p + s * along meets a surface: the s nearest to `guess`. A plane is not to lie along the
/// line.
std::optional<double> along_to(const Surface &surface, Vec3 p, Vec3 along, double guess);

/// The corner where all these meet, near `from`. None where it is further off than `reach` or they meet at
/// too sharp an angle to say.
std::optional<Vec3> corner_of(std::span<const Surface> surfaces, Vec3 from, double reach);

/// Part of a circle about a cylinder's axis.
struct Arc {
    Vec3 centre;
    Vec3 axis;                   ///< unit; the arc turns counter-clockwise about it
    Vec3 start;                  ///< unit, from the centre
    double radius = 0, turn = 0; ///< 0 < turn
};

/// One edge between two corners: a line where it has neither arc nor poles.
struct CurveBetween {
    std::optional<Arc> arc;
    std::vector<Vec3> poles; ///< of a polynomial over [0, 1]
    Vec3 from, to;
};

/// The curve in which two surfaces meet, from one corner to another on a way that passes near the points
/// between, as one or more edges end to end. Polynomials keep to both surfaces within `curve_fit`. None where
/// the surfaces touch rather than cut one another.
std::optional<std::vector<CurveBetween>> curve_between(const Surface &a, const Surface &b,
                                                       std::span<const Vec3> way);

/// mm
inline constexpr double curve_fit = 1e-7;

} // namespace roundlay
