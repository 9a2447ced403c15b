#include "exporters/words/catalogue.h"

#include "exporters/words/french/french.h"

#include <unordered_map>

namespace roundlay {

namespace {

using ByEnglish = std::unordered_map<std::string_view, std::string_view>;

ByEnglish by_english(Language language) {
    ByEnglish all;
    for (const auto &table : catalogue_of(language))
        for (const Entry &entry : table)
            all.emplace(entry.english, entry.translated);
    return all;
}

} // namespace

std::span<const std::span<const Entry>> catalogue_of(Language language) {
    return language == Language::french ? french_tables() : std::span<const std::span<const Entry>>();
}

std::optional<std::string_view> translation_of(std::string_view english, Language language) {
    if (language == Language::english) return {};
    static const ByEnglish french = by_english(Language::french);
    const auto found = french.find(english);
    return found == french.end() ? std::nullopt : std::optional(found->second);
}

std::string_view semicolon_of(Language language) {
    return language == Language::french ? french_semicolon : "; ";
}

} // namespace roundlay
