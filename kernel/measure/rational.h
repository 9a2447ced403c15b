// Exact fractions, as far as a person's numbers need them.
#pragma once

#include <optional>

namespace roundlay {

__extension__ typedef __int128 WholeNumber; // 128 bits: every number of up to 36 digits is held exactly

/// A reduced fraction. Numerator and denominator stay within 10^36; what would leave that range is refused,
/// never rounded.
class Rational {
  public:
    Rational() = default;
    /// Nothing where the denominator is zero or a part is out of range.
    static std::optional<Rational> of(WholeNumber numerator, WholeNumber denominator);

    WholeNumber numerator() const { return numerator_; }
    WholeNumber denominator() const { return denominator_; } ///< > 0
    bool is_zero() const { return numerator_ == 0; }
    bool is_whole() const { return denominator_ == 1; }
    Rational negated() const;

    /// The nearest double, ties to even: one rounding.
    double nearest() const;

  private:
    WholeNumber numerator_ = 0;
    WholeNumber denominator_ = 1;
};

/// Nothing where the exact result is out of range.
std::optional<Rational> sum(const Rational &a, const Rational &b);
std::optional<Rational> product(const Rational &a, const Rational &b);
/// Also nothing where b is zero.
std::optional<Rational> quotient(const Rational &a, const Rational &b);

} // namespace roundlay
