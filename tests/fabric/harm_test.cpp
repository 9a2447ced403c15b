// Rot that stays in a log, and places that no log reaches to: each asked with its log and the places.
#include "kernel/fabric/fabric.h"
#include "kernel/layout/lay_out.h"
#include "kernel/record/check_record.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"
#include "tests/support/shells.h"

#include <algorithm>

using namespace roundlay;

namespace {

/// Log A-02-1 of 5 m x 4 m, 200 mm x 210 mm, with one zone from its left end.
Record with_zone(Decision what, Soundness is, const char *from, const char *to, const char *depth = "",
                 std::vector<FoundFace> faces = {}) {
    Record record;
    FoundLog log;
    log.tag = "m";
    log.place = {"A", 2, {}};
    log.zero = "DA";
    log.decisions.push_back({what, "R. Hale", "3 May", "", {}});
    ConditionZone zone;
    zone.what = is, zone.faces = std::move(faces);
    zone.from.written = from, zone.to.written = to, zone.depth.written = depth;
    log.zones.push_back(zone);
    record.logs.push_back(log);
    (void)read_numbers(record);
    return record;
}

Mend let_in(LogEnd end, double from, double to, double depth, LogSide face = LogSide::outside) {
    Mend mend;
    mend.wall = "A", mend.round = 2, mend.kind = MendKind::face, mend.end = end, mend.face = face;
    mend.from = Length::mm(from), mend.to = Length::mm(to), mend.depth = Length::mm(depth);
    return mend;
}

Mend new_end(double to, double lap) {
    Mend mend;
    mend.wall = "A", mend.round = 2, mend.kind = MendKind::splice, mend.end = LogEnd::left;
    mend.face = LogSide::top;
    mend.to = Length::mm(to), mend.lap = Length::mm(lap);
    return mend;
}

std::vector<std::string> asked(const Record &record, std::vector<Mend> mends) {
    Shell shell = test::plain_shell();
    const Layout found = lay_out(shell);
    shell.mends = std::move(mends);
    const Layout now = lay_out(shell);
    REQUIRE(now.pieces.size() > 0);
    std::vector<std::string> all;
    for (const DecisionProblem &problem : harm_that_stays(record, shell, now, found))
        all.push_back(problem.path + ": " + test::english(problem.what) +
                      (problem.weight == Weight::note ? " (note)" : ""));
    return all;
}

} // namespace

TEST_CASE("Rot in a log that is kept is asked after, once for its zone, and what is only checked is not") {
    CHECK(asked(with_zone(Decision::keep, Soundness::rotten, "1200 mm", "1900 mm"), {}) ==
          std::vector<std::string>{
              "found[0].zone[0]: log m is decided “keep”, and was found rotten from 1200 mm to "
              "1900 mm: is that meant to stay in it? (note)"});
    for (const Soundness fine : {Soundness::sound, Soundness::checked})
        CHECK(asked(with_zone(Decision::keep, fine, "1200 mm", "1900 mm"), {}).empty());
    CHECK(asked(with_zone(Decision::replace, Soundness::rotten, "1200 mm", "1900 mm"), {}).empty());
}

TEST_CASE("A mend that does not reach along a zone, or lies at the other end, is told with what stays") {
    const Record record = with_zone(Decision::mend, Soundness::soft, "1200 mm", "1900 mm");
    CHECK(asked(record, {let_in(LogEnd::left, 1150, 1950, 60)}).empty());
    const auto part = asked(record, {let_in(LogEnd::left, 1150, 1700, 60)});
    REQUIRE(part.size() == 1);
    CHECK(part[0] ==
          "found[0].zone[0]: log m was found soft from 1200 mm to 1900 mm, and of that its mends leave a "
          "length of 200 mm in it, between 1700 mm and 1900 mm from DA: is that meant to stay?");
    const auto other = asked(record, {let_in(LogEnd::right, 1150, 1950, 60)});
    REQUIRE(other.size() == 1);
    CHECK_THAT(other[0], ContainsSubstring("leave a length of 700 mm in it, between 1200 mm"));
    CHECK(
        asked(record, {let_in(LogEnd::left, 1150, 1600, 60), let_in(LogEnd::left, 1600, 1950, 60)}).empty());
    CHECK(asked(record, {}).empty()); // that nothing is mended is told of the log
}

TEST_CASE(
    "A zone that goes deeper than the mend, or in from another face, is told; without depth it is not") {
    const auto deep = [](const char *depth, std::vector<FoundFace> faces) {
        return with_zone(Decision::mend, Soundness::rotten, "1200 mm", "1900 mm", depth, std::move(faces));
    };
    const std::vector<Mend> mend{let_in(LogEnd::left, 1150, 1950, 60)};
    CHECK(asked(deep("50 mm", {FoundFace::outside}), mend).empty());
    CHECK(asked(deep("", {FoundFace::inside}), mend).empty());
    for (const Record &record :
         {deep("90 mm", {FoundFace::outside}), deep("90 mm", {}), deep("50 mm", {FoundFace::inside})}) {
        const auto told = asked(record, mend);
        REQUIRE(told.size() == 1);
        CHECK_THAT(told[0], ContainsSubstring("its mends do not reach so deep there between "
                                              "1200 mm and 1900 mm from DA"));
    }
    // A new end takes the whole log up to where the old one begins, beyond that half of it.
    const Record end =
        with_zone(Decision::mend, Soundness::rotten, "0", "700 mm", "150 mm", {FoundFace::under});
    CHECK(asked(end, {new_end(700, 400)}).empty());
    CHECK(asked(end, {new_end(500, 400)}).size() == 1);
}

TEST_CASE("Places noted beyond the log are told with the log and where it lies, though nobody taped it") {
    Record record = with_zone(Decision::keep, Soundness::checked, "0", "9000 mm");
    FoundPeg peg;
    peg.at.written = "99999 mm";
    record.logs[0].pegs = {peg, peg};
    record.logs[0].pegs[1].at.written = "4700 mm";
    WoodTest test;
    test.at.written = "6 m";
    record.logs[0].tests.push_back(test);
    MoistureReading moisture;
    moisture.at.written = "7 m";
    record.logs[0].moistures.push_back(moisture);
    LaterCut cut;
    cut.at.written = "8 m";
    record.logs[0].later_cuts.push_back(cut);
    (void)read_numbers(record);
    const Layout found = lay_out(test::plain_shell());
    std::vector<std::string> told;
    for (const DecisionProblem &problem : places_past_log(record, found))
        told.push_back(problem.path + ": " + test::english(problem.what));
    REQUIRE(told.size() == 5);
    CHECK_THAT(told[0],
               Catch::Matchers::StartsWith("found[0].zone[0].to: log m: 9000 mm from DA was noted, and "
                                           "the log lies from 0 mm to 5000 mm there"));
    CHECK_THAT(told[1], Catch::Matchers::StartsWith("found[0].test[0].at: log m: 6000 mm"));
    CHECK_THAT(told[2], Catch::Matchers::StartsWith("found[0].moisture[0].at: log m: 7000 mm"));
    CHECK_THAT(told[3], Catch::Matchers::StartsWith("found[0].peg[0].at: log m: 99999 mm"));
    CHECK_THAT(told[4], Catch::Matchers::StartsWith("found[0].later_cut[0].at: log m: 8000 mm"));
    record.logs[0].length.written = "5000 mm"; // the record itself tells then
    (void)read_numbers(record);
    CHECK(places_past_log(record, found).empty());
}
