#include "kernel/solid/unrolled.h"

#include "kernel/boundary/polynomial.h"
#include "kernel/boundary/round_measures.h"

#include <Geom2d_BSplineCurve.hxx>
#include <Geom2d_Line.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array1OfPnt.hxx>
#include <TColgp_Array1OfPnt2d.hxx>

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double whole_turn = 2 * std::numbers::pi;

/// Of polynomials end to end.
struct Knots {
    TColStd_Array1OfReal places;
    TColStd_Array1OfInteger times;
    Knots(int parts, int degree) : places(1, parts + 1), times(1, parts + 1) {
        times.Init(degree);
        times(1) = times(parts + 1) = degree + 1;
        for (int i = 0; i <= parts; ++i)
            places(i + 1) = static_cast<double>(i) / parts;
    }
};

Handle(Geom2d_Curve) spline_of(const std::vector<gp_Pnt2d> &at, int parts) {
    TColgp_Array1OfPnt2d poles(1, static_cast<int>(at.size()));
    for (std::size_t i = 0; i < at.size(); ++i)
        poles(static_cast<int>(i) + 1) = at[i];
    const int degree = (poles.Length() - 1) / parts;
    const Knots knots(parts, degree);
    return new Geom2d_BSplineCurve(poles, knots.places, knots.times, degree);
}

/// Of a point on the wall.
gp_Pnt2d unrolled(const BoundaryRound &round, Vec3 p) {
    const RoundSurface &s = round.surface;
    const Vec3 v = p - s.at, over = cross(s.along, round.across);
    const double angle = std::atan2(dot(v, over), dot(v, round.across));
    return {angle < 0 ? angle + whole_turn : angle, dot(v, s.along)};
}

} // namespace

Handle(Geom_BSplineCurve) spline_of(const Polynomials &curve) {
    TColgp_Array1OfPnt poles(1, static_cast<int>(curve.poles.size()));
    for (int i = 1; i <= poles.Length(); ++i) {
        const Vec3 &p = curve.poles[static_cast<std::size_t>(i) - 1];
        poles(i) = {p.x, p.y, p.z};
    }
    const Knots knots(curve.parts, curve.degree());
    return new Geom_BSplineCurve(poles, knots.places, knots.times, curve.degree());
}

Handle(Geom2d_Curve)
    unrolled_on(const BoundaryRound &round, const Boundary &boundary, const BoundaryEdge &edge) {
    const Vec3 along = round.surface.along, start = point_of(boundary, edge, 0).at;
    if (edge.is_line()) {
        const double way = dot(point_of(boundary, edge, 1).at - start, along) < 0 ? -1 : 1;
        return new Geom2d_Line(unrolled(round, start), gp_Dir2d(0, way));
    }
    const BoundaryCurve &curve = boundary.curves[*edge.curve];
    if (curve.arc)
        return new Geom2d_Line(unrolled(round, start), gp_Dir2d(dot(curve.arc->axis, along) < 0 ? -1 : 1, 0));
    const int parts = curve.polynomials.parts;
    std::vector<gp_Pnt2d> poles;
    for (int part = 0; part < parts; ++part) {
        std::vector<Vec3> wall;
        for (const double t : places_of(highest_degree)) {
            const gp_Pnt2d p = unrolled(round, point_on(curve.polynomials, (part + t) / parts));
            wall.push_back({p.X(), p.Y(), 0});
        }
        wall = poles_through(wall);
        for (std::size_t i = part > 0 ? 1 : 0; i < wall.size(); ++i)
            poles.emplace_back(wall[i].x, wall[i].y);
    }
    return spline_of(poles, parts);
}

Handle(Geom2d_Curve) unrolled_rim(const Polynomials &rim, double foot) {
    std::vector<gp_Pnt2d> poles;
    for (std::size_t i = 0; i < rim.poles.size(); ++i)
        poles.emplace_back(whole_turn * static_cast<double>(i) / static_cast<double>(rim.poles.size() - 1),
                           rim.poles[i].z - foot);
    return spline_of(poles, rim.parts);
}

} // namespace roundlay
