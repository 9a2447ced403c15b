// The states that a document declares, before anything in them is read.
#pragma once

#include "kernel/document/reading.h"
#include "kernel/document/state.h"

#include <optional>
#include <string>
#include <vector>

namespace roundlay {

struct DeclaredStates {
    std::vector<HouseState> all; ///< in the order of the text, without the document's own shell
    std::string own;             ///< what that is called among them

    /// Each stands on the one before it, the first on the document's own shell; indices into `all`.
    std::vector<std::size_t> up_to(std::size_t state) const;
    std::optional<std::size_t> index_of(const std::string &name) const;
    std::string base_of(std::size_t state) const { return all[state].on.empty() ? own : all[state].on; }
    std::vector<std::string> names() const; ///< the own one first
};

/// Told are states without a name, of one name, on a state that there is not, or on one another; each once.
/// Nothing where there is such a problem.
std::optional<DeclaredStates> read_states(Reading &reading);

} // namespace roundlay
