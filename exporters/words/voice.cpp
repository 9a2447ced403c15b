#include "exporters/words/voice.h"

namespace roundlay {

std::string Voice::length(double mm) const {
    return print_length(Length::mm(mm), style_);
}

std::string Voice::name(const std::string &thing) const {
    const auto given = given_.find(thing);
    return given == given_.end() ? thing : words(given->second);
}

void Voice::know(const std::vector<std::pair<std::string, Said>> &names_given) {
    if (language_ == Language::english) return;
    for (const auto &[name, said] : names_given)
        given_.emplace(name, said);
}

} // namespace roundlay
