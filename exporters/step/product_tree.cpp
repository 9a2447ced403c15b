#include "exporters/step/product_tree.h"

#include "exporters/part21/part21_text.h"
#include "exporters/part21/placing.h"
#include "kernel/layout/pieces/stock.h"

#include <charconv>

namespace roundlay::step {

namespace {

/// Receivers show names in narrow trees and some cut long ones off without a word.
constexpr std::size_t longest_name = 120;
constexpr std::size_t longest_slug = 40;
/// A part's description lists the tags of the pieces that are alike, so far as it stays readable.
constexpr std::size_t longest_description = 240;

std::string name_of(const std::string &name, const std::string &otherwise) {
    return name.empty() ? otherwise : part21::shortened(name, longest_name);
}

std::string millimetres(double value) {
    char digits[32]; // not printf, whose decimal point follows the locale
    const auto end = std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed, 1);
    return {digits, end.ptr};
}

Attributes attributes_of_part(const Shell &shell, const Piece &piece) {
    const Blank blank = stock_of(piece).size;
    return {{"species", name_of(wood_of(shell, piece.species).species, "not stated")},
            {"blank length mm", millimetres(blank.length)},
            {"blank width mm", millimetres(blank.width)},
            {"blank height mm", millimetres(blank.height)}};
}

Attributes attributes_of_use(const Layout &layout, const Piece &piece) {
    const std::string &letter = part_letter(layout, part_of(layout, piece));
    if (piece.timber) return {{"tag", piece.tag}, {"floor", letter}};
    return {{"tag", piece.tag}, {"wall", letter}, {"round", std::to_string(piece.round)}};
}

std::string alike(const Layout &layout, const Model &model) {
    if (model.pieces.size() == 1) return "";
    std::string text = std::to_string(model.pieces.size()) + " alike:";
    for (const Index<Piece> p : model.pieces)
        text += " " + layout.pieces[p].tag;
    return part21::shortened(text, longest_description);
}

Part part_for(const Shell &shell, const Layout &layout, const Piece &piece, std::size_t body) {
    Part part;
    part.name = piece.tag;
    part.colour = wall_colour(part_of(layout, piece).number());
    part.attributes = attributes_of_part(shell, piece);
    part.body = body;
    return part;
}

Use use_of(const Layout &layout, const Piece &piece, const Frame &wall, const Part &part) {
    Use use{piece.model.at(), piece.tag, part21::seen_from(piece.frame, wall), std::nullopt,
            attributes_of_use(layout, piece)};
    const Colour colour = wall_colour(part_of(layout, piece).number());
    if (colour != part.colour) use.colour = colour;
    return use;
}

} // namespace

std::string slug_of(const std::string &name) {
    std::string slug;
    for (const char c : name) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (letter)
            slug += c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        else if (!slug.empty() && slug.back() != '-')
            slug += '-';
        if (slug.size() == longest_slug) break;
    }
    while (!slug.empty() && slug.back() == '-')
        slug.pop_back();
    return slug.empty() ? "SHELL" : slug;
}

ProductTree tree_of(const Shell &shell, const Layout &layout) {
    ProductTree tree;
    tree.id = slug_of(layout.name);
    tree.name = name_of(layout.name, "Shell");
    tree.revision = part21::shortened(shell.project.revision, longest_name);
    for (const auto m : layout.models.indices()) {
        const Model &model = layout.models[m];
        const Piece &first = layout.pieces[model.pieces.front()];
        Part part = part_for(shell, layout, first, m.at());
        part.id = tree.id + "-" + first.tag;
        part.description = alike(layout, model);
        tree.parts.push_back(std::move(part));
    }
    for (const auto part : parts_of(layout)) {
        // No tag holds a space, so that no wall can have the id of a piece.
        std::string name = part21::shortened(part_name(layout, part), longest_name);
        name[0] = static_cast<char>(name[0] - 'a' + 'A');
        tree.groups.push_back({tree.id + "-" + name, name, part_frame(layout, part), {}});
    }
    for (const Piece &piece : layout.pieces) {
        Group &group = tree.groups[part_of(layout, piece).at()];
        group.uses.push_back(use_of(layout, piece, group.frame, tree.parts[piece.model.at()]));
    }
    std::erase_if(tree.groups, [](const Group &group) { return group.uses.empty(); });
    return tree;
}

ProductTree tree_of(const Shell &shell, const Layout &layout, const Piece &piece) {
    ProductTree tree;
    tree.id = slug_of(layout.name);
    tree.name = name_of(layout.name, "Shell");
    tree.revision = part21::shortened(shell.project.revision, longest_name);
    Part part = part_for(shell, layout, piece, 0);
    part.id = piece.tag;
    for (const Attribute &each : attributes_of_use(layout, piece))
        part.attributes.push_back(each);
    tree.parts.push_back(std::move(part));
    return tree;
}

} // namespace roundlay::step
