#include "exporters/files/file_error.h"

#include <cerrno>
#include <system_error>

namespace roundlay {

namespace {

const char *words(FileDeed deed) {
    switch (deed) {
    case FileDeed::write:
        return "cannot write ";
    case FileDeed::make_folder:
        return "cannot make the folder ";
    case FileDeed::read:
        return "cannot read ";
    case FileDeed::replace:
        return "cannot replace ";
    case FileDeed::remove:
        return "cannot remove ";
    }
    return "cannot use ";
}

/// Cause and remedy for the codes a person meets; the system's own words for the rest.
std::string cause(int code) {
    switch (code) {
    case ENOSPC:
    case EDQUOT:
        return "no space is left on the disk; free some or choose another folder";
    case EACCES:
    case EPERM:
        return "you may not write there; choose a folder of your own or change its rights";
    case EROFS:
        return "the disk is read-only; choose a folder on another one";
    case ENOTDIR:
        return "part of the path is a file, not a folder; rename that file or choose another path";
    case EEXIST:
        return "a file of that name stands in the way; rename it or choose another path";
    case EISDIR:
        return "a folder of that name stands in the way; rename it or choose another path";
    case ENOENT:
        return "there is no such file or folder; check the path";
    case ENAMETOOLONG:
        return "the name is too long; choose a shorter one";
    case EFBIG:
        return "the file would be larger than is allowed here; choose another disk or raise the limit";
    case EXDEV:
        return "part of the folder lies on another disk; choose a folder that lies on one";
    default:
        return std::generic_category().message(code);
    }
}

} // namespace

FileError file_error(FileDeed deed, const std::filesystem::path &path, int code) {
    return {path.string(), words(deed) + ("\"" + path.string() + "\": ") + cause(code), code};
}

} // namespace roundlay
