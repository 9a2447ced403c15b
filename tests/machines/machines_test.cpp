// Machines as people describe them, and what each makes of a piece.
#include "exporters/machines/making.h"
#include "exporters/machining/access.h"
#include "exporters/machining/operations.h"
#include "exporters/machining/raw_stock.h"
#include "exporters/machining/taken.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/machines/support/access_sim.h"
#include "tests/support/any_mends.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

using namespace roundlay;
using namespace roundlay::test;
using namespace roundlay::machines;
using machining::Operation;

namespace {

std::string demo(const std::string &name) {
    std::ifstream in(std::filesystem::path(ROUNDLAY_DEMOS) / name);
    std::stringstream text;
    text << in.rdbuf();
    return text.str();
}

Machine machine_in(const std::string &text) {
    const ReadMachine read = read_machine(text, "m.toml");
    for (const Problem &problem : read.problems)
        UNSCOPED_INFO(problem.place.line << ": "
                                         << (problem.said ? english(*problem.said) : problem.message));
    REQUIRE(read.machine);
    return *read.machine;
}

std::string with(std::string text, const std::string &old, const std::string &put) {
    const std::size_t at = text.find(old);
    REQUIRE(at != std::string::npos);
    return text.replace(at, old.size(), put);
}

/// "line: what" of the only problem.
std::string problem_of(const std::string &text) {
    const ReadMachine read = read_machine(text, "m.toml");
    CHECK_FALSE(read.machine);
    REQUIRE(read.problems.size() == 1);
    const Problem &problem = read.problems[0];
    return std::to_string(problem.place.line) + ": " +
           (problem.said ? english(*problem.said) : problem.message);
}

std::vector<machining::OperationList> lists_of(const Layout &layout) {
    std::vector<machining::OperationList> all;
    const Bodies bodies = bodies_of(layout);
    for (const Index<Model> model : layout.models.indices())
        all.push_back(machining::operations_of(layout, model, bodies[model]));
    return all;
}

Tool flat(double diameter, double reach) {
    return {"t", ToolShape::flat, diameter, 0, reach, reach, 1};
}

/// By how many millimetres what is needed differs from what there is.
double lacks(const Said &why) {
    std::vector<double> lengths;
    for (const Amount &amount : why.amounts)
        if (const auto *length = std::get_if<LengthAmount>(&amount.value())) lengths.push_back(length->mm);
    return lengths.size() == 2 ? std::abs(lengths[0] - lengths[1]) : 1000;
}

/// A pocket in the middle of the top of a stick of 2,000 by 200 by 200.
Operation pocket(double wide, double along, double deep) {
    Operation o;
    o.kind = machining::OperationKind::pocket;
    const auto side = [&](Vec3 n, Vec3 at) { o.sides.push_back({{n, dot(n, at)}, ""}); };
    const Vec3 low{1000, 100 - wide / 2, 200 - deep}, high{1000 + along, 100 + wide / 2, 200};
    side({-1, 0, 0}, low), side({1, 0, 0}, high), side({0, -1, 0}, low), side({0, 1, 0}, high),
        side({0, 0, -1}, low);
    o.box = {low, high};
    for (const double x : {low.x, high.x})
        for (const double y : {low.y, high.y})
            o.corners.push_back({{x, y, low.z}, {x, y, high.z}, 90});
    for (const double x : {low.x, high.x})
        o.corners.push_back({{x, low.y, low.z}, {x, high.y, low.z}, 90});
    for (const double y : {low.y, high.y})
        o.corners.push_back({{low.x, y, low.z}, {high.x, y, low.z}, 90});
    o.access = {{LogFace::top, deep, 0}};
    return o;
}

/// Between two upright shoulders down to a seam that slopes both ways, in a stick of that size.
Operation sloping(double slope_x, double slope_y, Blank size) {
    Operation o;
    o.kind = machining::OperationKind::slot;
    const Vec3 middle{size.length / 2, size.width / 2, size.height / 2};
    const double half = size.width / 3;
    o.sides = {{{{-1, 0, 0}, half - middle.x}, ""}, {{{1, 0, 0}, middle.x + half}, ""}};
    const double k = 1 / std::hypot(slope_x, slope_y, 1);
    const Vec3 down = k * Vec3{slope_x, slope_y, -1};
    o.sides.push_back({{down, dot(down, middle)}, ""});
    const Cell stock = machining::cell_of({size, {}, 0});
    o.box = bounds(machining::cell_taken(o, stock));
    machining::find_access(o, stock);
    return o;
}

Stock stick() {
    return {{2000, 200, 200}, {}, 0};
}

} // namespace

