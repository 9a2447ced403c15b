// Values into words: holes, units, languages, and what is never translated.
#include "exporters/words/words.h"
#include "kernel/measure/said_number.h"
#include "kernel/trade/species.h"
#include "kernel/trade/weight.h"
#include "tests/support/catch.h"

#include <regex>

using namespace roundlay;

namespace {

constexpr Speech metric{Language::english, UnitSystem::metric},
    imperial{Language::english, UnitSystem::imperial}, french{Language::french, UnitSystem::metric};

Finding pocket(const std::string &log) {
    return {Weight::warning,
            "thin-wood-under-pocket",
            {about::Floor{"G"}, about::Timber{TimberUse::joist, "G-J01"}},
            said("its pocket leaves only %1 of %2 under it", in_mm(38.1), log),
            said("raise the floor by %1", exactly_in_mm(10)),
            "floor[0].level"};
}

} // namespace

TEST_CASE("A finding is told in the person's language and units") {
    CHECK(sentence_of(pocket("A-02-1"), metric) ==
          "floor G, joist G-J01: its pocket leaves only 38 mm of A-02-1 under it; raise the floor by 10 mm");
    CHECK(
        sentence_of(pocket("A-02-1"), imperial) ==
        "floor G, joist G-J01: its pocket leaves only 1 1/2\" of A-02-1 under it; raise the floor by 10 mm");
    CHECK(sentence_of(pocket("A-02-1"), french) == "plancher G, solive G-J01: sa mortaise ne laisse que 38 "
                                                   "mm de A-02-1 dessous ; levez le plancher de 10 mm");
    CHECK(short_sentence_of(pocket("A-02-1"), metric) ==
          "floor G, joist G-J01: its pocket leaves only 38 mm of A-02-1 under it");
}

TEST_CASE("A name is no phrase, whatever it looks like: no language changes it and nothing in it is a hole") {
    for (const char *name : {"plan", "wall C", "left", "%1", "50 % of it; the rest"}) {
        const Finding finding{Weight::error,
                              "opening-empty",
                              {about::Wall{name}, about::Opening{OpeningKind::door, 1, name}},
                              said("it overlaps %1", std::string(name)),
                              {},
                              "opening[0].width"};
        CHECK(sentence_of(finding, french) ==
              std::string("mur ") + name + ", " + name + ": elle recouvre " + name);
    }
}

TEST_CASE("A phrase within what is said is translated in its turn, a thing as it is called") {
    const Said what = said("its end in %1 lies in %2", said_of(about::Wall{"C"}),
                           said_of(about::Opening{OpeningKind::door, 2, ""}));
    CHECK(words_of(what, metric) == "its end in wall C lies in door 2");
    CHECK(words_of(what, french) == "son bout dans mur C est dans porte 2");
}

TEST_CASE("Things are told with commas between, each in its language") {
    const About bore{about::Wall{"A"}, about::Round{3}, about::Bore{BoreUse::wire, 2, ""}};
    CHECK(words_of(bore, metric) == "wall A, round 3, wiring bore 2");
    CHECK(words_of(bore, french) == "mur A, rang 3, passage de câble 2");
    CHECK(words_of(About{about::Pieces{"A-01-1", "B-01-1"}}, french) == "A-01-1 et B-01-1");
    CHECK(words_of(About{about::All::top_of_walls}, metric) == "top of the walls");
    CHECK(words_of(About{}, metric).empty());
}

TEST_CASE("Advice that was tried is told in words that mean just that, where the printed ones would not") {
    CHECK(words_of(said("%1", exactly_in_mm(12.7)), imperial) == "1/2\"");
    CHECK(words_of(said("%1", exactly_in_mm(10)), imperial) == "10 mm");
    CHECK(words_of(said("%1", in_mm(10)), imperial) == "3/8\"");
}

TEST_CASE("A word behind a count is told for one or for many, by each language's rule") {
    const auto of = [](int count) { return said("%1 {log|logs} of %2", count, std::string("wall A")); };
    CHECK(words_of(of(0), metric) == "0 logs of wall A");
    CHECK(words_of(of(1), metric) == "1 log of wall A");
    CHECK(words_of(of(2), metric) == "2 logs of wall A");
    const auto changed = [](int count) { return said("%1 gone", count); };
    CHECK(words_of(changed(0), french) == "0 disparue");
    CHECK(words_of(changed(1), french) == "1 disparue");
    CHECK(words_of(changed(2), french) == "2 disparues");
    CHECK(words_of(said("{is|are} %1 and %2 {log|logs}", 1, 2), metric) ==
          "is 1 and 2 logs");                                                 // each by its own
    CHECK(words_of(said("{a|b} %1", std::string("x")), metric) == "{a|b} x"); // nothing is counted
}

TEST_CASE("Loads and lengths that are told finely follow the person's units") {
    CHECK(words_of(said("%1", in_kpa(0.5)), metric) == "0.5 kPa");
    CHECK(words_of(said("%1", in_kpa(0.5)), imperial) == "10.44 psf"); // 1 psf = 0.04788 kPa (NIST SP 811)
    CHECK(words_of(said("%1", finely_in_mm(1.26, 1)), metric) == "1.3 mm");
    CHECK(words_of(said("%1", finely_in_mm(25.4, 3)), imperial) == "1.000 in");
}

TEST_CASE("A length that is there is never told as none") {
    const auto told = [](double mm, const Speech &speech) {
        return words_of(said("%1 apart", in_mm(mm)), speech);
    };
    CHECK(told(0.22907, metric) == "0.229 mm apart");
    CHECK(told(0.22907, imperial) == "0.009 in apart");
    CHECK(told(-0.3, metric) == "-0.300 mm apart");
    CHECK(told(1e-9, metric) == "0 mm apart");
    CHECK(told(0, imperial) == "0\" apart");
    CHECK(told(1, imperial) == "1/16\" apart");
}

TEST_CASE("A number with decimals has the mark of the language, and no digits that say nothing") {
    constexpr int figures = 3;
    const auto told = [](double value, Language language) {
        return words_of(in_figures(value, figures), {language, UnitSystem::metric});
    };
    const struct {
        double value;
        const char *english, *french;
    } numbers[] = {{0.38, "0.38", "0,38"}, {119, "119", "119"},    {217.64, "218", "218"},
                   {30, "30", "30"},       {9.7, "9.7", "9,7"},    {0.4056, "0.406", "0,406"},
                   {1234, "1234", "1234"}, {-1.5, "-1.5", "-1,5"}, {0, "0", "0"}};
    for (const auto &number : numbers) {
        CHECK(told(number.value, Language::english) == number.english);
        CHECK(told(number.value, Language::french) == number.french);
    }
}

TEST_CASE("What weights rest on has decimal commas in French, for every wood") {
    const std::regex point("[^0-9.-][0-9]+\\.[0-9]+[^0-9.]");
    for (const Species &species : all_species())
        for (const std::optional<double> moisture : {std::optional<double>(), std::optional<double>(12.5)}) {
            Wood wood;
            wood.species = species.name;
            wood.moisture = moisture;
            const std::string note = words_of(weigh(1e9, wood).basis, {Language::french, UnitSystem::metric});
            std::smatch found;
            INFO(note);
            CHECK_FALSE(std::regex_search(note, found, point));
        }
}
