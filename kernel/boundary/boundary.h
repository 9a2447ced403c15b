// The border of one piece as faces, edges and vertices in doubles, bores included.
//
// Plain values, no OpenCASCADE: the B-rep and the STEP text are both written down from it.
#pragma once

#include "kernel/boundary/polynomial.h"
#include "kernel/boundary/surfaces.h"
#include "kernel/layout/wood/body.h"

#include <optional>
#include <vector>

namespace roundlay {

struct BoundaryBore;
struct BoundaryCurve;
struct BoundaryRound;

/// A straight edge between two vertices, or a curved one, or the whole rim of a bore, which starts and ends
/// at one vertex.
struct BoundaryEdge {
    int from = 0, to = 0;                                   ///< indices into Boundary::vertices
    std::optional<Index<BoundaryBore>> bore = std::nullopt; ///< the rim is this bore's
    bool upper = false;                                     ///< which of the bore's two rims
    std::optional<Index<BoundaryCurve>> curve =
        std::nullopt; ///< of a rim where it lies in a round surface; else a line
    bool is_rim() const { return bore.has_value(); }
    bool is_line() const { return !bore && !curve; }
};

/// An arc, or else polynomials that keep to its two surfaces within curve_fit. Runs from the edge's one
/// vertex to the other, a rim counter-clockwise seen from above.
struct BoundaryCurve {
    std::optional<Arc> arc;
    Polynomials polynomials;
};

/// An edge as a loop runs along it. Rims run counter-clockwise seen from above when forward.
struct EdgeUse {
    int edge = 0;
    bool forward = true;
};

/// Part of a plane or of a round surface, or the wall of one bore. Loops run counter-clockwise seen from
/// outside the wood around the face, clockwise around its holes; loops[0] is the outer one.
struct BoundaryFace {
    Plane plane;                             ///< outward; unused unless the face is plane
    std::optional<Index<BoundaryBore>> bore; ///< the wall of this bore, its wood outside the cylinder
    std::optional<Index<BoundaryRound>> round;
    std::vector<std::vector<EdgeUse>> loops;
    bool is_bore_wall() const { return bore.has_value(); }
    bool is_plane() const { return !bore && !round; }
};

/// The surface of one round face. Angles about its axis are counted from `across`, counter-clockwise about
/// `along`: the face lies between 0 and a whole turn.
struct BoundaryRound {
    RoundSurface surface;
    Vec3 across; ///< unit, square to the axis
};

/// Where a bore ends: in a face that need not be level, or at a level bottom inside the wood.
struct BoreEnd {
    double z = 0; ///< on the axis
    Vec2 rise;    ///< of the plane it ends in, for each unit along x and y
    bool open = true;
};

/// An upright cylinder that the wood stands around. Its rims start at angle 0, that is at x + radius.
struct BoundaryBore {
    Vec2 axis;
    double radius = 0;
    BoreEnd below, above;
};

/// Closed: every edge is used once in each direction. A bore's wall uses its upright seam both ways.
struct Boundary {
    std::vector<Vec3> vertices;
    std::vector<BoundaryEdge> edges;
    Indexed<BoundaryFace> faces;
    Indexed<BoundaryBore> bores;
    Indexed<BoundaryRound> rounds;
    Indexed<BoundaryCurve> curves;
};

/// The border of a solid with plane faces only.
Boundary boundary_of(const Polyhedron &hewn);

/// The border of a body with its bores. None where that cannot be written down: `bores_clear` is false, or a
/// bore meets a face otherwise than with its whole rim inside, or is closed at both ends, or what
/// round_boundary_of says. Trusts `bores_clear` that bores keep clear of each other and of everything between
/// their ends.
std::optional<Boundary> boundary_of(const Body &body);

/// The same of a body with round surfaces: how they meet is read off its flats, where they meet is exact.
/// None where flats do not show how the surfaces meet: they only touch, a cylinder goes right round, a face
/// is too narrow to be among the flats, or wood reaches below the axis of a log that it is scoped over.
std::optional<Boundary> round_boundary_of(const Body &body);

} // namespace roundlay