TEST_CASE("the machines of the demo are read whole") {
    const Machine router = machine_in(demo("four-sided-router.toml"));
    CHECK(router.works_from.size() == 5);
    CHECK(router.length == 13000);
    CHECK(router.tools.size() == 4);
    REQUIRE(router.saw);
    CHECK(router.saw->tilt == 45);
    const Machine drill = machine_in(demo("drill-and-chain.toml"));
    CHECK(drill.may_not.size() == 3);
    CHECK(drill.tools[1].thickness == 28);
    CHECK_FALSE(drill.saw);
}

TEST_CASE("what is wrong with a machine is told with its line and what is needed") {
    const std::string good = demo("drill-and-chain.toml");
    const ReadMachine mistyped = read_machine(with(good, "weight_kg", "wieght_kg"), "m.toml");
    REQUIRE(mistyped.problems.size() == 2);
    CHECK(english(*mistyped.problems[0].said) == "there is no key wieght_kg here; did you mean weight_kg?");
    CHECK(mistyped.problems[0].place.line == 10);
    CHECK(english(*mistyped.problems[1].said) == "weight_kg is missing");
    CHECK_THAT(problem_of(with(good, "may_not", "colour = 3\nmay_not")),
               ContainsSubstring("4: there is no key colour here"));
    CHECK_THAT(problem_of(with(good, "length = \"150 mm\"", "length = \"250 mm\"")),
               ContainsSubstring("24: the tool chain 40 is 250 mm long and reaches 180 mm") &&
                   ContainsSubstring("a reach of 250 mm or more is needed"));
    CHECK_THAT(problem_of(with(good, "\"9 m\"", "9000")),
               ContainsSubstring("7: length must be a length over 0 with its unit"));
    CHECK_THAT(problem_of(with(good, "\"9 m\"", "\"-9 m\"")), ContainsSubstring("7: length must be"));
    CHECK_THAT(problem_of(with(good, "800", "-1")), ContainsSubstring("weight_kg must be a number from 1"));
    CHECK_THAT(problem_of(with(good, "\"drill\"", "\"auger\"")),
               ContainsSubstring("auger is none of flat, ball, drill, chain"));
    CHECK_THAT(problem_of(with(good, "\"above\"", "\"over\"")),
               ContainsSubstring("3: over is none of above"));
    CHECK_THAT(problem_of(with(good, "thickness = \"28 mm\"\n", "")),
               ContainsSubstring("thickness is missing"));
    CHECK_THAT(problem_of(with(good, "[bed]", "[bed")), ContainsSubstring("the text is not TOML"));
    CHECK_THAT(problem_of("name = \"n\"\nworks_from = [\"above\"]\n[bed]\nlength = \"1 m\"\nwidth = \"1 "
                          "m\"\nheight = \"1 m\"\nweight_kg = 9\n"),
               ContainsSubstring("makes nothing"));
}

TEST_CASE("a pocket keeps the tool's radius in its corners, as the simulation finds it") {
    const Operation o = pocket(80, 120, 60);
    Machine machine;
    machine.tools = {flat(40, 100)};
    const OperationMaking made = made_by(machine, o, o.access[0], machine.tools[0]);
    CHECK(made.verdict == Verdict::by_hand);
    REQUIRE(made.kept.size() == 4);
    CHECK(made.kept[0].radius == 20);
    CHECK(std::abs(made.left - 4 * 60 * 20 * 20 * (1 - M_PI / 4)) < 1e-6);
    const auto left = access_sim::left_by(
        o, stick(), machine.tools[0], {.from = LogFace::top, .most_tilt = 0, .least_cell = 1, .spared = 0});
    std::printf("pocket: %.0f mm3 left by the formula, %.0f by the simulation\n", made.left, left.volume);
    CHECK(std::abs(left.volume - made.left) < 0.3 * made.left);
}

