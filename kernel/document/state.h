// A state of a house: as found, as first built, as it shall stand.
#pragma once

#include <string>

namespace roundlay {

/// As a document declares it: its name, and which state it changes.
struct HouseState {
    std::string name;
    std::string on;        ///< empty: the document's own shell, or it is that
    bool readable = true;  ///< else a problem that it brings is an error
    bool measured = false; ///< what the record says of its logs and walls goes over what is stated
    bool levelled = false; ///< its foundation is new and level, and what had sunk is lifted
    bool operator==(const HouseState &) const = default;
};

} // namespace roundlay
