// The whole shell as one binary glTF 2.0 file: what phones, browsers and slide programs show.
#pragma once

#include "kernel/layout/layout.h"
#include "kernel/layout/wood/body.h"

#include <string>
#include <vector>

namespace roundlay {

struct GlbOptions {
    int sides = 24;     ///< of a bore
    bool edges = false; ///< true edges as dark lines beside the faces; a few programs cannot show lines
};

/// Metres, Y up, the shell's frame otherwise kept (glTF x = east, -z = north). One node per piece, named by
/// its tag, under one node per wall; pieces that are alike share their geometry; one material per wall, not
/// metallic. Each piece's node carries `extras` {round, raise}. The same layout gives the same bytes.
/// `bodies` are those of layout.models, in order. Throws std::invalid_argument when their number differs.
std::string write_glb(const Layout &layout, const Bodies &bodies, const GlbOptions &options = {});

} // namespace roundlay
