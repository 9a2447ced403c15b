#include "modeler/window/desk/model_cache.h"

#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/pieces/piece_shape.h"

#include <algorithm>
#include <utility>

namespace roundlay::window {

namespace {

const Piece &first_piece(const Layout &layout, const Model &model) {
    return layout.pieces[model.pieces.front()];
}

/// The same wood; its pegs may have other numbers by now.
Body with_bores_of(Body body, const Piece &piece) {
    body.bores.clear();
    for (const Cut &cut : piece.cuts)
        if (const Bore *bore = bore_of(cut)) body.bores.push_back(*bore);
    return body;
}

bool is_carved(const Body &body) {
    return !body.bores_clear && !body.bores.empty();
}

std::shared_ptr<const SceneModel> model_of(Body body, bool with_bores) {
    if (!with_bores) {
        body.bores.clear();
        body.bores_clear = true;
    }
    return models_of({body}).front();
}

} // namespace

Bodies ModelCache::bodies(const Layout &layout) {
    std::unordered_map<std::string, KnownPtr> next;
    Bodies all;
    all.reserve(layout.models.size());
    now_.clear();
    cut_ = 0;
    for (const Model &model : layout.models) {
        const Piece &piece = first_piece(layout, model);
        const std::string key = bytes_of(shape_of_wood(piece));
        KnownPtr &wood = next[key]; // two models may differ in what is no wood
        if (const auto found = known_.find(key); !wood && found != known_.end()) wood = found->second;
        if (!wood) wood = newly_cut(piece);
        all.push_back(with_bores_of(wood->body, piece));
        now_.push_back(wood);
    }
    known_ = std::move(next);
    meetings_.wood.clear();
    for (const KnownPtr &wood : now_)
        meetings_.wood.push_back(wood->number);
    return all;
}

ModelCache::KnownPtr ModelCache::newly_cut(const Piece &piece) {
    auto wood = std::make_shared<Known>();
    wood->body = body_of(piece);
    wood->number = ++newest_;
    ++cut_;
    return wood;
}

SceneModels ModelCache::models() {
    SceneModels all;
    for (const KnownPtr &wood : now_) {
        if (!wood->model) {
            wood->lacks_bores = is_carved(wood->body);
            wood->model = model_of(wood->body, !wood->lacks_bores);
        }
        all.push_back(wood->model);
    }
    return all;
}

bool ModelCache::lacks_bores() const {
    return std::any_of(now_.begin(), now_.end(), [](const KnownPtr &wood) { return wood->lacks_bores; });
}

SceneModels ModelCache::models_with_bores(const std::function<bool()> &stop) {
    SceneModels all;
    for (const KnownPtr &wood : now_) {
        if (stop()) return {};
        if (!wood->model || wood->lacks_bores) wood->model = model_of(wood->body, true);
        wood->lacks_bores = false;
        all.push_back(wood->model);
    }
    return all;
}

} // namespace roundlay::window
