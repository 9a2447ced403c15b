#include "exporters/step/product_tree.h"

#include "exporters/part21/part21_text.h"
#include "exporters/part21/placing.h"
#include "kernel/layout/pieces/stock.h"

#include <algorithm>
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

/// Told apart in grey as well, darker the older.
Colour wood_colour(Fabric fabric) {
    switch (fabric) {
    case Fabric::newly_cut:
        return {0xf0, 0xd8, 0xa0};
    case Fabric::replacement:
        return {0xe0, 0x9a, 0x50};
    case Fabric::patched:
        return {0x8a, 0x7c, 0x5a};
    case Fabric::kept:
        break;
    }
    return {0x60, 0x5c, 0x58};
}

Colour colour_of(const Layout &layout, const Piece &piece, StepColours colours) {
    return colours == StepColours::wood ? wood_colour(piece.fabric)
                                        : wall_colour(part_of(layout, piece).number());
}

std::string capital(std::string name) {
    name[0] = static_cast<char>(name[0] - 'a' + 'A');
    return name;
}

/// "Wall A", as its group is called.
std::string group_name(const Layout &layout, const Piece &piece) {
    return capital(part21::shortened(part_name(layout, part_of(layout, piece)), longest_name));
}

Part part_for(const Shell &shell, const Layout &layout, const Piece &piece, std::size_t body,
              StepColours colours) {
    Part part;
    part.name = piece.tag;
    part.colour = colour_of(layout, piece, colours);
    part.attributes = attributes_of_part(shell, piece);
    part.body = body;
    return part;
}

Use use_of(const Layout &layout, const Piece &piece, const Frame &wall, const Part &part,
           StepColours colours) {
    Use use{piece.model.at(), piece.tag, part21::seen_from(piece.frame, wall), std::nullopt,
            attributes_of_use(layout, piece)};
    const Colour colour = colour_of(layout, piece, colours);
    if (colour != part.colour) use.colour = colour;
    return use;
}

/// The stick that it is cut from.
Part stock_part(const Piece &piece) {
    constexpr Colour pale{0xe8, 0xe8, 0xe0};
    Part part;
    part.id = piece.tag + "-stock";
    part.name = piece.tag + " stock";
    part.description = "the stick that " + piece.tag + " is cut from, as it lies in the same frame";
    part.colour = pale;
    part.body = 1;
    part.layers = {"Stock"};
    return part;
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

ProductTree tree_of(const Shell &shell, const Layout &layout, StepColours colours) {
    ProductTree tree;
    tree.id = slug_of(layout.name);
    tree.name = name_of(layout.name, "Shell");
    tree.revision = part21::shortened(shell.project.revision, longest_name);
    for (const auto m : layout.models.indices()) {
        const Model &model = layout.models[m];
        const Piece &first = layout.pieces[model.pieces.front()];
        Part part = part_for(shell, layout, first, m.at(), colours);
        part.id = tree.id + "-" + first.tag;
        part.description = alike(layout, model);
        tree.parts.push_back(std::move(part));
    }
    for (const auto part : parts_of(layout)) {
        // No tag holds a space, so that no wall can have the id of a piece.
        const std::string name = capital(part21::shortened(part_name(layout, part), longest_name));
        tree.groups.push_back({tree.id + "-" + name, name, part_frame(layout, part), {}});
    }
    for (const Piece &piece : layout.pieces) {
        Group &group = tree.groups[part_of(layout, piece).at()];
        Part &part = tree.parts[piece.model.at()];
        group.uses.push_back(use_of(layout, piece, group.frame, part, colours));
        if (std::ranges::find(part.layers, group.name) == part.layers.end())
            part.layers.push_back(group.name);
    }
    std::erase_if(tree.groups, [](const Group &group) { return group.uses.empty(); });
    return tree;
}

ProductTree tree_of(const Shell &shell, const Layout &layout, const Piece &piece,
                    const StepOptions &options) {
    ProductTree tree;
    tree.id = slug_of(layout.name);
    tree.name = name_of(layout.name, "Shell");
    tree.revision = part21::shortened(shell.project.revision, longest_name);
    Part part = part_for(shell, layout, piece, 0, options.colours);
    part.id = piece.tag;
    for (const Attribute &each : attributes_of_use(layout, piece))
        part.attributes.push_back(each);
    part.layers = {group_name(layout, piece)};
    tree.parts.push_back(std::move(part));
    if (options.with_stock) tree.parts.push_back(stock_part(piece));
    return tree;
}

} // namespace roundlay::step
