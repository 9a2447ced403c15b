// How much wood is in a round log. Lengths and areas in any one unit unless said.
#pragma once

namespace roundlay {

/// Of a circle.
double area_of_diameter(double diameter);

/// Exact for a paraboloid's frustum, more than there is in a cone's: on the safe side for weights.
double smalian(double small_area, double large_area, double length);

/// Smalian's, the diameter growing from the small end by 1/2 in per 4 ft, as the International 1/4 in rule
/// takes it (seen in a USDA program). Millimetres. Real logs taper more or less.
double tapered_log_volume(double small_end, double length);

/// The least round that a stick of that section can be hewn from.
double least_round(double width, double height);

} // namespace roundlay
