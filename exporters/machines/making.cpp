#include "exporters/machines/making.h"

#include "exporters/machines/room.h"
#include "exporters/machining/operation_words.h"
#include "exporters/machining/raw_stock.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace roundlay::machines {

namespace {

using machining::AccessSide;
using machining::InsideCorner;
using machining::Operation;
using machining::OperationKind;

constexpr double degrees = 180 / std::numbers::pi;
constexpr double as_good_as = 0.5; // degrees, and mm of a drill's diameter
constexpr double rounding = 1e-6;
constexpr double not_at_all = 90; // degrees: as the list of operations says it

long long whole(double degree) {
    return static_cast<long long>(std::ceil(degree - rounding));
}

/// The wood that a round tool leaves in a corner of that room, for each mm of its length.
double left_by_radius(double radius, double angle) {
    const double half = angle / degrees / 2;
    return radius * radius * (1 / std::tan(half) - (std::numbers::pi / 2 - half));
}

OperationMaking not_made(Said why) {
    OperationMaking made;
    made.why = std::move(why);
    return made;
}

void keep(OperationMaking &made, const InsideCorner &corner, double radius, double area, double more = 0) {
    const double volume = area * (length(corner.to - corner.from) + more);
    made.kept.push_back({corner.from, corner.to, radius, volume});
    made.left += volume;
}

OperationMaking settled(OperationMaking made, const AccessSide &access, const std::string &tool) {
    made.verdict = made.kept.empty() && !made.in_steps && !made.waved ? Verdict::whole : Verdict::by_hand;
    made.from = access.side;
    made.tool = tool;
    made.tilt = access.tilt;
    return made;
}

bool runs_along(const InsideCorner &corner, Vec3 way) {
    return std::abs(dot(unit(corner.to - corner.from), way)) > 0.5;
}

/// Corners along the tool keep its radius; into a corner of less than a right angle across it no square end
/// gets. Where a tilted tool runs into a third face, it may stay away from the end of a corner by its width.
void keep_corners(OperationMaking &made, const Operation &operation, const AccessSide &access,
                  double along_radius, double across) {
    const Vec3 way = machining::outward(access.side);
    const double more = 2 * along_radius * std::tan(access.tilt / degrees);
    for (const InsideCorner &corner : operation.corners) {
        if (runs_along(corner, way)) {
            if (along_radius > 0)
                keep(made, corner, along_radius, left_by_radius(along_radius, corner.angle), more);
        } else if (corner.angle < 90 - as_good_as)
            keep(made, corner, 0, across * across / 2 * std::tan((90 - corner.angle) / degrees));
    }
}

OperationMaking bored(const Operation &operation, const AccessSide &access, const Tool &tool) {
    const double wanted = operation.bore->diameter;
    if (tool.shape == ToolShape::drill && std::abs(tool.diameter - wanted) > as_good_as)
        return not_made(said("its bore is %1 wide and the drill %2 is %3", in_mm(wanted), tool.name,
                             in_mm(tool.diameter)));
    if (tool.shape == ToolShape::flat && tool.diameter > wanted)
        return not_made(said("its bore is %1 wide and the cutter %2 is %3", in_mm(wanted), tool.name,
                             in_mm(tool.diameter)));
    return settled({}, access, tool.name);
}

OperationMaking rounded(const Operation &operation, const AccessSide &access, const Tool &tool) {
    const double radius = std::min(operation.round->radius, operation.round->half_width);
    if (tool.diameter / 2 > radius)
        return not_made(said("its round has a radius of %1 and the tool %2 one of %3", in_mm(radius),
                             tool.name, in_mm(tool.diameter / 2)));
    OperationMaking made;
    for (std::size_t end = 0; end < operation.sides.size(); ++end) { // where a groove ends within its log
        const double volume =
            std::numbers::pi * operation.round->radius * left_by_radius(tool.diameter / 2, 90);
        made.kept.push_back({operation.round->at, operation.round->at, tool.diameter / 2, volume});
        made.left += volume;
    }
    return settled(std::move(made), access, tool.name);
}

bool tilts_enough(const Machine &machine, const AccessSide &access) {
    return access.tilt <= machine.tilt + rounding;
}

/// Tilted, a tool lies longer in the wood, and one of its edges longer than its axis.
double reach_tilted(const AccessSide &access, const Tool &tool) {
    const double tilt = access.tilt / degrees;
    return access.reach / std::cos(tilt) + tool.diameter / 2 * std::tan(tilt);
}

OperationMaking milled(const Machine &machine, const Operation &operation, const AccessSide &access,
                       const Tool &tool) {
    const double gap = narrowest_room(operation);
    if (gap < tool.diameter - rounding)
        return not_made(
            said("its room is %1 wide and the tool %2 is %3", in_mm(gap), tool.name, in_mm(tool.diameter)));
    OperationMaking made;
    const Vec3 way = machining::outward(access.side);
    keep_corners(made, operation, access, tool.diameter / 2, tool.diameter);
    if (!tilts_enough(machine, access) || reach_tilted(access, tool) > tool.reach + rounding) {
        made.in_steps = true;
        made.left += sloped_area(operation, way) * step_height / 2;
    }
    made = settled(std::move(made), access, tool.name);
    if (made.in_steps) made.tilt = 0;
    return made;
}

OperationMaking mortised(const Operation &operation, const AccessSide &access, const Tool &tool) {
    const auto bar = bar_in(operation, access.side, tool.diameter, tool.thickness);
    if (!bar)
        return not_made(said("its room is narrower than the chain %1, which is %2 by %3", tool.name,
                             in_mm(tool.diameter), in_mm(tool.thickness)));
    OperationMaking made;
    const Vec3 way = machining::outward(access.side);
    for (const InsideCorner &corner : operation.corners) {
        const bool square = std::abs(corner.angle - 90) < as_good_as;
        if (runs_along(corner, way)) {
            if (!square)
                keep(made, corner, tool.thickness / 2, left_by_radius(tool.thickness / 2, corner.angle));
        } else if (std::abs(dot(unit(corner.to - corner.from), *bar)) <
                   0.5) // the nose is round along its bar
            keep(made, corner, tool.diameter / 2, left_by_radius(tool.diameter / 2, corner.angle));
        else if (corner.angle < 90 - as_good_as)
            keep(made, corner, 0,
                 tool.thickness * tool.thickness / 2 * std::tan((90 - corner.angle) / degrees));
    }
    if (const double bottom = bottom_area(operation, way); bottom > 0) {
        const double radius = tool.diameter / 2, half = std::min(chain_step / 2, radius);
        made.waved = true;
        made.left += bottom * (radius - std::sqrt(radius * radius - half * half));
    }
    return settled(std::move(made), access, tool.name);
}

std::optional<Said> wrong_shape(const Operation &operation, const Tool &tool) {
    const bool bores = operation.bore.has_value(), round = operation.round.has_value();
    const bool fits = tool.shape == ToolShape::drill  ? bores
                      : tool.shape == ToolShape::ball ? round
                      : tool.shape == ToolShape::flat ? !round
                                                      : !bores && !round && operation.sides.size() > 1;
    if (fits) return {};
    return round ? said("round faces are cut by a ball-ended tool alone, and there is none that does")
                 : said("there is no tool whose shape makes it");
}

} // namespace

