// Reads the parts of a measure from a text: numbers, signs, units. Shared by lengths and slopes.
#pragma once

#include "kernel/measure/measure.h"
#include "kernel/measure/rational.h"

#include <optional>
#include <string>
#include <string_view>

namespace roundlay {

/// A number without a sign.
struct ReadNumber {
    Rational value;
    std::size_t begin = 0; ///< where it stands
};

/// Walks over a measure from left to right. Never reads past the end; takes any bytes.
class NumberReader {
  public:
    explicit NumberReader(std::string_view text) : text_(text) {}

    std::size_t at() const { return at_; }
    void back_to(std::size_t place) { at_ = place; }
    bool at_end() const { return at_ == text_.size(); }

    void skip_space(); ///< blanks of every width, the ones that do not break a line too
    bool take(std::string_view exact);
    bool take_dash();        ///< hyphen, minus or dash, as typed or as set by a word processor
    bool take_sign();        ///< a dash or plus with space behind it; true when it was a dash
    std::string take_word(); ///< the run of ASCII letters here, in lower case

    /// True where a number may start.
    bool sees_number() const;

    /// `12`, `1.5`, `.5`, `3/16`, `6 1/2`, `6-1/2`, `½`, `6½`, `1,5`. The number is exact.
    Measured<ReadNumber> read_number();

    /// What stands here, fit for a message: one word, sign or byte.
    std::string sight() const;

  private:
    struct Digits {
        WholeNumber value = 0;
        int count = 0;
    };
    std::optional<Digits> take_digits(); ///< nothing when there are too many
    bool take_slash();
    /// Whether the comma here can part nothing but decimals from this whole number: three digits behind it
    /// may be thousands as well, but for metres, of which three places are usual.
    bool is_decimal_comma(std::string_view whole) const;
    std::optional<Rational> take_set_fraction(); ///< a fraction that is one character
    Measured<ReadNumber> read_decimals(std::size_t begin, WholeNumber whole);
    Measured<ReadNumber> read_fraction(std::size_t begin, WholeNumber over);
    Measured<std::optional<Rational>> read_part_behind_whole();

    std::string_view text_;
    std::size_t at_ = 0;
};

MeasureError too_many_digits(std::size_t at);

} // namespace roundlay
