// Bores that a person states: where they cannot go, and the place that is offered instead.
#include "kernel/layout/bore_marks.h"
#include "kernel/layout/layout.h"
#include "tests/support/catch.h"
#include "tests/support/findings.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

using namespace roundlay;

namespace {

StatedBore rod(const std::string &wall, double from_left, double diameter) {
    StatedBore bore;
    bore.use = BoreUse::rod;
    bore.wall = wall;
    bore.from_left = Length::mm(from_left);
    bore.diameter = Length::mm(diameter);
    return bore;
}

const Finding *refusal(const Findings &findings) {
    const auto it = std::find_if(findings.begin(), findings.end(),
                                 [](const Finding &f) { return f.code == "bore-misses-log"; });
    return it == findings.end() ? nullptr : &*it;
}

/// "…; 300 mm from the left would do"
std::optional<Length> offered(const std::string &words) {
    const std::size_t end = words.find(" from the left would do");
    if (end == std::string::npos) return {};
    const std::size_t begin = words.rfind("; ", end) + 2;
    return Length::mm(std::stod(words.substr(begin, end - begin)));
}

/// 7 m long with a partition, a window and a door in the wall that is bored.
Shell parted() {
    Shell shell = test::plain_shell();
    shell.walls[0].length = shell.walls[2].length = Length::mm(7000);
    Partition partition;
    partition.name = "P";
    partition.from = "A", partition.to = "C";
    partition.from_left = Length::mm(*rc::gen::inRange(1500, 2500));
    partition.heading = shell.walls[1].heading;
    shell.partitions = {partition};
    shell.openings = {test::window("A", 4000, 400, *rc::gen::inRange(300, 900), 300)};
    return shell;
}

} // namespace

TEST_CASE("Where a rod finds no whole log, the place that is offered takes it") {
    int offers = 0;
    CHECK(rc::check([&] {
        Shell shell = parted();
        const double x = *rc::gen::inRange(0, 7000), diameter = *rc::gen::inRange(12, 60);
        shell.bores = {rod("A", x, diameter)};
        const Layout layout = lay_out(shell);
        const Finding *refused = refusal(layout.findings);
        if (!refused) {
            RC_ASSERT(!has_errors(layout.findings));
            return;
        }
        const std::optional<Length> other = offered(test::words({*refused}));
        RC_ASSERT(other.has_value()); // 7 m of wall have one
        ++offers;
        shell.bores[0].from_left = *other;
        const Layout mended = lay_out(shell);
        if (const Finding *again = refusal(mended.findings)) RC_FAIL(test::words({*refused, *again}));
        RC_ASSERT(!mended.pieces.empty());
    }));
    CHECK(offers > 10);
}

TEST_CASE("Bedded are the logs on the foundation and on its steps, in each wall its own") {
    Shell shell = test::plain_shell(); // A and C start with a half log
    FoundationStep step;
    step.wall = "A";
    step.from_left = Length::mm(1500);
    step.width = Length::mm(2000);
    step.rise = Length::mm(230);
    shell.steps = {step};
    const Layout layout = lay_out(shell);
    std::vector<std::string> bedded;
    for (const Piece &piece : layout.pieces)
        if (is_bedded(layout, piece)) bedded.push_back(piece.tag);
    // The step ends in the second round: it parts A-01 in two and carries A-02.
    CHECK(bedded == std::vector<std::string>{"A-01-1", "A-01-2", "A-02-1", "B-01-1", "C-01-1", "D-01-1"});
}
