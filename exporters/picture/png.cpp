#include "exporters/picture/picture.h"

#include <png.h>

#include <stdexcept>

namespace roundlay {
namespace {

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
        png_write_info(png_, info_);
        const std::size_t row = std::size_t{3} * picture.width;
        for (int y = 0; y < picture.height; ++y)
            png_write_row(png_, picture.pixels.data() + row * y);
        png_write_end(png_, nullptr);
        return bytes;
    }

  private:
    png_structp png_ = nullptr;
    png_infop info_ = nullptr;
};

} // namespace

std::string write_png(const Picture &picture) {
    if (picture.width < 1 || picture.height < 1 ||
        picture.pixels.size() != std::size_t{3} * picture.width * picture.height)
        throw std::invalid_argument("write_png: the picture has no pixels or a wrong number of them");
    return Writer().write(picture);
}

} // namespace roundlay
