// The border of a hewn solid by its exact surfaces: flats that stand for one round surface are one part.
#pragma once

#include "kernel/geometry/polyhedron.h"
#include "kernel/layout/index.h"

#include <optional>
#include <vector>

namespace roundlay {

/// Where two parts meet, from one corner of the solid to another. At a corner three parts or more meet.
struct PartEdge {
    std::vector<int> through; ///< indices into Polyhedron::vertices, both corners included
    int left = 0, right = 0;  ///< indices into BorderParts::parts, seen from outside on the way
};

/// A part's loops run as faces' do; forward: as the edge's own way, which has the part on its left.
struct PartEdgeUse {
    int edge = 0;
    bool forward = true;
};

struct BorderPart {
    int round = 0;          ///< Plane::round, which all its faces share; 0: it is one plane face
    std::vector<int> faces; ///< indices into Polyhedron::faces
    std::vector<std::vector<PartEdgeUse>> loops;
};

struct BorderParts {
    std::vector<BorderPart> parts;
    std::vector<PartEdge> edges;
    std::vector<std::vector<int>> at_vertex; ///< the parts that meet at each vertex of the polyhedron
};

/// None where parts touch themselves or one another otherwise than along such edges: a round surface goes
/// right round its axis, or is open on a way without corners.
std::optional<BorderParts> parts_of(const Polyhedron &hewn);

} // namespace roundlay
