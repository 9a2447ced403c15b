#include "kernel/record/field_note.h"
#include "tests/support/catch.h"
#include "tests/support/said.h"

#include <rapidcheck.h>

#include <string>

using namespace roundlay;

namespace {

Notation counting(int denominator) {
    return {denominator, {}, {}};
}
Notation meaning(TwoFields two) {
    return {{}, two, {}};
}
Notation in(NoteUnit unit) {
    return {{}, {}, unit};
}

double mm_of(const std::string &written, const Notation &notation = {}) {
    const NoteValue read = read_note(written, notation);
    INFO(written);
    if (const auto *trouble = std::get_if<NoteTrouble>(&read)) FAIL(test::english(trouble->what));
    return std::get<Length>(read).mm();
}
double inches_of(const std::string &written, const Notation &notation = {}) {
    return Length::mm(mm_of(written, notation)).inches();
}

NoteTrouble trouble_of(const std::string &written, const Notation &notation = {}) {
    const NoteValue read = read_note(written, notation);
    INFO(written);
    if (const auto *length = std::get_if<Length>(&read)) FAIL("read as " << length->mm() << " mm");
    return std::get<NoteTrouble>(read);
}

} // namespace

TEST_CASE("Dotted notes are read as the guidelines for measured drawings print them") {
    // HABS Guidelines, Recording Historic Structures and Sites with HABS Measured Drawings, 3.1.4.
    CHECK(inches_of("3.10.1", counting(4)) == 46.25);
    CHECK(inches_of("6.1.3", counting(4)) == 73.75);
    // The same place allows sixteenths where greater accuracy is needed, if kept consistent.
    CHECK(inches_of("1.3.13", counting(16)) == 15.8125);
    // In millimetres, by 25.4 mm to the inch.
    CHECK(mm_of("3.10.1", counting(4)) == 1174.75);
    CHECK(mm_of("6.1.3", counting(4)) == 1873.25);
    CHECK(mm_of("1.3.13", counting(16)) == 401.6375);
}

TEST_CASE("What the third field counts is said on the sheet and never guessed") {
    // The arithmetic of the note above: the same three numbers are three lengths.
    CHECK(inches_of("3.10.1", counting(8)) == 46.125);
    CHECK(inches_of("3.10.1", counting(16)) == 46.0625);
    const NoteTrouble trouble = trouble_of("3.10.1");
    CHECK(trouble.open);
    CHECK(test::english(trouble.what) ==
          "3.10.1 has a third field and its sheet no denominator: state whether the sheet counts quarters, "
          "eighths or sixteenths of an inch");
}

TEST_CASE("Two fields stay open until the sheet says what they are") {
    CHECK(trouble_of("3.10").open);
    CHECK(trouble_of("3.10", counting(4)).open);
    CHECK(trouble_of("3.10", in(NoteUnit::foot)).open);
    CHECK(inches_of("3.10", meaning(TwoFields::feet_and_inches)) == 46);
    CHECK(mm_of("3.10", meaning(TwoFields::decimal_feet)) == 944.88); // 37.2 in
    CHECK(mm_of("3.10", in(NoteUnit::m)) == 3100);
    CHECK_FALSE(trouble_of("3.12", meaning(TwoFields::feet_and_inches)).open);
}

