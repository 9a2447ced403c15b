#include "modeler/window/desk/model_cache.h"

#include <utility>

namespace roundlay::window {

namespace {

void put(std::string &key, const void *bytes, std::size_t size) {
    key.append(static_cast<const char *>(bytes), size);
}

template <typename Number> void put_number(std::string &key, Number number) { put(key, &number, sizeof number); }

void put_point(std::string &key, Vec3 p) {
    for (const double number : {p.x, p.y, p.z}) put_number(key, number);
}

/// What the flats are shaded as: the same flats may stand for another surface.
void put_rounds(std::string &key, const std::vector<RoundSurface> &rounds) {
    for (const RoundSurface &round : rounds) {
        put_point(key, round.at);
        put_point(key, round.along);
        put_number(key, round.radius);
        key += round.hollow ? 'h' : 'r';
    }
}

/// Bores that run into something are carved out of these.
void put_cells(std::string &key, const std::vector<Cell> &cells) {
    for (const Cell &cell : cells)
        for (const CellFace &face : cell.faces) {
            put_number(key, face.ring.size());
            for (const Vec3 &p : face.ring) put_point(key, p);
        }
}

/// All that the mesh is made from, as bytes.
std::string key_of(const Body &body) {
    std::string key;
    put(key, body.hewn.vertices.data(), body.hewn.vertices.size() * sizeof(Vec3));
    for (const Face &face : body.hewn.faces) {
        put_number(key, face.plane.round);
        for (const std::vector<int> &loop : face.loops) {
            put_number(key, loop.size());
            put(key, loop.data(), loop.size() * sizeof(int));
        }
    }
    put_rounds(key, body.rounds);
    for (const Bore &bore : body.bores)
        for (const double number : {bore.x, bore.y, bore.z_from, bore.z_to, bore.diameter})
            put_number(key, number);
    key += body.bores_clear ? 'c' : 'm';
    if (!body.bores_clear) put_cells(key, body.cells);
    return key;
}

} // namespace

SceneModels ModelCache::models(const std::vector<Body> &bodies) {
    Known now;
    SceneModels all;
    all.reserve(bodies.size());
    for (const Body &body : bodies) {
        std::string key = key_of(body);
        const auto found = known_.find(key);
        auto model = found != known_.end() ? found->second : models_of({body}).front();
        all.push_back(model);
        now.emplace(std::move(key), std::move(model));
    }
    known_ = std::move(now);
    return all;
}

} // namespace roundlay::window
