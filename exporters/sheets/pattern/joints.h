// The distinct tails and notches of a shell: what is worth a template.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"

#include <map>
#include <string>
#include <vector>

namespace roundlay::sheets {

inline constexpr double past_shoulder = 40; ///< mm of log shown beyond a cut, to hold the template by
inline constexpr double alike_by = 0.01;    ///< mm: what differs by less is the same template

/// One cut of a joint, measured from the end of the log's blank; of a notch in the run of a log, measured
/// from where its template begins.
struct JointCut {
    Side side = Side::top;
    SawLine near, far; ///< where the cut begins and ends on the two side faces
    double outside_near = 0, outside_far = 0, inside_near = 0, inside_far = 0; ///< heights of the seam
};

/// A bore in a joint's stretch of log, measured as its cuts are.
struct JointBore {
    double x = 0, y = 0, diameter = 0; ///< y from the blank's outside face inward
    bool from_top = true;              ///< it is bored from above, or through; else from underneath
};

struct Joint {
    std::string name;             ///< "T1", "T2" …
    End end = End::datum;         ///< which end of the log, so which way it faces
    bool within = false;          ///< a notch in the run of a log: seen from outside, its left side left
    double width = 0, height = 0; ///< of the blank
    HewnFace top, under;          ///< measured from the end
    HewnFace line;                ///< the level line, that heights are told from on paper
    double across_end = 0;        ///< from the outside to the inside face as hewn, where the end meets them
    SawLine starts;    ///< where the log ends, from its blank's end; a slant where walls are not square
    double length = 0; ///< of log that the template shows: past the last shoulder
    std::vector<JointCut> cuts;
    HewnFace outside, inside; ///< the side faces, from the blank's outside face inward
    std::vector<JointBore> bores;
    std::vector<std::string> tags; ///< of the logs that have it
};

/// What the joints of one piece are called; empty where it has none there.
struct JointNames {
    std::string datum, far;                       ///< at its ends
    std::map<std::string, std::string> at_corner; ///< in its run, by the corner that it runs past
};

struct FoundJoints {
    std::vector<Joint> joints; ///< in the order of their first logs
    Indexed<JointNames, Piece> names;
};

/// Alike to a hundredth of a millimetre is the same joint. Level lines are those of these units.
FoundJoints joints_found(const Layout &layout, UnitSystem units);
std::vector<Joint> distinct_joints(const Layout &layout, UnitSystem units = UnitSystem::metric);

/// Outline of the wood at the joint on one face, from the log's end, closed, counter-clockwise as that face
/// is seen from outside the wood with the log lying as in the wall.
std::vector<Vec2> outline_of(const Joint &joint, bool on_outside);

/// Outline of the end face in its true size, seen from beyond the end along the log; empty where the log runs
/// past its notch unchanged.
std::vector<Vec2> end_outline_of(const Joint &joint);

} // namespace roundlay::sheets
