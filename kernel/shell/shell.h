// A shell as a person states it: plan, rounds, notches, openings, pegs, wood.
//
// Plain values. Nothing here is derived: what follows from these statements is worked out by layout.
// World axes: X east, Y north, Z up, millimetres.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/shell/kinds.h"
#include "kernel/shell/mend.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

/// Which family of notch an end is cut with. Each is a choice of the slopes of the tail's top plane
/// (along = outward along the log, across = outward along the crossing log).
enum class NotchKind {
    full_dovetail, ///< along = s, across = -s: locks both ways
    half_dovetail, ///< along = 0, across = -s: locks and sheds
    square_lap,    ///< along = across = 0: level, held by pegs only
    stated,        ///< along and across as given
    saddle, ///< for round logs: each log is scoped over those it lies on, along its length and where it
            ///< crosses
};

struct NotchRule {
    NotchKind kind = NotchKind::full_dovetail;
    Slope slope = Slope::rise_per_run(1.0 / 8); ///< s of the dovetails
    Slope along;                                ///< for stated
    Slope across;                               ///< for stated
    Length overhang;                            ///< how far ends run past the crossing wall's face; 0 = flush
    Length least_tail = Length::mm(38);         ///< a tail thinner than this anywhere is a finding
    /// Shoulders cut deep: this far behind the crossing wall's near face (a kerf of space, 0 = in its plane).
    /// Below zero they are left proud: that much wood stays to be pared, and the logs do not close until it
    /// is.
    Length shoulder;
    Length scribe; ///< of saddles and grooves: how far they clear the lower log's surface
    bool operator==(const NotchRule &) const = default;
};

/// One wall, stated as the walk along its OUTSIDE face. The walls, in order, go once round the shell.
struct Wall {
    std::string name;   ///< wall letter, e.g. "A"; unique
    double heading = 0; ///< degrees counter-clockwise from east: 0 east, 90 north, 180 west, 270 south
    Length length;      ///< outside face, corner to corner
    std::optional<Length> thickness;  ///< else the shell's
    std::optional<Length> pitch;      ///< round pitch of this wall, else the shell's
    std::optional<Length> log_height; ///< height of this wall's logs, else the shell's pitch less its gap
    bool closes = false; ///< its length is not stated but follows from the others': see close_plan
    bool operator==(const Wall &) const = default;
};

/// A wall indoors: it starts in one wall and ends in another, and its tails pass through both. Seen from its
/// own outside it runs from left to right; what lies left of its heading is its inside.
struct Partition {
    std::string name; ///< wall letter, unique among all walls
    std::string from; ///< the wall that it starts in
    Length from_left; ///< along that wall, from its left outside corner to where both middle lines cross
    std::optional<double> heading;    ///< degrees counter-clockwise from east; else square to `from`, inward
    std::string to;                   ///< the wall that it ends in; walls on the way there are crossed
    std::optional<Length> thickness;  ///< else the shell's
    std::optional<Length> pitch;      ///< as Wall
    std::optional<Length> log_height; ///< as Wall
    bool operator==(const Partition &) const = default;
};

/// How a wall whose first log is a half log, and the top, are closed.
enum class TopRule { level, staggered };

/// Two of count, height and pitch are stated; the third is worked out. One round = one log of each wall.
struct Rounds {
    std::optional<int> count;
    std::optional<Length> height; ///< foundation to the top of the last round, gap included: count * pitch
    std::optional<Length> pitch;
    Length gap;             ///< chink or settling gap between the logs of one wall
    std::string full_first; ///< a wall that starts with a full log; empty = the first wall
    TopRule top = TopRule::level;
    bool operator==(const Rounds &) const = default;
};

/// A corner, tee or crossing whose notch differs from the shell's.
struct CornerNotch {
    std::string first;  ///< wall that ends at the corner (walking the outside face as stated)
    std::string second; ///< wall that starts there; at tees and crossings in either order
    NotchRule notch;
    bool operator==(const CornerNotch &) const = default;
};

/// Rules by which the space over a frame is worked out; what they are is in kernel/trade/settling.h.
enum class SettlingRuleName { per_300_mm, six_percent, four_percent, per_chinked_log };

/// What one opening's trim has of its own, over the shell's Trim.
struct OwnTrim {
    std::optional<Length> spline_width, spline_depth; ///< a depth of 0: no groove in its jambs
    std::optional<Slope> sill_slope;
    std::optional<Length> settle_space;
    std::optional<SettlingRuleName> settling; ///< goes before a space that is stated for all openings
    std::optional<Length> header_bearing;
    bool operator==(const OwnTrim &) const = default;
};

/// A rough opening. Measured on the wall's outside face.
struct Opening {
    std::string name; ///< as the person calls it, e.g. "front door"; may be empty
    OpeningKind kind = OpeningKind::window;
    std::string wall;
    Length from_left; ///< from the wall's left outside corner, seen from outside, to the left jamb
    Length sill;      ///< foundation to the underside of the opening
    Length width;
    Length height;
    OwnTrim trim;
    bool operator==(const Opening &) const = default;
};

