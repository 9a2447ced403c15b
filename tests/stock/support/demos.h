// The shells that come with the program.
#pragma once

#include "kernel/document/document.h"

#include <fstream>
#include <sstream>
#include <string>

namespace roundlay::test {

inline Shell demo(const std::string &name) {
    std::ostringstream text;
    text << std::ifstream(ROUNDLAY_DEMOS "/" + name + ".roundlay").rdbuf();
    return *read_document(text.str(), name).shell;
}

} // namespace roundlay::test
