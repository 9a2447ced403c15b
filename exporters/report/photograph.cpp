#include "exporters/report/photograph.h"

#include "exporters/picture/picture.h"
#include "exporters/report/jpeg.h"

#include <algorithm>
#include <fstream>
#include <iterator>

namespace roundlay::sheets {

namespace {

constexpr std::uintmax_t most_jpeg = 40'000'000, most_png = 4'000'000; ///< bytes

std::uint32_t number_at(std::string_view bytes, std::size_t at, int count, bool low_first) {
    std::uint32_t value = 0;
    for (int i = 0; i < count; ++i) {
        const int k = low_first ? count - 1 - i : i;
        const std::size_t place = at + static_cast<std::size_t>(k);
        value = value << 8U | (place < bytes.size() ? static_cast<unsigned char>(bytes[place]) : 0U);
    }
    return value;
}

/// Of the table of tags that a camera writes.
int orientation_in(std::string_view exif) {
    constexpr std::uint32_t tag = 0x0112;
    const bool low_first = exif.starts_with("II");
    const std::size_t table = number_at(exif, 4, 4, low_first);
    const std::uint32_t count = number_at(exif, table, 2, low_first);
    for (std::uint32_t i = 0; i < count && table + 2 + 12 * (i + 1) <= exif.size(); ++i) {
        const std::size_t entry = table + 2 + std::size_t{12} * i;
        if (number_at(exif, entry, 2, low_first) != tag) continue;
        const int value = static_cast<int>(number_at(exif, entry + 8, 2, low_first));
        return value >= 1 && value <= 8 ? value : 1;
    }
    return 1;
}

/// Where the pixel that comes to lie at (x, y) stood.
std::pair<int, int> from(int orientation, int x, int y, int width, int height) {
    switch (orientation) {
    case 2:
        return {width - 1 - x, y};
    case 3:
        return {width - 1 - x, height - 1 - y};
    case 4:
        return {x, height - 1 - y};
    case 5:
        return {y, x};
    case 6:
        return {y, height - 1 - x};
    case 7:
        return {width - 1 - y, height - 1 - x};
    case 8:
        return {width - 1 - y, x};
    default:
        return {x, y};
    }
}

Picture turned(const Picture &picture, int orientation) {
    if (orientation == 1) return picture;
    const bool swaps = orientation >= 5;
    Picture out{swaps ? picture.height : picture.width, swaps ? picture.width : picture.height, {}};
    out.pixels.reserve(picture.pixels.size());
    for (int y = 0; y < out.height; ++y)
        for (int x = 0; x < out.width; ++x) {
            const auto [sx, sy] = from(orientation, x, y, picture.width, picture.height);
            const auto pixel = picture.pixels.begin() + 3 * (std::ptrdiff_t{sy} * picture.width + sx);
            out.pixels.insert(out.pixels.end(), pixel, pixel + 3);
        }
    return out;
}

/// The wood of a log needs no more pixels than a page prints.
Picture halved(const Picture &picture) {
    Picture out{picture.width / 2, picture.height / 2, {}};
    for (int y = 0; y < out.height; ++y)
        for (int x = 0; x < out.width; ++x)
            for (int c = 0; c < 3; ++c) {
                int sum = 0;
                for (const auto &[dx, dy] : {std::pair{0, 0}, {1, 0}, {0, 1}, {1, 1}})
                    sum += picture.pixels[static_cast<std::size_t>(
                        3 * (std::ptrdiff_t{2 * y + dy} * picture.width + 2 * x + dx) + c)];
                out.pixels.push_back(static_cast<std::uint8_t>(sum / 4));
            }
    return out;
}

std::variant<Photograph, Said> from_jpeg(const std::string &bytes) {
    constexpr int most_pixels = 1000;
    auto picture = decoded_jpeg(bytes, most_pixels);
    if (!picture) return said("it is damaged");
    while (std::max(picture->width, picture->height) > most_pixels)
        picture = halved(*picture);
    const Picture upright = turned(*picture, orientation_of(bytes));
    return Photograph{write_png(upright), static_cast<double>(upright.width),
                      static_cast<double>(upright.height)};
}

std::variant<Photograph, Said> from_png(std::string bytes) {
    constexpr std::size_t width_at = 16, height_at = 20;
    const double width = number_at(bytes, width_at, 4, false), height = number_at(bytes, height_at, 4, false);
    if (width < 1 || height < 1) return said("it is damaged");
    return Photograph{std::move(bytes), width, height};
}

} // namespace

int orientation_of(std::string_view jpeg) {
    constexpr std::uint32_t begin = 0xFFD8, exif = 0xFFE1, scan = 0xFFDA;
    if (number_at(jpeg, 0, 2, false) != begin) return 1;
    for (std::size_t at = 2; at + 4 <= jpeg.size();) {
        const std::uint32_t marker = number_at(jpeg, at, 2, false),
                            length = number_at(jpeg, at + 2, 2, false);
        if (marker == scan || marker < 0xFF00 || length < 2) return 1;
        const std::string_view part = jpeg.substr(at + 4, length - 2);
        if (marker == exif && part.starts_with(std::string_view("Exif\0\0", 6)))
            return orientation_in(part.substr(6));
        at += 2 + length;
    }
    return 1;
}

std::variant<Photograph, Said> read_photograph(const std::filesystem::path &folder, const std::string &name) {
    const std::filesystem::path path = folder / name;
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) return said("there is no such file");
    const std::uintmax_t size = std::filesystem::file_size(path, error);
    if (error || size > most_jpeg) return said("it is larger than 40 MB: save it smaller");
    std::ifstream in(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(in), {}};
    if (bytes.starts_with("\xFF\xD8")) return from_jpeg(bytes);
    if (!bytes.starts_with("\x89PNG\r\n")) return said("it is neither JPEG nor PNG: save it as JPEG");
    if (bytes.size() > most_png) return said("it is a PNG larger than 4 MB: save it as JPEG");
    return from_png(std::move(bytes));
}

} // namespace roundlay::sheets
