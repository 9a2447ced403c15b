// Cut sheets of old logs: what is to be cut in them stands apart from what they have.
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/cut_sheet/tables.h"
#include "exporters/sheets/pattern/templates.h"
#include "kernel/compare/cuts_to_make.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/tagged.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::tagged;
using namespace roundlay::sheets;

namespace {

Shell house(bool mended) {
    Shell shell = test::plain_shell();
    OwnLog log;
    log.wall = "A", log.round = 4, log.fabric = Fabric::kept, log.mark = "old 4";
    shell.own_logs = {log};
    if (!mended) return shell;
    Mend mend;
    mend.wall = "A", mend.round = 4, mend.kind = MendKind::face;
    mend.from = Length::mm(1000), mend.to = Length::mm(1600), mend.depth = Length::mm(60);
    shell.mends.push_back(mend);
    return shell;
}

std::vector<Table> tables_of(const Layout &layout, Index<Piece> piece, const SheetOptions &options) {
    const Model &model = layout.models.at(layout.pieces[piece].model);
    return steps_tables(features_of(layout.pieces[piece]), old_cuts(options, layout, model),
                        Words(UnitSystem::metric));
}

} // namespace

TEST_CASE(
    "Nothing is told to be cut in an old log that stays as it was found; in a mended one the mend alone") {
    const Layout found = lay_out(house(false)), mended = lay_out(house(true));
    REQUIRE_FALSE(has_errors(mended.findings));
    SheetOptions options;
    options.to_make = cuts_to_make(found, found);
    const auto stays = tables_of(found, tagged(found, "A-04-1"), options);
    REQUIRE(stays.size() == 2);
    REQUIRE(stays[0].rows.size() == 1);
    CHECK(stays[0].rows[0][1] == "Nothing: it stays as it was found");
    const std::size_t all = tables_of(found, tagged(found, "A-04-1"), {}).at(0).rows.size();
    CHECK(stays[1].rows.size() == all); // every step stands there, and is found

    options.to_make = cuts_to_make(found, mended);
    const auto now = tables_of(mended, tagged(mended, "A-04-1"), options);
    REQUIRE(now.size() == 2);
    REQUIRE(now[0].rows.size() == 1);
    CHECK_THAT(now[0].rows[0][1], ContainsSubstring("Recess for new wood in the outside face, 60"));
    CHECK(now[1].rows.size() >= all - 1);          // a peg may lie in the new wood alone
    for (const char *tag : {"B-03-1", "A-03-1"}) { // new wood is cut throughout
        const auto fresh = tables_of(mended, tagged(mended, tag), options);
        REQUIRE(fresh.size() == 1);
        CHECK(fresh[0].rows.size() >= 2);
    }
}

TEST_CASE("Of an old log of which nobody can say what it has the sheet says so") {
    const Layout layout = lay_out(house(false));
    const auto tables = tables_of(layout, tagged(layout, "A-04-1"), {});
    REQUIRE(tables.size() == 1);
    CHECK_THAT(tables[0].title, ContainsSubstring("look before anything is cut"));
}

TEST_CASE("Joints of old logs in which nothing is cut have no templates") {
    Shell shell = test::plain_shell();
    for (const Wall &wall : shell.walls)
        for (int round = 1; round <= 4; ++round) {
            OwnLog log;
            log.wall = wall.name, log.round = round, log.fabric = Fabric::kept;
            shell.own_logs.push_back(log);
        }
    const Layout found = lay_out(shell);
    Shell renewed = shell;
    renewed.own_logs.front().fabric = Fabric::replacement;
    const Layout now = lay_out(renewed);
    SheetOptions options;
    const Words words(UnitSystem::metric);
    const std::size_t all = patterns_to_cut(found, options.to_make, words).size();
    CHECK(all > 0);
    options.to_make = cuts_to_make(found, found);
    CHECK(patterns_to_cut(found, options.to_make, words).empty());
    options.to_make = cuts_to_make(found, now);
    const auto one = patterns_to_cut(now, options.to_make, words);
    CHECK_FALSE(one.empty());
    CHECK(one.size() < all);
    for (const Pattern &pattern : one)
        CHECK(std::ranges::find(pattern.tags, std::string("A-01-1")) != pattern.tags.end());
}
