// The one place of this room that sees libjpeg.
#pragma once

#include "exporters/picture/picture.h"

#include <optional>
#include <string_view>

namespace roundlay::sheets {

/// Made smaller by a half, a quarter or an eighth while it is read, as far as it stays at least `wanted`
/// pixels the longer way. Nothing where it is damaged or over 100 million pixels.
std::optional<Picture> decoded_jpeg(std::string_view bytes, int wanted);

} // namespace roundlay::sheets
