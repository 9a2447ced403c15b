#include "modeler/command_line/values.h"

#include "kernel/measure/nearest_name.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdio>
#include <optional>

namespace roundlay {

namespace {

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

[[noreturn]] void refuse(std::string_view option, const std::string &text, const MeasureError &error) {
    throw UsageError(std::string(option) + " " + quoted(text) + ": " + error.message + "; expected " +
                     error.expected);
}

std::optional<int> whole(std::string_view digits) {
    int value = 0;
    const auto end = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (end.ec != std::errc() || end.ptr != digits.data() + digits.size()) return {};
    return value;
}

const std::vector<std::string> &paper_names() {
    static const std::vector<std::string> names = {"A4", "A3", "A2", "A1", "Letter", "Tabloid"};
    return names;
}

Length any_length(std::string_view option, const std::string &text) {
    const auto read = parse_length(text);
    if (const auto *error = std::get_if<MeasureError>(&read)) refuse(option, text, *error);
    return std::get<Length>(read);
}

} // namespace

Length length_or_0_value(std::string_view option, const std::string &text) {
    const Length length = any_length(option, text);
    if (length < Length())
        throw UsageError(std::string(option) + " " + quoted(text) + ": the length must be 0 or more");
    return length;
}

Length length_value(std::string_view option, const std::string &text) {
    const Length length = any_length(option, text);
    if (length <= Length())
        throw UsageError(std::string(option) + " " + quoted(text) + ": the length must be more than 0");
    return length;
}

Slope slope_value(std::string_view option, const std::string &text) {
    const auto read = parse_slope(text);
    if (const auto *error = std::get_if<MeasureError>(&read)) refuse(option, text, *error);
    return std::get<Slope>(read);
}

std::string one_of(std::string_view kind, const std::string &typed, const std::vector<std::string> &names) {
    if (std::find(names.begin(), names.end(), typed) != names.end()) return typed;
    std::string message = "there is no " + std::string(kind) + " " + quoted(typed);
    if (const auto nearest = nearest_name(typed, names))
        throw UsageError(message + "; did you mean " + quoted(*nearest) + "?");
    message += "; choose from";
    for (std::size_t i = 0; i < names.size(); ++i)
        message += (i ? ", " : " ") + names[i];
    throw UsageError(message);
}

UnitSystem units_value(const std::string &text) {
    return one_of("system of units", text, {"metric", "imperial"}) == "metric" ? UnitSystem::metric
                                                                               : UnitSystem::imperial;
}

sheets::Paper paper_value(const std::string &text) {
    if (const auto paper = sheets::paper_named(text)) return *paper;
    return *sheets::paper_named(one_of("paper", text, paper_names()));
}

PixelSize pixel_size_value(const std::string &text) {
    constexpr int largest = 8192;
    const std::size_t x = text.find('x');
    const auto width = whole(std::string_view(text).substr(0, x));
    const auto height = x == std::string::npos ? std::nullopt : whole(std::string_view(text).substr(x + 1));
    if (!width || !height || *width < 1 || *height < 1 || *width > largest || *height > largest)
        throw UsageError("--size " + quoted(text) +
                         ": expected width x height in pixels such as 1600x1200, 1 to " +
                         std::to_string(largest) + " each");
    return {*width, *height};
}

double millimetres_value(std::string_view option, const std::string &text, double low, double high) {
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !(value >= low && value <= high)) {
        std::array<char, 96> room{};
        std::snprintf(room.data(), room.size(), ": expected a number of millimetres, %g to %g", low, high);
        throw UsageError(std::string(option) + " " + quoted(text) + room.data());
    }
    return value;
}

double scale_value(const std::string &text) {
    constexpr double largest = 1000;
    const std::string number = text.rfind("1:", 0) == 0 ? text.substr(2) : text;
    double scale = 0;
    const auto [end, error] = std::from_chars(number.data(), number.data() + number.size(), scale);
    if (error != std::errc() || end != number.data() + number.size() || !(scale >= 1 && scale <= largest))
        throw UsageError("--scale " + quoted(text) + ": expected a scale such as 1:10, 1:1 to 1:1000");
    return scale;
}

BedSize bed_value(const std::string &text) {
    constexpr double least = 20, largest = 10000;
    const std::size_t x = text.find('x');
    if (x == std::string::npos)
        throw UsageError("--bed " + quoted(text) + ": expected width x depth in millimetres such as 220x220");
    return {millimetres_value("--bed", text.substr(0, x), least, largest),
            millimetres_value("--bed", text.substr(x + 1), least, largest)};
}

} // namespace roundlay
