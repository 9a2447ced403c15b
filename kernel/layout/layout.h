// Layout: every piece of a shell as numbers, and what its parts are called. Worked out by lay_out.h.
#pragma once

#include "kernel/layout/cuts/blank.h"
#include "kernel/layout/cuts/cut.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <string>
#include <vector>

namespace roundlay {

enum class LogKind { full, half_start, half_finish };

/// How an end of a piece is finished.
enum class EndKind {
    corner, ///< a tail (or housed notch) at a corner
    jamb,   ///< square, at an opening
    butt,   ///< square, against the crossing wall (a half log too thin for a tail)
    step,   ///< square, against a step of the foundation
    pocket  ///< of a floor's timber: let into a wall or another timber
};

struct PieceEnd {
    EndKind kind = EndKind::jamb;
    std::string at;      ///< corner ("AB"), opening name, or name of the step
    double shoulder = 0; ///< x of the shoulder; the blank's end where there is none
};

struct Piece {
    std::string
        tag; ///< wall-round-piece, e.g. "C-07-2": unique, stable under edits elsewhere. Of a floor: "G-J03"
    int timber = -1; ///< index into Layout::timbers; -1: a log of a wall
    int wall = 0;    ///< index into Layout::walls; of a floor's timber: the wall that its floor starts in
    int round = 1;   ///< 1 = the sill logs
    int number = 1;  ///< in the wall's round, from the left seen from outside
    LogKind log = LogKind::full;
    bool island = false; ///< stands between two openings
    Frame frame;         ///< piece frame in the world; x along the log, y to the inside face, z up
    Blank blank;
    std::vector<Cut> cuts; ///< in cutting order: hewn faces, seam cuts, box cuts, bores
    PieceEnd datum, far;
    bool butt_at_datum = true; ///< butt (thick end) at the datum end
    /// Tags in the same wall that it meets through pegs or a gap; of a floor's timber: what it lies on.
    std::vector<std::string> above, below;
    int raise = 0; ///< place in the raise, 1 = first
    Finish finish = Finish::hewn;
    Fabric fabric = Fabric::newly_cut;
    std::string mark; ///< what is written on its log, in the yard or in the house it lies in
    double bow = 0;   ///< as measured on the whole log
    std::string note; ///< as stated of its log
    int model = 0;    ///< index into Layout::models: equal pieces share one
};

struct Peg {
    std::string name;         ///< e.g. "C-07-2/1": upper piece and number from its datum end
    int upper = 0, lower = 0; ///< indices into Layout::pieces
    Vec3 top;                 ///< world, centre of the peg's upper end
    double diameter = 0, length = 0;
};

enum class CornerKind {
    corner,  ///< both walls end here
    tee,     ///< a partition ends against a wall that runs on
    crossing ///< both walls run on
};

/// Where two walls meet. Each has an outward direction there: `ends` to the right seen from its outside,
/// `starts` to the left, whether it ends there or runs on.
struct CornerPlace {
    std::string name;         ///< "AB": wall A ends here and wall B starts (seen from outside, left to right)
    int ends = 0, starts = 0; ///< indices into Layout::walls
    bool reentrant = false;   ///< an inside corner of an L: log ends show indoors
    Vec2 centre;              ///< where the two centre lines cross
    CornerKind kind = CornerKind::corner;
    int runs_on = -1; ///< of a tee: the wall that does not end here, `ends` or `starts`
};

/// What a wall sees of one place where it meets another, in its own x on its centre line.
struct WallMeeting {
    int corner = 0;           ///< index into Layout::corners
    int other = 0;            ///< index into Layout::walls
    double x = 0;             ///< where the centre lines cross
    double low = 0, high = 0; ///< the crossing wall's two faces
    bool ends = true;         ///< this wall ends here, else it runs on
    double skew = 0; ///< how far those faces run toward +x per unit of y; 0 where the walls are square
};

/// A wall where it stands. Frame: origin at the wall's left outside corner at the foundation, x along the
/// wall to the right seen from outside, y inward, z up. A partition's origin lies in the near face of the
/// wall it starts in, and its length is the clear one between the two.
struct WallPlace {
    std::string name;
    Frame frame;
    double length = 0; ///< outside face, corner to corner; of a partition: face to face
    double thickness = 0;
    double pitch = 0;
    double log_height = 0;
    bool starts_full = true;
    double top = 0;                       ///< top of its last log
    int start_corner = 0, end_corner = 0; ///< indices into Layout::corners
    std::vector<WallMeeting> meetings;    ///< from left to right: the first and the last are its two ends
};

/// Where a wall's foundation stands higher, and what it is called. Heights from the lowest foundation.
struct StepPlace {
    std::string name;        ///< "step 1": in the order of Shell::steps
    int wall = 0;            ///< index into Layout::walls
    double from = 0, to = 0; ///< wall x; past the overhanging ends where it takes in a corner
    double rise = 0;
    int number = 1; ///< in the order of Shell::steps
};

/// "joist", "trimmed joist", "trimmer", "beam".
const char *name_of(TimberUse use);

/// What a timber's end lies in, and what is left of the timber there.
struct TimberHold {
    int carrier = -1; ///< index into Layout::timbers; -1: a wall
    double neck = 0; ///< its width at the face of the carrier: less than the timber's where the end is tailed
    double height = 0; ///< of its end: less than `full` where wood is cut away under it
    double full = 0;   ///< the timber's own height there
    double reach =
        0; ///< where it is held in the carrier, along that one's clear length from its `from`; 0 in a wall
};

/// A beam that a timber runs over.
struct TimberRest {
    int beam = 0;      ///< index into Layout::timbers
    double at = 0;     ///< the beam's middle, along the timber's clear length from its `from`
    double reach = 0;  ///< where the timber lies on the beam, along that one's clear length from its `from`
    double width = 0;  ///< of the beam
    double height = 0; ///< of the timber over the beam: less than `full` where it is cut from under it
    double full = 0;   ///< the timber's own height there
};

/// A joist or another timber of a floor, over its piece.
struct Timber {
    TimberUse use = TimberUse::joist;
    int piece = 0; ///< index into Layout::pieces
    int floor = 0; ///< index into Layout::floors
    Vec2 from, to; ///< its middle line in the floor's frame, between the faces of what carries its ends
    std::vector<double> spans;               ///< clear, from bearing to bearing
    double load_width = 0;                   ///< how wide a strip of floor it carries
    double bearing_from = 0, bearing_to = 0; ///< how far its ends lie in what carries them
    TimberHold hold_from, hold_to;
    std::vector<TimberRest> rests; ///< from its `from` on: one less than its spans
    double laid_at = 0;            ///< its place in the raise: as if its middle were this high
};

/// A floor where it lies. Frame: origin at the room's left front corner at the foundation, seen with one's
/// back to the wall that the joists start in; x to the right along that wall, y away from it, z up.
struct FloorPlace {
    std::string name;
    Frame frame;
    double width = 0, depth = 0; ///< clear, along x and y
    double level = 0;            ///< tops of the joists
    int from = 0, to = 0;        ///< indices into Layout::walls
};

/// Pieces that are alike: same blank, same cuts, whatever they are called.
struct Model {
    std::vector<int> pieces; ///< indices into Layout::pieces, in tag order; the first one stands for all
};

struct Layout {
    std::string name;
    std::vector<WallPlace> walls;     ///< in the order of Shell::walls, then of Shell::partitions
    std::vector<CornerPlace> corners; ///< in walking order, counter-clockwise seen from above
    std::vector<StepPlace> steps;     ///< by wall, from left to right
    std::vector<Piece> pieces;        ///< by wall, round, number; then the timbers of floors
    std::vector<Peg> pegs;
    std::vector<Model> models;      ///< by their first piece
    std::vector<FloorPlace> floors; ///< in the order of Shell::floors
    std::vector<Timber> timbers;    ///< by floor: beams, joists from the left, trimmers
    double height = 0;              ///< count * pitch
    int rounds = 0;
    double pitch = 0;
    Findings findings; ///< where one is an error, pieces is empty
};

/// Is it a log of that wall? (A floor's timbers are logs of none.)
inline bool is_log_of(const Piece &piece, int wall) {
    return piece.timber < 0 && piece.wall == wall;
}

/// "inside" or "outside"; a floor's timber has no outside: its two side faces are the left and the right one,
/// seen from its datum end.
const char *side_word(const Piece &piece, bool inside);

/// Index into Layout::walls; -1: there is no such wall.
int wall_named(const Layout &layout, const std::string &name);

/// What pieces are grouped by: the walls, then the floors.
int part_count(const Layout &layout);
int part_of(const Layout &layout, const Piece &piece);
/// "wall A", "floor G".
std::string part_name(const Layout &layout, int part);
/// "A", "G".
const std::string &part_letter(const Layout &layout, int part);
const Frame &part_frame(const Layout &layout, int part);

} // namespace roundlay
