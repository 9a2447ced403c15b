#include "exporters/sheets/drawing/line.h"

#include <stdexcept>

namespace roundlay::sheets {
namespace {

// ISO 128-2 (from memory) gives dashes as multiples of the line width: dash 12 d, long dash 24 d, gap 3 d,
// dot 0.5 d.
constexpr double narrow = 0.25;
constexpr double middle = 0.35;
constexpr double wide = 0.5;
constexpr double widest = 0.7;

constexpr double gap = 3 * narrow;
constexpr double dot = 0.5 * narrow;
constexpr double hidden_dashes[] = {12 * narrow, gap};
constexpr double centre_dashes[] = {24 * narrow, gap, dot, gap};
constexpr double blank_dashes[] = {24 * narrow, gap, dot, gap, dot, gap};

} // namespace

LineStyle style_of(Line line) {
    switch (line) {
    case Line::visible:
        return {wide, {}, false};
    case Line::hidden:
        return {narrow, hidden_dashes, true};
    case Line::dimension:
        return {narrow, {}, true};
    case Line::centre:
        return {narrow, centre_dashes, true};
    case Line::blank:
        return {narrow, blank_dashes, true};
    case Line::cut_off:
        return {narrow, {}, false};
    case Line::frame:
        return {widest, {}, false};
    case Line::strong:
        return {middle, {}, false};
    }
    throw std::logic_error("no such kind of line");
}

const char *name_of(Line line) {
    switch (line) {
    case Line::visible:
        return "visible";
    case Line::hidden:
        return "hidden";
    case Line::dimension:
        return "dimension";
    case Line::centre:
        return "centre";
    case Line::blank:
        return "blank";
    case Line::cut_off:
        return "cut-off";
    case Line::frame:
        return "frame";
    case Line::strong:
        return "strong";
    }
    throw std::logic_error("no such kind of line");
}

} // namespace roundlay::sheets
