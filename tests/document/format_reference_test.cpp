#include "kernel/document/compass.h"
#include "kernel/document/document.h"
#include "kernel/document/reference.h"
#include "kernel/measure/measure.h"
#include "kernel/shell/notch_kinds.h"
#include "tests/document/sample.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

using namespace roundlay;

namespace {

const std::filesystem::path root = ROUNDLAY_ROOT;

std::string reference() {
    return test::text_of(root / "kernel/document/FORMAT.md");
}

/// The fenced blocks of one kind, in order.
std::vector<std::string> blocks(const std::string &text, const std::string &kind) {
    std::vector<std::string> all;
    const std::string fence = "```" + kind + "\n";
    for (std::size_t at = 0; (at = text.find(fence, at)) != std::string::npos;) {
        const std::size_t begin = at + fence.size(), end = text.find("```", begin);
        all.push_back(text.substr(begin, end - begin));
        at = end + 3;
    }
    return all;
}

std::vector<std::string> lines(const std::string &text) {
    std::vector<std::string> all;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        if (end > at) all.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return all;
}

std::string problems_text(const ReadResult &result) {
    std::string text;
    for (const Problem &problem : result.problems)
        text += to_text(problem) + "\n";
    return text;
}

/// The reference with its tables made anew: in the section of each heading those that begin with a column of
/// keys.
/// "s, -s": the slopes of a kind's tails in s.
std::string slopes_of(const KindOfNotch &kind) {
    if (kind.slopes == NotchSlopes::none) return "";
    if (kind.slopes == NotchSlopes::stated) return "as stated";
    const auto times_s = [](int part) -> std::string { return part == 0 ? "0" : part > 0 ? "s" : "-s"; };
    return times_s(kind.along) + ", " + times_s(kind.across);
}

std::string notch_family() {
    const auto cell = [](const std::string &words) { return words.empty() ? " |" : " " + words + " |"; };
    std::string table = "| `kind` | along, across | |\n|---|---|---|\n";
    for (const KindOfNotch &kind : all_kinds_of_notch)
        table += "| `\"" + std::string(kind.name) + "\"` |" + cell(slopes_of(kind)) + cell(kind.does) + "\n";
    return table;
}

/// The lines with bars that begin there become `table`; the byte behind them.
std::size_t put_table(std::string &text, std::size_t at, const std::string &table) {
    std::size_t end = at;
    while (text[end] == '|')
        end = text.find('\n', end) + 1;
    text.replace(at, end - at, table);
    return at + table.size();
}

std::string renewed(std::string text) {
    const std::size_t family = text.find("\n| `kind` | along, across |");
    if (family == std::string::npos) return "no place for the table of notches";
    put_table(text, family + 1, notch_family());
    std::vector<const format::Section *> all{&format::state_section()};
    for (const format::Section &section : format::sections())
        all.push_back(&section);
    for (const format::Section *section : all) {
        std::size_t at = text.find("\n## " + format::header(*section) + "\n");
        std::vector<const format::Section *> tables{section};
        for (const format::Section &inner : section->table->lists)
            tables.push_back(&inner);
        for (const format::Section *table : tables) {
            at = at == std::string::npos ? at : text.find("\n| key |", at);
            if (at == std::string::npos) return "no place for the table " + table->table->name;
            put_table(text, ++at, format::markdown_table(*table));
        }
    }
    return text;
}

} // namespace

TEST_CASE("The tables of the reference are those that the description makes") {
    const std::string before = reference(), after = renewed(before);
    if (std::getenv("ROUNDLAY_RENEW")) test::put(root / "kernel/document/FORMAT.md", after);
    INFO("ROUNDLAY_RENEW=1 test_document writes them anew");
    CHECK(before == after);
}

TEST_CASE("Every table and key is explained, and says what is understood where it is left out") {
    std::size_t keys = 0;
    for (const format::Section *section : format::all_sections()) {
        CHECK(std::string(section->table->summary).size() > 10);
        for (const format::ReferenceRow &row : format::reference_rows(*section)) {
            INFO(format::header(*section)
                 << " " << (row.keys.empty() ? row.shared : row.keys[0]) << ": " << row.left_out);
            keys += row.keys.size();
            CHECK((row.shared.empty() ? row.what : row.shared).size() > 3);
            CHECK(row.left_out.size() > 0);
            if (row.left_out == "empty") CHECK(row.takes.starts_with("text"));
        }
    }
    CHECK(keys > 90);
}

TEST_CASE("The complete example of the reference reads without a problem") {
    const auto examples = blocks(reference(), "toml");
    REQUIRE_FALSE(examples.empty());
    const ReadResult result = read_document(examples.front(), "example");
    CHECK(problems_text(result) == "");
    REQUIRE(result.shell);
    CHECK(result.shell->walls.size() >= 4);
    CHECK_FALSE(result.shell->openings.empty());
    CHECK_FALSE(result.shell->corners.empty());
}

TEST_CASE("The other blocks of the reference fit into a document") {
    const auto examples = blocks(reference(), "toml");
    REQUIRE(examples.size() > 5);
    // Each shows one table; its keys take the place of the same table in the example.
    for (std::size_t i = 1; i < examples.size(); ++i) {
        INFO(examples[i]);
        const ReadResult result = read_document(examples[i], "block");
        for (const Problem &problem : result.problems) {
            INFO(to_text(problem));
            const bool only_part = problem.message.find("is missing") != std::string::npos ||
                                   problem.message.find("there is no wall") != std::string::npos;
            CHECK(only_part);
        }
    }
}

TEST_CASE("The peg rule that the reference shows is the one of a fresh shell") {
    const std::string start = test::sample.substr(0, test::sample.find("[pegs]"));
    bool found = false;
    for (const std::string &block : blocks(reference(), "toml")) {
        if (block.rfind("[pegs]", 0) != 0) continue;
        found = true;
        const ReadResult result = read_document(start + block, "x");
        REQUIRE(result.shell);
        CHECK(result.shell->pegs == PegRule());
    }
    CHECK(found);
}

TEST_CASE("Every spelling of a length, a slope and a heading that the reference shows is read") {
    const auto lengths = blocks(reference(), "lengths"), slopes = blocks(reference(), "slopes"),
               headings = blocks(reference(), "headings");
    REQUIRE(lengths.size() == 1);
    REQUIRE(slopes.size() == 1);
    REQUIRE(headings.size() == 1);
    CHECK(lines(lengths[0]).size() > 10);
    for (const std::string &line : lines(lengths[0])) {
        INFO(line);
        CHECK(std::holds_alternative<Length>(parse_length(line)));
    }
    for (const std::string &line : lines(slopes[0])) {
        INFO(line);
        CHECK(std::holds_alternative<Slope>(parse_slope(line)));
    }
    for (const std::string &line : lines(headings[0])) {
        INFO(line);
        CHECK(parse_heading(line));
    }
}

TEST_CASE("The demo documents read without a problem") {
    int count = 0;
    for (const auto &entry : std::filesystem::directory_iterator(root / "models-demo")) {
        if (entry.path().extension() != document_extension) continue;
        ++count;
        const ReadResult result = read_document_file(entry.path());
        CHECK(problems_text(result) == "");
        CHECK(result.shell);
    }
    CHECK(count > 0);
}
