// Changes of the joints by which a machine makes what it does not make now: tried before they are told.
#pragma once

#include "exporters/machines/making.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/shell.h"

#include <map>
#include <string>
#include <vector>

namespace roundlay::machines {

/// What each piece of a shell weighs at most as a stick, and what the machine makes of it.
struct ModelMaking {
    machining::OperationList list;
    PieceMaking making;
    bool weighed = true; ///< its wood is known
};

/// Of each of layout.models, in order.
std::vector<ModelMaking> makings_of(const Machine &machine, const Shell &shell, const Layout &layout);

/// For tags of pieces that are not made: the first change with which the shell stands and the machine makes
/// the piece of that tag. Those that nothing of what is known helps are left out.
std::map<std::string, Said> changes_that_help(const Machine &machine, const Shell &shell,
                                              const std::vector<ModelMaking> &now);

} // namespace roundlay::machines
