#include "tests/solid/hand_made.h"

#include <numbers>

namespace roundlay::hand_made {

namespace {

Vec3 newell(const std::vector<Vec3> &vertices, const std::vector<int> &loop) {
    Vec3 sum;
    for (std::size_t i = 0; i < loop.size(); ++i)
        sum = sum + cross(vertices[static_cast<std::size_t>(loop[i])],
                          vertices[static_cast<std::size_t>(loop[(i + 1) % loop.size()])]);
    return sum;
}

} // namespace

Polyhedron polyhedron(std::vector<Vec3> vertices, const std::vector<std::vector<std::vector<int>>> &faces) {
    Polyhedron made{std::move(vertices), {}};
    for (const auto &loops : faces) {
        const Vec3 normal = unit(newell(made.vertices, loops[0]));
        made.faces.push_back(
            {{normal, dot(normal, made.vertices[static_cast<std::size_t>(loops[0][0])])}, loops});
    }
    return made;
}

double volume_of(const Polyhedron &solid) {
    double six = 0;
    for (const Face &face : solid.faces)
        for (const std::vector<int> &loop : face.loops)
            for (std::size_t i = 1; i + 1 < loop.size(); ++i) {
                const auto v = [&](std::size_t k) {
                    return solid.vertices[static_cast<std::size_t>(loop[k])];
                };
                six += dot(v(0), cross(v(i), v(i + 1)));
            }
    return six / 6;
}

Body body(Polyhedron hewn, std::vector<Bore> bores, bool clear) {
    Body made;
    made.hewn = std::move(hewn);
    made.bores = std::move(bores);
    made.bores_clear = clear;
    made.volume = volume_of(made.hewn);
    for (const Bore &bore : made.bores)
        made.volume -= std::numbers::pi / 4 * bore.diameter * bore.diameter * (bore.z_to - bore.z_from);
    return made;
}

Polyhedron box(double l, double w, double h) {
    return polyhedron(
        {{0, 0, 0}, {l, 0, 0}, {l, w, 0}, {0, w, 0}, {0, 0, h}, {l, 0, h}, {l, w, h}, {0, w, h}},
        {{{0, 3, 2, 1}}, {{4, 5, 6, 7}}, {{0, 1, 5, 4}}, {{1, 2, 6, 5}}, {{2, 3, 7, 6}}, {{3, 0, 4, 7}}});
}

Polyhedron two_tails(double l, double w, double h, double t, double s) {
    std::vector<Vec3> v;
    // Twelve corners on the outside face, then the same twelve on the inside face.
    for (const double y : {0.0, w}) {
        const double low = h * 0.25, high = h * 0.75;
        const auto under = [&](double out) { return low - s * out + s * (y - w / 2); };
        const auto top = [&](double out) { return high + s * out - s * (y - w / 2); };
        v.insert(v.end(), {{0, y, under(t)},
                           {t, y, under(0)},
                           {t, y, 0},
                           {l - t, y, 0},
                           {l - t, y, under(0)},
                           {l, y, under(t)},
                           {l, y, top(t)},
                           {l - t, y, top(0)},
                           {l - t, y, h},
                           {t, y, h},
                           {t, y, top(0)},
                           {0, y, top(t)}});
    }
    std::vector<std::vector<std::vector<int>>> faces{{{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}},
                                                     {{23, 22, 21, 20, 19, 18, 17, 16, 15, 14, 13, 12}}};
    for (int i = 0; i < 12; ++i)
        faces.push_back({{(i + 1) % 12, i, i + 12, (i + 1) % 12 + 12}});
    return polyhedron(v, faces);
}

Polyhedron pocketed(double l, double w, double h, Box3 p) {
    const double a = p.low.x, b = p.high.x, c = p.low.z, d = p.high.z, y = p.low.y;
    return polyhedron({{0, 0, 0},
                       {l, 0, 0},
                       {l, w, 0},
                       {0, w, 0},
                       {0, 0, h},
                       {l, 0, h},
                       {l, w, h},
                       {0, w, h},
                       {a, w, c},
                       {b, w, c},
                       {b, w, d},
                       {a, w, d},
                       {a, y, c},
                       {b, y, c},
                       {b, y, d},
                       {a, y, d}},
                      {{{0, 3, 2, 1}},
                       {{4, 5, 6, 7}},
                       {{0, 1, 5, 4}},
                       {{1, 2, 6, 5}},
                       {{2, 3, 7, 6}, {8, 9, 10, 11}},
                       {{3, 0, 4, 7}},
                       {{12, 15, 14, 13}},
                       {{8, 12, 13, 9}},
                       {{9, 13, 14, 10}},
                       {{10, 14, 15, 11}},
                       {{11, 15, 12, 8}}});
}

Polyhedron stepped(double l, double w, double h, double sl, double sh) {
    const double m = l - sl, k = h - sh;
    return polyhedron({{0, 0, 0},
                       {l, 0, 0},
                       {l, 0, k},
                       {m, 0, k},
                       {m, 0, h},
                       {0, 0, h},
                       {0, w, 0},
                       {l, w, 0},
                       {l, w, k},
                       {m, w, k},
                       {m, w, h},
                       {0, w, h}},
                      {{{0, 1, 2, 3, 4, 5}},
                       {{11, 10, 9, 8, 7, 6}},
                       {{1, 0, 6, 7}},
                       {{2, 1, 7, 8}},
                       {{3, 2, 8, 9}},
                       {{4, 3, 9, 10}},
                       {{5, 4, 10, 11}},
                       {{0, 5, 11, 6}}});
}

Polyhedron slanted(double l, double w, double h, double along, double across) {
    Polyhedron made = box(l, w, h);
    for (std::size_t i = 4; i < 8; ++i)
        made.vertices[i].z += along * made.vertices[i].x + across * made.vertices[i].y;
    return polyhedron(made.vertices, [&] {
        std::vector<std::vector<std::vector<int>>> faces;
        for (const Face &face : made.faces)
            faces.push_back(face.loops);
        return faces;
    }());
}

Bore through_bore(double x, double y, double height, double diameter) {
    return {x, y, 0, height, diameter, {}, true, true};
}

Bore bore_from_top(double x, double y, double height, double depth, double diameter) {
    return {x, y, height - depth, height, diameter, {}, true, false};
}

Bore bore_from_under(double x, double y, double depth, double diameter) {
    return {x, y, 0, depth, diameter, {}, false, false};
}

Body usual_log(double length) {
    const double width = 200, height = 220;
    std::vector<Bore> bores;
    for (int i = 0; i < 4; ++i) {
        const double x = 500 + (length - 1000) * i / 3;
        bores.push_back(through_bore(x, width / 2, height, 32));
        bores.push_back(bore_from_top(x + 130, width / 2, height, height / 2, 32));
    }
    return body(two_tails(length, width, height, 200, 0.125), bores);
}

} // namespace roundlay::hand_made
