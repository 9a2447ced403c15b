#include "exporters/sheets/bench/lettered.h"

#include <algorithm>
#include <regex>

namespace roundlay::sheets {
namespace {

constexpr std::string_view alphabet = "ABCDEFGHJKLMNPQRSTUVWXYZ"; ///< I and O are read as figures

/// Behind a number: an end, or what parts words. "1:8" is a slope.
bool ends_here(std::string_view words, std::size_t at) {
    if (at == words.size()) return true;
    const bool slope = words[at] == ':' && at + 1 < words.size() && words[at + 1] != ' ';
    return !slope && std::string_view(" ,;:.)").find(words[at]) != std::string_view::npos;
}

bool begins_here(std::string_view words, std::size_t at) {
    return at == 0 || words[at - 1] == ' ' || words[at - 1] == '(';
}

const std::regex &form_of(bool inches) {
    static const std::regex metric("T[0-9]+|[+-]?[0-9]+"),
        imperial("T[0-9]+|[+-]?(?:[0-9]+' )?[0-9]+(?: [0-9]+/[0-9]+|/[0-9]+)?\"");
    return inches ? imperial : metric;
}

} // namespace

Numbered taken_apart(std::string_view words, bool inches) {
    Numbered all{{""}, {}};
    std::size_t at = 0;
    while (at < words.size()) {
        std::cmatch m;
        const char *first = words.data() + at, *last = words.data() + words.size();
        if (begins_here(words, at) &&
            std::regex_search(first, last, m, form_of(inches), std::regex_constants::match_continuous) &&
            ends_here(words, at + static_cast<std::size_t>(m.length()))) {
            all.numbers.push_back(m.str());
            all.between.emplace_back();
            at += static_cast<std::size_t>(m.length());
        } else
            all.between.back() += words[at++];
    }
    return all;
}

std::string letter_called(std::size_t number) {
    std::string name(1, alphabet[number % alphabet.size()]);
    for (number /= alphabet.size(); number > 0; number = (number - 1) / alphabet.size())
        name.insert(name.begin(), alphabet[(number - 1) % alphabet.size()]);
    return name;
}

Letters lettered(const std::vector<std::vector<std::string>> &numbers) {
    Letters all;
    const std::size_t places = numbers.empty() ? 0 : numbers.front().size();
    for (std::size_t p = 0; p < places; ++p) {
        std::vector<std::string> column;
        for (const auto &piece : numbers)
            column.push_back(piece.at(p));
        if (std::ranges::all_of(column, [&](const std::string &n) { return n == column.front(); })) {
            all.in_place.push_back(column.front());
            continue;
        }
        const auto same = std::ranges::find(all.columns, column);
        if (same == all.columns.end()) {
            all.letters.push_back(letter_called(all.letters.size()));
            all.columns.push_back(std::move(column));
            all.in_place.push_back(all.letters.back());
        } else
            all.in_place.push_back(all.letters[static_cast<std::size_t>(same - all.columns.begin())]);
    }
    return all;
}

} // namespace roundlay::sheets
