// The demo of a house that stands, and its record as rows beside it.
#include "kernel/document/document.h"
#include "kernel/record/check_record.h"
#include "kernel/survey/survey.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <fstream>
#include <iterator>

using namespace roundlay;

namespace {

std::string text_of(const std::string &name) {
    std::ifstream in(std::string(ROUNDLAY_DEMOS) + "/" + name, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

int count(const Record &record, const auto &holds) {
    return static_cast<int>(std::ranges::count_if(record.logs, holds));
}

} // namespace

TEST_CASE("The rows beside the demo are its record") {
    const ReadResult read = read_document(text_of("old-house.roundlay"), "old-house");
    REQUIRE(read.shell);
    CHECK(read.problems.empty());
    const std::string csv = text_of("old-house.csv");
    CHECK(survey_csv(survey_table(read.record, {})) == csv);
    Record context = read.record;
    context.logs.clear();
    const SurveyRead rows = read_survey(csv, *read.shell, context);
    CHECK(rows.problems.empty());
    CHECK(rows.record.logs == read.record.logs);
}

TEST_CASE("The demo holds what a house that stands is like") {
    const ReadResult read = read_document(text_of("old-house.roundlay"), "old-house");
    const Record &record = read.record;
    CHECK(record.logs.size() == 91);
    CHECK(read.states.size() == 4);
    CHECK(std::ranges::count(read.states, true, &HouseState::measured) == 1);
    CHECK(count(record, [](const FoundLog &log) { return log.finish.outside == "sawn"; }) == 3);
    CHECK(count(record, is_gone) == 1);
    CHECK(count(record, [](const FoundLog &log) { return log.place.wall.empty(); }) == 2);
    CHECK(count(record, [](const FoundLog &log) { return !log.later_cuts.empty(); }) > 8);
    CHECK(count(record, [](const FoundLog &log) { return log.decisions.size() > 1; }) == 2);
    const auto rotten = [](const FoundLog &log) {
        return std::ranges::count(log.zones, Soundness::rotten, &ConditionZone::what) > 0;
    };
    CHECK(count(record, rotten) == 2);
    const auto peg_gone = [](const FoundLog &log) {
        return std::ranges::count(log.pegs, PegState::missing, &FoundPeg::state) > 0;
    };
    CHECK(count(record, peg_gone) > 5);
}
