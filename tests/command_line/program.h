// Runs the built program as a person or a script would.
#pragma once

#include "exporters/files/descriptor.h"

#include <map>
#include <string>
#include <vector>

namespace roundlay::test {

struct Ran {
    int code = -1; ///< exit code; 128 + signal where one ended it, as shells have it
    std::string out, err;
};

struct RunOptions {
    std::string input = {};                              ///< to its standard input
    std::map<std::string, std::string> environment = {}; ///< on top of ours
    std::string folder = {};                             ///< to run in
    bool bound_by_rights = false;                        ///< root may not write where the owner may not
    bool out_is_terminal = false, err_is_terminal = false;
    bool close_out_at_once = false;        ///< a reader that goes away
    std::string out_file = {};             ///< e.g. /dev/full
    std::string interrupt_when_there = {}; ///< SIGINT once an entry of that beginning is in this folder
};

using Words = std::vector<std::string>;

Ran run(const Words &words, const RunOptions &options = {});

/// A document of a small shell: 4 walls, 4 rounds, a window.
std::string small_document();
/// One that reads but cannot be built: its window is wider than its wall.
std::string wrong_document();

} // namespace roundlay::test
