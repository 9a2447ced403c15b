// One log of a house that stands, or one timber of its floors, as it was found.
//
// It is known by its tag for ever: walls may be renamed, rounds put in between, the log may move to another
// place. Its ends are named by their corner, for left and right swap between inside and outside.
#pragma once

#include "kernel/record/noted_length.h"

#include <string>
#include <vector>

namespace roundlay {

enum class FoundFace { outside, inside, top, under };

/// What the wood of a zone is. Proposed by common practice, no source.
enum class Soundness { sound, checked, soft, rotten, missing };

enum class PegState { found, missing, broken, sawn };

enum class Season { spring, summer, autumn, winter };

struct FoundEnd {
    std::string corner;        ///< that it lies in; at an opening whatever tells the ends apart
    NotedLength height, width; ///< of the log at the shoulder
    NotedLength shoulder_outside, shoulder_inside; ///< how high the tail is there ...
    NotedLength end_outside, end_inside;           ///< ... and at its end, on both faces
    NotedLength overhang;                          ///< past the crossing wall
    NotedLength gap;                               ///< between the tail and what it lies on
    NotedLength level;                             ///< of the log's upper edge, up or down from the plane
    std::string plane;                             ///< that the level is read from
    std::string joint;                             ///< what kind it is, and how it sheds water
    std::string note;
    bool operator==(const FoundEnd &) const = default;
};

/// A place along the log where it was measured: mid-length, both sides of openings.
struct FoundStation {
    NotedLength at; ///< running, from the log's zero
    NotedLength height, width;
    NotedLength gap_below, gap_above;
    NotedLength level;
    std::string plane;
    std::string note;
    bool operator==(const FoundStation &) const = default;
};

struct ConditionZone {
    Soundness what = Soundness::sound;
    NotedLength from, to; ///< running, from the log's zero
    std::vector<FoundFace> faces;
    NotedLength depth;
    std::string note;
    bool operator==(const ConditionZone &) const = default;
};

/// What was tried and what it showed: never a verdict.
struct WoodTest {
    std::string tool; ///< probe, pick, hammer, drill
    NotedLength at;
    std::optional<FoundFace> face;
    NotedLength depth;
    std::string showed;
    std::string by, on;
    bool operator==(const WoodTest &) const = default;
};

/// Moisture is not decay, and says little without its depth and season.
struct MoistureReading {
    double percent = 0; ///< of ovendry mass
    NotedLength at;
    std::optional<FoundFace> face;
    NotedLength depth;
    std::optional<Season> season;
    std::string probe;
    std::string by, on;
    bool operator==(const MoistureReading &) const = default;
};

struct FoundPeg {
    PegState state = PegState::found;
    NotedLength at;
    NotedLength diameter, depth;
    std::string note;
    bool operator==(const FoundPeg &) const = default;
};

/// What was cut after the house was built: an end cut flush, a kerf, an overhang left where a wall ran on.
struct LaterCut {
    std::string what;
    NotedLength at;
    std::string why; ///< one thinks so
    bool operator==(const LaterCut &) const = default;
};

/// Where a log or a floor's timber lies, as far as anybody can say: wall and round may be called otherwise
/// tomorrow.
struct FoundPlace {
    std::string wall; ///< empty: nobody knows
    std::optional<int> round, piece;
    std::string timber = {}; ///< of a floor, by its tag in the plan ("L-J03"): then neither wall nor round
    bool operator==(const FoundPlace &) const = default;
};

/// What becomes of a log. Our own words; mending is told, not drawn.
enum class Decision { keep, mend, replace, turn, use_elsewhere, leave_out };

/// What somebody decided, and the place that a log goes to that is used elsewhere.
struct FoundDecision {
    Decision what = Decision::keep;
    std::string by, on, why;
    FoundPlace to;
    bool operator==(const FoundDecision &) const = default;
};

/// As found, face by face, in any words.
struct FaceFinish {
    std::string outside, inside, top, under;
    bool operator==(const FaceFinish &) const = default;
};

struct FoundLog {
    std::string tag; ///< any text, of this log alone, for ever
    FoundPlace place;
    std::vector<std::string> scarfed_to; ///< tags of the logs that it is one timber with
    std::string cut_from; ///< what the log was called, or would be, before it was cut up: as others of it say
    std::string replaces; ///< tag of the log in whose place it came
    std::string sheet;    ///< that its numbers stand on
    std::string by, on;   ///< who says so and when, where a number does not say itself

    std::string zero;   ///< the corner that running dimensions start from
    NotedLength length; ///< over all
    NotedLength between_shoulders;
    std::string butt; ///< the corner at which its butt end lies
    NotedLength bow;  ///< how far its middle stands out of the line between its ends
    std::optional<FoundFace> bow_to;
    NotedLength wind; ///< how far an edge at one end stands out of the plane of the other end

    std::string species;
    FaceFinish finish;
    std::vector<std::string> marks;       ///< old ones, as they are cut or drawn
    std::vector<std::string> photographs; ///< by file name

    std::string condition;                ///< what
    std::string cause;                    ///< why
    std::string urgency;                  ///< when
    std::vector<FoundDecision> decisions; ///< do: one after the other, the last one holds

    std::vector<FoundEnd> ends; ///< two at most
    std::vector<FoundStation> stations;
    std::vector<ConditionZone> zones;
    std::vector<WoodTest> tests;
    std::vector<MoistureReading> moistures;
    std::vector<FoundPeg> pegs;
    std::vector<LaterCut> later_cuts;
    std::string note;
    bool operator==(const FoundLog &) const = default;
};

/// Its whole length is recorded as missing: nothing but its place was found.
inline bool is_gone(const FoundLog &log) {
    for (const ConditionZone &zone : log.zones)
        if (zone.what == Soundness::missing && !zone.from.is_taken() && !zone.to.is_taken()) return true;
    return false;
}

} // namespace roundlay
