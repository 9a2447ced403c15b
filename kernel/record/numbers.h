// All numbers of a record, by name: what is done to each of them is done here once.
#pragma once

#include "kernel/record/record.h"

#include <functional>
#include <span>
#include <string>

namespace roundlay {

/// What a number can be at most, and whether it has a sign.
enum class NumberRange {
    along,     ///< from 0 to 100 m
    size,      ///< over 0 and up to 2 m: a height, a width, a diameter
    gap,       ///< from 0 to 2 m
    up_or_down ///< signed, up to 100 m
};

template <typename Owner> struct NamedNumber {
    const char *name;
    NotedLength Owner::*reading;
    NumberRange range;
};

/// Those of one part of a record, without the parts inside it.
template <typename Owner> std::span<const NamedNumber<Owner>> numbers_of();
template <> std::span<const NamedNumber<LevelPlane>> numbers_of();
template <> std::span<const NamedNumber<RecordedWall>> numbers_of();
template <> std::span<const NamedNumber<RecordedCorner>> numbers_of();
template <> std::span<const NamedNumber<Diagonal>> numbers_of();
template <> std::span<const NamedNumber<RecordedOpening>> numbers_of();
template <> std::span<const NamedNumber<FoundLog>> numbers_of();
template <> std::span<const NamedNumber<FoundEnd>> numbers_of();
template <> std::span<const NamedNumber<FoundStation>> numbers_of();
template <> std::span<const NamedNumber<ConditionZone>> numbers_of();
template <> std::span<const NamedNumber<WoodTest>> numbers_of();
template <> std::span<const NamedNumber<MoistureReading>> numbers_of();
template <> std::span<const NamedNumber<FoundPeg>> numbers_of();
template <> std::span<const NamedNumber<LaterCut>> numbers_of();

/// Has anything of it been measured, whether or not it can be read?
bool is_measured(const RecordedOpening &opening);

/// A number of the record: where it stands ("found[3].end[0].height"), and the sheet that it stands on.
struct NumberAt {
    std::string path;
    const std::string &sheet;
    NumberRange range;
};

/// "found[3]", counted from 0.
std::string log_path(std::size_t log);

/// All that were taken, in the order of the record.
void each_number(Record &record, const std::function<void(const NumberAt &, NotedLength &)> &visit);

/// Those of one log that lies at that path.
void each_number_of(const FoundLog &log, const std::string &path,
                    const std::function<void(const NumberAt &, const NotedLength &)> &visit);

/// How the numbers of that sheet are to be read. An unknown sheet is as the survey says.
Notation notation_of(const Record &record, const std::string &sheet);

} // namespace roundlay
