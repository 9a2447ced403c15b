#include "kernel/layout/pieces/hewn_faces.h"

#include "kernel/layout/cuts/match.h"

#include <algorithm>
#include <cmath>

namespace roundlay {
namespace {

constexpr double same_place = 0.05; ///< mm: as near as anybody measures

Vec3 axis_at(const RoundCut &round, double x) {
    const double run = round.to.x - round.from.x;
    return run == 0 ? round.from : round.from + (x - round.from.x) / run * (round.to - round.from);
}

/// The plane of a slanting face, as the value of one coordinate along the log.
HewnFace slanting(const Plane &plane, double across) {
    return {plane.offset / across, -plane.normal.x / across};
}

void set_long_face(HewnFaces &faces, const FaceCut &cut) {
    switch (cut.face) {
    case LogFace::top:
        faces.top = slanting(cut.plane, cut.plane.normal.z);
        break;
    case LogFace::under:
        faces.under = slanting(cut.plane, cut.plane.normal.z);
        break;
    case LogFace::outside:
        faces.outside = slanting(cut.plane, cut.plane.normal.y);
        break;
    case LogFace::inside:
        faces.inside = slanting(cut.plane, cut.plane.normal.y);
        break;
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
}

void set_end(HewnFaces &faces, const FaceCut &cut) {
    if (cut.face != LogFace::datum_end && cut.face != LogFace::far_end) return;
    const Plane &plane = cut.plane; // upright, so y alone tells x
    (cut.face == LogFace::datum_end ? faces.datum_end : faces.far_end) =
        faces.across(plane.offset / plane.normal.x, -plane.normal.y / plane.normal.x);
}

} // namespace

double HewnFaces::least(const HewnFace &face, double Vec3::*across, double x) const {
    const double hewn = std::max(0.0, face.at(x));
    return round == nullptr ? hewn : std::max(hewn, axis_at(*round, x).*across - round->radius);
}

double HewnFaces::most(double blank_there, const HewnFace &face, double Vec3::*across, double x) const {
    const double hewn = std::min(blank_there, face.at(x));
    return round == nullptr ? hewn : std::min(hewn, axis_at(*round, x).*across + round->radius);
}

double HewnFaces::lowest(double x) const {
    return least(under, &Vec3::z, x);
}

double HewnFaces::highest(double x) const {
    return most(blank.height, top, &Vec3::z, x);
}

double HewnFaces::outermost(double x) const {
    return least(outside, &Vec3::y, x);
}

double HewnFaces::innermost(double x) const {
    return most(blank.width, inside, &Vec3::y, x);
}

bool HewnFaces::tapers() const {
    return top.tapers() || under.tapers() || outside.tapers() || inside.tapers();
}

SawLine HewnFaces::across(double at, double lean) const {
    constexpr int enough = 12; // faces run at some 1:200 to the blank: each turn gains two digits
    SawLine line{at, at};
    for (int i = 0; i < enough && lean != 0; ++i) {
        line.outside = at + lean * outermost(line.outside);
        line.inside = at + lean * innermost(line.inside);
    }
    return line;
}

Footing HewnFaces::under_footing() const {
    if (round != nullptr && round->from.z - round->radius > under.at(0) - same_place) return Footing::touched;
    return under.tapers() ? Footing::hewn : Footing::face;
}

Footing HewnFaces::outside_footing() const {
    if (round != nullptr && round->from.y - round->radius > outside.at(0) - same_place)
        return Footing::touched;
    return outside.tapers() ? Footing::hewn : Footing::face;
}

HewnFaces hewn_faces(const Piece &piece) {
    HewnFaces faces;
    faces.blank = piece.blank;
    faces.top = {piece.blank.height, 0};
    faces.inside = {piece.blank.width, 0};
    faces.far_end = {piece.blank.length, piece.blank.length};
    for (const Cut &cut : piece.cuts)
        match(
            cut, [&](const RoundCut &round) { faces.round = &round; },
            [&](const FaceCut &face) { set_long_face(faces, face); }, passing_all<Joinery, Boring>);
    for (const Cut &cut : piece.cuts) // ends are told on the long faces
        match(
            cut, [&](const FaceCut &face) { set_end(faces, face); }, passing<RoundCut>,
            passing_all<Joinery, Boring>);
    return faces;
}

double depth_of(const HewnFaces &faces, const MendCut &cut, double x) {
    const Vec3 &n = cut.bed.normal;
    const auto bed = [&](double across) { return (cut.bed.offset - n.x * x) / across; };
    switch (cut.face) {
    case LogFace::top:
        return faces.highest(x) - bed(n.z);
    case LogFace::under:
        return bed(n.z) - faces.lowest(x);
    case LogFace::inside:
        return faces.innermost(x) - bed(n.y);
    case LogFace::outside:
    case LogFace::datum_end:
    case LogFace::far_end:
        break;
    }
    return bed(n.y) - faces.outermost(x);
}

CutStretch stretch_of(const HewnFaces &faces, const SeamCut &cut) {
    // its shoulders are stated on the middle of the blank
    const auto shoulder = [&](double x) {
        return faces.across(x - cut.skew * faces.blank.width / 2, cut.skew);
    };
    CutStretch s;
    s.at_datum = cut.open_at(End::datum, faces.blank.length);
    s.at_far = cut.open_at(End::far, faces.blank.length);
    s.from = s.at_datum ? faces.datum_end : shoulder(cut.x_from);
    s.to = s.at_far ? faces.far_end : shoulder(cut.x_to);
    return s;
}

} // namespace roundlay
