// Which pieces are alike: compared, so that no rounding parts equal ones.

#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/layout/pieces/piece_shape.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>
#include <set>

using namespace roundlay;
using namespace roundlay::test;

namespace {

const Piece &first_of(const Layout &layout, const Model &model) {
    return layout.pieces[model.pieces.front()];
}

double farthest_apart(const PieceShape &a, const PieceShape &b) {
    double most = 0;
    for (std::size_t i = 0; i < a.numbers.size(); ++i)
        most = std::max(most, std::abs(a.numbers[i] - b.numbers[i]));
    return most;
}

/// Two models that nobody could tell apart, by their first pieces; empty where there are none.
std::string parted(const Layout &layout) {
    constexpr double seen = 1e-4; // mm
    Indexed<PieceShape, Model> shapes;
    for (const Model &model : layout.models)
        shapes.push_back(shape_as_made(first_of(layout, model)));
    for (const auto j : shapes.indices())
        for (const auto i : shapes.after(j))
            if (shapes[i].kinds == shapes[j].kinds && farthest_apart(shapes[i], shapes[j]) < seen)
                return first_of(layout, layout.models[j]).tag + " and " +
                       first_of(layout, layout.models[i]).tag;
    return "";
}

/// Tags of one model whose codes would differ but for their last digits.
std::string codes_apart(const Layout &layout) {
    std::string apart;
    for (const Model &model : layout.models) {
        std::set<std::uint32_t> codes;
        for (const Index<Piece> piece : model.pieces)
            codes.insert(digest_of(shape_of_wood(layout.pieces[piece])));
        if (codes.size() > 1) apart += " " + first_of(layout, model).tag;
    }
    return apart;
}

Layout rectangle_with(double thickness) {
    Shell shell = plain_shell();
    shell.walls = rectangle_plan(Length::mm(9144), Length::mm(6096));
    shell.rounds.count = 9;
    shell.thickness = Length::mm(thickness);
    return lay_out(shell);
}

} // namespace

TEST_CASE("a rectangle has as many different pieces whatever its thickness is written like") {
    // 8 in, 8 1/16 in, and lengths on and beside a half step of a hundredth or a millionth of a millimetre
    const std::size_t plain = rectangle_with(203.2).models.size();
    REQUIRE(plain > 0);
    for (const double thickness : {204.7875, 203.0005, 203.005, 203.0000005, 204.1234565, 205.7875}) {
        INFO(thickness);
        const Layout layout = rectangle_with(thickness);
        CHECK(layout.models.size() == plain);
        CHECK(parted(layout) == "");
        CHECK(codes_apart(layout) == "");
    }
}

TEST_CASE("no two models of any shell are alike, and pieces of one model have one code") {
    int laid_out = 0;
    const bool held = rc::check([&] {
        const Shell shell = *rc::gen::oneOf(rc::gen::exec(any_fitted_shell), rc::gen::exec(any_saddle_shell),
                                            rc::gen::exec(any_waned_shell), rc::gen::exec(any_stepped_shell));
        const Layout layout = lay_out(shell);
        laid_out += layout.pieces.empty() ? 0 : 1;
        RC_ASSERT(parted(layout) == "");
        RC_ASSERT(codes_apart(layout) == "");
    });
    CHECK(held);
    CHECK(laid_out > 40); // of 200
}

TEST_CASE("alike is within a millionth of a millimetre, and bytes are exact") {
    Piece piece;
    piece.blank = {4000, 200, 230};
    Piece near = piece, far = piece, other = piece;
    near.blank.length += 0.9e-6;
    far.blank.length += 1.1e-6;
    other.cuts.push_back(Bore{});
    const PieceShape shape = shape_of_wood(piece);
    CHECK(alike(shape, shape_of_wood(near)));
    CHECK_FALSE(alike(shape, shape_of_wood(far)));
    CHECK_FALSE(alike(shape, shape_of_wood(other)));
    CHECK(bytes_of(shape) != bytes_of(shape_of_wood(near)));
    CHECK(bytes_of(shape) == bytes_of(shape_of_wood(piece)));
    piece.fabric = Fabric::kept;
    CHECK(alike(shape, shape_of_wood(piece)));
    CHECK_FALSE(alike(shape_as_made(near), shape_as_made(piece)));
}
