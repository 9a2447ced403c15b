// Mends in wood: where a part of a log is taken out and new wood comes in its place.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/shell/kinds.h"

#include <optional>
#include <string>

namespace roundlay {

/// The log is named by its wall, round and piece, or by what is written on it. Lengths run from one end of
/// the log as it lies without mends, tail and all. No least length of a splice or patch is published: each
/// length is the choice of whoever states it.
struct Mend {
    std::string name; ///< as the person calls it; may be empty
    std::string mark; ///< written on the log; empty: named by its place
    std::string wall;
    std::optional<int> round, piece; ///< piece: counted from the left; not stated: the round has but one
    MendKind kind = MendKind::let_in;
    LogSide face = LogSide::outside; ///< that it opens to; of a splice the half that the new end's lap lies
                                     ///< in: top or under make its plane level, outside or inside upright
    LogEnd end = LogEnd::left;       ///< where lengths start; of a splice the end that is new
    std::optional<Length> from, to;  ///< of a splice `to` alone: where the old log begins
    std::optional<Length> lap;       ///< of a splice: both halves lie side by side so far past `to`
    std::optional<Length> depth; ///< from the face as hewn, and even along it; of a splice not stated: half
    /// Of a piece let in, across the face: of a side face over the log's under face, of the others from its
    /// outside face, both where it begins. Not stated: to the edges.
    std::optional<Length> low, high;
    std::string species;          ///< of the new wood; empty: as the log's
    std::optional<Finish> finish; ///< not stated: as the log's
    std::string by;               ///< who chose the lengths
    std::string note;
    bool operator==(const Mend &) const = default;
};

/// "let in", "face", "splice": in documents.
const char *name_of(MendKind kind);

} // namespace roundlay
