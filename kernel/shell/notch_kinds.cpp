#include "kernel/shell/notch_kinds.h"

#include <algorithm>
#include <string_view>

namespace roundlay {

namespace {

constexpr bool each_is_in_its_place() {
    for (std::size_t i = 0; i < all_kinds_of_notch.size(); ++i)
        if (static_cast<std::size_t>(all_kinds_of_notch[i].kind) != i) return false;
    return all_kinds_of_notch.back().kind == NotchKind::saddle; // the last one: none is without its row
}
static_assert(each_is_in_its_place());

std::string first_word(std::string_view name) {
    return std::string(name.substr(0, name.find(' ')));
}

} // namespace

std::optional<NotchKind> notch_called(const std::string &word) {
    for (const KindOfNotch &each : all_kinds_of_notch)
        if (each.slopes != NotchSlopes::stated && (word == each.name || word == first_word(each.name)))
            return each.kind;
    return std::nullopt;
}

std::vector<std::string> words_for_notches() {
    std::vector<std::string> words;
    for (const bool whole : {false, true})
        for (const KindOfNotch &each : all_kinds_of_notch) {
            const std::string word = whole ? each.name : first_word(each.name);
            if (each.slopes != NotchSlopes::stated &&
                std::find(words.begin(), words.end(), word) == words.end())
                words.push_back(word);
        }
    return words;
}

} // namespace roundlay
