// Renames a set of files into place, and takes it back where it fails half way.
#pragma once

#include "exporters/files/file_error.h"

#include <filesystem>
#include <optional>
#include <vector>

namespace roundlay {

class Replacement {
  public:
    /// Unless `keep` was called: what was replaced comes back, what is new goes away.
    ~Replacement();

    /// Puts `staged` at `target`. A file that was there changes places with it in one step.
    std::optional<FileError> put(const std::filesystem::path &staged, const std::filesystem::path &target);

    /// Moves `target` to `aside`. Missing is fine.
    std::optional<FileError> take_away(const std::filesystem::path &target,
                                       const std::filesystem::path &aside);

    void keep() { done_.clear(), made_.clear(); }

  private:
    /// ENOENT where another program took a folder of its own away in between.
    std::optional<FileError> put_once(const std::filesystem::path &staged,
                                      const std::filesystem::path &target);

    struct Step {
        std::filesystem::path staged, target;
        bool exchanged; ///< the old file lies at `staged`; else there was none at `target`
    };
    std::vector<Step> done_;
    std::vector<std::filesystem::path> made_; ///< folders
};

} // namespace roundlay
