#include "modeler/window/desk/model_cache.h"

#include <utility>

namespace roundlay::window {

namespace {

void put(std::string &key, const void *bytes, std::size_t size) {
    key.append(static_cast<const char *>(bytes), size);
}

/// All that the mesh is made from, as bytes.
std::string key_of(const Body &body) {
    std::string key;
    put(key, body.hewn.vertices.data(), body.hewn.vertices.size() * sizeof(Vec3));
    for (const Face &face : body.hewn.faces)
        for (const std::vector<int> &loop : face.loops) {
            const std::size_t size = loop.size();
            put(key, &size, sizeof size);
            put(key, loop.data(), size * sizeof(int));
        }
    for (const Bore &bore : body.bores)
        for (const double number : {bore.x, bore.y, bore.z_from, bore.z_to, bore.diameter})
            put(key, &number, sizeof number);
    key += body.bores_clear ? 'c' : 'm';
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
