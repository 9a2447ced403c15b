#include "exporters/registry/export_option.h"
#include "exporters/words/words.h"
#include "kernel/measure/spelling.h"

#include <algorithm>
#include <cmath>

namespace roundlay {

namespace {

std::string trimmed(std::string_view text) {
    const std::size_t from = text.find_first_not_of(" \t"), to = text.find_last_not_of(" \t");
    return from == std::string_view::npos ? std::string() : std::string(text.substr(from, to - from + 1));
}

/// "2440x1220 x 12", "220×220".
std::vector<std::string> parts_of(std::string text) {
    constexpr std::string_view sign = "\u00d7";
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign))
        text.replace(at, sign.size(), "x");
    std::vector<std::string> parts;
    std::size_t from = 0;
    for (std::size_t x = text.find('x'); x != std::string::npos; from = x + 1, x = text.find('x', from))
        parts.push_back(trimmed(std::string_view(text).substr(from, x - from)));
    parts.push_back(trimmed(std::string_view(text).substr(from)));
    return parts;
}

bool is_bare(const std::string &text) {
    return !text.empty() && text.find_first_not_of("0123456789.,/ -") == std::string::npos;
}

std::optional<double> length_in(const std::string &text, UnitSystem bare) {
    const std::string unit = bare == UnitSystem::metric ? " mm" : " in";
    const auto read = parse_length(is_bare(text) ? text + unit : text);
    if (const auto *length = std::get_if<Length>(&read)) return length->mm();
    return {};
}

/// A number is read as a length is, so that commas are taken alike.
std::optional<double> number_in(const std::string &text) {
    return is_bare(text) ? length_in(text, UnitSystem::metric) : std::nullopt;
}

std::string shortest(double value) {
    constexpr double part = 1e4;
    return spell_number(std::round(value * part) / part);
}

std::string printed(double mm, UnitSystem units) {
    return units == UnitSystem::metric ? shortest(mm) + " mm" : shortest(mm / mm_per_inch) + " in";
}

Said expected(const LengthsOption &kind, UnitSystem units) {
    const std::string low = printed(kind.low, units), high = printed(kind.high, units);
    if (kind.count == 1) return said("expected a length of %1 to %2", low, high);
    return said("expected %1, each %2 to %3", kind.parts, low, high);
}
Said expected(const NumbersOption &kind, UnitSystem) {
    const std::string low = spell_number(kind.low), high = spell_number(kind.high);
    if (kind.count > 1) return said("expected %1, each %2 to %3", kind.parts, low, high);
    return kind.whole ? said("expected a whole number from %1 to %2", low, high)
                      : said("expected a number from %1 to %2", low, high);
}
Said expected(const ScaleOption &kind, UnitSystem) {
    return said("expected a scale such as 1:10, 1:%1 to 1:%2", spell_number(kind.low),
                spell_number(kind.high));
}
Said expected(const ChoiceOption &kind, UnitSystem) {
    std::string words;
    for (const OptionWord &each : kind.words)
        words += (words.empty() ? "" : ", ") + std::string(each.word);
    return said("expected one of %1", words);
}
Said expected(const YesNoOption &, UnitSystem) {
    return said("expected yes or no");
}

using Read = std::optional<OptionValue>;

template <typename Kind, typename One>
Read read_each(const Kind &kind, const std::string &text, const One &one) {
    const auto parts = parts_of(text);
    if (parts.size() != kind.count) return {};
    OptionValue value;
    for (const std::string &part : parts) {
        const std::optional<double> read = one(part);
        if (!read || !(*read >= kind.low && *read <= kind.high)) return {};
        value.push_back(*read);
    }
    return value;
}

Read read_as(const LengthsOption &kind, const std::string &text, UnitSystem units) {
    return read_each(kind, text, [&](const std::string &part) { return length_in(part, units); });
}
Read read_as(const NumbersOption &kind, const std::string &text, UnitSystem) {
    return read_each(kind, text, [&](const std::string &part) {
        const auto number = number_in(part);
        return number && kind.whole && *number != std::floor(*number) ? std::nullopt : number;
    });
}
Read read_as(const ScaleOption &kind, const std::string &text, UnitSystem) {
    const auto number = number_in(text.starts_with("1:") ? trimmed(std::string_view(text).substr(2)) : text);
    if (!number || !(*number >= kind.low && *number <= kind.high)) return {};
    return OptionValue{*number};
}
Read read_as(const ChoiceOption &kind, const std::string &text, UnitSystem) {
    const auto same = [&](const OptionWord &each) {
        return std::ranges::equal(each.word, text, [](unsigned char a, unsigned char b) {
            return std::tolower(a) == std::tolower(b);
        });
    };
    const auto found = std::ranges::find_if(kind.words, same);
    if (found == kind.words.end()) return {};
    return OptionValue{static_cast<double>(found - kind.words.begin())};
}
Read read_as(const YesNoOption &, const std::string &text, UnitSystem) {
    if (text != "yes" && text != "no") return {};
    return OptionValue{text == "yes" ? 1.0 : 0.0};
}

std::string joined(const std::vector<std::string> &parts) {
    std::string all;
    for (const std::string &part : parts)
        all += (all.empty() ? "" : " x ") + part;
    return all;
}

std::string print_as(const LengthsOption &, const OptionValue &value, UnitSystem units) {
    std::vector<std::string> parts;
    for (const double mm : value)
        parts.push_back(printed(mm, units));
    return joined(parts);
}
std::string print_as(const NumbersOption &, const OptionValue &value, UnitSystem) {
    std::vector<std::string> parts;
    for (const double number : value)
        parts.push_back(shortest(number));
    return joined(parts);
}
std::string print_as(const ScaleOption &, const OptionValue &value, UnitSystem) {
    return "1:" + shortest(value.front());
}
std::string print_as(const ChoiceOption &kind, const OptionValue &value, UnitSystem) {
    return std::string(kind.words.at(static_cast<std::size_t>(value.front())).word);
}
std::string print_as(const YesNoOption &, const OptionValue &value, UnitSystem) {
    return value.front() > 0 ? "yes" : "no";
}

} // namespace

UnitSystem units_of(const ExportOption &option, UnitSystem document) {
    const auto *lengths = std::get_if<LengthsOption>(&option.kind);
    return lengths != nullptr && lengths->in_mm ? UnitSystem::metric : document;
}

std::variant<OptionValue, Said> read_option(const ExportOption &option, const std::string &typed,
                                            UnitSystem units) {
    const UnitSystem own = units_of(option, units);
    const auto value =
        std::visit([&](const auto &kind) { return read_as(kind, trimmed(typed), own); }, option.kind);
    if (value) return *value;
    if (typed.find(',') != std::string::npos)
        return said(
            "a comma in a number can be read in two ways; expected a decimal point and no thousands mark");
    return std::visit([&](const auto &kind) { return expected(kind, own); }, option.kind);
}

std::string print_option(const ExportOption &option, const OptionValue &value, UnitSystem units) {
    if (value.empty()) return {};
    return std::visit([&](const auto &kind) { return print_as(kind, value, units_of(option, units)); },
                      option.kind);
}

} // namespace roundlay
