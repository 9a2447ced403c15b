#include "kernel/xlsx/number_looks.h"

#include "kernel/xlsx/xml_reader.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <map>

namespace roundlay {

namespace {

std::size_t number_or(const std::string &text, std::size_t otherwise) {
    std::size_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() ? value : otherwise;
}

/// What a code shows, without what stands in quotes or brackets and what a sign in front makes a mere letter.
std::string bare(std::string_view code) {
    std::string shown;
    bool quoted = false, bracketed = false;
    for (std::size_t i = 0; i < code.size(); ++i) {
        const char c = code[i];
        if (c == '"') quoted = !quoted;
        if (c == '\\' || c == '_' || c == '*') {
            ++i;
            continue;
        }
        if (c == '[') bracketed = true;
        if (!quoted && !bracketed && c != '"')
            shown += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
        if (c == ']') bracketed = false;
    }
    return shown;
}

bool has_any(std::string_view text, std::string_view letters) {
    return text.find_first_of(letters) != std::string_view::npos;
}

/// [h], [mm], [ss]: hours that go on past a day.
bool counts_on(std::string_view code) {
    for (const std::string_view hours : {"[h", "[H", "[m", "[M", "[s", "[S"})
        if (const std::size_t at = code.find(hours); at != std::string_view::npos)
            if (const char next = at + 2 < code.size() ? code[at + 2] : '\0';
                next == ']' || next == code[at + 1])
                return true;
    return false;
}

/// Built-in formats of dates and times, by number; further ones are of other alphabets.
NumberLook built_in(std::size_t format) {
    static const std::map<std::size_t, NumberLook> looks{
        {9, {ShownAs::percent, 0}},      {10, {ShownAs::percent, 2}},
        {14, {ShownAs::date}},           {15, {ShownAs::date}},
        {16, {ShownAs::date, 0, false}}, {17, {ShownAs::date, 0, false}},
        {18, {ShownAs::time}},           {19, {ShownAs::time}},
        {20, {ShownAs::time}},           {21, {ShownAs::time}},
        {22, {ShownAs::date}},           {45, {ShownAs::time}},
        {46, {ShownAs::time}},           {47, {ShownAs::time}}};
    const auto look = looks.find(format);
    return look == looks.end() ? NumberLook{} : look->second;
}

std::string two_digits(long number) {
    std::array<char, 24> room{};
    std::snprintf(room.data(), room.size(), "%02ld", number);
    return room.data();
}

std::string iso_day(std::chrono::sys_days day) {
    const std::chrono::year_month_day date{day};
    std::array<char, 40> room{};
    std::snprintf(room.data(), room.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    return room.data();
}

} // namespace

NumberLook look_of(std::string_view code) {
    // what is behind a semicolon is for numbers below zero, for zero and for texts
    const std::string shown = bare(code.substr(0, code.find(';')));
    const bool year = has_any(shown, "y"), day = has_any(shown, "d"), month = has_any(shown, "m");
    const bool clock = has_any(shown, "hs") || counts_on(code);
    if (year || day || (month && !clock)) return {ShownAs::date, 0, year && day && month};
    if (clock) return {ShownAs::time};
    if (!has_any(shown, "%")) return {};
    const std::size_t point = shown.find('.');
    const auto places =
        point == std::string::npos ? 0 : std::ranges::count_if(shown.substr(point), [](char c) {
            return c == '0' || c == '#' || c == '?';
        });
    return {ShownAs::percent, static_cast<int>(places)};
}

std::vector<NumberLook> looks_of(const std::string &xml) {
    std::map<std::size_t, NumberLook> own;
    std::vector<NumberLook> styles;
    bool in_styles = false;
    const auto open = [&](std::string_view name, const XmlAttributes &attributes) {
        if (name == "numFmt") own[number_or(attributes["numFmtId"], 0)] = look_of(attributes["formatCode"]);
        if (name == "cellXfs") in_styles = true;
        if (name != "xf" || !in_styles) return;
        const std::size_t format = number_or(attributes["numFmtId"], 0);
        const auto stated = own.find(format);
        styles.push_back(stated == own.end() ? built_in(format) : stated->second);
    };
    const auto close = [&](std::string_view name) {
        if (name == "cellXfs") in_styles = false;
    };
    read_xml(xml, {open, close});
    return styles;
}

std::optional<std::string> iso_date(double serial, bool from_1904) {
    constexpr double past_9999 = 2958466, seconds = 86400;
    constexpr long leap_day = 60, minute = 60, hour = 3600;
    if (!(serial >= 1) || serial >= past_9999) return {};
    auto days = static_cast<long>(std::floor(serial));
    long time = std::lround((serial - std::floor(serial)) * seconds);
    if (time == static_cast<long>(seconds)) ++days, time = 0;
    if (!from_1904 && days == leap_day) return {};
    using namespace std::chrono;
    const sys_days first = from_1904         ? sys_days{year{1904} / 1 / 1}
                           : days > leap_day ? sys_days{year{1899} / 12 / 30}
                                             : sys_days{year{1899} / 12 / 31};
    const std::string day = iso_day(first + std::chrono::days{days});
    if (time == 0) return day;
    const std::string clock = two_digits(time / hour) + ":" + two_digits(time % hour / minute);
    return day + "T" + clock + (time % minute == 0 ? "" : ":" + two_digits(time % minute));
}

std::string hundredfold(const std::string &number) {
    const bool below = number.starts_with('-');
    std::string digits = below ? number.substr(1) : number;
    const std::size_t point = std::min(digits.find('.'), digits.size());
    std::string whole = digits.substr(0, point),
                rest = point < digits.size() ? digits.substr(point + 1) : std::string();
    for (int i = 0; i < 2; ++i) {
        whole += rest.empty() ? '0' : rest.front();
        if (!rest.empty()) rest.erase(0, 1);
    }
    const std::size_t first = std::min(whole.find_first_not_of('0'), whole.size() - 1);
    whole.erase(0, first);
    while (rest.ends_with('0'))
        rest.pop_back();
    return (below ? "-" : "") + whole + (rest.empty() ? "" : "." + rest);
}

} // namespace roundlay