enum class PegBoring {
    at_the_bench, ///< into each log by its sheet, before it is raised
    in_place      ///< through the log just laid into the one below: no log has them before it is raised
};

/// Where pegs go. A peg runs down through one log and into the one below it, on the wall's centre line.
struct PegRule {
    bool wanted = true;
    PegBoring bored = PegBoring::at_the_bench;
    Length diameter = Length::mm(32);
    Length spacing = Length::mm(1800);     ///< fastening places of a log are never further apart than this
    Length end_distance = Length::mm(100); ///< bore centre to a cut end, a jamb or a shoulder, at least
    Length between = Length::mm(75);       ///< between bore centres in one log, at least
    double depth_below = 0.5;              ///< how deep into the lower log, as a part of its height (0..1]
    int fewest = 3; ///< fastening places of a log on its bearer, corners that lock counted, of an island too
    /// Draw-bore: the hole in the lower log is bored this much further from the log's nearer end than the one
    /// above it, so that driving the peg draws the upper log that way.
    Length draw;
    std::optional<Length> square; ///< side of square pegs driven into the round holes; else they are round
    bool operator==(const PegRule &) const = default;
};

/// An upright bore at a stated place, on its own in one log or right down through several.
struct StatedBore {
    std::string name;
    BoreUse use = BoreUse::bolt;
    std::string wall;
    Length from_left; ///< along the wall's outside, from its left corner, to the centre line
    std::optional<Length> from_outside; ///< else in the middle of the wall
    Length diameter = Length::mm(20);
    int from_round = 1;
    std::optional<int> to_round; ///< else the last
    Length drift; ///< as found: how far to the right each log's hole lies from that of the log below it
    bool operator==(const StatedBore &) const = default;
};

/// What became of an old log, or that it is none.
enum class Fabric { newly_cut, kept, patched, replacement };

/// Section of a log. Height and width at the ends of its butt and tip, and which end the butt is. What is not
/// stated is the wall's own: log height and thickness. A width is at most the wall's thickness: that is the
/// widest log.
struct LogSizes {
    std::optional<Length> butt_height, tip_height;
    std::optional<Length> butt_width, tip_width;
    std::optional<LogEnd> butt; ///< not stated: alternates from round to round, left in round 1
    std::optional<Length>
        diameter; ///< of the round stick that it is made of: what would lie outside that is wane
    std::optional<Finish> finish; ///< not stated: hewn; of round logs peeled
    bool operator==(const LogSizes &) const = default;
};

/// What one log's notches have of their own, over those of its corners. The slopes are of the tops of its
/// tails.
struct LogNotch {
    std::optional<NotchKind> kind;
    std::optional<Slope> slope, along, across;
    std::optional<Length> overhang_left, overhang_right; ///< of its two ends, seen from outside
    bool operator==(const LogNotch &) const = default;
};

/// The tail at one end of a log, where that end was measured or is cut by itself: over its other notch rules.
struct OwnTail {
    LogEnd end = LogEnd::left;
    std::optional<Slope> along, across; ///< of its top, as in a stated notch; both or neither
    std::optional<Length> height; ///< from what it lies on to its top, where the two walls' middles cross;
                                  ///< not stated: midway between the logs' middles
    std::optional<Length> gap;    ///< between what it would lie on and its underside; of the lowest log none
    bool operator==(const OwnTail &) const = default;
};

/// One log that differs from its fellows, or was measured. Stated for the whole log, before openings cut it;
/// of a half log the heights are those of the half. Or, with `piece`, what only one of the logs is that
/// openings part it into: its mark, finish, bow, fabric, species and note. Their heights and widths are those
/// of the whole, which is straight from end to end.
struct OwnLog {
    std::string wall;
    int round = 1;
    std::string mark; ///< what is written on the log itself, in the yard or in the house it lies in
    LogSizes sizes;
    LogNotch notch;
    /// From the top of the log below, at its two ends; of the first log from the lowest foundation: what
    /// packs it up there. Not stated: the wall's own gap, and none under the first.
    std::optional<Length> gap_left, gap_right;
    std::vector<OwnTail> tails;
    /// Its seams at corners are cut so far clear of those of the logs that they meet, to be scribed at the
    /// wall.
    std::optional<Length> scribe;
    std::optional<Length> bow;    ///< as measured: how far its middle stands out of the line between its ends
    std::optional<Fabric> fabric; ///< not stated: newly cut
    std::optional<int> piece;     ///< counted from the left, seen from outside
    std::string species;          ///< of its wood; empty: the shell's
    std::string note;             ///< whatever whoever measured it wants known
    bool operator==(const OwnLog &) const = default;
};

/// A stretch of a wall where the foundation stands higher: the rounds below start at it. From_left may be 0
/// and to_right may be the wall's length: then it takes in the corner, where the other wall must state the
/// same rise.
struct FoundationStep {
    std::string wall;
    Length from_left; ///< from the wall's left corner seen from outside
    Length width;
    Length rise; ///< over the lowest foundation, from which all heights are measured
    bool operator==(const FoundationStep &) const = default;
};

