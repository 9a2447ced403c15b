// The hidden folder in which outputs are written before they are put in place.
//
// It lies inside the output folder, so that it is on the same disk whatever is mounted there. While it lives
// the output folder is locked: a second writer is refused. The system takes the lock off when a program ends,
// killed or not, so a hidden folder that another program left is nobody's, and is cleared away.
#pragma once

#include "exporters/files/descriptor.h"
#include "exporters/files/file_error.h"

#include <filesystem>
#include <optional>
#include <variant>
#include <vector>

namespace roundlay {

class Staging {
  public:
    /// Makes the output folder where it is missing and locks it, makes the hidden folder.
    static std::variant<Staging, FileError> make(const std::filesystem::path &folder);

    Staging(Staging &&other) noexcept;
    Staging &operator=(Staging &&) = delete;
    /// Removes the hidden folder, and the folders that this made if they are still empty and nobody else's.
    ~Staging();

    const std::filesystem::path &path() const { return path_; }
    /// Hidden folders that killed programs left.
    const std::vector<std::filesystem::path> &left_behind() const { return left_behind_; }

  private:
    Staging() = default;
    std::optional<FileError> enter(const std::filesystem::path &folder);
    std::filesystem::path path_;              ///< empty once moved from
    std::vector<std::filesystem::path> made_; ///< folders made on the way, outermost first
    std::vector<std::filesystem::path> left_behind_;
    Descriptor lock_; ///< of the output folder
};

/// Makes a folder and its parents. Adds those that were missing to `made`, outermost first. 0 or the errno;
/// ENOENT where another program took a parent away meanwhile: try anew, `tries_at_folders` times.
int make_folders(const std::filesystem::path &folder, std::vector<std::filesystem::path> &made);
inline constexpr int tries_at_folders =
    100; ///< each is lost only to a program that removes at that very moment

/// Removes those of the folders that are empty, innermost first. Each is locked for it, `own` being the lock
/// that is held already: else a folder would go that another program has just entered and not yet written to.
void remove_if_free(const std::vector<std::filesystem::path> &made, const Descriptor *own = nullptr);

} // namespace roundlay