TEST_CASE("a notch is tilted for as all of its faces ask together, as the simulation finds it") {
    const auto tilt_from = [](const Operation &o, LogFace side) {
        for (const auto &access : o.access)
            if (access.side == side) return access.tilt;
        return -1.0;
    };
    const Operation eighth = sloping(0.125, 0.125, {400, 200, 200});
    // Along both the seam and an upright shoulder runs but one way, and it rises by 1:8 along y. The seam for
    // itself would have asked for asin(1/8 / sqrt(1 + 2/64)), 7.07.
    CHECK(std::abs(tilt_from(eighth, LogFace::outside) - 7.125016) < 1e-5);
    // From the top the tool's end lies on the seam: acos(1 / sqrt(1 + 2/64)).
    CHECK(std::abs(tilt_from(eighth, LogFace::top) - 10.024988) < 1e-5);
    CHECK(tilt_from(sloping(0, 0, {400, 200, 200}), LogFace::outside) < 1e-9);

    const Stock small{{400, 60, 60}, {}, 0};
    const Operation half = sloping(0.5, 0.5, small.size);
    const double together = std::atan(0.5) * 180 / M_PI, alone = std::asin(0.5 / std::sqrt(1.5)) * 180 / M_PI;
    CHECK(std::abs(tilt_from(half, LogFace::outside) - together) < 1e-6);
    const Tool tool = flat(12, 120);
    const auto left = [&](double tilt) {
        return access_sim::left_by(half, small, tool,
                                   {.from = LogFace::outside,
                                    .most_tilt = tilt,
                                    .least_cell = 1,
                                    .spared = 0.3,
                                    .right_through = true});
    };
    const auto enough = left(together + 0.01), too_little = left(alone + 0.01);
    std::printf("notch 1:2: %.0f of %.0f mm3 stay at %.2f degrees, %.0f at %.2f\n", enough.volume,
                enough.whole, together, too_little.volume, alone);
    CHECK(too_little.volume > 1.5 * enough.volume);
}

TEST_CASE("reach, room and what may not be decide") {
    const Operation o = pocket(80, 120, 60);
    Machine machine;
    const auto why = [&](const Tool &tool) {
        return english(made_by(machine, o, o.access[0], tool).why.value());
    };
    CHECK_THAT(why(flat(40, 50)),
               ContainsSubstring("it needs a reach of 60 mm from the top, and the tool t has 50 mm"));
    CHECK_THAT(why(flat(90, 100)), ContainsSubstring("its room is 80 mm wide and the tool t is 90 mm"));
    Tool chain{"c", ToolShape::chain, 40, 28, 150, 180, 1};
    const OperationMaking made = made_by(machine, o, o.access[0], chain);
    CHECK(made.verdict == Verdict::by_hand);
    CHECK(made.kept.size() == 2); // the nose, at both ends of the bar's way
    CHECK(made.waved);            // by plunges 10 apart
    CHECK(std::abs(made.left - 2 * 80 * 20 * 20 * (1 - M_PI / 4) - 80 * 120 * (20 - std::sqrt(375.0))) <
          1e-6);
    chain.diameter = 130;
    CHECK_THAT(why(chain), ContainsSubstring("narrower than the chain c"));
}

TEST_CASE("logs too long, too thick or too heavy are not made, with what is needed") {
    const Layout layout = lay_out(plain_shell());
    const auto lists = lists_of(layout);
    Machine machine = machine_in(demo("four-sided-router.toml"));
    CHECK(making_of(machine, lists[0], 300).against.empty());
    CHECK_THAT(english(making_of(machine, lists[0], 1201).against.at(0)),
               ContainsSubstring("may weigh 1201 kg and the machine bears 1200 kg"));
    machine.length = 3000;
    CHECK_THAT(english(making_of(machine, lists[0], {}).against.at(0)),
               ContainsSubstring("long and the bed 3000 mm"));
    machine.length = 13000, machine.width = 100;
    CHECK_THAT(english(making_of(machine, lists[0], {}).against.at(0)),
               ContainsSubstring("the machine takes 100 mm by 420 mm"));
}

TEST_CASE("set-ups are as few as there can be, and never fewer than the sides ask for") {
    const Layout layout = lay_out(plain_shell());
    Machine machine = machine_in(demo("four-sided-router.toml"));
    Machine from_above = machine;
    from_above.works_from = {Way::above, Way::ends};
    for (const auto &list : lists_of(layout)) {
        const PieceMaking all_round = making_of(machine, list, {}), above = making_of(from_above, list, {});
        CHECK(all_round.verdict != Verdict::not_made);
        CHECK(all_round.setups == 1);
        CHECK(above.setups == static_cast<int>(list.setups.size()));
    }
}

