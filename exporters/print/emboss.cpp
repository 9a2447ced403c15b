#include "exporters/print/emboss.h"

#include "exporters/print/print_letters.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

constexpr double deepest = 0.6, largest_dot = 1; ///< mm as printed
constexpr double cover = 3;                      ///< as deep as the letters, so much stays over them at least
constexpr int border = 1;                        ///< dots of wood round the letters

/// Where the letters go: the upper left corner as seen from below, at the level of that face.
struct Ground {
    double x = 0, y = 0, z = 0;
};

Cell room_over(const Ground &ground, double along, double across, double height) {
    return box_cell(
        {{ground.x, ground.y, ground.z}, {ground.x + along, ground.y + across, ground.z + height}});
}

bool is_wood(const Body &body, const Cell &room) {
    double wood = 0;
    for (const Cell &cell : body.cells)
        wood += common_volume(cell, room);
    return wood > (1 - 1e-9) * volume(room);
}

bool meets_bore(const Body &body, const Ground &ground, double along, double across) {
    return std::ranges::any_of(body.bores, [&](const Bore &bore) {
        const double x = std::clamp(bore.x, ground.x, ground.x + along),
                     y = std::clamp(bore.y, ground.y, ground.y + across);
        return std::hypot(bore.x - x, bore.y - y) <= bore.diameter / 2 + 1;
    });
}

/// Level faces that look down, the largest first: their levels and where they lie.
std::vector<Box3> undersides(const Body &body) {
    std::vector<std::pair<double, Box3>> all;
    for (const Face &face : body.hewn.faces) {
        if (face.plane.normal.z > -1 + 1e-9 || face.plane.round != 0) continue;
        Box3 box{{HUGE_VAL, HUGE_VAL, HUGE_VAL}, {-HUGE_VAL, -HUGE_VAL, -HUGE_VAL}};
        for (const int corner : face.loops.front()) {
            const Vec3 p = body.hewn.vertices[static_cast<std::size_t>(corner)];
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
        }
        all.emplace_back(area(body.hewn, face), box);
    }
    std::ranges::stable_sort(all, std::greater{}, &std::pair<double, Box3>::first);
    std::vector<Box3> boxes;
    for (const auto &[size, box] : all)
        boxes.push_back(box);
    return boxes;
}

/// The place nearest to the middle of one of these faces with nothing but wood over it.
std::optional<Ground> ground_for(const Body &body, double along, double across, double height) {
    constexpr int tries = 24;
    for (const Box3 &face : undersides(body)) {
        const double room = face.high.x - face.low.x - along, y = (face.low.y + face.high.y - across) / 2;
        if (room < 0 || face.high.y - face.low.y < across) continue;
        for (int i = 0; i <= tries; ++i) {
            const int step = (i + 1) / 2 * (i % 2 ? 1 : -1);
            const Ground ground{face.low.x + room / 2 + step * room / tries, y, face.low.z};
            if (!meets_bore(body, ground, along, across) &&
                is_wood(body, room_over(ground, along, across, height)))
                return ground;
        }
    }
    return {};
}

/// Level, then across, then along: so that only a thin plate of the wood is parted by the letters.
std::vector<Plane> region_of(const DotBox &box, const Ground &ground, double dot, double deep) {
    const double x = ground.x + border * dot, y = ground.y + border * dot;
    return {{{0, 0, 1}, ground.z + deep},
            {{0, 1, 0}, y + box.y1 * dot},
            {{0, -1, 0}, -(y + box.y0 * dot)},
            {{1, 0, 0}, x + box.x1 * dot},
            {{-1, 0, 0}, -(x + box.x0 * dot)}};
}

Body pressed(Body body, const std::vector<DotBox> &letters, const Ground &ground, double dot, double deep) {
    for (const DotBox &box : letters)
        body.cells = without(std::move(body.cells), region_of(box, ground, dot, deep));
    body.hewn = border_of(body.cells);
    body.volume = volume(body.hewn);
    return body;
}

} // namespace

std::variant<Body, Said> embossed(const Body &body, const std::string &tag, double scale, double nozzle) {
    const auto letters = dotted(tag);
    if (!letters || letters->empty()) return said("its tag has letters that are not printed");
    const Box3 box = bounds(body.hewn);
    const double least = nozzle * scale, most = std::max(least, largest_dot * scale);
    const double deep = std::min(std::max(deepest, nozzle) * scale, (box.high.z - box.low.z) / (1 + cover));
    constexpr double finer = 0.8;
    for (double dot = most;; dot = std::max(least, dot * finer)) {
        const double along = (dots_wide(tag) + 2 * border) * dot, across = (letter_dots + 2 * border) * dot;
        if (const auto ground = ground_for(body, along, across, deep * (1 + cover) * (1 - 1e-9)))
            return pressed(body, *letters, *ground, dot, deep);
        if (dot <= least) break;
    }
    return said("no level place under it takes letters that its nozzle prints");
}

} // namespace roundlay
