#include "tests/sheets/support/run.h"

#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>
#include <stdexcept>

namespace roundlay::test {
namespace {

std::string with_path(std::string command, const std::string &path) {
    for (std::size_t at = 0; (at = command.find('%', at)) != std::string::npos; at += path.size())
        command.replace(at, 1, path);
    return command;
}

std::string written(const std::string &input, const std::string &suffix) {
    const auto path =
        std::filesystem::temp_directory_path() / ("roundlay-sheets-" + std::to_string(getpid()) + suffix);
    std::ofstream file(path, std::ios::binary);
    file << input;
    file.close();
    if (!file) throw std::runtime_error("cannot write " + path.string());
    return path.string();
}

} // namespace

Ran run_on(const std::string &input, const std::string &command, const std::string &suffix) {
    const std::string path = written(input, suffix);
    FILE *pipe = popen((with_path(command, path) + " 2>&1").c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("cannot run " + command);
    Ran ran;
    std::array<char, 4096> room{};
    for (std::size_t got = 0; (got = fread(room.data(), 1, room.size(), pipe)) > 0;)
        ran.out.append(room.data(), got);
    const int status = pclose(pipe);
    ran.code = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    if (std::getenv("ROUNDLAY_KEEP") == nullptr) std::filesystem::remove(path);
    return ran;
}

bool GreyImage::dark(int x, int y) const {
    return static_cast<unsigned char>(pixels.at(
               static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x))) <
           128;
}

GreyImage page_image(const std::string &pdf, int page, int dots_per_inch) {
    const std::string p = std::to_string(page);
    const Ran ran =
        run_on(pdf, "pdftoppm -gray -r " + std::to_string(dots_per_inch) + " -f " + p + " -l " + p + " %");
    GreyImage image;
    int taken = 0, most = 0;
    if (std::sscanf(ran.out.c_str(), "P5 %d %d %d%n", &image.width, &image.height, &most, &taken) != 3 ||
        most != 255)
        throw std::runtime_error("pdftoppm: " + ran.out.substr(0, 200));
    image.pixels = ran.out.substr(static_cast<std::size_t>(taken) + 1);
    return image;
}

} // namespace roundlay::test
