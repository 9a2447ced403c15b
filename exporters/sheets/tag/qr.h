// QR codes (ISO/IEC 18004) as an area.
#pragma once

#include "exporters/sheets/drawing/sheet.h"

#include <optional>
#include <string>

namespace roundlay::sheets {

/// The dark modules of the code at level Q, its quiet zone of four modules included in `box`, which should be
/// square. Nothing where the words are too long for any code.
std::optional<Fill> qr_code(const std::string &words, const Rect &box);

} // namespace roundlay::sheets
