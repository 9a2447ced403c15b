// Mends of the house as it shall stand, against the logs that they were found as.
#include "kernel/fabric/fabric.h"
#include "kernel/layout/lay_out.h"
#include "kernel/layout/wood/interference.h"
#include "tests/fabric/laid.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;
using roundlay::test::found_log;
using roundlay::test::Laid;

namespace {

Mend mend_of(MendKind kind, LogEnd end, double from, double to) {
    Mend mend;
    mend.wall = "A", mend.round = 2, mend.kind = kind, mend.end = end, mend.to = Length::mm(to);
    if (kind == MendKind::splice)
        mend.lap = Length::mm(from);
    else
        mend.from = Length::mm(from), mend.depth = Length::mm(50);
    return mend;
}

FoundLog decided_log(const std::string &tag, Decision what) {
    return found_log(tag, {"A", 2, {}}, {what});
}

Laid with(std::vector<Mend> mends) {
    Shell shell = test::plain_shell(); // 5 m x 4 m, logs 200 mm x 210 mm
    shell.mends = std::move(mends);
    return {shell};
}

} // namespace

TEST_CASE("New wood is told where it lies along the log as it was found, from both ends, and how high") {
    Mend patch = mend_of(MendKind::let_in, LogEnd::right, 1500, 2000);
    patch.low = Length::mm(0), patch.high = Length::mm(105); // half of 210 mm
    const Laid now = with({mend_of(MendKind::splice, LogEnd::left, 400, 700), patch});
    REQUIRE(now.layout.pieces.size() > 0);
    const Laid found = with({});
    const double length = std::ranges::find(found.layout.pieces, "A-02-1", &Piece::tag)->blank.length;
    Record record;
    record.logs = {decided_log("m", Decision::mend)};
    const std::vector<NewWood> wood = new_wood(record, now.shell, now.layout);
    REQUIRE(wood.size() == 2);
    CHECK(wood[0].mend.kind == MendKind::splice);
    CHECK(wood[0].from_left == Approx(0).margin(1e-9));
    CHECK(wood[0].to_left == Approx(1100)); // its lap lies on from where the old wood begins
    CHECK(wood[0].low == Approx(0).margin(1e-9));
    CHECK(wood[0].high == Approx(1));
    CHECK(wood[1].to_right == Approx(1500));
    CHECK(wood[1].from_right == Approx(2000));
    CHECK(wood[1].from_left == Approx(length - 2000));
    CHECK(wood[1].low == Approx(0).margin(1e-9));
    CHECK(wood[1].high == Approx(0.5));
    CHECK(wood[1].tag.starts_with("A-02-1-M"));
}

TEST_CASE("What mends of the house as it shall stand take is taken out of the sums of the house as found") {
    const Laid found = with({}), now = with({mend_of(MendKind::face, LogEnd::left, 1000, 2000)});
    REQUIRE(now.layout.pieces.size() > found.layout.pieces.size());
    Record record;
    record.logs = {decided_log("m", Decision::mend)};
    FabricFigures figures = fabric_figures(record, found.layout, found.bodies);
    const FabricSum whole = figures.stays();
    take_out_mends(figures, record, now.layout, now.bodies);
    // By hand: 1000 mm of the whole face, 210 mm high, 50 mm deep.
    CHECK(whole.volume - figures.stays().volume == Approx(1000.0 * 210 * 50).epsilon(1e-9));
    CHECK(whole.outside - figures.stays().outside == Approx(1000.0 * 210).epsilon(1e-9));
    CHECK(figures.cut_out.volume == Approx(1000.0 * 210 * 50).epsilon(1e-9));
    CHECK(figures.stays().logs == 1);
    CHECK(figures.found.volume == Approx(whole.volume).epsilon(1e-12));
}

TEST_CASE("Of decisions as they were once, mends come out of those logs alone that were to be mended then") {
    const Laid found = with({}), now = with({mend_of(MendKind::face, LogEnd::left, 1000, 2000)});
    Record record;
    record.logs = {decided_log("m", Decision::keep)};
    record.logs[0].decisions.push_back({Decision::mend, "R. Hale", "4 May", "", {}});
    for (const std::size_t decisions : {1, 2}) {
        FabricFigures figures = fabric_figures(record, found.layout, found.bodies, decisions);
        take_out_mends(figures, record, now.layout, now.bodies, decisions);
        CHECK(figures.cut_out.volume == Approx(decisions == 1 ? 0 : 1000.0 * 210 * 50).epsilon(1e-9));
    }
}

TEST_CASE("A log that is to be mended and is shown whole is told; drawn, it is not") {
    Record record;
    record.logs = {decided_log("m", Decision::mend)};
    const auto told = decision_problems(record, with({}).layout);
    REQUIRE(told.size() == 1);
    CHECK(told[0].path == "found[0].decision[0]");
    CHECK(test::english(told[0].what) ==
          "log m is to be mended, and A-02-1 is shown whole: state the [[mend]] "
          "of it in this state");
    CHECK(
        decision_problems(record, with({mend_of(MendKind::face, LogEnd::left, 1000, 2000)}).layout).empty());
}

TEST_CASE(
    "A log that is to be kept, or turned, and has a mend is told with its tag, the mend and the piece") {
    const Laid mended = with({mend_of(MendKind::face, LogEnd::left, 1000, 2000)});
    for (const auto &[what, begins] :
         {std::pair{Decision::keep,
                    "log m is to be kept as it is, and mend[0] puts new wood into it, in A-02-1"},
          std::pair{Decision::turn,
                    "log m is to be turned end for end, and mend[0] puts new wood into it, in A-02-1"}}) {
        Record record;
        record.logs = {decided_log("m", what)};
        const auto told = decision_problems(record, mended.layout);
        REQUIRE(told.size() == 1);
        CHECK(told[0].path == "found[0].decision[0]");
        CHECK_THAT(test::english(told[0].what), Catch::Matchers::StartsWith(begins));
        CHECK(decision_problems(record, with({}).layout).empty());
        record.logs[0].decisions.push_back(
            {Decision::mend, "R. Hale", "4 May", "", {}}); // the last one holds
        CHECK(decision_problems(record, mended.layout).empty());
    }
}

TEST_CASE(
    "A mend in a log that nobody has decided about, or that is to go, is told with log, mend and piece") {
    const Laid mended = with({mend_of(MendKind::face, LogEnd::left, 1000, 2000)});
    Record record;
    record.logs = {decided_log("m", Decision::replace)};
    const auto gone = decision_problems(record, mended.layout);
    REQUIRE(gone.size() == 1);
    CHECK(test::english(gone[0].what) ==
          "log m is decided “replace”, and mend[0] puts new wood into it, in A-02-1: "
          "decide to mend it, or take the mend out of this state");
    record.logs[0].decisions.clear();
    const auto undecided = decision_problems(record, mended.layout);
    REQUIRE(undecided.size() == 1);
    CHECK(undecided[0].path == "found[0]");
    CHECK(test::english(undecided[0].what) ==
          "nobody has decided what becomes of log m, and mend[0] puts new wood into it, in A-02-1: "
          "decide to mend it, or take the mend out of this state");
    CHECK(decision_problems(record, with({}).layout).empty());
}
