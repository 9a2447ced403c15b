#include "kernel/document/document.h"
#include "kernel/document/key.h"
#include "kernel/document/restate.h"
#include "tests/document/any_state.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <rapidcheck.h>

#include <algorithm>
#include <filesystem>
#include <vector>

using namespace roundlay;

namespace {

std::string document(const std::string &name) {
    return test::text_of(std::filesystem::path(ROUNDLAY_ROOT) / "tests/document/documents" / name);
}

std::string problems_text(const ReadResult &result) {
    std::string text;
    for (const Problem &problem : result.problems)
        text += to_text(problem) + "\n";
    return text;
}

int line_of(const std::string &text, const std::string &words) {
    const std::size_t at = text.find(words);
    REQUIRE(at != std::string::npos);
    return static_cast<int>(std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n')) +
           1;
}

const Opening *opening_named(const Shell &shell, const std::string &name) {
    const auto found = std::ranges::find(shell.openings, name, &Opening::name);
    return found == shell.openings.end() ? nullptr : &*found;
}

/// A small shell in which something can be wrong with a state that is added.
const std::string small = "roundlay = 1\n[shell]\nstate = \"as found\"\nthickness = \"200 mm\"\n"
                          "[[wall]]\nname = \"A\"\ntoward = \"east\"\nlength = \"5 m\"\n"
                          "[[wall]]\nname = \"B\"\ntoward = \"north\"\nlength = \"4 m\"\n"
                          "[[wall]]\nname = \"C\"\ntoward = \"west\"\nlength = \"5 m\"\n"
                          "[[wall]]\nname = \"D\"\ntoward = \"south\"\nlength = \"4 m\"\n"
                          "[rounds]\ncount = 8\npitch = \"250 mm\"\n"
                          "[[step]]\nwall = \"A\"\nfrom_left = \"3 m\"\nwidth = \"1 m\"\nrise = \"100 mm\"\n"
                          "[[opening]]\nname = \"door\"\nkind = \"door\"\nwall = \"A\"\nfrom_left = \"1 m\"\n"
                          "sill = 0\nwidth = \"900 mm\"\nheight = \"1500 mm\"\n";

struct WrongState {
    const char *text; ///< behind the small shell
    const char *at;   ///< where it is told
    const char *message;
};

} // namespace

TEST_CASE(
    "Every list of the shell says by which keys a state tells its entries, and no key is a state's word") {
    for (const format::Section *section : format::all_sections()) {
        const std::string &name = section->table->name;
        INFO(name);
        const bool of_record =
            name.starts_with("record") || name.starts_with("found") || name == "done" || name == "state";
        if (section->is_list()) CHECK(section->told_by.empty() == of_record);
        for (const format::Item &item : section->table->items)
            if (const auto *key = std::get_if<format::Key>(&item))
                for (const char *word : {"gone", "left_out", "new", "before"})
                    CHECK(std::string(key->name) != word);
    }
}

TEST_CASE("A state is its base with what it says, at its own place in the text") {
    const std::string text = document("old-house.roundlay");
    const ReadResult found = read_document(text, "x"), built = read_document(text, "x", "as first built"),
                     stands = read_document(text, "x", "as it shall stand");
    CHECK(problems_text(found) == "");
    CHECK(problems_text(built) == "");
    CHECK(problems_text(stands) == "");
    REQUIRE(found.shell);
    REQUIRE(built.shell);
    REQUIRE(stands.shell);
    REQUIRE(found.states.size() == 3);
    CHECK(found.states[0] == HouseState{"as found", "", true});
    CHECK(found.states[2] == HouseState{"as it shall stand", "as first built", true});
    CHECK(read_document(text, "x", "as found").shell == found.shell);

    CHECK(found.shell->state == "as found");
    CHECK(found.shell->walls[0].length == std::get<Length>(parse_length("18 ft")));
    CHECK(built.shell->state == "as first built");
    CHECK(built.shell->walls[0].length == std::get<Length>(parse_length("20 ft")));
    CHECK(built.shell->walls[0].heading == found.shell->walls[0].heading);
    CHECK(built.shell->openings.size() == 1);
    CHECK(built.shell->own_logs[1].note.empty());
    CHECK(built.shell->own_logs[1].fabric == Fabric::kept);

    CHECK(stands.shell->walls[0].length == std::get<Length>(parse_length("20 ft")));
    REQUIRE(opening_named(*stands.shell, "late window"));
    CHECK(opening_named(*stands.shell, "late window")->sill == std::get<Length>(parse_length("2 ft")));
    CHECK(opening_named(*stands.shell, "door")->width == std::get<Length>(parse_length("3 ft")));
    CHECK(opening_named(*stands.shell, "door")->height == std::get<Length>(parse_length("5 ft 4 in")));
    CHECK(stands.shell->floors[0].openings.empty());
    CHECK(stands.shell->floors[0].spacing == found.shell->floors[0].spacing);
    CHECK(stands.shell->own_logs.size() == 3);
    CHECK(stands.shell->pegs.diameter == std::get<Length>(parse_length("1 1/4 in")));
    CHECK(stands.shell->pegs.end_distance == found.shell->pegs.end_distance);

    CHECK(stands.places.locate("opening[0].height")->line == line_of(text, "height = \"5 ft 4 in\""));
    CHECK(stands.places.locate("opening[0].width")->line == line_of(text, "width = \"3 ft\""));
    CHECK(stands.places.locate("opening[0]")->line == line_of(text, "name = \"door\"\nheight") - 1);
    CHECK(stands.places.locate("wall[0].length")->line == line_of(text, "length = \"20 ft\""));
}

TEST_CASE("A state that says nothing is its base") {
    const std::string text =
        document("old-house.roundlay") + "\n[[state]]\nname = \"the same\"\non = \"as first built\"\n";
    const ReadResult base = read_document(text, "x", "as first built");
    ReadResult same = read_document(text, "x", "the same");
    REQUIRE(same.shell);
    CHECK(same.shell->state == "the same");
    same.shell->state = base.shell->state;
    CHECK(*same.shell == *base.shell);
}

TEST_CASE("A name that no state has is told with those that there are") {
    const std::string text = document("old-house.roundlay");
    const ReadResult wrong = read_document(text, "x", "as it shal stand");
    CHECK_FALSE(wrong.shell);
    CHECK(problems_text(wrong) ==
          "x: error: there is no state \"as it shal stand\" (did you mean \"as it shall "
          "stand\"?); expected one of the states \"as found\", \"as first built\", \"as "
          "it shall stand\"\n");
    const ReadResult none = read_document("roundlay = 1\n", "x", "as found");
    CHECK(problems_text(none) ==
          "x: error: there is no state \"as found\"; expected a document with states: [[state]]\n");
}

TEST_CASE("States on one another, on nothing or of one name are told once, at their line") {
    const std::string ring = document("ring-of-states.roundlay");
    const ReadResult read = read_document(ring, "x");
    CHECK_FALSE(read.shell);
    CHECK_THAT(
        problems_text(read),
        ContainsSubstring("x:10:6: error: states stand on one another: \"first\" on \"third\" on \"second\" "
                          "on \"first\"; expected one of them on the document's own shell\n"));
    CHECK(problems_text(read).find("on one another") == problems_text(read).rfind("on one another"));

    const auto told = [](const std::string &states) {
        return problems_text(read_document(small + states, "x"));
    };
    CHECK(told("[[state]]\nname = \"b\"\non = \"bb\"\n") ==
          "x:39:6: error: there is no state \"bb\"; expected one of the states \"as found\", \"b\"\n");
    CHECK(
        told("[[state]]\nname = \"b\"\n[[state]]\nname = \"b\"\n") ==
        "x:40:8: error: two states are called \"b\"; the other one stands in line 38; expected a name of its "
        "own for each state\n");
    CHECK(told("[[state]]\nname = \"as found\"\n") == "x:38:8: error: two states are called \"as found\"; "
                                                      "the other one stands in line 3; expected a name of "
                                                      "its own for each state\n");
    CHECK(told("[[state]]\nname = \"\"\n") ==
          "x:38:8: error: \"name\" of a state is empty; expected name = \"as it shall stand\"\n");
    CHECK_THAT(told("[[state]]\non = \"as found\"\n"),
               ContainsSubstring("x:37:1: error: \"name\" is missing"));
    const std::string unnamed = "roundlay = 1\n[shell]\nthickness = \"200 mm\"\n[[state]]\nname = \"b\"\n";
    CHECK_THAT(problems_text(read_document(unnamed, "x")),
               ContainsSubstring("x:4:1: error: the document has states, and its own shell has no name among "
                                 "them; expected state = \"as found\" in [shell]\n"));
}

namespace {

constexpr WrongState wrong_states[] = {
    {"[[state.opening]]\nname = \"window\"\nwidth = \"1 m\"\n", "39:1",
     "state \"b\" changes opening \"window\", which state \"as found\" does not have; expected an entry "
     "that is "
     "there, or new = true for one that comes with this state"},
    {"[[state.opening]]\nname = \"window\"\ngone = true\n", "39:1",
     "state \"b\" takes away opening \"window\", which state \"as found\" does not have; expected an "
     "entry that "
     "is there"},
    {"[[state.log]]\nwall = \"A\"\nround = 2\ngone = true\n", "39:1",
     "state \"b\" takes away round 2 of wall \"A\", which state \"as found\" does not have; expected an "
     "entry "
     "that is there; it only says more of a log or corner, and takes none away"},
    {"[[state.opening]]\nnew = true\nname = \"door\"\n", "39:1",
     "state \"b\" adds opening \"door\", which state \"as found\" has; expected a name of its own, or no "
     "new = "
     "true to change that one"},
    {"[[state.opening]]\nname = \"door\"\ngone = true\nwidth = \"1 m\"\n", "42:9",
     "state \"b\" takes away opening \"door\", and says \"width\" of it; expected gone = true and what "
     "tells "
     "the entry, nothing else"},
    {"[[state.opening]]\nname = \"door\"\nwidth = \"1 m\"\n[[state.opening]]\nname = \"door\"\n", "42:1",
     "state \"b\" changes opening \"door\" twice; the other one stands in line 39; expected one entry "
     "with all "
     "of it"},
    {"[[state.opening]]\nwidth = \"1 m\"\n", "39:1",
     "state \"b\" does not say which entry it changes; expected name of the entry, or new = true for one "
     "that "
     "comes with this state"},
    {"[[state.step]]\nwall = \"A\"\nfrom_left = \"3000 mm\"\ngone = 1\n", "42:8",
     "\"gone\" is said of an entry, or is not; expected true or false, without quotes"},
    {"[state.rounds]\nleft_out = [\"gap\"]\n", "40:13",
     "state \"b\" leaves out \"gap\", which state \"as found\" does not state; expected a key that is "
     "stated "
     "there and not here"},
    {"[state.rounds]\nleft_out = [\"pitch\"]\npitch = \"240 mm\"\n", "40:13",
     "state \"b\" states \"pitch\" and leaves it out; expected a key that is stated there and not here"},
    {"[state.rounds]\nleft_out = \"pitch\"\n", "40:12",
     "\"left_out\" does not name keys; expected a list of keys, such as left_out = [\"pitch\"]"},
    {"[state.trim]\ngone = true\n", "39:1",
     "state \"b\" takes away [trim], which state \"as found\" does not have; expected a table that is "
     "there"},
    {"[[state.rounds]]\ncount = 8\n", "39:1",
     "state \"b\" does not state \"rounds\" as a table; expected a table with the header [state.rounds]"},
    {"[state.opening]\nname = \"door\"\n", "39:1",
     "state \"b\" does not state \"opening\" as entries; expected two brackets on each side, once for "
     "each: "
     "[[state.opening]]"},
    {"[[state.wall]]\nnew = true\nname = \"E\"\nbefore = \"Q\"\ntoward = \"east\"\n", "39:1",
     "state \"b\" adds wall \"E\" before \"Q\", and state \"as found\" has none of that name; expected "
     "the name "
     "of an entry that is there"},
    {"[[state.wall]]\nname = \"A\"\nbefore = \"C\"\n", "41:10",
     "\"before\" names the entry that a new one comes to stand before; expected before = \"B\" beside "
     "new = "
     "true"},
    {"[state.shell]\nstate = \"c\"\n", "40:9",
     "a state is called by its own name, not by one in [state.shell]; expected name = \"as it shall "
     "stand\" in "
     "[[state]]"},
    {"[[state.found]]\ntag = \"A 1\"\n", "39:1",
     "\"found\" cannot stand in a state: what was found is of the house, not of one of its states; "
     "expected "
     "[[found]] in the document"},
    {"[[state.state]]\nname = \"c\"\n", "39:1",
     "\"state\" cannot stand in a state; expected it in the document"},
};

} // namespace

TEST_CASE("A change that cannot be made is told once, at the line of the state's own text") {
    for (const WrongState &wrong : wrong_states) {
        INFO(wrong.text);
        const std::string text = small + "[[state]]\nname = \"b\"\n" + wrong.text;
        const ReadResult own = read_document(text, "x"), state = read_document(text, "x", "b");
        CHECK(own.shell);
        CHECK_FALSE(own.states.at(1).readable);
        CHECK_FALSE(state.shell);
        const std::string at = std::string("x:") + wrong.at,
                          told = std::string(": ") + "error: " + wrong.message + "\n";
        CHECK(problems_text(state) == at + told);
        CHECK(problems_text(own) == at + ": warning: " + wrong.message + "\n");
    }
}

TEST_CASE(
    "What is wrong with a value of a state is told at its line, and hinders nobody who asks for another") {
    const std::string text =
        small + "[[state]]\nname = \"b\"\n[[state.opening]]\nname = \"door\"\nwidth = \"1 ell\"\n" +
        "[[state.wall]]\nname = \"A\"\nleft_out = [\"length\"]\nlenght = \"4 m\"\n";
    CHECK_THAT(problems_text(read_document(text, "x", "b")),
               ContainsSubstring("x:41:12: error: \"width\": ") &&
                   ContainsSubstring("x:45:1: warning: \"lenght\" is not known here"));
    const ReadResult own = read_document(text, "x");
    CHECK(own.shell);
    CHECK_THAT(problems_text(own), ContainsSubstring("x:41:12: warning: in state \"b\": \"width\": "));
    const std::string lost = document("lost-opening.roundlay");
    CHECK(problems_text(read_document(lost, "x", "a wider door")) ==
          "x:" + std::to_string(line_of(lost, "name = \"door\"\nwidth = \"1 m\"") - 1) +
              ":1: error: state \"a wider door\" changes opening \"door\", which state \"without the door\" "
              "does not "
              "have; expected an entry that is there, or new = true for one that comes with this state\n");
    CHECK(read_document(lost, "x", "without the door").shell->openings.empty());
}

TEST_CASE("A new wall comes to stand in the walk where it is said to") {
    const std::string text =
        small + "[[state]]\nname = \"b\"\n[[state.wall]]\nnew = true\nname = \"E\"\nbefore = \"C\"\n"
                "toward = \"west\"\nlength = \"1 m\"\n[[state.wall]]\nname = \"C\"\nlength = \"4 m\"\n";
    const ReadResult read = read_document(text, "x", "b");
    CHECK(problems_text(read) == "");
    std::string names;
    for (const Wall &wall : read.shell->walls)
        names += wall.name;
    CHECK(names == "ABECD");
}

TEST_CASE("Any state, merged, is what is written out by hand, and states that undo each other give the same "
          "bytes") {
    REQUIRE(rc::check("chains of states", [] {
        const std::vector<Wall> walls = test::any_walls();
        std::vector<Shell> shells;
        for (int i = 0; i < 3; ++i)
            shells.push_back(test::any_state_of(walls));
        shells.push_back(shells.front());
        for (std::size_t i = 0; i < shells.size(); ++i)
            shells[i].state = "s" + std::to_string(i);
        std::string text = write_document(shells.front());
        for (std::size_t i = 1; i < shells.size(); ++i) {
            const ReadResult before = read_document(text, "x", shells[i - 1].state);
            if (!before.shell) RC_FAIL(problems_text(before) + text);
            text += test::state_text(shells[i].state, i == 1 ? "" : shells[i - 1].state, before, shells[i]);
        }
        for (const Shell &shell : shells) {
            const ReadResult read = read_document(text, "x", shell.state);
            if (!read.shell) RC_FAIL(problems_text(read) + text);
            const Shell ordered = test::in_order(*read.shell);
            if (ordered != shell) RC_FAIL(shell.state + " is not what was meant\n" + text);
            RC_ASSERT(write_document(ordered) ==
                      write_document(*read_document(write_document(shell), "y").shell));
        }
        Shell back = test::in_order(*read_document(text, "x", "s3").shell);
        back.state = "s0";
        RC_ASSERT(write_document(back) == write_document(shells.front()));
    }));
}

TEST_CASE("An edit of the document's own shell leaves every word of its states") {
    REQUIRE(rc::check("edits beside states", [] {
        const std::vector<Wall> walls = test::any_walls();
        Shell a = test::any_state_of(walls), b = test::any_state_of(walls), other = test::any_state_of(walls);
        a.state = b.state = "own";
        other.state = "another";
        const std::string plain = write_document(a);
        const std::string states = test::state_text("another", "", read_document(plain, "x"), other);
        // What is changed may stand above the states or, where entries come last, below them.
        const auto edited = restated(Document(plain + states, "x"), a, b);
        if (const auto *problem = std::get_if<Problem>(&edited))
            RC_FAIL(problem->message + "\n" + plain + states);
        const std::string after = std::get<Document>(edited).text();
        RC_ASSERT(after.find(states) != std::string::npos);
        const ReadResult read = read_document(after, "x");
        if (!read.shell) RC_FAIL(problems_text(read) + after);
        RC_ASSERT(*read.shell == b);
        RC_ASSERT(read.states.size() == 2U);
    }));
}
