// Programs for a router, run by a simulator that knows their text alone.
#include "exporters/router/program.h"
#include "exporters/sheets/pattern/patterns.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "tests/router/support/run_on_boards.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cstdio>
#include <filesystem>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::vector<RouterMark> marks_of(const sheets::PatternFace &face) {
    std::vector<RouterMark> marks;
    for (const sheets::Path &path : face.marks)
        marks.push_back({path.points.front(), path.points.back()});
    return marks;
}

std::vector<RouterShape> shapes_of(const Layout &layout) {
    std::vector<RouterShape> shapes;
    for (const sheets::Pattern &pattern : sheets::patterns_of(layout))
        for (const sheets::PatternFace &face : pattern.faces) {
            shapes.push_back({face.name, face.outline, marks_of(face)});
            for (const sheets::Circle &hole : face.holes)
                shapes.back().holes.push_back({hole.centre, 2 * hole.radius});
        }
    return shapes;
}

/// With an inner corner, and an inner room 20 wide and 30 deep.
RouterShape comb() {
    return {"comb",
            {{0, 0},
             {200, 0},
             {200, 100},
             {120, 100},
             {120, 70},
             {100, 70},
             {100, 100},
             {40, 100},
             {40, 60},
             {0, 60}}};
}

RouterShape plate() {
    return {"plate", {{0, 0}, {160, 0}, {150, 90}, {0, 90}}};
}

RouterJob job_of(const std::vector<RouterShape> &shapes, const RouterOptions &options) {
    const auto made = router_job(shapes, options);
    if (const auto *problems = std::get_if<RouterProblems>(&made))
        for (const Said &problem : *problems)
            UNSCOPED_INFO(english(problem));
    REQUIRE(std::holds_alternative<RouterJob>(made));
    return std::get<RouterJob>(made);
}

std::vector<std::string> refused(const std::vector<RouterShape> &shapes, const RouterOptions &options) {
    const auto made = router_job(shapes, options);
    std::vector<std::string> all;
    if (const auto *problems = std::get_if<RouterProblems>(&made))
        for (const Said &problem : *problems)
            all.push_back(english(problem));
    return all;
}

using Faults = std::vector<std::string>;

bool tells(const Faults &faults, const std::string &what) {
    return std::ranges::any_of(faults,
                               [&](const std::string &f) { return f.find(what) != std::string::npos; });
}

/// Every one of them, or the first alone.
std::string with(std::string text, const std::string &old, const std::string &put, bool all = false) {
    std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    for (; at != std::string::npos; at = all ? text.find(old, at + put.size()) : std::string::npos)
        text.replace(at, old.size(), put);
    return text;
}

} // namespace

TEST_CASE("programs leave the templates of every demo, and those only") {
    std::size_t templates = 0, corners = 0, boards = 0, shapes = 0;
    for (const auto &entry : std::filesystem::directory_iterator(ROUNDLAY_DEMOS)) {
        if (entry.path().extension() != ".roundlay") continue;
        INFO(entry.path().filename());
        const auto read = read_document_file(entry.path());
        REQUIRE(read.shell);
        const auto all = shapes_of(lay_out(*read.shell));
        if (all.empty()) continue; // round logs have no templates
        const RouterJob job = job_of(all, all_stated());
        CHECK(faults_of_job(job, all) == Faults{});
        shapes += all.size(), templates += job.templates.size(), boards += job.boards.size();
        for (const RouterTemplate &which : job.templates)
            corners += which.corners.size();
    }
    std::printf("demos: %zu faces are %zu templates on %zu boards, %zu inner corners keep the radius\n",
                shapes, templates, boards, corners);
    CHECK(templates > 15);
    CHECK(corners > 10);
}

TEST_CASE("programs leave the templates of random shells with random tools") {
    std::size_t cut = 0, narrow = 0;
    CHECK(rc::check([&] {
        const Layout layout =
            lay_out(*rc::gen::element(0, 1, 2) == 0 ? any_fitted_shell() : any_family_shell());
        auto shapes = shapes_of(layout);
        if (shapes.empty()) return;
        shapes.resize(std::min<std::size_t>(shapes.size(), 12));
        RouterOptions options = all_stated();
        options.tool = *rc::gen::element(3.0, 4.0, 6.35, 8.0, 12.0);
        options.board = RouterBoardSize{1600, 900, *rc::gen::element(6.0, 9.5, 18.0)};
        options.depth_step = *rc::gen::element(1.5, 3.0, 4.0, 25.0);
        auto made = router_job(shapes, options);
        while (const auto *problems = std::get_if<RouterProblems>(&made)) {
            ++narrow;
            for (const Said &problem : *problems) // what is not to be is said of one of them by name
                RC_ASSERT(english(problem).find("T") != std::string::npos);
            shapes.pop_back();
            if (shapes.empty()) return;
            made = router_job(shapes, options);
        }
        const RouterJob &job = std::get<RouterJob>(made);
        cut += job.templates.size();
        const Faults faults = faults_of_job(job, shapes);
        if (!faults.empty()) RC_LOG() << faults.front() << "\n";
        RC_ASSERT(faults.empty());
    }));
    std::printf("random shells: %zu templates cut, %zu times a set was refused\n", cut, narrow);
    CHECK(cut > 20);
}