TEST_CASE("A note that cannot be is refused with its field") {
    // 12 inches are a foot, and a part that is not under its denominator is an inch.
    const NoteTrouble inches = trouble_of("3.12.1", counting(4)), parts = trouble_of("3.10.4", counting(4));
    CHECK_FALSE(inches.open);
    CHECK_FALSE(parts.open);
    CHECK_FALSE(trouble_of("3.12.1").open); // whatever the sheet says
    CHECK(test::english(inches.what).starts_with("the second field of 3.12.1 is inches and not under 12: "));
    CHECK(test::english(parts.what)
              .starts_with("the third field of 3.10.4 is not under 4, which is the denominator "));
    CHECK(inches_of("3.10.4", counting(8)) == 46.5);
    for (const char *none : {"", " ", "-", "3.", ".3.1", "3..1", "3.10.1.2", "3.10.1 in", "three", "3.1O.1",
                             "1000000.1.1", "7'-14\"", "\xff\xfe", "1e3 mm"}) {
        INFO(none);
        CHECK_FALSE(trouble_of(none, counting(4)).open);
    }
    for (const char *bare : {"12", "8 1/2", "12,5"}) { // its sheet may still say what it counts
        CHECK(trouble_of(bare, counting(4)).open);
        CHECK(test::english(trouble_of(bare, counting(4)).what)
                  .starts_with(std::string(bare) + " has no unit and its sheet none for its numbers: "));
    }
    CHECK(mm_of("0", counting(4)) == 0);
    CHECK(test::english(trouble_of("\u2033 8 in").what)
              .starts_with("\u2033 8 in is not read as a length from its character 1 on"));
}

TEST_CASE("Heights have a sign, and dashes and marks are read as they are set") {
    CHECK(mm_of("-0.3.2", counting(4)) == -88.9); // 3 1/2 in
    CHECK(mm_of("+0.3.2", counting(4)) == 88.9);
    CHECK(mm_of(" \u2212 0.3.2 ", counting(4)) == -88.9);
    CHECK(mm_of("\u20140.3.2", counting(4)) == -88.9);
    CHECK(mm_of("7\u2032\u20146 1/2\u2033") == 2298.7);
    CHECK(mm_of("7\u2032\u20136\u00bd\u2033") == 2298.7);
    CHECK(mm_of("-12 mm") == -12);
}

TEST_CASE("A decimal comma is one, unless it could part thousands") {
    CHECK(mm_of("2,4 m") == 2400);
    CHECK(mm_of("2,415 m") == 2415);
    CHECK(mm_of("2,415", in(NoteUnit::m)) == 2415);
    CHECK(mm_of("12,5 cm") == 125);
    CHECK(mm_of("8,5 in") == 215.9);
    CHECK(mm_of("0,250 mm") == 0.25);
    CHECK(test::english(trouble_of("1,250 mm").what).starts_with("the comma of 1,250 mm can part thousands"));
    CHECK_FALSE(trouble_of("10,250", in(NoteUnit::mm)).open);
}

TEST_CASE("A number without a unit has the one of its sheet") {
    CHECK(mm_of("215", in(NoteUnit::mm)) == 215);
    CHECK(mm_of("21.5", in(NoteUnit::cm)) == 215);
    CHECK(mm_of("8 1/2", in(NoteUnit::inch)) == 215.9);
    CHECK(mm_of("-12", in(NoteUnit::mm)) == -12);
    CHECK(mm_of("8 in", in(NoteUnit::mm)) == 203.2);
}

TEST_CASE("Every note that a sheet can hold has the value of its fields") {
    CHECK(rc::check("feet, inches and parts", [] {
        const int denominator = *rc::gen::element(4, 8, 16), feet = *rc::gen::inRange(0, 200),
                  inches = *rc::gen::inRange(0, 12), parts = *rc::gen::inRange(0, denominator);
        const std::string written =
            std::to_string(feet) + "." + std::to_string(inches) + "." + std::to_string(parts);
        const double read = mm_of(written, counting(denominator));
        const double spelled =
            std::get<Length>(parse_length(std::to_string(feet) + " ft " + std::to_string(inches) + " " +
                                          std::to_string(parts) + "/" + std::to_string(denominator) + " in"))
                .mm();
        RC_ASSERT(read == spelled);
    }));
    CHECK(rc::check("any bytes", [](const std::string &bytes) {
        const NoteValue read = read_note(bytes, counting(4));
        RC_ASSERT(std::holds_alternative<Length>(read) || !std::get<NoteTrouble>(read).what.text.empty());
    }));
}
