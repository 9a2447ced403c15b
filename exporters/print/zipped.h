// Files in one, as ZIP has it. Private to this room.
#pragma once

#include <string>
#include <vector>

namespace roundlay {

struct FileInside {
    std::string name, bytes;
};

/// Deflated; of no time and of nobody, so that the same files give the same bytes. Less than 4 GB.
std::string zipped(const std::vector<FileInside> &files);

} // namespace roundlay
