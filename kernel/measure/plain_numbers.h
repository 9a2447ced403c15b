// Numbers for machines: no more digits than say something.
#pragma once

#include <string>
#include <string_view>

namespace roundlay {

/// The nearest value of so many decimals, 0 to 15; never -0. 1574.8000000000009 is 1574.8 to nine of them.
double to_places(double value, int places);

/// A text of JSON with each of its numbers as the shortest decimal that means the same value: a library may
/// print 0.046031999999999997 for 0.046032. What stands in quotes stays. `json`: well-formed.
std::string with_short_numbers(std::string_view json);

} // namespace roundlay
