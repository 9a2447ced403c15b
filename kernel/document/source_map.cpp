#include "kernel/document/source_map.h"

namespace roundlay {

std::optional<Place> SourceMap::locate(std::string_view subject) const {
    while (!subject.empty()) {
        if (const auto found = places_.find(subject); found != places_.end()) return found->second;
        const std::size_t cut = subject.find_last_of(".[");
        subject = subject.substr(0, cut == std::string_view::npos ? 0 : cut);
    }
    return std::nullopt;
}

} // namespace roundlay
