// What is asked of a new shell, what it is where nothing is said, and the shell that follows: for the command
// line and the form of the window alike.
#pragma once

#include "kernel/shell/drawn_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

enum class Shape { rectangle, ell, inset, tee, u_shape, cross, drawn };

struct NewShell {
    Shape shape = Shape::rectangle;
    UnitSystem units = UnitSystem::metric;
    Length width, depth;
    Length part_width, part_depth, from_left; ///< wing and main part of an L; arm of a cross is part_depth
    Length thickness, pitch, gap, overhang;
    int rounds = 11;
    NotchKind notch = NotchKind::full_dovetail;
    std::string species;            ///< empty = as a shell has it that states none
    std::vector<PlanPoint> corners; ///< of a drawn one, once closed
    std::string name;
};

/// Where a part of a shape begins, how wide it is and how deep.
struct ShapePart {
    Length from_left, width, depth;
};

/// As a share of what is stated of the whole, the way a person would state it: in whole millimetres, or
/// sixteenths of an inch. Of an L the wing and the main part; of a cross how far the arms stand out, as
/// depth.
ShapePart usual_part(Shape shape, Length width, Length depth, UnitSystem units);
/// Where a part of that width begins in the middle of the whole.
Length usual_from_left(Length whole, Length part, UnitSystem units);

/// Round figures of either system; round logs lie on one another without a gap and run past their saddles.
NewShell usual_shell(Shape shape, UnitSystem units, NotchKind notch = NotchKind::full_dovetail);
/// Nothing where a drawn one is not closed, or a part is larger than the whole.
std::optional<Shell> shell_of(const NewShell &sizes);

} // namespace roundlay
