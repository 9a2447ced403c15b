#include "exporters/sheets/drawing/font.h"

#include <stdexcept>

// The linker lays the font files into the program as they are. An array in C++ source would take the
// compiler a minute for the same bytes.
#define ROUNDLAY_CARRY(symbol, path)                                                                         \
    __asm__(".section .rodata\n"                                                                             \
            ".balign 16\n"                                                                                   \
            ".global " symbol "\n" symbol ":\n"                                                              \
            ".incbin \"" path "\"\n"                                                                         \
            ".global " symbol "_end\n" symbol "_end:\n"                                                      \
            ".byte 0\n"                                                                                      \
            ".previous\n")

ROUNDLAY_CARRY("roundlay_font_regular", ROUNDLAY_FONT_REGULAR);
ROUNDLAY_CARRY("roundlay_font_bold", ROUNDLAY_FONT_BOLD);

extern "C" {
extern const unsigned char roundlay_font_regular[];
extern const unsigned char roundlay_font_regular_end[];
extern const unsigned char roundlay_font_bold[];
extern const unsigned char roundlay_font_bold_end[];
}

namespace roundlay::sheets {

std::span<const unsigned char> font_file(Font font) {
    switch (font) {
    case Font::regular:
        return {roundlay_font_regular, roundlay_font_regular_end};
    case Font::bold:
        return {roundlay_font_bold, roundlay_font_bold_end};
    }
    throw std::logic_error("no such font");
}

} // namespace roundlay::sheets
