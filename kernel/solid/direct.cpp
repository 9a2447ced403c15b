#include "kernel/solid/direct.h"

#include "kernel/boundary/rim.h"
#include "kernel/solid/unrolled.h"
#include "kernel/solid/wave.h"

#include <BRep_Builder.hxx>
#include <Geom2d_Line.hxx>
#include <Geom_Circle.hxx>
#include <Geom_CylindricalSurface.hxx>
#include <Geom_Ellipse.hxx>
#include <Geom_Line.hxx>
#include <Geom_Plane.hxx>
#include <Precision.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shell.hxx>
#include <TopoDS_Vertex.hxx>
#include <TopoDS_Wire.hxx>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace roundlay {

namespace {

constexpr double whole_turn = 2 * std::numbers::pi;

gp_Pnt point(Vec3 p) {
    return {p.x, p.y, p.z};
}
gp_Dir direction(Vec3 v) {
    return {v.x, v.y, v.z};
}

/// How far polynomials and what they are on the walls of cylinders lie off one another.
constexpr double curve_tolerance = 10 * curve_fit;

/// Distances are measured in doubles; this covers the rounding of the measurement itself.
constexpr double margin = 1.01;

class Writer {
  public:
    explicit Writer(const Boundary &boundary)
        : b_(boundary), edge_tolerance_(boundary.edges.size(), Precision::Confusion()),
          vertex_tolerance_(boundary.vertices.size(), Precision::Confusion()) {}

    TopoDS_Solid write() {
        find_tolerances();
        make_vertices();
        make_edges();
        TopoDS_Shell shell;
        builder_.MakeShell(shell);
        for (const BoundaryFace &face : b_.faces)
            builder_.Add(shell, face.is_bore_wall() ? bore_wall(face)
                                : face.is_plane()   ? plane_face(face)
                                                    : round_face(face));
        shell.Closed(true);
        TopoDS_Solid solid;
        builder_.MakeSolid(solid);
        builder_.Add(solid, shell);
        return solid;
    }

  private:
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    /// An edge must cover its ends' distances from both its planes, a vertex those of all its edges.
    void find_tolerances() {
        for (std::size_t e = 0; e < b_.edges.size(); ++e)
            if (b_.edges[e].curve) edge_tolerance_[e] = curve_tolerance;
        for (const BoundaryFace &face : b_.faces) {
            if (!face.is_plane()) continue;
            for (const std::vector<EdgeUse> &loop : face.loops)
                for (const EdgeUse &use : loop)
                    widen(use.edge, face.plane);
        }
        for (std::size_t e = 0; e < b_.edges.size(); ++e)
            for (const int v : {b_.edges[e].from, b_.edges[e].to})
                vertex_tolerance_[at(v)] = std::max(vertex_tolerance_[at(v)], edge_tolerance_[e]);
    }

    void widen(int e, const Plane &plane) {
        const BoundaryEdge &edge = b_.edges[at(e)];
        const double off = std::max(std::abs(plane.distance(b_.vertices[at(edge.from)])),
                                    std::abs(plane.distance(b_.vertices[at(edge.to)])));
        edge_tolerance_[at(e)] = std::max(edge_tolerance_[at(e)], margin * off);
    }

    void make_vertices() {
        vertices_.resize(b_.vertices.size());
        for (std::size_t v = 0; v < vertices_.size(); ++v)
            builder_.MakeVertex(vertices_[v], point(b_.vertices[v]), vertex_tolerance_[v]);
    }

    void make_edges() {
        edges_.resize(b_.edges.size());
        for (std::size_t e = 0; e < edges_.size(); ++e) {
            const BoundaryEdge &edge = b_.edges[e];
            if (edge.curve)
                make_curve(e, edge);
            else if (edge.is_rim())
                make_rim(e, edge);
            else
                make_line(e, edge);
        }
    }

    void make_line(std::size_t e, const BoundaryEdge &edge) {
        const Vec3 from = b_.vertices[at(edge.from)];
        const Vec3 along = b_.vertices[at(edge.to)] - from;
        builder_.MakeEdge(edges_[e], new Geom_Line(point(from), direction(along)), edge_tolerance_[e]);
        add_ends(e, edge);
        builder_.Range(edges_[e], 0, length(along));
    }

    void make_rim(std::size_t e, const BoundaryEdge &edge) {
        const Rim rim = rim_of(b_.bores[*edge.bore], edge.upper);
        const gp_Ax2 axes(point(rim.centre), direction(rim.normal), direction(rim.major));
        Handle(Geom_Curve) curve;
        if (rim.level)
            curve = new Geom_Circle(axes, rim.semi_major);
        else
            curve = new Geom_Ellipse(axes, rim.semi_major, rim.semi_minor);
        builder_.MakeEdge(edges_[e], curve, edge_tolerance_[e]);
        add_ends(e, edge);
        builder_.Range(edges_[e], rim.start, rim.start + whole_turn);
        edges_[e].Closed(true);
    }

