// The long faces and the ends of a log as they are hewn, before it is notched: what there is to measure from.
// A tapered log's run at a slant to its blank, whose own are gone by then; of a round log the planes that
// touch it are left.
#pragma once

#include "kernel/layout/layout.h"

namespace roundlay {

/// Where one long face of the log lies along it: a height for the top and under faces, a distance from the
/// blank's outside face for the other two.
struct HewnFace {
    double at_datum = 0;
    double per_mm = 0;
    double at(double x) const { return at_datum + per_mm * x; }
    bool tapers() const { return per_mm != 0; }
};

/// A place along the log as it lies on the outside and on the inside face as they are hewn: the same where a
/// saw goes square across.
struct SawLine {
    double outside = 0, inside = 0;
};

/// What heights and distances across are measured from.
enum class Footing {
    face,   ///< a flat face, its arrises there or not
    hewn,   ///< a face that runs at a slant to the blank
    touched ///< no flat is left: the plane that touches the round wood
};

/// Points into the piece that it is of, which must outlive it.
struct HewnFaces {
    Blank blank;
    HewnFace top, under, outside, inside;
    SawLine datum_end, far_end;      ///< where the piece ends: at a slant where the walls are not square
    const RoundCut *round = nullptr; ///< none where the blank has all its arrises

    // What the wood reaches before it is notched: hewn faces, or the planes that touch a round log.
    double lowest(double x) const;
    double highest(double x) const;
    double outermost(double x) const;
    double innermost(double x) const;
    /// As it is measured there.
    double height(double x, double z) const { return z - lowest(x); }
    bool tapers() const; ///< some long face does

    /// Where the upright plane x = at + lean * y meets the two side faces.
    SawLine across(double at, double lean) const;

    Footing under_footing() const;
    Footing outside_footing() const;

  private:
    double least(const HewnFace &face, double Vec3::*across, double x) const;
    double most(double blank_there, const HewnFace &face, double Vec3::*across, double x) const;
};

HewnFaces hewn_faces(const Piece &piece);

/// How far the bed of a mend lies behind the face that it opens to, at x along the log.
double depth_of(const HewnFaces &faces, const MendCut &cut, double x);

/// A seam cut's two ends along the log. One that reaches the blank's end is open there: it ends with the
/// piece.
struct CutStretch {
    SawLine from, to;
    bool at_datum = false, at_far = false; ///< open at that end
};
CutStretch stretch_of(const HewnFaces &faces, const SeamCut &cut);

} // namespace roundlay
