#include "exporters/sheets/pole/story_pole.h"

#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/frame/tables.h"
#include "exporters/sheets/set/best.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double pole_width = 6, lettering = 2.5;

std::vector<Mark> marks_for(const std::vector<PoleMark> &all, bool seams, double scale, const Words &words) {
    std::vector<Mark> marks{{0, words.length(0), true}};
    for (const PoleMark &mark : all)
        if (mark.seam == seams)
            marks.push_back({mark.z * scale, words.length(mark.z) + "  " + mark.words, false});
    return marks;
}

Block pole_block(const Layout &layout, const CornerPlace &corner, const Words &words, const Scale &scale) {
    Board board;
    const std::vector<PoleMark> all = pole_marks(layout, corner);
    const double top = all.empty() ? 0 : all.back().z * scale.ratio;
    board.add(Path{{{0, 0}, {pole_width, 0}, {pole_width, top}, {0, top}}, true, Line::visible, ""});
    for (const PoleMark &mark : all) {
        const double y = mark.z * scale.ratio, from = mark.seam ? 0 : pole_width / 2;
        board.add(Path{{{from, y}, {from + pole_width / 2, y}}, false, Line::visible, ""});
    }
    RunningLine line;
    line.lettering = lettering;
    line.distance = 3;
    line.side = Toward::left;
    if (const auto seams = marks_for(all, true, scale.ratio, words); seams.size() > 1)
        add_running_dimensions(board, seams, line);
    line.side = Toward::right;
    line.edge = pole_width;
    add_running_dimensions(board, marks_for(all, false, scale.ratio, words), line);
    const Rect drawn = bounds(board.items());
    board.add(
        lettered(words.say("Corner %1", corner.name), {drawn.x0, drawn.y1 + 3}, 3.5, true, Role::caption));
    return {bounds(board.items()), std::move(board).finished()};
}

/// Between two marks on one side of any pole, on the average, millimetres of wood.
double least_spacing(const Layout &layout) {
    double least = layout.height;
    for (const CornerPlace &corner : layout.corners) {
        const std::vector<PoleMark> all = pole_marks(layout, corner);
        if (!all.empty()) least = std::min(least, 2 * all.back().z / static_cast<double>(all.size()));
    }
    return least;
}

std::optional<std::vector<Page>> pages_at(const Layout &layout, const Words &words, const Scale &scale,
                                          PaperSize size) {
    std::vector<Page> pages{empty_page(size)};
    for (const CornerPlace &corner : layout.corners) {
        const auto block = std::make_shared<const Block>(pole_block(layout, corner, words, scale));
        if (!put_on(pages, size, block)) return std::nullopt;
    }
    return pages;
}

/// Round logs have no seams that lie in a plane: where they meet follows from their tops.
std::string note_for(const Layout &layout, const Words &words) {
    const bool seams =
        std::any_of(layout.corners.begin(), layout.corners.end(), [&](const CornerPlace &corner) {
            const auto marks = pole_marks(layout, corner);
            return std::any_of(marks.begin(), marks.end(), [](const PoleMark &m) { return m.seam; });
        });
    if (!seams)
        return words.say(
            "Heights over the foundation. Right: tops of the logs; each is scribed to those it lies "
            "on.");
    return words.say(
        "Heights over the foundation. Left: seams, at the arris where the outside faces of the two "
        "walls meet, with the lower and the upper log. Right: tops of logs.");
}

Titled poles(const Draft &draft) {
    const PaperSize size = draft.size();
    const Words words = draft.words();
    const double spacing = least_spacing(draft.layout);
    Best<std::vector<Page>> best;
    const auto draw = [&](const Scale &scale) {
        if (auto pages = pages_at(draft.layout, words, scale, size))
            best.offer_pages(std::move(*pages), scale);
    };
    try_scales(shell_scales(words.system()), draw, [&](const Scale &scale) { // numbers would fan out
        return best.is_perfect() || (!best.is_empty() && scale.ratio * spacing < pitch_of(lettering));
    });
    std::vector<Page> pages =
        best.is_empty() ? pages_not_drawn(size, words, words.say("The story pole")) : best.drawing();
    put_on(pages, size, note_table(words, note_for(draft.layout, words), 62));
    return {std::move(pages),
            {words.say("Story poles"), words.say("heights at every corner"), words.say("Story pole"), "P-1",
             said_scale(best.scale(), words), false, words.unit_note()},
            {words.say("Story poles"), "poles", ""}};
}

} // namespace

Subject pole_subject() {
    return {"story poles", [](const Draft &draft) { return std::vector{poles(draft)}; }};
}

} // namespace roundlay::sheets
