#include "exporters/picture/picture.h"

#include <png.h>

#include <stdexcept>

namespace roundlay {
namespace {

constexpr std::string_view png_software = "roundlay";

void append(png_structp png, png_bytep data, png_size_t size) {
    static_cast<std::string *>(png_get_io_ptr(png))->append(reinterpret_cast<const char *>(data), size);
}

/// libpng leaves by this when something is wrong; it must not return.
[[noreturn]] void refuse(png_structp, png_const_charp message) {
    throw std::runtime_error(std::string("write_png: ") + message);
}

void ignore(png_structp, png_const_charp) {}

class Writer {
  public:
    Writer() : png_(png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, refuse, ignore)) {
        if (png_ == nullptr) throw std::runtime_error("write_png: libpng does not start");
        info_ = png_create_info_struct(png_);
    }
    ~Writer() { png_destroy_write_struct(&png_, &info_); }
    Writer(const Writer &) = delete;
    Writer &operator=(const Writer &) = delete;

    std::string write(const Picture &picture) {
        std::string bytes;
        png_set_write_fn(png_, &bytes, append, nullptr);
        png_set_IHDR(png_, info_, static_cast<png_uint_32>(picture.width),
                     static_cast<png_uint_32>(picture.height), 8, PNG_COLOR_TYPE_RGB, PNG_INTERLACE_NONE,
                     PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
        png_set_sRGB(png_, info_, PNG_sRGB_INTENT_PERCEPTUAL);
        sign();
        png_write_info(png_, info_);
        const std::size_t row = std::size_t{3} * picture.width;
        for (int y = 0; y < picture.height; ++y)
            png_write_row(png_, picture.pixels.data() + row * y);
        png_write_end(png_, nullptr);
        return bytes;
    }

  private:
    /// "Software" is a keyword of the PNG specification, 11.3.4.2.
    void sign() {
        std::string key = "Software", program(png_software);
        png_text text = {};
        text.compression = PNG_TEXT_COMPRESSION_NONE;
        text.key = key.data();
        text.text = program.data();
        png_set_text(png_, info_, &text, 1);
    }

    png_structp png_ = nullptr;
    png_infop info_ = nullptr;
};

} // namespace

bool is_own_png(std::string_view bytes) {
    constexpr std::size_t header = 200;
    const std::string mark = std::string("tEXtSoftware") + '\0' + std::string(png_software);
    return bytes.starts_with("\x89PNG") && bytes.substr(0, header).find(mark) != std::string_view::npos;
}

std::string write_png(const Picture &picture) {
    if (picture.width < 1 || picture.height < 1 ||
        picture.pixels.size() != std::size_t{3} * picture.width * picture.height)
        throw std::invalid_argument("write_png: the picture has no pixels or a wrong number of them");
    return Writer().write(picture);
}

} // namespace roundlay
