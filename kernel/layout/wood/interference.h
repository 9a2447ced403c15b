// Do pieces run into one another, and can each be set down where it belongs? In doubles, on hewn wood.
#pragma once

#include "kernel/layout/wood/body.h"

#include <cstdint>
#include <memory>
#include <vector>

namespace roundlay {

/// Two pieces that share wood.
struct Overlap {
    int a = 0, b = 0;  ///< indices into Layout::pieces, a < b
    double volume = 0; ///< mm3
};

/// A piece that cannot come straight down past one raised before it.
struct Blocked {
    int piece = 0, by = 0;
    double volume = 0; ///< of the earlier piece's wood that stands in the way, mm3
};

/// What was found between pieces in their places, for the next time: where an edit leaves two as they were,
/// they are not held against one another again.
class KnownMeetings {
  public:
    KnownMeetings();
    ~KnownMeetings();
    KnownMeetings(const KnownMeetings &) = delete;
    KnownMeetings &operator=(const KnownMeetings &) = delete;

    std::vector<std::uint64_t>
        wood; ///< by Layout::models, before each use: the same number for the same body, for good

    struct Memory;
    Memory &memory() { return *memory_; }

  private:
    std::unique_ptr<Memory> memory_;
};

/// bodies: by Layout::models index.
std::vector<Overlap> overlaps(const Layout &layout, const std::vector<Body> &bodies,
                              KnownMeetings *known = nullptr);
std::vector<Blocked> blocked_on_the_way_down(const Layout &layout, const std::vector<Body> &bodies,
                                             KnownMeetings *known = nullptr);

/// One body for each of Layout::models.
std::vector<Body> bodies_of(const Layout &layout);

} // namespace roundlay
