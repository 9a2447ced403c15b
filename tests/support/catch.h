// Catch2 under either of its packaged series.
#pragma once

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
using Catch::Detail::Approx;
#endif
