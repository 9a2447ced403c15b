#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/dimension.h"
#include "exporters/sheets/drawing/spread.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double end_line_distance = 4; ///< of the dimension line from the end of the log
constexpr double inner_run = 1.4;       ///< of the line beside a shoulder before it may bend
constexpr double inner_offsets[] = {3.2, 4.6, 6.4, 9, 12, 16, 21}; ///< from the shoulder to the number
/// Up and down from the wanted place, where an edge of a slanting face runs through that.
constexpr double inner_shifts[] = {0, 0.8, -0.8, 1.6, -1.6, 2.6, -2.6, 4, -4, 5.6, -5.6, 7.5, -7.5, 10, -10};
constexpr double crossing_allowed = 9; ///< from here on lines may be left out under the number
constexpr double beside_number = 2;    ///< between an inner number and the end of the log

View view_of(const Level &level) {
    return level.on_outside ? View::outside : View::inside;
}

/// Whether the number of the level stands off the end of the log, because there is no room in the wood.
bool stands_at_end(const ViewsWanted &wanted, const Level &level) {
    const double length = wanted.piece->features.piece->blank.length;
    const double wood = level.side < 0 ? level.x : length - level.x;
    if (wood < same_station) return true;
    const double number = text_width(wanted.words->level(level.height), wanted.lettering);
    return wood * wanted.scale < inner_offsets[0] + number + beside_number;
}

bool at(const Level &level, End end) {
    return level.side < 0 ? end == End::datum : end == End::far;
}

/// Those that are shown: of a drawing that stands for several pieces, heights that have something put for
/// them.
std::vector<Level> levels_shown(const ViewsWanted &wanted) {
    const Features &f = wanted.piece->features;
    std::vector<Level> all = wanted.renamed ? levels_beside_joints(f) : levels_of(f);
    std::erase_if(all,
                  [&](const Level &l) { return shown_as(wanted, wanted.words->level(l.height)).empty(); });
    return all;
}

std::vector<Level> levels_at_end(const ViewsWanted &wanted, End end, View view) {
    std::vector<Level> levels;
    for (const Level &level : levels_shown(wanted))
        if (view_of(level) == view && at(level, end) && stands_at_end(wanted, level)) levels.push_back(level);
    if (view != View::outside || wanted.renamed) return levels;
    for (const Level &level : log_heights(wanted.piece->features))
        if (at(level, end)) levels.push_back(level);
    return levels;
}

/// Levels whose numbers stand one over the other beside the same edge of a cut.
std::vector<std::vector<Level>> inner_groups(const ViewsWanted &wanted) {
    std::vector<std::vector<Level>> groups;
    for (const Level &level : levels_shown(wanted)) {
        if (stands_at_end(wanted, level)) continue;
        const auto same = [&](const std::vector<Level> &g) {
            return g[0].on_outside == level.on_outside && g[0].side == level.side &&
                   std::abs(g[0].x - level.x) < same_station;
        };
        const auto found = std::find_if(groups.begin(), groups.end(), same);
        if (found == groups.end())
            groups.push_back({level});
        else
            found->push_back(level);
    }
    return groups;
}

Text number_of(const FaceBoard &face, const Level &level) {
    Text text;
    text.words = shown_as(face.wanted, face.wanted.words->level(level.height));
    text.height = face.wanted.lettering;
    text.upright = Upright::middle;
    text.across = level.side > 0 ? Across::left : Across::right;
    text.role = Role::dimension;
    return text;
}

