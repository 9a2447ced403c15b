#include "exporters/report/jpeg.h"

#include <jpeglib.h>

#include <algorithm>
#include <csetjmp>
#include <cstdio>

namespace roundlay::sheets {

namespace {

/// The library leaves by a jump, over nothing that must be destroyed.
struct Failure {
    jpeg_error_mgr manager;
    std::jmp_buf back;
};

void leave(j_common_ptr state) {
    std::longjmp(reinterpret_cast<Failure *>(state->err)->back, 1);
}
void say_nothing(j_common_ptr) {}

/// Where the pixels go, and what was found; no constructor or destructor is passed by a jump.
struct Wanted {
    std::string_view bytes;
    int pixels;
    Picture *out;
};

void begin(jpeg_decompress_struct &state, const Wanted &wanted) {
    jpeg_mem_src(&state, reinterpret_cast<const unsigned char *>(wanted.bytes.data()),
                 static_cast<unsigned long>(wanted.bytes.size()));
    jpeg_read_header(&state, TRUE);
    state.out_color_space = JCS_RGB;
    constexpr unsigned full = 8;
    state.scale_num = full, state.scale_denom = full;
    const auto longer = static_cast<int>(std::max(state.image_width, state.image_height));
    while (state.scale_num > 1 && longer * static_cast<int>(state.scale_num) / 16 >= wanted.pixels)
        state.scale_num /= 2;
    jpeg_start_decompress(&state);
}

bool is_too_large(const jpeg_decompress_struct &state) {
    constexpr double most = 1e8;
    return double(state.image_width) * state.image_height > most;
}

bool decode(const Wanted &wanted) {
    jpeg_decompress_struct state{};
    Failure failure{};
    state.err = jpeg_std_error(&failure.manager);
    failure.manager.error_exit = leave;
    failure.manager.output_message = say_nothing;
    if (setjmp(failure.back) != 0) {
        jpeg_destroy_decompress(&state);
        return false;
    }
    jpeg_create_decompress(&state);
    begin(state, wanted);
    const bool good = !is_too_large(state) && state.output_components == 3;
    if (good) {
        Picture &out = *wanted.out;
        out.width = static_cast<int>(state.output_width), out.height = static_cast<int>(state.output_height);
        out.pixels.resize(std::size_t{3} * state.output_width * state.output_height);
        while (state.output_scanline < state.output_height) {
            JSAMPROW row = out.pixels.data() + std::size_t{3} * state.output_width * state.output_scanline;
            jpeg_read_scanlines(&state, &row, 1);
        }
        jpeg_finish_decompress(&state);
    }
    jpeg_destroy_decompress(&state);
    return good;
}

} // namespace

std::optional<Picture> decoded_jpeg(std::string_view bytes, int wanted) {
    Picture out;
    if (!decode({bytes, wanted, &out})) return {};
    return out;
}

} // namespace roundlay::sheets
