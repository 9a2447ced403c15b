// A folder of outputs that is written as a whole or not at all.
//
// Everything is first written into a hidden folder inside it, then each file is renamed into place. A
// failure on the way, or an OutputFolder that goes out of scope without `commit`, leaves the folder as it
// was found. A program that is killed in the middle leaves only the hidden folder, which the next one
// clears away; killed while files are put in place, each is the old or the new one, and the next one knows
// which are whose. One writer at a time: a second one, of this program or another, is refused.
#pragma once

#include "exporters/files/staging.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace roundlay {

/// One file that was written.
struct OutputFile {
    std::string name;  ///< below the folder, parts separated by '/'
    std::string what;  ///< what it is, for people: "cut list by distinct piece"
    std::string maker; ///< which exporter made it: "list"
    std::uint64_t bytes = 0;
    std::string sha256;    ///< lower-case hex
    std::string made_from; ///< lower-case hex of an earlier document it is of; empty = the manifest's own
    bool operator==(const OutputFile &) const = default;
};

class OutputFolder {
  public:
    static std::variant<OutputFolder, FileError> open(const std::filesystem::path &folder);

    OutputFolder(OutputFolder &&) noexcept = default;

    /// Names the exporter that the following files are of.
    void set_maker(std::string_view maker) { maker_ = maker; }

    /// Writes one file aside. `name` is relative, has no `..` and was not added before (else it throws
    /// std::logic_error: that is the program's own mistake).
    std::optional<FileError> add(std::string_view name, std::string_view bytes, std::string_view what);

    /// Takes a file of an earlier export away with the commit. Missing is fine.
    void drop(std::string_view name) { dropped_.emplace_back(name); }

    /// Puts everything in place: the files in the order they were added, each at once. Where one of them
    /// fails, those before it are put back as they were.
    std::optional<FileError> commit();

    /// Texts of the files of this name that programs had written when they were killed, in place or not.
    /// They are kept until a commit has succeeded.
    std::vector<std::string> left_behind(std::string_view name) const;

    const std::vector<OutputFile> &files() const { return files_; }
    const std::filesystem::path &path() const { return folder_; }

  private:
    OutputFolder(std::filesystem::path folder, Staging staging)
        : folder_(std::move(folder)), staging_(std::move(staging)) {}

    std::filesystem::path folder_;
    Staging staging_;
    std::string maker_;
    std::vector<OutputFile> files_;
    std::vector<std::string> dropped_;
};

} // namespace roundlay
