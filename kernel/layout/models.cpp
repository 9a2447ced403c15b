#include "kernel/layout/models.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <map>
#include <numeric>

namespace roundlay {

namespace {

using Key = std::vector<std::int64_t>;

/// Pieces are alike when every number agrees to this, in millimetres (slopes: per unit). One shape then
/// stands for all: over the area of a seam a thousandth of a millimetre would be a visible overlap.
constexpr double alike = 1e-6;

void put(Key &key, double v) {
    key.push_back(std::llround(v / alike));
}
void put(Key &key, Vec3 v) {
    put(key, v.x);
    put(key, v.y);
    put(key, v.z);
}

struct PutCut {
    Key &key;
    void operator()(const FaceCut &c) const {
        key.insert(key.end(), {4, static_cast<int>(c.face)});
        for (const Vec3 p : {Vec3{}, Vec3{1000, 0, 0}, Vec3{0, 1000, 0}, Vec3{0, 0, 1000}})
            put(key, c.plane.distance(p));
    }
    void operator()(const SeamCut &c) const {
        key.insert(key.end(), {1, static_cast<int>(c.end), static_cast<int>(c.side), c.runs_on});
        put(key, c.x_from);
        put(key, c.x_to);
        put(key, c.skew);
        put(key, c.proud);
        // Heights at two ends of the seam tell the plane in millimetres.
        for (const Vec2 p : {Vec2{c.x_from, 0}, Vec2{c.x_to, 0}, Vec2{c.x_from, 1000}})
            put(key, c.seam.height_at(p.x, p.y));
    }
    void operator()(const BoxCut &c) const {
        key.insert(key.end(), {2, static_cast<int>(c.use)});
        put(key, c.box.low);
        put(key, c.box.high);
        put(key, c.fall);
        put(key, c.fall_from);
    }
    void operator()(const PocketCut &c) const {
        key.push_back(5);
        put(key, {c.x, c.half_at_face, c.half_at_back});
        put(key, {c.y_face, c.y_back, c.z_top});
        for (const Vec2 p : {Vec2{}, Vec2{1000, 0}, Vec2{0, 1000}})
            put(key, c.bed.height_at(p.x, p.y));
    }
    void operator()(const CheekCut &c) const {
        key.insert(key.end(), {6, static_cast<int>(c.end), static_cast<int>(c.side)});
        put(key, c.x_from);
        put(key, c.x_to);
        for (const Vec3 p : {Vec3{}, Vec3{1000, 0, 0}, Vec3{0, 1000, 0}})
            put(key, c.plane.distance(p));
    }
    void operator()(const Bore &c) const {
        key.insert(key.end(), {3, c.from_top, c.through, c.use ? static_cast<int>(*c.use) : -1});
        put(key, {c.x, c.y, c.diameter});
        put(key, c.z_from);
        put(key, c.z_to);
    }
    void operator()(const RoundCut &c) const {
        key.push_back(7);
        put(key, c.from);
        put(key, c.to);
        put(key, c.radius);
    }
    void operator()(const ScopeCut &c) const {
        key.insert(key.end(), {8, static_cast<int>(c.use), static_cast<int>(c.end), c.runs_on});
        put(key, c.at - dot(c.at, c.along) * c.along); // any point of the axis tells the same line
        put(key, 1000 * c.along);
        put(key, {c.radius, c.scribe, 0});
        put(key, c.x_from);
        put(key, c.x_to);
    }
};

Key key_of(const Piece &p) {
    Key key{static_cast<int>(p.datum.kind), static_cast<int>(p.far.kind), p.butt_at_datum, p.timber >= 0,
            static_cast<int>(p.finish),     static_cast<int>(p.fabric)};
    put(key, {p.blank.length, p.blank.width, p.blank.height});
    put(key, p.datum.shoulder);
    put(key, p.far.shoulder);
    for (const Cut &cut : p.cuts)
        std::visit(PutCut{key}, cut);
    return key;
}

} // namespace

void group_models(Layout &layout) {
    std::map<Key, int> known;
    layout.models.clear();
    for (std::size_t i = 0; i < layout.pieces.size(); ++i) {
        const auto [at, fresh] =
            known.emplace(key_of(layout.pieces[i]), static_cast<int>(layout.models.size()));
        if (fresh) layout.models.emplace_back();
        layout.models[static_cast<std::size_t>(at->second)].pieces.push_back(static_cast<int>(i));
        layout.pieces[i].model = at->second;
    }
}

void order_raise(Layout &layout, const std::vector<double> &centres) {
    std::vector<std::size_t> order(layout.pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return centres[a] < centres[b]; });
    for (std::size_t i = 0; i < order.size(); ++i)
        layout.pieces[order[i]].raise = static_cast<int>(i) + 1;
}

} // namespace roundlay
