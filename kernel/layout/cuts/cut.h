// What is cut from a blank. All numbers are in the piece frame, in millimetres.
//
// A piece is its blank less its cuts. Every joint that layout knows ends up as cuts of these kinds, so
// that solids, sheets and lists never ask which joint they come from. What they ask of any cut is answered by
// asked.h; what else depends on the kind is a visit (match.h), which does not compile where a kind is
// forgotten.
#pragma once

#include "kernel/layout/cuts/bore.h"
#include "kernel/layout/cuts/boxes.h"
#include "kernel/layout/cuts/hewing.h"
#include "kernel/layout/cuts/mends.h"
#include "kernel/layout/cuts/notches.h"
#include "kernel/layout/cuts/timber_ends.h"

#include <variant>

namespace roundlay {

/// A new kind comes last: the codes on tags count them.
using Cut = std::variant<FaceCut, SeamCut, BoxCut, PocketCut, CheekCut, Bore, RoundCut, ScopeCut, MendCut>;

template <typename... Kinds> struct KindsOfCut {};
/// Each kind is one of these (match.h holds it to that). For who asks only what a log is before it is
/// notched.
using Hewing = KindsOfCut<FaceCut, RoundCut>;
using Joinery =
    KindsOfCut<SeamCut, ScopeCut, BoxCut, PocketCut, CheekCut, MendCut>; ///< what is cut into it then
using Boring = KindsOfCut<Bore>;                                         ///< and last of all

} // namespace roundlay
