#include "exporters/registry/piece_names.h"

#include "exporters/files/safe_file.h"
#include "kernel/measure/character.h"

#include <set>

namespace roundlay {

namespace {} // namespace

Indexed<std::string, Model> piece_file_names(const Layout &layout) {
    Indexed<std::string, Model> names;
    std::set<std::string> taken;
    for (const Model &model : layout.models) {
        const std::string base = safe_file_name(layout.pieces.at(model.pieces.front()).tag);
        std::string name = base;
        for (int i = 2; !taken.insert(lower_case(name)).second; ++i)
            name = base + "_" + std::to_string(i);
        names.push_back(name);
    }
    return names;
}

} // namespace roundlay
