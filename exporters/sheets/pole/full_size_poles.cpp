#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/text.h"
#include "exporters/sheets/one_to_one/full_size.h"
#include "exporters/sheets/pole/story_pole.h"

#include <algorithm>
#include <cmath>

namespace roundlay::sheets {
namespace {

constexpr double strip_width = 57.5; ///< three of them on A4 and on Letter
constexpr double strip_length = 220;
constexpr double pole_edge = 4; ///< of the pole from the strip's left border
constexpr double lettering = 2.5;

/// One pole and the corners it serves.
struct Pole {
    std::vector<std::string> corners;
    std::vector<PoleMark> marks;
};

bool alike(const std::vector<PoleMark> &a, const std::vector<PoleMark> &b) {
    constexpr double same = 0.01; // mm
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const PoleMark &x, const PoleMark &y) {
        return x.seam == y.seam && x.line_of == y.line_of && std::abs(x.z - y.z) < same;
    });
}

/// Seams, tops and level lines together, ascending; none where the corner has neither seam nor top.
std::vector<PoleMark> all_marks(const Layout &layout, const CornerPlace &corner, UnitSystem units) {
    std::vector<PoleMark> all = pole_marks(layout, corner);
    if (all.empty()) return all;
    for (PoleMark &line : line_marks(layout, corner, units))
        all.push_back(std::move(line));
    std::ranges::stable_sort(all, {}, &PoleMark::z);
    return all;
}

std::vector<Pole> distinct_poles(const Layout &layout, UnitSystem units) {
    std::vector<Pole> poles;
    for (const CornerPlace &corner : layout.corners) {
        std::vector<PoleMark> marks = all_marks(layout, corner, units);
        const auto same =
            std::find_if(poles.begin(), poles.end(), [&](const Pole &p) { return alike(p.marks, marks); });
        if (same == poles.end())
            poles.push_back({{corner.name}, std::move(marks)});
        else
            same->corners.push_back(corner.name);
    }
    return poles;
}

/// Its lines on the strip, and the numbers for them.
std::vector<Mark> add_marks(Board &board, const Pole &pole, double from, double end, const Words &words) {
    std::vector<Mark> marks;
    int seam = 0, log = 0;
    for (const PoleMark &mark : pole.marks) {
        const bool line = mark.line_of > 0;
        const int number = line ? mark.line_of : mark.seam ? ++seam : ++log;
        const double y = mark.z - from;
        if (y < 0 || y > end) continue;
        const std::string name = line        ? words.say("LL, round %1", number)
                                 : mark.seam ? words.say("seam %1", number)
                                             : words.say("log %1", number);
        marks.push_back({y, words.length(mark.z) + " " + name, false});
        board.add(Path{{{mark.seam || line ? 0 : pole_edge / 2, y}, {pole_edge, y}},
                       false,
                       line ? Line::centre : Line::visible,
                       ""});
    }
    return marks;
}

/// The stretch [from, from + strip_length] of the pole, its foot at y = 0.
Block strip(const Pole &pole, double from, const Words &words) {
    Board board;
    const double end = std::min(strip_length, pole.marks.back().z - from);
    for (const double x : {0.0, pole_edge})
        board.add(Path{{{x, 0}, {x, end}}, false, Line::visible, ""});
    for (const double y : {0.0, end})
        board.add(Path{{{0, y}, {strip_width - 3, y}}, false, Line::centre, ""});
    const std::vector<Mark> marks = add_marks(board, pole, from, end, words);
    RunningLine line;
    line.side = Toward::right;
    line.edge = pole_edge;
    line.distance = 2.5;
    line.lettering = lettering;
    line.start = 0;
    add_running_dimensions(board, marks, line);
    return {{0, 0, strip_width, strip_length}, std::move(board).finished()};
}

std::string joined(const std::vector<std::string> &names) {
    std::string all;
    for (const std::string &name : names)
        all += (all.empty() ? "" : ", ") + name;
    return all;
}

/// A strip with where it begins written over it.
void add_strip(std::vector<Item> &items, const Pole &pole, double from, Vec2 at, const Words &words) {
    for (const Item &item : placed(strip(pole, from, words), at).items)
        items.push_back(item);
    Text foot;
    foot.words = words.say("from %1", in_mm(from));
    foot.at = {at.x, at.y + strip_length + 3};
    foot.bold = true;
    foot.role = Role::caption;
    items.emplace_back(foot);
}

std::vector<Sheet> sheets_of(const Pole &pole, PaperSize size, const Words &words, const std::string &footer,
                             const std::string &anchor) {
    std::vector<Sheet> sheets;
    const Rect area = full_size_area(size);
    const FullSizeWords names{words.say("Story pole, corners %1", joined(pole.corners)),
                              words.say("Story poles, full size"), anchor, footer, words};
    double x = area.x1;
    for (double from = 0; from < pole.marks.back().z; from += strip_length) {
        if (x + strip_width > area.x1 + 1) {
            sheets.push_back(full_size_sheet(size, names, words.say("from %1", in_mm(from))));
            sheets.back().anchor = anchor + ":" + std::to_string(sheets.size());
            x = area.x0 + 2;
        }
        add_strip(sheets.back().items, pole, from, {x, area.y0 + 4}, words);
        x += strip_width;
    }
    return sheets;
}

} // namespace

std::vector<Sheet> full_size_poles(const Shell &shell, const Layout &layout, const SheetOptions &options) {
    const PaperSize size = office_paper_for(shell, options);
    const Words words = words_for(shell, layout, options);
    std::vector<Sheet> sheets;
    int number = 0;
    for (const Pole &pole : distinct_poles(layout, words.system())) {
        if (pole.marks.empty()) continue;
        const std::string anchor = "pole:" + std::to_string(++number);
        for (Sheet &sheet : sheets_of(pole, size, words, layout.name + " " + options.fields.date, anchor))
            sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets
