#include "kernel/design/new_shell.h"

#include "kernel/design/round_figures.h"
#include "kernel/shell/shapes.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

bool parts_fit(const NewShell &s) {
    const Length none;
    if (s.thickness <= none || s.pitch <= none) return false;
    if (s.shape == Shape::drawn) return s.corners.size() > 2;
    if (s.width <= none || s.depth <= none) return false;
    if (s.shape == Shape::rectangle) return true;
    if (s.shape == Shape::cross) return s.part_depth > none;
    if (s.part_width <= none || s.part_depth <= none || s.part_width >= s.width) return false;
    if (s.shape == Shape::ell) return s.part_depth < s.depth;
    return s.from_left > none && s.from_left + s.part_width < s.width &&
           (s.shape == Shape::tee || s.part_depth < s.depth);
}

std::vector<Wall> walls_of(const NewShell &s) {
    switch (s.shape) {
    case Shape::rectangle:
        return rectangle_plan(s.width, s.depth);
    case Shape::ell:
        return l_plan(s.width, s.depth, s.part_width, s.part_depth);
    case Shape::inset:
        return inset_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::tee:
        return t_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::u_shape:
        return u_plan(s.width, s.depth, s.from_left, s.part_width, s.part_depth);
    case Shape::drawn:
        return drawn_plan(s.corners);
    case Shape::cross:
        break;
    }
    return cross_plan(s.width, s.depth, s.part_depth);
}

Length as_stated(Length length, UnitSystem units) {
    constexpr double parts = 16;
    return units == UnitSystem::imperial ? Length::inches(std::round(length.inches() * parts) / parts)
                                         : Length::mm(std::round(length.mm()));
}

} // namespace

Length usual_from_left(Length whole, Length part, UnitSystem units) {
    return as_stated((whole - part) / 2, units);
}

ShapePart usual_part(Shape shape, Length width, Length depth, UnitSystem units) {
    const auto of = [units](Length whole, double share) { return as_stated(whole * share, units); };
    if (shape == Shape::ell) return {{}, of(width, 1.0 / 2), of(depth, 1.0 / 2)};
    if (shape == Shape::cross) return {{}, {}, of(std::min(width, depth), 1.0 / 2)};
    const Length part = of(width, 3.0 / 8);
    return {usual_from_left(width, part, units), part, of(depth, 1.0 / 3)};
}

NewShell usual_shell(Shape shape, UnitSystem units, NotchKind notch) {
    const auto size = [units](double mm, double inches) { return round_figure(units, mm, inches); };
    NewShell s;
    s.shape = shape;
    s.units = units;
    s.width = shape == Shape::cross ? size(4800, 192) : size(9600, 384);
    s.depth = shape == Shape::cross ? size(4800, 192) : size(7200, 288);
    const ShapePart part = usual_part(shape, s.width, s.depth, units);
    s.part_width = part.width;
    s.part_depth = part.depth;
    s.from_left = part.from_left;
    s.notch = notch;
    const bool round = notch == NotchKind::saddle;
    s.thickness = round ? size(300, 12) : size(180, 7);
    s.pitch = size(250, 10);
    if (!round) s.gap = size(25, 1);
    if (round) s.overhang = size(300, 12);
    return s;
}

std::optional<Shell> shell_of(const NewShell &sizes) {
    if (!parts_fit(sizes)) return {};
    Shell shell = begun_in(sizes.units);
    shell.name = sizes.name;
    shell.thickness = sizes.thickness;
    shell.walls = walls_of(sizes);
    if (shell.walls.empty()) return {};
    shell.rounds.count = sizes.rounds;
    shell.rounds.pitch = sizes.pitch;
    shell.rounds.gap = sizes.gap;
    shell.notch.kind = sizes.notch;
    shell.notch.overhang = sizes.overhang;
    if (!sizes.species.empty()) shell.wood.species = sizes.species;
    return shell;
}

} // namespace roundlay
