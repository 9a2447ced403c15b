#include "kernel/document/document.h"
#include "kernel/document/toml_text.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <rapidcheck.h>

#include <algorithm>
#include <set>

using namespace roundlay;

namespace {

void check_reads_back(const Shell &shell) {
    const std::string text = write_document(shell);
    const ReadResult result = read_document(text, "x");
    for (const Problem &problem : result.problems)
        if (problem.weight == Weight::error) RC_FAIL(to_text(problem) + "\n" + text);
    RC_ASSERT(result.shell.has_value());
    RC_ASSERT(*result.shell == shell);
}

} // namespace

TEST_CASE("A written document reads back to the same shell, to the last bit of what can be typed") {
    CHECK(rc::check("shells that can be built", [] {
        check_reads_back(*read_document(write_document(test::any_shell()), "x").shell);
    })); // as typed
    CHECK(rc::check("whatever the format can state", [] { check_reads_back(test::any_statements()); }));
}

TEST_CASE("Writing twice gives the same text") {
    CHECK(rc::check([] {
        const Shell shell = test::any_statements();
        const std::string text = write_document(shell);
        const ReadResult read = read_document(text, "x");
        RC_ASSERT(read.shell.has_value());
        RC_ASSERT(write_document(*read.shell) == text);
    }));
}

TEST_CASE("A fresh document explains itself") {
    Shell shell = *read_document(write_document(test::plain_shell()), "x").shell;
    shell.name = "Tarnfold";
    shell.units = UnitSystem::imperial;
    shell.thickness = Length::inches(8.5);
    shell.rounds.pitch = Length::mm(220.13333333333333); // 8 2/3 in, the double nearest to it
    const std::string text = write_document(shell);
    CHECK(text.rfind("# A shell of hewn logs.", 0) == 0);
    for (const char *line :
         {"roundlay = 1 # version of the format\n", "name = \"Tarnfold\"\n", "thickness = \"8 1/2 in\"",
          "pitch = \"8 2/3 in\"", "[[wall]]\nname = \"A\"\ntoward = \"east\"\n"}) {
        INFO(line << "in\n" << text);
        CHECK(text.find(line) != std::string::npos);
    }
}

TEST_CASE("Values are written in the plainest form that holds them") {
    CHECK(toml_text("A") == "\"A\"");
    CHECK(toml_text("7 ft 6\"") == "'7 ft 6\"'");
    CHECK(toml_text("7' 6\"") == "\"7' 6\\\"\"");
    CHECK(toml_text("a\\b") == "'a\\b'");
    CHECK(toml_text("a\tb\x7f") == "\"a\\u0009b\\u007F\"");
    CHECK(toml_text("") == "\"\"");
    CHECK(toml_text(Length::inches(8.5), UnitSystem::imperial) == "\"8 1/2 in\"");
    CHECK(toml_text(Slope::rise_per_run(0.125)) == "\"1:8\"");
    CHECK(toml_text(0.5) == "0.5");
}

TEST_CASE("The comments of a new document are in the words of whoever has it written, and nothing else is") {
    const Shell shell = test::plain_shell();
    std::set<std::string> asked;
    const std::string text = write_document(shell, {}, [&asked](std::string_view english) {
        asked.emplace(english);
        return "[" + std::string(english) + "]";
    });
    CHECK_THAT(text, ContainsSubstring("# [A shell of hewn logs. ") &&
                         ContainsSubstring("roundlay = 1 # [version of the format]\n"));
    const auto all = comment_words();
    for (const std::string &each : asked)
        CHECK((each.starts_with("\"") || std::ranges::find(all, each) != all.end()));
    CHECK(asked.size() > 10);
    CHECK(*read_document(text, "x").shell == shell);
}
