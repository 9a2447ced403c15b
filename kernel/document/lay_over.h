// The changes of a state, laid over the statements that they change.
#pragma once

#include "kernel/document/problem.h"
#include "kernel/document/toml.h"

#include <functional>
#include <string>

namespace roundlay {

/// Who is told of changes that cannot be made.
struct LayingOver {
    std::string state, base; ///< the names of both
    std::function<void(const toml::node &at, std::string message, std::string expected)> tell;
};

/// What may stand in a table or an entry of a state beside its keys.
namespace change {
inline constexpr const char *gone = "gone";         ///< the entry, or the table, is not there any more
inline constexpr const char *left_out = "left_out"; ///< keys that are not stated any more
inline constexpr const char *added = "new";         ///< an entry that its base does not have
inline constexpr const char *before = "before";     ///< where it comes to stand, by the name of another
} // namespace change

/// Puts all that the state says into the document that it changes; what it takes the place of goes.
/// Statements keep their places in the text, those that go with an entry or a table that was changed as well.
/// `state` is what stands in a [[state]] without its own keys; nothing is left in it. Where something is
/// told, the document says nothing of use any more.
void lay_over(toml::table &document, toml::table &state, const LayingOver &laying);

} // namespace roundlay
