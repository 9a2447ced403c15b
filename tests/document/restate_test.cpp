#include "kernel/document/restate.h"
#include "kernel/measure/load.h"
#include "tests/document/any_statement.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <functional>

using namespace roundlay;
using roundlay::test::sample;

namespace {

std::string text_of(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited)) RC_FAIL("refused: " + problem->message);
    return std::get<Document>(edited).text();
}

void check_states(const Shell &a, const Shell &b) {
    const std::string before = write_document(a), after = text_of(restated({before, "x"}, a, b));
    const ReadResult read = read_document(after, "x");
    for (const Problem &problem : read.problems)
        if (problem.weight == Weight::error) RC_FAIL(to_text(problem) + "\n" + after);
    RC_ASSERT(read.shell.has_value());
    RC_ASSERT(*read.shell == b);
    if (a == b) RC_ASSERT(after == before);
    RC_ASSERT(text_of(restated({after, "x"}, b, b)) == after);
}

template <auto... part> void take(Shell &to, const Shell &from) {
    ((to.*part = from.*part), ...);
}

/// Parts that can be put from one shell into another over the same walls.
const std::vector<std::function<void(Shell &, const Shell &)>> parts = {
    take<&Shell::name>,     take<&Shell::units>, take<&Shell::thickness>,
    take<&Shell::rounds>,   take<&Shell::notch>, take<&Shell::corners, &Shell::partitions>,
    take<&Shell::logs>,     take<&Shell::steps>, take<&Shell::own_logs>,
    take<&Shell::openings>, take<&Shell::trim>,  take<&Shell::floors>,
    take<&Shell::pegs>,     take<&Shell::bores>, take<&Shell::wood>,
};

Shell built() {
    Shell shell = test::plain_shell();
    shell.floors.push_back({});
    Floor &floor = shell.floors.back();
    floor.name = "G";
    floor.from = shell.walls[0].name, floor.to = shell.walls[2].name;
    floor.level = Length::mm(600);
    return shell;
}

} // namespace

TEST_CASE("Whatever changes in a shell is stated back into its document") {
    CHECK(rc::check("one or several parts", [] {
        const std::vector<Wall> walls = test::any_walls();
        const Shell a = test::any_statements(walls), other = test::any_statements(walls);
        Shell b = a;
        for (int i = *rc::gen::inRange(0, 4); i > 0; --i)
            (*rc::gen::elementOf(parts))(b, other);
        check_states(a, b);
    }));
    CHECK(rc::check("all of it", [] { check_states(test::any_statements(), test::any_statements()); }));
}

TEST_CASE("A corner keeps what it leaves out when the shell's notch changes, and follows where it should") {
    const std::string stated = "[[corner]]\nbetween = [\"A\", \"B\"]\n";
    const Document document(write_document(test::plain_shell()) + stated, "x");
    const Shell before = *document.read().shell;
    Shell both = before, shell_only = before;
    both.notch.overhang = shell_only.notch.overhang = both.corners[0].notch.overhang = Length::mm(90);
    const Document follows = std::get<Document>(restated(document, before, both));
    CHECK(follows.text().ends_with(stated)); // it is as in [notch] still, so that it states nothing
    CHECK(*follows.read().shell == both);
    const Document keeps = std::get<Document>(restated(document, before, shell_only));
    CHECK(keeps.text().find(stated + "overhang = \"0 mm\"") != std::string::npos);
    CHECK(*keeps.read().shell == shell_only);
}

TEST_CASE("Beams come and go inside their own floor, and a person's words stay") {
    const Shell before = built();
    std::string text = write_document(before);
    text.insert(text.find("[[floor]]"), "# the floor of the hall\n");
    Shell after = before;
    after.floors[0].beams = {{Length::mm(2000), {Length::mm(200), Length::mm(250)}}};
    const Document with = std::get<Document>(restated({text, "x"}, before, after));
    CHECK(with.text().find("[[floor.beam]]\nfrom_wall = \"2000 mm\"") != std::string::npos);
    CHECK(with.text().find("[[floor.beam]]") < with.text().find("[pegs]"));
    CHECK(*with.read().shell == after);
    CHECK(std::get<Document>(restated(with, after, before)).text() == text);
}

TEST_CASE("A text that only a person can edit gives a problem and no change") {
    std::string text = write_document(built());
    const Shell before = *read_document(text, "x").shell;
    Shell after = before;
    after.openings.push_back(
        {"", OpeningKind::door, "A", Length(), Length(), Length::mm(900), Length::mm(2000)});
    const std::size_t root = text.find("roundlay = 1");
    text.insert(root, "opening = []\n");
    CHECK(std::holds_alternative<Problem>(restated({text, "x"}, before, after)));
    CHECK(std::holds_alternative<Problem>(restated({"[[floor]\n", "x"}, before, after)));
}

TEST_CASE("A load is stated back in the unit that it is stated in") {
    const auto with = [](const std::string &units, const std::string &load) {
        return "roundlay = 1\n[shell]\nthickness = \"8 in\"\nunits = \"" + units + "\"\n" +
               sample.substr(sample.find("[[wall]]")) +
               "[[floor]]\nname = \"G\"\nfrom = \"A\"\nto = \"C\"\nlevel = \"26 in\"\nlive_load = " + load +
               "\n";
    };
    const auto edited = [&](const std::string &text, double kpa) {
        const Document document(text, "x.roundlay");
        const ReadResult read = read_document(text, "x.roundlay");
        REQUIRE(read.shell);
        Shell after = *read.shell;
        after.floors.at(0).live_load = kpa;
        const auto result = restated(document, *read.shell, after);
        REQUIRE(std::holds_alternative<Document>(result));
        return std::get<Document>(result).text();
    };
    const double fifty = *parse_load("50 psf");
    CHECK(edited(with("imperial", "\"40 psf\""), fifty) == with("imperial", "\"50 psf\""));
    CHECK(edited(with("metric", "\"40 psf\""), fifty) == with("metric", "\"50 psf\""));
    CHECK(edited(with("metric", "1.9"), 2.4) == with("metric", "2.4"));
    CHECK(edited(with("metric", "1.9"), 12.5) == with("metric", "\"12.5 kPa\""));
    CHECK(edited(with("imperial", "\"1.9 kPa\""), 2.4) == with("imperial", "\"2.4 kPa\""));
    CHECK(edited(with("imperial", "\"40 psf\""), *parse_load("40 psf")) == with("imperial", "\"40 psf\""));
}
