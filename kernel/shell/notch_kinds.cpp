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

constexpr std::string_view first_word(std::string_view name) {
    return name.substr(0, name.find(' '));
}

/// Each is called by it alone.
constexpr bool each_has_its_own_first_word() {
    for (const KindOfNotch &one : all_kinds_of_notch)
        for (const KindOfNotch &other : all_kinds_of_notch)
            if (one.kind != other.kind && first_word(one.name) == first_word(other.name)) return false;
    return true;
}
static_assert(each_has_its_own_first_word());

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
            const std::string word(whole ? std::string_view(each.name) : first_word(each.name));
            if (each.slopes != NotchSlopes::stated &&
                std::find(words.begin(), words.end(), word) == words.end())
                words.push_back(word);
        }
    return words;
}

} // namespace roundlay
