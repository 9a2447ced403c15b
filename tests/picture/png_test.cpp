// Decoded by libpng's simple reader, which shares no code of ours with the writer.
#include "exporters/picture/picture.h"
#include "tests/support/catch.h"

#include <png.h>

using namespace roundlay;

namespace {

Picture decoded(const std::string &bytes) {
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    REQUIRE(png_image_begin_read_from_memory(&image, bytes.data(), bytes.size()) != 0);
    image.format = PNG_FORMAT_RGB;
    Picture picture{static_cast<int>(image.width), static_cast<int>(image.height), {}};
    picture.pixels.resize(PNG_IMAGE_SIZE(image));
    REQUIRE(png_image_finish_read(&image, nullptr, picture.pixels.data(), 0, nullptr) != 0);
    return picture;
}

Picture pattern(int width, int height) {
    Picture picture{width, height, {}};
    for (int i = 0; i < 3 * width * height; ++i)
        picture.pixels.push_back(static_cast<std::uint8_t>(i * 7 + i / 11));
    return picture;
}

} // namespace

TEST_CASE("A written PNG decodes to the same pixels") {
    for (const auto &[width, height] : {std::pair{1, 1}, std::pair{7, 3}, std::pair{640, 401}}) {
        const Picture picture = pattern(width, height);
        const Picture read = decoded(write_png(picture));
        CHECK(read.width == width);
        CHECK(read.height == height);
        CHECK((read.pixels == picture.pixels));
    }
}

TEST_CASE("A PNG holds no time and says only which program wrote it, so its bytes repeat") {
    const std::string bytes = write_png(pattern(50, 40));
    CHECK((bytes == write_png(pattern(50, 40))));
    CHECK(is_own_png(bytes));
    CHECK_FALSE(is_own_png(bytes.substr(0, 30)));
    CHECK_FALSE(is_own_png("roundlay = 1"));
    for (const char *chunk : {"tIME", "zTXt", "iTXt"})
        CHECK(bytes.find(chunk) == std::string::npos);
    CHECK(bytes.find("sRGB") != std::string::npos);
}

TEST_CASE("Pictures without the right number of pixels are refused") {
    CHECK_THROWS_AS(write_png({}), std::invalid_argument);
    CHECK_THROWS_AS(write_png({10, 10, std::vector<std::uint8_t>(299)}), std::invalid_argument);
    CHECK_THROWS_AS(write_png({-1, -1, std::vector<std::uint8_t>(3)}), std::invalid_argument);
}
