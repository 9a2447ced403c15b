#include "kernel/measure/length_reader.h"

#include <array>

namespace roundlay {

namespace {

enum class Unit { none, foot, inch, metric };

struct UnitName {
    std::string_view text;
    Unit unit;
    int over, under; ///< millimetres in one of it
};
constexpr std::array<UnitName, 9> words{{{"mm", Unit::metric, 1, 1},
                                         {"cm", Unit::metric, 10, 1},
                                         {"m", Unit::metric, 1000, 1},
                                         {"ft", Unit::foot, 1524, 5},
                                         {"foot", Unit::foot, 1524, 5},
                                         {"feet", Unit::foot, 1524, 5},
                                         {"in", Unit::inch, 127, 5},
                                         {"inch", Unit::inch, 127, 5},
                                         {"inches", Unit::inch, 127, 5}}};
/// Two single marks in a row are one double mark, so the double ones are tried first.
constexpr std::array<UnitName, 11> marks{{{"\"", Unit::inch, 127, 5},
                                          {"\u2033", Unit::inch, 127, 5},
                                          {"\u201d", Unit::inch, 127, 5},
                                          {"\u201c", Unit::inch, 127, 5},
                                          {"''", Unit::inch, 127, 5},
                                          {"\u2032\u2032", Unit::inch, 127, 5},
                                          {"\u2019\u2019", Unit::inch, 127, 5},
                                          {"'", Unit::foot, 1524, 5},
                                          {"\u2032", Unit::foot, 1524, 5},
                                          {"\u2019", Unit::foot, 1524, 5},
                                          {"\u2018", Unit::foot, 1524, 5}}};

/// Takes the unit here, if there is one, with the full stop of an abbreviation (`7 ft. 6 in.`).
UnitName take_unit(NumberReader &reader) {
    for (const UnitName &mark : marks)
        if (reader.take(mark.text)) return mark;
    const std::size_t begin = reader.at();
    const std::string word = reader.take_word();
    for (const UnitName &unit : words)
        if (word == unit.text) {
            if (word == "ft" || word == "in") reader.take(".");
            return unit;
        }
    reader.back_to(begin);
    return {"", Unit::none, 0, 1};
}

MeasureError no_unit(const NumberReader &reader, const ReadNumber &number) {
    if (reader.at_end()) return {number.begin, "the number has no unit", length_expected};
    return {reader.at(), reader.sight() + " is not a unit of length",
            "mm, cm, m, in, ft, or the marks ' for feet and \" for inches"};
}

Measured<Rational> in_millimetres(const ReadNumber &number, const UnitName &unit) {
    const auto factor = Rational::of(unit.over, unit.under);
    const auto value = factor ? product(number.value, *factor) : std::nullopt;
    if (!value) return too_many_digits(number.begin);
    return *value;
}

/// Steps to the number of the inches behind the feet: `7' 6"`, `7'-6"`, `7' - 6"`.
bool step_to_inches(NumberReader &reader) {
    const std::size_t behind_feet = reader.at();
    reader.skip_space();
    reader.take_dash();
    reader.skip_space();
    if (reader.sees_number()) return true;
    reader.back_to(behind_feet);
    return false;
}

Measured<Rational> read_inches_behind_feet(NumberReader &reader, const ReadNumber &feet) {
    const std::size_t begin = reader.at();
    if (!feet.value.is_whole())
        return MeasureError{feet.begin, "feet in front of inches must be a whole number", "such as 7' 6\""};
    const auto number = reader.read_number();
    if (const auto *error = std::get_if<MeasureError>(&number)) return *error;
    const ReadNumber &inches = std::get<ReadNumber>(number);
    reader.skip_space();
    const std::size_t unit_at = reader.at();
    const UnitName unit = take_unit(reader);
    if (unit.unit == Unit::none && reader.at_end())
        return MeasureError{begin, "the number behind the feet has no unit", "such as 7' 6\" or 7 ft 6 in"};
    if (unit.unit == Unit::none) return no_unit(reader, inches);
    if (unit.unit != Unit::inch)
        return MeasureError{unit_at, "only inches can stand behind feet", "such as 7' 6\" or 7 ft 6 in"};
    if (inches.value.numerator() >= 12 * inches.value.denominator())
        return MeasureError{begin, "inches behind feet are not under 12", "such as 7' 11 1/2\""};
    return in_millimetres(inches, unit);
}

Measured<Rational> read_size(NumberReader &reader) {
    const auto number = reader.read_number();
    if (const auto *error = std::get_if<MeasureError>(&number)) return *error;
    const ReadNumber &first = std::get<ReadNumber>(number);
    reader.skip_space();
    const UnitName unit = take_unit(reader);
    if (unit.unit == Unit::none) {
        if (!first.value.is_zero() || !reader.at_end()) return no_unit(reader, first);
        return Rational(); // nothing is nothing in every unit
    }
    auto front = in_millimetres(first, unit);
    if (unit.unit != Unit::foot || std::holds_alternative<MeasureError>(front) || !step_to_inches(reader))
        return front;
    auto behind = read_inches_behind_feet(reader, first);
    if (std::holds_alternative<MeasureError>(behind)) return behind;
    const auto both = sum(std::get<Rational>(front), std::get<Rational>(behind));
    if (!both) return too_many_digits(first.begin);
    return *both;
}

} // namespace

Measured<Rational> read_length(NumberReader &reader) {
    const bool negative = reader.take_sign();
    auto size = read_size(reader);
    if (const auto *value = std::get_if<Rational>(&size); value && negative) return value->negated();
    return size;
}

Measured<Length> parse_length(std::string_view text) {
    NumberReader reader(text);
    reader.skip_space();
    if (reader.at_end()) return MeasureError{0, "the length is empty", length_expected};
    const std::size_t begin = reader.at();
    const auto value = read_length(reader);
    if (const auto *error = std::get_if<MeasureError>(&value)) return *error;
    reader.skip_space();
    if (!reader.at_end())
        return MeasureError{reader.at(), reader.sight() + " stands behind the end of the length",
                            length_expected};
    constexpr double largest = 1e9; // a thousand kilometres in millimetres: no shell, so a slip of the pen
    const double mm = std::get<Rational>(value).nearest();
    if (mm > largest || mm < -largest)
        return MeasureError{begin, "the length is over 1000 km", "a length that a shell can have"};
    return Length::mm(mm);
}

} // namespace roundlay
