#include "exporters/page/parts.h"

// The linker lays the files into the program as they are.
#define ROUNDLAY_CARRY(symbol, path)                                                                         \
    __asm__(".section .rodata\n"                                                                             \
            ".global " symbol "\n" symbol ":\n"                                                              \
            ".incbin \"" path "\"\n"                                                                         \
            ".global " symbol "_end\n" symbol "_end:\n"                                                      \
            ".byte 0\n"                                                                                      \
            ".previous\n")

ROUNDLAY_CARRY("roundlay_page_style", ROUNDLAY_PAGE_STYLE);
ROUNDLAY_CARRY("roundlay_page_script", ROUNDLAY_PAGE_SCRIPT);

extern "C" {
extern const char roundlay_page_style[];
extern const char roundlay_page_style_end[];
extern const char roundlay_page_script[];
extern const char roundlay_page_script_end[];
}

namespace roundlay {

PageParts page_parts() {
    return {{roundlay_page_style, roundlay_page_style_end}, {roundlay_page_script, roundlay_page_script_end}};
}

} // namespace roundlay
