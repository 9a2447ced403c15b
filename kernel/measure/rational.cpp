#include "kernel/measure/rational.h"

#include <cmath>
#include <cstdint>

namespace roundlay {

namespace {

__extension__ typedef unsigned __int128 Unsigned;

constexpr WholeNumber power_of_ten(int exponent) {
    return exponent == 0 ? 1 : 10 * power_of_ten(exponent - 1);
}
constexpr WholeNumber largest = power_of_ten(36); // under 2^120: a remainder can still be doubled

WholeNumber magnitude(WholeNumber v) {
    return v < 0 ? -v : v;
}

WholeNumber common_divisor(WholeNumber a, WholeNumber b) {
    while (b != 0) {
        const WholeNumber rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

std::optional<WholeNumber> times(WholeNumber a, WholeNumber b) {
    if (a != 0 && magnitude(b) > largest / magnitude(a)) return std::nullopt;
    return a * b;
}

} // namespace

std::optional<Rational> Rational::of(WholeNumber numerator, WholeNumber denominator) {
    if (denominator == 0 || magnitude(numerator) > largest || magnitude(denominator) > largest)
        return std::nullopt;
    const WholeNumber divisor = common_divisor(magnitude(numerator), magnitude(denominator));
    const WholeNumber sign = denominator < 0 ? -1 : 1;
    Rational made;
    made.numerator_ = sign * numerator / divisor;
    made.denominator_ = sign * denominator / divisor;
    return made;
}

Rational Rational::negated() const {
    Rational made = *this;
    made.numerator_ = -numerator_;
    return made;
}

double Rational::nearest() const {
    const auto divisor = static_cast<Unsigned>(denominator_);
    Unsigned quotient = static_cast<Unsigned>(magnitude(numerator_)) / divisor;
    Unsigned rest = static_cast<Unsigned>(magnitude(numerator_)) % divisor;
    int exponent = 0;
    bool inexact = false;
    // Long division to 64 significant bits. What is left over only has to be known as "something": it is
    // kept in the last bit, eleven below the last of a double, so that the conversion rounds once and right.
    for (; quotient >> 64 != 0; quotient >>= 1, ++exponent)
        inexact = inexact || (quotient & 1) != 0;
    for (; rest != 0 && quotient >> 63 == 0; --exponent) {
        rest <<= 1;
        quotient = quotient << 1 | (rest >= divisor ? 1 : 0);
        if (rest >= divisor) rest -= divisor;
    }
    inexact = inexact || rest != 0;
    const auto bits = static_cast<std::uint64_t>(quotient) | (inexact ? 1 : 0);
    const double size = std::ldexp(static_cast<double>(bits), exponent);
    return numerator_ < 0 ? -size : size;
}

std::optional<Rational> sum(const Rational &a, const Rational &b) {
    const auto left = times(a.numerator(), b.denominator());
    const auto right = times(b.numerator(), a.denominator());
    const auto under = times(a.denominator(), b.denominator());
    if (!left || !right || !under) return std::nullopt;
    return Rational::of(*left + *right, *under);
}

std::optional<Rational> product(const Rational &a, const Rational &b) {
    const auto over = times(a.numerator(), b.numerator());
    const auto under = times(a.denominator(), b.denominator());
    if (!over || !under) return std::nullopt;
    return Rational::of(*over, *under);
}

std::optional<Rational> quotient(const Rational &a, const Rational &b) {
    const auto turned = Rational::of(b.denominator(), b.numerator());
    return turned ? product(a, *turned) : std::nullopt;
}

} // namespace roundlay