OperationMaking made_by(const Machine &machine, const Operation &operation, const AccessSide &access,
                        const Tool &tool) {
    if (auto wrong = wrong_shape(operation, tool)) return not_made(*std::move(wrong));
    const bool steps_do = tool.shape == ToolShape::flat && !operation.round && !operation.bore;
    if (access.tilt >= not_at_all && !steps_do)
        return not_made(said("however it is tilted, no straight tool lies on all of its faces"));
    if (!tilts_enough(machine, access) && !steps_do)
        return not_made(said("it needs a tool tilted by %1 degrees, and the machine tilts by %2",
                             whole(access.tilt), whole(machine.tilt)));
    const double reach = steps_do ? access.reach : reach_tilted(access, tool);
    if (reach > tool.reach + rounding)
        return not_made(said("it needs a reach of %1 from the %2, and the tool %3 has %4",
                             in_mm(std::ceil(reach)), phrase(words_for(access.side)), tool.name,
                             in_mm(tool.reach)));
    if (operation.bore) return bored(operation, access, tool);
    if (operation.round) return rounded(operation, access, tool);
    return tool.shape == ToolShape::chain ? mortised(operation, access, tool)
                                          : milled(machine, operation, access, tool);
}

OperationMaking sawn(const Machine &machine, const Operation &operation, const AccessSide &access) {
    if (!machine.saw || operation.round || operation.bore || operation.sides.size() != 1)
        return not_made(said("there is no tool whose shape makes it"));
    const Vec3 normal = operation.sides.front().plane.normal;
    const double tilt =
        std::asin(std::min(1.0, std::abs(dot(normal, machining::outward(access.side))))) * degrees;
    if (tilt > machine.saw->tilt + rounding)
        return not_made(said("it needs a saw tilted by %1 degrees, and the saw tilts by %2", whole(tilt),
                             whole(machine.saw->tilt)));
    const double deep = access.reach / std::cos(tilt / degrees);
    if (deep > machine.saw->depth + rounding)
        return not_made(said("it needs a cut %1 deep, and the saw cuts %2", in_mm(std::ceil(deep)),
                             in_mm(machine.saw->depth)));
    OperationMaking made = settled({}, access, "");
    made.tilt = tilt;
    return made;
}

} // namespace roundlay::machines
