// The owner of cuts: visits that name every kind, and what is asked of any cut.
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/cuts/match.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/openings/openings.h"
#include "tests/support/catch.h"
#include "tests/support/floored.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <string>

using namespace roundlay;

namespace {

constexpr const Cut *any_cut = nullptr;

/// Handles a bore, told apart from nothing.
struct Bored {
    int operator()(const Bore &) const { return 1; }
};
struct BoredOrAny : Bored {
    using Bored::operator();
    template <typename Kind> int operator()(const Kind &) const { return 0; }
};
struct BoredOrCut : Bored {
    using Bored::operator();
    int operator()(const Cut &) const { return 0; }
};
using Others = Giving<int, FaceCut, SeamCut, BoxCut, PocketCut, CheekCut, RoundCut, ScopeCut, MendCut>;
using OthersButSeams = Giving<int, FaceCut, BoxCut, PocketCut, CheekCut, RoundCut, ScopeCut, MendCut>;

/// What there is in a shell, by what it is called.
struct Things {
    std::map<std::string, Index<WallPlace>, std::less<>> wall_of; ///< by the tag of a log
    std::map<std::string, const Piece *, std::less<>> pieces;     ///< by their tags
    std::set<std::string, std::less<>> timbers, openings, corners;
    Things(const Shell &shell, const Layout &layout) {
        for (const Piece &piece : layout.pieces) {
            pieces[piece.tag] = &piece;
            if (!piece.timber)
                wall_of[piece.tag] = piece.wall;
            else
                timbers.insert(piece.tag);
        }
        for (const CornerPlace &corner : layout.corners)
            corners.insert(corner.name);
        for (std::size_t i = 0; i < shell.openings.size(); ++i)
            openings.insert(name_of(shell, i));
    }
    const Piece &piece(std::string_view tag) const { return *pieces.find(tag)->second; }
};

bool is_cut_for(const Piece &piece, const std::string &tag) {
    return std::any_of(piece.cuts.begin(), piece.cuts.end(),
                       [&](const Cut &cut) { return neighbour_of(cut).name == tag; });
}

bool is_there(const Neighbour &met, const Piece &piece, const Things &things) {
    const auto log = things.wall_of.find(met.name);
    const bool in_wall = log != things.wall_of.end();
    switch (met.what) {
    case Met::nothing:
        return met.name.empty();
    case Met::crossing_log:
        return in_wall && log->second != piece.wall;
    case Met::log_below:
        return in_wall && log->second == piece.wall &&
               std::find(piece.below.begin(), piece.below.end(), met.name) != piece.below.end();
    case Met::timber:
        return things.timbers.contains(met.name);
    case Met::opening:
        return things.openings.contains(met.name);
    case Met::mend:
        return in_wall && log->second == piece.wall;
    case Met::step:
        break;
    }
    return met.name.starts_with("step ");
}

Shell any_drawn_shell() {
    switch (*rc::gen::inRange(0, 4)) {
    case 0:
        return test::any_saddle_shell();
    case 1:
        return test::any_stepped_shell();
    case 2:
        return test::any_stepped_saddle_shell();
    default:
        return test::any_fitted_shell();
    }
}

} // namespace

TEST_CASE("a visit that forgets a kind of cut, or catches any, is none") {
    CHECK((handles_each<Bored, Others>(any_cut)));
    CHECK_FALSE((handles_each<Bored, OthersButSeams>(any_cut)));
    CHECK_FALSE((handles_each<BoredOrAny>(any_cut)));
    CHECK_FALSE((handles_each<BoredOrAny, Others>(any_cut)));
    CHECK_FALSE((handles_each<BoredOrCut, Others>(any_cut)));
}

TEST_CASE("a visit calls the handler of the cut's kind, and an object that keeps something itself") {
    const Cut bore = Bore{}, seam = SeamCut{};
    CHECK(match(bore, Bored(), Others{0}) == 1);
    CHECK(match(seam, Bored(), Others{0}) == 0);
    struct Count {
        int bores = 0;
        void operator()(const Bore &) { ++bores; }
        void operator()(const FaceCut &) {}
        void operator()(const SeamCut &) {}
        void operator()(const BoxCut &) {}
        void operator()(const PocketCut &) {}
        void operator()(const CheekCut &) {}
        void operator()(const RoundCut &) {}
        void operator()(const ScopeCut &) {}
        void operator()(const MendCut &) {}
    } count;
    for (const Cut &cut : {bore, seam, bore})
        match(cut, count);
    CHECK(count.bores == 2);
}

TEST_CASE("what lies across a cut is a piece of the shell, an opening or a step, and its corner is one") {
    CHECK(rc::check([] {
        const Shell shell = any_drawn_shell();
        const Layout layout = lay_out(shell);
        const Things things(shell, layout);
        for (const Piece &piece : layout.pieces)
            for (const Cut &cut : piece.cuts) {
                const Neighbour met = neighbour_of(cut);
                RC_ASSERT(is_there(met, piece, things));
                RC_ASSERT(is_for_opening(cut, met.name) == (met.what == Met::opening));
                if (met.cut_too) RC_ASSERT(is_cut_for(things.piece(met.name), piece.tag));
                if (!corner_of(cut).empty()) RC_ASSERT(things.corners.contains(corner_of(cut)));
            }
    }));
}

TEST_CASE("the seam above a log at a corner is the one that the crossing log's underside lies on") {
    const Layout layout = test::laid(test::plain_shell());
    const CornerPlace &corner = layout.corners.front();
    int seams = 0;
    for (const Piece &piece : layout.pieces)
        for (const Cut &cut : piece.cuts)
            if (const SeamCut *seam = top_seam_at(cut, corner.name)) {
                ++seams;
                const Vec3 at = piece.frame.to_local({corner.centre.x, corner.centre.y, 0});
                CHECK(seam->seam.height_at(at.x, at.y) < piece.blank.height);
                CHECK(corner_of(cut) == corner.name);
            }
    CHECK(seams > 0);
}
