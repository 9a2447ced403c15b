#include "exporters/sheets/elevation/wall_openings.h"

#include "exporters/sheets/drawing/text.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double line_pitch = 1.6; ///< of its lettering

/// The size is what a person needs at the wall; in two lines where the hole is narrow.
std::vector<std::string> lines_of(const Opening &opening, const Words &words, double room, double lettering) {
    std::vector<std::string> lines;
    if (!opening.name.empty()) lines = wrapped(opening.name, room, lettering);
    const std::string wide = words.length(opening.width.mm()) + " \u00D7",
                      high = words.length(opening.height.mm());
    if (text_width(wide + " " + high, lettering) <= room)
        lines.push_back(wide + " " + high);
    else
        lines.insert(lines.end(), {wide, high});
    return lines;
}

std::vector<Text> texts_below(double top, double middle, const std::vector<std::string> &lines,
                              double lettering) {
    std::vector<Text> texts;
    for (const std::string &line : lines) {
        Text text;
        text.words = line;
        text.height = lettering;
        text.across = Across::middle;
        text.upright = Upright::middle;
        text.at = {middle, top - (static_cast<double>(texts.size()) + 0.5) * lettering * line_pitch};
        texts.push_back(text);
    }
    return texts;
}

} // namespace

WallOpenings::WallOpenings(const Shell &shell, const std::string &wall, AlongPaper along, const Words &words)
    : along_(along), scale_(std::abs(along.scale)), words_(words) {
    for (const Opening &opening : shell.openings)
        if (opening.wall == wall) all_.push_back(&opening);
}

Rect WallOpenings::paper_of(const Opening &opening) const {
    const double a = along_(opening.from_left.mm()), b = along_((opening.from_left + opening.width).mm());
    return {std::min(a, b), opening.sill.mm() * scale_, std::max(a, b),
            (opening.sill + opening.height).mm() * scale_};
}

bool WallOpenings::meet(const Rect &box) const {
    return std::any_of(all_.begin(), all_.end(),
                       [&](const Opening *o) { return paper_of(*o).overlaps(box); });
}

bool WallOpenings::hold(const Rect &box) const {
    return std::any_of(all_.begin(), all_.end(), [&](const Opening *o) { return paper_of(*o).holds(box); });
}

bool WallOpenings::is_by_a_size(const Rect &box) const {
    constexpr double apart = 2.6;
    return std::any_of(sizes_.begin(), sizes_.end(), [&](const Rect &size) {
        return Rect{size.x0 - apart, size.y0, size.x1 + apart, size.y1}.overlaps(box);
    });
}

std::vector<std::string> WallOpenings::add_names(Board &board, double lettering) {
    std::vector<std::string> without;
    for (const Opening *opening : all_) {
        const Rect hole = paper_of(*opening);
        if (!put_lines(board, hole, lines_of(*opening, words_, hole.width() - 2, lettering), lettering))
            without.push_back(in_a_list(*opening));
    }
    return without;
}

/// From the middle down to where nothing lies yet.
bool WallOpenings::put_lines(Board &board, const Rect &hole, const std::vector<std::string> &lines,
                             double lettering) {
    const double pitch = lettering * line_pitch, tall = pitch * static_cast<double>(lines.size());
    for (double top = hole.centre().y + tall / 2; top > hole.y0 + tall; top -= pitch) {
        const std::vector<Text> texts = texts_below(top, hole.centre().x, lines, lettering);
        if (!std::all_of(texts.begin(), texts.end(), [&](const Text &text) {
                return hole.holds(box_of(text)) && board.is_free(box_of(text).grown(0.3), true);
            }))
            continue;
        for (const Text &text : texts) {
            sizes_.push_back(box_of(text));
            board.add(text);
        }
        return true;
    }
    return false;
}

std::string WallOpenings::in_a_list(const Opening &opening) const {
    const std::string kind = opening.kind == OpeningKind::door ? words_.say("door") : words_.say("window");
    return words_.say("%1 %2 × %3 at %4", opening.name.empty() ? kind : opening.name,
                      in_mm(opening.width.mm()), in_mm(opening.height.mm()), in_mm(opening.from_left.mm()));
}

} // namespace roundlay::sheets
