// How a spreadsheet shows a number: as it is, as a percentage, as a date, as a time (ECMA-376, 18.8.30 and
// 31).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace roundlay {

enum class ShownAs { number, percent, date, time };

struct NumberLook {
    ShownAs as = ShownAs::number;
    int decimals = 0;  ///< of a percentage
    bool whole = true; ///< of a date: day, month and year are all shown
};

/// Of a format's code, as "0.0%" or "dd/mm/yyyy".
NumberLook look_of(std::string_view code);

/// Of each style by its number: the part `styles` of a workbook.
std::vector<NumberLook> looks_of(const std::string &xml);

/// The day that a serial number stands for, by ISO 8601: "2026-05-03", with its time where it has one,
/// "2026-05-03T14:30". Nothing where it stands for no day: under 1, past the year 9999, or the 29 February
/// 1900, which spreadsheets count and no calendar has.
std::optional<std::string> iso_date(double serial, bool from_1904);

/// "0.31" is "31": the point goes two places to the right, and no digit is lost. `number` is plain decimal.
std::string hundredfold(const std::string &number);

} // namespace roundlay
