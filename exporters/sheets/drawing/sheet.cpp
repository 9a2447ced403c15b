#include "exporters/sheets/drawing/sheet.h"

#include <charconv>
#include <chrono>
#include <cstdlib>
#include <string_view>

namespace roundlay::sheets {

std::int64_t book_time() {
    if (const char *stated = std::getenv("SOURCE_DATE_EPOCH")) {
        const std::string_view text(stated);
        std::int64_t seconds = 0;
        const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
        if (error == std::errc() && end == text.data() + text.size()) return seconds;
    }
    using namespace std::chrono;
    return duration_cast<seconds>(system_clock::now().time_since_epoch()).count();
}

} // namespace roundlay::sheets
