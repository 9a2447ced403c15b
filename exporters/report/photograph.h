// Photographs by their file name, as a page can show them. They are read where they lie and never kept.
#pragma once

#include "kernel/measure/said.h"

#include <filesystem>
#include <string>
#include <variant>

namespace roundlay::sheets {

struct Photograph {
    std::string png;
    double width = 0, height = 0; ///< pixels
};

/// A JPEG, turned as its camera was held and made smaller than 1000 pixels each way; or a PNG as it is. Else
/// one sentence why not: there is no such file, it is of another kind, damaged or larger than 40 MB (a PNG
/// 4 MB). `name` is beside the document, or with folders from there.
std::variant<Photograph, Said> read_photograph(const std::filesystem::path &folder, const std::string &name);

/// How a camera was held, 1 to 8 (Exif 2.3, tag 0x0112); 1 where a JPEG does not say.
int orientation_of(std::string_view jpeg);

} // namespace roundlay::sheets
