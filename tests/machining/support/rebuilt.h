// A solid made of a list of operations, by whoever knows nothing but that file and its schema.
//
// Nothing of the program is included here, nor may it be: this is what holds the file to its word. Solids are
// OpenCASCADE's, each operation one boolean.
#pragma once

#include <TopoDS_Shape.hxx>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace operations_check {

/// A face of a solid, and what it may be called: of operations that share its plane there, each.
struct NamedFace {
    TopoDS_Shape face;
    std::vector<std::string> names;
};

struct Rebuilt {
    TopoDS_Shape solid;
    std::vector<NamedFace> faces;
    std::optional<double> told; ///< the volume that the file tells
    bool names_faces = true;
    bool round = false; ///< it has round surfaces other than bores
};

/// `json`: the bytes of operations/TAG.json. Throws std::runtime_error where the booleans fail.
Rebuilt rebuilt_from(std::string_view json);

/// Each face of a STEP file's solid under its name there.
struct Read {
    TopoDS_Shape solid;
    std::vector<NamedFace> faces;
};
Read read_step(const std::string &bytes);

/// mm3. Of round ones by adaptive integration: the library's own of fixed order is 1e-7 off there.
double volume_of(const TopoDS_Shape &solid, bool round);

/// What is against it that the two have the same faces by the same names; empty where nothing is. `shared`
/// counts faces that more than one operation lays claim to.
std::vector<std::string> differences(const Rebuilt &rebuilt, const Read &step, int &shared);

} // namespace operations_check
