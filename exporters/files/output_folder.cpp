#include "exporters/files/output_folder.h"

#include "exporters/files/replacement.h"
#include "exporters/files/safe_file.h"
#include "exporters/files/sha256.h"

#include <fcntl.h>

#include <algorithm>
#include <stdexcept>

namespace roundlay {

namespace fs = std::filesystem;

namespace {

constexpr mode_t default_rights = 0666; // the person's umask takes its part off
constexpr std::size_t largest_left = std::size_t{64} << 20;

void require_plain_relative(const fs::path &name) {
    bool plain = !name.empty() && name.is_relative();
    for (const fs::path &part : name)
        if (part == ".." || part == "." || part.empty()) plain = false;
    if (!plain) throw std::logic_error("an output's name must lie below its folder: " + name.string());
}

int write_new(const fs::path &path, std::string_view bytes) {
    Descriptor file(::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, default_rights));
    if (!file.open()) return errno;
    if (const int code = write_all(file, bytes)) return code;
    return file.close();
}

} // namespace

std::variant<OutputFolder, FileError> OutputFolder::open(const fs::path &folder) {
    auto staging = Staging::make(folder);
    if (auto *error = std::get_if<FileError>(&staging)) return std::move(*error);
    return OutputFolder(folder, std::get<Staging>(std::move(staging)));
}

std::optional<FileError> OutputFolder::add(std::string_view name, std::string_view bytes,
                                           std::string_view what) {
    const fs::path relative(name);
    require_plain_relative(relative);
    const auto same = [&](const OutputFile &f) { return f.name == name; };
    if (std::any_of(files_.begin(), files_.end(), same))
        throw std::logic_error("two outputs of one name: " + std::string(name));
    const fs::path staged = staging_.path() / "new" / relative;
    std::vector<fs::path> made;
    int code = make_folders(staged.parent_path(), made);
    if (!code) code = write_new(staged, bytes);
    if (code) return file_error(FileDeed::write, folder_ / relative, code);
    files_.push_back({std::string(name), std::string(what), maker_, bytes.size(), sha256_hex(bytes), {}});
    return {};
}

std::optional<FileError> OutputFolder::commit() {
    Replacement replacement;
    for (std::size_t i = 0; i < dropped_.size(); ++i) {
        const fs::path aside = staging_.path() / ("dropped-" + std::to_string(i));
        if (auto error = replacement.take_away(folder_ / dropped_[i], aside)) return error;
    }
    for (const OutputFile &file : files_) {
        const fs::path staged = staging_.path() / "new" / file.name;
        if (auto error = replacement.put(staged, folder_ / file.name)) return error;
    }
    replacement.keep();
    std::error_code ignored;
    for (const fs::path &dead : staging_.left_behind())
        fs::remove_all(dead, ignored); // what cannot be removed harms nobody
    return {};
}

std::vector<std::string> OutputFolder::left_behind(std::string_view name) const {
    std::vector<std::string> texts;
    for (const fs::path &dead : staging_.left_behind())
        if (auto bytes = read_file(dead / "new" / name, largest_left);
            std::holds_alternative<std::string>(bytes))
            texts.push_back(std::get<std::string>(std::move(bytes)));
    return texts;
}

} // namespace roundlay
