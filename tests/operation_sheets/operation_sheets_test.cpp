// Operations on paper: nothing runs into anything, and what the list says stands there.
#include "exporters/machining/operation_words.h"
#include "exporters/machining/operations.h"
#include "exporters/operation_sheets/operation_sheet.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"
#include "tests/support/sheet_words.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <set>

using namespace roundlay;
using namespace roundlay::test;
using namespace roundlay::sheets;

namespace {

std::vector<Sheet> drawn(const LaidShell &shell, const SheetOptions &options) {
    return composed(operation_sheet_set(shell.layout), {shell.shell, shell.layout, shell.bodies, options});
}

/// In one line: cells are wrapped.
std::string all_words(const std::vector<Sheet> &sheets) {
    std::string words = words_of(sheets);
    std::ranges::replace(words, '\n', ' ');
    return words;
}

/// Tenths, never less than it is.
std::string degrees_up(double angle) {
    char text[20];
    std::snprintf(text, sizeof text, "%.1f", std::max(0.0, std::ceil(angle * 10 - 1e-6) / 10));
    std::string digits = text;
    if (digits.ends_with(".0")) digits.resize(digits.size() - 2);
    return digits + "°";
}

std::size_t count_of(const std::string &text, const std::string &part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size()))
        ++count;
    return count;
}

} // namespace

TEST_CASE("sheets of operations: no clash on either paper, in either language and either units") {
    for (const std::string &name : all_demo_names) {
        LaidShell shell = demo(name);
        for (const auto &[units, paper] :
             {std::pair(UnitSystem::metric, Paper::a4), std::pair(UnitSystem::metric, Paper::a3),
              std::pair(UnitSystem::imperial, Paper::letter),
              std::pair(UnitSystem::imperial, Paper::tabloid)})
            for (const Language language : {Language::english, Language::french}) {
                shell.shell.units = units;
                SheetOptions options = full_options(paper);
                options.fields.language = language;
                const auto sheets = drawn(shell, options);
                INFO(name << " " << static_cast<int>(units) << static_cast<int>(language));
                CHECK(sheets.size() >= shell.layout.models.size());
                CHECK(all_clashes(sheets).empty());
            }
    }
}

TEST_CASE("a sheet of operations has each operation, its faces and its set-up") {
    const LaidShell shell = demo("one-room");
    SheetOptions options = full_options(Paper::a3);
    const auto set = operation_sheet_set(shell.layout);
    REQUIRE(set.size() == shell.layout.models.size());
    for (const auto model : shell.layout.models.indices()) {
        const auto list = machining::operations_of(shell.layout, model, shell.bodies[model]);
        const auto sheets = composed(set[model.at()], {shell.shell, shell.layout, shell.bodies, options});
        const std::string words = all_words(sheets);
        INFO(list.tag << ": " << words);
        CHECK_THAT(words, ContainsSubstring("Stock") && ContainsSubstring("Set-ups") &&
                              ContainsSubstring("Operations, in working order"));
        CHECK_THAT(words, ContainsSubstring("nothing of it has been proved on wood"));
        std::size_t faces = 0, written = 0;
        std::set<std::string> names;
        for (const auto &operation : list.operations) {
            CHECK_THAT(words, ContainsSubstring(machining::words_of(operation.kind, Voice())));
            faces += operation.makes.size();
            names.insert(operation.makes.begin(), operation.makes.end());
            for (const auto &access : operation.access)
                if (access.side == operation.from)
                    CHECK_THAT(words, ContainsSubstring(degrees_up(access.tilt)));
        }
        for (const std::string &name : names)
            written += count_of(words, name.substr(0, name.find(' ')));
        CHECK(written >= faces);
    }
}

TEST_CASE("round logs and short ones are held as the shop says") {
    const LaidShell round = demo("round-cabin"), ell = demo("ell-house");
    const auto words_on = [](const LaidShell &shell) {
        return all_words(drawn(shell, full_options(Paper::a3)));
    };
    CHECK_THAT(words_on(round), ContainsSubstring("no flat faces: for the shop to say") &&
                                    ContainsSubstring("which is round"));
    CHECK_THAT(words_on(ell), ContainsSubstring("no stretch long enough: for the shop to say"));
}
