// What a STEP file of a shell or of one piece holds, as plain values: products, where they are used, their
// names, colours and attributes. Both ways of writing start from it.
#pragma once

#include "exporters/mesh/palette.h"
#include "exporters/step/options.h"
#include "kernel/layout/wood/body.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace roundlay::step {

struct Attribute {
    std::string name, value;
};
using Attributes = std::vector<Attribute>;

/// One product with one solid.
struct Part {
    std::string id; ///< unique in the file
    std::string name, description;
    Colour colour;
    Attributes attributes;
    std::size_t body = 0;                 ///< index into the bodies written with the tree
    std::vector<std::string> layers = {}; ///< that its solid lies on
    std::string file = {};                ///< that its solid stands in instead; empty: it stands here
};

/// A part where it stands.
struct Use {
    std::size_t part = 0; ///< index into ProductTree::parts
    std::string name;
    Frame frame;                  ///< in the group
    std::optional<Colour> colour; ///< where it differs from the part's
    Attributes attributes;
};

/// One wall: a product made of uses.
struct Group {
    std::string id, name;
    Frame frame; ///< in the whole
    std::vector<Use> uses;
};

/// A shell, or with no groups its only part.
struct ProductTree {
    std::string id, name;
    std::string revision; ///< of every product; may be empty
    std::vector<Group> groups;
    std::vector<Part> parts;
};

/// Shell over walls over pieces; equal pieces share one part. Bodies are those of Layout::models.
ProductTree tree_of(const Shell &shell, const Layout &layout, StepColours colours);

/// One piece in its own frame; its body is number 0, and number 1, where it is asked for, the stick that it
/// is cut from: a second product that no other uses.
ProductTree tree_of(const Shell &shell, const Layout &layout, const Piece &piece, const StepOptions &options);

/// Upper-case ASCII letters, digits and single dashes; "SHELL" where a name has none of these.
std::string slug_of(const std::string &name);

} // namespace roundlay::step
