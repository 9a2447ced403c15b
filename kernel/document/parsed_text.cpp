#include "kernel/document/parsed_text.h"

#include "kernel/document/limits.h"
#include "kernel/document/toml_scan.h"
#include "kernel/measure/character.h"

#include <algorithm>

namespace roundlay {

namespace {

Problem problem_at(const std::string &file, const Place &place, std::string message, std::string expected) {
    return {Weight::error, file, place, std::move(message), std::move(expected)};
}

bool is_control(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < ' ' || byte == 0x7f;
}

bool is_no_text(char c) {
    return is_control(c) && c != '\t' && c != '\n' && c != '\r';
}

std::optional<Problem> find_no_text(std::string_view text, const std::string &file) {
    if (text.size() > limits::bytes)
        return problem_at(file, {}, "the file is larger than 4 MB (4,000,000 bytes)",
                          "a document written by hand");
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = character_length(text.substr(at));
        if (length == 0 || is_no_text(text[at]))
            return problem_at(file, Lines(text).place_at(at),
                              "this is not a text file: " + byte_in_words(text[at]) + " at offset " +
                                  std::to_string(at),
                              "text in UTF-8");
        at += length;
    }
    if (const auto found = find_too_much(text))
        return problem_at(file, Lines(text).place_at(found->at),
                          found->deep ? "a dotted name has more than 8 parts"
                                      : "the file has more than 20,000 brackets and dots",
                          "a document as FORMAT.md describes it");
    return std::nullopt;
}

bool is_closed_string(std::string_view line, std::size_t begin, std::size_t end) {
    return end > begin + 1 && line[end - 1] == line[begin];
}

/// Blanks around one word, or words in quotes.
bool is_key(std::string_view text) {
    constexpr std::string_view letters =
        "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789_-.\"'";
    const std::size_t begin = behind_blanks(text, 0);
    const std::size_t end = std::min(text.find_first_not_of(letters, begin), text.size());
    return end > begin && behind_blanks(text, end) == text.size();
}

/// What a person most likely wanted where the parser only sees a broken line.
std::string hint(std::string_view line) {
    const std::size_t equals = line.find('=');
    if (equals == std::string_view::npos || !is_key(line.substr(0, equals)))
        return "a [table] header, or key = value with a key of one word";
    const std::size_t begin = behind_blanks(line, equals + 1);
    if (begin >= line.size() || line[begin] == '#') return "a value behind the equals sign";
    const std::size_t end = value_end(line, begin);
    const char c = line[begin];
    if (c == '"' || c == '\'')
        return is_closed_string(line, begin, end) ? "nothing behind the closing quote; inch marks end the "
                                                    "text, so write \"7 ft 6 in\" or '7 ft 6\"'"
                                                  : "a closing quote on the same line";
    if ((c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.')
        return "lengths and slopes in quotes, such as \"8 1/2 in\" or \"1:8\"";
    if (c == '[' || c == '{') return "a list such as [\"A\", \"B\"]";
    return "text in quotes, such as \"door\"";
}

/// The parser's own words without its frame, on one line; it cuts and quotes the text byte by byte.
std::string bare_description(std::string_view words) {
    constexpr std::string_view frame = "Error while parsing ";
    if (words.starts_with(frame) && words.find(": ") != std::string_view::npos)
        words.remove_prefix(words.find(": ") + 2);
    words = words.substr(0, words.find(" (TOML_"));
    std::string bare;
    for (std::size_t length = 0; (length = character_length(words)) != 0; words.remove_prefix(length))
        bare += is_control(words.front()) ? " " : std::string(words.substr(0, length));
    return bare;
}

Problem syntax_problem(std::string_view text, const std::string &file, const toml::parse_error &error) {
    const Lines lines(text);
    const auto &at = error.source().begin;
    const std::size_t offset = lines.offset_of(at.line, at.column);
    const std::size_t start = lines.line_start(offset);
    std::string_view line = text.substr(start, lines.line_end(offset) - start);
    while (!line.empty() && (line.back() == '\n' || line.back() == '\r'))
        line.remove_suffix(1);
    const std::string description = bare_description(error.description());
    const bool twice = description.find("redefine") != std::string::npos;
    return problem_at(file, lines.place_at(offset), "the text is not TOML: " + description,
                      twice ? "each statement and [table] once, and [[two brackets]] where there are several"
                            : hint(line));
}

} // namespace

std::variant<ParsedText, Problem> parse_text(std::string_view text, const std::string &file) {
    if (auto problem = find_no_text(text, file)) return *std::move(problem);
    toml::parse_result result = toml::parse(text);
    if (!result) return syntax_problem(text, file, result.error());
    return std::variant<ParsedText, Problem>(std::in_place_type<ParsedText>, text, std::move(result).table());
}

} // namespace roundlay
