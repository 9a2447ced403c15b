// Where parts lie on plates, or on boards, in rows.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace roundlay {

/// What it takes of the bed, millimetres.
struct Footprint {
    double x = 0, y = 0;
};

struct Packed {
    std::size_t plate = 0;
    double x = 0, y = 0; ///< of its lower corner
    bool turned = false; ///< by a quarter
};

/// One place for each, in rows one over the other, `air` apart (0 or more) and with none to the border of the
/// bed; the deep ones first, of equals the long ones. Nothing for what the bed is too small for.
std::vector<std::optional<Packed>> packed(const std::vector<Footprint> &parts, double bed_x, double bed_y,
                                          double air);

} // namespace roundlay
