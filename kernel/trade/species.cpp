#include "kernel/trade/species.h"

#include "kernel/measure/nearest_name.h"

namespace roundlay {

std::string_view words(Mark mark) {
    switch (mark) {
    case Mark::seen:
        return "seen";
    case Mark::second_hand:
        return "second-hand";
    case Mark::memory:
        return "from memory";
    case Mark::derived:
        return "derived";
    }
    return "";
}

namespace {

/// Letters only, in lower case.
std::string key(std::string_view name) {
    std::string letters;
    for (const char c : name) {
        if (c >= 'A' && c <= 'Z') letters += static_cast<char>(c - 'A' + 'a');
        if (c >= 'a' && c <= 'z') letters += c;
    }
    return letters;
}

/// "hemlock" is a word of two names; "subalpine fir" has no word "pine".
std::string that_hold(std::string_view words, const std::vector<std::string> &known) {
    std::string names;
    if (key(words).empty()) return names;
    for (const std::string &each : known)
        if ((" " + each + " ").find(" " + std::string(words) + " ") != std::string::npos)
            names += (names.empty() ? "\"" : " or \"") + each + "\"";
    return names;
}

std::string unknown_species(std::string_view name) {
    std::vector<std::string> known;
    for (const Species &species : all_species())
        known.emplace_back(species.name);
    std::string message = "no values are known for the species \"" + std::string(name) + "\"";
    if (const std::string holding = that_hold(name, known); !holding.empty())
        return message + "; did you mean " + holding + "?";
    if (const auto nearest = nearest_name(name, known))
        return message + "; did you mean \"" + *nearest + "\"?";
    message += "; known are";
    for (std::size_t i = 0; i < known.size(); ++i)
        message += (i ? ", " : " ") + known[i];
    return message;
}

} // namespace

std::variant<const Species *, UnknownSpecies> find_species(std::string_view name) {
    for (const Species &species : all_species())
        if (key(species.name) == key(name)) return &species;
    return UnknownSpecies{unknown_species(name)};
}

} // namespace roundlay
