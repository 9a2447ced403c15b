// A log and the new wood that is put together with it are one lift.
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <map>

using namespace roundlay;

TEST_CASE("New wood in a log takes no number of the raise: those of all logs are as they are without it") {
    Shell shell = test::plain_shell();
    std::map<std::string, int> without;
    for (const Piece &piece : lay_out(shell).pieces)
        without[piece.tag] = piece.raise;
    Mend sole;
    sole.wall = "A", sole.round = 3, sole.kind = MendKind::face, sole.face = LogSide::under;
    sole.from = Length::mm(1000), sole.to = Length::mm(2200), sole.depth = Length::mm(50);
    shell.mends = {sole};
    const Layout layout = lay_out(shell);
    REQUIRE(layout.pieces.size() == without.size() + 1);
    for (const Piece &piece : layout.pieces) {
        INFO(piece.tag);
        CHECK(piece.raise == (piece.mends ? layout.pieces[*piece.mends].raise : without.at(piece.tag)));
    }
}
