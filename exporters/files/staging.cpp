#include "exporters/files/staging.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <cstdlib>
#include <optional>
#include <string_view>

namespace roundlay {

namespace fs = std::filesystem;

namespace {

constexpr std::string_view prefix = ".roundlay-";
constexpr std::string_view pattern = ".roundlay-XXXXXX";
constexpr mode_t folder_rights = 0777; // the person's umask takes its part off

bool looks_like_staging(const fs::directory_entry &entry) {
    std::error_code ignored;
    const std::string name = entry.path().filename().string();
    return name.size() == pattern.size() && name.starts_with(prefix) && entry.is_directory(ignored) &&
           !entry.is_symlink(ignored);
}

bool lock(const Descriptor &folder, int how) {
    return ::flock(folder.number(), how) == 0;
}

Descriptor open_folder(const fs::path &path) {
    return Descriptor(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
}

/// Removes hidden folders whose program is gone. What cannot be removed is left: it harms nobody.
void clear_left_behind(const fs::path &folder) {
    std::error_code ignored;
    std::vector<fs::path> found;
    for (fs::directory_iterator it(folder, ignored), end; !ignored && it != end; it.increment(ignored))
        if (looks_like_staging(*it)) found.push_back(it->path());
    for (const fs::path &path : found) {
        const Descriptor held = open_folder(path);
        if (held.open() && lock(held, LOCK_EX | LOCK_NB)) fs::remove_all(path, ignored);
    }
}

void remove_if_empty(const std::vector<fs::path> &made) {
    for (auto it = made.rbegin(); it != made.rend(); ++it)
        ::rmdir(it->c_str());
}

} // namespace

int make_folders(const fs::path &folder, std::vector<fs::path> &made) {
    struct stat found = {};
    if (::stat(folder.c_str(), &found) == 0) return S_ISDIR(found.st_mode) ? 0 : ENOTDIR;
    if (errno != ENOENT) return errno;
    const fs::path parent = folder.parent_path();
    if (!parent.empty() && parent != folder)
        if (const int code = make_folders(parent, made)) return code;
    if (::mkdir(folder.c_str(), folder_rights) == 0)
        made.push_back(folder);
    else if (errno != EEXIST) // another program may have made it meanwhile
        return errno;
    return 0;
}

std::variant<Staging, FileError> Staging::make(const fs::path &folder) {
    Staging staging;
    if (const int code = make_folders(folder, staging.made_)) {
        remove_if_empty(staging.made_);
        return file_error(FileDeed::make_folder, folder, code);
    }
    // Held from before the clearing until our own folder is locked, so that nobody clears it in between.
    const Descriptor gate = open_folder(folder);
    if (gate.open()) lock(gate, LOCK_EX);
    clear_left_behind(folder);
    std::string name = (folder / pattern).string();
    if (::mkdtemp(name.data()) == nullptr) {
        const int code = errno;
        remove_if_empty(staging.made_);
        return file_error(FileDeed::write, folder, code);
    }
    staging.path_ = name;
    staging.lock_ = open_folder(staging.path_);
    if (staging.lock_.open()) lock(staging.lock_, LOCK_EX);
    return staging;
}

Staging::Staging(Staging &&other) noexcept
    : path_(std::exchange(other.path_, {})), made_(std::exchange(other.made_, {})),
      lock_(std::move(other.lock_)) {}

Staging::~Staging() {
    if (path_.empty()) return;
    std::error_code ignored;
    fs::remove_all(path_, ignored);
    remove_if_empty(made_);
}

} // namespace roundlay