TEST_CASE("each demo and each machine: every piece gets a verdict, every refusal a reason") {
    for (const char *file : {"four-sided-router.toml", "drill-and-chain.toml"}) {
        const Machine machine = machine_in(demo(file));
        std::size_t counts[3] = {};
        for (const auto &entry : std::filesystem::directory_iterator(ROUNDLAY_DEMOS)) {
            if (entry.path().extension() != ".roundlay") continue;
            const auto read = read_document_file(entry.path());
            REQUIRE(read.shell);
            for (const auto &list : lists_of(lay_out(*read.shell))) {
                const PieceMaking making = making_of(machine, list, {});
                ++counts[static_cast<int>(making.verdict)];
                REQUIRE(making.operations.size() == list.operations.size());
                for (const OperationMaking &made : making.operations) {
                    CHECK(made.why.has_value() == (made.verdict == Verdict::not_made));
                    CHECK(made.from.has_value() == (made.verdict != Verdict::not_made));
                    CHECK((made.verdict == Verdict::by_hand) == (made.left > 0));
                }
            }
        }
        std::printf("%s: %zu whole, %zu by hand, %zu not made\n", file, counts[0], counts[1], counts[2]);
    }
}

namespace {

/// What the simulation was asked, and how often it agreed.
struct Agreed {
    std::size_t pieces = 0, thin = 0, near = 0;
    std::size_t made[5] = {}, not_made[5] = {}; ///< by shape, the saw last
};
constexpr std::size_t saw_at = 4;

Tool any_tool_for(const Operation &o) {
    const double reach = *rc::gen::element(60.0, 120.0, 200.0, 300.0, 450.0);
    Tool tool = flat(*rc::gen::element(16.0, 25.0, 40.0, 60.0), reach);
    if (o.round) tool.shape = ToolShape::ball;
    if (o.bore && *rc::gen::element(true, false))
        tool.shape = ToolShape::drill, tool.diameter = o.bore->diameter;
    if (!o.round && !o.bore && o.sides.size() > 1 && *rc::gen::element(true, false)) {
        tool.shape = ToolShape::chain;
        tool.thickness = tool.diameter * *rc::gen::element(0.4, 0.7);
    }
    return tool;
}

/// The grid is coarser than what it lacks: a tool a little larger, or shorter, would be found out; and so
/// fine are the steps in which one that tilts too little cuts slopes.
bool is_near(const Operation &o, const Stock &stock, Tool tool, const access_sim::Trial &trial,
             const machining::AccessSide &access, const Said &why, double cell) {
    if (lacks(why) < 3 * cell) return true;
    const double short_of = access.tilt - trial.most_tilt;
    if (short_of > 0 && tool.diameter * std::tan(short_of * M_PI / 180) < 3 * cell) return true;
    if (tool.shape != ToolShape::chain) return false;
    tool.diameter += 3 * cell, tool.thickness += 3 * cell;
    return access_sim::left_by(o, stock, tool, trial).stays > 0;
}

void compare_tool(const machining::OperationList &list, const Operation &o,
                  const machining::AccessSide &access, Agreed &agreed) {
    const Tool tool = any_tool_for(o);
    Machine machine;
    machine.tilt = *rc::gen::element(0.0, 5.0, 15.0, 45.0);
    const OperationMaking made = made_by(machine, o, access, tool);
    const access_sim::Trial trial{.from = access.side, .most_tilt = machine.tilt};
    const auto left = access_sim::left_by(o, list.stock.stock, tool, trial);
    if (left.deep < 8 || static_cast<double>(left.deep) < 0.05 * static_cast<double>(left.cells)) {
        // little of it lies farther from its sides than the grid is wide
        ++agreed.thin;
        return;
    }
    const auto shape = static_cast<std::size_t>(tool.shape);
    RC_LOG() << list.tag << " " << o.mark << " kind " << static_cast<int>(o.kind) << " from "
             << static_cast<int>(access.side) << ", shape " << shape << " " << tool.diameter << " by "
             << tool.thickness << " reach " << tool.reach << " needs " << access.reach << ", tilt "
             << access.tilt << " of " << machine.tilt << ": " << left.stays << " of " << left.deep
             << " cells of " << left.cell << " stay, told " << made.left / left.whole << " "
             << (made.why ? english(*made.why) : "made") << "\n";
    if (made.verdict != Verdict::not_made) {
        ++agreed.made[shape];
        const double part = static_cast<double>(left.stays) / static_cast<double>(left.deep);
        RC_ASSERT(part <= 0.02 + 2 * made.left / std::max(1.0, left.whole));
    } else if (left.stays == 0) {
        RC_ASSERT(is_near(o, list.stock.stock, tool, trial, access, *made.why, left.cell));
        ++agreed.near;
    } else
        ++agreed.not_made[shape];
}

void compare_saw(const machining::OperationList &list, const Operation &o,
                 const machining::AccessSide &access, Agreed &agreed) {
    Machine machine;
    machine.saw = Saw{*rc::gen::element(60.0, 130.0, 190.0, 320.0), *rc::gen::element(0.0, 10.0, 45.0, 60.0)};
    const OperationMaking made = machines::sawn(machine, o, access);
    const access_sim::Sawn found = access_sim::sawn(o, list.stock.stock, *machine.saw, access.side);
    if (found.places < 8) {
        ++agreed.thin;
        return;
    }
    RC_LOG() << list.tag << " " << o.mark << " from " << static_cast<int>(access.side) << ", saw "
             << machine.saw->depth << " deep, tilt " << machine.saw->tilt << ": " << found.missed << " of "
             << found.places << " missed, " << (made.why ? english(*made.why) : "made") << "\n";
    if (made.verdict != Verdict::not_made) {
        ++agreed.made[saw_at];
        RC_ASSERT(found.missed == 0U);
    } else if (found.missed == 0) {
        RC_ASSERT(lacks(*made.why) < 6); // it looks at whole millimetres, and so far beside the plane
        ++agreed.near;
    } else
        ++agreed.not_made[saw_at];
}

void compare_pieces(const Layout &layout, std::size_t most, Agreed &agreed) {
    const auto few = static_cast<std::size_t>(std::ssize(layout.models));
    const std::size_t every = std::max<std::size_t>(1, few / most);
    std::size_t at = 0;
    for (const Index<Model> model : layout.models.indices()) {
        if (at++ % every) continue;
        const Body body = body_of(layout.pieces[layout.models[model].pieces.front()]);
        const auto list = machining::operations_of(layout, model, body);
        std::vector<const Operation *> reached;
        for (const Operation &o : list.operations)
            if (!o.access.empty() && o.access.front().reach <= 700) reached.push_back(&o);
        if (reached.empty()) continue;
        ++agreed.pieces;
        const Operation &o = **rc::gen::elementOf(reached);
        const auto &access = o.access[*rc::gen::inRange<std::size_t>(0, o.access.size())];
        if (access.reach > 700) continue; // along the log: no tool is so long
        if (!o.round && !o.bore && o.sides.size() == 1 && *rc::gen::element(true, false))
            compare_saw(list, o, access, agreed);
        else
            compare_tool(list, o, access, agreed);
    }
}

} // namespace

