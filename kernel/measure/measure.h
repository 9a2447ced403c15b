// Lengths and slopes as a person states them, and how they are read and printed.
//
// Inside the program a length is a double in millimetres. These types stand wherever the two could be
// mixed up: in the shell, in the document, on the command line and in the window.
#pragma once

#include <compare>
#include <cstddef>
#include <string>
#include <string_view>
#include <variant>

namespace roundlay {

inline constexpr double mm_per_inch = 25.4; // exact by definition (international inch, 1959)
inline constexpr double mm_per_foot = 12 * mm_per_inch;

/// A distance. Stored in millimetres.
class Length {
  public:
    constexpr Length() = default;
    static constexpr Length mm(double v) { return Length(v); }
    // 25.4 is no double, 127 and 5 are: whole, halved and quartered inches come out as parse_length reads
    // them.
    static constexpr Length inches(double v) { return Length(v * 127 / 5); }
    static constexpr Length feet(double v) { return Length(v * 1524 / 5); }
    static constexpr Length metres(double v) { return Length(v * 1000.0); }

    constexpr double mm() const { return mm_; }
    constexpr double inches() const { return mm_ * 5 / 127; }

    constexpr auto operator<=>(const Length &) const = default;
    constexpr Length operator-() const { return Length(-mm_); }
    friend constexpr Length operator+(Length a, Length b) { return Length(a.mm_ + b.mm_); }
    friend constexpr Length operator-(Length a, Length b) { return Length(a.mm_ - b.mm_); }
    friend constexpr Length operator*(Length a, double k) { return Length(a.mm_ * k); }
    friend constexpr Length operator*(double k, Length a) { return Length(a.mm_ * k); }
    friend constexpr Length operator/(Length a, double k) { return Length(a.mm_ / k); }
    friend constexpr double operator/(Length a, Length b) { return a.mm_ / b.mm_; }

  private:
    constexpr explicit Length(double v) : mm_(v) {}
    double mm_ = 0;
};

/// How much a plane rises for each unit it runs: 1:8 is 0.125. May be negative.
class Slope {
  public:
    constexpr Slope() = default;
    static constexpr Slope rise_per_run(double v) { return Slope(v); }
    static Slope degrees(double angle);

    constexpr double ratio() const { return ratio_; }
    double as_degrees() const;

    constexpr auto operator<=>(const Slope &) const = default;
    constexpr Slope operator-() const { return Slope(-ratio_); }

  private:
    constexpr explicit Slope(double v) : ratio_(v) {}
    double ratio_ = 0;
};

enum class UnitSystem { metric, imperial };

/// How lengths are printed. Printing rounds a value once, from the true number.
struct LengthStyle {
    UnitSystem system = UnitSystem::metric;
    int denominator = 16;  ///< imperial: smallest part of an inch, a power of two from 1 to 64
    bool feet = true;      ///< imperial: 10' 10" rather than 130"
    int decimals = 0;      ///< metric: digits after the decimal point of a millimetre
    bool with_unit = true; ///< metric: print " mm" behind the number
};

/// What was wrong with a text that should have been a measure.
struct MeasureError {
    std::size_t offset = 0; ///< byte offset in the text where reading stopped
    std::string message;    ///< one sentence: what is wrong
    std::string expected;   ///< what would have been right, e.g. `a length such as 8 1/2 in or 215 mm`
};

template <typename T> using Measured = std::variant<T, MeasureError>;

/// Reads a length in either system: `230 mm`, `2.4 m`, `9 in`, `7'-6 1/2"`, `11ft6-7/8in`, `8 2/3 in`,
/// `-3/4"`. The text is read as an exact rational number and becomes a double once. A bare number is refused
/// (no unit) except `0`. The result is finite; magnitudes over 1e9 mm are refused.
Measured<Length> parse_length(std::string_view text);

/// Reads a slope: `1:8`, `7.125 deg`, `7.125°`, `2 in in 6 in`, `25 mm in 200 mm`, `0.125`, `level`.
/// A steeper slope than 10 (84 degrees) is refused.
Measured<Slope> parse_slope(std::string_view text);

/// Prints a length so that parse_length reads it back within half of the smallest part.
std::string print_length(Length value, const LengthStyle &style);

/// The same with so many decimal places: `1.25 mm`, `0.049 in`.
std::string print_decimals(Length value, UnitSystem system, int places);

/// Prints a slope as `1:8` (run per rise to three figures), or `level`.
std::string print_slope(Slope value);

} // namespace roundlay
