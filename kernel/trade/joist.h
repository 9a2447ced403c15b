// A joist on two supports under an even load, by the formulas of the Wood Handbook, chapter 9 (USDA FPL,
// FPL-GTR-282; second-hand). Pure arithmetic in newtons, millimetres and megapascals.
#pragma once

#include <string_view>

namespace roundlay {

/// Printed wherever a joist is judged.
inline constexpr std::string_view joist_caution =
    "A screen by textbook formulas, never an approval: loads, grade, notches and bearings are for local code "
    "and a licensed professional to decide.";

/// What the formulas need of a cross section.
struct JoistSection {
    double area = 0;           ///< mm2
    double modulus = 0;        ///< S, mm3
    double inertia = 0;        ///< I, mm4
    double shear_area = 0;     ///< A' of the deflection by shear, mm2 (Eq. 9-2)
    double shear_factor = 1.5; ///< k of the largest shear stress (Eq. 9-14)
};

JoistSection rectangular(double width, double height);
JoistSection round_section(double diameter);

/// An even load over a simple span.
struct JoistLoad {
    double per_length = 0; ///< N/mm
    double span = 0;       ///< mm
};

double moment(const JoistLoad &load);                                              ///< w L^2 / 8, N mm
double shear(const JoistLoad &load);                                               ///< w L / 2, N
double bending_stress(const JoistLoad &load, const JoistSection &section);         ///< M / S, MPa
double shear_stress(const JoistLoad &load, const JoistSection &section);           ///< k V / A, MPa
double bearing_stress(const JoistLoad &load, double width, double bearing_length); ///< MPa

/// 5 w L^4 / (384 E I), mm.
double deflection_by_bending(const JoistLoad &load, const JoistSection &section, double elasticity);
/// w L^2 / (8 G A'), mm.
double deflection_by_shear(const JoistLoad &load, const JoistSection &section, double shear_modulus);

/// Longest spans, mm, at which a stress or a deflection of span / `part` is reached.
double span_by_bending(double per_length, const JoistSection &section, double stress);
double span_by_deflection(double per_length, const JoistSection &section, double elasticity, double part);

} // namespace roundlay
