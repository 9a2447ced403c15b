#include "kernel/layout/pieces/models.h"

#include "kernel/layout/pieces/piece_shape.h"

#include <algorithm>
#include <map>
#include <utility>

namespace roundlay {

namespace {

/// Where a piece like it is looked for: numbers are compared only among those of the same kinds.
using Known = std::map<std::vector<int>, std::vector<std::pair<PieceShape, Index<Model>>>>;

/// The model of that shape; a new one where none is known.
Index<Model> model_of(Known &known, PieceShape shape, Indexed<Model> &models) {
    auto &same_kinds = known[shape.kinds];
    for (const auto &[other, model] : same_kinds)
        if (alike(shape, other)) return model;
    const Index<Model> fresh = models.push_back({});
    same_kinds.emplace_back(std::move(shape), fresh);
    return fresh;
}

} // namespace

Indexed<Model> group_models(Indexed<Piece> &pieces) {
    Known known;
    Indexed<Model> models;
    for (const auto i : pieces.indices()) {
        const Index<Model> model = model_of(known, shape_as_made(pieces[i]), models);
        models[model].pieces.push_back(i);
        pieces[i].model = model;
    }
    return models;
}

void order_raise(Indexed<Piece> &pieces, const Indexed<double, Piece> &centres) {
    std::vector<Index<Piece>> order;
    for (const auto i : pieces.indices())
        order.push_back(i);
    std::stable_sort(order.begin(), order.end(),
                     [&](Index<Piece> a, Index<Piece> b) { return centres[a] < centres[b]; });
    int raise = 0;
    for (const Index<Piece> piece : order)
        pieces[piece].raise = pieces[piece].mends ? pieces[*pieces[piece].mends].raise : ++raise;
}

} // namespace roundlay
