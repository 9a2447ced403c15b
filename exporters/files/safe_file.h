// Writing one file so that a reader sees the old one or the whole new one, never a part.
#pragma once

#include "exporters/files/file_error.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace roundlay {

/// What to do where the file is there already.
enum class IfThere { replace, refuse };

/// Writes aside, brings it to the disk, renames. A file that was there keeps its rights; a link is
/// followed; something that is no plain file (a pipe, a terminal) is written to directly.
/// Nothing = done; else the old file is untouched.
std::optional<FileError> write_file(const std::filesystem::path &path, std::string_view bytes,
                                    IfThere there = IfThere::replace);

/// The file's bytes. More than `limit` bytes are refused.
std::variant<std::string, FileError> read_file(const std::filesystem::path &path, std::size_t limit);

/// A name that is safe on every common file system: letters, digits, `-`, `_` and `.` stay, all else
/// becomes `-`; never empty, never hidden, at most 100 bytes.
std::string safe_file_name(std::string_view text);

} // namespace roundlay
