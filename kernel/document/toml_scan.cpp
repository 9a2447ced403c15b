#include "kernel/document/toml_scan.h"

#include "kernel/document/limits.h"

#include <algorithm>

namespace roundlay {

namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t';
}

bool is_bare(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
}

std::size_t line_break(std::string_view text, std::size_t begin) {
    return std::min(text.find('\n', begin), text.size());
}

std::size_t long_string_end(std::string_view text, std::size_t begin, char quote) {
    constexpr std::size_t mark = 3;
    std::size_t at = begin + mark;
    for (; at < text.size(); ++at) {
        if (text[at] == '\\' && quote == '"')
            ++at;
        else if (text.substr(at, mark) == text.substr(begin, mark))
            break;
    }
    if (at >= text.size()) return text.size();
    at += mark;
    // Up to two quotes may stand in front of the closing mark: they belong to the string.
    for (int extra = 0; extra < 2 && at < text.size() && text[at] == quote; ++extra)
        ++at;
    return at;
}

std::size_t bracket_end(std::string_view text, std::size_t begin) {
    std::size_t open = 0;
    for (std::size_t at = begin; at < text.size();) {
        const char c = text[at];
        if (c == '"' || c == '\'') {
            at = string_end(text, at);
            continue;
        }
        if (c == '#') {
            at = line_break(text, at);
            continue;
        }
        if (c == '[' || c == '{') ++open;
        if (c == ']' || c == '}') --open;
        ++at;
        if (open == 0) return at;
    }
    return text.size();
}

} // namespace

std::size_t string_end(std::string_view text, std::size_t begin) {
    const char quote = text[begin];
    if (text.substr(begin, 3) == std::string_view(quote == '"' ? "\"\"\"" : "'''"))
        return long_string_end(text, begin, quote);
    for (std::size_t at = begin + 1; at < text.size() && text[at] != '\n'; ++at) {
        if (text[at] == quote) return at + 1;
        if (text[at] == '\\' && quote == '"' && at + 1 < text.size() && text[at + 1] != '\n') ++at;
    }
    return line_break(text, begin);
}

std::size_t value_end(std::string_view text, std::size_t begin) {
    if (begin >= text.size()) return text.size();
    const char c = text[begin];
    if (c == '"' || c == '\'') return string_end(text, begin);
    if (c == '[' || c == '{') return bracket_end(text, begin);
    std::size_t end = std::min(text.find_first_of(",]}#\r\n", begin), text.size());
    while (end > begin && is_blank(text[end - 1]))
        --end;
    return end;
}

std::size_t behind_blanks(std::string_view text, std::size_t begin) {
    while (begin < text.size() && is_blank(text[begin]))
        ++begin;
    return begin;
}

std::size_t behind_blanks_and_comments(std::string_view text, std::size_t begin) {
    while (begin < text.size()) {
        if (text[begin] == '#')
            begin = line_break(text, begin);
        else if (is_blank(text[begin]) || text[begin] == '\r' || text[begin] == '\n')
            ++begin;
        else
            break;
    }
    return begin;
}

std::optional<TooMuch> find_too_much(std::string_view text) {
    std::size_t total = 0, parts = 0;
    bool joined = false; // a dot stands between the last part and what comes
    for (std::size_t at = 0; at < text.size();) {
        const char c = text[at];
        const std::size_t begin = at;
        if (is_blank(c)) {
            ++at;
        } else if (c == '.') {
            joined = parts > 0;
            ++total;
            ++at;
        } else if (is_bare(c) || c == '"' || c == '\'') {
            at = is_bare(c) ? at + 1 : string_end(text, at);
            while (is_bare(c) && at < text.size() && is_bare(text[at]))
                ++at;
            parts = joined ? parts + 1 : 1;
            joined = false;
        } else {
            at = c == '#' ? line_break(text, at) : at + 1;
            if (c == '[' || c == '{') ++total;
            parts = 0;
            joined = false;
        }
        if (parts > limits::dotted_parts) return TooMuch{begin, true};
        if (total > limits::brackets) return TooMuch{begin, false};
    }
    return std::nullopt;
}

} // namespace roundlay