bool put_inner_number(FaceBoard &face, const FaceRow &row, const Level &level, double label_y) {
    const double x = face.x(level.x), y = row.level(level.z);
    Text text = number_of(face, level);
    for (const double shift : inner_shifts)
        for (const double offset : inner_offsets) {
            const double to = x + level.side * offset;
            text.at = {to, label_y + shift};
            const Rect box = box_of(text).grown(0.4);
            const bool far = offset >= crossing_allowed;
            if (!face.board.is_free(box, !far) || box.x1 > face.right() || box.x0 < face.left) continue;
            const Path line{{{x + level.side * 0.4, y},
                             {x + level.side * inner_run, y},
                             {to - level.side * 0.5, text.at.y}},
                            false,
                            Line::dimension,
                            "",
                            true};
            if (!face.board.is_clear(line)) continue;
            face.board.add(text);
            face.board.add(line);
            return true;
        }
    return false;
}

bool add_group(FaceBoard &face, std::vector<Level> group) {
    const FaceRow &row = face.row(view_of(group[0]));
    std::sort(group.begin(), group.end(),
              [&](const Level &a, const Level &b) { return row.level(a.z) < row.level(b.z); });
    std::vector<double> wanted;
    for (const Level &level : group)
        wanted.push_back(row.level(level.z));
    const double margin = face.wanted.lettering / 2 + 0.8;
    const std::vector<double> labels =
        spread(wanted, face.wanted.lettering + 1, row.outline.y0 + margin, row.outline.y1 - margin);
    for (std::size_t i = 0; i < labels.size(); ++i)
        if (!put_inner_number(face, row, group[i], labels[i])) return false;
    return true;
}

RunningLine end_line(const FaceBoard &face, End end) {
    RunningLine line;
    line.side = end == End::datum ? Toward::left : Toward::right;
    line.edge = end == End::datum ? face.left : face.right();
    line.distance = end_line_distance;
    line.lettering = face.wanted.lettering;
    return line;
}

void add_end_column(FaceBoard &face, const FaceRow &row, End end) {
    const std::vector<Level> levels = levels_at_end(face.wanted, end, row.view);
    if (levels.empty()) return;
    RunningLine line = end_line(face, end);
    const double line_at = face.features().level.at.at(levels.front().x);
    std::vector<Mark> marks{{row.level(line_at), face.wanted.words->say("LL"), true}};
    for (const Level &level : levels) {
        const double y = row.level(level.z), x = face.x(level.x);
        marks.push_back({y, shown_as(face.wanted, face.wanted.words->level(level.height)), false});
        if (x != line.edge) face.board.add(Path{{{x, y}, {line.edge, y}}, false, Line::dimension, ""});
    }
    std::sort(marks.begin(), marks.end(), [](const Mark &a, const Mark &b) { return a.at < b.at; });
    line.backward = row.rolled_over();
    add_running_dimensions(face.board, marks, line);
}

/// On the top face, from the outside: how wide the log is.
void add_width(FaceBoard &face, End end) {
    const std::optional<double> width = log_width(face.features(), end);
    if (!width) return;
    const FaceRow &row = face.row(View::top);
    const double outside = face.features().outermost(end == End::datum ? 0 : face.blank().length);
    const std::vector<Mark> marks{
        {row.y({0, outside, 0}), face.wanted.words->length(0), true},
        {row.y({0, outside + *width, 0}), shown_as(face.wanted, face.wanted.words->length(*width)), false}};
    if (marks.back().number.empty()) return;
    add_running_dimensions(face.board, marks, end_line(face, end));
}

} // namespace

double room_for_end_levels(const ViewsWanted &wanted, End end) {
    std::vector<std::string> numbers;
    for (const View view : {View::outside, View::inside})
        for (const Level &level : levels_at_end(wanted, end, view))
            numbers.push_back(wanted.words->level(level.height));
    if (const auto width = log_width(wanted.piece->features, end))
        numbers.push_back(wanted.words->length(*width));
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
    if (face.shows_datum) add_width(face, End::datum);
    if (face.shows_far) add_width(face, End::far);
}

bool add_inner_heights(FaceBoard &face) {
    for (const auto &group : inner_groups(face.wanted))
        if (face.ruler.shows(group[0].x) && !add_group(face, group)) return false;
    return true;
}

} // namespace roundlay::sheets
