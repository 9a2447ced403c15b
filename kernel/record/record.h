// The record of a house that stands: what is said of the survey as a whole, and every log that was found.
//
// A plain value that stands beside the shell: a house can be recorded before anybody knows how to model it.
#pragma once

#include "kernel/record/done.h"
#include "kernel/record/field_note.h"
#include "kernel/record/found_log.h"
#include "kernel/record/running.h"

#include <string>
#include <vector>

namespace roundlay {

/// A sheet of field notes. What it leaves out is as the survey says.
struct FieldSheet {
    std::string name;
    Notation notation;
    std::string by, on;
    bool operator==(const FieldSheet &) const = default;
};

enum class ReadFrom { outside, inside };

struct RecordedWall {
    std::string wall;
    ReadFrom read_from =
        ReadFrom::outside; ///< the side that somebody stands on who calls its ends left and right
    NotedLength length;
    std::string sheet, note;
    bool operator==(const RecordedWall &) const = default;
};

/// A corner of the house, by the name that ends of logs are told by.
struct RecordedCorner {
    std::string name;
    std::vector<std::string> walls; ///< that meet in it
    NotedLength level;              ///< up or down from the plane
    std::string plane;
    NotedLength lean_first, lean_second; ///< of its arris on the faces of the two walls, outward
    NotedLength lean_over;               ///< the height that they are measured over
    std::string sheet, note;
    bool operator==(const RecordedCorner &) const = default;
};

/// From corner to corner through the house: what tells how far it is off square.
struct Diagonal {
    std::string from, to;
    ReadFrom side = ReadFrom::outside; ///< whose corners it runs between
    NotedLength length;
    std::string sheet;
    bool operator==(const Diagonal &) const = default;
};

/// A door, a window or another opening of the plan, where it was found: measured on the outside face. Its
/// jambs are told by which of them stands nearer to the corner that is measured from.
struct RecordedOpening {
    std::string name;                       ///< as the plan calls it
    std::string wall;                       ///< that it is in; empty: the one that the plan has it in
    std::string zero;                       ///< the corner that running dimensions start from
    NotedLength near_at_sill, near_at_head; ///< running, to the jamb nearer to that corner ...
    NotedLength far_at_sill, far_at_head;   ///< ... and to the one further from it
    NotedLength width, height;              ///< clear, jamb to jamb and sill to head
    NotedLength sill, head; ///< levels of its underside and its top, up or down from the plane
    std::string plane;      ///< that the levels are read from
    std::string sheet, note;
    bool operator==(const RecordedOpening &) const = default;
};

struct Record {
    std::string by, on;    ///< who measured, and when
    std::string exactness; ///< how exact, and how measured
    std::string not_seen;  ///< what could not be looked at
    std::string new_work;  ///< how new wood is marked, so that it is told from the old
    Notation notation;     ///< of all sheets that do not say otherwise
    std::vector<FieldSheet> sheets;
    std::vector<LevelPlane> planes;
    std::vector<RecordedWall> walls;
    std::vector<RecordedCorner> corners;
    std::vector<Diagonal> diagonals;
    std::vector<RecordedOpening> openings;
    std::vector<FoundLog> logs;
    std::vector<Done> done; ///< one after the other
    bool operator==(const Record &) const = default;
};

} // namespace roundlay
