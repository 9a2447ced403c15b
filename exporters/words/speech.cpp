#include "exporters/words/speech.h"

#include <array>
#include <utility>

namespace roundlay {

namespace {

constexpr std::array<std::pair<Language, std::string_view>, 2> tags = {{
    {Language::english, "en"},
    {Language::french, "fr"},
}};

} // namespace

std::string_view tag_of(Language language) {
    for (const auto &[known, tag] : tags)
        if (known == language) return tag;
    return "";
}

std::optional<Language> language_tagged(std::string_view tag) {
    const std::string_view first = tag.substr(0, tag.find_first_of("-_.@"));
    for (const auto &[language, known] : tags)
        if (known == first) return language;
    return {};
}

} // namespace roundlay
