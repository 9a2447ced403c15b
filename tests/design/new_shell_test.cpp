// Shells to begin with: every shape with every notch can be built without a warning, and what cannot be is
// none.
#include "kernel/design/new_shell.h"
#include "kernel/design/samples.h"
#include "kernel/layout/advice/trial.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"

#include <cmath>

using namespace roundlay;

TEST_CASE("what is usual can be built, of every shape and notch, in either system") {
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial})
        for (const Shape shape :
             {Shape::rectangle, Shape::ell, Shape::inset, Shape::tee, Shape::u_shape, Shape::cross})
            for (const NotchKind notch : {NotchKind::full_dovetail, NotchKind::half_dovetail,
                                          NotchKind::square_lap, NotchKind::saddle}) {
                const auto shell = shell_of(usual_shell(shape, units, notch));
                REQUIRE(shell);
                const Layout layout = lay_out(*shell);
                INFO(test::words(layout.findings));
                CHECK(errors_in(layout.findings) == 0);
                CHECK(!layout.pieces.empty());
            }
}

TEST_CASE("a door that is offered beside a new shell has figures that a person would state") {
    Shell shell = *shell_of(usual_shell(Shape::rectangle, UnitSystem::metric, NotchKind::half_dovetail));
    shell.rounds.count = 11, shell.rounds.height = Length::mm(2600), shell.rounds.pitch.reset();
    shell.rounds.gap = Length::mm(15);
    INFO(test::words(lay_out(shell).findings));
    bool offered = false;
    for (const Sample &sample : samples_for(shell)) {
        if (sample.kind != SampleKind::door) continue;
        offered = true;
        const double height = sample.shell.openings.back().height.mm();
        CAPTURE(height);
        CHECK(std::abs(std::remainder(height, 5)) < 1e-9); // a seam of 15 mm holds such figures
    }
    CHECK(offered);
}

TEST_CASE("a part is a share of the whole in whole millimetres or sixteenths of an inch") {
    // Three eighths of 10 m and a third of 7 m; what is left of the width on either side.
    const ShapePart metric =
        usual_part(Shape::tee, Length::metres(10), Length::metres(7), UnitSystem::metric);
    CHECK(metric.width == Length::mm(3750));
    CHECK(metric.depth == Length::mm(2333));
    CHECK(metric.from_left == Length::mm(3125));
    const ShapePart feet =
        usual_part(Shape::u_shape, Length::feet(32), Length::feet(25), UnitSystem::imperial);
    CHECK(feet.width == Length::feet(12));
    CHECK(feet.depth == Length::inches(100));
    CHECK(feet.from_left == Length::feet(10));
    CHECK(usual_part(Shape::cross, Length::metres(6), Length::metres(4), UnitSystem::metric).depth ==
          Length::metres(2));
}

TEST_CASE("a part larger than the whole makes no shell, nor does a figure that is not closed") {
    for (const Shape shape : {Shape::ell, Shape::inset, Shape::tee, Shape::u_shape}) {
        NewShell sizes = usual_shell(shape, UnitSystem::metric);
        sizes.part_width = sizes.width;
        CHECK(!shell_of(sizes));
    }
    for (const Shape shape : {Shape::ell, Shape::inset, Shape::u_shape}) {
        NewShell sizes = usual_shell(shape, UnitSystem::metric);
        sizes.part_depth = sizes.depth;
        CHECK(!shell_of(sizes));
    }
    NewShell drawn = usual_shell(Shape::drawn, UnitSystem::metric);
    CHECK(!shell_of(drawn));
    NewShell thin = usual_shell(Shape::rectangle, UnitSystem::imperial);
    thin.thickness = Length();
    CHECK(!shell_of(thin));
}
