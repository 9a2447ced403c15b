#include "tests/support/any_mends.h"

#include "kernel/layout/lay_out.h"
#include "tests/support/any_parts.h"

#include <rapidcheck.h>

#include <algorithm>
#include <vector>

namespace roundlay::test {

namespace {

Mend any_mend(const Layout &whole) {
    std::vector<const Piece *> logs;
    for (const Piece &piece : whole.pieces)
        if (!piece.timber) logs.push_back(&piece);
    const Piece &log = *logs[static_cast<std::size_t>(between(0, static_cast<int>(logs.size()) - 1))];
    const auto part = [](double whole_length, int low, int high) {
        return Length::mm(whole_length * between(low, high) / 1000);
    };
    Mend mend;
    mend.wall = whole.walls[log.wall].name, mend.round = log.round, mend.piece = log.number;
    mend.kind = *rc::gen::element(MendKind::let_in, MendKind::face, MendKind::splice);
    mend.face = *rc::gen::element(LogSide::outside, LogSide::inside, LogSide::top, LogSide::under);
    mend.end = *rc::gen::element(LogEnd::left, LogEnd::right);
    const bool side = mend.face == LogSide::outside || mend.face == LogSide::inside;
    const double thick = side ? log.blank.width : log.blank.height,
                 across = side ? log.blank.height : log.blank.width;
    if (mend.kind == MendKind::splice) {
        mend.to = part(log.blank.length, 50, 500);
        mend.lap = part(log.blank.length, 50, 400);
        if (sometimes(3)) mend.depth = part(thick, 200, 700);
        return mend;
    }
    mend.from = sometimes(4) ? Length() : part(log.blank.length, 0, 600);
    mend.to = *mend.from + part(log.blank.length, 30, 380);
    mend.depth = part(thick, 80, 600);
    if (mend.kind == MendKind::let_in && !sometimes(4)) {
        mend.low = part(across, 100, 400);
        mend.high = *mend.low + part(across, 150, 500);
    }
    return mend;
}

const Finding *first_error(const Findings &findings) {
    const auto found =
        std::ranges::find_if(findings, [](const Finding &f) { return f.weight == Weight::error; });
    return found == findings.end() ? nullptr : &*found;
}

} // namespace

Shell with_any_mends(const Shell &shell, const Layout &whole, int most, MendsDrawn &told) {
    Shell mended = shell;
    for (int i = between(1, most); i > 0; --i) {
        mended.mends.push_back(any_mend(whole));
        ++told.drawn;
        const Layout layout = lay_out_to_try(mended);
        const Finding *error = first_error(layout.findings);
        if (error == nullptr) {
            ++told.kept;
            continue;
        }
        ++told.refused[error->code];
        mended.mends.pop_back();
    }
    return mended;
}

} // namespace roundlay::test
