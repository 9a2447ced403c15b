// What a sheet has to say about a piece, sorted out of its cuts.
#pragma once

#include "exporters/sheets/cut_sheet/reference_lines.h"
#include "kernel/layout/pieces/hewn_faces.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay::sheets {

/// One seam cut and the heights of its seam in the piece frame, at the four corners of the cut.
struct Notch {
    int number = 0; ///< in cutting order, from 1
    const SeamCut *cut = nullptr;
    SawLine from, to;                        ///< its two ends along the log
    double outside_from = 0, outside_to = 0; ///< on the outside face at `from` and `to`
    double inside_from = 0, inside_to = 0;   ///< on the inside face
    double along = 0;  ///< rise per run toward the piece's end that it belongs to; of a log that runs
                       ///< on past it, toward the far end
    double across = 0; ///< rise per run toward the outside face
    bool tail = false; ///< reaches the blank's end
};

/// Of the floor of a cut, on the two faces as they are hewn there: apart where a sill falls outward.
struct FloorLevel {
    double outside = 0, inside = 0; ///< piece frame
    bool falls() const { return outside != inside; }
};

struct BoxPart {
    int number = 0;
    const BoxCut *cut = nullptr;
    double x_from = 0, x_to = 0; ///< within the blank
    double z_from = 0, z_to = 0; ///< piece frame, within the blank
    bool opens_top = false, opens_under = false;
    FloorLevel floor_from,
        floor_to; ///< at its two ends: apart where a sill falls outward in a log that narrows
};

/// Where the log is scoped over another.
struct Scope {
    int number = 0; ///< in cutting order, with notches and boxes
    const ScopeCut *cut = nullptr;
    SawLine middle; ///< of a saddle: where it is highest
    double x_from = 0,
           x_to = 0;    ///< its two sides on the outside face, or of a groove its ends, within the blank
    double top = 0;     ///< where the lower log's highest line comes; piece frame
    bool whole = false; ///< of a groove: it runs out at both ends
};

/// A housing for the end of a timber, measured from the face that it opens in as that is hewn.
struct Pocket {
    int number = 0; ///< from the datum end, from 1
    const PocketCut *cut = nullptr;
    double bed_at_face = 0,
           bed_at_back = 0;   ///< piece frame; at the under face or lower where it begins in the log below
    double width_at_face = 0; ///< where it is open
    double depth = 0;
    bool inside = true, open_top = true; ///< else let into the outside face; else closed over it
};

/// A tailed end of a joist.
struct TailedEnd {
    End end = End::datum;
    double length = 0, width_at_end = 0, width_at_neck = 0;
};

/// Where other wood comes in the log's place.
struct MendPart {
    int number = 0; ///< in cutting order, with notches and boxes
    const MendCut *cut = nullptr;
    double x_from = 0, x_to = 0;         ///< within the blank
    double depth_from = 0, depth_to = 0; ///< at its two ends, from the face as hewn
    /// Of a side face in the piece frame, of the others from the outermost, at `x_from`; none: the whole
    /// face.
    std::optional<double> low, high;
    bool opens_top = false;
};

/// A bore of any use.
struct PegHole {
    int number = 0; ///< among those of its use, from the datum end, from 1
    const Bore *bore = nullptr;
};

/// What is cut into a log, kind by kind. Who goes through them takes them apart name by name, so that a kind
/// that is added does not compile there until it is put in or left out.
struct CutParts {
    std::vector<Notch> notches;
    std::vector<BoxPart> boxes;
    std::vector<Scope> scopes;
    std::vector<PegHole> pegs;
    std::vector<Pocket> pockets;
    std::vector<TailedEnd> tails;
    std::vector<MendPart> mends;
};

/// The faces of the log and what is cut into them. Points into the piece, which must outlive it. The sheet's
/// heights are from the level line, its distances across from the outermost.
struct Features : HewnFaces, CutParts {
    const Piece *piece = nullptr;
    LevelLine level;
    std::optional<double> end_line; ///< from the datum end

    /// As it is measured there: over the level line, or under it where it is less than 0.
    double height(double x, double z) const { return z - level.at.at(x); }

    const CutParts &parts() const { return *this; }
};

/// The round places of its lines are in those units.
Features features_of(const Piece &piece, UnitSystem units = UnitSystem::metric);

/// A place along the log that a saw or chisel goes to.
struct Station {
    double x = 0;         ///< on the outside face
    bool from_top = true; ///< some cut that ends here is open to the top face
};

/// The ends of all seam and box cuts and slanting ends inside the blank's length, each once, ascending.
std::vector<Station> stations_of(const Features &features);

/// The places that lie elsewhere on the inside face, each once, ascending on the outside face.
std::vector<SawLine> slanting_places(const Features &features);

/// Where something is cut or bored.
struct WorkedPlace {
    double x = 0;
    bool cut = true; ///< else the middle of a bore or a pocket's side, which has no number beside it
    double half = 0; ///< of the length that it takes: of a cut at a slant, from one side face to the other
};

/// All such places along the log, on either side face: none of them may be left out of a drawing. In no
/// order, some more than once.
std::vector<WorkedPlace> places_of(const Features &features);

/// A height of a seam or of the floor of a square cut, as it is measured on one face.
struct Level {
    bool on_outside = true; ///< else on the inside face
    double x = 0;           ///< where along the log
    double z = 0;           ///< piece frame
    int side = 1; ///< where the uncut wood is, and so its number: -1 toward the datum end, 1 toward the far
    double height = 0; ///< as it is measured: over the level line
};

/// Heights of the uncut log on its outside face: at the datum end, and where it tapers at the far end too.
std::vector<Level> log_heights(const Features &features);

/// The width of the uncut log at one end: at the datum end, and where it tapers at the far end too.
std::optional<double> log_width(const Features &features, End end);

/// All that is needed to mark the cuts, each once. Square cuts are level through the log: on the outside
/// only. Where a seam leaves the wood before it gets to a corner, that corner has no level.
std::vector<Level> levels_of(const Features &features);

/// Those of square cuts alone.
std::vector<Level> levels_beside_joints(const Features &features);

/// Two places along the log nearer than this are one, millimetres.
inline constexpr double same_station = 0.05;
/// Two heights nearer than this are one, millimetres.
inline constexpr double same_level = 0.05;

} // namespace roundlay::sheets
