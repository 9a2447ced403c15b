#include "kernel/shell/shapes.h"

#include "kernel/measure/tidied.h"

#include <initializer_list>

namespace roundlay {

namespace {

constexpr double east = 0, north = 90, west = 180, south = 270;

struct Leg {
    double heading;
    Length length;
};

std::vector<Wall> walls(std::initializer_list<Leg> legs) {
    std::vector<Wall> all;
    char letter = 'A';
    for (const Leg &leg : legs) {
        Wall wall;
        wall.name = std::string(1, letter++);
        wall.heading = leg.heading;
        wall.length = tidied(leg.length);
        all.push_back(std::move(wall));
    }
    return all;
}

} // namespace

Shell begun_in(UnitSystem system) {
    Shell shell;
    shell.units = system;
    shell.wood.species = species_of(shell.wood); // stated, so that whoever begins here sees it and changes it
    if (system == UnitSystem::metric) return shell;
    shell.notch.least_tail = Length::inches(1.5);
    shell.pegs.diameter = Length::inches(1.25);
    shell.pegs.spacing = Length::inches(70); // whole inches under the 1800 mm of codes
    shell.pegs.end_distance = Length::inches(4);
    shell.pegs.between = Length::inches(3);
    shell.trim.header_bearing = Length::inches(6);
    return shell;
}

std::vector<Wall> rectangle_plan(Length width, Length depth) {
    return walls({{east, width}, {north, depth}, {west, width}, {south, depth}});
}

std::vector<Wall> l_plan(Length width, Length depth, Length wing, Length leg) {
    return walls({{east, width},
                  {north, leg},
                  {west, width - wing},
                  {north, depth - leg},
                  {west, wing},
                  {south, depth}});
}

std::vector<Wall> inset_plan(Length width, Length depth, Length from_left, Length recess_width,
                             Length recess_depth) {
    return walls({{east, from_left},
                  {north, recess_depth},
                  {east, recess_width},
                  {south, recess_depth},
                  {east, width - from_left - recess_width},
                  {north, depth},
                  {west, width},
                  {south, depth}});
}

std::vector<Wall> u_plan(Length width, Length depth, Length from_left, Length court_width,
                         Length court_depth) {
    return walls({{east, width},
                  {north, depth},
                  {west, width - from_left - court_width},
                  {south, court_depth},
                  {west, court_width},
                  {north, court_depth},
                  {west, from_left},
                  {south, depth}});
}

std::vector<Wall> t_plan(Length width, Length depth, Length from_left, Length wing_width, Length wing_depth) {
    return walls({{east, width},
                  {north, depth},
                  {west, width - from_left - wing_width},
                  {north, wing_depth},
                  {west, wing_width},
                  {south, wing_depth},
                  {west, from_left},
                  {south, depth}});
}

std::vector<Wall> cross_plan(Length width, Length depth, Length arm) {
    return walls({{east, width},
                  {north, arm},
                  {east, arm},
                  {north, depth},
                  {west, arm},
                  {north, arm},
                  {west, width},
                  {south, arm},
                  {west, arm},
                  {south, depth},
                  {east, arm},
                  {south, arm}});
}

} // namespace roundlay
