#include "exporters/files/staging.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>

#include <cstdlib>
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

/// Is the folder that is held the one which that name leads to?
bool leads_to(const fs::path &path, const Descriptor &held) {
    struct stat there = {}, named = {};
    return ::fstat(held.number(), &there) == 0 && ::stat(path.c_str(), &named) == 0 &&
           there.st_ino == named.st_ino && there.st_dev == named.st_dev;
}

/// The folder, open and locked; `busy` where another program writes there. A file system that knows no locks
/// (some network ones) gives an open folder without one.
struct Gate {
    Descriptor folder;
    int code = 0; ///< why it cannot be opened
    bool busy = false, stands = false;
};

Gate locked(const fs::path &path) {
    Gate gate{Descriptor(::open(path.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC))};
    if (!gate.folder.open()) {
        gate.code = errno;
        return gate;
    }
    gate.busy = ::flock(gate.folder.number(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
    // Another program that ended meanwhile may have taken the folder away that it had made.
    gate.stands = leads_to(path, gate.folder);
    return gate;
}

FileError written_by_another(const fs::path &folder) {
    return {folder.string(),
            "cannot write \"" + folder.string() +
                "\": another export is writing there; wait until it is done or choose another folder"};
}

std::vector<fs::path> hidden_folders(const fs::path &folder) {
    std::error_code ignored;
    std::vector<fs::path> found;
    for (fs::directory_iterator it(folder, ignored), end; !ignored && it != end; it.increment(ignored))
        if (looks_like_staging(*it)) found.push_back(it->path());
    return found;
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

void remove_if_free(const std::vector<fs::path> &made, const Descriptor *own) {
    for (auto it = made.rbegin(); it != made.rend(); ++it) {
        std::error_code ignored;
        if (!fs::is_empty(*it, ignored) || ignored) continue;
        if (own && leads_to(*it, *own)) {
            ::rmdir(it->c_str());
            continue;
        }
        const Gate gate = locked(*it);
        if (gate.folder.open() && !gate.busy && gate.stands) ::rmdir(it->c_str());
    }
}

/// One try at making the folder, locking it and making the hidden one. ENOENT where another program took a
/// folder away at that very moment.
std::optional<FileError> Staging::enter(const fs::path &folder) {
    if (const int code = make_folders(folder, made_)) return file_error(FileDeed::make_folder, folder, code);
    Gate gate = locked(folder);
    if (gate.busy) return written_by_another(folder);
    if (gate.code || !gate.stands) return file_error(FileDeed::write, folder, gate.code ? gate.code : ENOENT);
    std::vector<fs::path> others = hidden_folders(folder);
    std::string name = (folder / pattern).string();
    if (::mkdtemp(name.data()) == nullptr) return file_error(FileDeed::write, folder, errno);
    lock_ = std::move(gate.folder);
    left_behind_ = std::move(others);
    path_ = name;
    return {};
}

std::variant<Staging, FileError> Staging::make(const fs::path &folder) {
    Staging staging;
    auto error = staging.enter(folder);
    for (int i = 1; error && error->code == ENOENT && i < tries_at_folders; ++i)
        error = staging.enter(folder);
    if (!error) return staging;
    remove_if_free(staging.made_);
    return *error;
}

Staging::Staging(Staging &&other) noexcept
    : path_(std::exchange(other.path_, {})), made_(std::exchange(other.made_, {})),
      left_behind_(std::move(other.left_behind_)), lock_(std::move(other.lock_)) {}

Staging::~Staging() {
    if (path_.empty()) return;
    std::error_code ignored;
    fs::remove_all(path_, ignored);
    remove_if_free(made_, &lock_);
}

} // namespace roundlay
