#include "exporters/sheets/dxf/groups.h"

#include "exporters/sheets/drawing/font.h"
#include "exporters/sheets/drawing/number.h"

#include <array>
#include <cstdio>

namespace roundlay::sheets::dxf {
namespace {

constexpr char32_t last_ascii = 0x7E, last_plane_0 = 0xFFFF;

std::string hexadecimal(unsigned value, const char *format) {
    std::array<char, 24> room{};
    std::snprintf(room.data(), room.size(), format, value);
    return room.data();
}

} // namespace

void Groups::code(int code) {
    const std::string digits = std::to_string(code);
    out_ += std::string(digits.size() < 3 ? 3 - digits.size() : 0, ' ') + digits + "\n";
}

void Groups::text(int c, std::string_view value) {
    code(c);
    out_ += value;
    out_ += "\n";
}

void Groups::number(int c, int value) {
    text(c, std::to_string(value));
}
void Groups::handle(int c, unsigned value) {
    text(c, hexadecimal(value, "%X"));
}

void Groups::real(int c, double value) {
    std::string digits = number_text(value, 6);
    if (digits.find('.') == std::string::npos) digits += ".0";
    text(c, digits);
}

void Groups::point(int c, double x, double y) {
    real(c, x);
    real(c + 10, y);
    real(c + 20, 0);
}

std::string value_text(std::string_view words) {
    std::string out;
    bool percent = false;
    for (const Letter &letter : letters_of(words)) {
        if (letter.code == U'%' && percent) {
            out += "%%%"; // drawn as one
            percent = false;
            continue;
        }
        percent = letter.code == U'%';
        if (letter.code <= last_ascii)
            out += letter.bytes;
        else
            out += letter.code <= last_plane_0 ? hexadecimal(static_cast<unsigned>(letter.code), "\\U+%04X")
                                               : "?";
    }
    return out;
}

std::string layer_text(std::string_view name) {
    std::string out(name);
    for (char &c : out) {
        const bool fine = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
                          c == '-' || c == '_';
        if (!fine) c = '_';
    }
    return out.empty() ? "0" : out;
}

} // namespace roundlay::sheets::dxf
