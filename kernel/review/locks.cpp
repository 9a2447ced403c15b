#include "kernel/review/locks.h"

#include "kernel/geometry/tolerance.h"
#include "kernel/layout/corners/notch.h"
#include "kernel/layout/corners/own_notches.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/plan/reach.h"
#include "kernel/layout/text.h"

#include <algorithm>
#include <optional>

namespace roundlay {

namespace {

class CornerLocks {
  public:
    CornerLocks(const Shell &shell, const Layout &layout, Index<CornerPlace> index, Findings &findings)
        : shell_(shell), layout_(layout), index_(index), corner_(layout.corners[index]), findings_(findings) {
    }

    void check() {
        if (corner_.kind == CornerKind::crossing) return; // both logs run on
        const NotchRule rule = notch_at(shell_, layout_, index_);
        if (rule.kind == NotchKind::saddle) return; // every log hooks over the one that it crosses
        const TailTop top = tail_top(rule);
        if (lock(top, top) <= tolerance::weld) return say_loose(corner_place(corner_.name), "notch.kind");
        for (const std::size_t i : own_notches_at(shell_, layout_, index_))
            check_log(i);
    }

  private:
    /// Its own tail over that of the log below it, and that of the log above it over its own.
    void check_log(std::size_t i) {
        const OwnLog &own = shell_.own_logs[i];
        const Index<WallPlace> w = *wall_named(layout_, own.wall); // it reaches the corner
        const TailTop top = tail_top(notch_at(shell_, layout_, index_, w, own.round));
        for (const Piece &p : layout_.pieces) {
            if (!is_log_of(p, w) || p.round != own.round) continue;
            for (const Cut &cut : p.cuts) {
                const SeamCut *seam = seam_here(cut);
                const Piece *other = seam ? piece_of(seam->other) : nullptr;
                if (!other) continue;
                const TailTop there = tail_top(notch_at(shell_, layout_, index_, other->wall, other->round));
                const bool under = seam->side == Side::under;
                if (!ends_here(under ? w : other->wall) ||
                    (under ? lock(top, there) : lock(there, top)) > tolerance::weld)
                    continue;
                return say_loose(corner_place(corner_.name, own.wall, own.round), subject("log", i, "kind"));
            }
        }
    }

    /// The seam of a joint that may lock at this corner.
    const SeamCut *seam_here(const Cut &cut) const {
        return match(
            cut, [&](const SeamCut &seam) { return seam.corner == corner_.name ? &seam : nullptr; },
            giving<ScopeCut>(nullptr), // hooks over the log that it crosses, whatever its slopes
            giving<FaceCut, RoundCut, BoxCut, PocketCut, CheekCut, MendCut, Bore>(nullptr)); // at no corner
    }

    bool ends_here(Index<WallPlace> wall) const {
        return corner_.kind == CornerKind::corner || corner_.runs_on != wall;
    }

    const Piece *piece_of(const std::string &tag) const {
        const auto at = std::find_if(layout_.pieces.begin(), layout_.pieces.end(),
                                     [&](const Piece &p) { return p.tag == tag; });
        return at == layout_.pieces.end() ? nullptr : &*at;
    }

    void say_loose(About place, const std::string &from) {
        if (shell_.pegs.wanted)
            findings_.push_back({Weight::note, "corner-not-locked", std::move(place),
                                 said("its tails do not lock"),
                                 said("only the pegs hold the logs from pulling out"), from});
        else
            findings_.push_back({Weight::warning,
                                 "corner-not-locked",
                                 std::move(place),
                                 said("its tails do not lock and there are no pegs: the logs can pull out"),
                                 {},
                                 from});
    }

    const Shell &shell_;
    const Layout &layout_;
    Index<CornerPlace> index_;
    const CornerPlace &corner_;
    Findings &findings_;
};

} // namespace

void check_locks(const Shell &shell, const Layout &layout, Findings &findings) {
    for (const auto c : layout.corners.indices())
        CornerLocks(shell, layout, c, findings).check();
}

} // namespace roundlay
