// Some pieces of a shell, by what they are called and by what is to be done with them.
#include "kernel/compare/chosen_pieces.h"
#include "kernel/layout/lay_out.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

using namespace roundlay;

namespace {

using Tags = std::vector<std::string>;

OwnLog log_at(const std::string &wall, int round, Fabric fabric, const std::string &mark = {}) {
    OwnLog log;
    log.wall = wall, log.round = round, log.fabric = fabric, log.mark = mark;
    return log;
}

/// All old but A-02-1; nothing is cut yet but what is as it was found.
Shell old_house() {
    Shell shell = test::plain_shell();
    for (const Piece &piece : lay_out(shell).pieces)
        if (piece.tag != "A-02-1")
            shell.own_logs.push_back(
                log_at(piece.tag.substr(0, 1), piece.round, Fabric::kept, "old " + piece.tag));
    return shell;
}

Tags tags(const std::vector<std::string> &words, const Shell &found, const Shell &now) {
    const Layout was = lay_out(found), is = lay_out(now);
    REQUIRE_FALSE(has_errors(is.findings));
    const ChosenPieces chosen = chosen_pieces(piece_choice(words), was, is);
    Tags tags;
    for (const Index<Piece> piece : chosen.pieces)
        tags.push_back(is.pieces[piece].tag);
    return tags;
}

/// With a new outer face on C-03-1.
Shell mended(Shell shell) {
    Mend mend;
    mend.wall = "C", mend.round = 3, mend.kind = MendKind::face;
    mend.from = Length::mm(1000), mend.to = Length::mm(1600), mend.depth = Length::mm(60);
    shell.mends.push_back(mend);
    return shell;
}

} // namespace

TEST_CASE("Nothing stated is every piece, of every model") {
    const Layout layout = lay_out(test::plain_shell());
    const ChosenPieces all = chosen_pieces({}, layout, layout);
    CHECK(all.pieces.size() == layout.pieces.size());
    CHECK(all.models.size() == layout.models.size());
    CHECK(all.unknown.empty());
}

TEST_CASE("A piece is called by its tag, by how it begins or by what is written on it, and only so") {
    const Shell house = old_house();
    CHECK(tags({"A-03-1"}, house, house) == Tags{"A-03-1"});
    CHECK(tags({"A-03"}, house, house) == Tags{"A-03-1"});
    CHECK(tags({"A-0"}, house, house).empty()); // no part of a tag
    CHECK(tags({"old B-02-1", "A-03-1"}, house, house) == Tags{"A-03-1", "B-02-1"});
    const Layout layout = lay_out(house);
    const auto of_wall = tags({"A"}, house, house);
    CHECK(of_wall.size() == static_cast<std::size_t>(std::ranges::count_if(
                                layout.pieces, [](const Piece &p) { return p.tag.starts_with("A-"); })));
    CHECK(chosen_pieces(piece_choice({"A-0", "new", "A"}), layout, layout).unknown == Tags{"A-0"});
}

TEST_CASE("New wood, mended logs with theirs, and what is to be cut are told apart") {
    const Shell found = old_house(), now = mended(found);
    CHECK(tags({"new"}, found, now) == Tags{"A-02-1", "C-03-1-M1"});
    CHECK(tags({"mended"}, found, now) == Tags{"C-03-1", "C-03-1-M1"});
    CHECK(tags({"cut"}, found, now) == Tags{"A-02-1", "C-03-1", "C-03-1-M1"});
    CHECK(tags({"C-03-1"}, found, now) == Tags{"C-03-1", "C-03-1-M1"});
    CHECK(tags({"mended"}, found, found).empty());
    CHECK(tags({"new", "A-01"}, found, found) == Tags{"A-01-1", "A-02-1"});
}

TEST_CASE("An old log of which nobody can tell what it has may have to be cut") {
    const Shell found = old_house();
    Shell now = found;
    for (OwnLog &log : now.own_logs)
        if (log.mark == "old D-02-1") log.mark = "from elsewhere";
    CHECK(tags({"cut"}, found, now) == Tags{"A-02-1", "D-02-1"});
}

TEST_CASE("Equal pieces are of one model, told once") {
    const Layout layout = lay_out(test::plain_shell());
    const ChosenPieces chosen = chosen_pieces(piece_choice({"A", "C"}), layout, layout);
    CHECK(std::ranges::is_sorted(chosen.models));
    CHECK(chosen.models.size() < chosen.pieces.size());
    for (const Index<Model> model : chosen.models)
        CHECK(std::ranges::any_of(chosen.pieces,
                                  [&](Index<Piece> piece) { return layout.pieces[piece].model == model; }));
}
