#include "exporters/sheets/drawing/listed.h"

#include <algorithm>

namespace roundlay::sheets {

std::string listed(const std::vector<std::string> &names) {
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

std::string first_listed(const std::vector<std::string> &names, std::size_t most, const Words &words) {
    if (names.size() <= most) return listed(names);
    const auto end = names.begin() + static_cast<std::ptrdiff_t>(most);
    return words.say("%1 and %2 more", listed({names.begin(), end}), names.size() - most);
}

} // namespace roundlay::sheets
