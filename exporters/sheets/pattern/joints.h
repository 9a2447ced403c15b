// The distinct tails and notches of a shell: what is worth a template.
#pragma once

#include "exporters/sheets/cut_sheet/features.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

/// One end of a log, measured from that end.
struct JointCut {
    Side side = Side::top;
    double near = 0, far = 0; ///< from the log's end: where the cut begins and ends; near = 0 for a tail
    double outside_near = 0, outside_far = 0, inside_near = 0, inside_far = 0; ///< heights of the seam
};

struct Joint {
    std::string name;             ///< "T1", "T2" …
    End end = End::datum;         ///< which end of the log, so which way it faces
    double width = 0, height = 0; ///< of the blank
    HewnFace top, under;          ///< measured from the end
    double length = 0;            ///< of log that the template shows: past the last shoulder
    std::vector<JointCut> cuts;
    std::vector<std::string> tags; ///< of the logs that have it
};

/// Alike to a hundredth of a millimetre is the same joint. In the order of their first logs.
std::vector<Joint> distinct_joints(const Layout &layout);

/// Outline of the wood at the joint on one face, from the log's end, closed, counter-clockwise as that face
/// is seen from outside the wood with the log lying as in the wall.
std::vector<Vec2> outline_of(const Joint &joint, bool on_outside);

/// Outline of the end face seen from beyond the end; empty where the log runs past its notch unchanged.
std::vector<Vec2> end_outline_of(const Joint &joint);

} // namespace roundlay::sheets
