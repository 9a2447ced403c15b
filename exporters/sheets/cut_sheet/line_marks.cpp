// The level line and the end line on the faces.
#include "exporters/sheets/cut_sheet/face_board.h"
#include "exporters/sheets/drawing/text.h"

#include <algorithm>

namespace roundlay::sheets {
namespace {

constexpr double lettering = 2.5;

/// Along a side face, over each stretch of it that is drawn and within the wood's ends.
void add_level_line(FaceBoard &face, const FaceRow &row) {
    const LevelLine &level = face.features().level;
    for (const Shown &s : face.ruler.shown()) {
        const auto at = [&](double x) { return Vec2{face.x(x), row.level(level.at.at(x))}; };
        face.board.add(Path{{at(s.from), at(s.to)}, false, Line::centre, ""});
    }
}

void add_end_line(FaceBoard &face, const FaceRow &row, double at) {
    const double x = face.x(at);
    face.board.add(Path{{{x, row.outline.y0}, {x, row.outline.y1}}, false, Line::centre, ""});
}

/// Its name beside its line on the first face where nothing stands there.
void put_name(FaceBoard &face, double at) {
    Text text;
    text.words = face.wanted.words->say("EL");
    text.height = lettering;
    text.upright = Upright::middle;
    text.role = Role::caption;
    for (const FaceRow &row : face.rows)
        for (const double share : {0.5, 0.75, 0.25}) {
            const double y = row.outline.y0 + share * row.outline.height();
            text.across = Across::left;
            if (face.board.put(text, {{face.x(at) + 1, y}})) return;
            text.across = Across::right;
            if (face.board.put(text, {{face.x(at) - 1, y}})) return;
        }
}

} // namespace

void add_reference_lines(FaceBoard &face) {
    for (const View view : {View::outside, View::inside})
        add_level_line(face, face.row(view));
    const std::optional<double> end = face.features().end_line;
    if (!end || !face.ruler.shows(*end) || *end < face.wanted.from || *end > face.wanted.to) return;
    for (const FaceRow &row : face.rows)
        add_end_line(face, row, *end);
}

void name_end_line(FaceBoard &face) {
    const std::optional<double> end = face.features().end_line;
    if (end && face.ruler.shows(*end)) put_name(face, *end);
}

} // namespace roundlay::sheets
