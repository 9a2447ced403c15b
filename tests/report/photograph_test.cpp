// Photographs as cameras write them, and files that are none.
#include "exporters/report/photograph.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/temporary_folder.h"

#include <fstream>
#include <iterator>
#include <random>

using namespace roundlay;
using namespace roundlay::sheets;

namespace {

const std::filesystem::path photos = std::string(ROUNDLAY_ROOT) + "/models-demo/old-house";

std::string bytes_of(const std::filesystem::path &path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// The JPEG as a camera writes it that was held so: the tag stands in front of what is there.
std::string held(const std::string &jpeg, int orientation) {
    std::string exif = "Exif";
    exif.append(2, '\0');
    exif += std::string("II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0", 18);
    exif += static_cast<char>(orientation);
    exif.append(7, '\0');
    std::string part = "\xFF\xE1";
    const std::size_t length = exif.size() + 2;
    part += static_cast<char>(length >> 8U);
    part += static_cast<char>(length & 0xFFU);
    return jpeg.substr(0, 2) + part + exif + jpeg.substr(2);
}

std::string why_not(const std::variant<Photograph, Said> &read) {
    const auto *why = std::get_if<Said>(&read);
    return why ? test::english(*why) : "";
}

} // namespace

TEST_CASE("A JPEG is shown upright, however its camera was held") {
    const test::TemporaryFolder folder;
    const std::string jpeg = bytes_of(photos / "south-west-corner.jpg");
    CHECK(orientation_of(jpeg) == 1);
    for (int orientation = 1; orientation <= 8; ++orientation) {
        INFO(orientation);
        const std::string turned = held(jpeg, orientation);
        CHECK(orientation_of(turned) == orientation);
        std::ofstream(folder / "a.jpg", std::ios::binary) << turned;
        const auto read = read_photograph(folder.path(), "a.jpg");
        REQUIRE(std::holds_alternative<Photograph>(read));
        const auto &photo = std::get<Photograph>(read);
        CHECK(photo.width == (orientation >= 5 ? 480 : 640));
        CHECK(photo.height == (orientation >= 5 ? 640 : 480));
        CHECK(photo.png.starts_with("\x89PNG"));
    }
}

TEST_CASE("A photograph that cannot be shown is told with a reason") {
    const test::TemporaryFolder folder;
    std::ofstream(folder / "notes.txt") << "no picture";
    std::ofstream(folder / "cut.jpg", std::ios::binary) << bytes_of(photos / "barn-1.png").substr(0, 20);
    std::ofstream(folder / "empty.jpg");
    CHECK(why_not(read_photograph(folder.path(), "gone.jpg")) == "there is no such file");
    CHECK(why_not(read_photograph(folder.path(), ".")) == "there is no such file");
    CHECK(why_not(read_photograph(folder.path(), "notes.txt")) ==
          "it is neither JPEG nor PNG: save it as JPEG");
    CHECK(why_not(read_photograph(folder.path(), "cut.jpg")) == "it is damaged");
    CHECK(why_not(read_photograph(folder.path(), "empty.jpg")) != "");
    CHECK(why_not(read_photograph(photos, "barn-1.png")) == "");
}

TEST_CASE("No damage to a JPEG ends the program") {
    const test::TemporaryFolder folder;
    const std::string jpeg = bytes_of(photos / "east-wall-sawn-logs.jpg");
    std::mt19937 random(3);
    int shown = 0;
    for (int i = 0; i < 300; ++i) {
        std::string bytes = held(jpeg, 1 + i % 8);
        for (int k = 0; k < 1 + i % 7; ++k)
            bytes[random() % (i % 2 ? 600 : bytes.size())] = static_cast<char>(random());
        if (i % 5 == 0) bytes.resize(random() % bytes.size());
        std::ofstream(folder / "a.jpg", std::ios::binary) << bytes;
        shown += std::holds_alternative<Photograph>(read_photograph(folder.path(), "a.jpg")) ? 1 : 0;
    }
    CHECK(shown < 300);
}
