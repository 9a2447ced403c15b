// The bench set: from its tables back to wood, for every piece.
#include "exporters/sheets/bench/bench.h"
#include "exporters/sheets/bench/piece_rows.h"
#include "kernel/document/document.h"
#include "tests/sheets/support/bench_reader.h"
#include "tests/sheets/support/checks.h"
#include "tests/sheets/support/paper_compare.h"
#include "tests/sheets/support/read_back.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <map>

using namespace roundlay;
using namespace roundlay::sheets;
using namespace roundlay::test;

namespace {

struct Outcome {
    std::string wrong;
    std::size_t pieces = 0, families = 0;
    std::map<std::string, int> unread; ///< by what was said
};

/// Where a notch lies off the end, or in the run of a log, its sides are told from one another: two prints.
double prints(const Piece &piece) {
    const bool two = std::ranges::any_of(piece.cuts, [&](const Cut &cut) {
        const SeamCut *seam = std::get_if<SeamCut>(&cut);
        return seam && (seam->runs_on || !seam->open_at(seam->end, piece.blank.length));
    });
    return two ? 2 : 1;
}

void read_family(const LaidShell &laid, const Family &family, const BenchTables &tables, Outcome &all) {
    for (std::size_t i = 0; i < family.pieces.size(); ++i) {
        const Piece &piece = laid.layout.pieces[family.pieces[i]];
        ++all.pieces;
        try {
            const std::string wrong = differences(with_seams_first(piece), piece_on_bench(tables, i),
                                                  prints(piece) * precision(laid.shell.units));
            if (!wrong.empty()) all.wrong += piece.tag + " in " + family.name + ":" + wrong + "\n";
        } catch (const std::runtime_error &cause) {
            ++all.unread[cause.what()];
        }
    }
}

Outcome all_read_back(const LaidShell &laid) {
    Outcome all;
    const SheetOptions options = full_options();
    const Draft draft{laid.shell, laid.layout, laid.bodies, options};
    const Words words = draft.words();
    const Families families = families_of(draft, words);
    const Table joints = joint_table(families.joints, words);
    for (const Family &family : families.all) {
        ++all.families;
        read_family(laid, family, {work_rows(family, words), piece_rows(draft, family, words), joints}, all);
    }
    return all;
}

std::string unread(const Outcome &outcome) {
    std::string text;
    for (const auto &[why, count] : outcome.unread)
        text += std::to_string(count) + " " + why + "\n";
    return text;
}

} // namespace

TEST_CASE("numbers are taken out of words, and names and tags left in", "[bench]") {
    const Numbered metric =
        taken_apart("Tail T3 at the far end, its shoulder at 4640, 1:8, P1, C-07-1, +105.", false);
    CHECK(metric.numbers == std::vector<std::string>{"T3", "4640", "+105"});
    CHECK(metric.between ==
          std::vector<std::string>{"Tail ", " at the far end, its shoulder at ", ", 1:8, P1, C-07-1, ", "."});
    const Numbered inches =
        taken_apart("from 4' 8 1/16\" to 5' 4\", down to -1/2\": 12\" and 5 of them", true);
    CHECK(inches.numbers == std::vector<std::string>{"4' 8 1/16\"", "5' 4\"", "-1/2\"", "12\""});
}

TEST_CASE("only what differs has a letter, and what is equal throughout has one letter", "[bench]") {
    const Letters all = lettered({{"100", "4800", "7", "4800"}, {"100", "5000", "8", "5000"}});
    CHECK(all.in_place == std::vector<std::string>{"100", "A", "B", "A"});
    CHECK(all.columns == std::vector<std::vector<std::string>>{{"4800", "5000"}, {"7", "8"}});
    CHECK(letter_called(7) == "H");
    CHECK(letter_called(8) == "J"); // I is read as 1
    CHECK(letter_called(24) == "AA");
}

TEST_CASE("every piece of the demos is cut again from the tables of its family", "[bench][demo]") {
    for (const std::string &name : all_demo_names) {
        INFO(name);
        const LaidShell laid = demo(name);
        const Outcome all = all_read_back(laid);
        CHECK(all.wrong == "");
        CHECK(unread(all) == "");
        const auto alone = std::ranges::count_if(laid.layout.pieces, stands_by_itself);
        CHECK(all.pieces + static_cast<std::size_t>(alone) == laid.layout.pieces.size());
        if (all.pieces > 20) CHECK(all.families * 2 < all.pieces);
    }
}

TEST_CASE("every piece of any shell is cut again from the tables of its family", "[bench]") {
    CHECK(counterexample(shells_to_draw(20), [&] {
              Shell shell = any_of_all_shells();
              shell.units = *rc::gen::element(UnitSystem::metric, UnitSystem::imperial);
              const Outcome all = all_read_back(laid(shell));
              if (!all.wrong.empty() || !all.unread.empty())
                  RC_FAIL(all.wrong + unread(all) + write_document(shell));
          }) == "");
}

TEST_CASE("nothing overlaps on bench sets", "[bench]") {
    for (const auto paper : {std::optional<Paper>(), std::optional(Paper::a4), std::optional(Paper::letter)})
        for (const std::string &name : all_demo_names) {
            INFO(name);
            const LaidShell laid = demo(name);
            const SheetOptions options = full_options(paper);
            const auto sheets =
                composed(bench_set(laid.layout), {laid.shell, laid.layout, laid.bodies, options});
            CHECK(all_clashes(sheets) == "");
        }
}