    void make_curve(std::size_t e, const BoundaryEdge &edge) {
        const BoundaryCurve &curve = b_.curves[*edge.curve];
        if (curve.arc) {
            const Arc &arc = *curve.arc;
            const gp_Ax2 axes(point(arc.centre), direction(arc.axis), direction(arc.start));
            builder_.MakeEdge(edges_[e], new Geom_Circle(axes, arc.radius), edge_tolerance_[e]);
        } else
            builder_.MakeEdge(edges_[e], spline_of(curve.polynomials), edge_tolerance_[e]);
        add_ends(e, edge);
        builder_.Range(edges_[e], 0, curve.arc ? curve.arc->turn : 1);
        edges_[e].Closed(edge.from == edge.to);
    }

    void add_ends(std::size_t e, const BoundaryEdge &edge) {
        builder_.Add(edges_[e], vertices_[at(edge.from)].Oriented(TopAbs_FORWARD));
        builder_.Add(edges_[e], vertices_[at(edge.to)].Oriented(TopAbs_REVERSED));
    }

    TopoDS_Face plane_face(const BoundaryFace &face) {
        const BoundaryEdge &first = b_.edges[at(face.loops[0][0].edge)];
        TopoDS_Face made;
        builder_.MakeFace(made,
                          new Geom_Plane(point(b_.vertices[at(first.from)]), direction(face.plane.normal)),
                          Precision::Confusion());
        for (const std::vector<EdgeUse> &loop : face.loops)
            builder_.Add(made, wire_of(loop, false));
        return made;
    }

    /// A face whose surface's own normal points into the wood has its loops written backwards.
    TopoDS_Wire wire_of(const std::vector<EdgeUse> &loop, bool backwards) {
        TopoDS_Wire wire;
        builder_.MakeWire(wire);
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const EdgeUse &use = loop[backwards ? loop.size() - 1 - i : i];
            builder_.Add(wire, edges_[at(use.edge)].Oriented(use.forward != backwards ? TopAbs_FORWARD
                                                                                      : TopAbs_REVERSED));
        }
        wire.Closed(true);
        return wire;
    }

    TopoDS_Face round_face(const BoundaryFace &face) {
        const BoundaryRound &round = b_.rounds[*face.round];
        const RoundSurface &s = round.surface;
        const gp_Ax3 axes(point(s.at), direction(s.along), direction(round.across));
        TopoDS_Face made;
        builder_.MakeFace(made, new Geom_CylindricalSurface(axes, s.radius), Precision::Confusion());
        for (const std::vector<EdgeUse> &loop : face.loops) {
            for (const EdgeUse &use : loop)
                builder_.UpdateEdge(edges_[at(use.edge)], unrolled_on(round, b_, b_.edges[at(use.edge)]),
                                    made, edge_tolerance_[at(use.edge)]);
            builder_.Add(made, wire_of(loop, s.hollow));
        }
        if (s.hollow) made.Orientation(TopAbs_REVERSED);
        return made;
    }

    /// The cylinder's own normal points away from its axis, into the wood: the face is reversed, and so its
    /// loop is written backwards.
    TopoDS_Face bore_wall(const BoundaryFace &face) {
        const BoundaryBore &bore = b_.bores[*face.bore];
        const gp_Ax3 axes(gp_Pnt(bore.axis.x, bore.axis.y, bore.below.z), gp::DZ(), gp::DX());
        TopoDS_Face made;
        builder_.MakeFace(made, new Geom_CylindricalSurface(axes, bore.radius), Precision::Confusion());
        add_surface_curves(made, face, bore);
        builder_.Add(made, wire_of(face.loops[0], true));
        made.Orientation(TopAbs_REVERSED);
        return made;
    }

    void add_surface_curves(const TopoDS_Face &wall, const BoundaryFace &face, const BoundaryBore &bore) {
        const std::vector<EdgeUse> &loop = face.loops[0];
        for (const std::size_t i : {0U, 2U}) {
            const std::size_t e = at(loop[i].edge);
            builder_.UpdateEdge(edges_[e], unrolled(bore, b_.edges[e]), wall, edge_tolerance_[e]);
        }
        const std::size_t seam = at(loop[1].edge);
        const double v = b_.vertices[at(b_.edges[seam].from)].z - bore.below.z;
        builder_.UpdateEdge(edges_[seam], new Geom2d_Line(gp_Pnt2d(whole_turn, v), gp::DY2d()),
                            new Geom2d_Line(gp_Pnt2d(0, v), gp::DY2d()), wall, edge_tolerance_[seam]);
        builder_.Continuity(edges_[seam], wall, wall, GeomAbs_CN);
    }

    Handle(Geom2d_Curve) unrolled(const BoundaryBore &bore, const BoundaryEdge &edge) {
        if (edge.curve) return unrolled_rim(b_.curves[*edge.curve].polynomials, bore.below.z);
        const BoreEnd &end = edge.upper ? bore.above : bore.below;
        const Rim rim = rim_of(bore, edge.upper);
        if (!rim.level) return wave_of(end, bore.radius, bore.below.z, rim.start);
        return new Geom2d_Line(gp_Pnt2d(0, end.z - bore.below.z), gp::DX2d());
    }

    const Boundary &b_;
    BRep_Builder builder_;
    std::vector<double> edge_tolerance_, vertex_tolerance_;
    std::vector<TopoDS_Vertex> vertices_;
    std::vector<TopoDS_Edge> edges_;
};

} // namespace

TopoDS_Solid written_down(const Boundary &boundary) {
    return Writer(boundary).write();
}

} // namespace roundlay
