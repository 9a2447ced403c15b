#include "kernel/measure/nearest_name.h"

#include <algorithm>

namespace roundlay {

namespace {

std::string lower(std::string_view text) {
    std::string low(text);
    for (char &c : low)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return low;
}

} // namespace

// Optimal string alignment: three rows of the usual table are enough.
int changes_between(std::string_view a, std::string_view b) {
    std::vector<int> before_last(b.size() + 1), last(b.size() + 1), now(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        last[j] = static_cast<int>(j);
    for (std::size_t i = 1; i <= a.size(); ++i) {
        now[0] = static_cast<int>(i);
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const int replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            now[j] = std::min({last[j] + 1, now[j - 1] + 1, replaced});
            const bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
            if (swapped) now[j] = std::min(now[j], before_last[j - 2] + 1);
        }
        std::swap(before_last, last);
        std::swap(last, now);
    }
    return last[b.size()];
}

std::optional<std::string> nearest_name(std::string_view typed, const std::vector<std::string> &known) {
    constexpr std::size_t longest =
        200; // nobody mistypes a name of that length; the table grows as its square
    if (typed.empty() || typed.size() > longest) return {};
    std::optional<std::string> best;
    int fewest = 0;
    for (const std::string &name : known) {
        const int changes = changes_between(lower(typed), lower(name));
        const int allowed = std::max(1, static_cast<int>(std::max(name.size(), typed.size()) / 3));
        const bool alike = changes < static_cast<int>(std::max(name.size(), typed.size())); // in one letter
        if (changes > allowed || !alike || (best && changes >= fewest)) continue;
        best = name;
        fewest = changes;
    }
    return best;
}

} // namespace roundlay
