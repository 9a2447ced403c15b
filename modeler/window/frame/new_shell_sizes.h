// What the form for a new shell asks for, and the shell that follows from it.
#pragma once

#include "kernel/shell/drawn_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::window {

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

/// Round figures of either system; round logs lie on one another without a gap and run past their saddles.
NewShell usual_shell(Shape shape, UnitSystem units, NotchKind notch = NotchKind::full_dovetail);
/// Nothing where a drawn one is not closed, or a part is larger than the whole.
std::optional<Shell> shell_of(const NewShell &sizes);

} // namespace roundlay::window
