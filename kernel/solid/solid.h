// Exact solids. The only room of the kernel that sees OpenCASCADE; its types stay behind this header.
#pragma once

#include "kernel/boundary/measures.h"
#include "kernel/layout/wood/body.h"

#include <memory>
#include <string>

class TopoDS_Shape;

namespace roundlay {

/// One exact boundary representation, immutable, cheap to copy. Piece frame, millimetres.
class Solid {
  public:
    Solid();
    explicit Solid(const TopoDS_Shape &shape);
    bool empty() const;
    const TopoDS_Shape &shape() const; ///< for the exporters that speak OpenCASCADE
  private:
    std::shared_ptr<const TopoDS_Shape> shape_;
};

/// How a solid came about.
enum class Method { direct, boolean };

struct BuiltSolid {
    Solid solid;
    Method method = Method::direct;
};

/// Writes the body down as a B-rep directly where its bores keep clear, else by one boolean with all
/// bores as tools, held against the body. Throws std::runtime_error naming the cause when the library cannot.
BuiltSolid build(const Body &body);

/// A boolean can end well and be wrong. Throws std::runtime_error where the solid is not valid or has not the
/// body's volume.
void hold_against(const Solid &solid, const Body &body);

/// The same body by one box and one boolean per cut, one after another: slow, and the measure to hold
/// `build` against. Held against the body too, and each cut against the wood before it.
Solid build_plainly(const Piece &piece);

double volume(const Solid &solid);
/// By the library's integration over all faces.
Measures measures_of(const Solid &solid);
/// Valid by the library's check. Passes some wrong solids, see is_free_of_self_interference.
bool is_valid(const Solid &solid);
/// No feature runs into another, by the library's argument analyzer (about 6 ms).
bool is_free_of_self_interference(const Solid &solid);
int count_solids(const Solid &solid);

} // namespace roundlay
