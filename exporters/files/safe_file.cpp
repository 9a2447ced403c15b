#include "exporters/files/safe_file.h"

#include "exporters/files/descriptor.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <random>

namespace roundlay {

namespace fs = std::filesystem;

namespace {

constexpr mode_t default_rights = 0666; // the person's umask takes its part off

int write_directly(const fs::path &path, std::string_view bytes) {
    Descriptor file(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
    if (!file.open()) return errno;
    if (const int code = write_all(file, bytes)) return code;
    return file.close();
}

/// A new file beside the one that is meant. The mask takes its part off the rights as it does for any file:
/// asking for the mask would change it for every thread.
Descriptor make_aside(std::string &name, mode_t rights) {
    constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789";
    constexpr int tries = 100, length = 6;
    std::random_device chance;
    const std::string start = name;
    for (int i = 0; i < tries; ++i) {
        name = start;
        for (int k = 0; k < length; ++k)
            name += letters[chance() % letters.size()];
        Descriptor file(::open(name.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, rights));
        if (file.open() || errno != EEXIST) return file;
    }
    return Descriptor();
}

/// rights: those of the file that is replaced, where there is one.
int fill(Descriptor &file, std::string_view bytes, std::optional<mode_t> rights) {
    if (const int code = write_all(file, bytes)) return code;
    if (rights && ::fchmod(file.number(), *rights) != 0) return errno;
    if (::fsync(file.number()) != 0) return errno;
    return file.close();
}

/// A link, not a rename, is what refuses to replace; it then leaves two names for one file.
int put_in_place(const std::string &aside, const fs::path &path, IfThere there) {
    if (there == IfThere::replace) return ::rename(aside.c_str(), path.c_str()) == 0 ? 0 : errno;
    if (::link(aside.c_str(), path.c_str()) != 0) return errno;
    ::unlink(aside.c_str());
    return 0;
}

int write_aside(const fs::path &path, std::string_view bytes, std::optional<mode_t> rights, IfThere there) {
    std::string aside = ".roundlay-";
    if (path.has_parent_path()) aside = (path.parent_path() / aside).string();
    Descriptor file = make_aside(aside, rights.value_or(default_rights) & default_rights);
    if (!file.open()) return errno;
    int code = fill(file, bytes, rights);
    if (!code) code = put_in_place(aside, path, there);
    if (code) ::unlink(aside.c_str());
    return code;
}

/// Who took everybody's right to write away wants it kept, whoever asks; a folder that may be written would
/// let it be replaced all the same.
bool is_protected(const fs::path &path, const struct stat &found) {
    constexpr mode_t anybody_writes = 0222;
    return (found.st_mode & anybody_writes) == 0 || ::access(path.c_str(), W_OK) != 0;
}

} // namespace

std::optional<FileError> write_file(const fs::path &path, std::string_view bytes, IfThere there) {
    fs::path target = path;
    struct stat found = {};
    std::optional<mode_t> rights;
    int code = 0;
    if (::stat(path.c_str(), &found) == 0) {
        if (there == IfThere::refuse) return file_error(FileDeed::write, path, EEXIST);
        std::error_code unresolved;
        if (const fs::path real = fs::canonical(path, unresolved); !unresolved) target = real;
        rights = found.st_mode & 07777;
    }
    if (S_ISDIR(found.st_mode))
        code = EISDIR;
    else if (rights && is_protected(path, found))
        code = EACCES;
    else if (found.st_mode != 0 && !S_ISREG(found.st_mode))
        code = write_directly(path, bytes);
    else
        code = write_aside(target, bytes, rights, there);
    if (code) return file_error(FileDeed::write, path, code);
    return {};
}

std::variant<std::string, FileError> read_file(const fs::path &path, std::size_t limit) {
    Descriptor file(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.open()) return file_error(FileDeed::read, path, errno);
    std::string bytes, part(1 << 16, '\0');
    while (true) {
        const ssize_t n = ::read(file.number(), part.data(), part.size());
        if (n < 0 && errno == EINTR) continue;
        if (n < 0) return file_error(FileDeed::read, path, errno);
        if (n == 0) return bytes;
        bytes.append(part, 0, static_cast<std::size_t>(n));
        if (bytes.size() > limit)
            return FileError{path.string(), "cannot read \"" + path.string() + "\": it is larger than " +
                                                std::to_string(limit) + " bytes, the most that is read"};
    }
}

std::string safe_file_name(std::string_view text) {
    constexpr std::size_t longest = 100; // leaves room for an ending within the usual 255 bytes
    std::string name;
    for (const char c : text.substr(0, longest)) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                           c == '-' || c == '_' || c == '.';
        name += plain ? c : '-';
    }
    if (name.empty() || name.front() == '.') name.insert(name.begin(), '_');
    return name;
}

} // namespace roundlay
