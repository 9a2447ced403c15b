// Every language says all that the kernel says, with the same things in its holes.
#include "exporters/words/catalogue.h"
#include "kernel/measure/said.h"
#include "kernel/shell/shell.h"
#include "kernel/trade/settling.h"
#include "kernel/trade/species.h"
#include "tests/support/catch.h"
#include "tests/words/said_texts.h"

#include <algorithm>
#include <cctype>
#include <set>
#include <string>

using namespace roundlay;

namespace {

/// "%1, %2" is the same everywhere.
bool has_words(const std::string &text) {
    return std::any_of(text.begin(), text.end(),
                       [](unsigned char c) { return std::isalpha(c) != 0 || c == '"'; });
}

/// Words that are said out of a table.
std::set<std::string> table_words() {
    std::set<std::string> words;
    for (const Species &species : all_species())
        words.emplace(species.name);
    for (const SettlingRule &rule : settling_rules())
        words.emplace(rule.name());
    return words;
}

} // namespace

TEST_CASE("All that is said is said in French, with the same holes") {
    const auto texts = test::said_texts();
    CHECK(texts.size() > 200); // else the sources were not read
    for (const auto &[text, file] : texts) {
        if (!has_words(text)) continue;
        INFO(file << ": " << text);
        const auto french = translation_of(text, Language::french);
        REQUIRE(french);
        CHECK(holes_of(*french) == holes_of(text));
    }
    for (const std::string &word : table_words()) {
        INFO(word);
        CHECK(translation_of(word, Language::french));
    }
}

TEST_CASE("A table of the catalogue is sorted, has each text once, and none that nobody says") {
    const auto texts = test::said_texts();
    const auto words = table_words();
    std::set<std::string_view> seen;
    for (const auto &table : catalogue_of(Language::french)) {
        CHECK(std::is_sorted(table.begin(), table.end(),
                             [](const Entry &a, const Entry &b) { return a.english < b.english; }));
        for (const Entry &entry : table) {
            INFO(entry.english);
            CHECK(seen.insert(entry.english).second);
            const std::string english(entry.english);
            CHECK((texts.contains(english) || words.contains(english)));
            CHECK_FALSE(entry.translated.empty());
        }
    }
    CHECK(catalogue_of(Language::english).empty());
}
