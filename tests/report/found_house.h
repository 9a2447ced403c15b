// The demo of a house that stands, in one of its states, as the exporters have it.
#pragma once

#include "kernel/document/document.h"
#include "kernel/fabric/fabric.h"
#include "kernel/measured/measured_shell.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"

#include <filesystem>
#include <memory>
#include <string>

namespace roundlay::test {

struct FoundHouse {
    LaidShell laid;
    std::shared_ptr<const Record> record;
    std::filesystem::path folder;
    std::vector<NewWood> mends = {}; ///< of the house as it shall stand
};

inline FoundHouse old_house(const std::string &state = "as found") {
    const std::filesystem::path folder = std::string(ROUNDLAY_ROOT) + "/models-demo";
    const ReadResult read = read_document_file(folder / "old-house.roundlay", state);
    REQUIRE(read.shell);
    Shell shell = *read.shell;
    if (read.measured_on)
        shell = house_as_asked({*read.measured_on, read.levelled_on, read.record}, shell).shell;
    return {laid(shell), std::make_shared<const Record>(read.record), folder};
}

/// As it was found, with the mends that are agreed.
inline FoundHouse old_house_with_mends() {
    FoundHouse house = old_house();
    const FoundHouse to_stand = old_house("as it shall stand");
    house.mends = new_wood(*to_stand.record, to_stand.laid.shell, to_stand.laid.layout);
    return house;
}

} // namespace roundlay::test
