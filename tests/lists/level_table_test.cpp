// What is said of a levelling claims no more than was found out, and of openings each has one row.
#include "exporters/lists/level_table.h"
#include "exporters/lists/shell_tables.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

namespace {

std::string words_of(bool proven, bool gave_way) {
    const Shell shell = test::plain_shell();
    Levelled l;
    l.proven = proven;
    if (gave_way) l.most_level = Arrangement{}, l.slivers_of_most_level = 1;
    return level_words(l, lay_out(shell), in_english(shell.units));
}

} // namespace

TEST_CASE("that no other arrangement is better is said only of the best one, and only where it is proven") {
    const auto claim = ContainsSubstring("no other arrangement in these places is better"),
               bound = ContainsSubstring("none can be under ");
    CHECK_THAT(words_of(true, false), claim && !bound);
    CHECK_THAT(words_of(false, false), bound && !claim);
    CHECK_THAT(words_of(true, true), bound && !claim);
    CHECK_THAT(words_of(false, true), bound && !claim);
}

TEST_CASE("the list of openings has a row for each, and none without one") {
    Shell shell = test::plain_shell();
    CHECK(opening_table(shell, lay_out(shell)).rows.empty());
    shell.openings = {test::window("A", 1000, 300, 900, 400), test::window("C", 2000, 300, 800, 400)};
    const Table table = opening_table(shell, lay_out(shell));
    REQUIRE(table.rows.size() == 2);
    for (std::size_t i = 0; i < 2; ++i)
        CHECK(table.rows[i].size() == table.columns.size());
}
