// The hidden folder in which outputs are written before they are put in place.
//
// It lies inside the output folder, so that it is on the same disk whatever is mounted there. It is locked
// while its program lives; one that is not locked was left by a program that was killed, and is cleared
// away by the next.
#pragma once

#include "exporters/files/descriptor.h"
#include "exporters/files/file_error.h"

#include <filesystem>
#include <variant>
#include <vector>

namespace roundlay {

class Staging {
  public:
    /// Makes the output folder where it is missing, clears what dead programs left, makes the hidden folder.
    static std::variant<Staging, FileError> make(const std::filesystem::path &folder);

    Staging(Staging &&other) noexcept;
    Staging &operator=(Staging &&) = delete;
    /// Removes the hidden folder, and the output folder too if this made it and it is still empty.
    ~Staging();

    const std::filesystem::path &path() const { return path_; }

  private:
    Staging() = default;
    std::filesystem::path path_;              ///< empty once moved from
    std::vector<std::filesystem::path> made_; ///< folders made on the way, outermost first
    Descriptor lock_;
};

/// Makes a folder and its parents. Adds those that were missing to `made`, outermost first.
int make_folders(const std::filesystem::path &folder, std::vector<std::filesystem::path> &made);

} // namespace roundlay
