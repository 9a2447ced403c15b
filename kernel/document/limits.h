// The limits of the format, as FORMAT.md states them. They are far beyond any shell; what passes them is a
// slip of the pen, or no document at all.
#pragma once

#include "kernel/shell/limits.h"

#include <cstddef>

namespace roundlay::limits {

inline constexpr int version = 1; ///< the newest format that is read, and the one that is written

inline constexpr std::size_t bytes = 4'000'000; ///< of a document
inline constexpr std::size_t brackets = 20'000; ///< headers, lists, inline tables and dotted names together
inline constexpr std::size_t dotted_parts = 8;  ///< of one dotted name
inline constexpr std::size_t problems = 100;    ///< listed of one document
inline constexpr std::size_t name_characters = 200; ///< of a shell, an opening, a species
inline constexpr std::size_t wall_letters = 8;      ///< of a wall's name
inline constexpr std::size_t walls = 100;
inline constexpr std::size_t openings = most_openings;
inline constexpr std::size_t floors = 50;
inline constexpr std::size_t floor_parts = 50; ///< beams, and openings, of one floor
inline constexpr std::size_t bores = 1000;     ///< stated one by one
inline constexpr std::size_t mends = 1000;
inline constexpr std::size_t texts = 100;       ///< in one list
inline constexpr std::size_t found_parts = 100; ///< stations, zones, pegs and so on of one log
inline constexpr std::size_t states = 20;
inline constexpr std::size_t logs = 5000; ///< with sizes of their own

inline constexpr double long_mm = 100'000; ///< walls, heights, openings: 100 m
inline constexpr double short_mm = 2'000;  ///< thickness, pitch, gap, overhang, pegs: 2 m
inline constexpr int rounds = most_rounds;
inline constexpr int logs_high = most_logs_high;
inline constexpr int pieces = most_logs_in_round; ///< of one round
inline constexpr int fastenings = 20;
inline constexpr double moisture = 300; ///< percent of ovendry mass

} // namespace roundlay::limits
