#include "kernel/document/restate.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <sstream>

using namespace roundlay;
using namespace roundlay::test;

namespace {

std::string told(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited))
        RC_FAIL("refused: " + problem->message + " " + problem->expected);
    return std::get<Document>(edited).text();
}

std::vector<std::string> lines_of(const std::string &text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);)
        if (!line.empty()) lines.push_back(line);
    return lines;
}

/// The lines under no header that starts with the name.
std::vector<std::string> lines_outside(const std::string &text, const std::string &name) {
    std::vector<std::string> lines;
    bool inside = false;
    for (const std::string &line : lines_of(text)) {
        const auto at = line.find_first_not_of('[');
        if (line.front() == '[') inside = line.compare(at, name.size(), name) == 0;
        if (!inside && line.front() != '#') lines.push_back(line);
    }
    return lines;
}

Document document_of(const Shell &shell) {
    return Document(write_document(shell), "x");
}

/// The shell with every length as a person could have typed it, in millimetres; nothing where no document may
/// state it.
std::optional<Shell> typed(Shell shell) {
    const UnitSystem units = shell.units;
    shell.units = UnitSystem::metric;
    auto read = document_of(shell).read().shell;
    if (read) read->units = units;
    return read;
}

/// One part of a shell and the header that its statements stand under.
struct Part {
    const char *header;
    void (*take)(Shell &, const Shell &);
};

constexpr Part parts[] = {
    {"opening", [](Shell &a, const Shell &b) { a.openings = b.openings; }},
    {"partition", [](Shell &a, const Shell &b) { a.partitions = b.partitions; }},
    {"step", [](Shell &a, const Shell &b) { a.steps = b.steps; }},
    {"trim", [](Shell &a, const Shell &b) { a.trim = b.trim; }},
    {"floor", [](Shell &a, const Shell &b) { a.floors = b.floors; }},
    {"bore", [](Shell &a, const Shell &b) { a.bores = b.bores; }},
    {"pegs", [](Shell &a, const Shell &b) { a.pegs = b.pegs; }},
    {"rounds", [](Shell &a, const Shell &b) { a.rounds = b.rounds; }},
    {"wood", [](Shell &a, const Shell &b) { a.wood = b.wood; }},
    {"log", [](Shell &a, const Shell &b) { a.logs = b.logs, a.own_logs = b.own_logs; }},
};

} // namespace

TEST_CASE("Any shell becomes any other: the document reads as it") {
    CHECK(rc::check([] {
        const Shell before = any_statements(), after = any_statements();
        const Document next(told(restated(document_of(before), before, after)), "x");
        const ReadResult read = next.read();
        RC_ASSERT(read.shell.has_value());
        RC_ASSERT(*read.shell == after);
    }));
}

TEST_CASE("A shell that can be built becomes another one of its family and comes back") {
    CHECK(rc::check([] {
        const auto as_typed = [] { return typed(any_family_shell()); };
        const auto first = as_typed(), second = as_typed();
        RC_PRE(first && second); // some state a corner twice, which no document may
        const Shell &before = *first, &after = *second;
        const Document next(told(restated(document_of(before), before, after)), "x");
        const Document back(told(restated(next, after, before)), "x");
        RC_ASSERT(*back.read().shell == before);
    }));
}

TEST_CASE("What is not changed keeps its text to the last byte") {
    CHECK(rc::check([] {
        const Shell shell = any_statements();
        std::string text = write_document(shell) + "# the last word is the person's\n";
        RC_ASSERT(told(restated(Document(text, "x"), shell, shell)) == text);
    }));
}

TEST_CASE("A part that changes leaves the lines of all others as they are") {
    CHECK(rc::check([] {
        Shell before = any_statements();
        before.partitions.clear();
        before.corners.clear(); // those of partitions would go astray with them
        Shell other = before, strange = any_statements();
        strange.walls = before.walls;
        const Part part = parts[*rc::gen::inRange<std::size_t>(0, std::size(parts))];
        part.take(other, strange);
        if (!document_of(other).read().shell) return; // it names walls that are not there
        const std::string text = write_document(before);
        const std::string next = told(restated(Document(text, "x"), before, other));
        RC_ASSERT(lines_outside(next, part.header) == lines_outside(text, part.header));
        RC_ASSERT(*Document(next, "x").read().shell == other);
    }));
}

TEST_CASE("A corner that follows the shell's notch keeps what it was when that changes") {
    Shell before = plain_shell();
    before.corners.push_back({"A", "B", before.notch});
    before.corners.back().notch.overhang = Length::mm(90);
    Shell after = before;
    after.notch.slope = Slope::rise_per_run(0.2);
    const auto next = restated(document_of(before), before, after);
    REQUIRE(std::holds_alternative<Document>(next));
    CHECK(*std::get<Document>(next).read().shell == after);
}
