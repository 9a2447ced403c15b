// All numbers of a record, by name: what is done to each of them is done here once.
#pragma once

#include "kernel/record/record.h"

#include <functional>
#include <span>
#include <string>

namespace roundlay {

/// What a number can be at most, and whether it has a sign.
enum class Range {
    along,     ///< from 0 to 100 m
    size,      ///< over 0 and up to 2 m: a height, a width, a diameter
    gap,       ///< from 0 to 2 m
    up_or_down ///< signed, up to 100 m
};

template <typename Owner> struct NamedReading {
    const char *name;
    Reading Owner::*reading;
    Range range;
};

/// Those of one part of a record, without the parts inside it.
template <typename Owner> std::span<const NamedReading<Owner>> readings_of();
template <> std::span<const NamedReading<LevelPlane>> readings_of();
template <> std::span<const NamedReading<RecordedWall>> readings_of();
template <> std::span<const NamedReading<RecordedCorner>> readings_of();
template <> std::span<const NamedReading<Diagonal>> readings_of();
template <> std::span<const NamedReading<FoundLog>> readings_of();
template <> std::span<const NamedReading<FoundEnd>> readings_of();
template <> std::span<const NamedReading<Station>> readings_of();
template <> std::span<const NamedReading<ConditionZone>> readings_of();
template <> std::span<const NamedReading<WoodTest>> readings_of();
template <> std::span<const NamedReading<MoistureReading>> readings_of();
template <> std::span<const NamedReading<FoundPeg>> readings_of();
template <> std::span<const NamedReading<LaterCut>> readings_of();

/// A number of the record: where it stands ("found[3].end[0].height"), and the sheet that it stands on.
struct NumberAt {
    std::string path;
    const std::string &sheet;
    Range range;
};

/// "found[3]", counted from 0.
std::string log_path(std::size_t log);

/// All that were taken, in the order of the record.
void each_number(Record &record, const std::function<void(const NumberAt &, Reading &)> &visit);

/// Those of one log that lies at that path.
void each_number_of(const FoundLog &log, const std::string &path,
                    const std::function<void(const NumberAt &, const Reading &)> &visit);

/// How the numbers of that sheet are to be read. An unknown sheet is as the survey says.
Notation notation_of(const Record &record, const std::string &sheet);

} // namespace roundlay
