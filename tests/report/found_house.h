// The demo of a house that stands, in one of its states, as the exporters have it.
#pragma once

#include "kernel/document/document.h"
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
};

inline FoundHouse old_house(const std::string &state = "as found") {
    const std::filesystem::path folder = std::string(ROUNDLAY_ROOT) + "/models-demo";
    const ReadResult read = read_document_file(folder / "old-house.roundlay", state);
    REQUIRE(read.shell);
    Shell shell = *read.shell;
    if (read.measured_on)
        shell = measured_shell(shell, left_as_found(read.record, *read.measured_on, shell)).shell;
    return {laid(shell), std::make_shared<const Record>(read.record), folder};
}

} // namespace roundlay::test
