#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/spread.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double same_level = 0.05;                    ///< mm of wood
constexpr double end_line_distance = 4;                ///< of the dimension line from the end of the log
constexpr double inner_run = 1.4;                      ///< of the line beside a shoulder before it may bend
constexpr double inner_offsets[] = {3.2, 4.6, 6.4, 9}; ///< from the shoulder to the number

bool at_end(const Features &features, double x, End end) {
    return end == End::datum ? x < same_station : x > features.piece->blank.length - same_station;
}

void add_level(std::vector<double> &levels, double z, double height) {
    if (z < same_level || z > height - same_level) return; // the seam leaves the wood before it gets here
    for (const double known : levels)
        if (std::abs(known - z) < same_level) return;
    levels.push_back(z);
}

double level_of(const Notch &n, View view, bool at_from) {
    if (view == View::outside) return at_from ? n.outside_from : n.outside_to;
    return at_from ? n.inside_from : n.inside_to;
}

/// Levels that meet one upright edge of a cut; their numbers stand to one side of it.
struct Group {
    double x = 0;
    int side = 1; ///< on paper: 1 right of the edge, -1 left
    std::vector<double> levels;
};

void add_to(std::vector<Group> &groups, double x, int side, double z, double height) {
    for (Group &g : groups)
        if (std::abs(g.x - x) < same_station && g.side == side) return add_level(g.levels, z, height);
    groups.push_back({x, side, {}});
    add_level(groups.back().levels, z, height);
}

std::vector<Group> inner_groups(const Features &features, View view) {
    std::vector<Group> groups;
    const Blank &blank = features.piece->blank;
    const auto inside = [&](double x) { return x > same_station && x < blank.length - same_station; };
    for (const Notch &n : features.notches) {
        if (inside(n.cut->x_from)) add_to(groups, n.cut->x_from, -1, level_of(n, view, true), blank.height);
        if (inside(n.cut->x_to)) add_to(groups, n.cut->x_to, 1, level_of(n, view, false), blank.height);
    }
    if (view != View::outside) return groups; // square cuts are level through the log: once is enough
    for (const BoxPart &b : features.boxes) {
        const bool left = inside(b.x_from);
        for (const double z : {b.z_from, b.z_to})
            add_to(groups, left ? b.x_from : b.x_to, left ? -1 : 1, z, blank.height);
    }
    return groups;
}

Text number_text_of(const FaceBoard &face, double level, int side) {
    Text text;
    text.words = face.wanted.words->length(level);
    text.height = face.wanted.lettering;
    text.upright = Upright::middle;
    text.across = side > 0 ? Across::left : Across::right;
    text.role = Role::dimension;
    return text;
}

bool put_inner_number(FaceBoard &face, const FaceRow &row, const Group &group, double level, double label_y) {
    const double x = face.x(group.x), y = row.level(level);
    Text text = number_text_of(face, level, group.side);
    for (const double offset : inner_offsets) {
        const double to = x + group.side * offset;
        text.at = {to, label_y};
        const Rect box = roundlay::sheets::box_of(text).grown(0.4);
        if (!face.board.is_free(box, offset != inner_offsets[3]) || box.x1 > face.right() ||
            box.x0 < face.left)
            continue;
        face.board.add(text);
        face.board.add(Path{
            {{x + group.side * 0.4, y}, {x + group.side * inner_run, y}, {to - group.side * 0.5, label_y}},
            false,
            Line::dimension,
            ""});
        return true;
    }
    return false;
}

bool add_group(FaceBoard &face, const FaceRow &row, Group group) {
    std::sort(group.levels.begin(), group.levels.end(),
              [&](double a, double b) { return row.level(a) < row.level(b); });
    std::vector<double> wanted;
    for (const double z : group.levels)
        wanted.push_back(row.level(z));
    const double margin = face.wanted.lettering / 2 + 0.8;
    const double low = row.outline.y0 + margin, high = row.outline.y1 - margin;
    const std::vector<double> labels = spread(wanted, face.wanted.lettering + 1, low, high);
    for (std::size_t i = 0; i < labels.size(); ++i)
        if (!put_inner_number(face, row, group, group.levels[i], labels[i])) return false;
    return true;
}

void add_end_column(FaceBoard &face, const FaceRow &row, End end) {
    std::vector<double> levels = end_levels(face.features(), end, row.view);
    if (levels.empty()) return;
    levels.push_back(0);
    std::vector<Mark> marks;
    for (const double z : levels)
        marks.push_back({row.level(z), face.wanted.words->length(z), z == 0});
    std::sort(marks.begin(), marks.end(), [](const Mark &a, const Mark &b) { return a.at < b.at; });
    RunningLine line;
    line.side = end == End::datum ? Toward::left : Toward::right;
    line.edge = end == End::datum ? face.left : face.right();
    line.distance = end_line_distance;
    line.lettering = face.wanted.lettering;
    line.backward = row.rolled_over();
    add_running_dimensions(face.board, marks, line);
}

/// The width of the blank, on the top face, from the outside.
void add_width(FaceBoard &face) {
    const FaceRow &row = face.row(View::top);
    RunningLine line;
    line.side = Toward::left;
    line.edge = face.left;
    line.distance = end_line_distance;
    line.lettering = face.wanted.lettering;
    const double w = face.blank().width;
    add_running_dimensions(face.board,
                           {{row.y({0, 0, 0}), face.wanted.words->length(0), true},
                            {row.y({0, w, 0}), face.wanted.words->length(w), false}},
                           line);
}

} // namespace

std::vector<double> end_levels(const Features &features, End end, View view) {
    std::vector<double> levels;
    const Blank &blank = features.piece->blank;
    for (const Notch &n : features.notches)
        for (const bool from : {true, false})
            if (at_end(features, from ? n.cut->x_from : n.cut->x_to, end))
                add_level(levels, level_of(n, view, from), blank.height);
    if (view == View::outside && end == End::datum) levels.push_back(blank.height);
    return levels;
}

double room_for_end_levels(const ViewsWanted &wanted, End end) {
    std::vector<std::string> numbers;
    for (const View view : {View::outside, View::inside})
        for (const double z : end_levels(wanted.piece->features, end, view))
            numbers.push_back(wanted.words->length(z));
    if (end == End::datum) numbers.push_back(wanted.words->length(wanted.piece->features.piece->blank.width));
    if (numbers.empty()) return 0;
    RunningLine line;
    line.distance = end_line_distance;
    line.lettering = wanted.lettering;
    return depth_of(numbers, line);
}

void add_end_heights(FaceBoard &face) {
    for (const View view : {View::outside, View::inside}) {
        if (face.shows_datum) add_end_column(face, face.row(view), End::datum);
        if (face.shows_far) add_end_column(face, face.row(view), End::far);
    }
    if (face.shows_datum) add_width(face);
}

bool add_inner_heights(FaceBoard &face) {
    for (const View view : {View::outside, View::inside})
        for (const Group &group : inner_groups(face.features(), view))
            if (face.ruler.shows(group.x) && !add_group(face, face.row(view), group)) return false;
    return true;
}

} // namespace roundlay::sheets
