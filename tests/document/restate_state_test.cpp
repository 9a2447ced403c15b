#include "kernel/document/restate_state.h"
#include "tests/document/any_state.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <rapidcheck.h>

#include <algorithm>
#include <filesystem>
#include <functional>
#include <map>

using namespace roundlay;

namespace {

const std::string built = "as first built", shall = "as it shall stand";

std::string old_house() {
    return test::text_of(std::filesystem::path(ROUNDLAY_ROOT) /
                         "tests/document/documents/old-house.roundlay");
}

Shell shell_of(const std::string &text, const std::string &state) {
    const ReadResult read = read_document(text, "x", state);
    for (const Problem &problem : read.problems)
        if (problem.weight == Weight::error) FAIL(to_text(problem) + "\n" + text);
    return *read.shell;
}

std::string text_of(const Document::Edited &edited) {
    if (const auto *problem = std::get_if<Problem>(&edited)) FAIL(problem->message);
    return std::get<Document>(edited).text();
}

Opening &opening(Shell &shell, const std::string &name) {
    return *std::ranges::find(shell.openings, name, &Opening::name);
}

using Edit = std::function<void(Shell &)>;

} // namespace

TEST_CASE("What is changed in a state stands in that state, and in no other") {
    const std::map<std::string, Edit> edits = {
        {"an opening that it changes", [](Shell &s) { opening(s, "door").height = Length::feet(5.5); }},
        {"one that it says nothing of", [](Shell &s) { opening(s, "door").width = Length::feet(3.25); }},
        {"one comes",
         [](Shell &s) {
             Opening made = s.openings.front();
             made.name = "light", made.wall = "D", made.from_left = Length::feet(4);
             s.openings.push_back(made);
         }},
        {"one goes",
         [](Shell &s) { std::erase_if(s.openings, [](const Opening &o) { return o.name == "door"; }); }},
        {"all go", [](Shell &s) { s.openings.clear(); }},
        {"a wall longer", [](Shell &s) { s.walls[0].length = s.walls[2].length = Length::feet(24); }},
        {"a table that it does not have yet", [](Shell &s) { s.rounds.gap = Length::inches(1.5); }},
        {"a table that it has", [](Shell &s) { s.pegs.spacing = Length::feet(4); }},
        {"a log of which nothing was said",
         [](Shell &s) {
             OwnLog log;
             log.wall = "B", log.round = 4;
             log.note = "new, from the upper lot";
             s.own_logs.push_back(log);
         }},
        {"the hatch comes back or goes", [](Shell &s) { s.floors.front().openings.clear(); }},
        {"a floor wider apart", [](Shell &s) { s.floors.front().spacing = Length::feet(2); }},
        {"wood", [](Shell &s) { s.wood.species = "eastern white pine"; }},
    };
    const std::string before = old_house();
    for (const std::string &state : {built, shall})
        for (const auto &[name, edit] : edits) {
            INFO(state + ": " + name);
            const Shell was = shell_of(before, state);
            Shell is = was;
            edit(is);
            const std::string after = text_of(restated_in_state({before, "x"}, state, was, is));
            CHECK(shell_of(after, state) == is);
            CHECK(shell_of(after, "") == shell_of(before, ""));
            if (state == shall) CHECK(shell_of(after, built) == shell_of(before, built));
            if (was == is) CHECK(after == before);
            const std::string back = text_of(restated_in_state({after, "x"}, state, is, was)); // and back
            CHECK(shell_of(back, state) == was);
            CHECK(shell_of(back, "") == shell_of(before, ""));
        }
}

TEST_CASE("What a state cannot say alone is refused, and nothing is written") {
    const std::string before = old_house();
    const Shell was = shell_of(before, shall);
    Shell is = was;
    std::ranges::reverse(is.openings); // the order is that of what it stands on
    const auto edited = restated_in_state({before, "x"}, shall, was, is);
    REQUIRE(std::holds_alternative<Problem>(edited));
    CHECK(std::get<Problem>(edited).message ==
          "this change cannot be stated in state \"as it shall stand\" alone");
    const auto nowhere = restated_in_state({before, "x"}, "as it might be", was, is);
    CHECK(std::holds_alternative<Problem>(nowhere));
}

TEST_CASE("Whatever changes in a state is stated in it, or refused") {
    CHECK(rc::check("any two shells over one plan", [] {
        const std::vector<Wall> walls = test::any_walls();
        Shell own = test::any_state_of(walls);
        own.state = "as found";
        Shell was = test::any_state_of(walls), is = test::any_state_of(walls);
        was.state = is.state = "later";
        const std::string plain = write_document(own);
        const ReadResult read = read_document(plain, "x");
        RC_PRE(read.shell.has_value());
        const std::string before = plain + "\n" + test::state_text("later", "", read, was);
        was = *read_document(before, "x", "later").shell; // in the order in which a state has it
        const auto edited = restated_in_state({before, "x"}, "later", was, is);
        const auto *made = std::get_if<Document>(&edited);
        RC_TAG(made ? "stated" : "refused");
        if (!made) return;
        RC_ASSERT(test::in_order(*read_document(made->text(), "x", "later").shell) == test::in_order(is));
        RC_ASSERT(read_document(made->text(), "x").shell == own);
    }));
}
