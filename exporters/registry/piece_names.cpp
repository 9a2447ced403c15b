#include "exporters/registry/piece_names.h"

#include "exporters/files/safe_file.h"
#include "kernel/measure/character.h"

#include <set>

namespace roundlay {

namespace {} // namespace

std::vector<std::string> piece_file_names(const Layout &layout) {
    std::vector<std::string> names;
    std::set<std::string> taken;
    for (const Model &model : layout.models) {
        const std::string base =
            safe_file_name(layout.pieces.at(static_cast<std::size_t>(model.pieces.front())).tag);
        std::string name = base;
        for (int i = 2; !taken.insert(lower_case(name)).second; ++i)
            name = base + "_" + std::to_string(i);
        names.push_back(name);
    }
    return names;
}

} // namespace roundlay
