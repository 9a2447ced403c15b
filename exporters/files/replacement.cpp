#include "exporters/files/replacement.h"

#include "exporters/files/staging.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>

namespace roundlay {

namespace fs = std::filesystem;

namespace {

int rename_with(const fs::path &from, const fs::path &to, unsigned how) {
    return ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), how) == 0 ? 0 : errno;
}

/// Not every file system can exchange or refuse to replace in one step (network and old formats cannot).
bool not_supported(int code) {
    return code == EINVAL || code == ENOSYS || code == ENOTSUP;
}

int plain_rename(const fs::path &from, const fs::path &to) {
    return ::rename(from.c_str(), to.c_str()) == 0 ? 0 : errno;
}

/// Two steps where one is not to be had: the old file steps aside first.
int exchange(const fs::path &a, const fs::path &b) {
    const int code = rename_with(a, b, RENAME_EXCHANGE);
    if (!not_supported(code)) return code;
    fs::path aside = a;
    aside += ".old";
    if (const int moved = plain_rename(b, aside)) return moved;
    if (const int moved = plain_rename(a, b)) {
        plain_rename(aside, b);
        return moved;
    }
    return plain_rename(aside, a);
}

int move_new(const fs::path &from, const fs::path &to) {
    const int code = rename_with(from, to, RENAME_NOREPLACE);
    return not_supported(code) ? plain_rename(from, to) : code;
}

} // namespace

Replacement::~Replacement() {
    for (auto step = done_.rbegin(); step != done_.rend(); ++step) {
        if (step->exchanged)
            exchange(step->staged, step->target);
        else
            move_new(step->target, step->staged);
    }
    remove_if_free(made_);
}

std::optional<FileError> Replacement::put(const fs::path &staged, const fs::path &target) {
    auto error = put_once(staged, target);
    for (int i = 1; error && error->code == ENOENT && i < tries_at_folders; ++i)
        error = put_once(staged, target);
    return error;
}

std::optional<FileError> Replacement::put_once(const fs::path &staged, const fs::path &target) {
    if (const int code = make_folders(target.parent_path(), made_))
        return file_error(FileDeed::make_folder, target.parent_path(), code);
    struct stat found = {};
    const bool there = ::lstat(target.c_str(), &found) == 0;
    if (there && S_ISDIR(found.st_mode)) return file_error(FileDeed::replace, target, EISDIR);
    if (const int code = there ? exchange(staged, target) : move_new(staged, target))
        return file_error(there ? FileDeed::replace : FileDeed::write, target, code);
    done_.push_back({staged, target, there});
    return {};
}

std::optional<FileError> Replacement::take_away(const fs::path &target, const fs::path &aside) {
    const int code = move_new(target, aside);
    if (code == ENOENT || code == ENOTDIR) return {};
    if (code) return file_error(FileDeed::remove, target, code);
    done_.push_back({target, aside, false});
    return {};
}

} // namespace roundlay
