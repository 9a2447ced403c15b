#include "kernel/document/restate.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/layout.h"
#include "kernel/shell/partition_edit.h"
#include "kernel/shell/plan_edit.h"
#include "kernel/shell/shapes.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <cmath>

using namespace roundlay;
using namespace roundlay::test;

namespace {

/// Quoted values that hold a digit and end in a unit.
std::vector<std::string> lengths_in(const std::string &text) {
    std::vector<std::string> all;
    for (std::size_t at = text.find(" = \""); at != std::string::npos; at = text.find(" = \"", at + 1)) {
        const std::size_t begin = at + 4;
        const std::string value = text.substr(begin, text.find('"', begin) - begin);
        if (value.ends_with(" mm") || value.ends_with(" in") || value.ends_with(" ft")) all.push_back(value);
    }
    return all;
}

/// Thousandths of a millimetre, or inches in 64ths or twelfths.
bool can_be_typed(const std::string &value, UnitSystem units) {
    const std::size_t point = value.find('.');
    const std::size_t decimals = point == std::string::npos ? 0 : value.find(' ', point) - point - 1;
    if (value.ends_with(" mm")) return units == UnitSystem::metric ? decimals <= 3 : decimals == 0;
    return decimals == 0;
}

/// A step of a drag as pixels and a snap leave it: so many parts, summed up from doubles that are none.
Length dragged(UnitSystem units) {
    const double part = units == UnitSystem::metric ? 5 : mm_per_inch / 4;
    double sum = 0;
    for (int i = *rc::gen::inRange(1, 60); i > 0; --i)
        sum += part / 3 + part * 2 / 3;
    return Length::mm(*rc::gen::arbitrary<bool>() ? sum : -sum);
}

Shell begun(UnitSystem units) {
    Shell shell = begun_in(units);
    const bool metric = units == UnitSystem::metric;
    shell.thickness = metric ? Length::mm(200) : Length::inches(8);
    shell.rounds.count = 9;
    shell.rounds.pitch = metric ? Length::mm(240) : Length::inches(26.0 / 3);
    shell.walls =
        l_plan(metric ? Length::mm(12000) : Length::feet(36), metric ? Length::mm(9000) : Length::feet(30),
               metric ? Length::mm(5000) : Length::feet(16), metric ? Length::mm(4000) : Length::feet(14));
    Opening door = window("A", 1219.2, 0, 914.4, 1727.2);
    if (metric) door = window("A", 1200, 0, 900, 1700);
    shell.openings = {door};
    return shell;
}

Shell edited(Shell shell) {
    const Length by = dragged(shell.units);
    switch (*rc::gen::inRange(0, 4)) {
    case 0:
        return wall_moved(shell, *rc::gen::inRange<std::size_t>(0, shell.walls.size()), by).value_or(shell);
    case 1:
        shell.openings[0].from_left = shell.openings[0].from_left + Length::mm(std::abs(by.mm()));
        shell.openings[0].height = shell.openings[0].height + by / 7 * 7;
        return shell;
    case 2:
        return with_partition(shell, "A", shell.walls[0].length / 2).value_or(shell);
    default:
        if (shell.partitions.empty()) return shell;
        return partition_moved(shell, 0, shell.partitions[0].from_left + by).value_or(shell);
    }
}

} // namespace

TEST_CASE("After any edits every length in the text is one that a person could have typed") {
    int edits = 0, led_out = 0;
    CHECK(rc::check([&] {
        const UnitSystem units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
        Document document(write_document(begun(units)), "x");
        for (int i = 0; i < 6; ++i) {
            const Shell before = *document.read().shell, after = edited(before);
            auto next = restated(document, before, after);
            RC_ASSERT(std::holds_alternative<Document>(next));
            document = std::get<Document>(std::move(next));
            const ReadResult read = document.read();
            ++edits;
            if (!read.shell) {
                for (const Problem &problem : read.problems)
                    RC_ASSERT(problem.message.find("out of bounds") != std::string::npos);
                ++led_out;
                return; // the window refuses such an edit
            }
            for (const std::string &value : lengths_in(document.text()))
                if (!can_be_typed(value, units)) RC_FAIL("\"" + value + "\"");
            for (std::size_t k = 0; k < after.walls.size(); ++k)
                RC_ASSERT(std::abs(read.shell->walls[k].length.mm() - after.walls[k].length.mm()) <= 1e-6);
            for (const Finding &f : lay_out(*read.shell).findings)
                RC_ASSERT(f.code != "plan-not-closed");
        }
    }));
    CHECK(edits > 300);
    CHECK(led_out < edits / 10);
}
