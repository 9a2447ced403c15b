#include "kernel/measure/plain_numbers.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace roundlay {

namespace {

/// Behind the quote that ends it.
std::size_t end_of_quoted(std::string_view json, std::size_t at) {
    for (++at; at < json.size() && json[at] != '"'; ++at)
        if (json[at] == '\\') ++at;
    return std::min(at + 1, json.size());
}

std::size_t end_of_number(std::string_view json, std::size_t at) {
    const std::size_t end = json.find_first_not_of("+-.0123456789Ee", at);
    return end == std::string_view::npos ? json.size() : end;
}

/// A whole number has no digits that say nothing.
std::string shortest(std::string_view written) {
    if (written.find_first_of(".Ee") == std::string_view::npos) return std::string(written);
    double value = 0;
    const auto read = std::from_chars(written.data(), written.data() + written.size(), value);
    char digits[40]; // the longest of the shortest has 24 characters
    const auto end = std::to_chars(digits, digits + sizeof digits, value);
    const bool shorter = read.ec == std::errc() && end.ptr - digits < std::ssize(written);
    return shorter ? std::string(digits, end.ptr) : std::string(written);
}

bool begins_number(char letter) {
    return letter == '-' || (letter >= '0' && letter <= '9');
}

} // namespace

double to_places(double value, int places) {
    const double parts = std::pow(10.0, places);
    return std::round(value * parts) / parts + 0.0;
}

std::string with_short_numbers(std::string_view json) {
    std::string text;
    text.reserve(json.size());
    for (std::size_t at = 0; at < json.size();) {
        const bool quoted = json[at] == '"', number = begins_number(json[at]);
        const std::size_t end = quoted ? end_of_quoted(json, at) : number ? end_of_number(json, at) : at + 1;
        const std::string_view part = json.substr(at, end - at);
        text += number ? shortest(part) : std::string(part);
        at = end;
    }
    return text;
}

} // namespace roundlay
