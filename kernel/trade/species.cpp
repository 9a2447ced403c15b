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

Said said_of(const Origin &origin) {
    const std::string source(origin.source);
    const Said mark = phrase(words(origin.mark));
    return origin.conflict.empty() ? said("%1 (%2)", source, mark)
                                   : said("%1 (%2), though %3", source, mark, phrase(origin.conflict));
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

/// Names that hold those words: "hemlock" is a word of two names; "subalpine fir" has no word "pine".
std::vector<std::string_view> that_hold(std::string_view words) {
    std::vector<std::string_view> names;
    if (key(words).empty()) return names;
    for (const Species &each : all_species())
        if ((" " + std::string(each.name) + " ").find(" " + std::string(words) + " ") != std::string::npos)
            names.push_back(each.name);
    return names;
}

std::vector<std::string_view> meant_by(std::string_view name) {
    if (auto holding = that_hold(name); !holding.empty()) return holding;
    std::vector<std::string> known;
    for (const Species &species : all_species())
        known.emplace_back(species.name);
    const auto nearest = nearest_name(name, known);
    for (const Species &species : all_species())
        if (nearest && species.name == *nearest) return {species.name};
    return {};
}

std::string in_words(std::string_view name, const std::vector<std::string_view> &meant) {
    const std::string start = "no values are known for the species \"" + std::string(name) + "\"; ";
    std::string names;
    for (const std::string_view each : meant)
        names += (names.empty() ? "\"" : " or \"") + std::string(each) + "\"";
    if (!names.empty()) return start + "did you mean " + names + "?";
    for (const Species &each : all_species())
        names += (names.empty() ? "" : ", ") + std::string(each.name);
    return start + "known are " + names;
}

} // namespace

std::variant<const Species *, UnknownSpecies> find_species(std::string_view name) {
    for (const Species &species : all_species())
        if (key(species.name) == key(name)) return &species;
    const auto meant = meant_by(name);
    return UnknownSpecies{in_words(name, meant), meant};
}

Said which_species(const UnknownSpecies &unknown) {
    std::optional<Said> list;
    for (const std::string_view name : unknown.meant) {
        const Said quoted = said("\"%1\"", std::string(name));
        list = list ? said("%1 or %2", *list, quoted) : quoted;
    }
    if (list) return said("did you mean %1?", *list);
    for (const Species &species : all_species())
        list =
            list ? said("%1, %2", *list, std::string(species.name)) : said("%1", std::string(species.name));
    return said("known are %1", *list);
}

} // namespace roundlay
