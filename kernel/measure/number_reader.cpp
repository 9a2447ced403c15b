#include "kernel/measure/number_reader.h"

#include "kernel/measure/character.h"

#include <array>
#include <utility>

namespace roundlay {

namespace {

constexpr int most_digits = 30; // of one run; leaves room under the bound of Rational for the unit
constexpr const char *number_expected = "a number such as 12, 1.5, 3/16 or 6 1/2";

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

constexpr std::array<std::string_view, 17> spaces{" ",      "\t",     "\u00a0", "\u202f", "\u2000", "\u2001",
                                                  "\u2002", "\u2003", "\u2004", "\u2005", "\u2006", "\u2007",
                                                  "\u2008", "\u2009", "\u200a", "\u205f", "\u3000"};
constexpr std::array<std::string_view, 6> dashes{"-", "\u2212", "\u2010", "\u2011", "\u2012", "\u2013"};
constexpr std::array<std::string_view, 3> slashes{"/", "\u2044", "\u2215"};

struct SetFraction {
    std::string_view text;
    int over, under;
};
constexpr std::array<SetFraction, 18> set_fractions{{{"\u00bd", 1, 2},
                                                     {"\u00bc", 1, 4},
                                                     {"\u00be", 3, 4},
                                                     {"\u2153", 1, 3},
                                                     {"\u2154", 2, 3},
                                                     {"\u215b", 1, 8},
                                                     {"\u215c", 3, 8},
                                                     {"\u215d", 5, 8},
                                                     {"\u215e", 7, 8},
                                                     {"\u2155", 1, 5},
                                                     {"\u2156", 2, 5},
                                                     {"\u2157", 3, 5},
                                                     {"\u2158", 4, 5},
                                                     {"\u2159", 1, 6},
                                                     {"\u215a", 5, 6},
                                                     {"\u2150", 1, 7},
                                                     {"\u2151", 1, 9},
                                                     {"\u2152", 1, 10}}};

} // namespace

MeasureError too_many_digits(std::size_t at) {
    return {at, "the number has too many digits to be read exactly", "at most 30 digits"};
}

bool NumberReader::take(std::string_view exact) {
    if (text_.substr(at_, exact.size()) != exact) return false;
    at_ += exact.size();
    return true;
}

void NumberReader::skip_space() {
    bool found = true;
    while (found) {
        found = false;
        for (const std::string_view s : spaces)
            found = found || take(s);
    }
}

bool NumberReader::take_dash() {
    for (const std::string_view d : dashes)
        if (take(d)) return true;
    return false;
}

bool NumberReader::take_sign() {
    skip_space();
    const bool negative = take_dash();
    if (!negative) take("+");
    skip_space();
    return negative;
}

std::string NumberReader::take_word() {
    std::string word;
    for (; !at_end() && is_letter(text_[at_]); ++at_)
        word += lower(text_[at_]);
    return word;
}

bool NumberReader::take_slash() {
    for (const std::string_view s : slashes)
        if (take(s)) return true;
    return false;
}

std::optional<Rational> NumberReader::take_set_fraction() {
    for (const SetFraction &f : set_fractions)
        if (take(f.text)) return Rational::of(f.over, f.under);
    return std::nullopt;
}

bool NumberReader::sees_number() const {
    if (at_end()) return false;
    if (is_digit(text_[at_])) return true;
    if (text_[at_] == '.') return at_ + 1 < text_.size() && is_digit(text_[at_ + 1]);
    NumberReader ahead = *this;
    return ahead.take_set_fraction().has_value();
}

std::optional<NumberReader::Digits> NumberReader::take_digits() {
    Digits run;
    for (; !at_end() && is_digit(text_[at_]); ++at_) {
        if (++run.count > most_digits) return std::nullopt;
        run.value = 10 * run.value + (text_[at_] - '0');
    }
    return run;
}

bool NumberReader::is_decimal_comma(std::string_view whole) const {
    constexpr int of_thousands = 3;
    NumberReader behind(text_.substr(at_ + 1));
    const auto digits = behind.take_digits();
    if (!digits || digits->count == 0 || behind.take(",")) return false;
    if (digits->count != of_thousands || whole == "0") return true;
    behind.skip_space();
    return behind.take_word() == "m";
}

Measured<ReadNumber> NumberReader::read_number() {
    const std::size_t begin = at_;
    if (!sees_number()) {
        if (at_end()) return MeasureError{begin, "a number is missing", number_expected};
        return MeasureError{begin, sight() + " stands where a number should", number_expected};
    }
    if (const auto fraction = take_set_fraction()) return ReadNumber{*fraction, begin};
    const auto digits = take_digits();
    if (!digits) return too_many_digits(begin);
    if (take(".")) return read_decimals(begin, digits->value);
    if (take_slash()) return read_fraction(begin, digits->value);
    if (!at_end() && text_[at_] == ',') {
        if (!is_decimal_comma(text_.substr(begin, at_ - begin)))
            return MeasureError{at_, "a comma in a number can be read in two ways",
                                "a decimal point and no thousands mark, such as 2.4 or 2400"};
        take(",");
        return read_decimals(begin, digits->value);
    }
    const auto part = read_part_behind_whole();
    if (const auto *error = std::get_if<MeasureError>(&part)) return *error;
    const Rational whole = Rational::of(digits->value, 1).value_or(Rational());
    const auto &behind = std::get<std::optional<Rational>>(part);
    if (!behind) return ReadNumber{whole, begin};
    const auto both = sum(whole, *behind);
    if (!both) return too_many_digits(begin);
    return ReadNumber{*both, begin};
}

Measured<ReadNumber> NumberReader::read_decimals(std::size_t begin, WholeNumber whole) {
    const auto digits = take_digits();
    if (!digits) return too_many_digits(begin);
    if (digits->count == 0)
        return MeasureError{at_, "no digit stands behind the decimal point", number_expected};
    WholeNumber scale = 1;
    for (int i = 0; i < digits->count; ++i)
        scale *= 10;
    const auto front = Rational::of(whole, 1), behind = Rational::of(digits->value, scale);
    const auto value = front && behind ? sum(*front, *behind) : std::nullopt;
    if (!value) return too_many_digits(begin);
    return ReadNumber{*value, begin};
}

Measured<ReadNumber> NumberReader::read_fraction(std::size_t begin, WholeNumber over) {
    const std::size_t under_begin = at_;
    const auto under = take_digits();
    if (!under) return too_many_digits(begin);
    if (under->count == 0)
        return MeasureError{under_begin, "no whole number stands under the fraction bar", number_expected};
    if (under->value == 0)
        return MeasureError{under_begin, "a fraction cannot have zero under the bar", number_expected};
    const auto value = Rational::of(over, under->value);
    if (!value) return too_many_digits(begin);
    return ReadNumber{*value, begin};
}

/// The fraction of a mixed number: `6 1/2`, `6-1/2`, `6½`, `6 ½`. Nothing, and no step taken, where the whole
/// number stands alone.
Measured<std::optional<Rational>> NumberReader::read_part_behind_whole() {
    const std::size_t behind_whole = at_;
    if (!take_dash()) skip_space();
    const std::size_t begin = at_;
    if (const auto fraction = take_set_fraction()) return std::optional(*fraction);
    const auto over = take_digits();
    if (!over) return too_many_digits(begin);
    if (over->count == 0 || !take_slash()) {
        at_ = behind_whole;
        return std::optional<Rational>();
    }
    const auto fraction = read_fraction(begin, over->value);
    if (const auto *error = std::get_if<MeasureError>(&fraction)) return *error;
    const Rational &value = std::get<ReadNumber>(fraction).value;
    if (value.numerator() >= value.denominator())
        return MeasureError{begin, "the fraction behind a whole number is not under 1", "such as 6 1/2"};
    return std::optional(value);
}

std::string NumberReader::sight() const {
    if (at_end()) return "nothing";
    NumberReader ahead = *this;
    const std::string_view rest = text_.substr(at_);
    if (!ahead.take_word().empty()) {
        constexpr std::size_t longest = 24; // enough to recognise a word by
        const auto word = rest.substr(0, ahead.at() - at_);
        return "\"" + std::string(word.substr(0, longest)) + (word.size() > longest ? "..." : "") + "\"";
    }
    const std::size_t length = character_length(rest);
    const bool printable = length > 1 || (length == 1 && rest.front() >= ' ' && rest.front() != 0x7f);
    return printable ? "'" + std::string(rest.substr(0, length)) + "'" : byte_in_words(rest.front());
}

} // namespace roundlay
