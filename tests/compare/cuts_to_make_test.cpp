// Which cuts of old logs are work.
#include "kernel/compare/cuts_to_make.h"
#include "kernel/layout/cuts/asked.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"
#include "tests/support/tagged.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::tagged;

namespace {

Shell old_house() {
    Shell shell = test::plain_shell();
    const Layout even = lay_out(shell);
    for (const Piece &piece : even.pieces) {
        OwnLog log;
        log.wall = even.walls[piece.wall].name, log.round = piece.round;
        log.fabric = Fabric::kept, log.mark = "old " + piece.tag;
        shell.own_logs.push_back(log);
    }
    return shell;
}

std::size_t work(const CutsToMake &cuts) {
    REQUIRE(cuts);
    return static_cast<std::size_t>(std::ranges::count(*cuts, true));
}

} // namespace

TEST_CASE("Nothing is cut in old logs of a house that is left as it is, and all of a new one") {
    const Layout found = lay_out(old_house()), plain = lay_out(test::plain_shell());
    for (const CutsToMake &cuts : cuts_to_make(found, found))
        CHECK(work(cuts) == 0);
    for (const auto &cuts = cuts_to_make(found, plain); const auto i : plain.pieces.indices())
        CHECK(work(cuts[i]) == plain.pieces[i].cuts.size());
}

TEST_CASE("A mend and what a new bore takes are work, all else in the log is there") {
    const Shell old = old_house();
    Shell now = old;
    StatedBore bore;
    bore.wall = "A", bore.from_round = 3, bore.to_round = 3;
    bore.from_left = Length::mm(1500);
    now.bores.push_back(bore);
    Mend mend;
    mend.wall = "A", mend.round = 4;
    mend.from = Length::mm(1000), mend.to = Length::mm(1600), mend.depth = Length::mm(60);
    now.mends.push_back(mend);
    const Layout found = lay_out(old), layout = lay_out(now);
    REQUIRE_FALSE(has_errors(layout.findings));
    const auto cuts = cuts_to_make(found, layout);
    const auto bored = tagged(layout, "A-03-1"), mended = tagged(layout, "A-04-1");
    CHECK(work(cuts[bored]) == 1);
    for (std::size_t k = 0; k < cuts[bored]->size(); ++k)
        if ((*cuts[bored])[k]) CHECK(bore_of(layout.pieces[bored].cuts[k]) != nullptr);
    CHECK(work(cuts[mended]) == 1);
    for (std::size_t k = 0; k < cuts[mended]->size(); ++k)
        CHECK((*cuts[mended])[k] == is_mend(layout.pieces[mended].cuts[k]));
    CHECK(work(cuts[tagged(layout, "A-04-1-M1")]) == layout.pieces[tagged(layout, "A-04-1-M1")].cuts.size());
    CHECK(work(cuts[tagged(layout, "C-02-1")]) == 0);
}

TEST_CASE("An old log that is no piece of the house as it was found has cuts that nobody can tell") {
    Shell now = old_house();
    for (OwnLog &log : now.own_logs)
        if (log.wall == "A" && log.round == 3) log.mark = "from elsewhere";
    const Layout found = lay_out(old_house()), layout = lay_out(now);
    CHECK_FALSE(cuts_to_make(found, layout)[tagged(layout, "A-03-1")]);
}
