// Do pieces run into one another, and can each be set down where it belongs? In doubles, on hewn wood.
#pragma once

#include "kernel/layout/wood/body.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace roundlay {

/// Two pieces that share wood.
struct Overlap {
    Index<Piece> a, b; ///< a < b
    double volume = 0; ///< mm3
};

/// A piece that cannot come straight down past one raised before it.
struct Blocked {
    Index<Piece> piece, by;
    double volume = 0; ///< of the earlier piece's wood that stands in the way, mm3
};

/// Wood of `upper` lies straight over wood of `lower`: whichever comes down second must be `upper`.
struct LiesOver {
    Index<Piece> upper, lower;
    bool touches = false; ///< it rests on it: a millimetre lower it would share wood with it
};

/// What was found between pieces in their places, for the next time: where an edit leaves two as they were,
/// they are not held against one another again.
class KnownMeetings {
  public:
    KnownMeetings();
    ~KnownMeetings();
    KnownMeetings(const KnownMeetings &) = delete;
    KnownMeetings &operator=(const KnownMeetings &) = delete;

    Indexed<std::uint64_t, Model> wood; ///< before each use: the same number for the same body, for good

    struct Memory;
    Memory &memory() { return *memory_; }

  private:
    std::unique_ptr<Memory> memory_;
};

std::vector<Overlap> overlaps(const Layout &layout, const Bodies &bodies, KnownMeetings *known = nullptr);
std::vector<Blocked> blocked_on_the_way_down(const Layout &layout, const Bodies &bodies,
                                             KnownMeetings *known = nullptr);

/// All such pairs, whatever the order of the raise; none of a log and the new wood in it, which rise as one.
std::vector<LiesOver> lying_over(const Layout &layout, const Bodies &bodies, KnownMeetings *known = nullptr);

/// One body for each of Layout::models.
Bodies bodies_of(const Layout &layout);

} // namespace roundlay