TEST_CASE("marks are cut as deep as is stated, on each template that has them, and nowhere else") {
    std::size_t marks = 0;
    for (const std::string name : {"one-room", "ell-house", "long-house"}) {
        const auto read = read_document_file(std::filesystem::path(ROUNDLAY_DEMOS) / (name + ".roundlay"));
        REQUIRE(read.shell);
        const auto shapes = shapes_of(lay_out(*read.shell));
        RouterOptions options = all_stated();
        options.board = RouterBoardSize{2440, 1220, 12}, options.scribe = 0.5;
        const RouterJob job = job_of(shapes, options);
        const Faults faults = faults_of_job(job, shapes);
        INFO(name << ": " << (faults.empty() ? "" : faults.front()));
        CHECK(faults.empty());
        for (const RouterTemplate &which : job.templates) {
            marks += which.marks.size();
            for (const RouterUse &use : which.uses)
                CHECK((which.marks.empty() || !use.turned_over));
        }
        const std::string text = program_text(job, 0, "Test", Voice());
        CHECK_THAT(text, ContainsSubstring("Marks of shoulders"));
        router_test::Setting setting = setting_of(job.stated);
        setting.scribe = 0.4; // as if it were to be shallower
        CHECK_FALSE(
            router_test::faults_of(text, setting, wanted_on(job, 0, shapes), corners_on(job, 0)).empty());
        options.scribe.reset();
        for (const RouterTemplate &which : job_of(shapes, options).templates)
            CHECK(which.marks.empty());
    }
    CHECK(marks > 20);
    RouterOptions deep = all_stated();
    deep.scribe = 4;
    CHECK(tells(refused({plate()}, deep), "more than one pass takes off: at most 3"));
    deep.scribe = 0;
    CHECK(tells(refused({plate()}, deep), "over 0 and at most half of the board"));
}

TEST_CASE("holes as wide as the tool are bored, wider ones are cleared, narrower ones are told and left") {
    RouterShape bored = plate();
    bored.name = "bored";
    bored.holes = {{{25, 25}, 6}, {{60, 45}, 9}, {{110, 45}, 31.75}, {{25, 60}, 4}};
    RouterOptions options = all_stated();
    options.board = RouterBoardSize{500, 300, 12};
    const std::vector<RouterShape> shapes{bored, plate()};
    const RouterJob job = job_of(shapes, options);
    CHECK(job.templates.size() == 2); // with holes it is no template of the plain one
    CHECK(job.templates[0].holes.size() == 3);
    REQUIRE(job.left_out.size() == 1);
    CHECK(
        english(job.left_out[0]).find("the hole of 4.00 mm in bored is narrower than the tool of 6.00 mm") ==
        0);
    CHECK(faults_of_job(job, shapes) == Faults{});
    CHECK(rings_of({{}, 6}, 6).empty());
    CHECK(rings_of({{}, 31.75}, 6).back() == (31.75 - 6) / 2);
    const std::string program = program_text(job, 0, "Test", Voice());
    CHECK_THAT(program, ContainsSubstring("Holes are cut before the outline"));
    const auto faults = [&](const std::vector<RouterShape> &wanted) {
        return router_test::faults_of(program, setting_of(job.stated), wanted_on(job, 0, wanted),
                                      corners_on(job, 0));
    };
    // The simulator finds a hole that is a tenth of a millimetre too narrow, too wide, elsewhere, or not
    // there.
    for (const double wrong : {31.55, 31.95}) {
        std::vector<RouterShape> other = shapes;
        other[0].holes[2].diameter = wrong;
        CHECK_FALSE(faults(other).empty());
    }
    std::vector<RouterShape> moved = shapes, gone = shapes;
    moved[0].holes[1].middle.x += 0.2;
    CHECK_FALSE(faults(moved).empty());
    gone[0].holes.erase(gone[0].holes.begin());
    CHECK(tells(faults(gone), "cuts into bored"));
    // An island left standing would be thrown by the tool.
    RouterHole wide{{110, 45}, 60};
    bored.holes = {wide};
    CHECK(faults_of_job(job_of({bored}, options), {bored}) == Faults{});
    bored.holes = {{{8, 40}, 14}};
    const RouterJob border = job_of({bored}, options);
    REQUIRE(border.left_out.size() == 1);
    CHECK(tells({english(border.left_out[0])}, "leaves less than 2.00 mm of board"));
}

