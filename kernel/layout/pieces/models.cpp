#include "kernel/layout/pieces/models.h"

#include "kernel/layout/pieces/piece_shape.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <utility>

namespace roundlay {

namespace {

/// Where a piece like it is looked for: numbers are compared only among those of the same kinds.
using Known = std::map<std::vector<int>, std::vector<std::pair<PieceShape, int>>>;

/// The model of that shape; a new one where none is known.
int model_of(Known &known, PieceShape shape, std::vector<Model> &models) {
    auto &same_kinds = known[shape.kinds];
    for (const auto &[other, model] : same_kinds)
        if (alike(shape, other)) return model;
    models.emplace_back();
    const int fresh = static_cast<int>(models.size()) - 1;
    same_kinds.emplace_back(std::move(shape), fresh);
    return fresh;
}

} // namespace

std::vector<Model> group_models(std::vector<Piece> &pieces) {
    Known known;
    std::vector<Model> models;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const int model = model_of(known, shape_as_made(pieces[i]), models);
        models[static_cast<std::size_t>(model)].pieces.push_back(static_cast<int>(i));
        pieces[i].model = model;
    }
    return models;
}

void order_raise(std::vector<Piece> &pieces, const std::vector<double> &centres) {
    std::vector<std::size_t> order(pieces.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return centres[a] < centres[b]; });
    for (std::size_t i = 0; i < order.size(); ++i)
        pieces[order[i]].raise = static_cast<int>(i) + 1;
}

} // namespace roundlay
