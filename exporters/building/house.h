// What an IFC file of a house tells, as plain values: storeys, walls and floors with their parts, and what is
// said of each. Lengths are millimetres, volumes mm3, weights kilograms.
#pragma once

#include "exporters/mesh/mesh.h"
#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/index.h"
#include "kernel/layout/piece.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace roundlay::building {

/// One property: `type` is that of its value in the standard, "IFCLABEL". Where it is one word of a list of
/// the standard's, `list` names that.
struct Property {
    std::string name;
    std::string_view type;
    std::variant<std::string, int, bool, double> value;
    std::string_view list = {};
};

struct PropertySet {
    std::string name; ///< "Roundlay_..." is ours, "Pset_..." the standard's
    std::vector<Property> properties;
};

enum class Measured { length, area, volume, weight };

struct Quantity {
    std::string name;
    Measured what = Measured::length;
    double value = 0; ///< mm, mm2, mm3, kg
    std::string note = {};
};

struct QuantitySet {
    std::string name; ///< "Qto_...": the standard's
    std::vector<Quantity> quantities;
};

struct About {
    std::vector<PropertySet> properties;
    QuantitySet quantities;
};

struct Material {
    std::string name;         ///< of the species
    double low = 0, high = 0; ///< kg per m3; both 0 where they are not known
    std::string basis;
};

struct Shape {
    /// In the piece's frame: plane faces, or triangles where the piece is round.
    std::variant<Polyhedron, Mesh> body;
    int part = 0; ///< wall or floor that its first piece is of: its colour
};

enum class PartUse { log, new_wood, joist, beam, trimmer };

/// A log or a timber.
struct Part {
    PartUse use = PartUse::log;
    Index<Piece> piece;
    std::string tag, description;
    Frame frame; ///< in what it is part of
    Index<Shape> shape;
    Index<Material> wood;
    About about;
};

struct Fastener {
    std::string name;
    Vec3 top; ///< centre of its upper end, in its wall
    double diameter = 0, length = 0;
    Index<Piece> upper, lower;
};

/// An opening through a wall, as wide and as high as it is stated, in the wall's frame.
struct Void {
    std::string name, description;
    Vec3 corner; ///< lower left, on the outside face
    double width = 0, height = 0, depth = 0;
    About about;
};

enum class AssemblyUse { wall, partition, floor };

/// A wall or a floor: it has no body of its own but is made of its parts.
struct Assembly {
    AssemblyUse use = AssemblyUse::wall;
    std::string letter, name;
    Frame frame; ///< in its storey
    std::size_t storey = 0;
    std::vector<Part> parts;
    std::vector<Fastener> pegs;
    std::vector<Void> openings;
    About about;
};

struct Storey {
    std::string name;
    double elevation = 0; ///< over the lowest foundation
};

struct House {
    std::string name, site;
    Project project;
    std::string key;                       ///< what makes its identifiers its own
    std::vector<std::string> descriptions; ///< for the file's header: a phrase each
    std::optional<double> square_pegs;     ///< side; else they are round
    About about;
    std::vector<Storey> storeys; ///< from below
    std::vector<Assembly> assemblies;
    Indexed<Shape> shapes; ///< one for each of Layout::models
    std::vector<int> uses; ///< how many parts have that shape
    Indexed<Material> woods;
};

} // namespace roundlay::building
