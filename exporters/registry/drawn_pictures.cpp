#include "exporters/registry/drawn_pictures.h"

namespace roundlay {

MadePicture DrawnPictures::of(const PictureOptions &wanted, const std::function<MadePicture()> &draw) {
    const std::lock_guard lock(mutex_);
    if (const auto known = drawn_.find(wanted); known != drawn_.end()) return known->second;
    MadePicture made = draw();
    if (const auto *png = std::get_if<std::string>(&made)) drawn_.emplace(wanted, *png);
    return made;
}

std::size_t DrawnPictures::count() const {
    const std::lock_guard lock(mutex_);
    return drawn_.size();
}

} // namespace roundlay
