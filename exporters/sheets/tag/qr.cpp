#include "exporters/sheets/tag/qr.h"

#include <qrencode.h>

#include <memory>

namespace roundlay::sheets {
namespace {

constexpr int quiet = 4; ///< modules

struct Free {
    void operator()(QRcode *code) const { QRcode_free(code); }
};

} // namespace

std::optional<Fill> qr_code(const std::string &words, const Rect &box) {
    const std::unique_ptr<QRcode, Free> code(QRcode_encodeString8bit(words.c_str(), 0, QR_ECLEVEL_Q));
    if (!code) return std::nullopt;
    const int n = code->width;
    const double module = box.width() / (n + 2 * quiet);
    Fill fill{{}, 0};
    for (int row = 0; row < n; ++row)
        for (int column = 0; column < n;) {
            int end = column;
            while (end < n && (code->data[row * n + end] & 1) != 0)
                ++end;
            if (end > column) { // dark modules side by side as one area, so that no seam shows between them
                const double x0 = box.x0 + (quiet + column) * module, x1 = box.x0 + (quiet + end) * module;
                const double y1 = box.y1 - (quiet + row) * module, y0 = y1 - module;
                fill.rings.push_back({{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}});
            }
            column = end + 1;
        }
    return fill;
}

} // namespace roundlay::sheets
