// What every part of the program asks of a cut, whatever its kind. Each question is answered for each kind,
// once.
#pragma once

#include "kernel/layout/cuts/cut.h"

#include <optional>
#include <string_view>

namespace roundlay {

enum class Met {
    nothing,
    crossing_log, ///< of another wall
    log_below,    ///< in its own wall
    timber,       ///< of a floor
    opening,
    step, ///< of the foundation
    mend  ///< new wood in the place of a part of it, or the old wood that this comes into
};

/// What lies on the other side of a cut, or what it is made for. Points into the cut, which must outlive it.
struct Neighbour {
    Met what = Met::nothing;
    std::string_view name; ///< a log's or a timber's tag, else what it is called
    bool cut_too = false;  ///< it has its own cut at this place, made for this piece
};
Neighbour neighbour_of(const Cut &cut);

/// Is it made for the opening of that name?
bool is_for_opening(const Cut &cut, std::string_view name);

/// The end of the log that it is cut at, or of one that runs on the half; none where it is at no end.
std::optional<End> end_of(const Cut &cut);

/// The corner that it is cut at, e.g. "AB"; empty where it is for none. Points into the cut.
std::string_view corner_of(const Cut &cut);

/// The seam above a log at that corner, which the log that crosses over it lies on; else none.
const SeamCut *top_seam_at(const Cut &cut, std::string_view corner);

/// The square cut for the head of an opening; else none.
const BoxCut *header_cut(const Cut &cut);

/// Whether it takes the next number of the piece, in cutting order: on its sheet, and where sheets and lists
/// tell what it meets. Pockets (K) and bores (by use) are counted by themselves, from the datum end; hewn
/// faces, sticks and cheeks are marked by letters.
bool is_numbered(const Cut &cut);

/// Is it where other wood comes in the place of a part of the log, or its half of a lap?
bool is_mend(const Cut &cut);

/// The plane of that face, where the cut hews it; else none.
const Plane *hewn_plane(const Cut &cut, LogFace face);

/// The hole that it bores; else none.
const Bore *bore_of(const Cut &cut);

/// Does it hold that one, which whoever sorts cuts by their kind points at?
bool holds(const Cut &cut, const void *of_its_kind);

} // namespace roundlay
