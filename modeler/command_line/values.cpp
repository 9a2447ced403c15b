#include "modeler/command_line/values.h"

#include "kernel/measure/nearest_name.h"

#include <algorithm>

namespace roundlay {

namespace {

std::string quoted(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

[[noreturn]] void refuse(std::string_view option, const std::string &text, const MeasureError &error) {
    throw UsageError(std::string(option) + " " + quoted(text) + ": " + error.message + "; expected " +
                     error.expected);
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

} // namespace roundlay
