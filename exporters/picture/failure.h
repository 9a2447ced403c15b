// Why there is no picture.
#pragma once

#include <string>
#include <variant>

namespace roundlay {

struct PictureFailure {
    std::string message; ///< one sentence for people: what is missing and what to do
};

template <typename T> using Drawn = std::variant<T, PictureFailure>;

} // namespace roundlay