TEST_CASE("any holes with any tool are cut as they are wanted") {
    std::size_t cut = 0;
    CHECK(rc::check([&] {
        RouterShape bored = plate();
        const int count = *rc::gen::inRange(1, 4);
        for (int i = 0; i < count; ++i)
            bored.holes.push_back({{*rc::gen::inRange(100, 1300) / 10.0, *rc::gen::inRange(100, 800) / 10.0},
                                   *rc::gen::inRange(30, 400) / 10.0});
        RouterOptions options = all_stated();
        options.board = RouterBoardSize{500, 300, *rc::gen::element(6.0, 12.0, 18.0)};
        options.tool = *rc::gen::element(3.0, 6.0, 6.35, 12.0);
        options.depth_step = *rc::gen::element(1.5, 4.0, 25.0);
        const auto made = router_job({bored}, options);
        if (!std::holds_alternative<RouterJob>(made)) RC_DISCARD("no room for tabs");
        const RouterJob &job = std::get<RouterJob>(made);
        RC_ASSERT(job.left_out.size() + job.templates[0].holes.size() == bored.holes.size());
        RouterShape wanted = bored; // those that are not told as left out
        wanted.holes = job.templates[0].holes;
        cut += wanted.holes.size();
        const Faults faults = faults_of_job(job, {wanted});
        if (!faults.empty()) RC_LOG() << faults.front() << "\n";
        RC_ASSERT(faults.empty());
    }));
    std::printf("random holes: %zu cut\n", cut);
    CHECK(cut > 10);
}

TEST_CASE("a rod through a corner is on its template from above, in shell, joist and on boards") {
    const auto read = read_document_file(std::filesystem::path(ROUNDLAY_DEMOS) / "one-room.roundlay");
    REQUIRE(read.shell);
    Layout layout = lay_out(*read.shell);
    std::size_t before = shapes_of(layout).size();
    Piece &piece = layout.pieces[Index<Piece>(0)];
    piece.cuts.emplace_back(Bore{.x = 60,
                                 .y = piece.blank.width / 2,
                                 .z_from = 0,
                                 .z_to = piece.blank.height,
                                 .diameter = 22,
                                 .use = BoreUse::rod});
    const auto shapes = shapes_of(layout);
    CHECK(shapes.size() > before);
    const auto bored = std::ranges::find_if(shapes, [](const RouterShape &s) { return !s.holes.empty(); });
    REQUIRE(bored != shapes.end());
    CHECK(bored->name.find("above") != std::string::npos);
    CHECK(std::abs(std::abs(bored->holes[0].middle.x) - 60) < 1e-9);
    CHECK(bored->holes[0].diameter == 22);
    const RouterJob job = job_of({*bored}, all_stated());
    CHECK(faults_of_job(job, {*bored}) == Faults{});
}

TEST_CASE("the simulator finds what is planted") {
    const std::vector<RouterShape> shapes{comb(), plate()};
    RouterOptions options = all_stated();
    options.board = RouterBoardSize{500, 300, 12};
    const RouterJob job = job_of(shapes, options);
    REQUIRE(job.boards.size() == 1);
    const std::string program = program_text(job, 0, "Test", Voice());
    const auto faults = [&](const std::string &text) {
        return router_test::faults_of(text, setting_of(job.stated), wanted_on(job, 0, shapes),
                                      corners_on(job, 0));
    };
    REQUIRE(faults(program) == Faults{});

    CHECK(tells(faults(with(program, "Z-12.300", "Z-13.300", true)), "deeper than the board"));
    CHECK(tells(faults(with(program, "Z-12.300", "Z-11.000", true)), "not cut through"));
    CHECK(tells(faults(with(program, "Z-9.000", "Z-12.300", true)), "is held by 0 tabs"));
    CHECK(tells(faults(with(program, "Z-9.000", "Z-12.300", true)), "lies loose on the machine"));
    CHECK(tells(faults(with(program, "Z-9.000", "Z-12.300")), "is held by 3 tabs") ==
          false); // 2 to 4 are held
    CHECK(tells(faults(with(program, "(plate)\nG0 Z20.000", "(plate)\nG0 Z-1.000")), "rapid move"));
    CHECK(tells(faults(with(program, "(plate)\nG0 Z20.000", "(plate)\nG0 Z-1.000")), "through wood"));
    CHECK(tells(faults(with(program, "G1 Z-2.460", "G0 Z-2.460")), "rapid move down into the board"));
    CHECK(tells(faults(with(program, "Z-2.460", "Z-7.380", true)), "first pass is deeper than a step"));
    CHECK(tells(faults(with(program, "F1500.000", "F2500.000", true)), "faster than stated"));
    CHECK(tells(faults(with(program, " F500.000", "", true)), "without a feed"));
    CHECK(tells(faults(with(program, "M3 S18000", "M3 S0")), "spindle stands"));
    CHECK(tells(faults(with(program, "M30\n", "")), "no M30"));
    CHECK(tells(faults(with(program, "G2 X", "G3 X", true)), "cuts into"));
    CHECK(tells(faults(with(program, "G2 X", "G43 X")), "not among the plain words"));
    CHECK(tells(faults(with(program, "(plate)", "(plat\u00E9)")), "no ASCII"));
}

