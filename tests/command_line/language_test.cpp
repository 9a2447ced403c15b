// Which language the program speaks, and that it then speaks no other.
#include "tests/command_line/program.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <set>
#include <sstream>

using namespace roundlay;
using namespace roundlay::test;

namespace {

using Environment = std::map<std::string, std::string>;

std::string checked(const Environment &environment, const Words &more = {}) {
    Words words{"check", "-"};
    words.insert(words.end(), more.begin(), more.end());
    return run(words, {.input = wrong_document(), .environment = environment}).out;
}

bool is_french(const std::string &text) {
    const bool french = text.find("elle est large de 9000 mm") != std::string::npos,
               english = text.find("it is 9000 mm wide") != std::string::npos;
    CHECK(french != english);
    return french;
}

/// Fields of RFC 4180.
std::vector<std::vector<std::string>> fields_of(const std::string &csv) {
    std::vector<std::vector<std::string>> rows(1, {""});
    bool quoted = false;
    for (std::size_t i = 0; i < csv.size(); ++i) {
        const char c = csv[i];
        if (c == '"' && quoted && i + 1 < csv.size() && csv[i + 1] == '"')
            rows.back().back() += csv[++i];
        else if (c == '"')
            quoted = !quoted;
        else if (c == ',' && !quoted)
            rows.back().emplace_back();
        else if (c == '\n' && !quoted)
            rows.push_back({""});
        else if (c != '\r' || quoted)
            rows.back().back() += c;
    }
    rows.pop_back();
    return rows;
}

/// Words that no French text of a list has. What a source is called stays in its own language.
std::string english_in(std::string text, const std::set<std::string> &names) {
    for (auto name = names.rbegin(); name != names.rend(); ++name) // what the person called things stays
        for (auto at = text.find(*name); at != std::string::npos; at = text.find(*name))
            text.erase(at, name->size());
    static const std::set<std::string> typical = {
        "above", "and",     "are",    "at",     "bore",   "bores",   "butt",      "corner",    "cut",
        "deep",  "door",    "each",   "end",    "for",    "from",    "half",      "height",    "inside",
        "is",    "its",     "joist",  "left",   "length", "log",     "logs",      "log's",     "of",
        "open",  "outside", "peg",    "pegs",   "pieces", "round",   "rounds",    "seam",      "shoulder",
        "sill",  "slant",   "square", "tail",   "the",    "top",     "underside", "volume of", "wall",
        "walls", "weight",  "wide",   "window", "with",   "species", "stated"};
    std::string word, found;
    for (const char c : text + " ") {
        if (std::isalpha(static_cast<unsigned char>(c)) != 0 ||
            (static_cast<unsigned char>(c) & 0x80U) != 0 || c == '_') {
            word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
            continue;
        }
        if (typical.contains(word)) found += " " + word;
        word.clear();
    }
    return found;
}

std::set<std::string> opening_names(const std::string &file) {
    std::set<std::string> names;
    for (const auto &row : fields_of(run({"list", file, "openings", "--csv", "--language", "en"}).out))
        if (row.front() != "opening") names.insert(row.front());
    return names;
}

} // namespace

TEST_CASE("the language is what is stated, else the environment's, in the order of gettext") {
    CHECK_FALSE(is_french(checked({})));
    CHECK(is_french(checked({{"LC_ALL", ""}, {"LANG", "fr_CA.UTF-8"}})));
    CHECK(is_french(checked({{"LC_ALL", ""}, {"LC_MESSAGES", "fr_FR"}, {"LANG", "en_CA.UTF-8"}})));
    CHECK_FALSE(is_french(checked({{"LC_ALL", "en_CA.UTF-8"}, {"LANG", "fr_CA.UTF-8"}})));
    CHECK(is_french(checked({{"LC_ALL", "fr"}, {"LC_MESSAGES", "en"}, {"LANG", "en"}})));
    // LANGUAGE goes first, in its order, but not where the locale is C
    CHECK(is_french(checked({{"LC_ALL", "en_CA.UTF-8"}, {"LANGUAGE", "de:fr_CA:en"}})));
    CHECK_FALSE(is_french(checked({{"LC_ALL", "fr_CA.UTF-8"}, {"LANGUAGE", "en:fr"}})));
    CHECK_FALSE(is_french(checked({{"LC_ALL", "C.UTF-8"}, {"LANGUAGE", "fr"}})));
    CHECK_FALSE(is_french(checked({{"LC_ALL", "de_DE.UTF-8"}})));
    // what is stated goes before all of them
    CHECK(is_french(checked({{"LC_ALL", "en_CA.UTF-8"}}, {"--language", "fr"})));
    CHECK_FALSE(is_french(checked({{"LC_ALL", "fr_CA.UTF-8"}}, {"--language", "en"})));
}

