#include "kernel/csv/csv_measure.h"

#include "kernel/measure/measure.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace roundlay {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

struct Word {
    std::string text; ///< lower case
    std::size_t end = 0;
};

std::vector<Word> words_of(std::string_view text) {
    std::vector<Word> words(1);
    for (std::size_t i = 0; i < text.size(); ++i) {
        char c = text[i];
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        const bool part = (c >= 'a' && c <= 'z') || is_digit(c) || c == '"' || c == '\'' || (c & 0x80) != 0;
        if (part)
            words.back().text += c, words.back().end = i + 1;
        else if (!words.back().text.empty())
            words.emplace_back();
    }
    std::erase_if(words, [](const Word &word) { return word.text.empty(); });
    return words;
}

bool is_unit(const std::string &word) {
    return std::holds_alternative<Length>(parse_length("1 " + word));
}

struct Mark {
    std::size_t at = 0;
    std::size_t digits = 0; ///< behind it
};

/// Points and commas with a digit at both sides.
std::vector<Mark> marks_in(std::string_view text) {
    std::vector<Mark> marks;
    for (std::size_t i = 1; i + 1 < text.size(); ++i) {
        if ((text[i] != '.' && text[i] != ',') || !is_digit(text[i - 1]) || !is_digit(text[i + 1])) continue;
        std::size_t end = i + 1;
        while (end < text.size() && is_digit(text[end]))
            ++end;
        marks.push_back({i, end - i - 1});
    }
    return marks;
}

std::string with_point_at(std::string text, const std::vector<Mark> &marks, std::size_t decimal) {
    for (std::size_t i = marks.size(); i-- > 0;)
        if (i == decimal)
            text[marks[i].at] = '.';
        else
            text.erase(marks[i].at, 1);
    return text;
}

/// All that a person could have meant, with decimal points only.
std::vector<std::string> readings(const std::string &text, bool commas) {
    const std::vector<Mark> marks = marks_in(text);
    if (marks.empty()) return {text};
    constexpr std::size_t thousand = 3;
    std::vector<std::string> all;
    const bool mixed =
        std::ranges::any_of(marks, [&](const Mark &m) { return text[m.at] != text[marks.front().at]; });
    const bool in_threes =
        std::all_of(marks.begin(), marks.end(), [&](const Mark &m) { return m.digits == thousand; });
    if (marks.size() == 1 || mixed) all.push_back(with_point_at(text, marks, marks.size() - 1));
    const bool plain_point = marks.size() == 1 && text[marks[0].at] == '.' && !commas;
    if (in_threes && !mixed && !plain_point) all.push_back(with_point_at(text, marks, marks.size()));
    if (all.empty()) all.push_back(text);
    return all;
}

std::string said(double mm) {
    return print_length(Length::mm(mm), {.decimals = mm == std::round(mm) ? 0 : 2});
}

} // namespace

CsvHeading heading_of(std::string_view cell) {
    std::vector<Word> words = words_of(cell);
    CsvHeading heading;
    heading.name = cell;
    if (words.size() > 1 && is_unit(words.back().text)) {
        heading.unit = words.back().text;
        words.pop_back();
        if (words.size() > 1 && (words.back().text == "in" || words.back().text == "en"))
            words.pop_back(); // "in mm"
        heading.name = cell.substr(0, words.back().end);
    }
    for (const Word &word : words)
        heading.key += (heading.key.empty() ? "" : "_") + word.text;
    return heading;
}

namespace {

/// In the unit that it states, or that of its column.
Measured<Length> parsed_in(const std::string &reading, const std::string &unit) {
    auto parsed = parse_length(reading);
    if (std::holds_alternative<Length>(parsed) || unit.empty()) return parsed;
    auto with_unit = parse_length(reading + " " + unit);
    return std::holds_alternative<Length>(with_unit) ? with_unit : parsed;
}

} // namespace

std::variant<double, CsvFault> length_in(const std::string &text, const std::string &unit,
                                         const CsvBounds &bounds, bool commas) {
    std::optional<MeasureError> error;
    std::vector<double> read, within;
    for (const std::string &reading : readings(text, commas)) {
        const auto parsed = parsed_in(reading, unit);
        if (const auto *wrong = std::get_if<MeasureError>(&parsed)) {
            error = *wrong;
            continue;
        }
        read.push_back(std::get<Length>(parsed).mm());
        if (read.back() >= bounds.least && read.back() <= bounds.most) within.push_back(read.back());
    }
    if (within.size() == 1) return within[0];
    if (within.size() > 1)
        return CsvFault{CsvFault::two_ways,
                        "can be read as " + said(within[0]) + " or as " + said(within[1]) +
                            "; write it without a comma or point, or with two digits behind it"};
    if (!read.empty())
        return CsvFault{CsvFault::out_of_bounds, "is out of bounds; expected a length from " +
                                                     said(bounds.least) + " to " + said(bounds.most)};
    if (unit.empty() && std::holds_alternative<Length>(parse_length(readings(text, commas).front() + " mm")))
        return CsvFault{CsvFault::no_unit, "has no unit"};
    return CsvFault{CsvFault::unreadable, error->message + "; expected " + error->expected};
}

} // namespace roundlay
