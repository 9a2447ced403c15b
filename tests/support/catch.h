// Catch2 under either of its packaged series.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
using Catch::Matchers::ContainsSubstring;
#else
#include <catch2/catch.hpp>
using Catch::Detail::Approx;
inline auto ContainsSubstring(const std::string &part) {
    return Catch::Matchers::Contains(part);
}
#endif
