#include "kernel/layout/lay_out.h"
#include "kernel/review/review.h"
#include "tests/review/reviewed.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using namespace roundlay::test;

TEST_CASE("A full dovetail of walls alike has nothing said against it") {
    CHECK(reviewed(test::plain_shell()).empty());
}

TEST_CASE("A square lap does not lock, and without pegs that is a warning") {
    // "Square: locks nothing without pins": the corner-timbering literature, seen on secondary pages.
    Shell shell = test::plain_shell();
    shell.notch.kind = NotchKind::square_lap;
    Findings findings = reviewed(shell);
    CHECK(count(findings, "corner-not-locked") == 4);
    CHECK(findings[0].weight == Weight::note);
    shell.pegs.wanted = false;
    findings = reviewed(shell);
    CHECK(findings[0].weight == Weight::warning);
}

TEST_CASE("Pieces pushed into one another are an error of the review") {
    const Shell shell = test::plain_shell();
    Layout layout = lay_out(shell);
    layout.pieces[Index<Piece>(3)].frame.origin.z -= 2;
    const Findings findings = review(shell, layout, bodies_of(layout));
    CHECK(count(findings, "pieces-overlap") >= 1);
    CHECK(findings[0].weight == Weight::error);
}

TEST_CASE("A bowed log is told of with what it does to its gap, and stays straight in the model") {
    Shell shell = test::plain_shell(); // gap 20 mm; that a log is laid crown up: common practice, no source
    OwnLog own;
    own.wall = "A";
    own.round = 2;
    own.bow = Length::mm(12);
    shell.own_logs = {own};
    Findings findings = reviewed(shell);
    REQUIRE(count(findings, "log-bowed") == 1);
    CHECK(findings[0].weight == Weight::note);
    CHECK_THAT(test::message(findings[0]), ContainsSubstring("as it is drawn"));
    shell.own_logs[0].bow = Length::mm(26);
    findings = reviewed(shell);
    REQUIRE(count(findings, "log-bowed") == 1);
    CHECK(findings[0].weight == Weight::warning);
    CHECK_THAT(test::message(findings[0]), ContainsSubstring("touches the log over it by 6 mm"));
    double bow = 0;
    const Layout layout = lay_out(shell), straight = lay_out(test::plain_shell());
    for (const auto i : layout.pieces.indices()) {
        bow = std::max(bow, layout.pieces[i].bow);
        CHECK(body_of(layout.pieces[i]).volume == body_of(straight.pieces[i]).volume);
    }
    CHECK(bow == 26);
}

TEST_CASE("What no shop could cut is an error with the statement that it comes from") {
    const Shell shell = test::plain_shell();
    const Layout layout = lay_out(shell);
    Bodies bodies = bodies_of(layout);
    const Index<WallPlace> wall = layout.pieces[layout.models[Index<Model>(1)].pieces.front()].wall;
    bodies[Index<Model>(1)].hewn.faces.pop_back();
    const Findings findings = review(shell, layout, bodies);
    REQUIRE(count(findings, "no-sound-wood") == 1);
    CHECK(findings[0].weight == Weight::error);
    CHECK(findings[0].subject == "wall[" + std::to_string(wall.number()) + "].name");

    Layout pushed = layout;
    pushed.pieces[Index<Piece>(3)].frame.origin.z -= 2;
    for (const Finding &f : review(shell, pushed, bodies_of(pushed)))
        if (f.code == "pieces-overlap") CHECK(f.subject.starts_with("wall["));
}
