#include "kernel/xlsx/packed_parts.h"

#include <zip.h>

namespace roundlay {

namespace {

constexpr std::size_t most_unpacked = std::size_t{64} << 20;

struct Close {
    void operator()(zip_file_t *file) const { zip_fclose(file); }
};

} // namespace

void PackedParts::Discard::operator()(zip *archive) const {
    zip_discard(archive);
}

PackedParts::PackedParts(std::string_view bytes) : left_(most_unpacked) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t *source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    if (source != nullptr) {
        archive_.reset(zip_open_from_source(source, ZIP_RDONLY, &error));
        if (!archive_) zip_source_free(source);
    }
    zip_error_fini(&error);
}

bool PackedParts::has(const std::string &name) const {
    return archive_ && zip_name_locate(archive_.get(), name.c_str(), ZIP_FL_NOCASE) >= 0;
}

std::optional<std::string> PackedParts::part(const std::string &name) {
    if (!archive_) return {};
    const std::unique_ptr<zip_file_t, Close> file(zip_fopen(archive_.get(), name.c_str(), ZIP_FL_NOCASE));
    if (!file) return {};
    std::string all;
    char some[16384];
    for (;;) {
        const zip_int64_t read = zip_fread(file.get(), some, sizeof some);
        if (read < 0) return {};
        if (read == 0) return all;
        if (static_cast<std::size_t>(read) > left_) return too_large_ = true, std::nullopt;
        left_ -= static_cast<std::size_t>(read);
        all.append(some, static_cast<std::size_t>(read));
    }
}

} // namespace roundlay
