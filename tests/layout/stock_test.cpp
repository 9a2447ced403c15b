// The stick that is ordered for a log, against the log's own wood.
#include "kernel/layout/lay_out.h"
#include "kernel/layout/pieces/stock.h"
#include "kernel/layout/wood/body.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

using namespace roundlay;

namespace {

/// Walls whose logs all have their butts left, so that each lies more at a slant than the one below it.
Shell leaning_shell() {
    Shell shell = test::plain_shell();
    shell.notch.slope = Slope::rise_per_run(0);
    shell.logs.butt_height = Length::mm(225);
    shell.logs.tip_height = Length::mm(200);
    shell.logs.butt = LogEnd::left;
    return shell;
}

struct Reach {
    Vec3 low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
};

/// How far the wood reaches in the stock's frame.
Reach reach_of(const Piece &piece, const Frame &frame) {
    Reach r;
    for (const Vec3 &v : body_of(piece).hewn.vertices) {
        const Vec3 p = frame.to_local(v);
        r.low = {std::min(r.low.x, p.x), std::min(r.low.y, p.y), std::min(r.low.z, p.z)};
        r.high = {std::max(r.high.x, p.x), std::max(r.high.y, p.y), std::max(r.high.z, p.z)};
    }
    return r;
}

/// The log as it is hewn, before anything is cut into it.
Piece hewn_only(const Piece &piece) {
    Piece hewn = piece;
    std::erase_if(hewn.cuts, [](const Cut &cut) {
        return !std::holds_alternative<FaceCut>(cut) && !std::holds_alternative<RoundCut>(cut);
    });
    return hewn;
}

Frame turned(double lean) {
    const double k = 1 / std::sqrt(1 + lean * lean);
    Frame f;
    f.x = {k, 0, k * lean};
    f.y = {0, 1, 0};
    f.z = {-k * lean, 0, k};
    return f;
}

constexpr double hair = 1e-6;

std::string outside_of(const Stock &stock, const Piece &piece) {
    const Reach r = reach_of(piece, stock.frame);
    const bool in = r.low.x > -hair && r.low.y > -hair && r.low.z > -hair &&
                    r.high.x < stock.size.length + hair && r.high.y < stock.size.width + hair &&
                    r.high.z < stock.size.height + hair;
    return in ? "" : piece.tag + " has wood outside its stock\n";
}

std::string slack_of(const Stock &stock, const Piece &piece) {
    const bool is_round = std::any_of(piece.cuts.begin(), piece.cuts.end(),
                                      [](const Cut &cut) { return std::holds_alternative<RoundCut>(cut); });
    const double room = is_round ? 3 : hair; // flats of a round surface lie in its wood
    const Reach r = reach_of(hewn_only(piece), stock.frame);
    const bool touches = r.low.x < room && r.low.y < room && r.low.z < room &&
                         r.high.x > stock.size.length - room && r.high.y > stock.size.width - room &&
                         r.high.z > stock.size.height - room;
    return touches ? "" : piece.tag + " does not touch every face of its stock\n";
}

/// No stick turned another way, however little, is smaller by a thousandth.
std::string smaller_than(const Stock &stock, const Piece &piece) {
    const double own = stock.size.length * stock.size.height;
    const Piece hewn = hewn_only(piece);
    for (int i = -40; i <= 40; ++i) {
        const Reach r = reach_of(hewn, turned(i * 0.0025));
        if ((r.high.x - r.low.x) * (r.high.z - r.low.z) < own * 0.999)
            return piece.tag + " has a smaller stick\n";
    }
    return "";
}

std::string wrong_stock(const Layout &layout) {
    std::string wrong;
    for (const Model &model : layout.models) {
        const Piece &piece = layout.pieces[model.pieces.front()];
        const Stock stock = stock_of(piece);
        wrong += outside_of(stock, piece) + slack_of(stock, piece);
    }
    return wrong;
}

Shell any_kind_of_shell() {
    switch (*rc::gen::inRange(0, 5)) {
    case 0:
        return test::any_tapered_shell();
    case 1:
        return test::any_family_shell();
    case 2:
        return test::any_fitted_shell();
    case 3:
        return test::any_waned_shell();
    default:
        return test::any_saddle_shell();
    }
}

} // namespace

TEST_CASE("the stock of a log that slants is no higher than the log") {
    const Layout layout = lay_out(leaning_shell());
    REQUIRE_FALSE(layout.pieces.empty());
    double most = 0;
    for (const Piece &piece : layout.pieces) {
        const Stock stock = stock_of(piece);
        // 225 mm at the butt where it is whole, half of that less half the gap where it is a half log
        const double thick = piece.log == LogKind::full ? 225 : (225 - 20) / 2.0;
        CHECK(stock.size.height <= thick + 3); // its overhangs go on beyond the stated ends
        CHECK(stock.size.height > thick - 0.5);
        CHECK(stock.size.length < piece.blank.length + 0.1 * stock.size.height);
        most = std::max(most, piece.blank.height - stock.size.height);
    }
    CHECK(most > 50); // a level stick would have been ordered that much higher
}

TEST_CASE("every corner of a log's wood lies in its stock, and each of its faces touches the hewn log") {
    CHECK(wrong_stock(lay_out(leaning_shell())).empty());
    static int drawn = 0, laid = 0;
    CHECK(rc::check("any shell", [] {
        const Layout layout = lay_out(any_kind_of_shell());
        ++drawn;
        laid += layout.pieces.empty() ? 0 : 1;
        if (layout.pieces.empty()) return; // what is refused has no stock
        const std::string wrong = wrong_stock(layout);
        if (!wrong.empty()) RC_FAIL(wrong);
    }));
    INFO(laid << " of " << drawn << " stand");
    CHECK(laid * 2 > drawn);
}

TEST_CASE("no stick turned another way is smaller than the stock") {
    for (const Shell &shell : {leaning_shell(), test::plain_shell()})
        for (const Piece &piece : lay_out(shell).pieces) {
            INFO(piece.tag);
            CHECK(smaller_than(stock_of(piece), piece).empty());
        }
}

TEST_CASE("What is hewn off a slanting side is measured square to the stick, on the log's middle line") {
    Piece piece;
    piece.blank = {1000, 800, 300};
    // Sides that run 3 in 4 to the stick: the outside one from 0 at the datum end to 75 at x = 100, the
    // inside one from 800 to 725.
    const FaceCut outside{LogFace::outside, {{0.6, -0.8, 0}, 0}},
        inside{LogFace::inside, {{0.6, 0.8, 0}, 640}};
    Stock stock;
    stock.size = {1000, 800, 300};
    CHECK(hewn_off(piece, stock, outside, 100) == Approx(75));
    CHECK(hewn_off(piece, stock, inside, 100) == Approx(75));
}
