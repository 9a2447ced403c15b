#include "exporters/files/markup.h"

namespace roundlay {

std::string in_markup(std::string_view words) {
    std::string out;
    for (const char sign : words)
        switch (sign) {
        case '&':
            out += "&amp;";
            break;
        case '<':
            out += "&lt;";
            break;
        case '>':
            out += "&gt;";
            break;
        case '"':
            out += "&quot;";
            break;
        case '\'':
            out += "&#39;";
            break;
        default:
            out += sign;
        }
    return out;
}

} // namespace roundlay
