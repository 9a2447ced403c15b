#include "kernel/compare/chosen_pieces.h"

#include <algorithm>
#include <array>
#include <utility>

namespace roundlay {

namespace {

constexpr std::array<std::pair<std::string_view, PieceSort>, 3> sorts{
    {{"new", PieceSort::new_wood}, {"mended", PieceSort::mended}, {"cut", PieceSort::to_cut}}};

bool is_called(const Piece &piece, const std::string &name) {
    return piece.tag == name || piece.tag.starts_with(name + "-") ||
           (!piece.mark.empty() && piece.mark == name);
}

bool is_to_cut(const CutsToMake &cuts) {
    return !cuts || std::ranges::count(*cuts, true) > 0;
}

bool is_of(PieceSort sort, const Piece &piece, const CutsToMake &cuts) {
    switch (sort) {
    case PieceSort::new_wood:
        return !is_old_wood(piece);
    case PieceSort::mended:
        return !piece.mended.empty();
    case PieceSort::to_cut:
        return !is_old_wood(piece) || is_to_cut(cuts);
    }
    return false;
}

bool is_wanted(const PieceChoice &choice, const Piece &piece, const CutsToMake &cuts) {
    return choice.is_all() ||
           std::ranges::any_of(choice.sorts, [&](PieceSort sort) { return is_of(sort, piece, cuts); }) ||
           std::ranges::any_of(choice.names, [&](const std::string &name) { return is_called(piece, name); });
}

std::vector<std::string> unknown_names(const PieceChoice &choice, const Layout &layout) {
    std::vector<std::string> unknown;
    for (const std::string &name : choice.names)
        if (std::ranges::none_of(layout.pieces, [&](const Piece &piece) { return is_called(piece, name); }))
            unknown.push_back(name);
    return unknown;
}

} // namespace

PieceChoice piece_choice(const std::vector<std::string> &words) {
    PieceChoice choice;
    for (const std::string &word : words) {
        const auto *sort = std::ranges::find(sorts, word, [](const auto &each) { return each.first; });
        if (sort != sorts.end())
            choice.sorts.push_back(sort->second);
        else
            choice.names.push_back(word);
    }
    return choice;
}

std::string_view word_of(PieceSort sort) {
    return std::ranges::find(sorts, sort, [](const auto &each) { return each.second; })->first;
}

ChosenPieces chosen_pieces(const PieceChoice &choice, const Layout &found, const Layout &now) {
    ChosenPieces chosen{{}, {}, unknown_names(choice, now)};
    const Indexed<CutsToMake, Piece> cuts =
        choice.sorts.empty() ? Indexed<CutsToMake, Piece>(now.pieces.size()) : cuts_to_make(found, now);
    for (const Index<Piece> i : now.pieces.indices()) {
        const Piece &piece = now.pieces[i];
        if (!is_wanted(choice, piece, cuts[i])) continue;
        chosen.pieces.push_back(i);
        chosen.models.push_back(piece.model);
    }
    std::ranges::sort(chosen.models);
    chosen.models.erase(std::unique(chosen.models.begin(), chosen.models.end()), chosen.models.end());
    return chosen;
}

} // namespace roundlay