TEST_CASE("the simulator finds the wrong side of the line") {
    RouterOptions options = all_stated();
    options.board = RouterBoardSize{500, 300, 12};
    const std::vector<RouterShape> larger{{"block", {{0, 0}, {200, 0}, {200, 100}, {0, 100}}}};
    const double tool = *options.tool;
    // the way round this one is the way within the larger one
    const std::vector<RouterShape> smaller{
        {"block", {{tool, tool}, {200 - tool, tool}, {200 - tool, 100 - tool}, {tool, 100 - tool}}}};
    RouterJob job = job_of(smaller, options);
    auto wanted = wanted_on(job, 0, larger);
    for (auto &p : wanted[0].outline)
        p.x -= tool, p.y -= tool;
    const auto faults =
        router_test::faults_of(program_text(job, 0, "Test", Voice()), setting_of(job.stated), wanted, {});
    CHECK(tells(faults, "cuts into block"));
    // and a template that is left a tenth of a millimetre too large
    const std::vector<RouterShape> fat{{"block", {{0, 0}, {200.1, 0}, {200.1, 100}, {0, 100}}}};
    job = job_of(fat, options);
    CHECK(tells(router_test::faults_of(program_text(job, 0, "Test", Voice()), setting_of(job.stated),
                                       wanted_on(job, 0, larger), {}),
                "larger than wanted"));
}

TEST_CASE("inner corners that keep the tool's radius are told with what stays") {
    const RouterJob job = job_of({comb()}, all_stated());
    const auto &corners = job.templates[0].corners;
    REQUIRE(corners.size() == 3);
    CHECK(corners[0].at == Vec2{40, 60});
    for (const InnerCorner &corner : corners)
        CHECK(std::abs(corner.left - 3 * (std::sqrt(2.0) - 1)) < 2e-3);
}

TEST_CASE("shapes that are alike are one template, turned or turned over") {
    RouterShape turned = plate(), over = plate(), other = plate();
    turned.name = "turned", over.name = "over", other.name = "other";
    for (Vec2 &p : turned.outline)
        p = {7 - p.y, p.x};
    std::ranges::reverse(over.outline);
    for (Vec2 &p : over.outline)
        p.x = -p.x;
    other.outline[2].x += 0.1;
    const RouterJob job = job_of({plate(), turned, over, other}, all_stated());
    REQUIRE(job.templates.size() == 2);
    REQUIRE(job.templates[0].uses.size() == 3);
    CHECK_FALSE(job.templates[0].uses[1].turned_over);
    CHECK(job.templates[0].uses[2].turned_over);
    CHECK(job.templates[1].uses[0].name == "other");
}

TEST_CASE("as many boards as are needed, and the same bytes each time") {
    std::vector<RouterShape> shapes;
    for (int i = 0; i < 9; ++i)
        shapes.push_back({"S" + std::to_string(i), {{0, 0}, {160.0 + i, 0}, {150, 90}, {0, 90}}});
    RouterOptions options = all_stated();
    options.board = RouterBoardSize{460, 300, 12};
    const RouterJob job = job_of(shapes, options);
    CHECK(job.boards.size() == 3);
    CHECK(faults_of_job(job, shapes) == Faults{});
    for (std::size_t board = 0; board < job.boards.size(); ++board)
        CHECK(program_text(job, board, "H", Voice()) ==
              program_text(job_of(shapes, options), board, "H", Voice()));
}

