// How much wood is in a round log: the formulas of forest mensuration. Lengths and areas in any one unit.
#pragma once

namespace roundlay {

/// Of a circle.
double area_of_diameter(double diameter);

double smalian(double small_area, double large_area, double length); ///< exact for a paraboloid's frustum
double huber(double middle_area, double length);
/// Exact for frustums of cone, paraboloid and neiloid.
double newton(double small_area, double middle_area, double large_area, double length);
double cone_frustum(double small_area, double large_area, double length);
double neiloid_frustum(double small_area, double large_area, double length);

/// The quarter-girth measure (Hoppus): 78.54 % of the true volume of a cylinder.
double quarter_girth(double girth, double length);

/// Side of the largest square stick in a round of that diameter. Take the small end's, less sweep.
double largest_square(double diameter);

struct Section {
    double width = 0, height = 0;
};
Section strongest_beam(double diameter); ///< largest width x height squared
Section stiffest_beam(double diameter);  ///< largest width x height cubed

/// The least round that a stick of that section can be hewn from.
double least_round(double width, double height);

} // namespace roundlay
