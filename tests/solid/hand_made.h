// Bodies written by hand as vertex lists, and the closed form of their volumes.
#pragma once

#include "kernel/layout/wood/body.h"

namespace roundlay::hand_made {

/// Planes follow from the loops (Newell's sums over the outer loop).
Polyhedron polyhedron(std::vector<Vec3> vertices, const std::vector<std::vector<std::vector<int>>> &faces);

/// By the divergence theorem, over triangles from the origin. Independent of kernel/geometry.
double volume_of(const Polyhedron &solid);

/// Hewn wood and bores put together; the volume counts every bore as a full cylinder of wood.
Body body(Polyhedron hewn, std::vector<Bore> bores = {}, bool clear = true);

Polyhedron box(double length, double width, double height);

/// A log with a tail at each end. `slope` is how much the tails' planes rise along and fall across.
Polyhedron two_tails(double length, double width, double height, double tail, double slope);

/// A box with a square pocket sunk into its inside face: that face has a hole.
Polyhedron pocketed(double length, double width, double height, Box3 pocket);

/// A box with a step out of its far upper end: an L seen from outside.
Polyhedron stepped(double length, double width, double height, double step_length, double step_height);

/// A box whose top runs from `height` at the origin up by `along` for each mm of x and `across` of y.
Polyhedron slanted(double length, double width, double height, double along, double across);

Bore through_bore(double x, double y, double height, double diameter);
Bore bore_from_top(double x, double y, double height, double depth, double diameter);
Bore bore_from_under(double x, double y, double depth, double diameter);

/// A two-tailed log with four through and four blind bores: what most pieces of a shell look like.
Body usual_log(double length = 4000);

} // namespace roundlay::hand_made
