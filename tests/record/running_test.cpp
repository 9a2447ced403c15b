#include "kernel/record/check_record.h"
#include "kernel/record/running.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"

using namespace roundlay;

namespace {

Length note(const char *written) {
    return std::get<Length>(read_note(written, {4, {}, {}}));
}

} // namespace

TEST_CASE("Running dimensions from a stated zero give their parts") {
    // HABS Guidelines 3.1.4: read from a zero point as running, not as incremental; parts by difference.
    const Length running[] = {note("0"), note("3.10.1"), note("6.1.3")};
    const auto parts = std::get<std::vector<Length>>(parts_of(running));
    CHECK(parts == std::vector{Length(), Length::inches(46.25), Length::inches(27.5)});
    const Length back[] = {note("6.1.3"), note("3.10.1")};
    CHECK(test::english(std::get<Said>(parts_of(back)), UnitSystem::imperial) ==
          "running dimension 2 is 3' 10 1/4\" and lies before the one in front of it, 6' 1 3/4\": put them "
          "in order, "
          "or look at the sheet again");
}

TEST_CASE("Heights of several level planes meet in one") {
    // Museumsnytt 1/1951, lecture on moving houses: heights up and down from a level plane through the house;
    // two or more planes, since the instrument must be moved.
    Record record;
    record.notation.denominator = 4;
    record.planes = {{"L1", {}, "on all corners", ""}, {"L2", {.written = "2.0.0"}, "in the north room", ""}};
    CHECK(read_numbers(record).empty());
    const auto &planes = record.planes;
    CHECK(over_first_plane(planes, "L1", note("-0.3.2")) == Length::inches(-3.5));
    CHECK(over_first_plane(planes, "L2", note("-0.3.2")) == Length::inches(20.5));
    CHECK_FALSE(over_first_plane(planes, "L3", note("0")));
    record.planes[1].offset = {.written = "2.0"}; // two fields: open
    CHECK(read_numbers(record).size() == 1);
    CHECK_FALSE(over_first_plane(planes, "L2", note("0")));
}
