// Runs a program of the build and hands back what it printed.
#pragma once

#include <cstdio>
#include <stdexcept>
#include <string>

namespace roundlay::test {

inline std::string output_of(const std::string &command) {
    std::FILE *pipe = ::popen(command.c_str(), "r");
    if (!pipe) throw std::runtime_error("cannot run " + command);
    std::string text;
    char part[4096];
    for (std::size_t n = 0; (n = std::fread(part, 1, sizeof part, pipe)) > 0;)
        text.append(part, n);
    if (const int code = ::pclose(pipe); code != 0)
        throw std::runtime_error(command + " ended with " + std::to_string(code) + ": " + text);
    return text;
}

} // namespace roundlay::test
