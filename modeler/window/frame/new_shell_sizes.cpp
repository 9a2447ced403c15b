#include "modeler/window/frame/new_shell_sizes.h"

#include "kernel/shell/shapes.h"

namespace roundlay::window {

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

} // namespace

NewShell usual_shell(Shape shape, UnitSystem units, NotchKind notch) {
    const bool metric = units == UnitSystem::metric;
    const auto size = [metric](double mm, double feet) {
        return metric ? Length::mm(mm) : Length::feet(feet);
    };
    NewShell s;
    s.shape = shape;
    s.units = units;
    s.width = shape == Shape::cross ? size(4800, 16) : size(9600, 32);
    s.depth = shape == Shape::cross ? size(4800, 16) : size(7200, 24);
    s.part_width = shape == Shape::ell ? size(4800, 16) : size(3600, 12);
    s.part_depth = shape == Shape::ell ? size(3600, 12) : size(2400, 8);
    s.from_left = size(3000, 10);
    s.notch = notch;
    const bool round = notch == NotchKind::saddle;
    s.thickness = metric ? Length::mm(round ? 300 : 180) : Length::inches(round ? 12 : 7);
    s.pitch = metric ? Length::mm(250) : Length::inches(10);
    if (!round) s.gap = metric ? Length::mm(25) : Length::inches(1);
    if (round) s.overhang = metric ? Length::mm(300) : Length::inches(12);
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

} // namespace roundlay::window