TEST_CASE("each file says its caution first, in letters that any control knows") {
    const RouterJob job = job_of({plate()}, all_stated());
    for (const Language language : {Language::english, Language::french}) {
        const std::string text =
            program_text(job, 0, "Tarnfold (Südhütte); %1", Voice({language, UnitSystem::imperial}));
        CHECK(text.rfind("(Tarnfold <Sudhutte>, -1", 0) == 0);
        CHECK(std::ranges::all_of(text, [](char c) { return c == '\n' || (c >= 32 && c < 127); }));
        CHECK_THAT(text, ContainsSubstring("G21"));
        for (std::size_t at = 0, end; (end = text.find('\n', at)) != std::string::npos; at = end + 1)
            CHECK(end - at <= 80);
        CHECK(text.find(language == Language::english ? "CAUTION" : "ATTENTION") < 100);
    }
}

TEST_CASE("what is not stated, or cannot be, is refused with what is needed") {
    const std::vector<RouterShape> shapes{comb()};
    CHECK(refused(shapes, RouterOptions{}).size() == 6);
    const auto one = [&](auto change) {
        RouterOptions options = all_stated();
        change(options);
        const auto all = refused(shapes, options);
        REQUIRE(all.size() == 1);
        return all.front();
    };
    CHECK_THAT(one([](RouterOptions &o) { o.feed = {}; }), ContainsSubstring("no feed is stated"));
    CHECK_THAT(one([](RouterOptions &o) { o.feed = 1500 * 25.4; }), ContainsSubstring("at most 30000.00 mm"));
    CHECK_THAT(one([](RouterOptions &o) { o.spindle = {}; }), ContainsSubstring("no spindle speed"));
    CHECK_THAT(one([](RouterOptions &o) { o.plunge = 0; }), ContainsSubstring("plunge feed of 0.00 mm"));
    CHECK_THAT(one([](RouterOptions &o) { o.depth_step = 0; }), ContainsSubstring("never gets through"));
    CHECK_THAT(one([](RouterOptions &o) { o.safe_height = -5; }), ContainsSubstring("below the board"));
    CHECK_THAT(one([](RouterOptions &o) { o.tabs = 0; }), ContainsSubstring("comes loose"));
    CHECK_THAT(one([](RouterOptions &o) { o.tab_height = 12; }),
               ContainsSubstring("less than the board is thick"));
    CHECK_THAT(one([](RouterOptions &o) { o.spacing = 5; }), ContainsSubstring("19.00 mm is needed"));
    CHECK_THAT(one([](RouterOptions &o) {
                   o.board->length = 200;
                   o.board->width = 180;
               }),
               ContainsSubstring("smaller than comb, which is 200.00 mm by 100.00 mm") &&
                   ContainsSubstring("a board of 244.00 mm by 144.00 mm is needed"));
    CHECK_THAT(one([](RouterOptions &o) { o.tool = 22; }),
               ContainsSubstring("narrowest inner room of comb: a tool of at most 19.9 mm") ||
                   ContainsSubstring("at most 20.00 mm is needed") ||
                   ContainsSubstring("at most 19.90 mm is needed"));
}

TEST_CASE("a room behind a neck, and an outline that crosses itself, are refused") {
    const RouterShape neck{"neck",
                           {{0, 0},
                            {200, 0},
                            {200, 100},
                            {103, 100},
                            {103, 90},
                            {140, 90},
                            {140, 40},
                            {60, 40},
                            {60, 90},
                            {98, 90},
                            {98, 100},
                            {0, 100}}};
    const auto told = refused({neck}, all_stated());
    REQUIRE(told.size() == 1);
    CHECK_THAT(told[0], ContainsSubstring("narrowest inner room of neck: a tool of at most 4.9"));
    const RouterShape crossed{"crossed", {{0, 0}, {100, 100}, {100, 0}, {0, 90}}};
    REQUIRE(refused({crossed}, all_stated()).size() == 1);
    const RouterShape slit{
        "slit", {{0, 0}, {200, 0}, {200, 100}, {100.5, 100}, {100.5, 50}, {100, 50}, {100, 100}, {0, 100}}};
    CHECK_THAT(refused({slit}, all_stated())[0], ContainsSubstring("slit has an inner room that no tool"));
    const RouterJob job =
        job_of({slit, plate(), crossed}, all_stated()); // what nothing would help is left out
    CHECK(job.left_out.size() == 2);
    CHECK(job.templates.size() == 1);
    CHECK_THAT(program_text(job, 0, "H", Voice()), ContainsSubstring("(slit has an inner room"));
    CHECK(faults_of_job(job, {plate()}) == Faults{});
    CHECK_THAT(refused({crossed}, all_stated())[0], ContainsSubstring("crosses itself"));
}
