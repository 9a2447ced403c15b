#include "tests/words/said_texts.h"

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string_view>

namespace roundlay::test {

namespace {

namespace fs = std::filesystem;

std::string content_of(const fs::path &path) {
    std::ostringstream all;
    all << std::ifstream(path, std::ios::binary).rdbuf();
    return all.str();
}

/// Comments give examples that nobody says.
std::string without_comments(const std::string &source) {
    std::string code;
    std::istringstream lines(source);
    for (std::string line; std::getline(lines, line);) {
        const auto start = line.find_first_not_of(" \t");
        const bool comment =
            start != std::string::npos && std::string_view(line).substr(start).starts_with("//");
        code += (comment ? std::string() : line) + "\n";
    }
    return code;
}

/// The literals that stand there one after another, as the compiler joins them; `at` ends behind them.
std::string literal_at(const std::string &code, std::size_t &at) {
    std::string text;
    while (true) {
        at = code.find_first_not_of(" \t\n", at);
        if (at == std::string::npos || code[at] != '"') return text;
        for (++at; code[at] != '"'; ++at) {
            if (code[at] == '\\') ++at;
            text += code[at];
        }
        ++at;
    }
}

} // namespace

std::map<std::string, std::string> said_texts() {
    std::map<std::string, std::string> texts;
    for (const char *room : {"kernel", "exporters", "modeler"})
        for (const auto &entry : fs::recursive_directory_iterator(fs::path(ROUNDLAY_ROOT) / room)) {
            if (entry.path().extension() != ".cpp" && entry.path().extension() != ".h") continue;
            const std::string code = without_comments(content_of(entry.path()));
            for (const std::string_view call : {"said(", "say("})
                for (auto at = code.find(call); at != std::string::npos; at = code.find(call, at)) {
                    at += call.size();
                    if (const std::string text = literal_at(code, at); !text.empty())
                        texts.emplace(text, entry.path().filename().string());
                    if (at == std::string::npos) break;
                }
        }
    return texts;
}

} // namespace roundlay::test
