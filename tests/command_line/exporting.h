// A small house in a folder, and exports of it into the folder "out" beside it.
#pragma once

#include "tests/command_line/program.h"
#include "tests/support/temporary_folder.h"

namespace roundlay::test {

struct ExportingHome {
    TemporaryFolder folder;
    ExportingHome() { put(folder / "hut.roundlay", small_document()); }
    Ran export_with(const Words &more) const {
        Words words = {"export", "hut.roundlay", "--to", "out"};
        words.insert(words.end(), more.begin(), more.end());
        RunOptions options;
        options.folder = folder.path().string();
        return run(words, options);
    }
};

} // namespace roundlay::test
