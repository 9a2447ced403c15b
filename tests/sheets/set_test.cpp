// Sets of sheets as values: composed in any order, on any number of threads, once for everybody.

#include "exporters/sheets/book/book.h"
#include "exporters/sheets/cut_sheet/cut_sheet.h"
#include "exporters/sheets/set/best.h"
#include "exporters/sheets/set/composed_sheets.h"
#include "kernel/layout/lay_out.h"
#include "kernel/threads/for_each_index.h"
#include "tests/sheets/support/checks.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <atomic>
#include <set>
#include <stdexcept>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

Subject counted(std::atomic<int> &times) {
    return {"one", [&times](const Draft &draft) {
                ++times;
                Sheet sheet;
                sheet.size = draft.size();
                return std::vector{sheet};
            }};
}

Draft draft_of(const LaidShell &shell, const SheetOptions &options) {
    return {shell.shell, shell.layout, shell.bodies, options};
}

std::vector<SharedSheets> composed_by(const LaidShell &shell, const SheetOptions &options, int threads) {
    ComposedSheets known;
    return composed(whole_set(shell.layout), draft_of(shell, options), known, threads, {});
}

} // namespace

TEST_CASE("a set composed on many threads is the set composed on one") {
    for (const std::string name : {"one-room", "round-cabin"}) {
        INFO(name);
        const LaidShell shell = demo(name);
        const SheetOptions options = full_options();
        const auto one = composed_by(shell, options, 1), many = composed_by(shell, options, 8);
        REQUIRE(one.size() == whole_set(shell.layout).size());
        REQUIRE(many.size() == one.size());
        for (std::size_t i = 0; i < one.size(); ++i)
            CHECK(*one[i] == *many[i]);
    }
}

TEST_CASE("a subject is composed once, however many ask for it at once") {
    const LaidShell shell = demo("one-room");
    const SheetOptions options = full_options();
    std::atomic<int> times = 0;
    const Subject subject = counted(times);
    ComposedSheets known;
    std::vector<SharedSheets> got(40);
    for_each_index(got.size(), 8,
                   [&](std::size_t i) { got[i] = known.of(subject, draft_of(shell, options)); });
    CHECK(times == 1);
    CHECK(known.compositions() == 1);
    for (const SharedSheets &sheets : got)
        CHECK(sheets == got[0]);
}

TEST_CASE("on other paper and on another day it is another sheet") {
    const LaidShell shell = demo("one-room");
    std::atomic<int> times = 0;
    const Subject subject = counted(times);
    ComposedSheets known;
    SheetOptions options = full_options(Paper::a4);
    CHECK(known.of(subject, draft_of(shell, options))->front().size == size_of(Paper::a4));
    options.paper = Paper::a3;
    CHECK(known.of(subject, draft_of(shell, options))->front().size == size_of(Paper::a3));
    CHECK(times == 2);
    options.fields.date = "2001-02-03";
    known.of(subject, draft_of(shell, options));
    CHECK(times == 3);
}

TEST_CASE("where composing fails that is told, and whoever asks next has it tried again") {
    const LaidShell shell = demo("one-room");
    const SheetOptions options = full_options();
    bool fails = true;
    const Subject subject{"one", [&](const Draft &) {
                              if (fails) throw std::runtime_error("no");
                              return std::vector<Sheet>(1);
                          }};
    ComposedSheets known;
    CHECK_THROWS_AS(known.of(subject, draft_of(shell, options)), std::runtime_error);
    fails = false;
    CHECK(known.of(subject, draft_of(shell, options))->size() == 1);
}

TEST_CASE("a set that is stopped gives nothing") {
    const LaidShell shell = demo("one-room");
    const SheetOptions options = full_options();
    ComposedSheets known;
    const SheetSet set = cut_sheet_set(shell.layout);
    const auto none =
        composed(set, draft_of(shell, options), known, 2, [](std::size_t done) { return done < 2; });
    CHECK(none.empty());
    CHECK(known.compositions() < static_cast<int>(set.size()));
}

TEST_CASE("no two subjects of a shell are called the same") {
    CHECK(counterexample(50, [] {
              const Layout layout = lay_out(any_of_all_shells());
              const SheetSet set = whole_set(layout);
              std::set<std::string> names;
              for (const Subject &subject : set)
                  names.insert(subject.about);
              RC_ASSERT(names.size() == set.size());
          }) == "");
}

TEST_CASE("of drawings that are tried the cheapest is kept, and of those the first") {
    const Scale large{0.5, "1:2"}, small{0.1, "1:10"};
    Best<std::string> best;
    CHECK(best.is_empty());
    CHECK(said_scale(best.scale(), Words(UnitSystem::metric)) == "none");
    best.offer("three sheets", &large, {0, 3});
    best.offer("two sheets", &small, {0, 2});
    best.offer("two sheets more", &large, {0, 2});
    best.offer("one sheet, but a tag has no room", &large, {1, 1});
    CHECK(best.drawing() == "two sheets");
    CHECK(said_scale(best.scale(), Words(UnitSystem::metric)) == "1:10");
    CHECK_FALSE(best.is_perfect());
    CHECK_FALSE(best.would_keep({0, 2}));
    best.offer("one sheet", &small, {0, 1});
    CHECK(best.is_perfect());
}
