// What is cut out at full size: the faces of every distinct tail and notch, joists' tailed ends, and pockets.
#pragma once

#include "exporters/sheets/drawing/sheet.h"
#include "exporters/sheets/drawing/words.h"
#include "exporters/sheets/pattern/joints.h"

#include <string>
#include <vector>

namespace roundlay::sheets {

inline constexpr const char *score_layer = "MARK-LINE"; ///< of marks for a machine

struct PatternFace {
    std::string name;               ///< "T1 outside"
    std::vector<Vec2> outline;      ///< closed, millimetres of wood
    std::vector<Path> marks;        ///< inside the outline
    std::vector<Circle> holes = {}; ///< through the template, to bore by
};

struct Pattern {
    std::string name;             ///< "T1", "T2" …
    std::string where;            ///< "datum end", "pocket from above"
    double width = 0, height = 0; ///< of the blank; of a pocket its width at the face and its depth
    bool stands = true;           ///< its faces stand upright on the log; else they are seen from above
    std::vector<std::string> tags;
    std::vector<PatternFace> faces;
};

/// Outside, inside and end face of the joint; where something is bored through its stretch of log from above
/// or underneath, that face with the holes too.
Pattern pattern_of(const Joint &joint, const Words &words);

/// Joints in the order of distinct_joints(), then tailed ends of joists, then pockets; alike to a hundredth
/// of a millimetre is the same.
std::vector<Pattern> patterns_of(const Layout &layout, const Words &words = Words(UnitSystem::metric));

} // namespace roundlay::sheets