TEST_CASE("a simulation of the tool on a grid agrees, on random pieces and tools") {
    Agreed agreed;
    CHECK(rc::check([&] {
        const int kind = *rc::gen::element(0, 1, 2, 3, 4);
        const Layout layout = lay_out(kind == 0   ? any_saddle_shell()
                                      : kind == 1 ? any_tapered_shell()
                                      : kind == 2 ? any_waned_shell()
                                      : kind == 3 ? any_fitted_shell()
                                                  : any_family_shell());
        compare_pieces(layout, 24, agreed);
    }));
    std::printf(
        "random pieces: %zu, %zu too thin and %zu too near for the grid; made and not made, as it finds: "
        "flat %zu %zu, ball %zu %zu, drill %zu %zu, chain %zu %zu, saw %zu %zu\n",
        agreed.pieces, agreed.thin, agreed.near, agreed.made[0], agreed.not_made[0], agreed.made[1],
        agreed.not_made[1], agreed.made[2], agreed.not_made[2], agreed.made[3], agreed.not_made[3],
        agreed.made[4], agreed.not_made[4]);
    CHECK(agreed.pieces >= 500);
    for (const std::size_t shape : {0, 1, 2, 3, 4})
        CHECK(agreed.made[shape] >= 5);
    for (const std::size_t shape : {0, 1, 3, 4})
        CHECK(agreed.not_made[shape] >= 5);
}
