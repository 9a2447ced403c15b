// The reference against what is written: keys are read off both, none is listed by hand.
#include "kernel/document/document.h"
#include "tests/document/any_statement.h"
#include "tests/support/catch.h"
#include "tests/support/temporary_folder.h"

#include <rapidcheck.h>

#include <filesystem>
#include <map>
#include <regex>
#include <set>
#include <sstream>
#include <string>

using namespace roundlay;

namespace {

using Keys = std::set<std::string>;
/// Keys by the heading of their table: "[shell]", "[[wall]]"; "" is the top of the document.
using Tables = std::map<std::string, Keys>;

/// Every `name` in backquotes of one cell of a table in the reference.
Keys names_in(const std::string &cell) {
    static const std::regex name("`([a-z_]+)`");
    Keys all;
    for (std::sregex_iterator at(cell.begin(), cell.end(), name), end; at != end; ++at)
        all.insert((*at)[1]);
    return all;
}

/// The first cells of each section's rows; a row "all keys of `[notch]`" brings those of that section.
Tables of_the_reference() {
    static const std::regex all_of("^\\| all keys of `(\\[[a-z]+\\])`");
    std::istringstream lines(
        test::text_of(std::filesystem::path(ROUNDLAY_ROOT) / "kernel/document/FORMAT.md"));
    Tables tables;
    std::map<std::string, std::string> borrowed;
    std::string heading, line;
    std::smatch found;
    while (std::getline(lines, line)) {
        if (line.rfind("## ", 0) == 0) heading = line.substr(3);
        if (heading == "At the top") heading.clear();
        if (std::regex_search(line, found, all_of))
            borrowed[heading] = found[1];
        else if (line.rfind("| ", 0) == 0)
            tables[heading].merge(names_in(line.substr(0, line.find('|', 1))));
    }
    for (const auto &[to, from] : borrowed)
        tables[to].merge(Keys(tables[from]));
    return tables;
}

/// Keys of entries in one line each: `  { at = "0", height = { note = "3.10.1", is = "proposed" } },`
void add_in_line(Keys &keys, const std::string &line) {
    static const std::regex noted("\\{ note = [^}]*\\}"), text(R"("(?:[^"\\]|\\.)*"|'[^']*')"),
        key("([a-z_]+) =");
    std::string plain = std::regex_replace(line, text, "0");
    plain = std::regex_replace(plain, noted, "0");
    for (std::sregex_iterator at(plain.begin(), plain.end(), key), end; at != end; ++at)
        keys.insert((*at)[1]);
}

/// What a document states, by table; a table inside another ("[[floor.beam]]") counts to that one.
void add_stated(Tables &tables, const std::string &document, const Tables &told) {
    static const std::regex header("^(\\[+)([a-z]+)([a-z._]*)(\\]+)"), key("^([a-z_]+) *=");
    std::istringstream lines(document);
    std::string heading, line;
    std::smatch found;
    while (std::getline(lines, line)) {
        if (std::regex_search(line, found, header)) {
            heading = found[1].str() + found[2].str() + found[4].str();
            const std::string once = "[" + found[2].str() + "]";
            if (found[3].length() > 0 && told.contains(once)) heading = once;
        }
        if (line.starts_with("  {")) add_in_line(tables[heading], line);
        if (!line.ends_with("= [") && std::regex_search(line, found, key)) tables[heading].insert(found[1]);
    }
}

} // namespace

TEST_CASE("The reference names every key that is written, in the section of its table, and no other key") {
    const Tables told = of_the_reference();
    Tables written;
    REQUIRE(rc::check("any statements", [&] {
        add_stated(written, write_document(test::any_statements(), test::any_record()), told);
    }));
    CHECK(written.size() > 10);
    for (const auto &[heading, keys] : written)
        for (const std::string &key : keys) {
            INFO(heading << " " << key);
            REQUIRE(told.contains(heading));
            CHECK(told.at(heading).contains(key));
        }
    for (const auto &[heading, keys] : told) {
        if (!written.contains(heading)) continue; // prose
        for (const std::string &key : keys) {
            INFO("never written: " << heading << " " << key);
            CHECK(written.at(heading).contains(key));
        }
    }
}
