// The library that writes XLSX knows files alone: one that nobody else sees, and that is gone afterwards.
#pragma once

#include <string>

namespace roundlay {

class TemporaryFile {
  public:
    TemporaryFile(); ///< throws std::runtime_error where none can be made
    ~TemporaryFile();
    TemporaryFile(const TemporaryFile &) = delete;
    TemporaryFile &operator=(const TemporaryFile &) = delete;

    const std::string &path() const { return path_; }
    std::string bytes() const; ///< throws std::runtime_error where it cannot be read

  private:
    std::string path_;
};

} // namespace roundlay
