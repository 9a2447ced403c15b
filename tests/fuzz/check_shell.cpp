#include "tests/fuzz/check_shell.h"

#include "exporters/lists/shell_tables.h"
#include "exporters/lists/tables.h"
#include "exporters/sheets/book/book.h"
#include "exporters/sheets/dxf/dxf.h"
#include "exporters/sheets/pattern/templates.h"
#include "exporters/words/words.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/review/review.h"
#include "tests/fuzz/check_document.h"

#include <cmath>

namespace roundlay::test {

namespace {

using Broken = std::optional<std::string>;

Broken check_findings(const Findings &findings, const Shell &shell, const Layout &layout) {
    for (const Finding &f : findings) {
        if (f.code.empty() || f.what.text.empty())
            return "a finding without words: " + f.code + " " + f.subject;
        for (const Language language : {Language::english, Language::french})
            if (!is_one_printed_line(sentence_of(f, {language, shell.units})))
                return "a finding that cannot be printed: " + f.code;
        for (const Index<Piece> piece : pieces_of(f, shell, layout))
            if (!layout.pieces.holds(piece)) return "a finding on no piece: " + f.code;
    }
    return std::nullopt;
}

Broken check_layout(const Layout &layout) {
    if (has_errors(layout.findings) != layout.pieces.empty()) return "pieces and errors at once, or neither";
    for (const Piece &p : layout.pieces)
        for (const double size : {p.blank.length, p.blank.width, p.blank.height})
            if (!(size > 0) || !std::isfinite(size)) return "a piece without a size: " + p.tag;
    return std::nullopt;
}

/// Where nothing is wrong with a shell, each piece is wood with a closed border.
Broken check_bodies(const Layout &layout, const Bodies &bodies, const Findings &reviewed) {
    if (has_errors(reviewed)) return std::nullopt;
    for (const auto i : bodies.indices()) {
        const std::string &tag = layout.pieces[layout.models[i].pieces.front()].tag;
        if (!is_closed(bodies[i].hewn)) return "a body that is not closed: " + tag;
        if (!(bodies[i].volume > 0) || !std::isfinite(bodies[i].volume))
            return "a piece without wood: " + tag;
    }
    return std::nullopt;
}

void make_lists(const Shell &shell, const Layout &layout, const Bodies &bodies) {
    Indexed<double, Model> volumes;
    for (const Body &body : bodies)
        volumes.push_back(body.volume);
    const CutList list = collect_cut_list(shell, layout, volumes);
    for (const auto table : {model_table, piece_table, peg_table, order_table, total_table})
        to_csv(table(list));
    to_csv(opening_table(shell, layout));
    to_csv(floor_table(shell, layout));
}

void make_sheets(const Shell &shell, const Layout &layout, const Bodies &bodies) {
    const sheets::SheetOptions options;
    sheets::composed(sheets::whole_set(layout), {shell, layout, bodies, options});
    sheets::write_dxf(sheets::template_drawing(sheets::patterns_of(layout)));
}

} // namespace

Broken broken_shell(const Shell &shell, const FuzzDepth &depth) {
    const Layout layout = lay_out(shell);
    if (auto broken = check_layout(layout)) return broken;
    if (auto broken = check_findings(layout.findings, shell, layout)) return broken;
    if (layout.pieces.empty() || layout.pieces.size() > depth.reviewed) return std::nullopt;
    const Bodies bodies = bodies_of(layout);
    const Findings reviewed = review(shell, layout, bodies);
    if (auto broken = check_findings(reviewed, shell, layout)) return broken;
    if (auto broken = check_bodies(layout, bodies, reviewed)) return broken;
    if (has_errors(reviewed)) return std::nullopt;
    make_lists(shell, layout, bodies);
    if (layout.models.size() <= depth.drawn) make_sheets(shell, layout, bodies);
    return std::nullopt;
}

} // namespace roundlay::test
