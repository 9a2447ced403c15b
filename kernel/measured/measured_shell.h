// The shell as it was measured: what the record of a house says, put over the plan that is stated.
//
// Logs stay straight from end to end and the tops of tails flat, as everywhere: the straight line or the
// plane that is nearest to what was measured is taken, and what it leaves is told. Numbers that are
// contradicted are left out; where nobody has measured, the rules of the stated shell fill in, and each of
// these is listed.
#pragma once

#include "kernel/record/record.h"
#include "kernel/shell/finding.h"
#include "kernel/shell/shell.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct Settled;

/// Differences up to this are not told, mm: as much as a tape and a hewn face are off. Our choice, no source.
inline constexpr double told_from = 6;

/// How far the tape over a log and the length that the model gives it may lie apart before anybody is told,
/// mm: that length comes of a wall, an overhang and an opening, each taped by itself. Our choice, no source.
inline constexpr double tape_tolerance = 3 * told_from;

/// What a rule fills in.
enum class ProposedNumber { height, width, gap_below, tail };

struct Proposed {
    std::string wall;
    int round = 1;
    LogEnd end = LogEnd::left;
    ProposedNumber what = ProposedNumber::height;
    bool operator==(const Proposed &) const = default;
};

struct MeasuredShell {
    Shell shell;
    std::size_t taken = 0;          ///< numbers of the record that are in it
    std::vector<Proposed> proposed; ///< of logs of the walls, by wall and round
    Findings findings; ///< an error where the stated shell has none of its walls: `shell` is as stated
};

/// Of every log of a wall that a found log says to be: heights and widths at its shoulders, the gap under it
/// (by levels where they were read, else by gaps measured on either side of the seam), its tails, overhangs,
/// butt, bow and finish. Numbers must have been read (`read_numbers`). `level`: what it is put level by.
MeasuredShell measured_shell(const Shell &stated, const Record &record, const Settled *level = nullptr);

/// What a state that is measured, or stands on one that is, goes over; read of a document. Refers to all of
/// it.
struct Grounds {
    const Shell &measured_on;                ///< that the record goes over
    const std::optional<Shell> &levelled_on; ///< under the state that is put level; nothing: none is
    const Record &record;
};

/// The house of that state: `now` is its shell as it is stated.
MeasuredShell house_as_asked(const Grounds &on, const Shell &now);

/// The house as it was found, which that state is held against: put level as well where that state is, for
/// this changes no wood.
MeasuredShell house_as_found(const Grounds &on);

/// The record without the numbers and words that `now` states otherwise than `below`, the shell that was
/// measured: what was decided later goes before what was found, number by number. A log whose butt is stated
/// at its other end is turned end for end: its ends' heights and widths change places. Where openings came,
/// went or moved, logs are counted anew, and one that would have to be longer loses its tag. All logs stay,
/// in their order.
Record left_as_found(const Record &record, const Shell &below, const Shell &now);

/// Gives findings of a measured shell, by layout or review, the entry of the found log that they come from
/// ("found[3]") where nobody stated a log. `stated`: the shell under the record.
void point_at_record(Findings &findings, const Record &record, const Shell &stated);

} // namespace roundlay
