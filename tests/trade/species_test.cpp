// The table against published_species.csv, which holds each value with its source and its mark.
#include "kernel/trade/species.h"
#include "tests/support/catch.h"

#include <fstream>
#include <map>

using namespace roundlay;

namespace {

using Row = std::vector<std::string>;

Row cells_of(const std::string &line) {
    Row cells(1);
    bool quoted = false;
    for (const char c : line) {
        if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            cells.emplace_back();
        else
            cells.back() += c;
    }
    return cells;
}

struct Published {
    std::string species, quantity, value, unit, source, mark;
    bool conflict;
};

std::vector<Published> published() {
    std::ifstream in(PUBLISHED_SPECIES);
    std::vector<Published> all;
    std::string line;
    std::getline(in, line);
    while (std::getline(in, line)) {
        const Row c = cells_of(line);
        all.push_back({c.at(0), c.at(1), c.at(2), c.at(3), c.at(4), c.at(5), c.at(6) == "yes"});
    }
    return all;
}

struct Entry {
    std::optional<double> value; ///< in the unit of the publication
    Origin origin;
};

Entry entry(const Species &s, const std::string &quantity) {
    constexpr double kpa = 1000; // the publication gives strengths in kPa, the table holds MPa
    const Origin moisture = s.moisture ? s.moisture->origin : Origin{};
    const std::map<std::string, Entry> entries = {
        {"radial shrinkage green to ovendry", {s.shrinkage.radial, s.shrinkage.origin}},
        {"tangential shrinkage green to ovendry", {s.shrinkage.tangential, s.shrinkage.origin}},
        {"volumetric shrinkage green to ovendry", {s.shrinkage.volumetric, s.shrinkage.origin}},
        {"specific gravity (ovendry mass / green volume)", {s.gravity.green, s.gravity.origin}},
        {"specific gravity (ovendry mass / volume at 12% MC)", {s.gravity.at_12, s.gravity.origin}},
        {"modulus of rupture, green", {kpa * s.bending.rupture_green, s.bending.origin}},
        {"modulus of rupture, 12% MC", {kpa * s.bending.rupture_12, s.bending.origin}},
        {"modulus of elasticity, green (span/depth 14)", {s.bending.elasticity_green, s.bending.origin}},
        {"modulus of elasticity, 12% MC", {s.bending.elasticity_12, s.bending.origin}},
        {"average green moisture content, heartwood",
         {s.moisture ? std::optional(s.moisture->heart) : std::nullopt, moisture}},
        {"average green moisture content, sapwood", {s.moisture ? s.moisture->sap : std::nullopt, moisture}},
    };
    return entries.at(quantity);
}

std::string short_mark(Mark mark) {
    return mark == Mark::memory ? "memory" : std::string(words(mark));
}

} // namespace

TEST_CASE("every published value of a species stands in the table with its source and mark") {
    const auto all = published();
    REQUIRE(all.size() == 179);
    for (const Published &row : all) {
        INFO(row.species << ": " << row.quantity);
        const auto found = find_species(row.species);
        REQUIRE(std::holds_alternative<const Species *>(found));
        const Entry e = entry(*std::get<const Species *>(found), row.quantity);
        if (row.value == "not given") {
            CHECK_FALSE(e.value);
        } else {
            REQUIRE(e.value);
            CHECK(*e.value == Approx(std::stod(row.value)).epsilon(1e-12));
        }
        CHECK(short_mark(e.origin.mark) == row.mark);
        CHECK_THAT(row.source, ContainsSubstring(std::string(e.origin.source.substr(24, 11)))); // FPL-GTR-nnn
        if (row.conflict) CHECK_FALSE(e.origin.conflict.empty());
    }
}

TEST_CASE("nothing stands in the table that was not published") {
    std::map<std::string, int> count;
    std::map<std::string, bool> conflict;
    for (const Published &row : published()) {
        if (row.value != "not given") ++count[row.species];
        conflict[row.species] = conflict[row.species] || row.conflict;
    }
    for (const Species &s : all_species()) {
        INFO(s.name);
        const int moistures = s.moisture ? (s.moisture->sap ? 2 : 1) : 0;
        CHECK(count[std::string(s.name)] == 3 + 2 + 4 + moistures);
        const bool told = !s.shrinkage.origin.conflict.empty() || !s.gravity.origin.conflict.empty() ||
                          (s.moisture && !s.moisture->origin.conflict.empty());
        CHECK(told == conflict[std::string(s.name)]);
    }
}

TEST_CASE("a species is found however it is capitalised, spaced or hyphened") {
    for (const char *name : {"eastern hemlock", "Eastern Hemlock", "EASTERN-HEMLOCK", " eastern  hemlock "})
        CHECK(std::get<const Species *>(find_species(name))->name == "eastern hemlock");
    CHECK(std::get<const Species *>(find_species("Douglas fir, coast"))->name == "Douglas-fir (coast)");
}

TEST_CASE("an unknown species is told with the nearest one, or with all") {
    const auto near = std::get<UnknownSpecies>(find_species("easten hemlok")).message;
    CHECK(near == "no values are known for the species \"easten hemlok\"; did you mean \"eastern hemlock\"?");
    const auto far = std::get<UnknownSpecies>(find_species("balsa")).message;
    CHECK_THAT(far, ContainsSubstring("known are white spruce, ") && ContainsSubstring("American chestnut"));
    CHECK(std::holds_alternative<UnknownSpecies>(find_species("")));
}
