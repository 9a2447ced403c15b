// What went wrong with a file, as one sentence for a person.
#pragma once

#include <filesystem>
#include <string>

namespace roundlay {

/// An expected failure at a file or folder. `message` is a whole sentence that names the path, the cause
/// and what to do; it needs no prefix.
struct FileError {
    std::string path;
    std::string message;
    int code = 0; ///< errno, where a system call failed
};

/// What was tried, as it reads in the sentence.
enum class FileDeed { write, make_folder, read, replace, remove };

/// The sentence for a failed system call. `code` is its errno.
FileError file_error(FileDeed deed, const std::filesystem::path &path, int code);

} // namespace roundlay