TEST_CASE("a language that is not spoken is refused, with those that are") {
    const Ran ran = run({"check", "-", "--language", "de"}, {.input = small_document()});
    CHECK(ran.code == 2);
    CHECK_THAT(ran.err, ContainsSubstring("there is no language \"de\"") && ContainsSubstring("fr"));
}

TEST_CASE("a check in French sums up in French") {
    const Ran ran = run({"check", "-", "--language", "fr"}, {.input = small_document()});
    CHECK(ran.code == 0);
    CHECK_THAT(ran.out, ContainsSubstring("4 murs, 4 rangs (5 pièces dans les murs B et D), ") &&
                            ContainsSubstring("hauteur 975 mm (1000 mm d’après ses rangs) ; 0 erreurs, "));
    const auto json = nlohmann::json::parse(
        run({"check", "-", "--json", "--language", "fr"}, {.input = wrong_document()}).out);
    CHECK(json["findings"][0]["place"].get<std::string>().starts_with("mur A"));
    CHECK(json["findings"][0]["what"]["text"] == "it is %1 wide"); // for machines it stays the key
}

TEST_CASE("lists in French have French words in all their cells, and the same keys and numbers") {
    const std::filesystem::path demos = std::filesystem::path(ROUNDLAY_ROOT) / "models-demo";
    for (const char *demo : {"one-room", "ell-house", "round-cabin"}) {
        const std::set<std::string> names =
            opening_names((demos / (std::string(demo) + ".roundlay")).string());
        for (const char *what :
             {"cut", "pieces", "pegs", "order", "totals", "bores", "openings", "floors", "seams"}) {
            const std::string file = (demos / (std::string(demo) + ".roundlay")).string();
            const auto french = fields_of(run({"list", file, what, "--csv", "--language", "fr"}).out),
                       english = fields_of(run({"list", file, what, "--csv", "--language", "en"}).out);
            INFO(demo << ", " << what);
            REQUIRE(french.size() == english.size());
            CHECK(french.front() == english.front());
            for (std::size_t i = 1; i < french.size(); ++i) {
                REQUIRE(french[i].size() == english[i].size());
                for (std::size_t k = 0; k < french[i].size(); ++k) {
                    const std::string &key = french.front()[k];
                    INFO(key << ": " << french[i][k]);
                    if (key.ends_with("_mm") || key.ends_with("_kg") || key.ends_with("_lb"))
                        CHECK(french[i][k] == english[i][k]);
                    if (key == "name" || key == "note" || key == "mark" || key == "opening") continue;
                    CHECK(english_in(french[i][k], names) == "");
                }
            }
            const Ran table = run({"list", file, what, "--language", "fr"});
            if (table.code != 0) continue; // there are none
            CHECK(english_in(table.out.substr(0, table.out.find('\n')), names) == "");
        }
    }
}

TEST_CASE("an export in French has the same files, and other papers") {
    const TemporaryFolder home;
    put(home / "hut.roundlay", small_document());
    for (const char *language : {"en", "fr"}) {
        const Ran ran =
            run({"export", "hut.roundlay", "--to", language, "--language", language, "--without",
                 "picture,step,mesh"},
                {.environment = {{"SOURCE_DATE_EPOCH", "1700000000"}}, .folder = home.path().string()});
        INFO(ran.err);
        REQUIRE(ran.code == 0);
    }
    for (const auto &entry : std::filesystem::recursive_directory_iterator(home / "en")) {
        const auto name = std::filesystem::relative(entry.path(), home / "en");
        CHECK(std::filesystem::exists(home / "fr" / name));
        if (name.extension() != ".pdf") continue;
        INFO(name);
        CHECK(text_of(home / "fr" / name) != text_of(home / "en" / name));
    }
}
