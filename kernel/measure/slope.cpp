#include "kernel/measure/length_reader.h"
#include "kernel/measure/measure.h"
#include "kernel/measure/rounding.h"

#include <cmath>
#include <numbers>

namespace roundlay {

namespace {

constexpr double steepest = 10; // 84 degrees: beyond it a seam is a wall
constexpr double quarter_turn = 90;
constexpr const char *slope_expected = "a slope such as 1:8, 7.125 deg, 1 in in 8 in, 0.125 or level";

Measured<Slope> within_steepest(double ratio) {
    if (std::abs(ratio) > steepest)
        return MeasureError{0, "the slope is steeper than 10:1 (84 degrees)", slope_expected};
    return Slope::rise_per_run(ratio);
}

Measured<Slope> of_rise_and_run(const Rational &rise, const Rational &run, std::size_t run_at) {
    if (run.numerator() <= 0) return MeasureError{run_at, "a slope needs a run over 0", slope_expected};
    const auto ratio = quotient(rise, run);
    if (!ratio) return too_many_digits(0);
    return within_steepest(ratio->nearest());
}

Measured<Slope> behind_the_end(const NumberReader &reader) {
    return MeasureError{reader.at(), reader.sight() + " stands behind the end of the slope", slope_expected};
}

/// `2 in in 6 in`, `25 mm in 200 mm`, `2" over 6"`.
Measured<Slope> parse_rise_over_run(std::string_view text) {
    NumberReader reader(text);
    const auto rise = read_length(reader);
    if (const auto *error = std::get_if<MeasureError>(&rise)) return *error;
    reader.skip_space();
    const std::size_t link_at = reader.at();
    if (const std::string link = reader.take_word(); link != "in" && link != "over")
        return MeasureError{link_at, "the rise is not followed by \"in\" and a run", "such as 1 in in 8 in"};
    reader.skip_space();
    const std::size_t run_at = reader.at();
    const auto run = read_length(reader);
    if (const auto *error = std::get_if<MeasureError>(&run)) return *error;
    reader.skip_space();
    if (!reader.at_end()) return behind_the_end(reader);
    return of_rise_and_run(std::get<Rational>(rise), std::get<Rational>(run), run_at);
}

Measured<Slope> parse_run_behind(NumberReader &reader, const Rational &rise) {
    reader.skip_space();
    const std::size_t run_at = reader.at();
    const auto run = reader.read_number();
    if (const auto *error = std::get_if<MeasureError>(&run)) return *error;
    reader.skip_space();
    if (!reader.at_end()) return behind_the_end(reader);
    return of_rise_and_run(rise, std::get<ReadNumber>(run).value, run_at);
}

Measured<Slope> parse_degrees_end(NumberReader &reader, const Rational &angle) {
    reader.skip_space();
    if (!reader.at_end()) return behind_the_end(reader);
    const double degrees = angle.nearest();
    return within_steepest(std::abs(degrees) < quarter_turn ? Slope::degrees(degrees).ratio() : HUGE_VAL);
}

bool take_degrees(NumberReader &reader) {
    if (reader.take("\u00b0")) return true;
    const std::size_t begin = reader.at();
    const std::string word = reader.take_word();
    if (word == "deg" || word == "degree" || word == "degrees") return true;
    reader.back_to(begin);
    return false;
}

/// `1 in 8`: no unit at all. What has units in it is left to parse_rise_over_run.
bool take_bare_in(NumberReader &reader) {
    const std::size_t begin = reader.at();
    if (reader.take_word() == "in") {
        reader.skip_space();
        NumberReader ahead = reader;
        if (ahead.sees_number() && std::holds_alternative<ReadNumber>(ahead.read_number())) {
            ahead.skip_space();
            if (ahead.at_end()) return true;
        }
    }
    reader.back_to(begin);
    return false;
}

} // namespace

Slope Slope::degrees(double angle) {
    return Slope(std::tan(angle * (std::numbers::pi / 180)));
}

double Slope::as_degrees() const {
    return std::atan(ratio_) * (180 / std::numbers::pi);
}

Measured<Slope> parse_slope(std::string_view text) {
    NumberReader reader(text);
    reader.skip_space();
    if (reader.at_end()) return MeasureError{0, "the slope is empty", slope_expected};
    if (NumberReader word = reader; word.take_word() == "level") {
        word.skip_space();
        return word.at_end() ? Slope() : behind_the_end(word);
    }
    const bool negative = reader.take_sign();
    const auto number = reader.read_number();
    if (const auto *error = std::get_if<MeasureError>(&number))
        return MeasureError{error->offset, error->message, slope_expected};
    const Rational size = std::get<ReadNumber>(number).value;
    const Rational value = negative ? size.negated() : size;
    reader.skip_space();
    if (reader.at_end()) return within_steepest(value.nearest());
    if (reader.take(":") || take_bare_in(reader)) return parse_run_behind(reader, value);
    if (take_degrees(reader)) return parse_degrees_end(reader, value);
    return parse_rise_over_run(text);
}

std::string print_slope(Slope value) {
    constexpr double longest_run = 1e6; // a millimetre in a kilometre is level in any wood
    const double size = std::abs(value.ratio());
    if (!(size * longest_run >= 1)) return "level";
    const double run = 1 / size;
    // Hundredths where one digit stands before the point, tenths where two do: three figures in all.
    const std::uint64_t scale = run < 1 ? 1000 : run < 10 ? 100 : run < 100 ? 10 : 1;
    const std::uint64_t parts = nearest_count(run * static_cast<double>(scale));
    std::string text = (value.ratio() < 0 ? "-1:" : "1:") + std::to_string(parts / scale);
    if (parts % scale == 0) return text;
    std::string behind = std::to_string(scale + parts % scale).substr(1);
    behind.erase(behind.find_last_not_of('0') + 1);
    return text + "." + behind;
}

} // namespace roundlay
