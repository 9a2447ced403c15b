#include "kernel/document/noted_text.h"

#include "kernel/document/toml_text.h"
#include "kernel/document/words.h"

namespace roundlay {

std::vector<std::pair<std::string, std::string>> noted_parts(const NotedLength &noted) {
    std::vector<std::pair<std::string, std::string>> parts{{"note", toml_text(noted.written)}};
    if (noted.certainty != Certainty::measured)
        parts.emplace_back("is", toml_text(std::string_view(word(noted.certainty))));
    if (!noted.by.empty()) parts.emplace_back("by", toml_text(noted.by));
    if (!noted.on.empty()) parts.emplace_back("on", toml_text(noted.on));
    return parts;
}

std::string noted_text(const NotedLength &noted) {
    const auto parts = noted_parts(noted);
    if (parts.size() == 1) return parts.front().second;
    return inline_table(parts);
}

std::vector<std::string> certainty_words() {
    std::vector<std::string> all;
    for (const auto &each : words<Certainty>())
        all.emplace_back(each.text);
    return all;
}

} // namespace roundlay
