#include "kernel/xlsx/temporary_file.h"

#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace roundlay {

TemporaryFile::TemporaryFile() {
    std::error_code none;
    const std::filesystem::path folder = std::filesystem::temp_directory_path(none);
    path_ = ((none ? std::filesystem::path("/tmp") : folder) / "roundlay-XXXXXX").string();
    const int descriptor = mkstemp(path_.data());
    if (descriptor < 0) throw std::runtime_error("no temporary file can be made: " + path_);
    close(descriptor);
}

TemporaryFile::~TemporaryFile() {
    std::error_code gone;
    std::filesystem::remove(path_, gone);
}

std::string TemporaryFile::bytes() const {
    std::ifstream in(path_, std::ios::binary);
    std::string all{std::istreambuf_iterator<char>(in), {}};
    if (in.bad() || all.empty()) throw std::runtime_error("the temporary file " + path_ + " cannot be read");
    return all;
}

} // namespace roundlay
