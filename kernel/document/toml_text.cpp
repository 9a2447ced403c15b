#include "kernel/document/toml_text.h"

#include "kernel/measure/load.h"
#include "kernel/measure/spelling.h"

namespace roundlay {

namespace {

bool needs_escape(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < ' ' || byte == 0x7f;
}

std::string escaped(char c) {
    constexpr std::string_view hex = "0123456789ABCDEF";
    const auto byte = static_cast<unsigned char>(c);
    return std::string("\\u00") + hex[byte >> 4] + hex[byte & 15];
}

} // namespace

std::string toml_text(std::string_view text) {
    bool plain = true, literal = true;
    for (const char c : text) {
        plain = plain && c != '"' && c != '\\' && !needs_escape(c);
        literal = literal && c != '\'' && !needs_escape(c);
    }
    if (literal && !plain) return "'" + std::string(text) + "'";
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') quoted += '\\';
        quoted += needs_escape(c) ? escaped(c) : std::string(1, c);
    }
    return quoted + "\"";
}

std::string toml_text(Length value, UnitSystem system) {
    return toml_text(spell_length(value, system));
}

std::string toml_text(Slope value) {
    return toml_text(spell_slope(value));
}

std::string toml_text(double value) {
    return spell_number(value);
}

std::string inline_table(const std::vector<std::pair<std::string, std::string>> &keys) {
    std::string all;
    for (const auto &[key, value] : keys)
        all += (all.empty() ? " " : ", ") + key + " = " + value;
    return "{" + all + " }";
}

std::string load_text(double kpa, UnitSystem system) {
    constexpr std::string_view metric = " kPa";
    std::string text = spell_load(kpa, system);
    if (system != UnitSystem::metric || !text.ends_with(metric) || kpa > most_bare_load)
        return toml_text(text);
    return text.substr(0, text.size() - metric.size());
}

} // namespace roundlay
