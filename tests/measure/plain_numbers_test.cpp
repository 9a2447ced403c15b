// Numbers for machines.
#include "kernel/measure/plain_numbers.h"
#include "tests/support/catch.h"

#include <rapidcheck.h>

#include <charconv>
#include <cmath>
#include <cstdio>

using namespace roundlay;

TEST_CASE("a value is told to its places") {
    CHECK(to_places(1574.8000000000009, 9) == 1574.8);
    CHECK(to_places(-1e-12, 9) == 0);
    CHECK_FALSE(std::signbit(to_places(-1e-12, 9)));
    CHECK(to_places(2.5, 0) == 3);
    CHECK(to_places(0.1240347345892084, 12) == 0.124034734589);
}

TEST_CASE("numbers of a JSON text are as short as they can be, and nothing else changes") {
    CHECK(with_short_numbers("[0.046031999999999997, -0.0, 12, 1e-07]") == "[0.046032, -0, 12, 1e-07]");
    CHECK(with_short_numbers(R"({"0.046031999999999997 \" 0.10": true, "a": null})") ==
          R"({"0.046031999999999997 \" 0.10": true, "a": null})");
    CHECK(with_short_numbers("0.10") == "0.1");
    CHECK(with_short_numbers("100000000000") == "100000000000");
    CHECK(with_short_numbers("\"open") == "\"open");
    CHECK(with_short_numbers("").empty());
    CHECK(rc::check("each means the same value", [] {
        const double value = *rc::gen::arbitrary<double>();
        if (!std::isfinite(value)) return;
        char written[400];
        std::snprintf(written, sizeof written, "%.17e", value);
        const std::string text = with_short_numbers("[" + std::string(written) + "]");
        double read = 0;
        std::from_chars(text.data() + 1, text.data() + text.size() - 1, read);
        RC_ASSERT(read == value);
        RC_ASSERT(text.size() <= std::string(written).size() + 2);
    }));
}
