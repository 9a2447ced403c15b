// Stresses in a joist or beam by the formulas of the Wood Handbook, chapter 9 (USDA FPL, FPL-GTR-282;
// second-hand), and what codes say of its ends. Pure arithmetic in newtons, millimetres and megapascals.
#pragma once

#include <string_view>

namespace roundlay {

/// Printed wherever a joist is judged.
inline constexpr std::string_view joist_caution =
    "A screen by textbook formulas, never an approval: loads, grade, notches and bearings are for local code "
    "and a licensed professional to decide.";

/// Taken for boards and what lies on them where no dead load is stated, kPa: 10 lb/ft2 as in the span tables
/// of IRC R502.3.1 (from memory), rounded up. The timbers' own weight comes on top of it.
inline constexpr double assumed_dead_load = 0.5;

/// The share of its span that a floor joist may deflect under the live load: IRC R301.7, from memory.
inline constexpr double deflection_limit = 360;

/// The least length of a joist's end on wood: 38 mm, Ontario Building Code, joist end bearing article
/// (seen); 1.5 in, IRC R502.6 (from memory).
inline constexpr double least_bearing = 38;

/// Of a rectangle: S = b h^2 / 6 and I = b h^3 / 12 (Eq. 9-13).
double section_modulus(double width, double height);
double section_inertia(double width, double height);

/// 3 V / (2 b h) (Eq. 9-14).
double shear_stress(double shear, double width, double height);

/// At an end that is notched from below to `left` of its `height`: 3 V / (2 b dn) x (d / dn)^2, which is
/// V = (2/3 F'v b dn) (dn / d)^2 solved for the stress (AWC NDS 2018, 3.4.3.2; second-hand).
double notched_shear_stress(double shear, double width, double height, double left);

double bearing_stress(double force, double width, double bearing_length);

/// How a sawn joist may be notched: depth d/6 and length d/3, at its ends d/4 (IRC R502.8.1, second-hand).
/// Canadian practice differs: a notch in the top of d/3 near a bearing (CMHC, seen).
struct NotchLimits {
    double depth = 0, length = 0, end_depth = 0;
};
NotchLimits notch_limits(double height);

} // namespace roundlay
