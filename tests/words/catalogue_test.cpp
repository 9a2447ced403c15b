// Every language says all that the kernel says, with the same things in its holes.
#include "exporters/words/catalogue.h"
#include "kernel/document/document.h"
#include "kernel/layout/fastenings/bore_marks.h"
#include "kernel/measure/said.h"
#include "kernel/review/floor_screen.h"
#include "kernel/shell/notch_kinds.h"
#include "kernel/trade/joist.h"
#include "kernel/trade/settling.h"
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"
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

void add_origin(std::set<std::string> &words, const Origin &origin) {
    if (!origin.conflict.empty()) words.emplace(origin.conflict);
}

void add_species(std::set<std::string> &words) {
    for (const Species &species : all_species()) {
        words.emplace(species.name);
        for (const Origin *origin :
             {&species.shrinkage.origin, &species.gravity.origin, &species.bending.origin})
            add_origin(words, *origin);
        if (species.moisture) add_origin(words, species.moisture->origin);
    }
}

/// Why a rule is taken, in every case there is.
std::set<std::string> reasons() {
    std::set<std::string> all;
    Shell shell;
    for (const bool own : {false, true})
        for (const bool stated : {false, true})
            for (const bool scribed : {false, true})
                for (const double moisture : {10.0, 40.0}) {
                    shell.notch.kind = scribed ? NotchKind::saddle : NotchKind::full_dovetail;
                    shell.wood.moisture = moisture;
                    shell.trim.settling.reset();
                    Opening opening;
                    if (stated) shell.trim.settling = SettlingRuleName::six_percent;
                    if (own) opening.trim.settling = SettlingRuleName::four_percent;
                    all.emplace(choose_settling(shell, opening).why);
                }
    return all;
}

void add_marks(std::set<std::string> &words) {
    for (const Mark mark : {Mark::seen, Mark::second_hand, Mark::memory, Mark::derived})
        words.emplace(roundlay::words(mark));
}

void add_settling(std::set<std::string> &words) {
    for (const SettlingRule &rule : settling_rules()) {
        for (const std::string_view each :
             {rule.name(), rule.quoted, rule.scope, rule.origin.source, roundlay::words(rule.origin.mark)})
            words.emplace(each);
    }
    words.merge(reasons());
}

/// What is made of a log, and what it was.
void add_kinds(std::set<std::string> &words) {
    for (const Finish finish : {Finish::hewn, Finish::sawn, Finish::peeled})
        words.emplace(name_of(finish));
    for (const Fabric fabric : {Fabric::newly_cut, Fabric::kept, Fabric::patched, Fabric::replacement})
        words.emplace(name_of(fabric));
    for (const TimberUse use : {TimberUse::joist, TimberUse::trimmed, TimberUse::trimmer, TimberUse::beam})
        words.emplace(name_of(use));
    for (const KindOfNotch &notch : all_kinds_of_notch)
        words.emplace(notch.name);
    words.emplace(name_of(std::optional<BoreUse>()));
    for (const BoreUse use : {BoreUse::bolt, BoreUse::rod, BoreUse::wire, BoreUse::hole})
        words.emplace(name_of(std::optional(use)));
}

/// Words that are said out of a table.
std::set<std::string> table_words() {
    std::set<std::string> words{std::string(weight_caution), std::string(settling_caution),
                                std::string(joist_caution), no_allowable};
    add_marks(words);
    add_species(words);
    add_settling(words);
    add_kinds(words);
    // sides of timbers, of walls, and of partitions
    for (const std::string &comment : comment_words()) // of new documents
        words.insert(comment);
    for (const char *side : {"left", "right", "outside", "inside", "east", "north-east", "north",
                             "north-west", "west", "south-west", "south", "south-east"})
        words.emplace(side);
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