/// How openings are trimmed: what is cut for their frames, and the space that the logs need to come down.
struct Trim {
    Length spline_width,
        spline_depth; ///< the upright groove in each jamb for its spline; a depth of 0 = none
    Slope sill_slope; ///< by which a window's sill falls outward, rise per run; level = none
    std::optional<Length>
        settle_space; ///< over each frame; not stated: by the settling of the logs beside it
    std::optional<SettlingRuleName>
        settling; ///< by which rule that is; not stated: by the kind of wall and its moisture
    Length header_bearing =
        Length::mm(150); ///< a header log runs past its opening by this at both sides, at least
    bool operator==(const Trim &) const = default;
};

enum class PocketKind {
    square, ///< a plain housing
    tailed  ///< widens into the wall, so that the joist ties the two walls together
};

/// Section of a joist, beam or trimmer.
struct TimberSize {
    Length width, height;
    bool operator==(const TimberSize &) const = default;
};

/// Carries the joists of a floor between its walls, along `from`, and lies in the walls at its own two ends.
struct Beam {
    Length from_wall; ///< the inside face of the wall that the joists start in, to the beam's middle
    TimberSize size;
    bool operator==(const Beam &) const = default;
};

/// An opening in a floor, e.g. for a stair. Measured from the room's left front corner, standing in the room
/// with one's back to the wall that the joists start in: to the right along that wall, and away from it.
struct FloorOpening {
    std::string name;
    Length from_left, from_wall;
    Length width;  ///< along the wall
    Length length; ///< along the joists
    bool operator==(const FloorOpening &) const = default;
};

/// Joists that lie from one wall to another.
struct Floor {
    std::string name;     ///< letters and digits, unique among floors, walls and partitions, e.g. "G"
    std::string from, to; ///< two walls or partitions that are parallel, but for 1 in 50
    Length level;         ///< the tops of its joists, over the foundation
    TimberSize joist = {Length::mm(100), Length::mm(200)}; ///< at the butt
    std::optional<Length> tip_width, tip_height;           ///< of joists from tapered logs
    Length spacing = Length::mm(600);                      ///< on centre
    std::optional<Length> first; ///< from the room's left side to the first joist's middle; else the spacing
    Length bearing = Length::mm(75); ///< how far the ends lie in the walls
    PocketKind pocket = PocketKind::square;
    Slope tail = Slope::rise_per_run(1.0 / 6); ///< of tailed pockets: each cheek widens by this
    std::vector<Beam> beams;
    std::vector<FloorOpening> openings;
    std::optional<double> live_load, dead_load; ///< kPa, for the screen of spans; none without a live load
    std::string species;                        ///< of its timbers; empty: the shell's
    std::optional<Fabric> fabric;               ///< of its timbers; not stated: newly cut
    bool operator==(const Floor &) const = default;
};

struct Wood {
    std::string species; ///< empty = not stated; then eastern hemlock is taken, and said to be (`species_of`)
    std::optional<double> moisture; ///< percent of ovendry mass; not stated = green
    bool operator==(const Wood &) const = default;
};

/// Whose the drawings and files are, as title blocks (ISO 7200) and the headers of STEP files have it.
struct Project {
    std::string number;   ///< before the numbers of sheets
    std::string owner;    ///< legal owner of the drawings
    std::string creator;  ///< who made them
    std::string approved; ///< who said they are right
    std::string revision;
    bool operator==(const Project &) const = default;
};

struct Shell {
    std::string name;
    std::string state; ///< which state of the house this is: "as found"; empty where nothing is said of it
    UnitSystem units = UnitSystem::metric; ///< how numbers are shown; never changes the geometry
    Length thickness;                      ///< of every wall that does not state its own
    std::vector<Wall> walls;
    std::vector<Partition> partitions;
    Rounds rounds;
    NotchRule notch;
    std::vector<CornerNotch> corners;
    LogSizes logs; ///< of every log that states nothing of its own
    std::vector<OwnLog> own_logs;
    std::vector<Opening> openings;
    std::vector<FoundationStep> steps;
    Trim trim;
    std::vector<Floor> floors;
    PegRule pegs;
    std::vector<StatedBore> bores;
    std::vector<Mend> mends;
    Wood wood;
    Project project;
    bool operator==(const Shell &) const = default;
};

/// The trim of one opening: its own where stated, else the shell's. Without a groove both its sizes are 0.
Trim trim_of(const Shell &shell, const Opening &opening);

/// What stands on sheets, lists and models: its name, and behind it its state.
std::string called(const Shell &shell);

/// The wood that weights and spans are worked out for.
std::string species_of(const Wood &wood);

/// The wood of a part that is of a species of its own, or with `own` empty of the shell's.
Wood wood_of(const Shell &shell, const std::string &own);

/// "13 mm in 300 mm", "6 percent", "4 percent", "3/16 in per log": in documents and for people.
const char *name_of(SettlingRuleName rule);
/// "hewn", "sawn", "peeled": in documents and for people.
const char *name_of(Finish finish);
/// "new", "kept", "patched", "replacement".
const char *name_of(Fabric fabric);

} // namespace roundlay
