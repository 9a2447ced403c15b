// A machine without a drill makes logs whose pegs are bored in place.
#include "exporters/machines/changes.h"
#include "kernel/document/document.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"

#include <algorithm>
#include <fstream>
#include <sstream>

using namespace roundlay;
using namespace roundlay::machines;
using test::english;

namespace {

std::string text_of(const std::string &name) {
    std::ifstream file(std::string(ROUNDLAY_DEMOS) + "/" + name);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

Machine without_drills() {
    const ReadMachine read = read_machine(text_of("four-sided-router.toml"), "router");
    Machine machine = read.machine.value();
    std::erase_if(machine.tools, [](const Tool &tool) { return tool.shape == ToolShape::drill; });
    return machine;
}

std::size_t not_made(const std::vector<ModelMaking> &all) {
    return static_cast<std::size_t>(std::ranges::count_if(
        all, [](const ModelMaking &m) { return m.making.verdict == Verdict::not_made; }));
}

} // namespace

TEST_CASE("A machine without a drill is told to leave the pegs to those who raise") {
    Shell shell = read_document(text_of("one-room.roundlay"), "one-room").shell.value();
    const Machine machine = without_drills();
    const auto now = makings_of(machine, shell, lay_out(shell));
    REQUIRE(not_made(now) > 0);
    const auto help = changes_that_help(machine, shell, now);
    CHECK(help.size() == not_made(now));
    for (const auto &[tag, what] : help)
        CHECK(english(what) == "pegs that are bored in place, as each log is laid");
    shell.pegs.bored = PegBoring::in_place;
    CHECK(not_made(makings_of(machine, shell, lay_out(shell))) == 0);
}
